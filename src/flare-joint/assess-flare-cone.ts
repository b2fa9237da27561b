// Is it a refrigeration flare at all? The seat angle, 45° for SAE J513, 37° for hydraulic SAE J514.
// Follows SAE J513 and manufacturers' manuals: 45° ± 2°, 90° in total.
// Does not cover flareless, press or brazed joints.

import { cite } from "../assessment/assessment.ts";
import type { Instrument } from "../assessment/uncertainty.ts";
import { objectOf, siOf } from "../quantity/check.ts";
import { isAtMost } from "../quantity/limit.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { degreeAngle } from "../quantity/units/geometry.ts";
import { type FlareAssessment, judge } from "./judge.ts";
import { say } from "./statements.ts";

/**
 * A measured flare cone.
 */
export interface FlareConeInput {
  /** Angle between the flare's face and the tube's axis, above 0: half of the total angle. */
  readonly seatAngle: Quantity<"angle">;
  /** What is known of the protractor; counted as exact when left out. */
  readonly protractor?: Instrument<"angle"> | undefined;
  /** How sure a pass or a fail has to be; 0.95 when left out. */
  readonly confidence?: number | undefined;
}

/** What is wrong with the cone. Source: see {@link assessFlareCone}. */
export type FlareConeCause = "cone-too-steep" | "cone-too-flat";

/**
 * Judges the seat angle of a flare: 45° ± 2° for refrigeration. A 37° cone is a hydraulic flare (SAE
 * J514); the two are not interchangeable and leak when mixed.
 *
 * @param input - Seat angle and protractor.
 * @returns The verdict, with `cause` on a fail.
 * @throws {@link InvalidInputError} when the angle is not above 0 or a kind does not fit.
 *
 * Cautions: see {@link flareTorque}.
 *
 * Source: manufacturers' published manuals; SAE J513, which says that 45° and 37° do not mate; SAE J514 from memory.
 *
 * @example
 * ```ts
 * import { assessFlareCone } from "hvac-install-math/flare-joint";
 * import { degreeAngle } from "hvac-install-math/quantity";
 *
 * assessFlareCone({ seatAngle: degreeAngle(37) }).reasons.map(({ code }) => code).join(); // => flare-joint.outside-range,flare-joint.hydraulic-flare
 * ```
 */
export function assessFlareCone(input: FlareConeInput): FlareAssessment<"angle", FlareConeCause> {
  objectOf("input", input);
  const window = { low: degreeAngle(43), high: degreeAngle(47) };
  // 37° ± 2°: the width is taken over from the 45° flare.
  const off = Math.abs(siOf("seatAngle", input.seatAngle, "angle") - degreeAngle(37).si);
  const isHydraulic = isAtMost(off, degreeAngle(2).si, degreeAngle.scale);
  return judge({
    argument: "seatAngle",
    value: input.seatAngle,
    kind: "angle",
    figure: "seat-angle",
    instrument: input.protractor,
    instrumentArgument: "protractor",
    confidence: input.confidence,
    sure: window,
    possible: window,
    below: "cone-too-steep" as FlareConeCause,
    above: "cone-too-flat" as FlareConeCause,
    remedy: () => say("flare-joint.remake-cone"),
    aside: isHydraulic ? [say("flare-joint.hydraulic-flare")] : [],
    sources: [
      cite("sae-j513", "45° flare"),
      cite("manufacturer-manuals", "flare angle"),
      cite("jcgm-106-2012", "8.3"),
    ],
  });
}
