// What does the manual allow a line run?
// Follows the manual of the equipment. Does not cover the run as built: line-run.ts.

import type { Quantity } from "../quantity/quantity.ts";

/**
 * What the manual allows. Only what is given is checked.
 *
 * Source: manufacturers' published manuals, brands withheld.
 */
export interface RunLimits {
  /** Longest run, one way. */
  readonly maximumLength?: Quantity<"length"> | undefined;
  /** Shortest run: below it come noise, vibration and liquid return. */
  readonly minimumLength?: Quantity<"length"> | undefined;
  /** Largest height difference of the two units. */
  readonly maximumLift?: Quantity<"length"> | undefined;
  /** Largest height difference where the outdoor unit is the higher one, if the manual tells the two apart. */
  readonly maximumLiftOutdoorAbove?: Quantity<"length"> | undefined;
  /** Most bends, a whole number. */
  readonly maximumBends?: number | undefined;
  /** Length of straight tube that a bend counts for; `maximumLength` then holds the equivalent length. */
  readonly bendEquivalentLength?: Quantity<"length"> | undefined;
  /** Oil traps in the vapor riser: one for every `spacing` where the lift is more than `above`. */
  readonly oilTraps?:
    | {
        /** Lift that still needs none. */
        readonly above: Quantity<"length">;
        /** Height between traps. */
        readonly spacing: Quantity<"length">;
      }
    | undefined;
  /** Oil to add: `volume` for every started `per` beyond `beyond`. */
  readonly extraOil?:
    | {
        /** Length that the factory's oil covers. */
        readonly beyond: Quantity<"length">;
        /** Step of length. */
        readonly per: Quantity<"length">;
        /** Oil for a step. */
        readonly volume: Quantity<"volume">;
      }
    | undefined;
}
