// What the two simulators share: a seeded generator, the gauge that looks at the true pressure, and the
// form of a simulated case. The physics of the rise is in simulate-chambers.ts and simulate-spectrum.ts.

import {
  degC,
  liter,
  micron,
  micronDifference,
  minute,
  percent,
  second,
} from "hvac-install-math/quantity";
import type { VacuumDecayOptions } from "hvac-install-math/vacuum-decay";
import {
  type AcceptancePolicy,
  acceptancePolicies,
  type DecayReading,
} from "hvac-install-math/vacuum-decay";

export const MICRON: number = 101.325 / 760; // Pa

export type Truth = "dry-and-tight" | "leak" | "moisture" | "leak-and-moisture" | "outgassing";

/** A case with everything that is true of it, pressures in Pa. */
export interface SimulatedCase {
  readonly truth: Truth;
  /** Rate of the leak alone, Pa/s. */
  readonly leakRate: number;
  /** What water and leak have added by the end of the log, Pa. */
  readonly waterRise: number;
  readonly leakRise: number;
  /** True pressure at the end of the hold, and what the policy allows then. */
  readonly endPressure: number;
  readonly endLimit: number;
  /** Up to here the policy itself calls it doubtful; the limit where it has no such zone. */
  readonly endDoubtful: number;
  readonly holdSeconds: number;
  readonly options: VacuumDecayOptions;
  readonly readings: DecayReading[];
}

export interface Random {
  (): number;
  between(low: number, high: number): number;
  logBetween(low: number, high: number): number;
  normal(): number;
  pick<T>(from: readonly T[]): T;
}

/** Mulberry32, public domain. */
export function random(seed: number): Random {
  let state = seed >>> 0;
  const next = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let x = Math.imul(state ^ (state >>> 15), 1 | state);
    x = (x + Math.imul(x ^ (x >>> 7), 61 | x)) ^ x;
    return ((x ^ (x >>> 14)) >>> 0) / 2 ** 32;
  };
  return Object.assign(next, {
    between: (low: number, high: number) => low + (high - low) * next(),
    logBetween: (low: number, high: number) => low * (high / low) ** next(),
    normal: () => Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next()),
    pick: <T>(from: readonly T[]) => from[Math.floor(next() * from.length)] as T,
  });
}

/** The site: how long, how often, which policy, how large the system. */
export interface Site {
  readonly duration: number;
  readonly interval: number;
  readonly policy: AcceptancePolicy;
  readonly hold: number;
  /** Pressure at isolation, and the rise that the policy allows from there, Pa. */
  readonly start: number;
  readonly allowed: number;
  readonly doubtful: number;
  readonly ambient: number;
  readonly volume: number;
}

const early = (policy: AcceptancePolicy): AcceptancePolicy => ({ ...policy, earlyPass: true });
const policies: readonly AcceptancePolicy[] = [
  acceptancePolicies.provenEarly500,
  early(acceptancePolicies.splitManualA),
  early(acceptancePolicies.distributorAdvice),
  early({
    ...acceptancePolicies.guideSpec15182,
    name: "guide-spec-15182-shortened",
    checkpoints: [{ at: minute(30), limit: micron(500) }],
  }),
];

export function siteOf(rng: Random): Site {
  const policy = rng.pick(policies);
  const last = policy.checkpoints[
    policy.checkpoints.length - 1
  ] as AcceptancePolicy["checkpoints"][number];
  const hold = last.at.si;
  const start = policy.target.si * rng.between(0.35, 0.95);
  const limit = last.limit ? last.limit.si : Number.POSITIVE_INFINITY;
  return {
    duration: Math.max(hold * rng.between(1, 1.3), rng.between(600, 2700)),
    interval: rng.pick([1, 1, 2, 5, 5, 10, 15, 30]),
    policy,
    hold,
    start,
    allowed: Math.min(limit - start, last.rise?.si ?? Number.POSITIVE_INFINITY),
    doubtful: last.failAbove?.si ?? 0,
    ambient: rng.between(5, 38),
    volume: rng.between(1.5, 12),
  };
}

