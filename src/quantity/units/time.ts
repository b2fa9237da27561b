// Units of duration and speed. SI Brochure, 9th ed., tables 2 and 8; NIST SP 811 (2008), B.8.
import { type Unit, unit } from "../quantity.ts";

/** One second. Exact: the SI base unit. Source: SI Brochure, 9th ed. */
export const second: Unit<"duration"> = /* @__PURE__ */ unit("duration", "s", 1);

/** One minute, exactly 60 s. Source: SI Brochure, 9th ed. */
export const minute: Unit<"duration"> = /* @__PURE__ */ unit("duration", "min", 60);

/** One hour, exactly 3600 s. Source: SI Brochure, 9th ed. */
export const hour: Unit<"duration"> = /* @__PURE__ */ unit("duration", "h", 3600);

/** One day, exactly 86 400 s. Source: SI Brochure, 9th ed. */
export const day: Unit<"duration"> = /* @__PURE__ */ unit("duration", "d", 86_400);

/** One meter per second. Source: SI Brochure, 9th ed. */
export const mPerSecond: Unit<"speed"> = /* @__PURE__ */ unit("speed", "m/s", 1);

/** One foot per minute. Source: NIST SP 811 (2008), B.8. */
export const ftPerMinute: Unit<"speed"> = /* @__PURE__ */ unit("speed", "ft/min", 0.3048, 60);
