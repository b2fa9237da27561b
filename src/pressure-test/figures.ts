// What figures does a verdict carry? Estimates, leak rates and the hold that would decide; nothing is decided here.
// Follows JCGM 100:2008, 5.1, and Q = V·Δp/Δt (ISO 3529-1).
// Does not cover the drop itself: drop.ts, fit-log.ts.
import type { Estimate } from "../assessment/assessment.ts";
import type { AdditiveKind } from "../quantity/kinds.ts";
import { Quantity, type Unit } from "../quantity/quantity.ts";
import { paM3PerS } from "../quantity/units/flow.ts";
import { gPerYear } from "../quantity/units/mass.ts";
import { hour, minute, second } from "../quantity/units/time.ts";
import type { Limit } from "./criterion.ts";
import { expected } from "./drop.ts";
import type { Evidence, LeakFactors } from "./evidence.ts";
import { warmthAt } from "./gas-errors.ts";
import type { PressureTestAssessment } from "./verdict.ts";

/** A quantity to four digits, for a sentence. */
export function shown<K extends AdditiveKind>(si: number, unit: Unit<K>): Quantity<K> {
  return unit(Number((si / unit.scale).toPrecision(4)));
}

/** Seconds as a person says them. */
export const asTime = (seconds: number): Quantity<"duration"> =>
  shown(seconds, seconds < 60 ? second : seconds < 7200 ? minute : hour);

/** A computed wait as a person sets it, rounded up: minutes, from two hours half hours, from a day hours. */
export const asWait = (seconds: number): Quantity<"duration"> =>
  seconds < 7200
    ? minute(Math.ceil(seconds / 60))
    : hour(seconds < 86_400 ? Math.ceil(seconds / 1800) / 2 : Math.ceil(seconds / 3600));

type Rate = "pressureDifference" | "throughput" | "massFlow";

/** A value with its uncertainty. */
export const estimate = <K extends Rate>(
  value: number,
  u: number,
  k: number,
  unit: Unit<K>,
): Estimate<K> =>
  ({
    value: new Quantity(value, unit),
    standardUncertainty: new Quantity(u, unit),
    expandedUncertainty: new Quantity(k * u, unit),
    coverageFactor: k,
  }) as unknown as Estimate<K>;

/** The leak of a drop, where volume and time are known. */
export function leakFigures(
  drop: number,
  u: number,
  k: number,
  { seconds, volume, volumeError, densityPerPascal }: LeakFactors,
): Pick<PressureTestAssessment, "leakRate" | "nitrogenLoss" | "smallestProvableLeak"> {
  const rate = seconds > 0 ? volume / seconds : 0;
  if (rate === 0) return {};
  const relative = Math.hypot(u, drop * volumeError);
  const loss = rate * densityPerPascal;
  return {
    leakRate: estimate(drop * rate, relative * rate, k, paM3PerS),
    nitrogenLoss: estimate(drop * loss, relative * loss, k, gPerYear),
    smallestProvableLeak: new Quantity(k * u * rate, paM3PerS),
  };
}

/** How many times as uncertain as now, u in Pa, the drop is after a hold of other length: by the weather where no thermometer is. */
export function growthOf(
  evidence: Pick<Evidence, "gas" | "last" | "seconds">,
  u: number,
): (hold: number) => number {
  const { gas, seconds } = evidence;
  const perKelvin = perKelvinOf(evidence) / u;
  const wanders = (time: number) =>
    (perKelvin * (gas.unseen(time) + gas.elsewhere * gas.change(time))) ** 2;
  return (hold) => Math.sqrt(1 + wanders(hold) - wanders(seconds));
}

/** Pa by which a kelvin moves the last reading. */
function perKelvinOf({ last }: Pick<Evidence, "last">): number {
  const [T] = last.temperatures as [number];
  const p = last.pressure;
  return expected({ p1: p, T1: [T], p2: p, T2: [T + 1], volumes: [], beta: 0 }) - p;
}

/** How long after the fill a first reading has no more than u of its warmth, s: by 5 min, two hours at most. */
export function settleTo(u: number, evidence: Pick<Evidence, "gas" | "last" | "seconds">): number {
  const { gas, seconds } = evidence;
  const left = (time: number) =>
    perKelvinOf(evidence) *
    Math.hypot(...gas.warmth.map((part) => warmthAt(part, time) - warmthAt(part, time + seconds)));
  let time = 300;
  while (time < 7200 && left(time) > u) time += 300;
  return time;
}

/** Within how many K the thermometer has to follow the gas at both readings, for a tight system to pass; 0 when none is near enough. */
export function followToDecide(evidence: Evidence, k: number): number {
  const { limit, drop, shares, gas, seconds } = evidence;
  const perKelvin = perKelvinOf(evidence);
  // The figure that is stated stands for these two, but not for the gas elsewhere.
  const others = shares.filter(({ part }) => part !== "gas-temperature" && part !== "settling");
  const elsewhere = perKelvin * gas.elsewhere * gas.change(seconds);
  const room = ((limit?.drop ?? 0) - Math.max(0, drop)) / k;
  const rest = room * Math.abs(room) - Math.hypot(elsewhere, ...others.map(({ u }) => u)) ** 2;
  return Math.sqrt(1.5 * Math.max(0, rest)) / perKelvin;
}

const WEEK = 7 * 86_400;

/** Seconds more until drop·(t/t0) leaves the guard band of ± U around the limit; 0 when it never does, or not within a week. */
export function holdToDecide(
  drop: number,
  limit: Limit | undefined,
  seconds: number,
  U: number,
  growth: (seconds: number) => number,
): number {
  const apart = limit?.isRate ? Math.abs(limit.drop - drop) : drop;
  const least = limit && !limit.isRate ? limit.drop : 0;
  let further = 0;
  // The uncertainty grows with the time that is asked for: a few rounds settle it.
  for (let round = 0; round < 9; round++) {
    further = seconds * ((least + U * growth(seconds + further)) / apart - 1);
  }
  return further <= WEEK ? Math.max(0, further) : 0;
}

/** The hold that would prove about half of the leak that this one does, s; 0 when none of a week does, or no time is known. */
export function holdToHalve(seconds: number, growth: (seconds: number) => number): number {
  let hold = 2 * seconds;
  while (hold <= WEEK && growth(hold) * seconds > 0.55 * hold) hold += seconds;
  return hold <= WEEK ? hold : 0;
}
