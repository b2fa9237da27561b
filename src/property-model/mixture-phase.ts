// What is the pressure of one phase of a mixture, and the fugacity of each component in it?
// Follows Kunz and Wagner (2012), doi:10.1021/je300655b, table B4; Lemmon and Jacobsen (2004), eqs. 8 to 16.
// Does not cover association or chemical reaction.

import type { HelmholtzDerivatives } from "./helmholtz-derivatives.ts";
import type { HelmholtzModel } from "./helmholtz-model.ts";
import { idealPart } from "./ideal-part.ts";
import type { Mixture } from "./mixture.ts";
import {
  type CompositionFunction,
  evaluateRule,
  type ReducingRule,
  reducingRules,
} from "./reducing-functions.ts";
import { noDerivatives, residual } from "./residual-terms.ts";

/**
 * Molar gas constant, J/(mol K), used for every mixture whatever the papers of its components use.
 * Source: CODATA 2018, exact since the SI of 2019.
 */
export const mixtureGasConstant = 8.31446261815324;

/** A mixture prepared for evaluation. */
export interface MixtureModel {
  readonly mixture: Mixture;
  readonly temperatureRule: ReducingRule;
  readonly volumeRule: ReducingRule;
}

/** Prepares a mixture for evaluation. */
export function mixtureModelOf(mixture: Mixture): MixtureModel {
  const { temperature, volume } = reducingRules(mixture.components, mixture.pairs);
  return { mixture, temperatureRule: temperature, volumeRule: volume };
}

/** Residual part of the mixture: sum over components and departure functions, and ∂/∂x of it. */
interface ResidualParts {
  readonly sum: HelmholtzDerivatives;
  /** ∂αʳ/∂x_i with its own derivatives by δ and τ. */
  readonly byFraction: readonly HelmholtzDerivatives[];
  /** ∂²αʳ/∂x_i∂x_j, row by row. */
  readonly second: Float64Array;
}

function residualParts(
  { components, pairs }: Mixture,
  x: Float64Array,
  tau: number,
  delta: number,
): ResidualParts {
  const n = x.length;
  const second = new Float64Array(n * n);
  const byFraction = components.map((fluid) => residual(fluid.residual, tau, delta));
  const sum = noDerivatives();
  for (const [i, part] of byFraction.entries()) addTo(sum, part, x[i] as number);
  let k = 0;
  for (let i = 0; i < n; i++) {
    for (let j = i + 1; j < n; j++, k++) {
      const pair = pairs[k];
      if (!pair?.weight) continue;
      const departure = residual(pair.departure, tau, delta);
      const [xi, xj] = [x[i] as number, x[j] as number];
      addTo(sum, departure, xi * xj * pair.weight);
      addTo(byFraction[i] as HelmholtzDerivatives, departure, xj * pair.weight);
      addTo(byFraction[j] as HelmholtzDerivatives, departure, xi * pair.weight);
      second[i * n + j] = departure.a * pair.weight;
      second[j * n + i] = departure.a * pair.weight;
    }
  }
  return { sum, byFraction, second };
}

function addTo(sum: HelmholtzDerivatives, part: HelmholtzDerivatives, weight: number): void {
  sum.a += weight * part.a;
  sum.d += weight * part.d;
  sum.dd += weight * part.dd;
  sum.t += weight * part.t;
  sum.tt += weight * part.tt;
  sum.dt += weight * part.dt;
}

/** Pressure and ln fugacity of one phase, with the derivatives that a Newton iteration needs. */
export interface MixturePhase {
  /** Pa */
  readonly pressure: number;
  /** ∂p/∂ln ρ, Pa */
  readonly pressureByDensity: number;
  /** ∂p/∂ln T, Pa */
  readonly pressureByTemperature: number;
  /** ∂p/∂x_j, Pa */
  readonly pressureByFraction: Float64Array;
  /** ln(f_i/(R T · 1 mol/m³)) */
  readonly logFugacity: Float64Array;
  /** ∂ ln f_i/∂ln ρ */
  readonly byDensity: Float64Array;
  /** ∂ ln f_i/∂ln T without the part that is equal in both phases */
  readonly byTemperature: Float64Array;
  /** ∂ ln f_i/∂x_j, row by row */
  readonly byFraction: Float64Array;
}

