// What do the readings prove? Outcome, cause and figures from the weighed models and the policy.
// Follows JCGM 106:2012, 8.3 (guard bands) and JCGM 100:2008 for the leak's uncertainty.
// Does not cover leaks too small to raise a vacuum: only the pressure test finds those.
import { type Outcome, type Reason, statement } from "../assessment/assessment.ts";
import { normalQuantile } from "../assessment/statistics.ts";
import { Quantity } from "../quantity/quantity.ts";
import { micron, micronPerMinute } from "../quantity/units/pressure.ts";
import { causeOf, type DecayCause, type EvidenceShares, sharesOf } from "./cause.ts";
import { type Collector, resolution, type Segment, wholeGram } from "./collect.ts";
import type { Component } from "./component.ts";
import { doubtsOf } from "./doubts.ts";
import { weighModels } from "./evidence.ts";
import { boundOf, mixtureOf } from "./mixture.ts";
import { policyVerdict } from "./policy-verdict.ts";
import type { Settings } from "./settings.ts";
import { levelling, slowShape } from "./shapes.ts";
import { discrepancy, excludedLeak, floor, outgassingMax, temper } from "./tuning.ts";
import { lineUncertainty, type Workspace } from "./workspace.ts";

/** A mean and its standard uncertainty. */
interface Spread {
  readonly mean: number;
  readonly u: number;
}

/** The verdict in SI units, before it is put into quantities. */
export interface Finding {
  readonly outcome: Outcome;
  readonly cause: DecayCause;
  readonly reasons: readonly Reason[];
  readonly segment: Segment | undefined;
  readonly best: Component | undefined;
  readonly leak: Spread;
  /** 95 % two-sided. */
  readonly leakLow: number;
  readonly leakHigh: number;
  readonly smallest: number;
  /** Smallest rise over the hold that counts, Pa. */
  readonly material: number;
  readonly end: Spread;
  readonly plateau: Spread | undefined;
  readonly shares: EvidenceShares;
}

/** The stretch of the log that is judged: the longest one without a step. */
export function judgedSegment({ segment, longest }: Collector): Segment | undefined {
  return longest && segment && longest.last > segment.last ? longest : segment;
}

