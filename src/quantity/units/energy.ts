// Units of specific energy and specific heat. SI Brochure, 9th ed.; NIST SP 811 (2008), B.8.
import { type Unit, unit } from "../quantity.ts";

/** One kilojoule per kilogram. Source: SI Brochure, 9th ed. */
export const kJPerKg: Unit<"specificEnergy"> = /* @__PURE__ */ unit("specificEnergy", "kJ/kg", 1e3);

/** One International Table Btu per pound, exactly 2326 J/kg. Source: NIST SP 811 (2008), B.8. */
export const btuPerLb: Unit<"specificEnergy"> = /* @__PURE__ */ unit(
  "specificEnergy",
  "Btu/lb",
  2326,
);

/** One kilojoule per kilogram kelvin. Source: SI Brochure, 9th ed. */
export const kJPerKgK: Unit<"specificHeat"> = /* @__PURE__ */ unit(
  "specificHeat",
  "kJ/(kg·K)",
  1e3,
);

/** One International Table Btu per pound degree Fahrenheit, exactly 4186.8 J/(kg·K). Source: NIST SP 811 (2008), B.8. */
export const btuPerLbF: Unit<"specificHeat"> = /* @__PURE__ */ unit(
  "specificHeat",
  "Btu/(lb·°F)",
  4186.8,
);
