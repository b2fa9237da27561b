// Which models share the evidence, and how? Every family weighed by AICc, its time constants averaged over instead
// of picked. Follows Burnham & Anderson (2002), 2.4 and 2.9 (from memory). Does not cover the verdict: verdict.ts.
import {
  type Component,
  complete,
  factor,
  fastAt,
  fastTaus,
  levelling,
  sharedColumns,
  slowColumns,
  slowColumnsAt,
  slowCount,
  slowShape,
  slowShapes,
  slowTau,
  timeAt,
  timeUnit,
  type Workspace,
} from "./curve/index.ts";
import { type Candidate, families, firstDouble, type Largest, sweep } from "./sweep.ts";

/** What is known before any reading. */
export interface Limits {
  /** Largest amplitude of water: saturation at the ambient less the start; of outgassing until `aheadTime`, Pa. */
  readonly largest: Largest;
  /** Sum of weighted squares that resolution alone would leave, per bin. */
  readonly floor: number;
  /** Rise of an equalization above which it becomes unlikely, Pa. */
  readonly equalization: number;
  /** Usual rise by outgassing in 10 min, Pa. */
  readonly outgassing: number;
  /** Time for which the components predict, and end of the evidence, s. */
  readonly aheadTime: number;
  readonly end: number;
  /** Time constants of an equalization below this are not told apart, s. */
  readonly fastest: number;
}

/** The models with a share of the evidence. */
export interface Weighed {
  readonly components: Component[];
  /** Scale of the variance of a bin, and its degrees of freedom. */
  readonly variance: number;
  readonly freedom: number;
  /** Weighted sum of squares of the best, per degree of freedom: about 1 where the curve explains the readings. */
  readonly misfit: number;
  /** Root mean square of what the best leaves, Pa. */
  readonly residual: number;
  readonly best: Component | undefined;
}

/** Readings of which the scatter is known beforehand, as good as these many; common practice, no source. */
const priorReadings = 2;

/** About how many time constants of a family are enough for an average, of those that are likely; common practice, no source. */
const samples = 3;

/** Odds of a figure that is usually around 0, never so small that nothing is left. */
const usual = (x: number): number => Math.max(1e-5, Math.exp(-(x ** 2) / 2));

/** Odds of a slow time constant before any reading: even, falling beyond 1.5 h; common practice, no source. */
const tauPrior = (k: number): number => 1 / (1 + (slowTau(k) / 5400) ** 2);

/** Free parameters of a family, its variance among them. */
const parametersOf = (i: number): number => {
  const family = i % families;
  const line = family === 1 || family >= firstDouble ? 1 : 0;
  return 2 + (i >= families ? 2 : 0) + line + (family > 1 ? 2 : 0);
};

/** All models with a share of the evidence above 0.1 %. */
export function weighModels(work: Workspace, limits: Limits): Weighed {
  const { n } = work.gram;
  fillColumns(work, limits);
  const found = sweep(work, limits.largest, limits.fastest);
  const { aiccs, scores } = scoresOf(found, n, limits);
  const bestAt = aiccs.indexOf(Math.min(...aiccs));
  const least = Math.min(...scores);
  // the scatter: what is left by the best, and what was known of it before
  const rss = Math.max(0, (found[bestAt] as Candidate).rss);
  const freedom = Math.max(1, n + 1 - parametersOf(bestAt)) + priorReadings;
  const variance = (rss + n * limits.floor + priorReadings) / freedom;
  const components = averaged(work, found, limits, { aiccs, scores, least, variance });
  let best = components[0];
  for (const one of components) {
    const { aicc, weight } = best as Component;
    if (one.aicc < aicc || (one.aicc === aicc && one.weight > weight)) best = one;
  }
  const residual = Math.sqrt(rss / (work.gram.base[0] as number));
  return { components, variance, freedom, misfit: rss / freedom, residual, best };
}

function fillColumns({ columns, rates, ahead }: Workspace, { aheadTime, end }: Limits): void {
  sharedColumns(aheadTime, columns);
  slowColumnsAt(aheadTime, ahead);
  rates.fill(0);
  for (const [j, tau] of fastTaus.entries()) rates[fastAt + j] = Math.exp(-end / tau) / tau;
  rates[timeAt] = 1 / timeUnit;
}

