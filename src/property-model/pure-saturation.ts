// At which pressure does a pure fluid boil? Equal pressure and Gibbs energy of the two phases.
// Follows Akasaka (2008), J. Thermal Sci. Technol. 3:442, doi:10.1299/jtst.3.442: Newton on both densities.
// Does not cover the last ten-thousandth below the critical temperature, where densities lose their digits.
import { boilingGuess, boilingTemperature } from "./boiling-temperature.ts";
import type { PureFluid } from "./fluid.ts";
import { modelOf, pressureAt } from "./helmholtz-model.ts";

/** Two phases in equilibrium; K, Pa and mol/m³. */
export interface PurePhases {
  readonly temperature: number;
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

/** The phase equilibrium at p (Pa), or undefined where there is none below {@link pureSaturationLimit}. */
export function pureSaturationAtPressure(fluid: PureFluid, p: number): PurePhases | undefined {
  const range = { min: fluid.limits.minTemperature, max: pureSaturationLimit(fluid) };
  const inside = (T: number) => T >= range.min && T <= range.max;
  const guess = boilingGuess(p, fluid.critical);
  const direct = inside(guess) && refine(fluid, guess, startDensities(fluid, guess), p);
  if (direct && inside(direct.temperature)) return direct;
  // Near the ends of the range, point by point.
  const pressureAt = (T: number) => pureSaturation(fluid, T)?.pressure;
  const T = boilingTemperature(pressureAt, p, range, fluid.critical);
  return T === undefined ? undefined : pureSaturation(fluid, T);
}

/** Newton on ln ρ′ and ln ρ″ from a start, and on ln T where the pressure is given. */
function refine(
  fluid: PureFluid,
  startT: number,
  start: [liquid: number, vapor: number],
  pressure?: number,
): PurePhases | undefined {
  const model = modelOf(fluid);
  let T = startT;
  let [liquid, vapor] = start;
  let best = Number.POSITIVE_INFINITY;
  for (let i = 0; i < 60; i++) {
    const l = pressureAt(model, T, liquid);
    const v = pressureAt(model, T, vapor);
    // Per step of its unknown ln ρ: dp = slope, d(g/RT) = slope/(ρRT); per step of ln T: dp = thermal,
    // d(g/RT) = thermal/(ρRT) − h/RT. Both phases are to reach one pressure p and one g.
    const RT = model.gasConstant * T;
    const g = v.gibbs - l.gibbs;
    const p = pressure ?? (v.p / vapor - l.p / liquid - g * RT) / (1 / vapor - 1 / liquid);
    const [missLiquid, missVapor] = [p - l.p, p - v.p];
    const left = g + (missVapor / vapor - missLiquid / liquid) / RT; // 0 where p was free
    const stepT = pressure === undefined ? 0 : left / (v.enthalpy - l.enthalpy);
    const stepLiquid = (missLiquid - l.thermal * stepT) / l.slope;
    const stepVapor = (missVapor - v.thermal * stepT) / v.slope;
    const size = Math.max(Math.abs(stepLiquid), Math.abs(stepVapor), Math.abs(stepT));
    if (!Number.isFinite(size) || l.slope <= 0 || v.slope <= 0) return undefined;
    const damping = Math.min(1, 0.2 / size);
    liquid *= Math.exp(damping * stepLiquid);
    vapor *= Math.exp(damping * stepVapor);
    T *= Math.exp(damping * stepT);
    // Stop when the step no longer shrinks: what is left is rounding.
    const settled = size < 1e-15 || (size < 1e-8 && size >= best);
    best = Math.min(best, size);
    if (settled) break;
  }
  if (best > 1e-8 || !(liquid > vapor * (1 + 1e-3))) return undefined;
  return { temperature: T, pressure: pressureAt(model, T, vapor).p, liquid, vapor };
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
