// Are the policy's target and limits kept, by the curve, by the last reading, and within the gauge's range?
// Follows JCGM 106:2012, 8.3.2 and 8.3.3. Does not cover what is behind the rise: judge-cause.ts.
import { normalQuantile } from "../assessment/statistics.ts";
import { Quantity } from "../quantity/quantity.ts";
import { micron } from "../quantity/units/pressure.ts";
import type { Analysis } from "./analysis.ts";
import type { Collector, Segment } from "./collect.ts";
import { dryAgain, type Point, watchOn } from "./point.ts";
import { judgeCheckpoint, type Stage } from "./policy-verdict.ts";
import type { CheckpointSi, Settings } from "./settings.ts";
import { say } from "./statements.ts";

/** Are the policy's target and limits kept, by the curve and by the last reading? */
export function judgePolicy(analysis: Analysis, settings: Settings, stage: Stage): Point[] {
  const { segment, step } = analysis;
  const { checkpoints } = settings;
  const points: Point[] = [];
  const longer = watchOn(analysis, settings);
  for (const checkpoint of checkpoints) {
    const { outcome, reason, lacks } = judgeCheckpoint(analysis, checkpoint, settings, stage);
    const actions = lacks === "time" ? [longer] : lacks ? [say("vacuum-decay.better-gauge")] : [];
    points.push({ outcome, reason, actions: outcome === "fail" ? dryAgain : actions });
  }
  const failed = points.some(({ outcome }) => outcome === "fail");
  return [
    ...(failed ? [] : lastAboveLimit(segment, settings, step)),
    ...points,
    ...targetMissed(segment, settings, stage.confidence),
  ];
}

/** Is the last reading above what the policy allows by then? */
export function lastAboveLimit(
  { origin, last: T, lastP }: Segment,
  { checkpoints, target }: Settings,
  step: number,
): Point[] {
  const reached = checkpoints.filter(({ at }) => at <= T);
  const { limit, rise } = (reached.at(-1) ?? checkpoints[0]) as CheckpointSi;
  // "no rise" is one step of the gauge, and what hoses and gauge make
  const most = Math.min(limit, origin + (rise || 10 * micron.scale + step));
  if (lastP <= most) return [];
  return [
    {
      outcome: "inconclusive",
      reason: say("vacuum-decay.last-reading-above-limit", {
        pressure: new Quantity(lastP, micron),
        limit: new Quantity(most, micron),
      }),
      actions: deeperThan(target),
    },
  ];
}

const deeperThan = (target: number) => [
  say("vacuum-decay.evacuate-deeper", { target: new Quantity(target, micron) }),
];

/** Was the vacuum never as deep as the policy wants it at isolation? */
function targetMissed(
  { origin }: Segment,
  { target, accuracy }: Settings,
  confidence: number,
): Point[] {
  const k = (normalQuantile(confidence) * accuracy) / Math.sqrt(3);
  if (origin * (1 - k) <= target) return [];
  return [
    {
      outcome: "inconclusive",
      reason: say("vacuum-decay.target-missed", {
        start: new Quantity(origin, micron),
        target: new Quantity(target, micron),
      }),
      actions: deeperThan(target),
    },
  ];
}

/** Did the gauge run over its range, for good? */
export function judgeGauge({ overRangeRun, settings, segment }: Collector): Point[] {
  const { range, checkpoints, hold } = settings;
  if (overRangeRun < 2 || (segment?.last ?? 0) >= hold) return [];
  const most = Math.max(...checkpoints.map(({ limit, failAbove }) => Math.max(limit, failAbove)));
  const values = { range: new Quantity(range, micron) };
  const better = [say("vacuum-decay.better-gauge")];
  const [outcome, code, actions] =
    range > most
      ? (["fail", "over-range-failed", dryAgain] as const)
      : (["inconclusive", "over-range", better] as const);
  return [{ outcome, reason: say(`vacuum-decay.${code}`, values), actions }];
}
