// What do the readings prove? Outcome and cause from the analysis of the stretch since the last step.
// Follows JCGM 106:2012, 8.3 (guard bands): a pass excludes what would fail, a fail proves it.
// Does not cover leaks too small to raise a vacuum: only the pressure test finds those.
import type { Outcome } from "../assessment/assessment.ts";
import { normalQuantile } from "../assessment/statistics.ts";
import { Quantity } from "../quantity/quantity.ts";
import { micron, micronPerMinute } from "../quantity/units/pressure.ts";
import { minute, second } from "../quantity/units/time.ts";
import { type Analysis, analyze } from "./analysis.ts";
import { causeOf, type DecayCause } from "./cause.ts";
import type { Collector, Segment } from "./collect.ts";
import { doubtsOfCourse, doubtsOfReadings } from "./doubts.ts";
import { findLeak } from "./find-leak.ts";
import { judgeCheckpoint, type Stage } from "./policy-verdict.ts";
import type { CheckpointSi, Settings } from "./settings.ts";
import { say, type VacuumDecayStatement } from "./statements.ts";
import {
  earlyFailShare,
  earlyShare,
  enoughPoints,
  failShare,
  passShare,
  usualVolume,
} from "./tuning.ts";
import type { Workspace } from "./workspace.ts";

/** The verdict in SI units, before it is put into quantities. */
export interface Finding {
  readonly outcome: Outcome;
  readonly cause: DecayCause;
  readonly reasons: readonly VacuumDecayStatement[];
  readonly actions: readonly VacuumDecayStatement[];
  readonly segment: Segment | undefined;
  readonly analysis: Analysis | undefined;
  /** What the leak stays above and below, one-sided at the confidence. */
  readonly leakLow: number;
  readonly leakHigh: number;
}

/** What speaks for an outcome, and what to do about it. */
interface Point {
  readonly outcome: Outcome;
  readonly reason: VacuumDecayStatement;
  readonly actions?: readonly VacuumDecayStatement[];
}

const rate = (si: number) => new Quantity(Math.max(0, si), micronPerMinute);
const difference = (si: number) => new Quantity(Math.max(0, si), micron.difference);
/** Where the limit is broken and the cause is not known. */
const again = [say("vacuum-decay.dry-and-repeat")];
const dry = [say("vacuum-decay.dry-and-repeat")];

/** Judges what has been collected so far. */
export function findingOf(log: Collector, work: Workspace): Finding {
  const { settings, segment } = log;
  if (!segment) return withoutAnalysis(log);
  const analysis = analyze(log, segment, work);
  if (!analysis) return withoutAnalysis(log);
  const stage = stageOf(analysis, settings);
  const leakLow = analysis.leakBelow(1 - stage.confidence);
  // scatter in which a line would be lost excludes none, whatever the models make of it
  const lost = normalQuantile(stage.confidence) * analysis.lineU;
  const leakHigh = Math.max(analysis.leakBelow(stage.confidence), lost);
  const course = judgeCourse(log, analysis, stage);
  const points = [
    ...explained(judgeLeak(analysis, settings, stage, leakLow, leakHigh), course),
    ...explained(judgeRest(analysis, settings, stage), course),
    ...judgePolicy(analysis, settings, stage),
    ...judgeGauge(log),
    ...course,
  ];
  if (log.earlier && !points.some(({ outcome }) => outcome === "fail")) {
    points.push(...judgeBefore(log, log.earlier, work));
  }
  const { outcome, reasons, actions } = together(points);
  let cause = causeOf(analysis.odds);
  const doubted = points.some((one) => one.outcome !== "pass" && !forecast(one));
  if (cause === "dry-and-tight" && doubted) cause = "not-determined";
  if (points.some(({ reason }) => reason.code === "vacuum-decay.pressure-falls"))
    cause = "not-determined";
  return { outcome, cause, reasons, actions, segment, analysis, leakLow, leakHigh };
}

/** A curve that neither leak nor water makes proves none: a valve that opens slowly looks like them for a while. */
function explained(found: Point[], course: readonly Point[]): Point[] {
  const strange = course.some(
    ({ reason }) =>
      reason.code === "vacuum-decay.course-unexplained" ||
      reason.code === "vacuum-decay.rise-quickens" ||
      reason.code === "vacuum-decay.pressure-falls",
  );
  return strange ? found.filter(({ outcome }) => outcome !== "fail") : found;
}

/** Only more time is lacking. */
const forecast = ({ reason }: Point): boolean =>
  reason.code.endsWith("-forecast") || reason.code === "vacuum-decay.too-few-readings";

