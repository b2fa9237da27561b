// At which pressures and temperatures does a fluid boil and condense? The typed edge of the solvers.
// Follows the equations named by each fluid's `literature`.
// Does not cover states between bubble and dew, nor the critical region; see each fluid's range.

import { objectOf, oneOf, refuse, siOf } from "../quantity/check.ts";
import { OutOfRangeError } from "../quantity/errors.ts";
import { frozen } from "../quantity/frozen.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { kgPerM3 } from "../quantity/units/mass.ts";
import { kPaa } from "../quantity/units/pressure.ts";
import { kelvin } from "../quantity/units/temperature.ts";
import { modelHint } from "./hints.ts";
import type { SaturationSide } from "./mixture-equilibrium.ts";
import {
  type Fluid,
  type PlainPoint,
  pointAtPressure,
  pointAtTemperature,
  saturationRange,
} from "./saturation-at.ts";

/** Both saturation points of a fluid at one temperature. Source: the fluid's `literature`. */
export interface SaturationState {
  /** The temperature asked for. */
  readonly temperature: Quantity<"temperature">;
  /** Where the liquid begins to boil. */
  readonly bubblePressure: Quantity<"absolutePressure">;
  /** Where the vapor begins to condense; equals the bubble pressure of a pure fluid. */
  readonly dewPressure: Quantity<"absolutePressure">;
  /** Density of the saturated liquid at the bubble pressure. */
  readonly liquidDensity: Quantity<"density">;
  /** Density of the saturated vapor at the dew pressure. */
  readonly vaporDensity: Quantity<"density">;
}

/** One saturation point, bubble or dew. Source: the fluid's `literature`. */
export interface SaturationPoint {
  /** Temperature of both phases. */
  readonly temperature: Quantity<"temperature">;
  /** Pressure of both phases. */
  readonly pressure: Quantity<"absolutePressure">;
  /** Density of the saturated bulk: liquid at the bubble point, vapor at the dew point. */
  readonly density: Quantity<"density">;
  /**
   * The first bubble or the first drop: its density and its mole fractions by fluid id. A pseudo-pure
   * model does not define it.
   */
  readonly incipient?:
    | {
        /** Density of the phase that just appears. */
        readonly density: Quantity<"density">;
        /** Its composition. */
        readonly moleFractions: Readonly<Record<string, number>>;
      }
    | undefined;
}

/**
 * What fixes a saturation point: a temperature or an absolute pressure.
 */
export type SaturationInput =
  | { readonly temperature: Quantity<"temperature"> }
  | { readonly pressure: Quantity<"absolutePressure"> };

/**
 * Pressure and density of the saturated liquid and vapor at a temperature.
 *
 * Pure fluids solve equal pressure and Gibbs energy; pseudo-pure blends use the published bubble and dew
 * equations; mixtures solve equal fugacities, both points at the bulk composition.
 *
 * @param fluid - A fluid of this module, or a {@link mixture}.
 * @param temperature - `temperature` from the model's lower limit to just below the critical one (pure
 * fluids 0.9999, pseudo-pure 0.999 of it); mixtures end where the curve can no longer be followed.
 * @returns The two saturation points.
 * @throws {@link OutOfRangeError} outside that range.
 *
 * Source: the fluid's `literature`.
 *
 * @example
 * ```ts
 * import { R32, saturation } from "hvac-install-math/property-model";
 * import { kelvin, kPaa } from "hvac-install-math/quantity";
 *
 * saturation(R32, kelvin(323.15)).bubblePressure.toString(kPaa, 1); // => 3141.2 kPaa
 * ```
 */
export function saturation(fluid: Fluid, temperature: Quantity<"temperature">): SaturationState {
  const bubble = bubblePoint(fluid, { temperature });
  const dew = dewPoint(fluid, { temperature });
  return frozen({
    temperature,
    bubblePressure: bubble.pressure,
    dewPressure: dew.pressure,
    liquidDensity: bubble.density,
    vaporDensity: dew.density,
  });
}

