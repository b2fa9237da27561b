// Does the indoor unit lean towards its drain? A level's reading along the case.
// Follows common practice, no source: level, or a little towards the drain side; the manual decides.
// Does not cover the pitch from wall to room, nor a pan that is clogged.
import { type Assessment, cite, type Estimate, statement } from "../assessment/assessment.ts";
import { objectOf, siOf } from "../quantity/check.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { percent } from "../quantity/units/ratio.ts";
import { slopeAssumptions, slopeOutcome, tooNear } from "./arguments.ts";
import { baseCautions } from "./drain-cautions.ts";
import { type SlopeReading, slopeOf } from "./drain-slope.ts";

/**
 * An indoor unit and its measured pitch.
 *
 * Source: none; the library's own type.
 */
export interface IndoorUnitPitchInput {
  /** The measured slope along the case: positive falls towards the drain; start is the far side. */
  readonly reading: SlopeReading;
  /** Least pitch towards the drain in the manual; 0 (level) when left out. */
  readonly minimum?: Quantity<"ratio">;
  /** Largest pitch in the manual; none when left out. */
  readonly maximum?: Quantity<"ratio">;
  /** How sure a pass or a fail has to be; 0.95 when left out. */
  readonly confidence?: number;
}

/** What is wrong with the pitch. Source: see {@link assessIndoorUnitPitch}. */
export type IndoorUnitPitchCause = "away-from-drain" | "too-little" | "too-much";

/**
 * The verdict on the pitch of an indoor unit.
 *
 * Source: see {@link assessIndoorUnitPitch}.
 */
export interface IndoorUnitPitchAssessment extends Assessment<IndoorUnitPitchCause> {
  /** The pitch found; positive falls towards the drain. */
  readonly pitch: Estimate<"ratio">;
}

/**
 * Judges whether an indoor unit hangs level or towards its drain, so that the pan does not run over at
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
  const y = pitch.value.si;
  const cause = y >= low ? "too-much" : y < 0 ? "away-from-drain" : "too-little";
  const text = `The unit falls {pitch} ± {u} towards its drain${outcome === "inconclusive" ? `: ${tooNear}` : ""}.`;
  const assumptions = slopeAssumptions(pitch.standardUncertainty.si === 0, false);
  if (!input.minimum) assumptions.push(statement("level-is-enough", "Level counts as right."));
  if (!maximum) {
    assumptions.push(statement("maximum-not-given", "The manual's largest pitch was not checked."));
  }
  return {
    outcome,
    ...(outcome === "fail" && { cause }),
    reasons: [statement("pitch", text, { pitch: pitch.value, u: pitch.expandedUncertainty })],
    assumptions,
    cautions: baseCautions,
    sources: [cite("common-practice"), cite("jcgm-106-2012", "8.3")],
    pitch,
  };
}
