// What would the fluid be as an ideal gas? The ideal part of the Helmholtz energy.
// Follows Span, Multiparameter Equations of State (Springer 2000), ch. 3.
// Does not cover dissociation; the heat capacities end where the paper's range ends.
import type { IdealPart } from "./fluid.ts";
import type { HelmholtzDerivatives } from "./helmholtz-derivatives.ts";

/** The ideal Helmholtz energy α⁰(τ, δ); only the derivatives that are not trivial vary with τ. */
export function idealPart(ideal: IdealPart, tau: number, delta: number): HelmholtzDerivatives {
  let a = Math.log(delta) + ideal.a1 + ideal.a2 * tau + ideal.logTau * Math.log(tau);
  let t = ideal.a2 * tau + ideal.logTau;
  let tt = -ideal.logTau;
  for (const [n, power] of ideal.power) {
    const v = n * tau ** power;
    a += v;
    t += v * power;
    tt += v * power * (power - 1);
  }
  for (const [n, theta] of ideal.planckEinstein) {
    const x = theta * tau;
    const e = Math.expm1(x); // exp(θτ) − 1
    a += n * Math.log(-Math.expm1(-x));
    t += (n * x) / e;
    tt -= (n * x * x * (e + 1)) / (e * e);
  }
  return { a, d: 1, dd: -1, t, tt, dt: 0 };
}
