// What does this vacuum log prove? Dry and tight, leak, moisture, both, outgassing, or undecided.
// Follows JCGM 106:2012, 8.3 for the decision, vacuum handbooks §1.3.3 for the shapes, Burnham & Anderson
// (2002) for weighing them. Does not cover leaks that only pressure shows: see pressure-test.
import { describe, listOf, objectOf, siOf } from "../quantity/check.ts";
import { InvalidInputError } from "../quantity/errors.ts";
import { assessmentOf, type DecayReading, type VacuumDecayAssessment } from "./assessment.ts";
import { type Collector, collect, createCollector } from "./collect.ts";
import { settingsOf, type VacuumDecayOptions } from "./settings.ts";

/** Options of {@link assessVacuumDecay}. Source: none; the library's own type. */
export interface VacuumDecayInput extends VacuumDecayOptions {
  /** The log, at least one reading; rows out of order are sorted. */
  readonly readings: readonly DecayReading[];
}

/** Longest time from isolation to a reading, s: 31 days. */
const longest = 31 * 86_400;

/** Time in s and pressure in Pa of a reading. */
export function readingSi(path: string, reading: DecayReading): readonly [number, number] {
  return [
    siOf(`${path}.elapsed`, reading?.elapsed, "duration", { min: -longest, max: longest }),
    siOf(`${path}.pressure`, reading.pressure, "absolutePressure"),
  ];
}

/** The collected log of a whole input. */
export function collectAll(input: VacuumDecayInput): Collector {
  const { readings, ...options } = objectOf("input", input);
  if (!Array.isArray(readings) || readings.length === 0) {
    throw new InvalidInputError({
      argument: "readings",
      value: describe(readings),
      allowed: "an array with at least one reading",
    });
  }
  const log = createCollector(settingsOf(options), Infinity);
  const rows = listOf("readings", readings).map(
    (reading, row) => [...readingSi(`readings[${row}]`, reading), row] as const,
  );
  rows.sort(([one], [other]) => one - other);
  for (const [t, p, row] of rows) collect(log, t, p, row);
  return log;
}

/**
 * Judges a whole log of an isolated vacuum: pass, fail or inconclusive against the policy, and the cause.
 *
 * The readings are binned to about 100 points; constant, line, saturating and four related shapes, each
 * with and without an equalisation right after isolation, are fitted and weighed by AICc, and every
 * figure is averaged over them. A pass needs the policy's limit kept with the uncertainty allowed for,
 * its hold over (or an early pass allowed), no leak proven, and readings that a gauge of this job can show.
 * `smallestLeak` says what the test could have shown.
 *
 * Assumes that the gauge sits at the system with the pump valved off, that the gas keeps its
 * temperature within a few kelvin, and what `assumptions` lists.
 *
 * @param input - Readings, ambient, policy; volume, gauge, coldest part, leak limit where known.
 * @returns The verdict with cause, leak, plateau, fit, exclusions and steps.
 * @throws {@link InvalidInputError} when there is no reading, a quantity is of another kind or beyond
 * what an installation can have, or a leak limit as throughput comes without the volume.
 *
 * Cautions: a vacuum decay does not replace the pressure test; nameplate, manufacturer's instructions,
 * local code and licensed practice govern.
 *
 * Source: JCGM 106:2012, 8.3 (decision); vacuum handbooks §1.3.3 (shapes); Burnham & Anderson (2002),
 * from memory (weights).
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