/**
 * Where the liquid of a fluid begins to boil, at a temperature or at a pressure.
 *
 * @param fluid - A fluid of this module, or a {@link mixture}.
 * @param input - Either `temperature` or absolute `pressure`.
 * @returns The bubble point with the first bubble's density and composition.
 * @throws {@link OutOfRangeError} where the model has no bubble point or the solver cannot vouch for one.
 *
 * Source: the fluid's `literature`.
 *
 * @example
 * ```ts
 * import { R290, bubblePoint } from "hvac-install-math/property-model";
 * import { degC, kPaa } from "hvac-install-math/quantity";
 *
 * bubblePoint(R290, { pressure: kPaa(101.325) }).temperature.toString(degC, 2); // => -42.11 °C
 * ```
 */
export function bubblePoint(fluid: Fluid, input: SaturationInput): SaturationPoint {
  return frozen(point(fluid, "bubble", input));
}

/**
 * Where the vapor of a fluid begins to condense, at a temperature or at a pressure.
 *
 * @param fluid - A fluid of this module, or a {@link mixture}.
 * @param input - Either `temperature` or absolute `pressure`.
 * @returns The dew point with the first drop's density and composition.
 * @throws {@link OutOfRangeError} where the model has no dew point or the solver cannot vouch for one.
 *
 * Source: the fluid's `literature`.
 *
 * @example
 * ```ts
 * import { R407C, dewPoint } from "hvac-install-math/property-model";
 * import { kelvin, kPaa } from "hvac-install-math/quantity";
 *
 * dewPoint(R407C, { temperature: kelvin(300) }).pressure.toString(kPaa, 1); // => 1075.7 kPaa
 * ```
 */
export function dewPoint(fluid: Fluid, input: SaturationInput): SaturationPoint {
  return frozen(point(fluid, "dew", input));
}

function point(fluid: Fluid, side: SaturationSide, input: SaturationInput): SaturationPoint {
  requireFluid(fluid);
  objectOf("input", input);
  if ("temperature" in input) {
    const { temperature } = input;
    const { min, max } = saturationRange(fluid);
    const T = siOf("temperature", temperature, "temperature", { min, max }, OutOfRangeError);
    return typed(fluid, pointAtTemperature(fluid, side, T), temperature, "temperature");
  }
  const p = siOf("pressure", input.pressure, "absolutePressure", { above: 0 });
  return typed(fluid, pointAtPressure(fluid, side, p), input.pressure, "pressure");
}

function typed(
  fluid: Fluid,
  found: PlainPoint | undefined,
  given: Quantity<"temperature"> | Quantity<"absolutePressure">,
  argument: string,
): SaturationPoint {
  if (found === undefined) {
    const { min, max } = saturationRange(fluid);
    throw new OutOfRangeError({
      argument,
      value: given.toString(),
      allowed: `a saturation point of ${fluid.id} between ${min} K and below ${max.toFixed(2)} K`,
      hint: modelHint("property-model.no-such-point"),
    });
  }
  const { molarMass } = fluid;
  const result = {
    temperature: kelvin(found.temperature),
    pressure: kPaa(found.pressure / 1e3),
    density: kgPerM3(found.density * molarMass),
  };
  if (found.incipient === undefined) return result;
  const { moleFractions, density } = found.incipient;
  const fluids = fluid.kind === "mixture" ? fluid.components : [fluid];
  const masses = fluids.map((component) => component.molarMass);
  const incipientMass = masses.reduce((sum, M, i) => sum + M * (moleFractions[i] ?? 0), 0);
  return {
    ...result,
    incipient: {
      density: kgPerM3(density * incipientMass),
      moleFractions: Object.fromEntries(fluids.map(({ id }, i) => [id, moleFractions[i] ?? 0])),
    },
  };
}

/** Throws unless it is a fluid or a mixture of this module. */
export function requireFluid(fluid: Fluid): void {
  const kind = (fluid as Fluid | undefined)?.kind;
  if (kind === undefined) refuse("fluid", fluid, "a fluid of property-model or a mixture");
  oneOf("fluid.kind", kind, ["pure", "pseudo-pure", "mixture"]);
}
