// Does the course look like that of a system that is shut off and left alone, and what came before it?
// Common practice, no source. Does not cover the doubts one by one: doubts.ts.
import { normalQuantile } from "../assessment/statistics.ts";
import { minute, second } from "../quantity/units/time.ts";
import { type Analysis, analyze } from "./analysis.ts";
import type { Collector, Segment } from "./collect.ts";
import type { Workspace } from "./curve/index.ts";
import { doubtsOfCourse, doubtsOfReadings } from "./doubts.ts";
import { type Point, rate } from "./point.ts";
import type { Stage } from "./policy-verdict.ts";
import { say } from "./statements.ts";
import { earlyFailShare, enoughPoints } from "./tuning.ts";

/** Does the course look like that of a system that is shut off and left alone? */
export function judgeCourse(log: Collector, analysis: Analysis, stage: Stage): Point[] {
  const { settings, steps, suspect } = log;
  const { segment, T } = analysis;
  const { hold } = settings;
  const k = (normalQuantile(stage.confidence) * settings.accuracy) / Math.sqrt(3);
  // of a few rows the scatter may be the course itself, and no gauge scatters by more than some percent
  const scatter = log.noiseCount < 10 ? 0 : Math.min(Math.sqrt(log.noise), 0.02 * segment.lastP);
  const points: Point[] = [
    ...doubtsOfReadings(segment, settings, k),
    ...doubtsOfCourse(analysis, settings, scatter, stage),
  ].map(({ reason, action }) => ({ outcome: "inconclusive", reason, actions: [action] }));
  const step = steps.at(-1);
  if ((step && T < hold) || suspect) {
    points.push({
      outcome: "inconclusive",
      reason: say("vacuum-decay.step-before", { elapsed: second(suspect?.t ?? step?.t ?? 0) }),
      actions: [say("vacuum-decay.hold-again", { hold: minute(hold / 60) })],
    });
  }
  return points;
}

/** What came before the last step is evidence against only. */
export function judgeBefore(log: Collector, earlier: Segment, work: Workspace): Point[] {
  if (earlier.last < 120) return [];
  const before = analyze(log, earlier, work);
  if (!before || before.points < enoughPoints || before.odds.provenBad < earlyFailShare) return [];
  const [low, high] = [before.leakBelow(0.01), before.leakBelow(0.99)];
  return [
    {
      outcome: "inconclusive",
      reason: say("vacuum-decay.found-before-step", { low: rate(low), high: rate(high) }),
      actions: [say("vacuum-decay.hold-again", { hold: minute(log.settings.hold / 60) })],
    },
  ];
}
