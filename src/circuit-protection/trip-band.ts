// When does a miniature breaker trip? Its conventional currents and its instantaneous band.
// Follows IEC 60898-1:2015, tables 2 and 7.
// Does not cover ambient temperature, grouping of breakers, or moulded-case breakers (IEC 60947-2).

import { oneOf, refuse } from "../quantity/check.ts";
import { frozen } from "../quantity/frozen.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { ampere } from "../quantity/units/electricity.ts";
import { amperesOf, rulesOf } from "./checks.ts";
import type { CircuitRules, TripCurve } from "./rules/index.ts";

/**
 * Currents of a breaker's characteristic.
 *
 * Source: IEC 60898-1:2015, tables 2 and 7.
 */
export interface TripBand {
  /** Does not trip within the conventional time (1 h up to 63 A). */
  readonly noTrip: Quantity<"current">;
  /** Trips within the conventional time. */
  readonly trip: Quantity<"current">;
  /** Does not trip at once below this. */
  readonly instantaneousFrom: Quantity<"current">;
  /** Trips at once above this. */
  readonly instantaneousTo: Quantity<"current">;
}

/**
 * Tripping currents of a miniature breaker.
 *
 * Assumes the reference ambient of 30 °C.
 *
 * @param input - Rules that know such breakers, rating above 0, curve.
 * @returns The conventional currents and the instantaneous band.
 * @throws {@link InvalidInputError} when the rules have no trip curves or the curve is unknown.
 *
 * Source: IEC 60898-1:2015, tables 2 and 7.
 *
 * @example
 * ```ts
 * import { iec60364, tripBand } from "hvac-install-math/circuit-protection";
 * import { ampere } from "hvac-install-math/quantity";
 *
 * const band = tripBand({ rules: iec60364, rating: ampere(16), curve: "C" });
 * band.noTrip.toString(); // => 18.08 A
 * band.instantaneousFrom.toString(); // => 80 A
 * ```
 */
export function tripBand(input: {
  /** The rule set. */
  readonly rules: CircuitRules;
  /** Rating of the breaker. */
  readonly rating: Quantity<"current">;
  /** Its curve. */
  readonly curve: TripCurve;
}): TripBand {
  const { tripping } = rulesOf(input);
  if (!tripping) refuse("rules", input.rules.name, "rules with trip curves");
  const rating = amperesOf("rating", input.rating);
  const [from, to] = tripping.curves[oneOf("curve", input.curve, ["B", "C", "D"])];
  return frozen({
    noTrip: ampere(rating * tripping.noTrip),
    trip: ampere(rating * tripping.trip),
    instantaneousFrom: ampere(rating * from),
    instantaneousTo: ampere(rating * to),
  });
}
