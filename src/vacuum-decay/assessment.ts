// How is the finding told? Puts it into quantities, reasons, assumptions, cautions and sources.
// The shape is the library's own verdict. Does not cover the decision: verdict.ts.
import {
  type Assessment,
  type Caution,
  type Citation,
  cite,
  type Estimate,
  estimate,
  type Reason,
  statement,
} from "../assessment/assessment.ts";
import { Quantity } from "../quantity/quantity.ts";
import { paM3PerS } from "../quantity/units/flow.ts";
import { micron, micronPerMinute } from "../quantity/units/pressure.ts";
import { minute, second } from "../quantity/units/time.ts";
import type { DecayCause, EvidenceShares } from "./cause.ts";
import type { Collector, ExcludedRow, ExclusionReason, Segment } from "./collect.ts";
import type { DecayFit } from "./decay-curve.ts";
import { fitOf } from "./decay-curve.ts";
import { stillness } from "./doubts.ts";
import { type Plateau, plateauOf } from "./plateau.ts";
import { findingOf } from "./verdict.ts";
import { createWorkspace, type Workspace } from "./workspace.ts";

/**
 * One reading of the gauge.
 *
 * Source: none; the library's own type.
 */
export interface DecayReading {
  /** Time since the system was isolated from the pump. */
  readonly elapsed: Quantity<"duration">;
  /** What the gauge shows. */
  readonly pressure: Quantity<"absolutePressure">;
}

/**
 * A reading that is not part of the evidence, and why.
 *
 * Source: none; the library's own type.
 */
export interface Exclusion extends DecayReading {
  /** Position in the caller's log, from 0. */
  readonly row: number;
  /** Why. */
  readonly reason: ExclusionReason;
}

/**
 * A sudden change that no leak makes: a valve was opened or a hose moved.
 *
 * Source: none; the library's own type.
 */
export interface DecayStep {
  /** When. */
  readonly elapsed: Quantity<"duration">;
  /** How far the pressure left its course. */
  readonly change: Quantity<"pressureDifference">;
}

/**
 * The verdict on a vacuum decay.
 *
 * Source: JCGM 106:2012 for the decision; the shape is the library's own.
 */
export interface VacuumDecayAssessment extends Assessment<DecayCause> {
  /** What is behind the decay. */
  readonly cause: DecayCause;
  /** Length of the evidence: since isolation, or since the last step. */
  readonly evidence: Quantity<"duration">;
  /** Pressure at the end of the policy's hold: measured when it is over, forecast before. With the gauge's accuracy. */
  readonly atHoldEnd: Estimate<"absolutePressure">;
  /** Rate of the steady rise, the leak, over all models. */
  readonly leak: Estimate<"pressureRate">;
  /** 95 % two-sided interval of the leak; not symmetric when moisture could hide it. */
  readonly leakInterval: readonly [Quantity<"pressureRate">, Quantity<"pressureRate">];
  /** The leak as a throughput at the ambient temperature; missing without the volume. */
  readonly leakThroughput?: Estimate<"throughput">;
  /** The smallest leak that these readings could have shown; a pass says nothing of smaller ones. */
  readonly smallestLeak: Quantity<"pressureRate">;
  /** The same as a throughput; missing without the volume. */
  readonly smallestLeakThroughput?: Quantity<"throughput">;
  /** Where the water levels off; missing when there is no sign of water. */
  readonly plateau?: Plateau;
  /** How the evidence is shared between the explanations, together 1. */
  readonly shares: Readonly<EvidenceShares>;
  /** The best single model, for plotting with {@link decayCurve}; missing with fewer than three points. */
  readonly fit?: DecayFit;
  /** Readings that were set aside; the monitor keeps the first 100. */
  readonly excluded: readonly Exclusion[];
  /** How many were set aside for which reason. */
  readonly excludedCount: Readonly<Partial<Record<ExclusionReason, number>>>;
  /** Steps in the log. */
  readonly steps: readonly DecayStep[];
}

const causes: Record<DecayCause, string> = {
  "dry-and-tight": "Dry and tight: no steady rise above {smallest} and no moisture was seen.",
  leak: "Leak: the pressure keeps rising by {leak} ({low} to {high}).",
  moisture: "Moisture: the rise levels off near {plateau}; a leak above {smallest} was not seen.",
  "leak-and-moisture":
    "Leak and moisture: part of the rise levels off, {leak} ({low} to {high}) stays.",
  "moisture-leak-not-excluded": "Moisture is proven; a leak of up to {high} is not excluded.",
  outgassing:
    "Outgassing: the rise slows down without levelling off; a leak of up to {high} is not excluded.",
  undecided:
    "The readings fit several causes: a longer hold tells them apart, or a nitrogen break and a new evacuation.",
};

const cautions: readonly Caution[] = [
  statement(
    "not-a-pressure-test",
    "A vacuum decay does not replace the pressure test: one atmosphere drives a leak far less than the test pressure does.",
  ),
  statement(
    "instructions-govern",
    "Nameplate, manufacturer's instructions, local code and licensed practice govern. Never run a compressor in a vacuum.",
  ),
];

