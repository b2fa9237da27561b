// Units of pressure: differences, gauge (above the local atmosphere), absolute (above vacuum), and the
// rate of pressure change. SI Brochure, 9th ed.; NIST SP 811 (2008), B.8; ISO 80000-4:2019, 4-14.
//
// The torr, and with it the micron, is 101 325/760 Pa exactly. The inch of mercury is the conventional
// one, on mercury of 13 595.1 kg/m³: 25.4 torr is 1.4e-7 less.
import { pointUnit, type Unit, unit } from "../quantity.ts";

/** Difference of one pascal. Exact: the SI unit. Source: SI Brochure, 9th ed. */
export const pascal: Unit<"pressureDifference"> = /* @__PURE__ */ unit(
  "pressureDifference",
  "Pa",
  1,
);

/** Difference of one kilopascal. Source: SI Brochure, 9th ed. */
export const kPa: Unit<"pressureDifference"> = /* @__PURE__ */ unit(
  "pressureDifference",
  "kPa",
  1e3,
);

/** Difference of one megapascal. Source: SI Brochure, 9th ed. */
export const MPa: Unit<"pressureDifference"> = /* @__PURE__ */ unit(
  "pressureDifference",
  "MPa",
  1e6,
);

/** Difference of one millibar, exactly 100 Pa. Source: SI Brochure, 9th ed., table 8. */
export const mbar: Unit<"pressureDifference"> = /* @__PURE__ */ unit(
  "pressureDifference",
  "mbar",
  100,
);

/** Difference of one bar, exactly 100 kPa. Source: NIST SP 811 (2008), B.8. */
export const bar: Unit<"pressureDifference"> = /* @__PURE__ */ unit(
  "pressureDifference",
  "bar",
  1e5,
);

/** Difference of one pound-force per square inch: 0.45359237 kg × 9.80665 m/s² / (0.0254 m)², exact. Source: NIST SP 811 (2008), B.8. */
export const psi: Unit<"pressureDifference"> = /* @__PURE__ */ unit(
  "pressureDifference",
  "psi",
  [0.45359237, 9.80665],
  [0.0254, 0.0254],
);

/** Difference of one inch of mercury, conventional: 13 595.1 kg/m³ × 9.80665 m/s² × 0.0254 m = 3386.389 Pa. Source: NIST SP 811 (2008), B.8. */
export const inHg: Unit<"pressureDifference"> = /* @__PURE__ */ unit(
  "pressureDifference",
  "inHg",
  [13595.1, 9.80665, 0.0254],
);

/** Difference of one inch of water, conventional: 1000 kg/m³ × 9.80665 m/s² × 0.0254 m = 249.089 Pa, exact. Source: NIST SP 811 (2008), B.8. */
export const inchWater: Unit<"pressureDifference"> = /* @__PURE__ */ unit(
  "pressureDifference",
  "inH2O",
  [1000, 9.80665, 0.0254],
);

/** Gauge pressure in pounds-force per square inch above the local atmosphere. Source: NIST SP 811 (2008), B.8. */
export const psig: Unit<"gaugePressure"> = /* @__PURE__ */ pointUnit("gaugePressure", "psig", psi);

/** Gauge pressure in kilopascals above the local atmosphere. Source: SI Brochure, 9th ed. */
export const kPag: Unit<"gaugePressure"> = /* @__PURE__ */ pointUnit("gaugePressure", "kPag", kPa);

/** Gauge pressure in megapascals above the local atmosphere. Source: SI Brochure, 9th ed. */
export const MPag: Unit<"gaugePressure"> = /* @__PURE__ */ pointUnit("gaugePressure", "MPag", MPa);

/** Gauge pressure in bars above the local atmosphere. Source: NIST SP 811 (2008), B.8. */
export const barg: Unit<"gaugePressure"> = /* @__PURE__ */ pointUnit("gaugePressure", "barg", bar);

/** Gauge pressure in inches of mercury: a compound gauge that shows 20 inches of vacuum reads −20. Source: NIST SP 811 (2008), B.8. */
export const inHgGauge: Unit<"gaugePressure"> = /* @__PURE__ */ pointUnit(
  "gaugePressure",
  "inHg gauge",
  inHg,
);

