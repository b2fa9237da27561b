// How does an isolated vacuum rise? The time shapes of leak, water and outgassing, and the grid of time
// constants on which they are fitted. A leak from the atmosphere is a straight line while p ≪ p_atm
// (viscous law dp/dt = k(p_a² − p²)); water approaches a balance; desorption falls about as 1/t (metal) or
// 1/√t (polymer), vacuum handbooks §1.3.3, of which `logarithmic` and `squareRoot` are the integrals.
// Does not cover leaks from a refrigerant side or a bend near atmospheric pressure.

/** The slow shapes, each 0 at t = 0 with the initial slope 1/τ. */
export const slowShapes = [
  "saturating",
  "hyperbolic",
  "halfOrder",
  "logarithmic",
  "squareRoot",
] as const;

/**
 * The time shape of a slow rise: `saturating` A(1 − e^(−t/τ)), first-order approach to a balance;
 * `hyperbolic` A·t/(t + τ), second order; `halfOrder` A(1 − (1 − t/2τ)²) up to t = 2τ, a limited amount
 * of water that runs out; `logarithmic` A·ln(1 + t/τ); `squareRoot` 2A(√(1 + t/τ) − 1).
 *
 * Source: vacuum handbooks §1.3.3 for the desorption laws; the rest are kinetics of order 1, 2 and ½.
 */
export type SlowShape = (typeof slowShapes)[number];

/** Value of a slow shape. */
export function slowShape(shape: number, t: number, tau: number): number {
  const x = t / tau;
  if (shape === 0) return -Math.expm1(-x);
  if (shape === 1) return x / (1 + x);
  if (shape === 2) return x < 2 ? x * (1 - x / 4) : 1;
  return shape === 3 ? Math.log1p(x) : 2 * (Math.sqrt(1 + x) - 1);
}

/** What a slow shape has risen by t beyond its final slope kept from the start: its bend, f(t) − t·f′(t). */
export function slowBend(shape: number, t: number, tau: number): number {
  const x = t / tau;
  const slope = // τ·f′(t)
    shape === 0
      ? Math.exp(-x)
      : shape === 1
        ? (1 + x) ** -2
        : shape === 2
          ? Math.max(0, 1 - x / 2)
          : shape === 3
            ? 1 / (1 + x)
            : 1 / Math.sqrt(1 + x);
  return slowShape(shape, t, tau) - x * slope;
}

/** Slow time constants in s: 60 s to 2.8 h in steps of 25 %, interpolated between. */
export const slowCount = 24;
export const slowStep: number = /* @__PURE__ */ Math.log(1.25);
export const slowTau = (k: number): number => 60 * Math.exp(slowStep * k);

/** Time constants of the equalisation right after isolation in s; neighbours mix to any value between. */
export const fastTaus: readonly number[] = [2, 3.2, 5, 8, 12.5, 20, 32, 50, 80];
