// How is the finding told? Puts it into quantities, reasons, assumptions, cautions and sources.
// The shape is the library's own verdict. Does not cover the decision: verdict.ts.
import { type Citation, cite, estimate, verdict } from "../assessment/assessment.ts";
import { type Caution, caution } from "../assessment/caution.ts";
import { danger, type SafetyStatement } from "../assessment/safety.ts";
import { Quantity } from "../quantity/quantity.ts";
import { paM3PerS } from "../quantity/units/flow.ts";
import { gPerYear } from "../quantity/units/mass.ts";
import { micron, micronPerMinute } from "../quantity/units/pressure.ts";
import { minute, second } from "../quantity/units/time.ts";
import type { Analysis } from "./analysis.ts";
import { allPoints } from "./binning.ts";
import { grainOf, typedByHand } from "./by-hand.ts";
import type { Collector, ExcludedRow, Segment } from "./collect.ts";
import { createWorkspace, fitOf, type Workspace } from "./curve/index.ts";
import type { VacuumDecayAssessment } from "./decay-assessment.ts";
import type { DecayReading } from "./decay-reading.ts";
import { stillness } from "./doubts.ts";
import type { ExclusionReason } from "./exclusion-reason.ts";
import { lossOf } from "./loss.ts";
import { type Plateau, plateauOf } from "./plateau.ts";
import type { Settings } from "./settings.ts";
import { say, type VacuumDecayStatement } from "./statements.ts";
import { enoughPoints, slowestWater } from "./tuning.ts";
import { type Finding, findingOf } from "./verdict.ts";

const sources: readonly Citation[] = /* @__PURE__ */ [
  cite("jcgm-106-2012", "8.3"),
  cite("burnham-anderson-2002", "2.4, 2.9"),
  cite("vacuum-handbook", "1.3.3"),
  cite("wagner-pruss-2002", "eq. 2.5"),
  cite("iapws-r14-08", "eq. 6"),
];

const rate = (si: number) => new Quantity(Math.max(0, si), micronPerMinute);

/** The verdict as the caller sees it. */
export function assessmentOf(
  log: Collector,
  work: Workspace = createWorkspace(),
): VacuumDecayAssessment {
  const { settings } = log;
  const found = findingOf(log, work);
  const { analysis, segment } = found;
  const [least, most] = lossOf(settings.leakLimit.throughput);
  const loss = [new Quantity(least, gPerYear), new Quantity(most, gPerYear)] as const;
  const wet =
    analysis?.plateau && found.cause.includes("moisture")
      ? plateauOf(analysis.plateau, analysis.segment.origin, settings)
      : undefined;
  const rejected = rejectedOf(log);
  return verdict({
    outcome: found.outcome,
    cause: found.cause,
    reasons: [...found.reasons, ...findingsOf(found, wet), ...rejected.reasons],
    assumptions: assumptionsOf(log, found),
    cautions: [...rejected.cautions, ...cautionsOf(settings, segment, loss)],
    actions: found.actions,
    sources: [settings.policy.source, ...sources],
    evidence: minute(segment ? segment.last / 60 : 0),
    ...(analysis && figuresOf(analysis, found, settings)),
    leakLimit: paM3PerS(settings.leakLimit.throughput),
    lossAtLimit: loss,
    ...(wet && { plateau: wet }),
    ...(segment && analysis && { fit: fitOf(analysis.best, segment) }),
    excluded: rejected.excluded,
    excludedCount: rejected.counts,
    steps: rejected.steps,
  });
}

/** The smallest leak that would have shown, Pa/s: what stays within one step of the display never does. */
const smallestOf = ({ step, T }: Analysis, { leakHigh }: Finding): number =>
  Math.max(leakHigh, step / T);

/** The figures that the readings can tell. */
function figuresOf(
  analysis: Analysis,
  found: Finding,
  { accuracy, volume }: Settings,
): Partial<VacuumDecayAssessment> {
  const { leak, leakBelow, end, odds, points, step, T } = analysis;
  const p = Math.max(0, end.mean);
  const smallest = smallestOf(analysis, found);
  return {
    atHoldEnd: estimate(new Quantity(p, micron), Math.hypot(end.u, (accuracy / Math.sqrt(3)) * p)),
    leak: estimate(rate(leak.mean), leak.u),
    leakInterval: [rate(leakBelow(0.025)), rate(Math.max(leakBelow(0.975), step / T))],
    smallestLeak: rate(smallest),
    ...(volume > 0 && {
      leakThroughput: estimate(paM3PerS(Math.max(0, leak.mean) * volume), leak.u * volume),
      smallestLeakThroughput: paM3PerS(smallest * volume),
    }),
    ...(points >= enoughPoints && {
      shares: { leak: odds.provenLeak, moisture: odds.water, either: odds.bad },
    }),
  };
}