export function findingOf(log: Collector, work: Workspace): Finding {
  const { settings } = log;
  const { hold, accuracy, target, policy } = settings;
  const segment = judgedSegment(log);
  if (!segment) return nothing(log, segment);
  const T = segment.last;
  const { origin } = segment;
  const first = segment.t[0] ?? T; // of the first bin
  wholeGram(log, segment, work.gram);
  const { components, variance, best } = weighModels(work, {
    waterMax: settings.waterMax - origin,
    outgassingMax,
    floor,
    temper,
    aheadTime: hold,
  });
  if (!best) return nothing(log, segment);

  // before the hold is over many looks are taken: ask for more, and for some evidence
  const over = T >= hold;
  const confidence = over ? settings.confidence : 1 - (1 - settings.confidence) / 5;
  const mayFail = over || T >= Math.max(120, Math.min(hold / 5, 600));
  const mayPass = over || (policy.earlyPass && T >= Math.max(120, hold / 3));
  const k = normalQuantile(confidence);

  const material = materialRise(settings, origin);
  const materialRate = material / hold;

  // leak: slope of the line; a wrong shape of the curved part can feign one, the gauge's scale and its step
  // at both ends enter it
  const scale = accuracy / Math.sqrt(3);
  const step = resolution(log, origin);
  const stepped = step / Math.sqrt(6) / T;
  const leak = mixtureOf(
    components,
    ({ slope }) => Math.max(0, slope),
    ({ slope, slopeU, shape, amplitude, tau }) => {
      const curved = shape < 0 ? 0 : (discrepancy * amplitude * slowShape(shape, T, tau)) / T;
      return Math.sqrt(slopeU ** 2 + curved ** 2 + (scale * slope) ** 2 + stepped ** 2);
    },
  );
  const provenLow = boundOf(leak, 1 - confidence);
  const provenHigh = boundOf(leak, confidence);
  const leakProven = provenLow > materialRate;
  const leakExcluded =
    provenHigh < Math.max(materialRate, (excludedLeak * allowedRise(settings, origin)) / hold);

  const shares = sharesOf(components, { material, hold, first, T });
  let cause = causeOf(shares, leakProven, leakExcluded);

  const verdict = policyVerdict(components, settings, {
    T,
    first,
    origin,
    step,
    confidence,
    mayFail,
    mayPass,
  });
  let { outcome } = verdict;
  const { reasons } = verdict;
  const rate = (si: number) => new Quantity(Math.max(0, si), micronPerMinute);
  const add = (then: Outcome, code: string, text: string, values: Reason["values"] = {}) => {
    if (outcome !== "fail") outcome = then;
    reasons.unshift(statement(code, text, values));
  };
  const limit = settings.leakLimit;
  const values = { low: rate(provenLow), high: rate(provenHigh) };
  if (limit < Infinity) {
    const more = { ...values, limit: rate(limit) };
    if (mayFail && provenLow > limit) {
      add("fail", "leak-above-limit", "The leak is above {limit}: {low} to {high}.", more);
    } else if (provenHigh > limit) {
      add(
        "inconclusive",
        "leak-limit-open",
        "A leak above {limit} is not excluded: up to {high}.",
        more,
      );
    }
  } else if (T >= hold / 2 && leakProven) {
    add("fail", "leak-proven", "A steady rise is proven: {low} to {high}.", values);
  }
  if (origin * (1 - k * scale) > target) {
    const more = { start: new Quantity(origin, micron), target: new Quantity(target, micron) };
    add("inconclusive", "target-missed", "It started at {start}, above the target {target}.", more);
    if (cause === "dry-and-tight") cause = "undecided"; // something holds the pressure up
  }
  if (log.overRangeRun > 1 && !over) overRange(settings, add);

  for (const { code, text, values } of doubtsOf(components, segment, settings, {
    k: k * scale,
    // scatter of a few rows may be the course itself
    least: material + (log.noiseCount < 10 ? 0 : 3 * Math.sqrt(log.noise)),
  })) {
    add("inconclusive", code, text, values);
    if (cause === "dry-and-tight") cause = "undecided";
  }

  const wet = components.filter(
    ({ shape, amplitude }) => shape < levelling && amplitude > material,
  );
  return {
    outcome,
    cause,
    reasons,
    segment,
    best,
    leak,
    leakLow: Math.max(0, boundOf(leak, 0.025)),
    leakHigh: boundOf(leak, 0.975),
    smallest: Math.max(
      provenHigh,
      step / T, // what stays within one step of the display never shows
      materialRate + k * lineUncertainty(work, variance),
    ),
    material,
    end: mixtureOf(
      components,
      ({ ahead }) => origin + ahead,
      ({ aheadU }) => aheadU,
    ),
    plateau: wet.length
      ? mixtureOf(
          wet,
          (one) => origin + one.constant + one.fast1 + one.fast2 + one.amplitude,
          ({ amplitudeU }) => amplitudeU,
        )
      : undefined,
    shares,
  };
}

/** The rise that the policy allows over its hold, Pa; below 0 where a limit lies below the start. */
function allowedRise({ target, checkpoints }: Settings, origin: number): number {
  const start = Math.min(origin, target);
  return Math.min(...checkpoints.map(({ limit, rise }) => Math.min(limit - start, rise)));
}

/**
 * Smallest rise over the hold that counts: a tenth of what the policy allows, at least 10 micron. Hoses, a
 * warming gauge and a drifting zero make as much; common practice, no source.
 */
function materialRise(settings: Settings, origin: number): number {
  return Math.max(0.1 * allowedRise(settings, origin), 10 * micron.scale);
}

function overRange(
  { range, checkpoints }: Settings,
  add: (then: Outcome, code: string, text: string, values?: Reason["values"]) => void,
): void {
  const most = Math.max(...checkpoints.map(({ limit, failAbove }) => Math.max(limit, failAbove)));
  const values = { range: new Quantity(range, micron) };
  if (range > most) add("fail", "over-range", "The gauge went over its range {range}.", values);
  else add("inconclusive", "over-range", "The gauge went over its range {range}.", values);
}

/** Before there is enough to fit. */
function nothing(log: Collector, segment: Segment | undefined): Finding {
  const none = { mean: 0, u: 0 };
  const finding: Finding = {
    outcome: "inconclusive",
    cause: "undecided",
    reasons: [statement("too-few-readings", "There are too few usable readings yet.")],
    segment,
    best: undefined,
    leak: none,
    leakLow: 0,
    leakHigh: 0,
    smallest: 0,
    material: 0,
    end: { mean: segment?.lastP ?? 0, u: 0 },
    plateau: undefined,
    shares: { steady: 0, leak: 0, moisture: 0, outgassing: 0, both: 0 },
  };
  if (log.overRangeRun < 2) return finding;
  let { outcome } = finding;
  const reasons = [...finding.reasons];
  overRange(log.settings, (then, code, text, values) => {
    outcome = then;
    reasons.unshift(statement(code, text, values));
  });
  return { ...finding, outcome, reasons };
}
