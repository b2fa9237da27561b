// What does one model say? Its coefficients, their uncertainties, its prediction and its rate at the end.
// Follows weighted linear least squares; JCGM 100:2008 for the uncertainties. Does not cover the weights.
import { selfAt, slowIndex, timeUnit, yAt } from "./gram.ts";
import { fastTaus, slowCount, slowRate, slowShape, slowTau } from "./shapes.ts";
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
  /** Rate of all parts together at the end of the evidence, Pa/s, and its standard uncertainty. */
  readonly endRate: number;
  readonly endRateU: number;
  readonly aicc: number;
}

/** What the sweep has found: which model, and how well it fits. */
export interface Chosen {
  readonly fast: number;
  /** Slow column, −1 for none. */
  readonly column: number;
  readonly line: boolean;
  readonly weight: number;
  readonly aicc: number;
}

/**
 * Coefficients, uncertainties and predictions of one model; the base of its fast choice is factored, and
 * the columns ahead and the rates at `end` are filled already.
 */
export function complete(
  work: Workspace,
  chosen: Chosen,
  variance: number,
  end: number,
): Component {
  const { gram, L, q, qy } = work;
  const { fast, column, line } = chosen;
  const m = line ? work.indices.length : work.indices.length - 1;
  const shape = column < 0 ? -1 : Math.floor(column / slowCount);
  const tau = column < 0 ? 0 : slowTau(column % slowCount);
  let amplitude = 0;
  let d = 1;
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
  const c = coefficientsOf(work, m, amplitude);
  const Ltt = L[(m - 1) * size + m - 1] as number;
  const qt = q[m - 1] as number;
  const slopeU = Math.sqrt(variance * (1 + (column < 0 ? 0 : (qt * qt) / d))) / Ltt / timeUnit;
  const slowAhead = column < 0 ? 0 : (work.ahead[column] as number);
  const slowEnd = column < 0 ? 0 : slowRate(shape, end, tau);
  const spreadOf = (columns: Float64Array, slow: number) =>
    Math.sqrt(variance * spread(work, m, columns, column < 0 ? undefined : { slow, d }));
  return {
    weight: chosen.weight,
    fast,
    shape,
    tau,
    line,
    constant: c[0] as number,
    fast1: fast < 0 ? 0 : (c[1] as number),
    fast2: fast < 0 ? 0 : (c[2] as number),
    amplitude,
    slope: line ? (c[m - 1] as number) / timeUnit : 0,
    slopeU: line ? slopeU : 0,
    amplitudeU: column < 0 ? 0 : Math.sqrt(variance / d),
    ahead: sumOf(work, m, work.columns, c) + amplitude * slowAhead,
    aheadU: spreadOf(work.columns, slowAhead),
    endRate: sumOf(work, m, work.rates, c) + amplitude * slowEnd,
    endRateU: spreadOf(work.rates, slowEnd),
    aicc: chosen.aicc,
  };
}

/** Back substitution for the shared coefficients, the slow one known. */
function coefficientsOf({ L, q, qy }: Workspace, m: number, amplitude: number): number[] {
  const c = [0, 0, 0, 0, 0];
  for (let i = m - 1; i >= 0; i--) {
    let sum = (qy[i] as number) - amplitude * (q[i] as number);
    for (let j = i + 1; j < m; j++) sum -= (L[j * size + i] as number) * (c[j] as number);
    c[i] = sum / (L[i * size + i] as number);
  }
  return c;
}

function sumOf({ indices }: Workspace, m: number, columns: Float64Array, c: readonly number[]) {
  let sum = 0;
  for (let i = 0; i < m; i++) sum += (columns[indices[i] as number] as number) * (c[i] as number);
  return sum;
}

/** Variance of a sum of coefficients, |L⁻¹g|², in units of the variance of the fit. */
function spread(
  { L, q, g, indices }: Workspace,
  m: number,
  columns: Float64Array,
  own: { readonly slow: number; readonly d: number } | undefined,
): number {
  let total = 0;
  let rest = own?.slow ?? 0;
  for (let i = 0; i < m; i++) {
    let sum = columns[indices[i] as number] as number;
    for (let j = 0; j < i; j++) sum -= (L[i * size + j] as number) * (g[j] as number);
    const gi = sum / (L[i * size + i] as number);
    g[i] = gi;
    total += gi * gi;
    if (own) rest -= (q[i] as number) * gi;
  }
  return own ? total + rest ** 2 / own.d : total;
}

/** Value of a component at t, relative to the origin. */
export function componentAt(
  one: Omit<Component, "weight" | "endRate" | "endRateU">,
  t: number,
): number {
  const fast = (j: number) => -Math.expm1(-t / (fastTaus[j] as number));
  return (
    one.constant +
    (one.fast < 0 ? 0 : one.fast1 * fast(one.fast) + one.fast2 * fast(one.fast + 1)) +
    one.slope * t +
    (one.shape < 0 ? 0 : one.amplitude * slowShape(one.shape, t, one.tau))
  );
}
