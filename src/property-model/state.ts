// What are density, enthalpy, entropy, heat capacity and speed of sound of one phase?
// Follows Span, Multiparameter Equations of State (Springer 2000), table 3.10.
// Does not cover two-phase states, viscosity, thermal conductivity or surface tension.

import { objectOf, oneOf, siOf } from "../quantity/check.ts";
import { OutOfRangeError } from "../quantity/errors.ts";
import { frozen } from "../quantity/frozen.ts";
import { choose } from "../quantity/hints.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { kJPerKg, kJPerKgK } from "../quantity/units/energy.ts";
import { kgPerM3 } from "../quantity/units/mass.ts";
import { kPaa } from "../quantity/units/pressure.ts";
import { mPerSecond } from "../quantity/units/time.ts";
import { densityAt, type Phase } from "./density-solver.ts";
import { type HelmholtzModel, modelOf, pressureAt, propertiesAt } from "./helmholtz-model.ts";
import { modelHint } from "./hints.ts";
import { bulkModel } from "./mixture-phase.ts";
import { requireFluid } from "./saturation.ts";
import type { Fluid } from "./saturation-at.ts";

/** The properties of one homogeneous phase. Source: the fluid's `literature`. */
export interface FluidState {
  /** The temperature asked for. */
  readonly temperature: Quantity<"temperature">;
  /** The density asked for. */
  readonly density: Quantity<"density">;
  /** Absolute pressure. */
  readonly pressure: Quantity<"absolutePressure">;
  /** Specific enthalpy; its zero is the one of the paper, use differences. */
  readonly enthalpy: Quantity<"specificEnergy">;
  /** Specific entropy; its zero is the one of the paper, use differences. */
  readonly entropy: Quantity<"specificHeat">;
  /** Heat capacity at constant volume. */
  readonly isochoricHeatCapacity: Quantity<"specificHeat">;
  /** Heat capacity at constant pressure. */
  readonly isobaricHeatCapacity: Quantity<"specificHeat">;
  /** Speed of sound. */
  readonly speedOfSound: Quantity<"speed">;
}

/**
 * The properties of a fluid at a temperature and a density.
 *
 * The state is taken as one homogeneous phase: a density between saturated liquid and vapor gives
 * metastable values while the phase is mechanically stable, and an error where it is not. Enthalpy and
 * entropy of a mixture carry the zero points of its components; use differences at one composition.
 *
 * @param fluid - A fluid of this module, or a {@link mixture}.
 * @param input - `temperature` within the fluid's limits and `density` above 0.
 * @returns The state.
 * @throws {@link OutOfRangeError} outside the limits, above the highest pressure of the equation, or in a
 * mechanically unstable state.
 *
 * Source: Span, Multiparameter Equations of State (Springer 2000), table 3.10; the fluid's `literature`.
 *
 * @example
 * ```ts
 * import { R32, density, stateAt } from "hvac-install-math/property-model";
 * import { MPaa, degC, kJPerKg } from "hvac-install-math/quantity";
 *
 * const temperature = degC(60);
 * const suction = density(R32, { pressure: MPaa(1), temperature, phase: "vapor" });
 * const warm = stateAt(R32, { temperature, density: suction });
 * warm.pressure.toString(MPaa, 3); // => 1.000 MPaa
 * ```
 */
export function stateAt(
  fluid: Fluid,
  input: {
    readonly temperature: Quantity<"temperature">;
    readonly density: Quantity<"density">;
  },
): FluidState {
  const model = modelFor(fluid);
  objectOf("input", input);
  const T = siOf("temperature", input.temperature, "temperature", limitsOf(fluid), OutOfRangeError);
  const rho = siOf("density", input.density, "density", { above: 0 }) / model.molarMass;
  const { slope, p } = pressureAt(model, T, rho);
  const { maxPressure } = limitsOf(fluid);
  if (!(slope > 0 && p > 0 && p <= maxPressure)) {
    throw new OutOfRangeError({
      argument: "density",
      value: `${input.density} at ${input.temperature}`,
      allowed: `a stable phase of ${fluid.id} up to ${maxPressure / 1e6} MPa`,
      hint: modelHint("property-model.two-phases"),
    });
  }
  const found = propertiesAt(model, T, rho);
  return frozen({
    temperature: input.temperature,
    density: input.density,
    pressure: kPaa(found.pressure / 1e3),
    enthalpy: kJPerKg(found.enthalpy / 1e3),
    entropy: kJPerKgK(found.entropy / 1e3),
    isochoricHeatCapacity: kJPerKgK(found.isochoricHeatCapacity / 1e3),
    isobaricHeatCapacity: kJPerKgK(found.isobaricHeatCapacity / 1e3),
    speedOfSound: mPerSecond(found.speedOfSound),
  });
}

/**
 * The density of the liquid or of the vapor at a pressure and a temperature.
 *
 * Near saturation the answer may be metastable (a liquid slightly below its bubble pressure); above the
 * critical temperature both phases are the same.
 *
 * @param fluid - A fluid of this module, or a {@link mixture}.
 * @param input - Absolute `pressure` above 0, `temperature` within the limits, and which `phase`.
 * @returns The density.
 * @throws {@link OutOfRangeError} outside the limits, or where that phase does not exist.
 *
 * Source: the fluid's `literature`.
 *
 * @example
 * ```ts
 * import { density, water } from "hvac-install-math/property-model";
 * import { degC, kPaa } from "hvac-install-math/quantity";
 *
 * density(water, { pressure: kPaa(101.325), temperature: degC(20), phase: "liquid" }).toString(undefined, 2); // => 998.21 kg/m³
 * ```
 */
export function density(
  fluid: Fluid,
  input: {
    readonly pressure: Quantity<"absolutePressure">;
    readonly temperature: Quantity<"temperature">;
    readonly phase: Phase;
  },
): Quantity<"density"> {
  const model = modelFor(fluid);
  objectOf("input", input);
  const limits = limitsOf(fluid);
  const T = siOf("temperature", input.temperature, "temperature", limits, OutOfRangeError);
  const p = siOf(
    "pressure",
    input.pressure,
    "absolutePressure",
    { above: 0, max: limits.maxPressure },
    OutOfRangeError,
  );
  const phase = oneOf("phase", input.phase, ["liquid", "vapor"]);
  const rho = densityAt(model, T, p, phase);
  if (rho === undefined) {
    throw new OutOfRangeError({
      argument: "pressure",
      value: `${input.pressure} at ${input.temperature}`,
      allowed: `a state in which ${fluid.id} can be ${phase}`,
      hint: choose(["temperature", "pressure", "phase"], "matching"),
    });
  }
  return kgPerM3(rho * model.molarMass);
}

function modelFor(fluid: Fluid): HelmholtzModel {
  requireFluid(fluid);
  return fluid.kind === "mixture" ? bulkModel(fluid) : modelOf(fluid);
}

/** The limits of a fluid; of a mixture those that all components share. */
function limitsOf(fluid: Fluid): { min: number; max: number; maxPressure: number } {
  const all = fluid.kind === "mixture" ? fluid.components : [fluid];
  return {
    min: Math.max(...all.map(({ limits }) => limits.minTemperature)),
    max: Math.min(...all.map(({ limits }) => limits.maxTemperature)),
    maxPressure: Math.min(...all.map(({ limits }) => limits.maxPressure)),
  };
}
