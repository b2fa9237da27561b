// What is one reading of a vacuum gauge?
// Follows no standard. Does not cover which readings count: collect.ts.

import type { Quantity } from "../quantity/quantity.ts";

/**
 * One reading of the gauge.
 */
export interface DecayReading {
  /** Time since the system was isolated from the pump. */
  readonly elapsed: Quantity<"duration">;
  /** What the gauge shows. */
  readonly pressure: Quantity<"absolutePressure">;
}
