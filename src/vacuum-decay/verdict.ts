// What do the readings prove? Outcome and cause from the analysis of the stretch since the last step.
// Follows JCGM 106:2012, 8.3 (guard bands): a pass excludes what would fail, a fail proves it.
// Does not cover leaks too small to raise a vacuum: only the pressure test finds those.
import type { Outcome } from "../assessment/assessment.ts";
import { normalQuantile } from "../assessment/statistics.ts";
import { type Analysis, analyze } from "./analysis.ts";
import { causeOf, type DecayCause } from "./cause.ts";
import { type Collector, resolution, type Segment } from "./collect.ts";
import type { Workspace } from "./curve/index.ts";
import { judgeLeak, judgeRest } from "./judge-cause.ts";
import { judgeBefore, judgeCourse } from "./judge-course.ts";
import { judgeGauge, judgePolicy, lastAboveLimit } from "./judge-policy.ts";
import { type Point, tooFew } from "./point.ts";
import type { Stage } from "./policy-verdict.ts";
import type { Settings } from "./settings.ts";
import type { VacuumDecayStatement } from "./statements.ts";
import { earlyFailShare, enoughPoints } from "./tuning.ts";

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
  const strange = isStrange(course);
  const points = [
    ...[
      ...judgeLeak(analysis, settings, stage, leakLow, leakHigh),
      ...judgeRest(analysis, settings, stage),
    ].filter((point) => !(strange && point.outcome === "fail")),
    ...judgePolicy(analysis, settings, stage),
    ...judgeGauge(log),
    ...course,
  ];
  if (log.earlier && !points.some(({ outcome }) => outcome === "fail")) {
    points.push(...judgeBefore(log, log.earlier, work));
  }
  const { outcome, reasons, actions } = together(points);
  const named = causeOf(analysis.odds);
  const doubted = points.some((one) => one.outcome !== "pass" && !forecast(one));
  const cause = strange || (named === "dry-and-tight" && doubted) ? "not-determined" : named;
  return { outcome, cause, reasons, actions, segment, analysis, leakLow, leakHigh };
}

/**
 * Whether the curve is one that neither leak nor water makes: it proves none and names none. A valve that opens slowly
 * looks like them for a while.
 */
const isStrange = (course: readonly Point[]): boolean =>
  course.some(
    ({ reason }) =>
      reason.code === "vacuum-decay.course-unexplained" ||
      reason.code === "vacuum-decay.rise-quickens" ||
      reason.code === "vacuum-decay.pressure-falls",
  );

/** Only more time is lacking. */
const forecast = ({ reason }: Point): boolean => reason.code.endsWith("-forecast");

/** Before the hold is over many looks are taken: more is asked for, and some evidence. */
function stageOf({ T, points, odds }: Analysis, { hold, policy, confidence }: Settings): Stage {
  const over = T >= hold;
  const enough = points >= enoughPoints;
  const shown = enough || odds.provenBad > earlyFailShare;
  return {
    over,
    confidence: over ? confidence : 1 - (1 - confidence) / 5,
    mayFail: over || (shown && T >= Math.max(120, Math.min(hold / 5, 600))),
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

/** Before there is enough to fit. */
function withoutAnalysis(log: Collector): Finding {
  const { segment, settings } = log;
  const few = tooFew({ T: segment?.last ?? 0, points: segment?.rows ?? 0 }, settings);
  return {
    ...together([
      ...(segment ? lastAboveLimit(segment, settings, resolution(log, segment.origin)) : []),
      ...judgeGauge(log),
      few,
    ]),
    cause: "not-determined",
    segment,
    analysis: undefined,
    leakLow: Number.NaN,
    leakHigh: Number.NaN,
  };
}
