// At which temperature and density does a mixture scale? Reducing functions and their derivatives.
// Follows Kunz and Wagner (2012), doi:10.1021/je300655b, eqs. 16 and 17; Lemmon and Jacobsen (2004), eqs. 12, 13.
// Does not cover the critical point of the mixture, which is another thing.
import type { BinaryPair } from "./binary-pairs.ts";
import type { PureFluid } from "./fluid.ts";

/** A function of composition with its first and second derivatives, all x independent. */
export interface CompositionFunction {
  readonly value: number;
  readonly gradient: Float64Array;
  /** Row by row, n × n. */
  readonly hessian: Float64Array;
}

/** A pair's contribution 2 c x_i x_j (x_i + x_j)/(β² x_i + x_j), to one reducing function. */
interface PairTerm {
  readonly i: number;
  readonly j: number;
  readonly beta2: number;
  readonly c2: number;
}

/** Quadratic mixing rule Σ x_i² Y_i + Σ pairs. */
export interface ReducingRule {
  readonly pure: readonly number[];
  readonly terms: readonly PairTerm[];
}

/** The mixing rules of the reducing temperature and of the reducing molar volume. */
export function reducingRules(
  fluids: readonly PureFluid[],
  pairs: readonly BinaryPair[],
): { temperature: ReducingRule; volume: ReducingRule } {
  const T = fluids.map((fluid) => fluid.reducing.temperature);
  const v = fluids.map((fluid) => 1 / fluid.reducing.density);
  const ofT: PairTerm[] = [];
  const ofV: PairTerm[] = [];
  let k = 0;
  for (let i = 0; i < fluids.length; i++) {
    for (let j = i + 1; j < fluids.length; j++, k++) {
      const pair = pairs[k] as BinaryPair;
      const [Ti, Tj, vi, vj] = [T[i], T[j], v[i], v[j]] as [number, number, number, number];
      if ("xi" in pair.reducing) {
        // Lemmon and Jacobsen (2004): Σ x T + x_i x_j ξ is the same as 2 x_i x_j (T_i + T_j + ξ)/2.
        ofT.push({ i, j, beta2: 1, c2: Ti + Tj + pair.reducing.xi });
        ofV.push({ i, j, beta2: 1, c2: vi + vj + pair.reducing.zeta });
      } else {
        const { betaT, gammaT, betaV, gammaV } = pair.reducing;
        const swapped = pair.first !== fluids[i]?.id;
        const bT = swapped ? 1 / betaT : betaT;
        const bV = swapped ? 1 / betaV : betaV;
        ofT.push({ i, j, beta2: bT * bT, c2: 2 * bT * gammaT * Math.sqrt(Ti * Tj) });
        const mean = (Math.cbrt(vi) + Math.cbrt(vj)) ** 3 / 8;
        ofV.push({ i, j, beta2: bV * bV, c2: 2 * bV * gammaV * mean });
      }
    }
  }
  return { temperature: { pure: T, terms: ofT }, volume: { pure: v, terms: ofV } };
}

/** The value of a mixing rule and its derivatives at a composition. */
export function evaluateRule({ pure, terms }: ReducingRule, x: Float64Array): CompositionFunction {
  const n = x.length;
  const gradient = new Float64Array(n);
  const hessian = new Float64Array(n * n);
  const at = (array: Float64Array, index: number) => array[index] as number;
  const add = (array: Float64Array, index: number, amount: number) => {
    array[index] = at(array, index) + amount;
  };
  let value = 0;
  for (let i = 0; i < n; i++) {
    const [y, xi] = [pure[i] as number, at(x, i)];
    value += y * xi * xi;
    add(gradient, i, 2 * y * xi);
    add(hessian, i * n + i, 2 * y);
  }
  for (const { i, j, beta2, c2 } of terms) {
    const [xi, xj] = [at(x, i), at(x, j)];
    // f = N/D with N = x_i x_j (x_i + x_j), D = β² x_i + x_j
    const D = beta2 * xi + xj;
    const f = (xi * xj * (xi + xj)) / D;
    const fi = (xj * (2 * xi + xj) - f * beta2) / D;
    const fj = (xi * (xi + 2 * xj) - f) / D;
    value += c2 * f;
    add(gradient, i, c2 * fi);
    add(gradient, j, c2 * fj);
    add(hessian, i * n + i, (c2 * (2 * xj - 2 * fi * beta2)) / D);
    add(hessian, j * n + j, (c2 * (2 * xi - 2 * fj)) / D);
    const mixed = (c2 * (2 * (xi + xj) - fi - fj * beta2)) / D;
    add(hessian, i * n + j, mixed);
    add(hessian, j * n + i, mixed);
  }
  return { value, gradient, hessian };
}