/** Absolute pressure in pascals. Source: SI Brochure, 9th ed. */
export const pascalAbsolute: Unit<"absolutePressure"> = /* @__PURE__ */ pointUnit(
  "absolutePressure",
  "Pa abs",
  pascal,
);

/** Absolute pressure in kilopascals. Source: SI Brochure, 9th ed. */
export const kPaa: Unit<"absolutePressure"> = /* @__PURE__ */ pointUnit(
  "absolutePressure",
  "kPaa",
  kPa,
);

/** Absolute pressure in megapascals. Source: SI Brochure, 9th ed. */
export const MPaa: Unit<"absolutePressure"> = /* @__PURE__ */ pointUnit(
  "absolutePressure",
  "MPaa",
  MPa,
);

/** Absolute pressure in bars. Source: NIST SP 811 (2008), B.8. */
export const bara: Unit<"absolutePressure"> = /* @__PURE__ */ pointUnit(
  "absolutePressure",
  "bara",
  bar,
);

/** Absolute pressure in millibars (hectopascals), as a barometer reads. Source: NIST SP 811 (2008), B.8. */
export const mbara: Unit<"absolutePressure"> = /* @__PURE__ */ pointUnit(
  "absolutePressure",
  "mbara",
  mbar,
);

/** Absolute pressure in pounds-force per square inch. Source: NIST SP 811 (2008), B.8. */
export const psia: Unit<"absolutePressure"> = /* @__PURE__ */ pointUnit(
  "absolutePressure",
  "psia",
  psi,
);

/** Absolute pressure in inches of mercury, as a barometer reads. Source: NIST SP 811 (2008), B.8. */
export const inHgAbsolute: Unit<"absolutePressure"> = /* @__PURE__ */ pointUnit(
  "absolutePressure",
  "inHg abs",
  inHg,
);

/** Difference of one torr, exactly 101 325/760 Pa. Source: NIST SP 811 (2008), B.8. */
export const torrDifference: Unit<"pressureDifference"> = /* @__PURE__ */ unit(
  "pressureDifference",
  "torr",
  101325,
  760,
);

/** Difference of one micron of vacuum, exactly 1/1000 torr. Source: NIST SP 811 (2008), B.8. */
export const micronDifference: Unit<"pressureDifference"> = /* @__PURE__ */ unit(
  "pressureDifference",
  "micron",
  101.325,
  760,
);

/** Absolute pressure in torr, exactly 101 325/760 Pa. Source: NIST SP 811 (2008), B.8. */
export const torr: Unit<"absolutePressure"> = /* @__PURE__ */ pointUnit(
  "absolutePressure",
  "torr",
  torrDifference,
);

/** Absolute pressure in microns of vacuum, exactly 1/1000 torr = 0.133 322 368… Pa. Source: NIST SP 811 (2008), B.8. */
export const micron: Unit<"absolutePressure"> = /* @__PURE__ */ pointUnit(
  "absolutePressure",
  "micron",
  micronDifference,
);

/** Rate of pressure change in pascals per second. Source: SI Brochure, 9th ed. */
export const pascalPerSecond: Unit<"pressureRate"> = /* @__PURE__ */ unit(
  "pressureRate",
  "Pa/s",
  1,
);

/** Rate of pressure change in microns per minute. Source: NIST SP 811 (2008), B.8. */
export const micronPerMinute: Unit<"pressureRate"> = /* @__PURE__ */ unit(
  "pressureRate",
  "micron/min",
  101.325,
  [760, 60],
);

/** Rate of pressure change in pounds-force per square inch per hour. Source: NIST SP 811 (2008), B.8. */
export const psiPerHour: Unit<"pressureRate"> = /* @__PURE__ */ unit(
  "pressureRate",
  "psi/h",
  [0.45359237, 9.80665],
  [0.0254, 0.0254, 3600],
);

/** Rate of pressure change in kilopascals per hour. Source: SI Brochure, 9th ed. */
export const kPaPerHour: Unit<"pressureRate"> = /* @__PURE__ */ unit(
  "pressureRate",
  "kPa/h",
  1e3,
  3600,
);
