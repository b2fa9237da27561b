// Units of ratios. SI Brochure, 9th ed., 5.4.7.
import { type Unit, unit } from "../quantity.ts";

/** A fraction of one: 0.5 is one half. Source: SI Brochure, 9th ed. */
export const fraction: Unit<"ratio"> = /* @__PURE__ */ unit("ratio", "fraction", 1);

/** One hundredth. Source: SI Brochure, 9th ed. */
export const percent: Unit<"ratio"> = /* @__PURE__ */ unit("ratio", "%", 1e-2);

/** One millionth; by volume where a refrigerant concentration is meant. Source: SI Brochure, 9th ed. */
export const ppm: Unit<"ratio"> = /* @__PURE__ */ unit("ratio", "ppm", 1e-6);
