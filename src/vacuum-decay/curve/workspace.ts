// How are many small fits solved fast? Scratch memory and the Cholesky steps that all models share.
// Follows the textbook normal equations of weighted least squares. Does not cover the choice of models:
// evidence.ts.
import {
  baseIndex,
  emptyGram,
  fastAt,
  type Gram,
  slowColumns,
  slowIndex,
  timeAt,
  timeUnit,
  yAt,
} from "./gram.ts";
import { fastTaus } from "./shapes.ts";

/** Row length of the Cholesky factor: 1, two fast, line, slow. */
export const size: number = 5; // 1, two fast, line, slow

/** Scratch memory of one analysis, so that a live reading allocates next to nothing. */
export interface Workspace {
  readonly L: Float64Array;
  readonly q: Float64Array;
  readonly qy: Float64Array;
  readonly g: Float64Array;
  /** Shared columns at the time of the prediction, and their rates at the end of the evidence. */
  readonly columns: Float64Array;
  readonly rates: Float64Array;
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
    rates: array(yAt + 1),
    profiles: array(2 * fastTaus.length * slowColumns),
    ahead: array(slowColumns),
    indices: [],
    gram: emptyGram(),
  };
}

/** Positions of the shared columns of a fast choice: 1, two neighboring exponentials, the line last. */
const chosen: readonly (readonly number[])[] = /* @__PURE__ */ [
  -1,
  ...fastTaus.slice(1).keys(),
].map((fast) => (fast < 0 ? [0, timeAt] : [0, fastAt + fast, fastAt + fast + 1, timeAt]));

/** Cholesky of the base columns of a fast choice (line last) and forward solution for y. False if singular. */
export function factor(work: Workspace, fast: number): boolean {
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
export function project({ L, q, gram, indices }: Workspace, column: number): void {
  for (let i = 0; i < indices.length; i++) {
    let sum = gram.slow[slowIndex(column, indices[i] as number)] as number;
    for (let k = 0; k < i; k++) sum -= (L[i * size + k] as number) * (q[k] as number);
    q[i] = sum / (L[i * size + i] as number);
  }
}
