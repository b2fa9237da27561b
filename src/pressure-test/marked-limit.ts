// Which marked pressure must the nitrogen not exceed?
// Follows the plates of the equipment. Does not cover which is the lowest: pressurization-plan.ts.

import type { Quantity } from "../quantity/quantity.ts";

/** A limit that is marked on something under test. */
export interface MarkedLimit {
  /** What bears it: low side, high side, a component, a relief device. */
  readonly part: "low side" | "high side" | "component" | "relief device";
  /** The marked pressure: highest allowed, or the setting of a relief device. */
  readonly pressure: Quantity<"gaugePressure">;
}