/** The cause, and what contradicts water. */
function findingsOf(found: Finding, wet: Plateau | undefined): VacuumDecayStatement[] {
  const { cause, analysis, leakLow, leakHigh } = found;
  if (!analysis) return []; // too few readings say it already
  const { leak, water } = analysis;
  const interval = { low: rate(leakLow), high: rate(leakHigh) };
  const steady = { ...interval, leak: rate(leak.mean) };
  const risen = { water: new Quantity(Math.max(0, water), micron.difference), high: interval.high };
  const said = (): VacuumDecayStatement => {
    switch (cause) {
      case "dry-and-tight":
        return say("vacuum-decay.dry-and-tight", { smallest: rate(smallestOf(analysis, found)) });
      case "leak":
        return say("vacuum-decay.leak", steady);
      case "leak-and-moisture":
        return say("vacuum-decay.leak-and-moisture", { ...steady, water: risen.water });
      case "not-determined":
        return say("vacuum-decay.not-determined");
      default:
        return say(`vacuum-decay.${cause}`, risen);
    }
  };
  return [
    said(),
    ...(wet?.aboveSaturation
      ? [say("vacuum-decay.above-saturation", { plateau: wet.pressure.value })]
      : []),
  ];
}

function assumptionsOf(
  log: Collector,
  { cause, reasons, analysis }: Finding,
): VacuumDecayStatement[] {
  const { settings, rows } = log;
  const said = [...settings.assumptions];
  if (analysis && (cause.startsWith("leak") || reasons.some(({ code }) => leaks.includes(code)))) {
    const duration = minute(slowestWater(analysis.T) / 60);
    said.push(say("vacuum-decay.no-slow-water", { duration }));
  }
  if (typedByHand(log)) {
    const step = new Quantity(grainOf(log), micron.difference);
    said.push(say("vacuum-decay.typed-by-hand", { rows, step }));
  }
  return said;
}

/** What is said of a steady rise, which slower water would make too. */
const leaks: readonly string[] = ["vacuum-decay.leak-proven", "vacuum-decay.leak-within-limit"];

function cautionsOf(
  settings: Settings,
  segment: Segment | undefined,
  [least, most]: VacuumDecayAssessment["lossAtLimit"],
): Caution<VacuumDecayStatement | SafetyStatement>[] {
  const limit = paM3PerS(settings.leakLimit.throughput);
  return [
    ...(segment && stillness(segment, settings) === "wide-steps"
      ? [
          caution(
            "finding",
            say("vacuum-decay.display-steps", {
              step: new Quantity(settings.resolutionAt(segment.lastP), micron.difference),
            }),
          ),
        ]
      : []),
    caution("finding", say("vacuum-decay.not-a-pressure-test", { limit, least, most })),
    danger("safety.compressor-in-vacuum"),
  ];
}

/** What was set aside, and the steps. */
function rejectedOf(log: Collector) {
  // a jump that no later reading has confirmed yet is neither evidence nor a step
  const rows: ExcludedRow[] = [...log.excluded];
  const counts = { ...log.excludedCount };
  if (log.suspect) {
    rows.push({ ...log.suspect, reason: "unconfirmed-jump" });
    counts["unconfirmed-jump"] = 1;
  }
  const excluded = Object.values(counts).reduce((sum, one) => sum + one, 0);
  const reasons = Object.keys(counts) as ExclusionReason[];
  const why = reasons.map((one) => `vacuum-decay.exclusion.${one}` as const);
  const steps = log.steps.map(({ t, change }) => ({
    elapsed: second(t),
    change: new Quantity(change, micron.difference),
  }));
  return {
    reasons: steps.map((step) => say("vacuum-decay.step", step)),
    cautions: excluded
      ? [
          caution(
            "finding",
            say("vacuum-decay.readings-excluded", { excluded, rows: log.rows, why }),
          ),
        ]
      : [],
    excluded: rows.map(({ row, t, p, reason }) => ({
      row,
      reason,
      elapsed: second(t),
      pressure: new Quantity(p, micron),
    })),
    counts,
    steps,
  };
}

/** The binned readings of a segment. */
export function pointsOf(segment: Segment | undefined): DecayReading[] {
  if (!segment) return [];
  const { start, origin } = segment;
  const { t, p } = allPoints(segment);
  return t.map((at, i) => ({
    elapsed: second(start + at),
    pressure: new Quantity(origin + (p[i] as number), micron),
  }));
}
