// What does an analysis need to know, and is it usable? The options of both entry points, checked once.
// Follows JCGM 100:2008, 4.3.7 and F.2.2.1 for the gauge. Does not cover the readings: collect.ts.
import {
  askOneOf,
  flagOf,
  listOf,
  numberOf,
  objectOf,
  oneOf,
  siOf,
  textOf,
} from "../quantity/check.ts";
import { Quantity } from "../quantity/quantity.ts";
import { paM3PerS } from "../quantity/units/flow.ts";
import { liter } from "../quantity/units/geometry.ts";
import { assumedAccuracy, resolutionOf, type VacuumGauge } from "./gauge.ts";
import { type LeakLimit, leakLimitOf } from "./leak-limit.ts";
import type { AcceptancePolicy } from "./policies/index.ts";
import { say, type VacuumDecayStatement } from "./statements.ts";
import { hoseAllowance, usualVolume } from "./tuning.ts";
import { saturationPa } from "./water.ts";

/**
 * How the system was shut off from the pump: by an isolation valve at the system (a core tool's, a manifold block's
 * at the port), by taking the hose off, or by the pump's own valve, which is known to weep.
 */
export type PumpIsolation = "isolation-valve" | "hose-removed" | "pump-valve";

/**
 * Hoses within the isolated part.
 */
export interface VacuumHoses {
  /** `rubber` lets air through, `low-permeation` has a barrier, `metal` lets none through. */
  readonly material: "rubber" | "low-permeation" | "metal";
  /** Length of all of them together, 0 to 30 m. */
  readonly length: Quantity<"length">;
}

/**
 * What hoses and gauge do by themselves: shut off from the system and watched.
 */
export interface BlankTest {
  /** Rise of the pressure by the end of the blank test, 0 or more. */
  readonly rate: Quantity<"pressureRate">;
  /** Inner volume of hoses and gauge. */
  readonly volume: Quantity<"volume">;
}

/**
 * What the analysis of a vacuum decay needs besides the readings.
 */
export interface VacuumDecayOptions {
  /** `temperature` of the warmest part of the system, −40 to 60 °C: it limits what water can do. */
  readonly ambient: Quantity<"temperature">;
  /** `temperature` of the coldest part, where water would sit; the ambient when left out. */
  readonly coldest?: Quantity<"temperature"> | undefined;
  /** Inner `volume` of the isolated part, 1 cm³ to 1 m³: turns the rise into a leak and a mass of water; 3 L is assumed when left out. */
  readonly volume?: Quantity<"volume"> | undefined;
  /** The gauge. */
  readonly gauge?: VacuumGauge | undefined;
  /** What is accepted, such as `acceptancePolicies.guideSpec15182`. */
  readonly policy: AcceptancePolicy;
  /** Largest leak that is accepted, as `throughput` or `pressureRate`: less than the policy's limit, never more. */
  readonly leakLimit?: Quantity<"throughput"> | Quantity<"pressureRate"> | undefined;
  /** How the pump was shut off; a course that falls or stays too flat is believed only where it is known. */
  readonly isolation?: PumpIsolation | undefined;
  /** Hoses within the isolated part: what they let in is no leak of the system. */
  readonly hoses?: VacuumHoses | undefined;
  /** What a blank test of hoses and gauge showed; it is taken off the rise. */
  readonly blankTest?: BlankTest | undefined;
  /** How sure a pass or a fail has to be, 0.8 to 0.999; 0.95 one-sided when left out. */
  readonly confidence?: number | undefined;
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
  /** NaN when left out. */
  readonly volume: number;
  readonly accuracy: number;
  readonly range: number;
  /** Smallest step at a pressure, Pa; NaN where it has to be found from the readings. */
  readonly resolutionAt: (p: number) => number;
  readonly policy: AcceptancePolicy;
  readonly target: number;
  readonly checkpoints: readonly CheckpointSi[];
  readonly hold: number;
  readonly leakLimit: LeakLimit;
  /** Whether the pump is known to be shut off. */
  readonly shutOff: boolean;
  /** What hoses may let in, and what a blank test showed that they and the gauge do, Pa/s. */
  readonly hoses: number;
  readonly blank: number;
  readonly confidence: number;
  readonly waterMax: number;
  readonly assumptions: readonly VacuumDecayStatement[];
}