/** Before the hold is over many looks are taken: more is asked for, and some evidence. */
function stageOf({ T, points }: Analysis, { hold, policy, confidence }: Settings): Stage {
  const over = T >= hold;
  const enough = points >= enoughPoints;
  return {
    over,
    confidence: over ? confidence : 1 - (1 - confidence) / 5,
    mayFail: over || (enough && T >= Math.max(120, Math.min(hold / 5, 600))),
    mayPass: over || (policy.earlyPass && enough && T >= Math.max(120, hold / 3)),
  };
}

/** The worst decides; its reasons come first. */
function together(points: readonly Point[]): Pick<Finding, "outcome" | "reasons" | "actions"> {
  const of = (wanted: Outcome) => points.filter(({ outcome }) => outcome === wanted);
  const fails = of("fail");
  const open = of("inconclusive");
  const outcome = fails.length ? "fail" : open.length ? "inconclusive" : "pass";
  const deciding = fails.length ? fails : open;
  const actions = new Map<string, VacuumDecayStatement>();
  for (const { actions: next = [] } of deciding) for (const one of next) actions.set(one.code, one);
  return {
    outcome,
    reasons: [...fails, ...open, ...of("pass")].map(({ reason }) => reason),
    actions: [...actions.values()],
  };
}

/** To the end of the hold, or half as long again: the leak's uncertainty falls faster than the time grows. */
function watchOn({ T, points }: Analysis, { hold }: Settings): VacuumDecayStatement {
  const duration = minute(Math.max(hold - T, T / 2, 60) / 60);
  return say("vacuum-decay.watch-longer", { duration, rows: Math.max(1, enoughPoints - points) });
}

/** Is there a leak that matters? */
function judgeLeak(
  analysis: Analysis,
  settings: Settings,
  { over, mayFail }: Stage,
  low: number,
  high: number,
): Point[] {
  const { odds, amounts, endRate } = analysis;
  const { leakLimit, hoses } = settings;
  const values = { low: rate(low), high: rate(high), limit: rate(leakLimit.rate) };
  const find = findLeak(low * (settings.volume || usualVolume));
  const points: Point[] = [];
  const aboveStated = leakLimit.stated && low > Math.max(leakLimit.rate, hoses);
  if (mayFail && (aboveStated || odds.provenLeak > (over ? failShare : earlyFailShare))) {
    points.push(
      high < leakLimit.rate
        ? {
            outcome: "inconclusive",
            reason: say("vacuum-decay.leak-within-limit", values),
            actions: [say("vacuum-decay.blank-test"), ...find],
          }
        : { outcome: "fail", reason: say("vacuum-decay.leak-proven", values), actions: find },
    );
  } else if (odds.leak > (over ? passShare : earlyShare) || high > leakLimit.rate) {
    const most = Math.min(leakLimit.rate, amounts.leak);
    const byHoses = hoses > 0 && endRate.mean < most + 2 * hoses && endRate.mean > most / 2;
    points.push({
      outcome: "inconclusive",
      reason: say("vacuum-decay.leak-not-excluded", { high: rate(high), limit: rate(most) }),
      actions: [...(byHoses ? [say("vacuum-decay.blank-test")] : []), watchOn(analysis, settings)],
    });
  }
  return points;
}

/** Is there water that matters, or a rise that goes on? */
function judgeRest(analysis: Analysis, settings: Settings, { over, mayFail }: Stage): Point[] {
  const { odds, water, endRate, amounts } = analysis;
  const { hoses, volume } = settings;
  const proven = over ? failShare : earlyFailShare;
  if (mayFail && odds.water > proven) {
    const reason = say("vacuum-decay.moisture-proven", { water: difference(water) });
    return [{ outcome: "fail", reason, actions: dry }];
  }
  const find = findLeak(endRate.mean * (volume || usualVolume));
  if (mayFail && odds.provenBad > proven && odds.provenLeak <= proven) {
    return [
      { outcome: "fail", reason: say("vacuum-decay.leak-or-moisture"), actions: [...dry, ...find] },
    ];
  }
  if (odds.bad <= (over ? passShare : earlyShare)) return [];
  if (odds.water > odds.bad / 2) {
    const reason = say("vacuum-decay.moisture-not-excluded", { water: difference(water) });
    return [{ outcome: "inconclusive", reason, actions: dry }];
  }
  const byHoses = endRate.mean < amounts.endRate + 2 * hoses;
  return [
    {
      outcome: "inconclusive",
      reason: say("vacuum-decay.still-rising", { rate: rate(endRate.mean) }),
      actions: [
        ...(hoses > 0 && byHoses ? [say("vacuum-decay.blank-test")] : []),
        watchOn(analysis, settings),
      ],
    },
  ];
}

