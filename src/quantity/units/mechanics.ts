// Units of torque. SI Brochure, 9th ed.; NIST SP 811 (2008), B.8.
import { type Unit, unit } from "../quantity.ts";

/** One newton meter. Exact: the SI unit. Source: SI Brochure, 9th ed. */
export const newtonMeter: Unit<"torque"> = /* @__PURE__ */ unit("torque", "N·m", 1);

/** One foot pound-force, 0.45359237 kg × 9.80665 m/s² × 0.3048 m, exact. Source: NIST SP 811 (2008), B.8. */
export const ftLb: Unit<"torque"> = /* @__PURE__ */ unit(
  "torque",
  "ft·lb",
  [0.45359237, 9.80665, 0.3048],
);
