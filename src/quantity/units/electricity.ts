// Units of voltage, current, resistance and power. SI Brochure, 9th ed., table 4; NIST SP 811 (2008), B.8.
import { type Unit, unit } from "../quantity.ts";

/** One volt. Exact: the SI unit. Source: SI Brochure, 9th ed. */
export const volt: Unit<"voltage"> = /* @__PURE__ */ unit("voltage", "V", 1);

/** One ampere. Exact: the SI base unit. Source: SI Brochure, 9th ed. */
export const ampere: Unit<"current"> = /* @__PURE__ */ unit("current", "A", 1);

/** One milliampere: residual currents. Exact. Source: SI Brochure, 9th ed. */
export const milliampere: Unit<"current"> = /* @__PURE__ */ unit("current", "mA", 1e-3);

/** One ohm. Exact: the SI unit. Source: SI Brochure, 9th ed. */
export const ohm: Unit<"resistance"> = /* @__PURE__ */ unit("resistance", "Ω", 1);

/** One ohm per kilometer. Source: SI Brochure, 9th ed. */
export const ohmPerKm: Unit<"resistancePerLength"> = /* @__PURE__ */ unit(
  "resistancePerLength",
  "Ω/km",
  1e-3,
);

/** One ohm per thousand feet. Source: NIST SP 811 (2008), B.8. */
export const ohmPerKft: Unit<"resistancePerLength"> = /* @__PURE__ */ unit(
  "resistancePerLength",
  "Ω/kft",
  1,
  304.8,
);

/** One watt. Exact: the SI unit. Source: SI Brochure, 9th ed. */
export const watt: Unit<"power"> = /* @__PURE__ */ unit("power", "W", 1);

/** One kilowatt. Source: SI Brochure, 9th ed. */
export const kW: Unit<"power"> = /* @__PURE__ */ unit("power", "kW", 1e3);

/** One International Table British thermal unit per hour (1 Btu = 1055.05585262 J, exact). Source: NIST SP 811 (2008), B.8. */
export const btuPerHour: Unit<"power"> = /* @__PURE__ */ unit(
  "power",
  "Btu/h",
  1055.05585262,
  3600,
);

/** One ton of refrigeration, 12 000 Btu/h. Source: NIST SP 811 (2008), B.8. */
export const tonRefrigeration: Unit<"power"> = /* @__PURE__ */ unit(
  "power",
  "ton",
  [12000, 1055.05585262],
  3600,
);
