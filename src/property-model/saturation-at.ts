// Where does this fluid boil, whichever model it has? One plain-number answer for all three kinds.
// Follows the solver of each kind: pure-saturation.ts, pseudo-pure-saturation.ts, mixture-saturation.ts.
// Does not cover units and argument checks; see saturation.ts.
import type { PseudoPureFluid, PureFluid } from "./fluid.ts";
import type { Mixture } from "./mixture.ts";
import type { MixtureEquilibrium, SaturationSide } from "./mixture-equilibrium.ts";
import { mixtureModelOf } from "./mixture-phase.ts";
import { mixtureSaturation, mixtureSaturationAtPressure } from "./mixture-saturation.ts";
import { pseudoPurePressure, pseudoPureSaturation } from "./pseudo-pure-saturation.ts";
import { pureSaturation, pureSaturationLimit } from "./pure-saturation.ts";

/**
 * A fluid of any of the three models. Source: none; this is the library's own shape.
 */
export type Fluid = PureFluid | PseudoPureFluid | Mixture;

/** A saturation point in plain SI numbers; molar densities. */
export interface PlainPoint {
  readonly temperature: number;
  readonly pressure: number;
  /** Density of the saturated bulk, mol/m³. */
  readonly density: number;
  /** Density (mol/m³) and mole fractions of the phase that just appears; a pseudo-pure fluid has none. */
  readonly incipient?: { readonly density: number; readonly moleFractions: readonly number[] };
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
  const bubble = side === "bubble";
  if (fluid.kind === "pure") {
    const phases = pureSaturation(fluid, T);
    if (phases === undefined) return undefined;
    const { pressure, liquid, vapor } = phases;
    const [density, other] = bubble ? [liquid, vapor] : [vapor, liquid];
    return { temperature: T, pressure, density, incipient: { density: other, moleFractions: [1] } };
  }
  if (fluid.kind === "pseudo-pure") {
    const points = pseudoPureSaturation(fluid, T);
    if (points === undefined) return undefined;
    return bubble
      ? { temperature: T, pressure: points.bubblePressure, density: points.liquid }
      : { temperature: T, pressure: points.dewPressure, density: points.vapor };
  }
  return fromEquilibrium(mixtureSaturation(mixtureModelOf(fluid), side, T), bubble);
}

/** The bubble or dew point at p (Pa), or undefined where the model has none. */
export function pointAtPressure(
  fluid: Fluid,
  side: SaturationSide,
  p: number,
): PlainPoint | undefined {
  if (fluid.kind === "mixture") {
    const model = mixtureModelOf(fluid);
    return fromEquilibrium(mixtureSaturationAtPressure(model, side, p), side === "bubble");
  }
  // Regula falsi (Illinois) on ln p, which is nearly straight in 1/T.
  const { min, max } = saturationRange(fluid);
  const target = Math.log(p);
  const miss = (T: number): number => {
    const pressure =
      fluid.kind === "pure"
        ? pureSaturation(fluid, T)?.pressure
        : pseudoPurePressure(fluid, side, T);
    return pressure === undefined ? Number.NaN : Math.log(pressure) - target;
  };
  let [a, b] = [1 / max, 1 / min];
  let [fa, fb] = [miss(max), miss(min)];
  if (!(fa >= 0 && fb <= 0)) return undefined;
  let x = fa === 0 ? a : b;
  for (let i = 0; i < 100 && fa !== 0 && fb !== 0; i++) {
    x = (a * fb - b * fa) / (fb - fa);
    const f = miss(1 / x);
    if (f > 0) {
      a = x;
      fa = f;
      fb /= 2;
    } else {
      b = x;
      fb = f;
      fa /= 2;
    }
    if (Math.abs(f) < 1e-13 || Math.abs(b - a) < 1e-15 * b) break;
  }
  return pointAtTemperature(fluid, side, 1 / x);
}

function fromEquilibrium(
  found: MixtureEquilibrium | undefined,
  bubble: boolean,
): PlainPoint | undefined {
  if (found === undefined) return undefined;
  const { temperature, pressure, liquid, vapor, incipient } = found;
  return {
    temperature,
    pressure,
    density: bubble ? liquid : vapor,
    incipient: { density: bubble ? vapor : liquid, moleFractions: Array.from(incipient) },
  };
}
