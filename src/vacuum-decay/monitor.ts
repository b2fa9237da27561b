// What can be said already? The same analysis, one reading at a time, with memory that does not grow.
// Follows assess.ts exactly: both collect into the same bins, so the same readings give the same answer.
// Does not cover rows that come late: they are set aside, where the whole log would be sorted.

import { readingSi } from "./assess.ts";
import {
  assessmentOf,
  type DecayReading,
  pointsOf,
  type VacuumDecayAssessment,
} from "./assessment.ts";
import { collect, createCollector } from "./collect.ts";
import { settingsOf, type VacuumDecayOptions } from "./settings.ts";
import { judgedSegment } from "./verdict.ts";
import { createWorkspace } from "./workspace.ts";

/**
 * A live analysis. It remembers bins, not readings.
 *
 * Source: none; the library's own type.
 */
export interface DecayMonitor {
  /**
   * Takes the next reading and gives the verdict so far. The fit is renewed when the evidence has grown by
   * a tenth, when a checkpoint of the policy is reached and after a step; in between the last one stands.
   */
  add(reading: DecayReading): VacuumDecayAssessment;
  /** The verdict with every reading so far in the fit: what {@link assessVacuumDecay} says of the same log. */
  assessment(): VacuumDecayAssessment;
  /** The binned readings behind the fit, for plotting. */
  points(): DecayReading[];
}

/**
 * Starts a live analysis: add one reading at a time, get the verdict so far each time.
 *
 * Before the hold is over the outcome is `inconclusive` with a forecast for its end, unless a fail is
 * proven already, or a pass is proven and the policy's `earlyPass` allows it.
 *
 * @param options - Ambient, policy; volume, gauge, coldest part, leak limit where known.
 * @returns The monitor.
 * @throws {@link InvalidInputError} when an option is of another kind or beyond what an installation can have.
 *
 * Cautions: as for {@link assessVacuumDecay}.
 *
 * Source: as {@link assessVacuumDecay}.
 *
 * @example
 * ```ts
 * import { degC, micron, minute } from "hvac-install-math/quantity";
 * import { acceptancePolicies, createDecayMonitor } from "hvac-install-math/vacuum-decay";
 *
 * const policy = acceptancePolicies.commonPractice500;
 * const monitor = createDecayMonitor({ ambient: degC(20), policy });
 * monitor.add({ elapsed: minute(0), pressure: micron(310) }).outcome; // => inconclusive
 * monitor.add({ elapsed: minute(1), pressure: micron(315) }).outcome; // => inconclusive
 * ```
 */
export function createDecayMonitor(options: VacuumDecayOptions): DecayMonitor {
  const log = createCollector(settingsOf(options), 100);
  const work = createWorkspace();
  let verdict: VacuumDecayAssessment | undefined;
  let due = 0;
  let events = 0;
  const assessment = () => {
    const T = judgedSegment(log)?.last ?? 0;
    const next = log.settings.checkpoints.find(({ at }) => at > T)?.at ?? Infinity;
    due = Math.min(Math.max(1.1 * T, T + 5), next);
    verdict = assessmentOf(log, work);
    return verdict;
  };
  return {
    assessment,
    add(reading) {
      const [t, p] = readingSi("reading", reading);
      collect(log, t, p, log.rows);
      // a step that ends a run of readings over range is seen too: the two never move apart
      const seen = log.steps.length - Math.min(log.overRangeRun, 2);
      const renew = seen !== events || (judgedSegment(log)?.last ?? 0) >= due;
      events = seen;
      return verdict && !renew ? verdict : assessment();
    },
    points: () => pointsOf(judgedSegment(log)),
  };
}
