// What does this vacuum log prove? Dry and tight, leak, moisture, both, outgassing, or nothing yet.
// Follows JCGM 106:2012, 8.3 for the decision, vacuum handbooks §1.3.3 for the shapes, Burnham & Anderson
// (2002) for weighing them. Does not cover leaks that only pressure shows: see pressure-test.
import { listOf, objectOf, siOf } from "../quantity/check.ts";
import { assessmentOf } from "./assessment.ts";
import { type Collector, collect, createCollector } from "./collect.ts";
import type { VacuumDecayAssessment } from "./decay-assessment.ts";
import type { DecayReading } from "./decay-reading.ts";
import { settingsOf, type VacuumDecayOptions } from "./settings.ts";

/** Options of {@link assessVacuumDecay}. */
export interface VacuumDecayInput extends VacuumDecayOptions {
  /** The log, at least one reading; rows out of order are sorted. */
  readonly readings: readonly DecayReading[];
}

/** Longest time from isolation to a reading, s: 31 days. */
const longest = 31 * 86_400;
const elapsedLimits = { min: -longest, max: longest };

/** Time in s and pressure in Pa of a reading, and its place in the log. */
export function readingSi(
  path: string,
  reading: DecayReading,
  row: number,
): { t: number; p: number; row: number } {
  return {
    t: siOf(`${path}.elapsed`, reading?.elapsed, "duration", elapsedLimits),
    p: siOf(`${path}.pressure`, reading.pressure, "absolutePressure"),
    row,
  };
}

/** The collected log of a whole input. */
export function collectAll(input: VacuumDecayInput): Collector {
  const { readings, ...options } = objectOf("input", input);
  const log = createCollector(settingsOf(options), Infinity);
  const rows = listOf("readings", readings, Infinity, 1).map((reading, row) =>
    readingSi(`readings[${row}]`, reading, row),
  );
  rows.sort((one, other) => one.t - other.t);
  for (const { t, p, row } of rows) collect(log, t, p, row);
  return log;
}

/**
 * Judges a whole log of an isolated vacuum: pass, fail or inconclusive, the cause, and what to do next.
 *
 * **What to pass in.** The readings since the pump was shut off, the ambient and a policy; the volume, or 3 L is
 * assumed; the gauge's step and accuracy; how the pump was shut off (`isolation`), because a course that falls or
 * stays too flat is believed only where that is known; hoses or a blank test where the volume is small.
 *
 * **What it decides.** A pass needs all of this: the leak limit, 10 micron/min in 3 L, excluded with 95 %; less than a tenth
 * of the evidence for a leak of half of it, 5 micron/min (in more than 4.5 L three quarters of it), for water above 300 micron and
 * 5 % of the rise, or for a rise that still goes on by more than 6 micron/min, each with a part of what hoses let in
 * besides; the policy kept with the uncertainty allowed for, by the last reading too; at least eight points or a course that
 * is harmless whatever its shape; nothing in the course that contradicts a system that is shut off. A fail needs 95 % for
 * water or a leak above 5 micron/min and what hoses may let in, a rise by few rows that nothing harmless makes, or the
 * policy's limit broken beyond the uncertainty. Everything else is inconclusive, and the actions say what decides. The
 * stretch since the last step is judged; what came before is evidence against only.
 *
 * **How.** The readings are binned to about 100 points. Every sum of a constant, at most one slow shape, a line and an
 * equalization is fitted by weighted least squares and weighed by AICc; every figure is averaged over all of them.
 *
 * | equation | what it is |
 * |---|---|
 * | p = c + E(t) + s·t + A·f(t/τ) | one model: start, equalization, leak, slow rise |
 * | E = a(1 − e^(−t/τ₁)) + b(1 − e^(−t/τ₂)) | equalization after isolation, 4 s to 64 s |
 * | f = 1 − e^(−x^β), β = 1, 0.9, 0.8, 0.7; x/(1 + x) | water: first order, the same from unlike spots, second order |
 * | f = ln(1 + x); 2(√(1 + x) − 1) | desorption from metal, from polymer: vacuum handbooks §1.3.3 |
 * | AICc = n ln(RSS/n) + 2K + 2K(K + 1)/(n − K − 1) | weight of a model: e^(−ΔAICc/2); the last term at most 2K; K without a line beside a curve |
 * | P = Σ w Φ((s − S)/u) / Φ(s/u) | share of the evidence for a leak above S, none below 0 |
 * | u² = u²(fit) + (0.08 ΔA/Δt)² + (a s/√3)² + (r² / 6 + w²) / T² | the fit, a shape that is not in the set (ΔA: curved rise of the second half), scale, step, walls (w: 4 micron) |
 * | Q = s·V | throughput of the leak |
 *
 * Assumes that the gauge sits at the system, that the gas keeps its temperature within a few kelvin, and what
 * `assumptions` lists.
 *
 * @param input - Readings, ambient, policy; volume, gauge, isolation, hoses, coldest part, leak limit where known.
 * @returns The verdict with cause, actions, leak, plateau, fit, exclusions and steps; what can't be told is absent.
 * @throws {@link InvalidInputError} when there is no reading, a quantity is of another kind or beyond
 * what an installation can have, a reading comes later than 31 days, or a leak limit is above the policy's.
 *
 * Cautions: a vacuum decay does not replace the pressure test; nameplate, manufacturer's instructions,
 * local code and licensed practice govern.
 *
 * Source: JCGM 106:2012, 8.3 (decision); vacuum handbooks §1.3.3 (shapes); Burnham & Anderson (2002),
 * from memory (weights); the amounts that matter are common practice, no source.
 *
 * @example
 * ```ts
 * import { degC, liter, micron, second } from "hvac-install-math/quantity";
 * import { acceptancePolicies, assessVacuumDecay } from "hvac-install-math/vacuum-decay";
 *
 * // invented: 300 micron at isolation, rising 50 micron a minute
 * const readings = Array.from({ length: 121 }, (_, i) => ({
 *   elapsed: second(5 * i),
 *   pressure: micron(300 + Math.round((50 / 60) * 5 * i)),
 * }));
 * const result = assessVacuumDecay({
 *   readings,
 *   ambient: degC(20),
 *   volume: liter(3),
 *   policy: acceptancePolicies.guideSpec15182,
 * });
 * result.cause; // => leak
 * result.outcome; // => fail
 * result.leakThroughput?.value.si.toExponential(1); // => 3.3e-4
 * ```
 */
export function assessVacuumDecay(input: VacuumDecayInput): VacuumDecayAssessment {
  return assessmentOf(collectAll(input));
}
