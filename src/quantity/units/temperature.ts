// Units of temperature and of temperature difference. SI Brochure, 9th ed., 2.3.4 (°C); NIST SP 811
// (2008), B.8: t/°F = 1.8 t/°C + 32, exact, so 0 °F = 459.67/1.8 K.
import { pointUnit, type Unit, unit } from "../quantity.ts";

/** Difference of one kelvin. Exact: the SI base unit. Source: SI Brochure, 9th ed., 2.3.1. */
export const deltaK: Unit<"temperatureDifference"> = /* @__PURE__ */ unit(
  "temperatureDifference",
  "K",
  1,
);

/** Difference of one degree Celsius, exactly 1 K. Source: SI Brochure, 9th ed., 2.3.1. */
export const deltaC: Unit<"temperatureDifference"> = /* @__PURE__ */ unit(
  "temperatureDifference",
  "Δ°C",
  1,
);

/** Difference of one degree Fahrenheit, exactly 1/1.8 K. Source: NIST SP 811 (2008), B.8. */
export const deltaF: Unit<"temperatureDifference"> = /* @__PURE__ */ unit(
  "temperatureDifference",
  "Δ°F",
  1,
  1.8,
);

/** Thermodynamic temperature in kelvin. Exact: the SI base unit. Source: SI Brochure, 9th ed., 2.3.1. */
export const kelvin: Unit<"temperature"> = /* @__PURE__ */ pointUnit("temperature", "K", deltaK);

/** Temperature in degrees Celsius: T/K = t/°C + 273.15, exact. Source: SI Brochure, 9th ed., 2.3.1. */
export const degC: Unit<"temperature"> = /* @__PURE__ */ pointUnit(
  "temperature",
  "°C",
  deltaC,
  273.15,
);

/** Temperature in degrees Fahrenheit: T/K = (t/°F + 459.67)/1.8, exact. Source: NIST SP 811 (2008), B.8. */
export const degF: Unit<"temperature"> = /* @__PURE__ */ pointUnit(
  "temperature",
  "°F",
  deltaF,
  459.67,
);
