// Which shapes explain the readings, and what does each say of the leak? Every model of the set, fitted
// from the table of inner products and weighed by AICc; the time constants are averaged over, not picked.
// Follows Burnham & Anderson (2002), 2.4 and 2.9 (from memory): AICc and its weights; JCGM 100:2008 for u.
// Does not cover the verdict: verdict.ts.
import {
  baseIndex,
  emptyGram,
  fastAt,
  type Gram,
  selfAt,
  sharedColumns,
  slowColumns,
  slowIndex,
  timeAt,
  timeUnit,
  yAt,
} from "./gram.ts";
import {
  fastTaus,
  levelling,
  slowColumnsAt,
  slowCount,
  slowShape,
  slowShapes,
  slowStep,
  slowTau,
} from "./shapes.ts";

/** One fitted model at one time constant; pressures relative to the origin of the segment, in Pa. */
export interface Component {
  /** Share of the evidence, all together 1. */
  weight: number;
  /** Index of the first of two fast exponentials, −1 for none. */
  readonly fast: number;
  /** Index into slowShapes, −1 for none. */
  readonly shape: number;
  /** Slow time constant in s. */
  readonly tau: number;
  readonly line: boolean;
  /** c, fast 1, fast 2, A; 0 where the model has none. */
  readonly constant: number;
  readonly fast1: number;
  readonly fast2: number;
  readonly amplitude: number;
  /** Slope of the line in Pa/s and its standard uncertainty. */
  readonly slope: number;
  readonly slopeU: number;
  readonly amplitudeU: number;
  /** Value and standard uncertainty at the time asked for. */
  readonly ahead: number;
  readonly aheadU: number;
  readonly aicc: number;
}

interface Candidate {
  rss: number;
  fast: number;
  column: number;
}

const families = 16; // constant, line, 7 slow, 7 line + slow
const size = 5; // 1, two fast, line, slow

/** Scratch memory of one analysis, so that a live reading allocates next to nothing. */
export interface Workspace {
  readonly L: Float64Array;
  readonly q: Float64Array;
  readonly qy: Float64Array;
  readonly g: Float64Array;
  readonly columns: Float64Array;
  readonly profiles: Float64Array;
  /** Slow shapes at the time of the prediction. */
  readonly ahead: Float64Array;
  indices: readonly number[];
  readonly gram: Gram;
}

export function createWorkspace(): Workspace {
  const array = (length: number) => new Float64Array(length);
  return {
    L: array(size * size),
    q: array(size),
    qy: array(size),
    g: array(size),
    columns: array(yAt + 1),
    profiles: array(2 * fastTaus.length * slowColumns),
    ahead: array(slowColumns),
    indices: [],
    gram: emptyGram(),
  };
}

/** Positions of the shared columns of a fast choice: 1, two neighbouring exponentials, the line last. */
const chosen: readonly (readonly number[])[] = /* @__PURE__ */ [-1, 0, 1, 2, 3, 4, 5, 6, 7].map(
  (fast) => (fast < 0 ? [0, timeAt] : [0, fastAt + fast, fastAt + fast + 1, timeAt]),
);

/** Cholesky of the base columns of a fast choice (line last) and forward solution for y. False if singular. */
function factor(work: Workspace, fast: number): boolean {
  const { L, qy } = work;
  const { base } = work.gram;
  const indices = chosen[fast + 1] as readonly number[];
  work.indices = indices;
  for (let i = 0; i < indices.length; i++) {
    const ii = indices[i] as number;
    let y = base[baseIndex(yAt, ii)] as number;
    for (let j = 0; j <= i; j++) {
      let sum = base[baseIndex(ii, indices[j] as number)] as number;
      const whole = sum;
      for (let k = 0; k < j; k++) sum -= (L[i * size + k] as number) * (L[j * size + k] as number);
      if (i !== j) L[i * size + j] = sum / (L[j * size + j] as number);
      else if (sum > 1e-7 * whole) L[i * size + i] = Math.sqrt(sum);
      else return false;
    }
    for (let k = 0; k < i; k++) y -= (L[i * size + k] as number) * (qy[k] as number);
    qy[i] = y / (L[i * size + i] as number);
  }
  return true;
}

