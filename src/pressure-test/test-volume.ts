// How much gas space is under test? Tubing by bore and length, plus coils and vessels.
// Follows V = π/4 d² L. Does not cover what is shut off by a valve: leave it out.
import { askOneOf, listOf, objectOf, siOf } from "../quantity/check.ts";
import { Quantity } from "../quantity/quantity.ts";
import { liter } from "../quantity/units/geometry.ts";

/** A run of tube. */
export interface TubeRun {
  /** Bore, not the nominal outside diameter: wall taken off twice. A tolerance of 0.003 in on the wall of 1/4 in tube is 6 % of its volume. */
  readonly insideDiameter: Quantity<"length">;
  /** Developed length, above 0. */
  readonly length: Quantity<"length">;
}

/**
 * The inner volume of what is tested: the tubes, and the coils, receivers and compressor whose volume
 * the maker states.
 *
 * @param parts - `tubes` (bore and length, each above 0) and `vessels` (`volume`, each above 0), at least
 * one of either.
 * @returns The `volume`, in liters.
 * @throws {@link InvalidInputError} when nothing is given, or a value is of another kind or not above 0.
 *
 * Source: geometry.
 *
 * @example
 * ```ts
 * import { testVolume } from "hvac-install-math/pressure-test";
 * import { ft, inch, liter } from "hvac-install-math/quantity";
 *
 * const volume = testVolume({
 *   tubes: [
 *     { insideDiameter: inch(0.311), length: ft(25) },
 *     { insideDiameter: inch(0.555), length: ft(25) },
 *   ],
 *   vessels: [liter(0.8)],
 * });
 * volume.toString(liter, 2); // => 2.36 L
 * ```
 */
export function testVolume(parts: {
  readonly tubes?: readonly TubeRun[] | undefined;
  readonly vessels?: readonly Quantity<"volume">[] | undefined;
}): Quantity<"volume"> {
  const { tubes = [], vessels = [] } = parts ?? {};
  if (listOf("tubes", tubes).length + listOf("vessels", vessels).length === 0) {
    askOneOf("tubes, vessels", "nothing", ["tubes", "vessels"]);
  }
  let sum = 0;
  tubes.forEach((tube, i) => {
    const { insideDiameter, length } = objectOf(`tubes[${i}]`, tube);
    const d = siOf(`tubes[${i}].insideDiameter`, insideDiameter, "length", { above: 0 });
    sum += (Math.PI / 4) * d * d * siOf(`tubes[${i}].length`, length, "length", { above: 0 });
  });
  vessels.forEach((vessel, i) => {
    sum += siOf(`vessels[${i}]`, vessel, "volume", { above: 0 });
  });
  return new Quantity(sum, liter);
}
