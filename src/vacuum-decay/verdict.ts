// What do the readings prove? Outcome, cause and figures from the weighed models and the policy.
// Follows JCGM 106:2012, 8.3 (guard bands) against the policy's limits; the causes follow the decay
// picture of installation manuals: a leak keeps rising, water levels off, dry and tight stays.
// Does not cover leaks too small to raise a vacuum: only the pressure test finds those.
import type { Outcome, Reason } from "../assessment/assessment.ts";
import { statement } from "../assessment/assessment.ts";
import { normalQuantile } from "../assessment/statistics.ts";
import { Quantity } from "../quantity/quantity.ts";
import { micron } from "../quantity/units/pressure.ts";
import { minute } from "../quantity/units/time.ts";
import { type Collector, type Segment, wholeGram } from "./collect.ts";
import { type Component, componentAt, type Workspace, weighModels } from "./evidence.ts";
import { timeUnit } from "./gram.ts";
import { boundOf, meanOf } from "./mixture.ts";
import { materialRise } from "./settings.ts";
import { levelling, slowBend, slowShape } from "./shapes.ts";

/**
 * What is behind the decay. `moisture-leak-not-excluded`: moisture is proven, and a leak could hide
 * behind it; that is not the finding `leak-and-moisture`, where both are proven.
 *
 * Source: manufacturers' manuals for leak, moisture, dry and tight; the other words are the library's own.
 */
export type DecayCause =
  | "dry-and-tight"
  | "leak"
  | "moisture"
  | "leak-and-moisture"
  | "moisture-leak-not-excluded"
  | "outgassing"
  | "undecided";

/** The verdict in SI units, before it is put into words and quantities. */
export interface Finding {
  readonly outcome: Outcome;
  readonly cause: DecayCause;
  readonly reasons: readonly Reason[];
  readonly segment: Segment | undefined;
  readonly components: readonly Component[];
  readonly best: Component | undefined;
  readonly leak: { mean: number; u: number };
  readonly leakLow: number;
  readonly leakHigh: number;
  readonly smallest: number;
  readonly end: { mean: number; u: number };
  readonly plateau: { mean: number; u: number } | undefined;
  readonly shares: Readonly<Record<"steady" | "leak" | "moisture" | "outgassing" | "both", number>>;
}

/** Chosen on the first simulator of the tests; common practice, no source. */
export const tuning = {
  temper: 0.5,
  floor: 0.1,
  discrepancy: 0.07,
  bend: 0.05,
  sure: 0.8,
  notExcluded: 0.01,
  outgassing: 0.25,
  excluded: 0.35,
};

