// Which shapes explain the readings, and what does each say of the leak? Every model of the set, fitted
// from the table of inner products and weighed by AICc; the time constants are averaged over, not picked.
// Follows Burnham & Anderson (2002), 2.4 and 2.9 (from memory). Does not cover the verdict: verdict.ts.
import { type Component, complete } from "./component.ts";
import {
  baseIndex,
  fastAt,
  selfAt,
  sharedColumns,
  slowColumns,
  slowIndex,
  timeAt,
  yAt,
} from "./gram.ts";
import {
  fastTaus,
  levelling,
  slowColumnsAt,
  slowCount,
  slowShapes,
  slowStep,
  slowTau,
} from "./shapes.ts";
import { factor, size, type Workspace } from "./workspace.ts";

interface Candidate {
  rss: number;
  fast: number;
  column: number;
}

const families = 16; // constant, line, 7 slow, 7 line + slow

/** What is known before any reading. */
export interface Limits {
  /** Largest amplitude of water: saturation at the ambient less the start, Pa. */
  readonly waterMax: number;
  /** Largest rise of outgassing until `aheadTime`, Pa. */
  readonly outgassingMax: number;
  /** Sum of weighted squares that resolution alone would leave, per bin. */
  readonly floor: number;
  /** Share of ΔAICc that counts: below 1 because neighbouring bins err together. */
  readonly temper: number;
  /** Time for which the components predict, s. */
  readonly aheadTime: number;
}

/** −2 ln of the odds that a leak comes together with water, and with outgassing; common sense, no source. */
const withWater: number = /* @__PURE__ */ (() => -2 * Math.log(0.4))();
const withOutgassing: number = /* @__PURE__ */ (() => -2 * Math.log(0.1))();

/** Odds of a slow time constant before any reading: even, falling beyond 1.5 h; common practice, no source. */
const tauPrior = (k: number): number => 1 / (1 + (slowTau(k) / 5400) ** 2);

