// What can be said already? The same analysis, one reading at a time, with memory that does not grow.
// Follows assess.ts exactly: both collect into the same bins, so the same readings give the same answer.
// Does not cover rows that come late: they are set aside, where the whole log would be sorted.

import { readingSi } from "./assess.ts";
import { assessmentOf, type DecayReading, type VacuumDecayAssessment } from "./assessment.ts";
import { collect, createCollector } from "./collect.ts";
import { createWorkspace } from "./evidence.ts";
import { settingsOf, type VacuumDecayOptions } from "./settings.ts";

/**
 * A live analysis. It remembers bins, not readings.
 *
 * Source: none; the library's own type.
 */
export interface DecayMonitor {
  /** Takes the next reading and judges all so far, as {@link assessVacuumDecay} would. */
  add(reading: DecayReading): VacuumDecayAssessment;
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
  return {
    add(reading) {
      const [t, p] = readingSi("reading", reading);
      collect(log, t, p, log.rows);
      return assessmentOf(log, work);
    },
  };
}