export function findingOf(log: Collector, work: Workspace): Finding {
  const { settings, segment: current, longest } = log;
  const segment = longest && current && longest.last > current.last ? longest : current;
  if (!segment || segment.rows < 3) return nothing(log);
  const { hold, checkpoints, accuracy, confidence, target } = settings;
  const T = segment.last;
  wholeGram(log, segment, work.gram);
  const { components, variance, best } = weighModels(work, {
    waterMax: settings.waterMax - segment.origin,
    outgassingMax: 2000 * micron.scale, // common practice, no source
    floor: tuning.floor,
    temper: tuning.temper,
    aheadTime: hold,
  });
  const k = normalQuantile(confidence);

  // the rise that the policy allows over its hold, and the smallest effect that counts
  const start = Math.min(segment.origin, target);
  const allowed = Math.max(
    0,
    Math.min(...checkpoints.map(({ limit, rise }) => Math.min(limit - start, rise))),
  );
  const material = materialRise(allowed);
  const materialRate = material / hold;

  // leak: slope of the straight line, with what a misfit of the curved part could feign
  const feigned = (one: Component) =>
    one.shape < 0 ? 0 : (tuning.discrepancy * one.amplitude * slowShape(one.shape, T, one.tau)) / T;
  const slope = (one: Component) =>
    [
      Math.max(0, one.slope),
      Math.hypot(one.slopeU, feigned(one), (accuracy / Math.sqrt(3)) * one.slope),
    ] as const;
  const leak = meanOf(components, slope);
  const leakLow = Math.max(0, boundOf(components, slope, 0.025, 0));
  const leakHigh = boundOf(components, slope, 0.975, 0);
  const provenLow = boundOf(components, slope, 1 - confidence, 0);
  const provenHigh = boundOf(components, slope, confidence, 0);
  const lineU = Math.sqrt(variance) / (work.L[0] || 1) / timeUnit; // replaced below
  const smallest = Math.max(provenHigh, materialRate + k * Math.min(lineU, leak.u));

  // shares of the evidence by what is material over the hold
  const shares = { steady: 0, leak: 0, moisture: 0, outgassing: 0, both: 0 };
  for (const one of components) {
    const leaks = one.slope > materialRate;
    const slow = one.shape < 0 ? 0 : one.amplitude * slowShape(one.shape, hold, one.tau);
    const rise = componentAt(one, T) - one.constant;
    const bend = one.shape < 0 ? 0 : one.amplitude * slowBend(one.shape, T, one.tau);
    const bent = bend > Math.max(material, tuning.bend * rise);
    const kind = leaks
      ? bent
        ? "both"
        : "leak"
      : slow < material
        ? "steady"
        : one.shape < levelling
          ? "moisture"
          : "outgassing";
    shares[kind] += one.weight;
  }
  const wet = components.filter(
    (one) => one.shape >= 0 && one.shape < levelling && one.amplitude > material,
  );
  const plateau = wet.length
    ? meanOf(wet, (one) => [
        segment.origin + one.constant + one.fast1 + one.fast2 + one.amplitude,
        one.amplitudeU,
      ])
    : undefined;

  const leakProven = provenLow > materialRate;
  const leakExcluded = provenHigh < Math.max(materialRate, tuning.excluded * (allowed / hold));
  const cause = causeOf(shares, leakProven, leakExcluded);

  // the policy
  const end = meanOf(components, (one) => [segment.origin + one.ahead, one.aheadU]);
  const reasons: Reason[] = [];
  let outcome: Outcome = "pass";
  const micronOf = (p: number) => new Quantity(Math.max(0, p), micron.difference);
  for (const { at, limit, rise, failAbove } of checkpoints) {
    const reached = T >= at;
    const here = (one: Component) =>
      [at === hold ? one.ahead : componentAt(one, at), one.aheadU] as const;
    const begin = (one: Component) => one.constant;
    const ceiling = limit < Infinity;
    const figure = (one: Component) =>
      [here(one)[0] + (ceiling ? segment.origin : -begin(one)), here(one)[1]] as const;
    const { mean } = meanOf(components, figure);
    const scale = (accuracy / Math.sqrt(3)) * Math.abs(mean);
    const low = boundOf(components, figure, 1 - confidence, scale);
    const high = boundOf(components, figure, confidence, scale);
    const step = rise === 0 ? Math.max(settings.resolutionAt(segment.origin) || 0, 0) : 0;
    const most = ceiling ? limit : rise === 0 ? step + (high - mean) : rise;
    const values = {
      at: minute(at / 60),
      value: micronOf(mean),
      low: micronOf(low),
      high: micronOf(high),
      limit: micronOf(most),
    };
    const bad = Math.max(most, failAbove);
    if (components.length && low > bad) {
      outcome = "fail";
      reasons.push(
        statement(
          "limit-broken",
          "At {at} the policy allows {limit}; it is {value} ({low} to {high}).",
          values,
        ),
      );
    } else if (
      components.length &&
      high <= most &&
      (reached || (settings.policy.earlyPass && T >= hold / 4))
    ) {
      reasons.push(
        statement(
          "limit-kept",
          "At {at} the policy allows {limit}; it is {value} ({low} to {high}).",
          values,
        ),
      );
    } else {
      if (outcome === "pass") outcome = "inconclusive";
      reasons.push(
        reached
          ? statement(
              "too-close",
              "At {at} {value} ({low} to {high}) is too close to {limit}: hold longer.",
              values,
            )
          : statement(
              "hold-not-over",
              "The hold lasts to {at}; forecast {value} ({low} to {high}), limit {limit}.",
              values,
            ),
      );
    }
  }
  if (leakProven || provenLow > settings.leakLimit) {
    outcome = "fail";
  } else if (provenHigh > settings.leakLimit && outcome === "pass") {
    outcome = "inconclusive";
  }
  if (
    log.overRangeAt >= 0 &&
    log.overRangeAt > segment.start + T &&
    settings.range > Math.max(...checkpoints.map((c) => Math.min(c.limit, c.rise + start)))
  ) {
    outcome = "fail";
  }
  return {
    outcome,
    cause,
    reasons,
    segment,
    components,
    best,
    leak,
    leakLow,
    leakHigh,
    smallest,
    end,
    plateau,
    shares,
  };
}

/** Before the first usable reading. */
function nothing({ overRangeAt }: Collector): Finding {
  const none = { mean: 0, u: 0 };
  return {
    outcome: "inconclusive",
    cause: "undecided",
    reasons: [
      overRangeAt < 0
        ? statement("no-readings", "There is no usable reading yet.")
        : statement("over-range", "All readings are over the gauge's range."),
    ],
    segment: undefined,
    components: [],
    best: undefined,
    leak: none,
    leakLow: 0,
    leakHigh: 0,
    smallest: 0,
    end: none,
    plateau: undefined,
    shares: { steady: 0, leak: 0, moisture: 0, outgassing: 0, both: 0 },
  };
}

/**
 * Names the cause. Moisture needs a levelling that is seen: laws that never level off have to be excluded;
 * where one of them explains the readings alone, it is outgassing.
 */
function causeOf(
  { steady, leak, moisture, outgassing, both }: Finding["shares"],
  leakProven: boolean,
  leakExcluded: boolean,
): DecayCause {
  const { sure, notExcluded } = tuning;
  const curved = moisture + outgassing + both;
  if (steady > sure) return "dry-and-tight";
  if (leak > sure) return "leak";
  if (curved < sure) return "undecided";
  if (outgassing > notExcluded) {
    return outgassing > Math.max(tuning.outgassing, moisture) ? "outgassing" : "undecided";
  }
  if (leakProven) return "leak-and-moisture";
  return leakExcluded ? "moisture" : "moisture-leak-not-excluded";
}
