// Leak proven, tight to the stated limit, or undecided? From a drop and its uncertainty to the verdict.
// Follows JCGM 106:2012, 8.3.2 and 8.3.3 (guarded acceptance and rejection); smallest leak and hold time
// from Q = V Δp/Δt. Does not cover where the leak is: bubbles, tracer gas, sections do.
import {
  type Assumption,
  type Caution,
  type Citation,
  cite,
  type Estimate,
  type Reason,
  statement,
} from "../assessment/assessment.ts";
import { conformity } from "../assessment/conformity.ts";
import { normalProbability, normalQuantile } from "../assessment/statistics.ts";
import { numberOf } from "../quantity/check.ts";
import type { AdditiveKind } from "../quantity/kinds.ts";
import { Quantity, type Unit } from "../quantity/quantity.ts";
import { paM3PerS } from "../quantity/units/flow.ts";
import { gPerYear } from "../quantity/units/mass.ts";
import { hour } from "../quantity/units/time.ts";
import { cautions, holdCautions } from "./cautions.ts";
import { type Limit, loosest } from "./criterion.ts";
import { combined, type Share } from "./drop.ts";
import type { State } from "./setup.ts";
import type { PressureTestAssessment } from "./verdict.ts";

/** What the judge needs, in SI. */
export interface Evidence {
  readonly drop: number;
  readonly shares: readonly Share[];
  readonly limit: Limit | undefined;
  /** First and last reading, and whether they are gauge readings. */
  readonly first: State;
  readonly last: State;
  readonly isGauge: boolean;
  /** Absolute pressure of the first reading at the temperature of the last, Pa. */
  readonly expected: number;
  readonly confidence: number | undefined;
  /** Seconds and m³; 0 when unknown. */
  readonly seconds: number;
  readonly volume: number;
  /** Relative standard uncertainty of the volume. */
  readonly volumeError: number;
  /** kg/m³ lost per Pa of drop. */
  readonly densityPerPascal: number;
  readonly assumptions: readonly Assumption[];
  readonly unit: Unit<"pressureDifference">;
}

/** k = 2 decides, so that the verdict agrees with the ± that is shown; stricter than one-sided 95 %. */
const defaultConfidence = /* @__PURE__ */ normalProbability(2);

const week = 7 * 86_400;

const sources: readonly Citation[] = /* @__PURE__ */ (() => [
  cite("span-2000"),
  cite("jcgm-100-2008", "5.1, 5.2"),
  cite("jcgm-106-2012", "8.3"),
  cite("ashrae-15-2022", "field leak test"),
])();

/** A limit says what is accepted, not that nothing leaks: common practice, no source. */
const leakKept: Caution = /* @__PURE__ */ statement(
  "leak-within-limit",
  "A leak is proven, though it keeps the limit: refrigerant leaves by it too. Find and mend it, then test again.",
);

/** The confidence of the decision and its coverage factor. */
export function coverage(confidence: number = defaultConfidence): { level: number; k: number } {
  const level = numberOf("confidence", confidence, { min: 0.8, below: 1 });
  return { level, k: normalQuantile(level) };
}

/** A quantity to four digits, for a sentence. */
export function shown<K extends AdditiveKind>(si: number, unit: Unit<K>): Quantity<K> {
  return unit(Number((si / unit.scale).toPrecision(4)));
}

