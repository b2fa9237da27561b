// How well does every model of the set explain the readings? Residual sums of squares of all shapes at all time
// constants, with and without a line, from one table of inner products. Follows weighted linear least squares by
// Cholesky's factor. Does not cover what the sums mean: weigh.ts.
import {
  baseIndex,
  factor,
  fastAt,
  fastTaus,
  levelling,
  selfAt,
  size,
  slowColumns,
  slowCount,
  slowIndex,
  slowShapes,
  slowStep,
  slowTau,
  timeAt,
  type Workspace,
  yAt,
} from "./curve/index.ts";

/** Constant, line, each slow shape, each slow shape with a line. */
export const families: number = /* @__PURE__ */ (() => 2 + 2 * slowShapes.length)();
/** First family of a slow shape together with a line. */
export const firstDouble: number = /* @__PURE__ */ (() => 2 + slowShapes.length)();

/** The best time constant of one family. */
export interface Candidate {
  rss: number;
  fast: number;
  column: number;
}

/** Largest amplitudes that are possible, Pa: of water, and of outgassing until the time ahead. */
export interface Largest {
  readonly water: number;
  readonly outgassing: number;
  /** Longest time constants: beyond, a shape is a straight line for as long as it was watched, s. */
  readonly waterTau: number;
  readonly outgassingTau: number;
}

/** The best of each family without, then with an equalization; `profiles` keeps the sums of every column. */
export function sweep(work: Workspace, largest: Largest, fastest: number): Candidate[] {
  const found: Candidate[] = [];
  for (let i = 0; i < 2 * families; i++) found.push({ rss: Infinity, fast: -1, column: -1 });
  work.profiles.fill(Infinity);
  for (let fast = -1; fast < fastTaus.length - 1; fast++) {
    // an equalization that is over before the second reading is seen in one point only: one pair is enough
    if (fast >= 0 && (fastTaus[fast + 1] as number) < fastest) continue;
    if (factor(work, fast)) sweepSlow(work, fast, largest, found);
  }
  return found;
}

/** All slow columns on one factored base, written out for speed. */
function sweepSlow(work: Workspace, fast: number, largest: Largest, found: Candidate[]): void {
  const { gram, L, qy, profiles, ahead } = work;
  const { slow } = gram;
  const half = fast < 0 ? 0 : families;
  const offer = (family: number, rss: number, column: number) => {
    const best = found[half + family] as Candidate;
    if (rss >= best.rss) return;
    best.rss = rss;
    best.fast = fast;
    best.column = column;
  };
  const m = work.indices.length - 1;
  let rssC = gram.base[baseIndex(yAt, yAt)] as number;
  for (let i = 0; i < m; i++) rssC -= (qy[i] as number) ** 2;
  const yt = qy[m] as number;
  const rssL = rssC - yt * yt;
  offer(0, rssC, -1);
  offer(1, rssL, -1);
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
  const lastK = (tau: number) =>
    Math.min(slowCount, 1 + Math.floor(Math.log(tau / slowTau(0)) / slowStep));
  const [waterK, outgassingK] = [lastK(largest.waterTau), lastK(largest.outgassingTau)];
  for (let shape = 0; shape < slowShapes.length; shape++) {
    const endK = shape < levelling ? waterK : outgassingK;
    for (let k = firstK; k < endK; k++) {
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
      const most =
        shape < levelling ? largest.water : largest.outgassing / (ahead[column] as number);
      const at = (fast + 1) * slowColumns + column;
      if (d > 1e-9 * self && e > 0 && e < most * d) {
        const rss = rssC - (e * e) / d;
        profiles[2 * at] = rss;
        offer(2 + shape, rss, column);
      }
      const d1 = d - qt * qt;
      const e1 = e - qt * yt;
      if (d1 > 1e-9 * self && e1 > 0 && e1 < most * d1 && yt * d1 > e1 * qt) {
        const rss = rssL - (e1 * e1) / d1;
        profiles[2 * at + 1] = rss;
        offer(firstDouble + shape, rss, column);
      }
    }
  }
}
