// What does an analysis need to know, and is it usable? The options of both entry points, checked once.
// Follows JCGM 100:2008, 4.3.7 and F.2.2.1 for the gauge. Does not cover the readings: collect.ts.
import { type Assumption, statement } from "../assessment/assessment.ts";
import {
  describe,
  flagOf,
  listOf,
  numberOf,
  objectOf,
  oneOf,
  requireKind,
  siOf,
  textOf,
} from "../quantity/check.ts";
import { InvalidInputError } from "../quantity/errors.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { percent } from "../quantity/units/ratio.ts";
import type { AcceptancePolicy } from "./policies.ts";
import { saturationPa } from "./water.ts";

/**
 * A vacuum gauge as its data sheet describes it.
 *
 * Source: JCGM 100:2008, 4.3.7 (limits of error) and F.2.2.1 (resolution).
 */
export interface VacuumGauge {
  /** Smallest step of the display; one per range when it changes with the reading. Found from the readings when left out; a display that stands still is believed only with it. */
  readonly resolution?: Quantity<"pressureDifference"> | readonly GaugeRange[];
  /** Stated limits of error as a part of the reading; ±10 % is assumed when left out. */
  readonly accuracy?: Quantity<"ratio">;
  /** Largest reading; readings at or above it are over range. */
  readonly range?: Quantity<"absolutePressure">;
}

/** One range of a gauge. Source: none; the library's own type. */
export interface GaugeRange {
  /** Largest reading of the range. */
  readonly upTo: Quantity<"absolutePressure">;
  /** Smallest step of the display in it. */
  readonly resolution: Quantity<"pressureDifference">;
}

/**
 * What the analysis of a vacuum decay needs besides the readings.
 *
 * Source: none; the library's own type.
 */
export interface VacuumDecayOptions {
  /** `temperature` of the warmest part of the system, −40 to 60 °C: it limits what water can do. */
  readonly ambient: Quantity<"temperature">;
  /** `temperature` of the coldest part, where water would sit; the ambient when left out. */
  readonly coldest?: Quantity<"temperature">;
  /** Inner `volume` of the isolated part, 1 cm³ to 1 m³: turns the rise into a leak rate and a mass of water. */
  readonly volume?: Quantity<"volume">;
  /** The gauge. */
  readonly gauge?: VacuumGauge;
  /** What is accepted, such as `acceptancePolicies.guideSpec15182`. */
  readonly policy: AcceptancePolicy;
  /** Largest leak that is accepted: `throughput` (needs the volume) or `pressureRate`. What the policy's rise allows when left out. A leak that only this limit lets pass carries the caution `leak-within-limit`. */
  readonly leakLimit?: Quantity<"throughput"> | Quantity<"pressureRate">;
  /** How sure a pass or a fail has to be, 0.8 to 0.999; 0.95 one-sided when left out. */
  readonly confidence?: number;
}

/** A checkpoint in SI units; `limit` and `failAbove` are Infinity where there is none. */
export interface CheckpointSi {
  readonly at: number;
  readonly limit: number;
  readonly rise: number;
  readonly failAbove: number;
}

/** The options in SI units. */
export interface Settings {
  readonly ambient: number;
  readonly coldest: number;
  readonly volume: number;
  readonly accuracy: number;
  readonly range: number;
  /** Smallest step at a pressure, Pa; NaN where it has to be found from the readings. */
  readonly resolutionAt: (p: number) => number;
  readonly policy: AcceptancePolicy;
  readonly target: number;
  readonly checkpoints: readonly CheckpointSi[];
  readonly hold: number;
  /** Pa/s, Infinity when left out. */
  readonly leakLimit: number;
  readonly confidence: number;
  readonly waterMax: number;
  readonly assumptions: readonly Assumption[];
}

/** Checks the options and says what is assumed. */
export function settingsOf(options: VacuumDecayOptions): Settings {
  objectOf("options", options);
  const { ambient, coldest, volume, gauge = {}, policy, leakLimit, confidence = 0.95 } = options;
  objectOf("gauge", gauge);
  const assumptions: Assumption[] = [
    statement(
      "isolated",
      "The pump was valved off at time 0, and the gauge sits at the system, not at the pump.",
    ),
  ];
  const T = siOf("ambient", ambient, "temperature", { min: 233.15, max: 333.15 });
  const cold =
    coldest === undefined
      ? T
      : siOf("coldest", coldest, "temperature", { min: 173.15, max: T, hint: "not above ambient" });
  if (coldest === undefined) {
    assumptions.push(
      statement("no-cold-spot", "No part is colder than the ambient {ambient}.", { ambient }),
    );
  }
  const V =
    volume === undefined ? Number.NaN : siOf("volume", volume, "volume", { min: 1e-6, max: 1 });
  const { resolution, accuracy = assumedAccuracy(assumptions), range } = gauge;
  const a = siOf("gauge.accuracy", accuracy, "ratio", { min: 0, max: 1 });
  const top =
    range === undefined ? Infinity : siOf("gauge.range", range, "absolutePressure", { above: 0 });
  return {
    ambient: T,
    coldest: cold,
    volume: V,
    accuracy: a,
    range: top,
    resolutionAt: resolutionOf(resolution),
    ...policyOf(policy),
    leakLimit: leakLimitOf(leakLimit, V),
    confidence: numberOf("confidence", confidence, { min: 0.8, max: 0.999 }),
    waterMax: 1.1 * saturationPa(T + 5),
    assumptions,
  };
}