/** All models with a share of the evidence above 0.1 %, their scale of variance first. */
export function weighModels(
  work: Workspace,
  { waterMax, outgassingMax, floor, temper, aheadTime }: Limits,
): { components: Component[]; variance: number; best: Component | undefined } {
  const { gram, L, qy, profiles, ahead } = work;
  const { n, slow } = gram;
  sharedColumns(aheadTime, work.columns);
  slowColumnsAt(aheadTime, ahead);
  const yy = gram.base[baseIndex(yAt, yAt)] as number;
  const found: Candidate[] = [];
  for (let i = 0; i < 2 * families; i++) found.push({ rss: Infinity, fast: -1, column: -1 });
  profiles.fill(Infinity);
  const offer = (family: number, fast: number, rss: number, column: number) => {
    const best = found[fast < 0 ? family : families + family] as Candidate;
    if (rss < best.rss) {
      best.rss = rss;
      best.fast = fast;
      best.column = column;
    }
  };
  for (let fast = -1; fast < fastTaus.length - 1; fast++) {
    if (!factor(work, fast)) continue;
    const m = work.indices.length - 1;
    let rssC = yy;
    for (let i = 0; i < m; i++) rssC -= (qy[i] as number) ** 2;
    const yt = qy[m] as number;
    const rssL = rssC - yt * yt;
    offer(0, fast, rssC, -1);
    offer(1, fast, rssL, -1);
    // forward solution of each slow column against the factored base, written out for speed
    const pair = fast >= 0;
    const i1 = fastAt + fast;
    const i2 = i1 + 1;
    const at3 = m * size;
    const l00 = L[0] as number;
    const l10 = L[size] as number;
    const l11 = L[size + 1] as number;
    const l20 = L[2 * size] as number;
    const l21 = L[2 * size + 1] as number;
    const l22 = L[2 * size + 2] as number;
    const l30 = L[at3] as number;
    const l31 = L[at3 + 1] as number;
    const l32 = L[at3 + 2] as number;
    const ltt = L[at3 + m] as number;
    const y0 = qy[0] as number;
    const y1 = qy[1] as number;
    const y2 = qy[2] as number;
    const shortest = fast < 0 ? 0 : 2 * (fastTaus[fast + 1] as number);
    const firstK = Math.max(0, Math.ceil(Math.log(shortest / slowTau(0)) / slowStep));
    for (let shape = 0; shape < slowShapes.length; shape++) {
      for (let k = firstK; k < slowCount; k++) {
        const column = shape * slowCount + k;
        const row = slowIndex(column, 0);
        const self = slow[row + selfAt] as number;
        const q0 = (slow[row] as number) / l00;
        let q1 = 0; // without a pair q1 and q2 stay 0, whatever l31, l32, y1 and y2 hold
        let q2 = 0;
        if (pair) {
          q1 = ((slow[row + i1] as number) - l10 * q0) / l11;
          q2 = ((slow[row + i2] as number) - l20 * q0 - l21 * q1) / l22;
        }
        const qt = ((slow[row + timeAt] as number) - l30 * q0 - l31 * q1 - l32 * q2) / ltt;
        const d = self - q0 * q0 - q1 * q1 - q2 * q2;
        const e = (slow[row + yAt] as number) - q0 * y0 - q1 * y1 - q2 * y2;
        const most = shape < levelling ? waterMax : outgassingMax / (ahead[column] as number);
        const at = (fast + 1) * slowColumns + column;
        if (d > 1e-9 * self && e > 0 && e < most * d) {
          const rss = rssC - (e * e) / d;
          profiles[2 * at] = rss;
          offer(2 + shape, fast, rss, column);
        }
        const d1 = d - qt * qt;
        const e1 = e - qt * yt;
        if (d1 > 1e-9 * self && e1 > 0 && e1 < most * d1 && yt * d1 > e1 * qt) {
          const rss = rssL - (e1 * e1) / d1;
          profiles[2 * at + 1] = rss;
          offer(2 + slowShapes.length + shape, fast, rss, column);
        }
      }
    }
  }

  const aiccs: number[] = [];
  const scores: number[] = []; // −2 ln of the evidence of a family, up to a constant
  for (const [i, { rss }] of found.entries()) {
    const fast = i >= families;
    const family = i % families;
    const slow = family > 1 ? 2 : 0;
    const K = 2 + (fast ? 2 : 0) + (family === 1 || family > 8 ? 1 : 0) + slow;
    if (n < K + 2) {
      aiccs.push(Infinity);
      scores.push(Infinity);
      continue;
    }
    const misfit = n * Math.log((Math.max(rss, 0) + n * floor) / n);
    const penalty = (k: number) => 2 * k + (2 * k * (k + 1)) / (n - k - 1);
    aiccs.push(misfit + penalty(K));
    // the slow time constant is averaged over with equal odds on the grid instead of penalised
    scores.push(
      temper * misfit +
        penalty(slow ? K - 1 : K) +
        (slow ? 2 * Math.log(7) : 0) +
        (family < 9 ? 0 : family < 9 + levelling ? withWater : withOutgassing),
    );
  }
  const bestAt = aiccs.indexOf(Math.min(...aiccs));
  const leastScore = Math.min(...scores);
  if (leastScore === Infinity) return { components: [], variance: 0, best: undefined };
  const freedom = Math.max(
    1,
    n - 2 - (bestAt >= families ? 2 : 0) - (bestAt % families > 1 ? 2 : 0),
  );
  const variance = (Math.max((found[bestAt] as Candidate).rss, 0) + n * floor) / freedom;

  const components: Component[] = [];
  for (let i = 0; i < 2 * families; i++) {
    const weight = Math.exp((leastScore - (scores[i] as number)) / 2);
    const { rss, fast, column } = found[i] as Candidate;
    if (!(weight > 2e-3)) continue;
    factor(work, fast);
    const family = i % families;
    const line = family === 1 || family > 8;
    const aicc = aiccs[i] as number;
    if (column < 0) {
      components.push(complete(work, fast, -1, line, weight, variance, aicc));
      continue;
    }
    // average over the time constant: the profile of RSS gives each grid point its likelihood
    const first = column - (column % slowCount);
    const at = (k: number) =>
      profiles[2 * ((fast + 1) * slowColumns + first + k) + (line ? 1 : 0)] as number;
    const shares: number[] = [];
    for (let k = 0; k < slowCount; k++) {
      const share = tauPrior(k) * Math.exp((-temper * (at(k) - rss)) / (2 * variance));
      shares.push(share > 0.02 ? share : 0);
    }
    for (let k = 0; k < slowCount; k++) {
      const share = (shares[k] as number) / slowCount;
      if (share > 0) {
        components.push(complete(work, fast, first + k, line, weight * share, variance, aicc));
      }
    }
  }
  let total = 0;
  for (const component of components) {
    // one equalisation has one sign
    const { fast1, fast2 } = component;
    if (Math.abs(fast1 + fast2) < 0.5 * (Math.abs(fast1) + Math.abs(fast2))) component.weight /= 20;
    total += component.weight;
  }
  const kept = components.filter(({ weight }) => weight > 3e-4 * total);
  total = kept.reduce((sum, { weight }) => sum + weight, 0);
  for (const component of kept) component.weight /= total;
  let best = kept[0];
  for (const one of kept)
    if (
      one.aicc < (best as Component).aicc ||
      (one.aicc === (best as Component).aicc && one.weight > (best as Component).weight)
    )
      best = one;
  return { components: kept, variance, best };
}
