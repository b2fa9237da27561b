// Where does this fluid boil, whichever model it has? One plain-number answer for all three kinds.
// Follows the solver of each kind: pure-saturation.ts, pseudo-pure-saturation.ts, mixture-saturation.ts.
// Does not cover units and argument checks; see saturation.ts.
import { boilingTemperature } from "./boiling-temperature.ts";
import type { PseudoPureFluid, PureFluid } from "./fluid.ts";
import type { Mixture } from "./mixture.ts";
import type { MixtureEquilibrium, SaturationSide } from "./mixture-equilibrium.ts";
import { mixtureModelOf } from "./mixture-phase.ts";
import { mixtureSaturation, mixtureSaturationAtPressure } from "./mixture-saturation.ts";
import { pseudoPureDensity, pseudoPurePressure } from "./pseudo-pure-saturation.ts";
import {
  type PurePhases,
  pureSaturation,
  pureSaturationAtPressure,
  pureSaturationLimit,
} from "./pure-saturation.ts";

/**
 * A fluid of any of the three models.
 */
export type Fluid = PureFluid | PseudoPureFluid | Mixture;

/** A saturation point in plain SI numbers; molar densities. */
export interface PlainPoint {
  readonly temperature: number;
  readonly pressure: number;
  /** Density of the saturated bulk, mol/m³. */
  readonly density: number;
  /** Density (mol/m³) and mole fractions of the phase that just appears; a pseudo-pure fluid has none. */
  readonly incipient?:
    | { readonly density: number; readonly moleFractions: readonly number[] }
    | undefined;
}

/** Lowest and highest temperature, K, between which saturation is sought. */
export function saturationRange(fluid: Fluid): { min: number; max: number } {
  if (fluid.kind === "pure") {
    return { min: fluid.limits.minTemperature, max: pureSaturationLimit(fluid) };
  }
  if (fluid.kind === "pseudo-pure") {
    // Above 0.999 Tc the published densities and the equation of state part company.
    return { min: fluid.limits.minTemperature, max: fluid.critical.temperature * 0.999 };
  }
  const { components } = fluid;
  return {
    min: Math.max(...components.map((component) => component.limits.minTemperature)),
    max: Math.max(...components.map((component) => component.saturationLimit)),
  };
}

/** The bubble or dew point at T (K), or undefined where the model has none. */
export function pointAtTemperature(
  fluid: Fluid,
  side: SaturationSide,
  T: number,
): PlainPoint | undefined {
  if (fluid.kind === "pure") return fromPhases(pureSaturation(fluid, T), side);
  if (fluid.kind === "pseudo-pure") {
    const pressure = pseudoPurePressure(fluid, side, T);
    const density = pseudoPureDensity(fluid, side, T, pressure);
    return density === undefined ? undefined : { temperature: T, pressure, density };
  }
  return fromEquilibrium(mixtureSaturation(mixtureModelOf(fluid), side, T), side);
}

/** The bubble or dew point at p (Pa), or undefined where the model has none. */
export function pointAtPressure(
  fluid: Fluid,
  side: SaturationSide,
  p: number,
): PlainPoint | undefined {
  if (fluid.kind === "mixture") {
    const model = mixtureModelOf(fluid);
    return fromEquilibrium(mixtureSaturationAtPressure(model, side, p), side);
  }
  if (fluid.kind === "pure") return fromPhases(pureSaturationAtPressure(fluid, p), side);
  const pressureAt = (T: number) => pseudoPurePressure(fluid, side, T);
  const T = boilingTemperature(pressureAt, p, saturationRange(fluid), fluid.critical);
  return T === undefined ? undefined : pointAtTemperature(fluid, side, T);
}

function fromPhases(found: PurePhases | undefined, side: SaturationSide): PlainPoint | undefined {
  if (found === undefined) return undefined;
  const { temperature, pressure, liquid, vapor } = found;
  const [density, other] = side === "bubble" ? [liquid, vapor] : [vapor, liquid];
  return { temperature, pressure, density, incipient: { density: other, moleFractions: [1] } };
}

function fromEquilibrium(
  found: MixtureEquilibrium | undefined,
  side: SaturationSide,
): PlainPoint | undefined {
  if (found === undefined) return undefined;
  const { temperature, pressure, liquid, vapor, incipient } = found;
  const [density, other] = side === "bubble" ? [liquid, vapor] : [vapor, liquid];
  const moleFractions = Array.from(incipient);
  return { temperature, pressure, density, incipient: { density: other, moleFractions } };
}