/** The verdict. */
export function judge(evidence: Evidence): PressureTestAssessment {
  const { drop, shares, limit, first, last, isGauge, expected } = evidence;
  const { seconds, volume, volumeError, unit } = evidence;
  const { level, k } = coverage(evidence.confidence);
  const u = combined(shares);
  const estimate = <K extends "pressureDifference" | "throughput" | "massFlow">(
    value: number,
    standard: number,
    of: Unit<K>,
  ) =>
    ({
      value: new Quantity(value, of),
      standardUncertainty: new Quantity(standard, of),
      expandedUncertainty: new Quantity(k * standard, of),
      coverageFactor: k,
    }) as unknown as Estimate<K>;
  const correctedDrop = estimate(drop, u, unit);
  const psi = (si: number) => shown(Math.round(si * 1e6) / 1e6, unit);
  const above = Math.max(drop, 0) + k * u;
  // A limit on the leak rate hangs on the volume too.
  const uLimit = limit?.isLeak ? Math.hypot(u, drop * volumeError) : u;
  const ruling = conformity({
    value: correctedDrop.value,
    standardUncertainty: new Quantity(uLimit, unit),
    upperLimit: new Quantity(limit?.drop ?? 0, unit),
    confidence: level,
  });
  const isLeak = drop > k * u;
  // Half as much again as the expanded uncertainty: 1 in 700 by chance.
  const isRise = drop < -1.5 * k * u;
  // What a wide open leak would lose.
  const available = expected - last.atmosphere;
  const largest = limit ? loosest(limit, available, seconds) : 0;
  const isSlack = limit !== undefined && limit.drop > largest && ruling.outcome !== "fail";
  const isOpen = isRise || isSlack || (!limit && ruling.outcome === "pass");
  const outcome = isOpen ? "inconclusive" : ruling.outcome;

  const reasons: Reason[] = [];
  const figures = { drop: psi(drop), uncertainty: psi(k * u), above: psi(above) };
  const say = (code: string, text: string, values: Reason["values"] = {}) =>
    reasons.push(statement(code, text, { ...figures, ...values }));
  if (isRise) {
    say(
      "unexplained-rise",
      "The pressure is {rise} ± {uncertainty} above what the temperature explains: gas came in, or the thermometer does not follow the gas.",
      { rise: psi(-drop) },
    );
  }
  if (limit) {
    const values = { limit: psi(limit.drop) };
    if (isSlack) {
      say(
        "limit-too-loose",
        "The limit {limit} is more than 5 % of the fill pressure {pressure} and says nothing about tightness: fill higher or state one below {largest}.",
        { ...values, pressure: psi(available), largest: psi(largest) },
      );
    } else if (outcome === "pass") {
      say("within-limit", "Drop {drop} + {uncertainty} stays within the limit {limit}.", values);
    } else if (outcome === "fail") {
      say("above-limit", "Drop {drop} − {uncertainty} exceeds the limit {limit}.", values);
    } else if (!isRise) {
      say(
        "limit-undecided",
        "Drop {drop} ± {uncertainty} reaches across the limit {limit}.",
        values,
      );
    }
  }
  if (isLeak) say("leak-proven", "Drop {drop} exceeds its uncertainty ± {uncertainty}: a leak.");
  else if (!isRise)
    say("no-leak-above", "No drop above {above} was seen ({drop} ± {uncertainty}).");
  // What was read is what temperature and barometer change by themselves, less the drop.
  const barometer = isGauge ? first.atmosphere - last.atmosphere : 0;
  say(
    "weather-alone",
    `Temperature alone changes the pressure by {temperature}${barometer === 0 ? "" : ", the barometer by {barometer}"} from the first to the last reading; it changed by {change}. Together the readings leave a drop of {drop} ± {uncertainty}.`,
    {
      temperature: psi(expected - first.pressure),
      barometer: psi(barometer),
      change: psi(last.pressure - first.pressure + barometer),
    },
  );
  if (!limit && outcome === "inconclusive") {
    say("no-limit-stated", "That proves no tightness: a pass needs a stated limit.");
  }

  const furtherHold =
    outcome === "inconclusive" && !isRise && !isSlack ? hold(evidence, k * uLimit) : 0;
  if (outcome === "inconclusive" && !isSlack) {
    const [largest] = shares;
    if (furtherHold > 0) {
      const further = shown(furtherHold, hour);
      say("hold-longer", "About {further} more would decide, if it goes on like this.", {
        further,
      });
    } else if (largest) {
      const values = { part: largest.part, share: psi(largest.u) };
      say("better-evidence", "Waiting alone will not decide: reduce the {part} ({share}).", values);
    }
  }

  const rate = seconds > 0 ? volume / seconds : 0;
  const relative = Math.hypot(u, drop * volumeError);
  if (rate > 0) {
    const smallest = shown(k * u * rate, paM3PerS);
    say("smallest-leak", "The smallest leak this test could prove is {smallest}.", { smallest });
  } else say("smallest-leak", "The smallest drop this test could prove is {uncertainty}.");
  const loss = rate * evidence.densityPerPascal;
  const brief = outcome === "fail" ? [] : holdCautions(seconds);
  return {
    outcome,
    ...(isRise ? { cause: "unexplained rise" as const } : isLeak ? { cause: "leak" as const } : {}),
    correctedDrop,
    uncertaintyBudget: shares.map(({ part, u }) => ({
      part,
      standardUncertainty: new Quantity(u, unit),
    })),
    ...(limit && {
      limit: new Quantity(limit.drop, unit),
      conformanceProbability: ruling.conformanceProbability,
    }),
    smallestProvableDrop: new Quantity(k * u, unit),
    noLeakAbove: new Quantity(above, unit),
    ...(rate > 0 && {
      leakRate: estimate(drop * rate, relative * rate, paM3PerS),
      nitrogenLoss: estimate(drop * loss, relative * loss, gPerYear),
      smallestProvableLeak: new Quantity(k * u * rate, paM3PerS),
    }),
    ...(furtherHold > 0 && { furtherHold: new Quantity(furtherHold, hour) }),
    reasons,
    assumptions: evidence.assumptions,
    cautions: [...(isLeak && outcome === "pass" ? [leakKept] : []), ...brief, ...cautions],
    sources: brief.length > 0 ? [...sources, cite("umc")] : sources,
  };
}

/** Seconds more until drop·(t/t0) leaves the guard band of ± U around the limit; 0 when it never does, or not within a week. */
function hold({ drop, limit, seconds }: Evidence, U: number): number {
  const apart = limit?.isRate ? Math.abs(limit.drop - drop) : drop;
  const needed = limit && !limit.isRate ? limit.drop + U : U;
  const further = seconds * (needed / apart - 1);
  return further <= week ? Math.max(0, further) : 0;
}
