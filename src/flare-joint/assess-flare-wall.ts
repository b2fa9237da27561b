// Is the tube thick enough to flare? Wall thickness against what manuals ask for R410A and R32.
// Follows manufacturers' published manuals: 0.7 to 0.8 mm for 1/4 to 1/2 in, 0.8 to 1.0 mm for 5/8 in.
// Does not cover pressure strength, 3/4 in, nor R22: state the minimum of the manual there.
import { cite } from "../assessment/assessment.ts";
import type { Instrument } from "../assessment/uncertainty.ts";
import { describe, objectOf, refuse, siOf } from "../quantity/check.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { mm } from "../quantity/units/geometry.ts";
import { limitsFor, manualWasReadAgain } from "./flare-limits.ts";
import {
  borrowed,
  diameterOf,
  type FlareTube,
  figureOf,
  isHeld,
  isHighPressure,
  isMetric,
  requireTube,
} from "./flare-tube.ts";
import { type FlareAssessment, judge } from "./judge.ts";
import { doubtOfWall } from "./manual-doubts.ts";
import { say } from "./statements.ts";

// The least wall that manuals ask for R410A and R32, mm: the most lenient and the strictest of them.
const walls: Partial<Record<FlareTube, readonly [lenient: number, strict: number]>> = {
  "1/4": [0.7, 0.8],
  "5/16": [0.7, 0.8],
  "3/8": [0.7, 0.8],
  "1/2": [0.7, 0.8],
  "5/8": [0.8, 1.0],
  // EN 378-2:2016, from memory.
  "6 mm": [0.8, 0.8],
  "8 mm": [0.8, 0.8],
  "10 mm": [0.8, 0.8],
  "12 mm": [0.8, 0.8],
  "15 mm": [0.8, 0.8],
  "18 mm": [1.0, 1.0],
};

/**
 * A tube before it is flared.
 */
export interface FlareWallInput {
  /** Outside diameter of the tube. */
  readonly tube: FlareTube;
  /** Refrigerant of the unit: a R410A, R32, R454B, or any other with the minimum of its manual. */
  readonly refrigerant: string;
  /** Measured wall, above 0 and below half of the tube. */
  readonly wall: Quantity<"length">;
  /** The minimum in the unit's manual; from 0.5 mm it decides alone. Needed for 3/4 in, and for any refrigerant but R410A, R32, R454B. */
  readonly manualMinimum?: Quantity<"length"> | undefined;
  /** Whether the manual was read again and says so: then its minimum decides, however thin. */
  readonly manualReadAgain?: boolean | undefined;
  /** What is known of the micrometer; counted as exact when left out. */
  readonly micrometer?: Instrument<"length"> | undefined;
  /** How sure a pass or a fail has to be; 0.95 when left out. */
  readonly confidence?: number | undefined;
}

/**
 * Judges whether a tube's wall is thick enough for a flare. Manuals differ: what the strictest of them
 * allows passes, what the most lenient refuses fails, and between the two the unit's manual decides. A
 * minimum below 0.5 mm lets nothing pass (`flare-joint.manual-minimum-thin`): read the manual again, with its unit.
 *
 * @param input - Tube, refrigerant, wall, the manual's minimum.
 * @returns The verdict, with `cause` on a fail.
 * @throws {@link OutOfRangeError} for 3/4 in without `manualMinimum`.
 * @throws {@link InvalidInputError} for R22 and any refrigerant that is not held without `manualMinimum`, when the wall
 * is not above 0, or a kind does not fit.
 *
 * Cautions: line-set tube on the market is often thinner than ASTM B280 (0.61 to 0.81 mm). A thin wall
 * under the pressure of R410A or R32 splits at the flare.
 *
 * Source: manufacturers' published manuals; metric tube by EN 378-2:2016 from memory; JCGM 106:2012, 8.3.
 *
 * @example
 * ```ts
 * import { assessFlareWall } from "hvac-install-math/flare-joint";
 * import { inch, mm } from "hvac-install-math/quantity";
 *
 * const tube = { tube: "3/8", refrigerant: "R410A" } as const;
 * assessFlareWall({ ...tube, wall: inch(0.032) }).outcome; // => pass
 * assessFlareWall({ ...tube, wall: mm(0.61) }).cause; // => wall-too-thin
 * ```
 */
export function assessFlareWall(input: FlareWallInput): FlareAssessment<"length", "wall-too-thin"> {
  objectOf("input", input);
  const { tube, refrigerant, manualMinimum } = input;
  requireTube(tube);
  siOf("wall", input.wall, "length", { above: 0, below: diameterOf(tube) / 2000 });
  const hasRule = isHeld(refrigerant) && isHighPressure(refrigerant);
  if (!hasRule && manualMinimum === undefined) {
    const allowed = `a length; no minimum is published here for ${describe(refrigerant)}`;
    refuse("manualMinimum", undefined, allowed, "length");
  }
  const readAgain = manualWasReadAgain(input);
  if (manualMinimum !== undefined) siOf("manualMinimum", manualMinimum, "length", { above: 0 });
  const least = (of: 0 | 1) => manualMinimum ?? mm(figureOf(walls, tube)[of]);
  return judge({
    argument: "wall",
    value: input.wall,
    kind: "length",
    figure: "wall",
    instrument: input.micrometer,
    instrumentArgument: "micrometer",
    confidence: input.confidence,
    sure: { low: least(1) },
    possible: { low: least(0) },
    below: "wall-too-thin",
    above: "wall-too-thin",
    remedy: (_, limits) => say("flare-joint.replace-tube", { low: limitsFor(limits).low }),
    doubts: manualMinimum && !readAgain.length ? doubtOfWall(manualMinimum) : [],
    assumptions: manualMinimum ? readAgain : borrowed(refrigerant),
    sources: [
      isMetric(tube) && !manualMinimum
        ? cite("en-378-2", "wall of flared tube, from memory")
        : cite("manufacturer-manuals", "minimum wall"),
      cite("jcgm-106-2012", "8.3"),
    ],
  });
}
