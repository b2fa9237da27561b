// At which pressures does a blend with one equation of its own boil and condense?
// Follows Lemmon (2003), Int. J. Thermophys. 24:991, doi:10.1023/A:1025048800563, eq. 4.
// Does not cover states between bubble and dew, which this model does not define.
import { densityAt, densityNear } from "./density-solver.ts";
import type { PseudoPureFluid } from "./fluid.ts";
import { modelOf } from "./helmholtz-model.ts";

/** The pressure (Pa) at T (K) on one side: ln(p/pc) = (Tc/T) Σ n θ^t, θ = 1 − T/Tc, Lemmon (2003), eq. 4. */
export function pseudoPurePressure(
  fluid: PseudoPureFluid,
  side: "bubble" | "dew",
  T: number,
): number {
  const { temperature: Tc, pressure: pc } = fluid.critical;
  const theta = 1 - T / Tc;
  const sum = fluid[side].reduce((total, [n, t]) => total + n * theta ** t, 0);
  return pc * Math.exp((Tc / T) * sum);
}

/**
 * The density (mol/m³) of the saturated phase of one side at T (K) and its pressure (Pa), or undefined where
 * the equation of state has no such phase.
 *
 * The vapor is sought from the ideal gas, the liquid from Guggenheim (1945), eq. 6.
 */
export function pseudoPureDensity(
  fluid: PseudoPureFluid,
  side: "bubble" | "dew",
  T: number,
  pressure: number,
): number | undefined {
  const model = modelOf(fluid);
  const { temperature: Tc, density: rhoc } = fluid.critical;
  if (side === "dew") {
    const vapor = densityNear(model, T, pressure, pressure / (model.gasConstant * T));
    return vapor !== undefined && vapor < rhoc ? vapor : densityAt(model, T, pressure, "vapor");
  }
  const theta = 1 - T / Tc;
  const start = rhoc * (1 + 0.75 * theta + 1.75 * Math.cbrt(theta));
  const liquid = densityNear(model, T, pressure, start);
  return liquid !== undefined && liquid > rhoc ? liquid : densityAt(model, T, pressure, "liquid");
}