/** Checks the options and says what is assumed. */
export function settingsOf(options: VacuumDecayOptions): Settings {
  objectOf("options", options);
  const { ambient, coldest, volume, gauge = {}, policy, isolation, confidence = 0.95 } = options;
  objectOf("gauge", gauge);
  const assumptions: VacuumDecayStatement[] = [];
  if (isolation === undefined) assumptions.push(say("vacuum-decay.isolated"));
  else oneOf("isolation", isolation, ["isolation-valve", "hose-removed", "pump-valve"]);
  assumptions.push(say("vacuum-decay.gauge-at-the-system"));
  const T = siOf("ambient", ambient, "temperature", { min: 233.15, max: 333.15 });
  const cold =
    coldest === undefined ? T : siOf("coldest", coldest, "temperature", { min: 173.15, max: T });
  if (coldest === undefined) assumptions.push(say("vacuum-decay.no-cold-spot", { ambient }));
  const V =
    volume === undefined ? Number.NaN : siOf("volume", volume, "volume", { min: 1e-6, max: 1 });
  if (volume === undefined) {
    assumptions.push(
      say("vacuum-decay.usual-volume", { volume: new Quantity(usualVolume, liter) }),
    );
  }
  const { resolution, accuracy = assumedAccuracy(assumptions), range } = gauge;
  const a = siOf("gauge.accuracy", accuracy, "ratio", { min: 0, max: 1 });
  const top =
    range === undefined ? Infinity : siOf("gauge.range", range, "absolutePressure", { above: 0 });
  const kept = policyOf(policy);
  const about = V || usualVolume;
  return {
    ambient: T,
    coldest: cold,
    volume: V,
    accuracy: a,
    range: top,
    resolutionAt: resolutionOf(resolution),
    ...kept,
    leakLimit: leakLimitOf(options.leakLimit, policy.leakLimit, about),
    shutOff: isolation === "isolation-valve" || isolation === "hose-removed",
    ...hosesOf(options, about, assumptions),
    confidence: numberOf("confidence", confidence, { min: 0.8, max: 0.999 }),
    waterMax: 1.1 * saturationPa(T + 5),
    assumptions,
  };
}

/**
 * Air through a meter of hose, Pa·m³/s: 2 micron·L/min for rubber, a tenth with a barrier; from memory, of the order
 * of what is published for elastomers of this size.
 */
const perMeter = { rubber: 4.4e-6, "low-permeation": 4.4e-7, metal: 0 } as const;

function hosesOf(
  { hoses, blankTest }: VacuumDecayOptions,
  volume: number,
  assumptions: VacuumDecayStatement[],
): Pick<Settings, "hoses" | "blank"> {
  const materials = ["rubber", "low-permeation", "metal"] as const;
  let allowance = hoseAllowance;
  if (hoses !== undefined) {
    const { material, length } = objectOf("hoses", hoses);
    oneOf("hoses.material", material, materials);
    allowance = perMeter[material] * siOf("hoses.length", length, "length", { min: 0, max: 30 });
  }
  if (blankTest !== undefined) {
    const { rate, volume: own } = objectOf("blankTest", blankTest);
    const r = siOf("blankTest.rate", rate, "pressureRate", { min: 0 });
    const blank = r * siOf("blankTest.volume", own, "volume", { above: 0, max: 1 });
    return { hoses: 0, blank: blank / volume };
  }
  if (hoses === undefined) {
    assumptions.push(say("vacuum-decay.hoses-unknown", { allowance: paM3PerS(allowance) }));
  }
  return { hoses: allowance / volume, blank: 0 };
}

function policyOf(
  policy: AcceptancePolicy,
): Pick<Settings, "policy" | "target" | "checkpoints" | "hold"> {
  const { name, earlyPass, standing, source } = objectOf("policy", policy);
  textOf("policy.name", name);
  flagOf("policy.earlyPass", earlyPass);
  oneOf("policy.standing", standing, ["published", "memory", "practice"]);
  textOf("policy.source.source", objectOf("policy.source", source).source);
  textOf("policy.source.clause", source.clause);
  const target = siOf("policy.target", policy.target, "absolutePressure", { above: 0 });
  let before = 0;
  const checkpoints = listOf("policy.checkpoints", policy.checkpoints, 1000, 1).map((one, i) => {
    const path = `policy.checkpoints[${i}]`;
    const { at, limit, rise, failAbove } = objectOf(path, one);
    before = siOf(`${path}.at`, at, "duration", { above: before, max: 7 * 86_400 });
    if ((limit === undefined) === (rise === undefined)) {
      askOneOf(path, "neither or both", ["limit", "rise"]);
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
