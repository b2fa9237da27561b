// How much larger must a room be in thin air? The factor on its area by altitude.
// Follows manuals of equipment sold in the United States, from memory; about p(600 m)/p(H).
// Does not cover altitudes above 3200 m: ask the manufacturer.

import { siOf } from "../quantity/check.ts";
import { OutOfRangeError } from "../quantity/errors.ts";
import { isAtMost } from "../quantity/limit.ts";
import type { Quantity } from "../quantity/quantity.ts";

// Altitude in m, factor. From memory; p(600 m)/p(H) of the standard atmosphere keeps to it within 0.02.
const factors: readonly (readonly [altitude: number, factor: number])[] = [
  [600, 1.0],
  [800, 1.02],
  [1000, 1.05],
  [1200, 1.07],
  [1400, 1.1],
  [1600, 1.12],
  [1800, 1.15],
  [2000, 1.18],
  [2200, 1.21],
  [2400, 1.25],
  [2600, 1.28],
  [2800, 1.32],
  [3000, 1.36],
  [3200, 1.4],
];

/**
 * The factor by which the floor area that a charge needs grows with altitude: 1 up to 600 m, and the next
 * higher row of the table in between, which is the safe side.
 *
 * @param altitude - `length` above sea level, −500 m to 3200 m.
 * @returns The factor, from 1 to 1.4.
 * @throws {@link OutOfRangeError} above 3200 m.
 * @throws {@link InvalidInputError} when it is not a length.
 *
 * Source: from memory, as manuals of equipment sold in the United States print it.
 *
 * @example
 * ```ts
 * import { roomAltitudeFactor } from "hvac-install-math/charge-limit";
 * import { ft } from "hvac-install-math/quantity";
 *
 * roomAltitudeFactor(ft(5280)); // => 1.15
 * ```
 */
export function roomAltitudeFactor(altitude: Quantity<"length">): number {
  const range = { min: -500, max: 3200 };
  const H = siOf("altitude", altitude, "length", range, OutOfRangeError);
  return factors.find(([row]) => isAtMost(H, row))?.[1] ?? 1.4;
}