/** One phase at T (K), ρ (mol/m³) and mole fractions x, which need not sum to 1 while iterating. */
export function mixturePhase(
  model: MixtureModel,
  T: number,
  rho: number,
  x: Float64Array,
): MixturePhase {
  const n = x.length;
  const Tr = evaluateRule(model.temperatureRule, x);
  const vr = evaluateRule(model.volumeRule, x);
  const {
    sum: A,
    byFraction: a,
    second,
  } = residualParts(model.mixture, x, Tr.value / T, rho * vr.value);
  const RT = mixtureGasConstant * T;
  const at = (array: Float64Array, index: number) => array[index] as number;
  // Relative derivatives of the reducing functions: s_j = ∂ln δ/∂x_j, q_j = ∂ln τ/∂x_j.
  const s = vr.gradient.map((g) => g / vr.value);
  const q = Tr.gradient.map((g) => g / Tr.value);
  const sMean = dot(x, s);
  const qMean = dot(x, q);
  const mean = { a: 0, d: 0, t: 0 };
  for (let k = 0; k < n; k++) {
    const part = a[k] as HelmholtzDerivatives;
    mean.a += at(x, k) * part.a;
    mean.d += at(x, k) * part.d;
    mean.t += at(x, k) * part.t;
  }
  const logFugacity = new Float64Array(n);
  const byDensity = new Float64Array(n);
  const byTemperature = new Float64Array(n);
  const byFraction = new Float64Array(n * n);
  const pressureByFraction = new Float64Array(n);
  // Total derivatives by x_j at constant T and ρ of δ ∂αʳ/∂δ, τ ∂αʳ/∂τ and Σ x_k ∂αʳ/∂x_k.
  const dA = new Float64Array(n);
  const tA = new Float64Array(n);
  const aMean = new Float64Array(n);
  for (let j = 0; j < n; j++) {
    const part = a[j] as HelmholtzDerivatives;
    dA[j] = part.d + (A.d + A.dd) * at(s, j) + A.dt * at(q, j);
    tA[j] = part.t + A.dt * at(s, j) + (A.t + A.tt) * at(q, j);
    let m = part.a + mean.d * at(s, j) + mean.t * at(q, j);
    for (let k = 0; k < n; k++) m += at(x, k) * at(second, k * n + j);
    aMean[j] = m;
    pressureByFraction[j] = rho * RT * at(dA, j);
  }
  const sCurve = curvature(vr, x, s, sMean);
  const qCurve = curvature(Tr, x, q, qMean);
  for (let i = 0; i < n; i++) {
    const part = a[i] as HelmholtzDerivatives;
    // Kunz and Wagner (2012), table B4: ∂(n αʳ)/∂n_i with U and V the brackets of the reducing functions.
    const U = 1 + at(s, i) - sMean;
    const V = at(q, i) - qMean;
    logFugacity[i] = Math.log(at(x, i)) + Math.log(rho) + A.a + A.d * U + A.t * V + part.a - mean.a;
    byDensity[i] = 1 + A.d + (A.d + A.dd) * U + A.dt * V + part.d - mean.d;
    byTemperature[i] = -(A.t + A.dt * U + (A.t + A.tt) * V + part.t - mean.t);
    for (let j = 0; j < n; j++) {
      byFraction[i * n + j] =
        (i === j ? 1 / at(x, i) : 0) +
        (part0(a, j).a + A.d * at(s, j) + A.t * at(q, j)) +
        at(dA, j) * U +
        A.d * at(sCurve, i * n + j) +
        at(tA, j) * V +
        A.t * at(qCurve, i * n + j) +
        (at(second, i * n + j) + part.d * at(s, j) + part.t * at(q, j)) -
        at(aMean, j);
    }
  }
  return {
    pressure: rho * RT * (1 + A.d),
    pressureByDensity: rho * RT * (1 + 2 * A.d + A.dd),
    pressureByTemperature: rho * RT * (1 + A.d - A.dt),
    pressureByFraction,
    logFugacity,
    byDensity,
    byTemperature,
    byFraction,
  };
}

function part0(parts: readonly HelmholtzDerivatives[], j: number): HelmholtzDerivatives {
  return parts[j] as HelmholtzDerivatives;
}

function dot(x: Float64Array, y: Float64Array): number {
  return x.reduce((sum, value, i) => sum + value * (y[i] as number), 0);
}

/** ∂/∂x_j of (Y_i − Σ x_k Y_k)/Y for a reducing function Y. */
function curvature(
  { value, hessian }: CompositionFunction,
  x: Float64Array,
  relative: Float64Array,
  mean: number,
): Float64Array {
  const n = x.length;
  const result = new Float64Array(n * n);
  for (let j = 0; j < n; j++) {
    const y = relative[j] as number;
    let column = y;
    for (let k = 0; k < n; k++)
      column += ((x[k] as number) * (hessian[k * n + j] as number)) / value;
    for (let i = 0; i < n; i++) {
      result[i * n + j] =
        (hessian[i * n + j] as number) / value - column - ((relative[i] as number) - mean) * y;
    }
  }
  return result;
}

/** The bulk composition as one homogeneous phase, for density and caloric properties. */
export function bulkModel(mixture: Mixture): HelmholtzModel {
  const model = mixtureModelOf(mixture);
  const z = Float64Array.from(mixture.moleFractions);
  const R = mixtureGasConstant;
  return {
    gasConstant: R,
    molarMass: mixture.molarMass,
    reducingTemperature: evaluateRule(model.temperatureRule, z).value,
    reducingDensity: 1 / evaluateRule(model.volumeRule, z).value,
    residual: (tau, delta) => residualParts(mixture, z, tau, delta).sum,
    ideal(T, rho) {
      // Kunz and Wagner (2012), eq. 12: each component at its own reduced temperature and density.
      const sum = noDerivatives();
      for (const [i, fluid] of mixture.components.entries()) {
        const x = z[i] as number;
        const { temperature, density } = fluid.reducing;
        const part = idealPart(fluid.ideal, temperature / T, rho / density);
        part.a += Math.log(x);
        addTo(sum, part, (x * fluid.gasConstant) / R);
      }
      return sum;
    },
  };
}
