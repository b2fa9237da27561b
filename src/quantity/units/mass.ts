// Units of mass, mass per length, density and mass flow. SI Brochure, 9th ed.; NIST SP 811 (2008), B.8.
import { type Unit, unit } from "../quantity.ts";

/** One kilogram. Exact: the SI base unit. Source: SI Brochure, 9th ed. */
export const kg: Unit<"mass"> = /* @__PURE__ */ unit("mass", "kg", 1);

/** One gram. Source: SI Brochure, 9th ed. */
export const g: Unit<"mass"> = /* @__PURE__ */ unit("mass", "g", 1e-3);

/** One milligram. Source: SI Brochure, 9th ed. */
export const mg: Unit<"mass"> = /* @__PURE__ */ unit("mass", "mg", 1e-6);

/** One avoirdupois pound, exactly 0.45359237 kg. Source: NIST SP 811 (2008), B.6 (international yard and pound agreement of 1959). */
export const lb: Unit<"mass"> = /* @__PURE__ */ unit("mass", "lb", 0.45359237);

/** One avoirdupois ounce, exactly 1/16 lb. Source: NIST SP 811 (2008), B.6 (international yard and pound agreement of 1959). */
export const oz: Unit<"mass"> = /* @__PURE__ */ unit("mass", "oz", 0.45359237, 16);

/** One kilogram per meter. Source: SI Brochure, 9th ed. */
export const kgPerM: Unit<"massPerLength"> = /* @__PURE__ */ unit("massPerLength", "kg/m", 1);

/** One gram per meter. Source: SI Brochure, 9th ed. */
export const gPerM: Unit<"massPerLength"> = /* @__PURE__ */ unit("massPerLength", "g/m", 1e-3);

/** One pound per foot. Source: NIST SP 811 (2008), B.8. */
export const lbPerFt: Unit<"massPerLength"> = /* @__PURE__ */ unit(
  "massPerLength",
  "lb/ft",
  0.45359237,
  0.3048,
);

/** One ounce per foot. Source: NIST SP 811 (2008), B.8. */
export const ozPerFt: Unit<"massPerLength"> = /* @__PURE__ */ unit(
  "massPerLength",
  "oz/ft",
  0.45359237,
  [16, 0.3048],
);

/** One kilogram per cubic meter. Source: SI Brochure, 9th ed. */
export const kgPerM3: Unit<"density"> = /* @__PURE__ */ unit("density", "kg/m³", 1);

/** One gram per cubic meter. Source: SI Brochure, 9th ed. */
export const gPerM3: Unit<"density"> = /* @__PURE__ */ unit("density", "g/m³", 1e-3);

/** One pound per cubic foot. Source: NIST SP 811 (2008), B.8. */
export const lbPerCuft: Unit<"density"> = /* @__PURE__ */ unit(
  "density",
  "lb/ft³",
  0.45359237,
  [0.3048, 0.3048, 0.3048],
);

/** One pound per thousand cubic feet of room. Source: NIST SP 811 (2008), B.8. */
export const lbPer1000Cuft: Unit<"density"> = /* @__PURE__ */ unit(
  "density",
  "lb/1000 ft³",
  0.45359237,
  [0.3048, 0.3048, 0.3048, 1000],
);

/** One kilogram per second. Source: SI Brochure, 9th ed. */
export const kgPerSecond: Unit<"massFlow"> = /* @__PURE__ */ unit("massFlow", "kg/s", 1);

/** One kilogram per hour. Source: SI Brochure, 9th ed. */
export const kgPerHour: Unit<"massFlow"> = /* @__PURE__ */ unit("massFlow", "kg/h", 1, 3600);

/** One pound per hour. Source: NIST SP 811 (2008), B.8. */
export const lbPerHour: Unit<"massFlow"> = /* @__PURE__ */ unit(
  "massFlow",
  "lb/h",
  0.45359237,
  3600,
);

/**
 * One avoirdupois ounce per Julian year of 365.25 days, as leak detectors state what they find. Exact: 0.45359237/16 kg.
 * Source: NIST SP 811 (2008), B.8, for the ounce; IAU style manual (1989), 5.15, for the Julian year.
 */
export const ozPerYear: Unit<"massFlow"> = /* @__PURE__ */ unit(
  "massFlow",
  "oz/yr",
  0.45359237,
  [16, 365.25, 86_400],
);

/** One gram per Julian year of 365.25 days. Source: IAU style manual (1989), 5.15, for the Julian year. */
export const gPerYear: Unit<"massFlow"> = /* @__PURE__ */ unit(
  "massFlow",
  "g/yr",
  1e-3,
  [365.25, 86_400],
);
