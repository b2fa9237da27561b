// Units of volume flow and of gas throughput (leak rate). SI Brochure, 9th ed.; NIST SP 811 (2008), B.8.
import { type Unit, unit } from "../quantity.ts";

/** One cubic meter per second. Source: SI Brochure, 9th ed. */
export const m3PerSecond: Unit<"volumeFlow"> = /* @__PURE__ */ unit("volumeFlow", "m³/s", 1);

/** One cubic meter per hour. Source: SI Brochure, 9th ed. */
export const m3PerHour: Unit<"volumeFlow"> = /* @__PURE__ */ unit("volumeFlow", "m³/h", 1, 3600);

/** One liter per second. Source: SI Brochure, 9th ed. */
export const literPerSecond: Unit<"volumeFlow"> = /* @__PURE__ */ unit("volumeFlow", "L/s", 1e-3);

/** One liter per hour. Source: SI Brochure, 9th ed. */
export const literPerHour: Unit<"volumeFlow"> = /* @__PURE__ */ unit(
  "volumeFlow",
  "L/h",
  1e-3,
  3600,
);

/** One U.S. gallon per hour. Source: NIST SP 811 (2008), B.8. */
export const gallonPerHour: Unit<"volumeFlow"> = /* @__PURE__ */ unit(
  "volumeFlow",
  "gal/h",
  [231, 0.0254, 0.0254, 0.0254],
  3600,
);

/** One cubic foot per minute. Source: NIST SP 811 (2008), B.8. */
export const cfm: Unit<"volumeFlow"> = /* @__PURE__ */ unit(
  "volumeFlow",
  "cfm",
  [0.3048, 0.3048, 0.3048],
  60,
);

/** One pascal cubic meter per second of gas throughput; states no temperature by itself. Source: ISO 3529-1:2019. */
export const paM3PerS: Unit<"throughput"> = /* @__PURE__ */ unit("throughput", "Pa·m³/s", 1);

/** One millibar liter per second, exactly 0.1 Pa·m³/s. Source: NIST SP 811 (2008), B.8. */
export const mbarLiterPerSecond: Unit<"throughput"> = /* @__PURE__ */ unit(
  "throughput",
  "mbar·L/s",
  0.1,
);

/** One standard atmosphere cubic centimeter per second, exactly 0.101325 Pa·m³/s. Source: NIST SP 811 (2008), B.8. */
export const atmCm3PerSecond: Unit<"throughput"> = /* @__PURE__ */ unit(
  "throughput",
  "atm·cm³/s",
  0.101325,
);

/** One micron liter per second. Source: NIST SP 811 (2008), B.8. */
export const micronLiterPerSecond: Unit<"throughput"> = /* @__PURE__ */ unit(
  "throughput",
  "micron·L/s",
  0.101325,
  760,
);
