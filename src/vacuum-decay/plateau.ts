// Where does the rise end, and what does that say of the water?
// Follows IAPWS R14-08(2011) and Wagner & Pruss (2002) through water.ts; ideal gas for the mass.
// Does not cover water that stays behind as liquid, as ice or in oil.
import { type Estimate, estimate } from "../assessment/assessment.ts";
import { Quantity } from "../quantity/quantity.ts";
import { g, mg } from "../quantity/units/mass.ts";
import { micron } from "../quantity/units/pressure.ts";
import { degC, kelvin } from "../quantity/units/temperature.ts";
import { type Component, levelling } from "./curve/index.ts";
import { type Mixture, mixtureOf } from "./mixture.ts";
import type { Settings } from "./settings.ts";
import { materialWater } from "./tuning.ts";
import { saturationKelvin, saturationPa } from "./water.ts";
import { vaporGrams } from "./water-vapor.ts";

/**
 * Where water levels off, and what that says.
 *
 * Source: IAPWS R14-08(2011) and Wagner & Pruss (2002) for the saturation.
 */
export interface Plateau {
  /** Pressure at which the rise ends, without the leak. */
  readonly pressure: Estimate<"absolutePressure">;
  /** Water or ice of this temperature is in balance with the plateau: the coldest wet spot is no colder. */
  readonly saturationTemperature: Quantity<"temperature">;
  /** Water that has become vapor by then, `mass`; missing without the volume. More may be left as liquid, ice or in oil. */
  readonly waterMass?: Quantity<"mass"> | undefined;
  /** Whether the plateau lies above the saturation of water at the coldest part, which contradicts water alone. */
  readonly aboveSaturation: boolean;
}

/** Where the models with water that matters level off, without the line, Pa; undefined where there is none of them. */
export function levelOf(components: readonly Component[], origin: number): Mixture | undefined {
  const wet = components.filter(
    ({ shape, amplitude }) => shape < levelling && amplitude > materialWater,
  );
  if (wet.length === 0) return undefined;
  return mixtureOf(
    wet,
    ({ constant, fast1, fast2, amplitude }) => origin + constant + fast1 + fast2 + amplitude,
    ({ amplitudeU }) => amplitudeU,
  );
}

/** What the plateau means: the vapor of an ideal gas at the ambient temperature. */
export function plateauOf(
  { mean, u }: { readonly mean: number; readonly u: number },
  origin: number,
  settings: Settings,
): Plateau {
  const { volume, ambient, coldest, accuracy } = settings;
  const p = Math.max(mean, 0.01);
  const spread = Math.hypot(u, (accuracy / Math.sqrt(3)) * p);
  return {
    pressure: estimate(new Quantity(p, micron), spread),
    saturationTemperature: kelvin(saturationKelvin(p)).as(degC),
    ...(volume > 0 && {
      waterMass: g(vaporGrams(Math.max(0, p - origin), volume, ambient)).as(mg),
    }),
    aboveSaturation: p - 2 * spread > saturationPa(coldest),
  };
}
