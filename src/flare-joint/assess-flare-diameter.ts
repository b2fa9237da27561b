// Is the flare wide enough, and not too wide for its nut? Outside diameter against the manuals' limits.
// Follows manufacturers' published manuals (flares for R410A and R32, and for R22).
// Does not cover 5/16 in, metric tube, nor other refrigerants: take those from the unit's manual.

import { cite } from "../assessment/assessment.ts";
import type { Instrument } from "../assessment/uncertainty.ts";
import { objectOf } from "../quantity/check.ts";
import { frozen } from "../quantity/frozen.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { mm } from "../quantity/units/geometry.ts";
import {
  type FlareLimits,
  hullOf,
  limitsFor,
  limitsOf,
  manualWasReadAgain,
} from "./flare-limits.ts";
import {
  borrowed,
  type FlareRefrigerant,
  type FlareTube,
  figureOf,
  isHeld,
  isHighPressure,
  requireTube,
} from "./flare-tube.ts";
import { type FlareAssessment, judge } from "./judge.ts";
import { doubtOfDiameter } from "./manual-doubts.ts";
import { say } from "./statements.ts";

type Range = readonly [low: number, high: number];

// Outside diameter of the flare in mm: R410A, R32; R22. At 1/4 in one manual ends R22 at 9.0, two others at 9.1.
const diameters: Partial<Record<FlareTube, readonly [Range, Range]>> = {
  "1/4": [
    [8.7, 9.1],
    [8.6, 9.1],
  ],
  "3/8": [
    [12.8, 13.2],
    [12.6, 13.0],
  ],
  "1/2": [
    [16.2, 16.6],
    [15.8, 16.2],
  ],
  "5/8": [
    [19.3, 19.7],
    [19.0, 19.4],
  ],
  "3/4": [
    [23.6, 24.0],
    [23.3, 23.7],
  ],
};

/**
 * The smallest and the largest outside diameter of a flare.
 *
 * @param joint - Tube and refrigerant.
 * @returns The two limits, in mm.
 * @throws {@link OutOfRangeError} for 5/16 and for metric tube, for which nothing is published here.
 * @throws {@link InvalidInputError} when the tube or the refrigerant is not in the table.
 *
 * Source: manufacturers' published manuals; R454B by R410A is common practice, no source.
 *
 * @example
 * ```ts
 * import { flareDiameterLimits } from "hvac-install-math/flare-joint";
 *
 * const { low, high } = flareDiameterLimits({ tube: "3/8", refrigerant: "R32" });
 * `${low} to ${high}`; // => 12.8 mm to 13.2 mm
 * ```
 */
export function flareDiameterLimits(joint: {
  /** Outside diameter of the tube. */
  readonly tube: FlareTube;
  /** Refrigerant of the unit. */
  readonly refrigerant: FlareRefrigerant;
}): FlareLimits<"length"> {
  objectOf("joint", joint);
  const row = figureOf(diameters, joint.tube);
  const [low, high] = row[isHighPressure(joint.refrigerant) ? 0 : 1];
  return frozen({ low: mm(low), high: mm(high) });
}

/**
 * A measured flare.
 */
export interface FlareDiameterInput {
  /** Outside diameter of the tube. */
  readonly tube: FlareTube;
  /** Refrigerant of the unit: a {@link FlareRefrigerant}, or any other with the limits of its manual. */
  readonly refrigerant: string;
  /** Measured outside diameter of the flare, above 0. */
  readonly diameter: Quantity<"length">;
  /** The limits in the unit's manual; they decide alone, unless they are in doubt. */
  readonly manual?: FlareLimits<"length"> | undefined;
  /** Whether the manual was read again and says so: then its limits decide, whatever else is published. */
  readonly manualReadAgain?: boolean | undefined;
  /** What is known of the caliper; counted as exact when left out. */
  readonly caliper?: Instrument<"length"> | undefined;
  /** How sure a pass or a fail has to be; 0.95 when left out. */
  readonly confidence?: number | undefined;
}

/** What is wrong with the diameter. Source: see {@link assessFlareDiameter}. */
export type FlareDiameterCause = "flare-too-small" | "flare-too-large";

/**
 * Judges the outside diameter of a flare. Too small seats on too little copper and pulls through; too
 * large binds in the nut and leaves its rim thin.
 *
 * Limits of a manual that share nothing with the published ones of the size (`flare-joint.manual-range-apart`) or lie more
 * than 1 mm apart (`flare-joint.manual-diameters-wide`) let nothing pass: read the manual again, with its unit, and say
 * so by `manualReadAgain`.
 *
 * @param input - Tube, refrigerant, diameter, caliper.
 * @returns The verdict, with `cause` on a fail. Measure two diameters at right angles and judge both.
 * @throws {@link OutOfRangeError} for 5/16 and metric tube without the manual's limits.
 * @throws {@link InvalidInputError} when the diameter is not above 0 or a kind does not fit.
 *
 * Cautions: look at the face too: burrs, scratches and cracks leak at any diameter.
 *
 * Source: manufacturers' published manuals; JCGM 106:2012, 8.3.
 *
 * @example
 * ```ts
 * import { assessFlareDiameter } from "hvac-install-math/flare-joint";
 * import { mm } from "hvac-install-math/quantity";
 *
 * const flare = { tube: "3/8", diameter: mm(13.1) } as const;
 * assessFlareDiameter({ ...flare, refrigerant: "R410A" }).outcome; // => pass
 * assessFlareDiameter({ ...flare, refrigerant: "R22" }).cause; // => flare-too-large
 * ```
 */
export function assessFlareDiameter(
  input: FlareDiameterInput,
): FlareAssessment<"length", FlareDiameterCause> {
  objectOf("input", input);
  const { manual, tube, refrigerant } = input;
  requireTube(tube);
  const isPublished = isHeld(refrigerant);
  const readAgain = manualWasReadAgain(input);
  const stated = manual === undefined ? undefined : limitsOf("manual", manual, "length");
  const rows = diameters[tube]?.map(([low, high]) => ({ low: mm(low), high: mm(high) }));
  const published = rows && isPublished ? hullOf(rows) : undefined;
  const doubts = stated && !readAgain.length ? doubtOfDiameter(tube, stated, published) : [];
  const doubtful = doubts.length > 0 && published;
  const window =
    stated && !doubtful
      ? stated
      : flareDiameterLimits({ tube, refrigerant: refrigerant as FlareRefrigerant });
  return judge({
    argument: "diameter",
    value: input.diameter,
    kind: "length",
    figure: "diameter",
    instrument: input.caliper,
    instrumentArgument: "caliper",
    confidence: input.confidence,
    sure: window,
    possible: stated && doubtful ? hullOf([stated, published]) : window,
    below: "flare-too-small",
    above: "flare-too-large",
    remedy: (cause, limits) =>
      cause === "flare-too-small"
        ? say("flare-joint.remake-larger", limitsFor(limits))
        : say("flare-joint.remake-smaller", limitsFor(limits)),
    doubts,
    assumptions: stated ? readAgain : borrowed(refrigerant),
    sources: [cite("manufacturer-manuals", "flare diameter"), cite("jcgm-106-2012", "8.3")],
  });
}