/** Are the policy's target and limits kept, by the curve and by the last reading? */
function judgePolicy(analysis: Analysis, settings: Settings, stage: Stage): Point[] {
  const { segment, T, step } = analysis;
  const { checkpoints, target, accuracy } = settings;
  const points: Point[] = [];
  const longer = watchOn(analysis, settings);
  for (const checkpoint of checkpoints) {
    const { outcome, reason, lacks } = judgeCheckpoint(analysis, checkpoint, settings, stage);
    const actions = lacks === "time" ? [longer] : lacks ? [say("vacuum-decay.better-gauge")] : [];
    points.push({ outcome, reason, actions: outcome === "fail" ? again : actions });
  }
  const reached = checkpoints.filter(({ at }) => at <= T);
  const last = (reached.at(-1) ?? checkpoints[0]) as CheckpointSi;
  // "no rise" is one step of the gauge, and what hoses and gauge make
  const most = Math.min(last.limit, segment.origin + (last.rise || 10 * micron.scale + step));
  if (segment.lastP > most && !points.some(({ outcome }) => outcome === "fail")) {
    points.unshift({
      outcome: "inconclusive",
      reason: say("vacuum-decay.last-reading-above-limit", {
        pressure: new Quantity(segment.lastP, micron),
        limit: new Quantity(most, micron),
      }),
      actions: [say("vacuum-decay.evacuate-deeper", { target: new Quantity(target, micron) })],
    });
  }
  const k = (normalQuantile(stage.confidence) * accuracy) / Math.sqrt(3);
  if (segment.origin * (1 - k) > target) {
    points.push({
      outcome: "inconclusive",
      reason: say("vacuum-decay.target-missed", {
        start: new Quantity(segment.origin, micron),
        target: new Quantity(target, micron),
      }),
      actions: [say("vacuum-decay.evacuate-deeper", { target: new Quantity(target, micron) })],
    });
  }
  return points;
}

/** Did the gauge run over its range, for good? */
function judgeGauge({ overRangeRun, settings, segment }: Collector): Point[] {
  const { range, checkpoints, hold } = settings;
  if (overRangeRun < 2 || (segment?.last ?? 0) >= hold) return [];
  const most = Math.max(...checkpoints.map(({ limit, failAbove }) => Math.max(limit, failAbove)));
  const values = { range: new Quantity(range, micron) };
  return range > most
    ? [{ outcome: "fail", reason: say("vacuum-decay.over-range-failed", values), actions: again }]
    : [
        {
          outcome: "inconclusive",
          reason: say("vacuum-decay.over-range", values),
          actions: [say("vacuum-decay.better-gauge")],
        },
      ];
}

/** Does the course look like that of a system that is shut off and left alone? */
function judgeCourse(log: Collector, analysis: Analysis, stage: Stage): Point[] {
  const { settings, steps, suspect } = log;
  const { segment, T } = analysis;
  const { hold } = settings;
  const k = (normalQuantile(stage.confidence) * settings.accuracy) / Math.sqrt(3);
  // of a few rows the scatter may be the course itself, and no gauge scatters by more than some percent
  const scatter = log.noiseCount < 10 ? 0 : Math.min(Math.sqrt(log.noise), 0.02 * segment.lastP);
  const points: Point[] = [
    ...doubtsOfReadings(segment, settings, k),
    ...doubtsOfCourse(analysis, settings, scatter),
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
function judgeBefore(log: Collector, earlier: Segment, work: Workspace): Point[] {
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

/** Before there is enough to fit. */
function withoutAnalysis(log: Collector): Finding {
  const few: Point = {
    outcome: "inconclusive",
    reason: say("vacuum-decay.too-few-readings", {
      rows: log.segment?.rows ?? 0,
      needed: enoughPoints,
    }),
    actions: [
      say("vacuum-decay.watch-longer", {
        duration: minute(Math.max(0, log.settings.hold - (log.segment?.last ?? 0)) / 60),
        rows: Math.max(1, enoughPoints - (log.segment?.rows ?? 0)),
      }),
    ],
  };
  return {
    ...together([...judgeGauge(log), few]),
    cause: "not-determined",
    segment: log.segment,
    analysis: undefined,
    leakLow: Number.NaN,
    leakHigh: Number.NaN,
  };
}
