// How can a fit cost the same after 100 readings as after 100 000? Inner products of all basis columns,
// added up bin by bin: the normal equations of every model of the set are parts of this one table.
// Follows the textbook normal equations of weighted linear least squares, solved by Cholesky.
// Does not cover free time constants: they sit on the grid of shapes.ts.
import { fastTaus, slowColumnsAt, slowCount, slowShapes } from "./shapes.ts";

/** Columns shared by all models: 1, the fast exponentials, t, and the pressure itself. */
export const fastAt = 1;
export const timeAt: number = /* @__PURE__ */ (() => fastAt + fastTaus.length)();
export const yAt: number = /* @__PURE__ */ (() => timeAt + 1)();
const width = /* @__PURE__ */ (() => yAt + 1)();
/** Slow columns: the shapes times the grid of time constants. */
export const slowColumns: number = /* @__PURE__ */ (() => slowShapes.length * slowCount)();
const row = /* @__PURE__ */ (() => width + 1)();

/** The time column counts in units of 600 s, which keeps the table well scaled. */
export const timeUnit = 600;

/** Sums of products: `base[i · width + j]` of shared columns, `slow[c · row + j]` of slow with shared, then with itself. */
export interface Gram {
  readonly base: Float64Array;
  readonly slow: Float64Array;
  /** Number of bins added. */
  n: number;
}

export const baseIndex = (i: number, j: number): number => i * width + j;
export const slowIndex = (column: number, j: number): number => column * row + j;
export const selfAt: number = width;

/** Scratch memory of {@link addPoint}. */
export interface Scratch {
  readonly shared: Float64Array;
  readonly values: Float64Array;
}

export const createScratch = (): Scratch => ({
  shared: new Float64Array(width),
  values: new Float64Array(slowColumns),
});

export function emptyGram(): Gram {
  return {
    base: new Float64Array(width * width),
    slow: new Float64Array(slowColumns * row),
    n: 0,
  };
}

/** Values of the shared columns but the last at t. */
export function sharedColumns(t: number, into: Float64Array): void {
  into[0] = 1;
  for (let j = 0; j < fastTaus.length; j++)
    into[fastAt + j] = -Math.expm1(-t / (fastTaus[j] as number));
  into[timeAt] = t / timeUnit;
}

/** Copies one table over another of the same size. */
export function copyGram(from: Gram, to: Gram): void {
  to.base.set(from.base);
  to.slow.set(from.slow);
  to.n = from.n;
}

/** Adds a point at time t with the value y and the weight w; the scratch memory is overwritten. */
export function addPoint(
  gram: Gram,
  { shared, values }: Scratch,
  t: number,
  y: number,
  w: number,
): void {
  sharedColumns(t, shared);
  shared[yAt] = y;
  const { base, slow } = gram;
  for (let i = 0; i < width; i++) {
    const wi = w * (shared[i] as number);
    for (let j = 0; j <= i; j++)
      base[i * width + j] = (base[i * width + j] as number) + wi * (shared[j] as number);
  }
  slowColumnsAt(t, values);
  let at = 0;
  for (let column = 0; column < slowColumns; column++) {
    const f = values[column] as number;
    const wf = w * f;
    for (let j = 0; j < width; j++) {
      slow[at + j] = (slow[at + j] as number) + wf * (shared[j] as number);
    }
    slow[at + width] = (slow[at + width] as number) + wf * f;
    at += row;
  }
  gram.n++;
}
