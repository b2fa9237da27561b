// How likely is a leak, or water, that matters? Each weighed model's share beyond the amounts that matter.
// Follows JCGM 106:2012, 7 (probability of conformity) over a mixture of models, Burnham & Anderson (2002), 4.3.
// Does not cover the decision: verdict.ts.
import { type Component, hyperbolic, levelling, slowShape } from "./curve/index.ts";

/** What counts as too much, in SI units. */
export interface Amounts {
  /** Leak that matters for a pass, and that counts as proven beside what hoses may let in, Pa/s. */
  readonly leak: number;
  readonly provenLeak: number;
  /** The leak that moisture alone must not hide, Pa/s. */
  readonly hiddenLeak: number;
  /** Rise by water, Pa. */
  readonly water: number;
  /** Rate of everything together at the end, Pa/s. */
  readonly endRate: number;
}

/** What the probabilities are taken at. */
export interface Reach {
  /** Length of the evidence, s. */
  readonly T: number;
  /** Relative standard uncertainty of the gauge's scale. */
  readonly scale: number;
  /** Standard uncertainty of any rate that the gauge's step and the walls leave, Pa/s. */
  readonly stepped: number;
  /** Part of a curved rise's mean rate by which a wrong shape feigns a leak. */
  readonly discrepancy: number;
  /** What is known of hoses and gauge from a blank test, Pa/s. */
  readonly blank: number;
  /** How much wider than the normal one the distribution is for the readings at hand. */
  readonly widening: number;
  /** Equalization above which it counts as water, Pa. */
  readonly equalization: number;
}

/** Shares of the evidence. */
export interface Odds {
  /** For a leak that matters to a pass; for one above what hoses let in; for water; for either or a rise that goes on. */
  readonly leak: number;
  readonly provenLeak: number;
  readonly hiddenLeak: number;
  readonly water: number;
  readonly bad: number;
  readonly provenBad: number;
  /** For laws that slow down without levelling off, among those with water. */
  readonly outgassing: number;
}

/** Φ(z) by the logistic curve, within 0.01; z beyond ±40 would overflow nothing but says nothing either. */
const phi = (z: number): number => 1 / (1 + Math.exp(-1.702 * z));

/** Standard uncertainty of one model's leak. */
export function leakUncertainty(one: Component, { T, scale, stepped, discrepancy }: Reach): number {
  const { slope, slopeU, shape, amplitude, tau } = one;
  const curved =
    shape < 0
      ? 0
      : (2 * discrepancy * amplitude * (slowShape(shape, T, tau) - slowShape(shape, T / 2, tau))) /
        T;
  return Math.sqrt(slopeU ** 2 + curved ** 2 + (scale * slope) ** 2 + stepped ** 2);
}

/** What water adds in one model: its plateau where it is near, else what it will have risen in as long again. */
export function waterOf(
  { shape, amplitude, tau, fast1, fast2 }: Component,
  T: number,
  equalization: number,
): number {
  const fast = Math.max(0, fast1 + fast2 - equalization);
  const risen = // without a slow shape amplitude and time constant are 0
    shape < levelling && shape !== hyperbolic && tau <= T
      ? 1
      : slowShape(shape, Math.max(2 * T, 600), tau);
  return fast + amplitude * risen;
}

/** The same share for everything bad, and none for outgassing. */
export const evenOdds = (share: number): { -readonly [K in keyof Odds]: Odds[K] } => ({
  leak: share,
  provenLeak: share,
  hiddenLeak: share,
  water: share,
  bad: share,
  provenBad: share,
  outgassing: 0,
});

/** The shares over all models. */
export function oddsOf(components: readonly Component[], amounts: Amounts, reach: Reach): Odds {
  const sum = evenOdds(0);
  const { T, scale, stepped, blank, widening, equalization } = reach;
  for (const one of components) {
    const { weight, shape, amplitude, amplitudeU } = one;
    const u = widening * leakUncertainty(one, reach) + 1e-15;
    // what is below 0 is no leak: the normal curve is cut there
    const above = (least: number) =>
      Math.min(
        1,
        phi((one.slope - blank - least) / u) / Math.max(phi((one.slope - blank) / u), 1e-9),
      );
    const leak = above(amounts.leak);
    const provenLeak = above(amounts.provenLeak);
    const risen = waterOf(one, T, equalization);
    const part = amplitude > 0 ? risen / amplitude : 0;
    const waterU = widening * Math.hypot(amplitudeU * part, scale * risen) + 1e-9;
    const water = phi((risen - amounts.water) / waterU);
    const rateU = widening * Math.hypot(one.endRateU, stepped, scale * one.endRate) + 1e-15;
    const rising = phi((one.endRate - blank - amounts.endRate) / rateU);
    sum.leak += weight * leak;
    sum.provenLeak += weight * provenLeak;
    sum.hiddenLeak += weight * above(amounts.hiddenLeak);
    sum.water += weight * water;
    sum.bad += weight * (1 - (1 - Math.max(leak, rising)) * (1 - water));
    sum.provenBad += weight * (1 - (1 - provenLeak) * (1 - water));
    if (shape >= levelling) sum.outgassing += weight * water;
  }
  return sum;
}
