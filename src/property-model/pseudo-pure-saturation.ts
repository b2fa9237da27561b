// At which pressures does a blend with one equation of its own boil and condense?
// Follows Lemmon (2003), Int. J. Thermophys. 24:991, doi:10.1023/A:1025048800563, eq. 4.
// Does not cover states between bubble and dew, which this model does not define.
import { densityAt } from "./density-solver.ts";
import type { PseudoPureFluid } from "./fluid.ts";
import { modelOf } from "./helmholtz-model.ts";

/** Bubble and dew point at one temperature; Pa and mol/m³. */
export interface PseudoPurePoints {
  readonly bubblePressure: number;
  readonly dewPressure: number;
  readonly liquid: number;
  readonly vapor: number;
}

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

/** The saturation points at T (K), or undefined where the equation of state has no such phase. */
export function pseudoPureSaturation(
  fluid: PseudoPureFluid,
  T: number,
): PseudoPurePoints | undefined {
  const model = modelOf(fluid);
  const bubblePressure = pseudoPurePressure(fluid, "bubble", T);
  const dewPressure = pseudoPurePressure(fluid, "dew", T);
  const liquid = densityAt(model, T, bubblePressure, "liquid");
  const vapor = densityAt(model, T, dewPressure, "vapor");
  if (liquid === undefined || vapor === undefined || liquid <= vapor) return undefined;
  return { bubblePressure, dewPressure, liquid, vapor };
}
