// What bends the isotherms near the critical point of carbon dioxide and water? The non-analytic term.
// Follows IAPWS R6-95(2018), table 5; Span and Wagner (1996), eq. 6.1.
// Does not cover δ = 1 exactly, where its derivatives are infinite: the nearest representable side is used.
import type { HelmholtzDerivatives } from "./helmholtz-derivatives.ts";

/** One row of the non-analytic term n Δ^b δ ψ. Source: IAPWS R6-95(2018), table 5. */
export type NonAnalyticTerm = readonly [
  n: number,
  a: number,
  b: number,
  beta: number,
  A: number,
  B: number,
  C: number,
  D: number,
];

/** Adds one non-analytic term to a sum. */
export function addNonAnalytic(
  sum: HelmholtzDerivatives,
  [n, a, b, beta, A, B, C, D]: NonAnalyticTerm,
  tau: number,
  delta: number,
): void {
  const u = Math.abs(delta - 1) < 1e-10 ? 1e-10 : delta - 1; // δ − 1
  const v = tau - 1;
  const x = u * u;
  const k = 1 / (2 * beta);
  const theta = -v + A * x ** k;
  const big = theta * theta + B * x ** a; // Δ
  const psi = Math.exp(-C * x - D * v * v);
  // IAPWS R6-95(2018), table 5, lower part: derivatives of Δ, Δ^b and ψ.
  const bigD = u * (A * theta * (2 / beta) * x ** (k - 1) + 2 * B * a * x ** (a - 1));
  const bigDD =
    bigD / u +
    4 * B * a * (a - 1) * x ** (a - 1) +
    2 * (A / beta) ** 2 * x ** (2 * k - 1) +
    A * theta * (4 / beta) * (k - 1) * x ** (k - 1);
  const p0 = big ** b;
  const p1 = b * big ** (b - 1);
  const p2 = b * (b - 1) * big ** (b - 2);
  const powD = p1 * bigD;
  const powDD = p1 * bigDD + p2 * bigD * bigD;
  const powT = -2 * theta * p1;
  const powTT = 2 * p1 + 4 * theta * theta * p2;
  const powDT = -A * (2 / beta) * p1 * u * x ** (k - 1) - 2 * theta * p2 * bigD;
  const psiD = -2 * C * u * psi;
  const psiDD = (2 * C * x - 1) * 2 * C * psi;
  const psiT = -2 * D * v * psi;
  const psiTT = (2 * D * v * v - 1) * 2 * D * psi;
  const psiDT = 4 * C * D * u * v * psi;
  // Same table, upper part: derivatives of the term, here times the powers of δ and τ.
  const e = psi + delta * psiD;
  sum.a += n * p0 * delta * psi;
  sum.d += delta * n * (p0 * e + powD * delta * psi);
  sum.dd +=
    delta * delta * n * (p0 * (2 * psiD + delta * psiDD) + 2 * powD * e + powDD * delta * psi);
  sum.t += tau * n * delta * (powT * psi + p0 * psiT);
  sum.tt += tau * tau * n * delta * (powTT * psi + 2 * powT * psiT + p0 * psiTT);
  sum.dt +=
    delta *
    tau *
    n *
    (p0 * (psiT + delta * psiDT) + delta * powD * psiT + powT * e + powDT * delta * psi);
}
