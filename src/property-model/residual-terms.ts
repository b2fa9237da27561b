// How does a real fluid differ from an ideal gas? The residual Helmholtz energy and its derivatives.
// Follows Span, Multiparameter Equations of State (Springer 2000), ch. 3; term types of the papers
// cited with each fluid. Does not cover third derivatives; none of the solvers needs one.
import type { HelmholtzDerivatives } from "./helmholtz-derivatives.ts";
import { addNonAnalytic, type NonAnalyticTerm } from "./non-analytic-term.ts";

/**
 * One block of terms of the residual Helmholtz energy, one row per term. The common factor of a row is
 * n τ^t δ^d; the types differ in what multiplies it.
 *
 * Source: the paper of the fluid; `gao_b`: Gao et al. 2020; `gerg`: Kunz and Wagner 2012.
 */
export type ResidualBlock =
  | {
      /** n τ^t δ^d */
      readonly type: "polynomial";
      readonly terms: readonly (readonly [n: number, t: number, d: number])[];
    }
  | {
      /** n τ^t δ^d exp(−δ^c) */
      readonly type: "exponential";
      readonly terms: readonly (readonly [n: number, t: number, d: number, c: number])[];
    }
  | {
      /** n τ^t δ^d exp(−δ^c) exp(−τ^m) */
      readonly type: "exponentialDeltaTau";
      readonly terms: readonly (readonly [n: number, t: number, d: number, c: number, m: number])[];
    }
  | {
      /** n τ^t δ^d exp(−η(δ−ε)² − β(τ−γ)²) */
      readonly type: "gaussian";
      readonly terms: readonly GaussianTerm[];
    }
  | {
      /** n τ^t δ^d exp(−η(δ−ε)² − β(δ−γ)), departure functions only */
      readonly type: "gerg";
      readonly terms: readonly GaussianTerm[];
    }
  | {
      /** n τ^t δ^d exp(−η(δ−ε)² + 1/(β(τ−γ)² + b)) */
      readonly type: "gaoB";
      readonly terms: readonly (readonly [...GaussianTerm, b: number])[];
    }
  | {
      /** n Δ^b δ ψ, see non-analytic-term.ts */
      readonly type: "nonAnalytic";
      readonly terms: readonly NonAnalyticTerm[];
    };

/** One row of a Gaussian term, its coefficients in the order of the formula. Source: the paper cited with the fluid. */
export type GaussianTerm = readonly [
  n: number,
  t: number,
  d: number,
  eta: number,
  epsilon: number,
  beta: number,
  gamma: number,
];

/** The row of any type, by place; a type reads no further than its own row goes. */
type LongestRow = readonly [...GaussianTerm, b: number];

/** All zero: where sums start. */
export function noDerivatives(): HelmholtzDerivatives {
  return { a: 0, d: 0, dd: 0, t: 0, tt: 0, dt: 0 };
}

/** The residual Helmholtz energy αʳ(τ, δ) of a list of blocks. */
export function residual(
  blocks: readonly ResidualBlock[],
  tau: number,
  delta: number,
): HelmholtzDerivatives {
  const sum = noDerivatives();
  const lnTau = Math.log(tau);
  const lnDelta = Math.log(delta);
  for (const block of workingCopy(blocks)) {
    if (block.type === "nonAnalytic") {
      for (const term of block.terms) addNonAnalytic(sum, term, tau, delta);
      continue;
    }
    // Every other term is n exp(t ln τ + d ln δ + f(δ) + g(τ)); only f and g depend on the type.
    const { type } = block;
    let power = Number.NaN; // the exponent of the row before, which is often that of the next
    let f = 0; // δ to that power
    for (const row of block.terms as readonly LongestRow[]) {
      // Read by place: taking a row apart as a list costs as much as the term.
      const n = row[0];
      const t = row[1];
      const d = row[2];
      let L = t * lnTau + d * lnDelta; // logarithm of the term
      let Ld = d; // δ ∂L/∂δ
      let Ldd = 0; // δ ∂(δ ∂L/∂δ)/∂δ
      let Lt = t; // τ ∂L/∂τ
      let Ltt = 0; // τ ∂(τ ∂L/∂τ)/∂τ
      if (type === "exponential" || type === "exponentialDeltaTau") {
        const c = row[3];
        if (c !== power) {
          power = c;
          f = delta ** c;
        }
        L -= f;
        Ld -= c * f;
        Ldd -= c * c * f;
        if (type === "exponentialDeltaTau") {
          const m = row[4];
          const g = tau ** m;
          L -= g;
          Lt -= m * g;
          Ltt -= m * m * g;
        }
      } else if (type !== "polynomial") {
        const eta = row[3];
        const beta = row[5];
        const gamma = row[6];
        const x = delta - row[4]; // δ − ε
        L -= eta * x * x;
        Ld -= 2 * eta * delta * x;
        Ldd -= 2 * eta * delta * (x + delta);
        if (type === "gerg") {
          L -= beta * (delta - gamma);
          Ld -= beta * delta;
          Ldd -= beta * delta;
        } else {
          const y = tau - gamma; // τ − γ
          if (type === "gaussian") {
            L -= beta * y * y;
            Lt -= 2 * beta * tau * y;
            Ltt -= 2 * beta * tau * (y + tau);
          } else {
            const q = 1 / (beta * y * y + row[7]);
            const slope = -2 * beta * y * q * q; // dq/dτ
            const bend = 2 * q * q * beta * (4 * beta * y * y * q - 1); // d²q/dτ²
            L += q;
            Lt += tau * slope;
            Ltt += tau * (slope + tau * bend);
          }
        }
      }
      const v = n * Math.exp(L);
      sum.a += v;
      sum.d += v * Ld;
      sum.dd += v * (Ld * (Ld - 1) + Ldd);
      sum.t += v * Lt;
      sum.tt += v * (Lt * (Lt - 1) + Ltt);
      sum.dt += v * Ld * Lt;
    }
  }
  return sum;
}

/**
 * A frozen list holds its numbers boxed, which makes reading them several times slower: the loop above runs over a
 * copy that nobody else can reach, made once per list. What is not frozen is read as it is.
 */
function workingCopy(blocks: readonly ResidualBlock[]): readonly ResidualBlock[] {
  if (!Object.isFrozen(blocks)) return blocks;
  const known = copies.get(blocks);
  if (known) return known;
  const copy = blocks.map(({ type, terms }) => ({
    type,
    terms: terms.map((row) => [...row]),
  })) as unknown as readonly ResidualBlock[];
  copies.set(blocks, copy);
  return copy;
}

const copies = new WeakMap<readonly ResidualBlock[], readonly ResidualBlock[]>();
