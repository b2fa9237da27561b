// How large is the drop over a whole log, when gauge and thermometer err together from row to row?
// Follows generalized least squares (Aitken): the covariance of all errors weighs the rows; JCGM 100:2008,
// 5.2 and F.1.2.3. Does not cover a valve opened or gas fed in mid-log: that shows as misfit.

import type { ErrorSource } from "./log-errors.ts";
import type { Share, UncertaintyPart } from "./uncertainty-part.ts";

/** What the fit found. */
export interface LogFit {
  /** Pressure at the first row and drop to the last, Pa. */
  readonly start: number;
  readonly drop: number;
  readonly shares: Share[];
  /** Scatter around the fit against what the errors explain, 1 when as expected; of two rows nobody knows. */
  readonly misfit: number | undefined;
  /** How far each row is from what the rows before it foretell, in standard deviations. */
  readonly innovations: readonly number[];
  /** What was lost at the end beyond the course of one leak, and in standard deviations: where it is surest. */
  readonly late: { readonly lost: number; readonly sigmas: number };
}

/** Share of the drop at x, 0 to 1, through a laminar leak: 1/p grows linearly (dp/dt ∝ −p²). */
export function courseOfLeak(x: number, start: number, drop: number): number {
  const bend = Math.max(0, Math.min(drop / (start - drop), 3)) || 0;
  return (x * (1 + bend)) / (1 + bend * x);
}

/** Fits start and drop to pressures at x = 0 to 1 of the test, all at one temperature. */
export function fitLog(
  x: readonly number[],
  y: readonly number[],
  sources: readonly ErrorSource[],
): LogFit {
  const n = x.length;
  // Lower triangles, row by row: of each source, and of all together.
  const triangles = sources.map(({ part, covariance }) => {
    const list: number[] = [];
    for (let i = 0; i < n; i++) for (let j = 0; j <= i; j++) list.push(covariance(i, j));
    return { part, list };
  });
  const L = cholesky(n, (at) => triangles.reduce((sum, { list }) => sum + (list[at] as number), 0));
  const ones = forward(L, new Array(n).fill(1));
  const levels = forward(L, y);
  const aa = dot(ones, ones);
  const ay = dot(ones, levels);
  const solve = (from: number, lost: number) => {
    const course = forward(
      L,
      x.map((at) => -courseOfLeak(at, from, lost)),
    );
    const [ac, cc, cy] = [dot(ones, course), dot(course, course), dot(course, levels)];
    const det = aa * cc - ac * ac;
    const [start, drop] = [(cc * ay - ac * cy) / det, (aa * cy - ac * ay) / det];
    return { course, ac, cc, det, start, drop };
  };
  // The curve of a leak depends on its size: from a straight line, a few rounds settle it.
  let solved = solve(y[0] as number, 0);
  for (let round = 0; round < 5; round++) solved = solve(solved.start, solved.drop);
  const { course, ac, cc, det, start, drop } = solved;
  const rest = levels.map(
    (level, i) => level - start * (ones[i] as number) - drop * (course[i] as number),
  );
  const misfit = n > 2 ? Math.sqrt(dot(rest, rest) / (n - 2)) : undefined;
  // The drop is Σ weight·y; each source adds weightᵀ·covariance·weight to its variance.
  const weights = backward(
    L,
    course.map((c, i) => (aa * c - ac * (ones[i] as number)) / det),
  );
  const variance = new Map<UncertaintyPart, number>();
  const add = (part: UncertaintyPart, v: number) =>
    variance.set(part, (variance.get(part) ?? 0) + v);
  for (const { part, list } of triangles) {
    let sum = 0;
    for (let i = 0, at = 0; i < n; i++) {
      for (let j = 0; j <= i; j++, at++) {
        const both = (weights[i] as number) * (weights[j] as number) * (list[at] as number);
        sum += i === j ? both : 2 * both;
      }
    }
    add(part, Math.max(0, sum));
  }
  // Scatter beyond the stated errors widens the uncertainty (Birge ratio); less does not narrow it.
  const excess = Math.max(0, (misfit ?? 1) ** 2 - 1);
  add("scatter", excess * [...variance.values()].reduce((sum, v) => sum + v, 0));
  const shares = [...variance].map(([part, v]) => ({ part, u: Math.sqrt(v) }));
  return {
    start,
    drop,
    shares: shares.filter(({ u }) => u > 0).sort((a, b) => b.u - a.u),
    misfit,
    innovations: rest,
    late: lateLoss(x, rest, (late) => {
      const hinge = forward(L, late);
      const [ah, ch] = [dot(ones, hinge), dot(course, hinge)];
      const own = dot(hinge, hinge) - (cc * ah * ah - 2 * ac * ah * ch + aa * ch * ch) / det;
      return { hinge, own };
    }),
  };
}

/**
 * Tries a loss that began late in the hold, at its half, its last quarter, down to a sixteenth, as one more course of
 * the fit (Frisch–Waugh: what the two others leave of it, `own`, against what they leave of the rows).
 */
function lateLoss(
  x: readonly number[],
  rest: readonly number[],
  whiten: (late: readonly number[]) => { hinge: readonly number[]; own: number },
): LogFit["late"] {
  let found = { lost: 0, sigmas: 0 };
  for (let part = 1 / 2; part >= 1 / 16; part /= 2) {
    const late = x.map((at) => -Math.max(0, at - 1 + part) / part);
    if (late.filter((lost) => lost < 0).length < 3) break; // two rows are no course
    const { hinge, own } = whiten(late);
    const seen = dot(rest, hinge);
    const sigmas = seen / Math.sqrt(own);
    if (own > 0 && sigmas > found.sigmas) found = { lost: seen / own, sigmas };
  }
  return found;
}

const dot = (a: readonly number[], b: readonly number[]) =>
  a.reduce((sum, v, i) => sum + v * (b[i] as number), 0);

/** Lower triangle L with L·Lᵀ = the covariance. */
function cholesky(n: number, covariance: (at: number) => number): number[][] {
  const L: number[][] = [];
  let at = 0;
  for (let i = 0; i < n; i++) {
    const row: number[] = [];
    for (let j = 0; j <= i; j++) {
      const other = j === i ? row : (L[j] as number[]);
      let sum = covariance(at++);
      for (let k = 0; k < j; k++) sum -= (row[k] as number) * (other[k] as number);
      // Rows that repeat each other leave rounding noise on the diagonal: keep it above 1e-6 Pa².
      row[j] = i === j ? Math.sqrt(Math.max(sum, 1e-6)) : sum / (other[j] as number);
    }
    L.push(row);
  }
  return L;
}

/** Solves L·z = b. */
function forward(L: readonly number[][], b: readonly number[]): number[] {
  const z: number[] = [];
  L.forEach((row, i) => {
    let sum = b[i] as number;
    for (let k = 0; k < i; k++) sum -= (row[k] as number) * (z[k] as number);
    z.push(sum / (row[i] as number));
  });
  return z;
}

/** Solves Lᵀ·z = b. */
function backward(L: readonly number[][], b: readonly number[]): number[] {
  const z = [...b];
  for (let i = L.length - 1; i >= 0; i--) {
    const row = L[i] as number[];
    z[i] = (z[i] as number) / (row[i] as number);
    for (let k = 0; k < i; k++) z[k] = (z[k] as number) - (row[k] as number) * (z[i] as number);
  }
  return z;
}
