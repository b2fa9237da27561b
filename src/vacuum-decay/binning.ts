// How does a fast log become about 100 points? Bins on a fixed time grid, finer in the first two minutes,
// so that a reading can be added at any time and nothing has to be sorted, merged or kept.
// Common practice of curve fitting, no source. Does not cover the choice of what to exclude: collect.ts.

/** Which bin a time in s belongs to: 2 s wide to 30 s, 5 s to 2 min, 12 s to 6 min 36 s, then 3 % of t. */
export function binIndex(t: number): number {
  if (t < 30) return Math.floor(t / 2);
  if (t < 120) return 15 + Math.floor((t - 30) / 5);
  if (t < 396) return 33 + Math.floor((t - 120) / 12);
  return 56 + Math.floor(33 * Math.log(t / 396));
}

/** Sums of one bin. */
export interface Bin {
  readonly index: number;
  n: number;
  t: number;
  p: number;
}

/** What a stretch came to, by time in s. */
interface Points {
  readonly t: readonly number[];
  readonly p: readonly number[];
}

/** The points of a stretch, that of the bin which is still open included. */
export const allPoints = ({ t, p, open }: Points & { readonly open: Bin }): Points => ({
  t: [...t, open.t / open.n],
  p: [...p, open.p / open.n],
});
