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
  const { recent } = scatter;
  scatter.recent = [...recent.slice(-2), [at, p]];
  if (recent.length < 3) return;
  let error = p;
  let parts = 1;
  for (const [t, pressure] of recent) {
    let part = 1;
    for (const [other] of recent) if (other !== t) part *= (at - other) / (t - other);
    error -= part * pressure;
    parts += part * part;
  }
  const square = error ** 2 / parts;
  scatter.count = Math.min(scatter.count + 1, 40);
  // large values are clipped
  const clipped = scatter.count > 10 ? Math.min(square, 9 * scatter.variance + 1e-12) : square;
  scatter.variance += (clipped - scatter.variance) / scatter.count;
}

/** The variance, or another one as long as it is not known. */
export const scatterOf = ({ variance, count }: Scatter, before: number): number =>
  count < 3 ? before : variance;