/** AICc of every family, and −2 ln of its evidence up to a constant. */
function scoresOf(found: readonly Candidate[], n: number, { floor }: Limits) {
  const aiccs: number[] = [];
  const scores: number[] = [];
  // the small-sample term makes few rows believe in nothing: it doubles the penalty at most
  const penalty = (k: number) =>
    2 * k + Math.min(2 * k, (2 * k * (k + 1)) / Math.max(1, n - k - 1));
  for (const [i, { rss }] of found.entries()) {
    const family = i % families;
    const slow = family > 1;
    const K = parametersOf(i);
    if (n < K + 1) {
      aiccs.push(Infinity);
      scores.push(Infinity);
      continue;
    }
    const left = Math.max(rss, 0) + n * floor + priorReadings;
    const misfit = (n + priorReadings) * Math.log(left / (n + priorReadings));
    aiccs.push(misfit + penalty(K));
    // the slow time constant is averaged over with equal odds on the grid instead of penalized; nor is a line beside a
    // curve: that the curve needs no leak is no evidence that there is none
    const counted = K - (slow ? 1 : 0) - (family >= firstDouble ? 1 : 0);
    scores.push(misfit + penalty(counted) + (slow ? 2 * Math.log(slowShapes.length) : 0));
  }
  return { aiccs, scores };
}

/** Families spread over their time constants, weighed, the negligible left out. */
function averaged(
  work: Workspace,
  found: readonly Candidate[],
  { equalization, outgassing, end }: Limits,
  {
    aiccs,
    scores,
    least,
    variance,
  }: Record<"aiccs" | "scores", number[]> & Record<"least" | "variance", number>,
): Component[] {
  const components: Component[] = [];
  const shares = new Float64Array(slowCount);
  for (const [i, { rss, fast, column }] of found.entries()) {
    const weight = Math.exp((least - (scores[i] as number)) / 2);
    if (!(weight > 2e-3)) continue;
    factor(work, fast);
    const family = i % families;
    const line = family === 1 || family >= firstDouble;
    const aicc = aiccs[i] as number;
    if (column < 0) {
      components.push(complete(work, { fast, column, line, weight, aicc }, variance, end));
      continue;
    }
    // the profile of the sums gives each point of the grid its likelihood; a wide one is sampled
    const first = column - (column % slowCount);
    const row = 2 * ((fast + 1) * slowColumns + first) + (line ? 1 : 0);
    let likely = 0;
    for (let k = 0; k < slowCount; k++) {
      const off = (work.profiles[row + 2 * k] as number) - rss;
      shares[k] = tauPrior(k) * Math.exp(-off / (2 * variance));
      if ((shares[k] as number) > 0.02) likely++;
    }
    const apart = Math.max(1, Math.floor(likely / samples));
    for (let k = (column - first) % apart; k < slowCount; k += apart) {
      const share = shares[k] as number;
      if (!(share > 0.02)) continue;
      // written out: spreading what they share into each took as long as fitting it
      const part = (weight * share * apart) / slowCount;
      const chosen = { fast, column: first + k, line, weight: part, aicc };
      components.push(complete(work, chosen, variance, end));
    }
  }
  let total = 0;
  for (const one of components) {
    const { fast1, fast2 } = one;
    const size = fast1 + fast2;
    if (Math.abs(size) < 0.5 * (Math.abs(fast1) + Math.abs(fast2))) one.weight /= 20; // it has one sign
    // upward it is the drop over the hoses; downward it is the lag of a gauge behind them
    if (size > equalization) one.weight *= usual((size / equalization - 1) / 0.3);
    if (one.shape >= levelling) {
      const rise = one.amplitude * slowShape(one.shape, 600, one.tau);
      one.weight *= usual(rise / outgassing);
    }
    total += one.weight;
  }
  const kept = components.filter(({ weight }) => weight > 3e-4 * total);
  total = kept.reduce((sum, { weight }) => sum + weight, 0);
  for (const one of kept) one.weight /= total;
  return kept;
}
