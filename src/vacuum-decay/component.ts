// What does one model say? Its coefficients, their uncertainties and its prediction.
// Follows weighted linear least squares; JCGM 100:2008 for the uncertainties. Does not cover the weights.
import { selfAt, slowIndex, timeUnit, yAt } from "./gram.ts";
import { fastTaus, slowCount, slowShape, slowTau } from "./shapes.ts";
import { project, size, type Workspace } from "./workspace.ts";

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

/**
 * Coefficients, uncertainties and prediction of one model; the base is factored and the columns ahead are
 * filled already.
 */
export function complete(
  work: Workspace,
  fast: number,
  column: number,
  line: boolean,
  weight: number,
  variance: number,
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
  const tau = column < 0 ? 0 : slowTau(column % slowCount);
  // prediction g·c with variance |L⁻¹g|²
  const slowAhead = column < 0 ? 0 : (work.ahead[column] as number);
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
