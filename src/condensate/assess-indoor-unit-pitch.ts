// Does the indoor unit lean toward its drain? A level's reading along the case.
// Follows common practice, no source: level, or a little toward the drain side; the manual decides.
// Does not cover the pitch from wall to room, nor a pan that is clogged.
import { cite, type Estimate, verdict } from "../assessment/assessment.ts";
import { objectOf, siOf } from "../quantity/check.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { percent } from "../quantity/units/ratio.ts";
import { slopeAssumptions, slopeOutcome, steeperThanUsual } from "./arguments.ts";
import { baseCautions } from "./drain-cautions.ts";
import { type SlopeReading, slopeOf } from "./drain-slope.ts";
import { type CondensateStatement, say, type Verdict } from "./statements.ts";

/**
 * An indoor unit and its measured pitch.
 */
export interface IndoorUnitPitchInput {
  /** The measured slope along the case: positive falls toward the drain; start is the far side. */
  readonly reading: SlopeReading;
  /** Least pitch toward the drain in the manual; 0 (level) when left out. */
  readonly minimum?: Quantity<"ratio"> | undefined;
  /** Largest pitch in the manual; none when left out. */
  readonly maximum?: Quantity<"ratio"> | undefined;
  /** How sure a pass or a fail has to be; 0.95 when left out. */
  readonly confidence?: number | undefined;
}

/** What is wrong with the pitch. Source: see {@link assessIndoorUnitPitch}. */
export type IndoorUnitPitchCause = "away-from-drain" | "too-little" | "too-much";

/**
 * The verdict on the pitch of an indoor unit.
 *
 * Source: see {@link assessIndoorUnitPitch}.
 */
export interface IndoorUnitPitchAssessment extends Verdict<IndoorUnitPitchCause> {
  /** The pitch found; positive falls toward the drain. */
  readonly pitch: Estimate<"ratio">;
}

/**
 * Judges whether an indoor unit hangs level or toward its drain, so that the pan does not run over at
 * the other end.
 *
 * @param input - Reading along the case, limits of the manual.
 * @returns The verdict. Within the level's error of a limit it is `inconclusive`.
 * @throws {@link InvalidInputError} when the reading is none of the four ways, a kind does not fit, or
 * the minimum is above the maximum.
 *
 * Cautions: the drain may leave left or right: check which side is in use before you level.
 *
 * Source: common practice, no source; JCGM 106:2012, 8.3.
 *
 * @example
 * ```ts
 * import { assessIndoorUnitPitch } from "hvac-install-math/condensate";
 * import { mm } from "hvac-install-math/quantity";
 *
 * const level = { levelLength: mm(600), accuracy: mm(0.3) };
 * assessIndoorUnitPitch({ reading: { ...level, gap: mm(3) } }).outcome; // => pass
 * assessIndoorUnitPitch({ reading: { ...level, gap: mm(-3) } }).cause; // => away-from-drain
 * assessIndoorUnitPitch({ reading: { ...level, gap: mm(0) } }).outcome; // => inconclusive
 * ```
 */
export function assessIndoorUnitPitch(input: IndoorUnitPitchInput): IndoorUnitPitchAssessment {
  objectOf("input", input);
  const { reading, minimum = percent(0), maximum, confidence } = input;
  const low = siOf("minimum", minimum, "ratio", { above: -1, below: 1 });
  if (maximum !== undefined) siOf("maximum", maximum, "ratio", { min: low, below: 1 });
  const pitch = slopeOf(reading);
  const outcome = slopeOutcome(pitch, minimum, maximum, confidence);
  const isLow = pitch.value.si < low;
  const leansAway = slopeOutcome(pitch, percent(0), undefined, confidence) === "fail";
  const cause = !isLow ? "too-much" : leansAway ? "away-from-drain" : "too-little";
  const values = { pitch: pitch.value, uncertainty: pitch.expandedUncertainty };
  const wrong: Record<IndoorUnitPitchCause, CondensateStatement> = {
    "away-from-drain": say("condensate.pitch-away", { ...values, minimum }),
    "too-little": say("condensate.pitch-too-little", { ...values, minimum }),
    "too-much": say("condensate.pitch-too-much", { ...values, maximum: maximum ?? minimum }),
  };
  const right = maximum
    ? say("condensate.pitch-within", { ...values, minimum, maximum })
    : say("condensate.pitch-enough", { ...values, minimum });
  const remedy =
    maximum && !isLow
      ? say("condensate.lower-pitch", { maximum })
      : say("condensate.raise-pitch", { minimum });
  const [reason, actions] = {
    pass: [right, []],
    fail: [wrong[cause], [remedy]],
    inconclusive: [say("condensate.pitch-near", values), [say("condensate.measure-better")]],
  }[outcome] as [CondensateStatement, CondensateStatement[]];
  return verdict({
    outcome,
    ...(outcome === "fail" && { cause: cause as IndoorUnitPitchCause }),
    reasons: [reason],
    assumptions: [
      ...slopeAssumptions(pitch.standardUncertainty.si === 0, false),
      ...(input.minimum ? [] : [say("condensate.level-is-enough")]),
      ...(maximum ? [] : [say("condensate.maximum-pitch-not-checked")]),
    ],
    cautions: [...steeperThanUsual(pitch), ...baseCautions()],
    actions,
    sources: [cite("common-practice"), cite("jcgm-106-2012", "8.3")],
    pitch,
  });
}
