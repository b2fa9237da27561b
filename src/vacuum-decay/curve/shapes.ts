// How does an isolated vacuum rise? The time shapes of leak, water and outgassing, and the grid of time
// constants on which they are fitted. A leak from the atmosphere is a straight line while p ≪ p_atm
// (viscous law dp/dt = k(p_a² − p²)); water approaches a balance; desorption falls about as 1/t (metal) or
// 1/√t (polymer), vacuum handbooks §1.3.3, of which `logarithmic` and `squareRoot` are the integrals.
// Does not cover leaks from a refrigerant side or a bend near atmospheric pressure.

/** The slow shapes, each 0 at t = 0. */
export const slowShapes = [
  "saturating",
  "stretched90",
  "stretched80",
  "stretched70",
  "hyperbolic",
  "logarithmic",
  "squareRoot",
] as const;

/**
 * The time shape of a slow rise: `saturating` A(1 − e^(−t/τ)), first-order approach to a balance; `stretched90`,
 * `stretched80`, `stretched70` A(1 − e^(−(t/τ)^β)) with β = 0.9, 0.8, 0.7, the same from spots and sites of unlike
 * rates; `hyperbolic` A·t/(t + τ), second order; `logarithmic` A·ln(1 + t/τ), desorption from metal; `squareRoot`
 * 2A(√(1 + t/τ) − 1), desorption from polymer.
 *
 * Source: vacuum handbooks §1.3.3 for the desorption laws; kinetics of order 1 and 2; Kohlrausch's stretched
 * exponential (1854) for a spread of rates, from memory.
 */
export type SlowShape = (typeof slowShapes)[number];

/** Exponents of the shapes that stretch an exponential, the first four. */
const exponents: readonly number[] = [1, 0.9, 0.8, 0.7];
export const hyperbolic = 4;
/** Shapes below this index level off: water; the others keep rising: outgassing. */
export const levelling = 5;

/** Value of a slow shape. */
export function slowShape(shape: number, t: number, tau: number): number {
  const x = t / tau;
  const exponent = exponents[shape];
  if (exponent !== undefined) return -Math.expm1(-(x ** exponent));
  if (shape === hyperbolic) return x / (1 + x);
  return shape === levelling ? Math.log1p(x) : 2 * (Math.sqrt(1 + x) - 1);
}

/** Rate of a slow shape at t, per second: its derivative, where t is above 0. */
export function slowRate(shape: number, t: number, tau: number): number {
  const x = t / tau;
  const exponent = exponents[shape];
  if (exponent !== undefined) {
    return (exponent * x ** (exponent - 1) * Math.exp(-(x ** exponent))) / tau;
  }
  const left = 1 / (1 + x);
  return (shape === hyperbolic ? left ** 2 : shape === levelling ? left : Math.sqrt(left)) / tau;
}

/** Slow time constants in s: 60 s to 3.2 h in steps of 12 %, fine enough for a plateau of thousands of micron. */
export const slowCount = 48;
export const slowStep: number = /* @__PURE__ */ (() => Math.log(1.25) / 2)();

const taus: readonly number[] = /* @__PURE__ */ Array.from(
  { length: slowCount },
  (_, k) => 60 * Math.exp(slowStep * k),
);
export const slowTau = (k: number): number => taus[k] as number;

/** Powers of neighbors on the grid differ by one factor for each exponent. */
const factors: readonly number[] = /* @__PURE__ */ exponents.map((exponent) =>
  Math.exp(-slowStep * exponent),
);

/** All slow shapes at all time constants of the grid at t, shape after shape; written out for speed. */
export function slowColumnsAt(t: number, into: Float64Array): void {
  let column = 0;
  for (const [shape, exponent] of exponents.entries()) {
    const factor = factors[shape] as number;
    let power = (t / slowTau(0)) ** exponent;
    for (let k = 0; k < slowCount; k++, power *= factor) into[column++] = 1 - Math.exp(-power);
  }
  const rest = slowCount;
  for (let k = 0; k < slowCount; k++, column++) {
    const x = t / slowTau(k);
    into[column] = x / (1 + x);
    into[column + rest] = Math.log1p(x);
    into[column + 2 * rest] = 2 * (Math.sqrt(1 + x) - 1);
  }
}

/** Time constants of the equalization right after isolation in s; neighbors mix to any value between. */
export const fastTaus: readonly number[] = [4, 8, 16, 32, 64];
