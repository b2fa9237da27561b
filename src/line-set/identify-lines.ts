// Which of the two lines is which? The smaller tube carries the liquid, the larger the vapor.
// Follows common practice of split systems, no source. Does not cover three-pipe heat-recovery systems.

import { refuse } from "../quantity/check.ts";
import { frozen } from "../quantity/frozen.ts";
import { choose } from "../quantity/hints.ts";
import { diametersOf, type TubeSize } from "./tube.ts";

/**
 * The liquid and the vapor line of a line set. The vapor line is the suction line in cooling and
 * carries hot gas at high pressure in heating.
 *
 * Source: common practice, no source.
 */
export interface LinePair<T extends TubeSize> {
  /** The smaller tube. */
  readonly liquid: T;
  /** The larger tube. */
  readonly vapor: T;
}

/**
 * Tells the liquid line from the vapor line by outside diameter.
 *
 * @param a - One of the two tubes.
 * @param b - The other.
 * @returns The two by what they carry.
 * @throws {@link InvalidInputError} when both have the same outside diameter, or a dimension is impossible.
 * Caution: in heating the larger line holds discharge pressure; look at the mode before you connect a gauge.
 *
 * Source: common practice, no source.
 *
 * @example
 * ```ts
 * import { astmB280Tube, identifyLines } from "hvac-install-math/line-set";
 *
 * const big = astmB280Tube({ size: "1/2", temper: "annealed" });
 * const small = astmB280Tube({ size: "1/4", temper: "annealed" });
 * identifyLines(big, small).liquid.designation; // => 1/4 in
 * ```
 */
export function identifyLines<T extends TubeSize>(a: T, b: T): LinePair<T> {
  const difference = diametersOf("a", a).outside - diametersOf("b", b).outside;
  if (difference === 0) {
    const matching = choose(["a.outsideDiameter", "b.outsideDiameter"], "matching");
    const allowed = `other than that of a: ${a.outsideDiameter}`;
    refuse("b.outsideDiameter", b.outsideDiameter, allowed, matching);
  }
  return frozen(difference < 0 ? { liquid: a, vapor: b } : { liquid: b, vapor: a });
}