/** ±10 % of the reading: common for thermal gauges, from memory. */
function assumedAccuracy(assumptions: Assumption[]): Quantity<"ratio"> {
  const accuracy = percent(10);
  assumptions.push(
    statement("gauge-accuracy", "The gauge reads within ±{accuracy} of the reading.", { accuracy }),
  );
  return accuracy;
}

function resolutionOf(given: VacuumGauge["resolution"]): (p: number) => number {
  const limits = { min: 0 };
  if (given === undefined) return () => Number.NaN;
  if (!Array.isArray(given)) {
    const step = siOf(
      "gauge.resolution",
      given as Quantity<"pressureDifference">,
      "pressureDifference",
      limits,
    );
    return () => step;
  }
  const list = listOf("gauge.resolution", given as readonly GaugeRange[], 1000);
  numberOf("gauge.resolution.length", list.length, { min: 1 });
  const ranges = list.map((one, i) => ({
    top: siOf(`gauge.resolution[${i}].upTo`, one?.upTo, "absolutePressure", { above: 0 }),
    step: siOf(`gauge.resolution[${i}].resolution`, one.resolution, "pressureDifference", limits),
  }));
  ranges.sort((one, other) => one.top - other.top);
  return (p) => (ranges.find(({ top }) => p <= top) ?? ranges.at(-1))?.step ?? Number.NaN;
}

function policyOf(
  policy: AcceptancePolicy,
): Pick<Settings, "policy" | "target" | "checkpoints" | "hold"> {
  const given = policy?.checkpoints;
  if (!Array.isArray(given) || given.length === 0) {
    throw new InvalidInputError({
      argument: "policy",
      value: describe(policy),
      allowed: "an AcceptancePolicy with at least one checkpoint",
    });
  }
  const { name, earlyPass, standing, source } = policy;
  textOf("policy.name", name);
  flagOf("policy.earlyPass", earlyPass);
  oneOf("policy.standing", standing, ["published", "memory", "practice"]);
  textOf("policy.source.source", objectOf("policy.source", source).source);
  textOf("policy.source.clause", source.clause);
  const target = siOf("policy.target", policy.target, "absolutePressure", { above: 0 });
  let before = 0;
  const checkpoints = listOf("policy.checkpoints", policy.checkpoints, 1000).map((one, i) => {
    const path = `policy.checkpoints[${i}]`;
    const { at, limit, rise, failAbove } = objectOf(path, one);
    before = siOf(`${path}.at`, at, "duration", { above: before, max: 7 * 86_400 });
    if ((limit === undefined) === (rise === undefined)) {
      throw new InvalidInputError({
        argument: path,
        value: "neither or both",
        allowed: "limit or rise",
      });
    }
    const ceiling =
      limit !== undefined
        ? siOf(`${path}.limit`, limit, "absolutePressure", { above: 0 })
        : Infinity;
    return {
      at: before,
      limit: ceiling,
      rise:
        rise !== undefined
          ? siOf(`${path}.rise`, rise, "pressureDifference", { min: 0 })
          : Infinity,
      failAbove:
        failAbove !== undefined
          ? siOf(
              `${path}.failAbove`,
              failAbove,
              "absolutePressure",
              limit ? { min: ceiling } : { above: 0 },
            )
          : 0,
    };
  });
  return { policy, target, checkpoints, hold: before };
}

function leakLimitOf(limit: VacuumDecayOptions["leakLimit"], volume: number): number {
  if (limit === undefined) return Infinity;
  if (limit?.kind !== "throughput") return siOf("leakLimit", limit, "pressureRate", { above: 0 });
  requireKind("leakLimit", limit, "throughput");
  if (volume > 0) return siOf("leakLimit", limit, "throughput", { above: 0 }) / volume;
  throw new InvalidInputError({
    argument: "leakLimit",
    value: limit.toString(),
    allowed: "a pressureRate when the volume is not given",
  });
}