/** Standard uncertainty of the slope of a plain line through the same points, Pa/s. */
export function lineUncertainty(work: Workspace, variance: number): number {
  return factor(work, -1) ? Math.sqrt(variance) / (work.L[size + 1] as number) / timeUnit : 0;
}

/** Forward solution of a slow column against the factored base. */
function project({ L, q, gram, indices }: Workspace, column: number): void {
  for (let i = 0; i < indices.length; i++) {
    let sum = gram.slow[slowIndex(column, indices[i] as number)] as number;
    for (let k = 0; k < i; k++) sum -= (L[i * size + k] as number) * (q[k] as number);
    q[i] = sum / (L[i * size + i] as number);
  }
}

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
    if (n < (fast < 0 ? 3 : 6) || !factor(work, fast)) continue;
    const m = work.indices.length - 1;
    let rssC = yy;
    for (let i = 0; i < m; i++) rssC -= (qy[i] as number) ** 2;
    const yt = qy[m] as number;
    const rssL = rssC - yt * yt;
    offer(0, fast, rssC, -1);
    offer(1, fast, rssL, -1);
    if (n < m + 5) continue;
    // forward solution of each slow column against the factored base, written out for speed
    const pair = fast >= 0;
    const [i1, i2] = [fastAt + fast, fastAt + fast + 1];
    const [l00, l10, l11] = [L[0], L[size], L[size + 1]] as unknown as [number, number, number];
    const [l20, l21, l22] = [L[2 * size], L[2 * size + 1], L[2 * size + 2]] as unknown as [
      number,
      number,
      number,
    ];
    const at3 = m * size;
    const [l30, l31, l32, ltt] = [
      L[at3],
      pair ? L[at3 + 1] : 0,
      pair ? L[at3 + 2] : 0,
      L[at3 + m],
    ] as unknown as [number, number, number, number];
    const [y0, y1, y2] = [qy[0], pair ? qy[1] : 0, pair ? qy[2] : 0] as unknown as [
      number,
      number,
      number,
    ];
    const shortest = fast < 0 ? 0 : 2 * (fastTaus[fast + 1] as number);
    const firstK = Math.max(0, Math.ceil(Math.log(shortest / slowTau(0)) / slowStep));
    for (let shape = 0; shape < slowShapes.length; shape++) {
      for (let k = firstK; k < slowCount; k++) {
        const column = shape * slowCount + k;
        const row = slowIndex(column, 0);
        const self = slow[row + selfAt] as number;
        const q0 = (slow[row] as number) / l00;
        let q1 = 0;
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
    if (rss === Infinity || n < K + 2) {
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
  let total = 0;
  for (let i = 0; i < 2 * families; i++) {
    const weight = Math.exp((leastScore - (scores[i] as number)) / 2);
    const { rss, fast, column } = found[i] as Candidate;
    if (!(weight > 2e-3)) continue;
    factor(work, fast);
    const family = i % families;
    const line = family === 1 || family > 8;
    const aicc = aiccs[i] as number;
    if (column < 0) {
      total += weight;
      components.push(complete(work, fast, -1, 0, line, weight, variance, aheadTime, aicc));
      continue;
    }
    // average over the time constant: the profile of RSS gives each grid point its likelihood
    const first = column - (column % slowCount);
    const at = (k: number) =>
      k < 0 || k >= slowCount
        ? Infinity
        : (profiles[2 * ((fast + 1) * slowColumns + first + k) + (line ? 1 : 0)] as number);
    let sum = 0;
    const shares: number[] = [];
    for (let k = 0; k < slowCount; k++) {
      const share = tauPrior(k) * Math.exp((-temper * (at(k) - rss)) / (2 * variance));
      shares.push(share > 0.02 ? share : 0);
      sum += shares[k] as number;
    }
    total += (weight * sum) / slowCount;
    for (let k = 0; k < slowCount; k++) {
      const share = (shares[k] as number) / slowCount;
      if (share > 0) {
        components.push(
          complete(work, fast, first + k, k, line, weight * share, variance, aheadTime, aicc),
        );
      }
    }
  }
  total = 0;
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

/** Coefficients, uncertainties and prediction of one model; the base is factored already. */
function complete(
  work: Workspace,
  fast: number,
  column: number,
  k: number,
  line: boolean,
  weight: number,
  variance: number,
  aheadTime: number,
  aicc: number,
): Component {
  const { gram, L, q, qy, g, columns, indices } = work;
  const m = line ? indices.length : indices.length - 1;
  const coefficients = [0, 0, 0, 0, 0];
  let amplitude = 0;
  let d = 1;
  const shape = column < 0 ? -1 : Math.floor(column / slowCount);
  if (column >= 0) {
    project(work, column);
    d = gram.slow[slowIndex(column, selfAt)] as number;
    let e = gram.slow[slowIndex(column, yAt)] as number;
    for (let i = 0; i < m; i++) {
      d -= (q[i] as number) ** 2;
      e -= (q[i] as number) * (qy[i] as number);
    }
    amplitude = e / d;
  }
  for (let i = m - 1; i >= 0; i--) {
    let sum = (qy[i] as number) - (column < 0 ? 0 : amplitude * (q[i] as number));
    for (let j = i + 1; j < m; j++)
      sum -= (L[j * size + i] as number) * (coefficients[j] as number);
    coefficients[i] = sum / (L[i * size + i] as number);
  }
  const tau = column < 0 ? 0 : slowTau(k);
  // prediction g·c with variance |L⁻¹g|²
  sharedColumns(aheadTime, columns);
  const slowAhead = column < 0 ? 0 : slowShape(shape, aheadTime, tau);
  let ahead = amplitude * slowAhead;
  let spread = 0;
  let slowRest = slowAhead;
  for (let i = 0; i < m; i++) {
    let sum = columns[indices[i] as number] as number;
    ahead += sum * (coefficients[i] as number);
    for (let j = 0; j < i; j++) sum -= (L[i * size + j] as number) * (g[j] as number);
    g[i] = sum / (L[i * size + i] as number);
    spread += (g[i] as number) ** 2;
    if (column >= 0) slowRest -= (q[i] as number) * (g[i] as number);
  }
  if (column >= 0) spread += slowRest ** 2 / d;
  const Ltt = L[(m - 1) * size + m - 1] as number;
  const qt = q[m - 1] as number;
  const slopeU = line
    ? Math.sqrt(variance * (1 + (column < 0 ? 0 : (qt * qt) / d))) / Ltt / timeUnit
    : 0;
  return {
    weight,
    fast,
    shape,
    tau,
    line,
    constant: coefficients[0] as number,
    fast1: fast < 0 ? 0 : (coefficients[1] as number),
    fast2: fast < 0 ? 0 : (coefficients[2] as number),
    amplitude,
    slope: line ? (coefficients[m - 1] as number) / timeUnit : 0,
    slopeU,
    amplitudeU: column < 0 ? 0 : Math.sqrt(variance / d),
    ahead,
    aheadU: Math.sqrt(variance * spread),
    aicc,
  };
}

/** Value of a component at t, relative to the origin. */
export function componentAt(one: Component, t: number): number {
  const fast = (j: number) => -Math.expm1(-t / (fastTaus[j] as number));
  return (
    one.constant +
    (one.fast < 0 ? 0 : one.fast1 * fast(one.fast) + one.fast2 * fast(one.fast + 1)) +
    one.slope * t +
    (one.shape < 0 ? 0 : one.amplitude * slowShape(one.shape, t, one.tau))
  );
}
