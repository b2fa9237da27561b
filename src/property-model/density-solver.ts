// How dense is it at this temperature and pressure? The liquid or the vapor root of p(T, ρ).
// Follows the usual safeguarded Newton iteration on ln ρ; common practice, no source.
// Does not cover states between the spinodals: a root must have ∂p/∂ρ > 0 or there is none.
import { type HelmholtzModel, pressureAt } from "./helmholtz-model.ts";

/** Which root of p(T, ρ) is meant. Above the critical temperature both give the same. */
export type Phase = "liquid" | "vapor";

/**
 * The density (mol/m³) of a phase at T (K) and p (Pa), or undefined where that phase does not exist.
 *
 * The root is bracketed from the phase's own side, the liquid from a density above every liquid's, the
 * vapor from zero, and the bracket never passes the first spinodal that is met.
 */
export function densityAt(
  model: HelmholtzModel,
  T: number,
  p: number,
  phase: Phase,
): number | undefined {
  const rhor = model.reducingDensity;
  let inner: number; // nearest to the spinodal of the bracket
  let outer: number; // on the far side
  if (phase === "vapor") {
    outer = (p / (model.gasConstant * T)) * 0.5;
    while (pressureAt(model, T, outer).p > p) outer *= 0.5;
    inner = outer;
    // Walk up until the pressure is passed; a falling pressure means there is no such vapor.
    for (;;) {
      const next = inner + Math.max(inner * 0.05, rhor * 0.002);
      const state = pressureAt(model, T, next);
      if (state.p >= p && state.slope > 0) {
        inner = next;
        break;
      }
      if (state.slope <= 0) {
        const peak = spinodal(model, T, inner, next);
        if (pressureAt(model, T, peak).p < p) return undefined;
        inner = peak;
        break;
      }
      if (next > 5 * rhor) return undefined;
      outer = next;
      inner = next;
    }
  } else {
    outer = 2.4 * rhor;
    while (pressureAt(model, T, outer).p < p || pressureAt(model, T, outer).slope <= 0) {
      outer += 0.1 * rhor;
      if (outer > 4.5 * rhor) return undefined;
    }
    inner = outer;
    for (;;) {
      const next = inner * 0.985;
      const state = pressureAt(model, T, next);
      if (state.p <= p && state.slope > 0) {
        inner = next;
        break;
      }
      if (state.slope <= 0) {
        const trough = spinodal(model, T, inner, next);
        if (pressureAt(model, T, trough).p > p) return undefined;
        inner = trough;
        break;
      }
      if (next < 1e-6 * rhor) return undefined;
      outer = next;
      inner = next;
    }
  }
  return root(model, T, p, Math.min(inner, outer), Math.max(inner, outer));
}

/**
 * The density (mol/m³) at T (K) and p (Pa) to which a few Newton steps lead from a near one, or undefined
 * where they leave the stable states or do not settle: then {@link densityAt} has to search.
 */
export function densityNear(
  model: HelmholtzModel,
  T: number,
  p: number,
  start: number,
): number | undefined {
  let rho = start;
  for (let i = 0; i < 12; i++) {
    const state = pressureAt(model, T, rho);
    const step = (p - state.p) / state.slope;
    if (!(state.slope > 0 && Math.abs(step) < 0.5)) return undefined;
    rho *= 1 + step;
    if (Math.abs(step) < 1e-9) return rho; // the next step would be its square
  }
  return undefined;
}

/** The density between a stable and an unstable one where ∂p/∂ρ vanishes, seen from the stable side. */
function spinodal(model: HelmholtzModel, T: number, stable: number, unstable: number): number {
  let good = stable;
  let bad = unstable;
  for (let i = 0; i < 50; i++) {
    const middle = (good + bad) / 2;
    if (pressureAt(model, T, middle).slope > 0) good = middle;
    else bad = middle;
  }
  return good;
}

/** Newton on ln ρ inside a bracket in which the pressure rises, with bisection where it leaves it. */
function root(model: HelmholtzModel, T: number, p: number, from: number, to: number): number {
  let low = from;
  let high = to;
  let rho = (low + high) / 2;
  for (let i = 0; i < 100; i++) {
    const state = pressureAt(model, T, rho);
    if (state.p > p) high = rho;
    else low = rho;
    const step = (p - state.p) / state.slope;
    const next = rho * (1 + step);
    if (next > low && next < high && Math.abs(step) < 0.5) {
      rho = next;
      if (Math.abs(step) < 1e-15) break;
    } else {
      if (high - low <= 4e-16 * high) break;
      rho = (low + high) / 2;
    }
  }
  return rho;
}
