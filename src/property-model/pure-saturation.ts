// At which pressure does a pure fluid boil? Equal pressure and Gibbs energy of the two phases.
// Follows Akasaka (2008), J. Thermal Sci. Technol. 3:442, doi:10.1299/jtst.3.442: Newton on both densities.
// Does not cover the last ten-thousandth below the critical temperature, where densities lose their digits.
import type { PureFluid } from "./fluid.ts";
import { modelOf, pressureAt } from "./helmholtz-model.ts";

/** Two phases in equilibrium; Pa and mol/m³. */
export interface PurePhases {
  readonly pressure: number;
  readonly liquid: number;
  readonly vapor: number;
}

/** Highest temperature, K, for which {@link pureSaturation} answers. */
export function pureSaturationLimit(fluid: PureFluid): number {
  return fluid.saturationLimit * 0.9999;
}

/** The phase equilibrium at T (K), or undefined where the iteration finds none. */
export function pureSaturation(fluid: PureFluid, T: number): PurePhases | undefined {
  const direct = refine(fluid, T, startDensities(fluid, T));
  const theta = 1 - T / fluid.saturationLimit;
  if (direct !== undefined || theta > 0.1 || theta <= 0) return direct;
  // Near the critical point the guesses fail; the gap between the densities grows like √θ from there.
  const cooler = pureSaturation(fluid, fluid.saturationLimit * (1 - 2 * theta));
  if (cooler === undefined) return undefined;
  const mean = (cooler.liquid + cooler.vapor) / 2;
  const gap = ((cooler.liquid - cooler.vapor) / 2) * Math.SQRT1_2;
  return refine(fluid, T, [mean + gap, mean - gap]);
}

/** Newton on ln ρ′ and ln ρ″ from a start. */
function refine(
  fluid: PureFluid,
  T: number,
  start: [liquid: number, vapor: number],
): PurePhases | undefined {
  const model = modelOf(fluid);
  const RT = model.gasConstant * T;
  let [liquid, vapor] = start;
  let best = Number.POSITIVE_INFINITY;
  for (let i = 0; i < 60; i++) {
    const l = pressureAt(model, T, liquid);
    const v = pressureAt(model, T, vapor);
    // Unknowns ln ρ′ and ln ρ″; dp/dln ρ = slope and d(g/RT)/dln ρ = slope/(ρ R T).
    const f = v.p - l.p;
    const g = (v.gibbs - l.gibbs) * RT;
    const determinant = l.slope * v.slope * (1 / liquid - 1 / vapor);
    const stepLiquid = (v.slope * (g - f / vapor)) / determinant;
    const stepVapor = (l.slope * (g - f / liquid)) / determinant;
    if (!Number.isFinite(stepLiquid + stepVapor) || l.slope <= 0 || v.slope <= 0) return undefined;
    const size = Math.max(Math.abs(stepLiquid), Math.abs(stepVapor));
    const damping = Math.min(1, 0.2 / size);
    liquid *= Math.exp(damping * stepLiquid);
    vapor *= Math.exp(damping * stepVapor);
    // Stop when the step no longer shrinks: what is left is rounding.
    const settled = size < 1e-15 || (size < 1e-8 && size >= best);
    best = Math.min(best, size);
    if (settled) break;
  }
  if (best > 1e-8 || !(liquid > vapor * (1 + 1e-3))) return undefined;
  return { pressure: pressureAt(model, T, vapor).p, liquid, vapor };
}

/** The first guesses of the data file. */
function startDensities({ start }: PureFluid, T: number): [liquid: number, vapor: number] {
  const theta = 1 - T / start.temperature;
  const sum = (terms: PureFluid["start"]["liquid"]): number =>
    terms.reduce((total, [n, t]) => total + n * theta ** t, 0);
  const scale = start.vaporOverT ? start.temperature / T : 1;
  return [
    start.density * (1 + sum(start.liquid)),
    start.density * Math.exp(scale * sum(start.vapor)),
  ];
}
