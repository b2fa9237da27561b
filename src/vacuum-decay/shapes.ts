// How does an isolated vacuum rise? The time shapes of leak, water and outgassing, and the grid of time
// constants on which they are fitted. A leak from the atmosphere is a straight line while p ≪ p_atm
// (viscous law dp/dt = k(p_a² − p²)); water approaches a balance; desorption falls about as 1/t (metal) or
// 1/√t (polymer), vacuum handbooks §1.3.3, of which `logarithmic` and `squareRoot` are the integrals.
// Does not cover leaks from a refrigerant side or a bend near atmospheric pressure.

/** The slow shapes, each 0 at t = 0. */
export const slowShapes = [
  "saturating",
  "spread",
  "hyperbolic",
  "halfOrder",
  "logarithmic",
  "mixed",
  "squareRoot",
] as const;

/**
 * The time shape of a slow rise: `saturating` A(1 − e^(−t/τ)), first-order approach to a balance;
 * `spread` the same from sites of unlike binding, ¼ at τ/2.44, ½ at τ, ¼ at 2.44 τ; `hyperbolic` A·t/(t + τ), second order; `halfOrder` A(1 − (1 − t/2τ)²) up to t = 2τ, a limited amount
 * of water that runs out; `logarithmic` A·ln(1 + t/τ), desorption from metal; `squareRoot`
 * 2A(√(1 + t/τ) − 1), desorption from polymer; `mixed` the mean of these two, metal and polymer together.
 *
 * Source: vacuum handbooks §1.3.3 for the desorption laws; the rest are kinetics of order 1, 2 and ½.
 */
export type SlowShape = (typeof slowShapes)[number];

/** Ratio of the time constants of the spread shape: four steps of the grid; common practice, no source. */
const apart: number = /* @__PURE__ */ (() => 1.25 ** 4)();

/** Shapes below this index level off: water; the others keep rising: outgassing. */
export const levelling = 4;

/** Value of a slow shape. */
export function slowShape(shape: number, t: number, tau: number): number {
  const x = t / tau;
  if (shape === 0) return -Math.expm1(-x);
  if (shape === 1) return 1 - (Math.exp(-x * apart) + 2 * Math.exp(-x) + Math.exp(-x / apart)) / 4;
  if (shape === 2) return x / (1 + x);
  if (shape === 3) return x < 2 ? x * (1 - x / 4) : 1;
  if (shape === 4) return Math.log1p(x);
  const root = 2 * (Math.sqrt(1 + x) - 1);
  return shape === 6 ? root : (Math.log1p(x) + root) / 2;
}

/** Rate of a slow shape at t, per second: its derivative. */
export function slowRate(shape: number, t: number, tau: number): number {
  const x = t / tau;
  if (shape === 0) return Math.exp(-x) / tau;
  if (shape === 1) {
    const part = (r: number) => r * Math.exp(-x * r);
    return (part(apart) + 2 * part(1) + part(1 / apart)) / (4 * tau);
  }
  if (shape === 2) return 1 / (tau * (1 + x) ** 2);
  if (shape === 3) return Math.max(0, 1 - x / 2) / tau;
  const [metal, polymer] = [1 / (1 + x), 1 / Math.sqrt(1 + x)];
  return (shape === 4 ? metal : shape === 6 ? polymer : (metal + polymer) / 2) / tau;
}

/** Slow time constants in s: 60 s to 2.8 h in steps of 25 %, interpolated between. */
export const slowCount = 24;
export const slowStep: number = /* @__PURE__ */ Math.log(1.25);

/** The grid, with the four steps to either side that the spread shape reaches to. */
const taus: readonly number[] = /* @__PURE__ */ Array.from(
  { length: slowCount + 8 },
  (_, k) => 60 * Math.exp(slowStep * (k - 4)),
);
export const slowTau = (k: number): number => taus[k + 4] as number;

/** All slow shapes at all time constants of the grid at t, shape after shape. */
export function slowColumnsAt(t: number, into: Float64Array): void {
  const left = taus.map((tau) => Math.exp(-t / tau));
  for (let k = 0; k < slowCount; k++) {
    const tau = slowTau(k);
    const middle = left[k + 4] as number;
    into[k] = 1 - middle;
    into[slowCount + k] = 1 - ((left[k] as number) + 2 * middle + (left[k + 8] as number)) / 4;
    for (let shape = 2; shape < 5; shape++) into[shape * slowCount + k] = slowShape(shape, t, tau);
    const root = 2 * (Math.sqrt(1 + t / tau) - 1);
    into[5 * slowCount + k] = ((into[4 * slowCount + k] as number) + root) / 2;
    into[6 * slowCount + k] = root;
  }
}

/** Time constants of the equalisation right after isolation in s; neighbours mix to any value between. */
export const fastTaus: readonly number[] = [2, 3.2, 5, 8, 12.5, 20, 32, 50, 80];
