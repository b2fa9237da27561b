// How much do the readings scatter? Each against the parabola through the three before it, which a rise that slows
// down does not feign. Follows Lagrange's formula (Abramowitz & Stegun, 1964, 25.2.1). Does not cover jumps: collect.ts.

/** Running variance of one reading, Pa². */
export interface Scatter {
  variance: number;
  count: number;
  /** The last three readings, time in s and pressure in Pa. */
  recent: readonly (readonly [number, number])[];
}

/** Takes a reading of the stretch. */
export function readScatter(scatter: Scatter, at: number, p: number): void {
  const [first, second, third] = scatter.recent;
  if (!first || !second || !third) {
    scatter.recent = [...scatter.recent, [at, p]];
    return;
  }
  scatter.recent = [second, third, [at, p]];
  const [t0, p0] = first;
  const [t1, p1] = second;
  const [t2, p2] = third;
  const part0 = ((at - t1) * (at - t2)) / ((t0 - t1) * (t0 - t2));
  const part1 = ((at - t0) * (at - t2)) / ((t1 - t0) * (t1 - t2));
  const part2 = ((at - t0) * (at - t1)) / ((t2 - t0) * (t2 - t1));
  const error = p - part0 * p0 - part1 * p1 - part2 * p2;
  const parts = 1 + part0 ** 2 + part1 ** 2 + part2 ** 2;
  const square = error ** 2 / parts;
  scatter.count = Math.min(scatter.count + 1, 40);
  // large values are clipped
  const clipped = scatter.count > 10 ? Math.min(square, 9 * scatter.variance + 1e-12) : square;
  scatter.variance += (clipped - scatter.variance) / scatter.count;
}

/** The variance, or another one as long as it is not known. */
export const scatterOf = ({ variance, count }: Scatter, before: number): number =>
  count < 3 ? before : variance;
