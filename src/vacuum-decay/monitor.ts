// What can be said already? The same analysis, one reading at a time, with memory that does not grow.
// Follows assess.ts exactly: both collect into the same bins, so the same readings give the same answer.
// Does not cover rows that come late: they are set aside, where the whole log would be sorted.

import { frozen } from "../quantity/frozen.ts";
import { readingSi } from "./assess.ts";
import { assessmentOf, pointsOf } from "./assessment.ts";
import { collect, createCollector } from "./collect.ts";
import { createWorkspace } from "./curve/index.ts";
import type { VacuumDecayAssessment } from "./decay-assessment.ts";
import type { DecayReading } from "./decay-reading.ts";
import { settingsOf, type VacuumDecayOptions } from "./settings.ts";
import { enoughPoints } from "./tuning.ts";

/**
 * A live analysis. It remembers bins, not readings.
 */
export interface DecayMonitor {
  /**
   * Takes the next reading and gives the verdict so far. The fit is renewed with the eighth reading, then when time
   * has grown by a tenth and the readings by a quarter (at least six), when a checkpoint of the policy is reached and
   * after a step; in between the last verdict stands. What else is asked of the monitor changes none of it.
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
  const ends = log.settings.checkpoints.map(({ at }) => at);
  let verdict: VacuumDecayAssessment | undefined;
  let due = { time: 0, rows: 0 };
  let before = { time: 0, events: 0 };
  return frozen({
    assessment: () => assessmentOf(log, work),
    add(reading) {
      const { t, p, row } = readingSi("reading", reading, log.rows);
      collect(log, t, p, row);
      const time = log.segment?.last ?? 0;
      // a step that ends a run of readings over range is seen too: the two never move apart
      const events = log.steps.length - Math.min(log.overRangeRun, 2);
      const reached = ends.some((at) => before.time < at && time >= at);
      const grown = time >= due.time && log.rows >= due.rows;
      const changed = events !== before.events;
      before = { time, events };
      if (verdict && !reached && !grown && !changed) return verdict;
      const rows = log.rows < enoughPoints ? 0 : Math.max(log.rows + 6, 1.25 * log.rows);
      due = { time: 1.1 * time, rows };
      verdict = assessmentOf(log, work);
      return verdict;
    },
    points: () => pointsOf(log.segment),
  });
}
