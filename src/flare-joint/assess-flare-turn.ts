// Was the nut turned far enough? An angle from the point of rising torque against the manuals' window.
// Follows manufacturers' published manuals; decision by JCGM 106:2012, 8.3.
// Does not cover 5/16 in, for which no angle is published.

import { cite } from "../assessment/assessment.ts";
import type { Instrument } from "../assessment/uncertainty.ts";
import { objectOf } from "../quantity/check.ts";
import type { Quantity } from "../quantity/quantity.ts";
import type { FlareTorqueCause } from "./assess-flare-torque.ts";
import { limitsFor } from "./flare-limits.ts";
import { flareTurn } from "./flare-torque.ts";
import type { FlareTube } from "./flare-tube.ts";
import { type FlareAssessment, judge } from "./judge.ts";
import { say } from "./statements.ts";

/**
 * A flare nut tightened by angle.
 */
export interface FlareTurnInput {
  /** Outside diameter of the tube in inches. */
  readonly tube: FlareTube;
  /** Turn from the point where the torque rises, above 0. */
  readonly turn: Quantity<"angle">;
  /** How well the angle is known; counted as exact when left out. */
  readonly protractor?: Instrument<"angle"> | undefined;
  /** How sure a pass or a fail has to be; 0.95 when left out. */
  readonly confidence?: number | undefined;
}

/**
 * Judges a flare nut that was tightened by angle instead of by torque wrench.
 *
 * @param input - Tube, turn, how well the turn is known.
 * @returns The verdict, with `cause` on a fail.
 * @throws {@link OutOfRangeError} for 5/16, for which nothing is published.
 * @throws {@link InvalidInputError} when the turn is not above 0 or a kind does not fit.
 *
 * Cautions: a right turn does not prove a tight joint. Never tighten or loosen under pressure.
 *
 * Source: manufacturers' published manuals; JCGM 106:2012, 8.3.
 *
 * @example
 * ```ts
 * import { assessFlareTurn } from "hvac-install-math/flare-joint";
 * import { degreeAngle } from "hvac-install-math/quantity";
 *
 * assessFlareTurn({ tube: "1/4", turn: degreeAngle(75) }).outcome; // => pass
 * assessFlareTurn({ tube: "3/4", turn: degreeAngle(75) }).cause; // => over-tightened
 * ```
 */
export function assessFlareTurn(input: FlareTurnInput): FlareAssessment<"angle", FlareTorqueCause> {
  objectOf("input", input);
  const window = flareTurn(input.tube);
  return judge({
    argument: "turn",
    value: input.turn,
    kind: "angle",
    figure: "turn",
    instrument: input.protractor,
    instrumentArgument: "protractor",
    confidence: input.confidence,
    sure: window,
    possible: window,
    below: "under-tightened",
    above: "over-tightened",
    remedy: (cause, limits) =>
      cause === "under-tightened"
        ? say("flare-joint.tighten-by-turn", limitsFor(limits))
        : say("flare-joint.remake-and-turn", limitsFor(limits)),
    sources: [
      cite("manufacturer-manuals", "tightening without a torque wrench"),
      cite("jcgm-106-2012", "8.3"),
    ],
  });
}
