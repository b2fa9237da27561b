// Which parts has the uncertainty of a drop?
// Follows JCGM 100:2008. Does not cover how large each is: drop.ts.

/**
 * A part of the uncertainty of the drop: reading the gauge, its wander, its common error, reading the
 * thermometer, its common error, how well it follows the gas, what is left of the warmth of the fill, the barometer, the walls, the volumes of
 * the zones, the scatter of a log.
 */
export type UncertaintyPart =
  | "gauge-reading"
  | "gauge-drift"
  | "gauge-error"
  | "thermometer-reading"
  | "thermometer-error"
  | "gas-temperature"
  | "settling"
  | "barometer"
  | "wall-expansion"
  | "zone-volumes"
  | "scatter";

/** One line of the budget: what it is, and the standard uncertainty that it gives the drop. */
export interface Share {
  readonly part: UncertaintyPart;
  readonly u: number;
}
