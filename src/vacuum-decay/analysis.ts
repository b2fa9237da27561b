// What do the weighed models say of one stretch of the log? Leak, water, rates and shares of the evidence.
// Follows JCGM 100:2008 for the leak's uncertainty. Does not decide: verdict.ts.
import { allPoints } from "./binning.ts";
import { type Collector, resolution, type Segment, wholeGram } from "./collect.ts";
import { type Component, lineUncertainty, type Workspace } from "./curve/index.ts";
import { boundOf, mixtureOf } from "./mixture.ts";
import {
  type Amounts,
  evenOdds,
  leakUncertainty,
  type Odds,
  oddsOf,
  type Reach,
  waterOf,
} from "./odds.ts";
import { levelOf } from "./plateau.ts";
import type { Settings } from "./settings.ts";
import {
  discrepancy,
  enoughPoints,
  equalization,
  fewestPoints,
  floor,
  hosesOfEndRate,
  hosesOfLeak,
  largeShare,
  materialEndRate,
  materialLeak,
  materialWater,
  materialWaterPart,
  outgassing,
  outgassingMax,
  outgassingTau,
  slowestWater,
  usualVolume,
  walls,
} from "./tuning.ts";
import { weighModels } from "./weigh.ts";

/** A mean and its standard uncertainty. */
export interface Spread {
  readonly mean: number;
  readonly u: number;
}

/** What one stretch says, in SI units. */
export interface Analysis {
  readonly segment: Segment;
  /** Length of the stretch and time of its first point, s. */
  readonly T: number;
  readonly first: number;
  readonly step: number;
  readonly points: number;
  readonly components: readonly Component[];
  readonly best: Component;
  readonly misfit: number;
  readonly residual: number;
  readonly widening: number;
  readonly amounts: Amounts;
  readonly odds: Odds;
  readonly leak: Spread;
  /** What the leak stays below, or above, with a probability. */
  readonly leakBelow: (probability: number) => number;
  /** Standard uncertainty of the slope of a plain line through the same points, Pa/s. */
  readonly lineU: number;
  readonly water: number;
  readonly endRate: Spread;
  readonly end: Spread;
  readonly plateau: Spread | undefined;
}

/** The amounts that matter to this system, for what has risen. */
export function amountsOf({ volume, hoses }: Settings, rise: number): Amounts {
  const smaller = Math.min(1, (largeShare * usualVolume) / (volume || usualVolume));
  return {
    leak: materialLeak * smaller + hoses * hosesOfLeak,
    provenLeak: materialLeak + hoses,
    hiddenLeak: materialLeak * Math.max(1, 2 * smaller) + hoses,
    water: materialWater + materialWaterPart * Math.max(0, rise),
    endRate: materialEndRate + hoses * hosesOfEndRate,
  };
}

/**
 * How much wider than the normal one the Student distribution is at one-sided 95 %: Abramowitz & Stegun (1964),
 * 26.7.5, within 2 % from three degrees of freedom on.
 */
export function wideningOf(freedom: number): number {
  const zz = 1.645 ** 2;
  return 1 + (zz + 1) / (4 * freedom) + (5 * zz * zz + 16 * zz + 3) / (96 * freedom ** 2);
}

/** Analyzes a stretch; undefined where there is too little to fit. */
export function analyze(log: Collector, segment: Segment, work: Workspace): Analysis | undefined {
  const { settings } = log;
  const { accuracy, hold, waterMax, blank } = settings;
  const { origin, last: T } = segment;
  wholeGram(log, segment, work.gram);
  const points = work.gram.n;
  if (points < fewestPoints) return undefined;
  const { components, variance, freedom, misfit, residual, best } = weighModels(work, {
    largest: {
      water: waterMax - origin,
      outgassing: outgassingMax,
      waterTau: slowestWater(T),
      outgassingTau,
    },
    floor,
    equalization,
    outgassing,
    aheadTime: hold,
    end: T,
    fastest: log.spacing / 2,
  });
  if (!best) return undefined;
  const widening = wideningOf(freedom);
  const step = resolution(log, origin);
  // the gauge's scale, its step at both ends and what walls give off enter every rate
  const reach: Reach = {
    T,
    scale: accuracy / Math.sqrt(3),
    stepped: Math.hypot(step / Math.sqrt(6), walls) / T,
    discrepancy,
    blank,
    widening,
    equalization: 2 * equalization,
  };
  const leak = mixtureOf(
    components,
    ({ slope }) => Math.max(0, slope - blank),
    (one) => widening * leakUncertainty(one, reach),
  );
  const amounts = amountsOf(settings, segment.lastP - origin);
  const few = points < enoughPoints;
  const late = few ? fewOf(segment, step, settings.hoses) : { rate: 0, goesOn: false };
  const harmless = late.rate < amounts.leak && segment.lastP - origin < amounts.water;
  return {
    segment,
    T,
    first: segment.t[0] ?? T,
    step,
    points,
    components,
    best,
    misfit,
    residual,
    widening,
    amounts,
    // few rows that show too much exclude nothing, and prove only that something is bad
    odds: few
      ? { ...evenOdds(harmless ? 0 : 0.5), provenBad: late.goesOn ? 1 : 0 }
      : oddsOf(components, amounts, reach),
    leak,
    leakBelow: (probability) => {
      const bound = boundOf(leak, probability);
      if (!few) return Math.max(0, bound);
      return probability < 0.5 ? 0 : Math.max(bound, late.rate);
    },
    lineU: widening * lineUncertainty(work, variance),
    water: components.reduce((sum, one) => sum + one.weight * waterOf(one, T, 2 * equalization), 0),
    endRate: mixtureOf(
      components,
      ({ endRate }) => endRate - blank,
      ({ endRateU, endRate }) =>
        widening * Math.hypot(endRateU, reach.stepped, reach.scale * endRate),
    ),
    end: mixtureOf(
      components,
      ({ ahead }) => origin + ahead,
      ({ aheadU }) => aheadU,
    ),
    plateau: levelOf(components, origin),
  };
}

/**
 * Few rows tell no shapes apart. They show that a rise that only slows down has a leak no larger than its mean `rate` over
 * the second half, Pa/s, and whether it `goesOn`: that half rose by more than a sound system makes, an equalization at
 * most by a quarter of it (e^(−x) − e^(−2x)), taken twice, what still rises at the end, hoses twice what they may; and by
 * half as much as the first, as what is left of a valve opened late does not.
 */
function fewOf(segment: Segment, step: number, hoses: number): { rate: number; goesOn: boolean } {
  const { t, p } = allPoints(segment);
  const half = Math.floor((t.length - 1) / 2);
  const span = (t.at(-1) as number) - (t[half] as number);
  const risen = (p.at(-1) as number) - (p[half] as number);
  const before = (p[half] as number) - (p[0] as number);
  const sound = equalization / 2 + (materialEndRate + 2 * hoses) * span;
  return { rate: (risen + step) / span, goesOn: risen - step > Math.max(sound, before / 2) };
}