export function truthOf(rng: Random): Truth {
  const x = rng();
  if (x < 0.35) return "dry-and-tight";
  if (x < 0.55) return "leak";
  if (x < 0.75) return "moisture";
  return x < 0.9 ? "leak-and-moisture" : "outgassing";
}

/** The gauge and the logger: turns the true pressure into readings. */
export function observe(
  rng: Random,
  site: Site,
  truth: Truth,
  leakRate: number,
  waterRise: number,
  pressureAt: (t: number) => number,
  noiseKind: "autoregressive" | "wandering",
): SimulatedCase {
  const { interval, duration, ambient } = site;
  const scale = 1 + 0.04 * rng.normal();
  const bend = 0.01 * rng.normal(); // scale changes per decade of pressure
  const zero = 3 * MICRON * rng.normal();
  const warmUp = rng() < 0.4 ? 6 * MICRON * rng.normal() : 0;
  const warmTau = rng.between(120, 900);
  const drift = (4 * MICRON * rng.normal()) / 3600;
  const swing = rng.between(0, 0.006) * (rng() < 0.5 ? -1 : 1); // gas temperature, relative over the log
  const noise = rng.logBetween(0.15, 4) * MICRON;
  const relative = rng.logBetween(0.0003, 0.004);
  const memory = rng.logBetween(1, 30);
  const steps = rng.pick([
    [1, 1, 1],
    [1, 5, 10],
    [1, 10, 50],
    [0.1, 1, 10],
    [5, 10, 50],
  ] as const);
  const gaps = rng() < 0.25 ? [rng.between(100, duration - 200)] : [];
  const jitter = rng() < 0.3 ? 0.3 : 0;
  const readings: DecayReading[] = [];
  let colored = rng.normal();
  let wander = 0;
  for (let t = rng.between(0, interval); t <= duration; ) {
    const stepUsed = interval * (1 + jitter * (rng() - 0.5));
    const keep = Math.exp(-stepUsed / memory);
    colored = keep * colored + Math.sqrt(1 - keep * keep) * rng.normal();
    wander += 0.15 * Math.sqrt(stepUsed / 60) * rng.normal() - wander * (stepUsed / 600);
    const p = pressureAt(t);
    const warm = p * (1 + (swing * t) / duration);
    const level = noise + relative * warm;
    const scatter =
      noiseKind === "autoregressive"
        ? level * colored
        : level * (0.7 * rng.normal() + 0.5 * colored + wander);
    let seen =
      warm * scale * (1 + bend * Math.log10(warm / 66)) +
      zero +
      warmUp * (1 - Math.exp(-t / warmTau)) +
      drift * t +
      scatter;
    const step =
      (seen < 1000 * MICRON ? steps[0] : seen < 10_000 * MICRON ? steps[1] : steps[2]) * MICRON;
    seen = Math.max(step, Math.round(seen / step) * step);
    if (!gaps.some((gap) => t > gap && t < gap + 90)) {
      readings.push({ elapsed: second(Number(t.toFixed(3))), pressure: micron(seen / MICRON) });
    }
    t += stepUsed;
  }
  return {
    truth,
    leakRate,
    waterRise,
    leakRise: leakRate * site.duration,
    endPressure: pressureAt(site.hold),
    endLimit: site.start + site.allowed,
    endDoubtful: Math.max(site.start + site.allowed, site.doubtful),
    holdSeconds: site.hold,
    options: {
      ambient: degC(ambient),
      volume: liter(site.volume),
      gauge: {
        accuracy: percent(10),
        ...(rng() < 0.5 ? { resolution: micronDifference(steps[0]) } : {}),
      },
      policy: site.policy,
    },
    readings,
  };
}