/** Where wide steps explain a display that stood still. */
const wideSteps = (step: number): Caution =>
  statement(
    "display-still",
    "The display stood still, and a rise within its step {step} does not show: see that it is not held, nor the gauge shut off from the system.",
    { step: new Quantity(step, micron.difference) },
  );

/** Where the caller's limit lets a leak pass. */
const leakKept = (values: Reason["values"]): Caution =>
  statement(
    "leak-within-limit",
    "A leak is there, {low} to {high}, and only the stated limit lets it pass: it lets refrigerant out and air in. Find it.",
    values,
  );

const sources: readonly Citation[] = /* @__PURE__ */ [
  cite("jcgm-106-2012", "8.3"),
  cite("burnham-anderson-2002", "2.4, 2.9"),
  cite("vacuum-handbook", "1.3.3"),
  cite("wagner-pruss-2002", "eq. 2.5"),
  cite("iapws-r14-08", "eq. 6"),
];

/** The verdict as the caller sees it. */
export function assessmentOf(
  log: Collector,
  work: Workspace = createWorkspace(),
): VacuumDecayAssessment {
  const { settings } = log;
  const { volume } = settings;
  const found = findingOf(log, work);
  const rate = (si: number) => new Quantity(si, micronPerMinute);
  const { leak, segment } = found;
  const scale = settings.accuracy / Math.sqrt(3);
  const end = Math.max(0, found.end.mean);
  const wet =
    found.plateau && found.cause.includes("moisture")
      ? plateauOf(found.plateau, segment, settings)
      : undefined;
  const values = {
    smallest: rate(found.smallest),
    leak: rate(leak.mean),
    low: rate(found.leakLow),
    high: rate(found.leakHigh),
    plateau: wet ? wet.pressure.value : "",
  };
  const reasons: Reason[] = [...found.reasons, statement(found.cause, causes[found.cause], values)];
  if (wet?.aboveSaturation) {
    reasons.push(
      statement(
        "above-saturation",
        "The plateau {plateau} is above the saturation of water at the coldest part: not water alone.",
        values,
      ),
    );
  }
  // a jump that no later reading has confirmed yet is neither evidence nor a step
  const rows: ExcludedRow[] = [...log.excluded];
  const counts = { ...log.excludedCount };
  if (log.suspect) {
    rows.push({ ...log.suspect, reason: "unconfirmed-jump" });
    counts["unconfirmed-jump"] = 1;
  }
  const excluded = Object.values(counts).reduce((sum, one) => sum + one, 0);
  if (excluded) {
    reasons.push(
      statement("readings-excluded", "{excluded} of {rows} readings were set aside.", {
        excluded,
        rows: log.rows,
      }),
    );
  }
  const steps = log.steps.map(({ t, change }) => ({
    elapsed: second(t),
    change: new Quantity(change, micron.difference),
  }));
  for (const step of steps) {
    reasons.push(
      statement(
        "step",
        "At {elapsed} the pressure jumped by {change}: a valve or a hose was moved.",
        { ...step },
      ),
    );
  }
  const reading = (t: number, p: number) => ({
    elapsed: second(t),
    pressure: new Quantity(p, micron),
  });
  return {
    outcome: found.outcome,
    cause: found.cause,
    reasons,
    assumptions: found.material
      ? [
          ...settings.assumptions,
          statement(
            "immaterial",
            "Less than {material} over the hold is hoses and gauge, not a finding.",
            {
              material: new Quantity(found.material, micron.difference),
            },
          ),
        ]
      : settings.assumptions,
    cautions: [
      ...(found.outcome === "pass" && found.cause.startsWith("leak")
        ? [leakKept({ low: values.low, high: values.high })]
        : []),
      ...cautions,
      ...(segment && stillness(segment, settings) === "wide-steps"
        ? [wideSteps(settings.resolutionAt(segment.lastP))]
        : []),
    ],
    sources: [settings.policy.source, ...sources],
    evidence: minute(segment ? segment.last / 60 : 0),
    atHoldEnd: estimate(new Quantity(end, micron), Math.hypot(found.end.u, scale * end)),
    leak: estimate(values.leak, leak.u),
    leakInterval: [values.low, values.high],
    ...(volume > 0 && {
      leakThroughput: estimate(paM3PerS(leak.mean * volume), leak.u * volume),
      smallestLeakThroughput: paM3PerS(found.smallest * volume),
    }),
    smallestLeak: values.smallest,
    ...(wet && { plateau: wet }),
    shares: found.shares,
    ...(segment && found.best && { fit: fitOf(found.best, segment) }),
    excluded: rows.map(({ row, t, p, reason }) => ({ row, reason, ...reading(t, p) })),
    excludedCount: counts,
    steps,
  };
}

/** The binned readings of a segment; the last bin may still be open. */
export function pointsOf(segment: Segment | undefined): DecayReading[] {
  if (!segment) return [];
  const { start, origin, t, p, open } = segment;
  const point = (at: number, rise: number) => ({
    elapsed: second(start + at),
    pressure: new Quantity(origin + rise, micron),
  });
  const points = t.map((at, i) => point(at, p[i] as number));
  if (open) points.push(point(open.t / open.n, open.p / open.n));
  return points;
}
