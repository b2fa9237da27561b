// How much pressure does the flow lose in the tube? Velocity, Reynolds number and Darcy's loss.
// Follows Darcy-Weisbach, Δp = f·(L/d)·ρv²/2, with frictionFactor; roughness of drawn tubing by Moody (1944).
// Does not cover two-phase flow, and vapor whose density changes much along the line: keep the loss
// below a tenth of the absolute pressure there.

import { numberOf, siOf } from "../quantity/check.ts";
import { frozen } from "../quantity/frozen.ts";
import { Quantity } from "../quantity/quantity.ts";
import { kPa, psi } from "../quantity/units/pressure.ts";
import { ftPerMinute, mPerSecond } from "../quantity/units/time.ts";
import { frictionFactor } from "./friction-factor.ts";
import { say } from "./statements.ts";
import { diametersOf, isImperial, lengthOf, type TubeSize } from "./tube.ts";

/**
 * Single-phase flow in a tube.
 */
export interface TubeFlow {
  /** Outside diameter and wall. */
  readonly tube: TubeSize;
  /** Mass flow of refrigerant, 0 to 200 kg/s. */
  readonly massFlow: Quantity<"massFlow">;
  /** Density in the line, up to 3000 kg/m³. */
  readonly density: Quantity<"density">;
}

/**
 * Single-phase flow with what friction depends on.
 */
export interface FrictionLossInput extends TubeFlow {
  /** Length of tube with the equivalent length of bends and fittings. */
  readonly length: Quantity<"length">;
  /** Dynamic viscosity in µPa·s, 1 to 100 000: R410A liquid at 40 °C is about 100, its vapor at 5 °C about 12.5 (from memory). */
  readonly viscosityMicropascalSecond: number;
  /** Roughness of the bore; drawn copper, 1.5 µm, when left out. */
  readonly roughness?: Quantity<"length"> | undefined;
}

/**
 * What the flow is like and what it loses.
 *
 * Source: Darcy-Weisbach.
 */
export interface FrictionLoss {
  /** Pressure lost to friction. */
  readonly pressureLoss: Quantity<"pressureDifference">;
  /** Mean velocity. */
  readonly velocity: Quantity<"speed">;
  /** Reynolds number. */
  readonly reynolds: number;
  /** Darcy friction factor. */
  readonly frictionFactor: number;
}

/** Velocity in m/s and bore in m. Internal. */
export function flowOf(
  flow: TubeFlow,
  path = "",
): { v: number; d: number; rho: number; G: number } {
  const d = diametersOf(`${path}tube`, flow?.tube).inside;
  const rho = siOf(`${path}density`, flow.density, "density", { above: 0, max: 3000 });
  const massFlow = siOf(`${path}massFlow`, flow.massFlow, "massFlow", { min: 0, max: 200 });
  const G = massFlow / ((Math.PI / 4) * d ** 2);
  return { v: G / rho, d, rho, G };
}

/**
 * Mean velocity of a fluid in a tube, v = ṁ/(ρ·A).
 *
 * @param flow - Tube, mass flow, density.
 * @returns The velocity, in ft/min for a tube in inches, else in m/s.
 * @throws {@link InvalidInputError} when an argument is missing, of another kind or impossible.
 *
 * Source: conservation of mass.
 *
 * @example
 * ```ts
 * import { astmB280Tube, lineVelocity } from "hvac-install-math/line-set";
 * import { ftPerMinute, kgPerHour, kgPerM3 } from "hvac-install-math/quantity";
 *
 * const velocity = lineVelocity({
 *   tube: astmB280Tube({ size: "3/8", temper: "annealed" }),
 *   massFlow: kgPerHour(60),
 *   density: kgPerM3(33),
 * });
 * velocity.toString(ftPerMinute, 0); // => 2029 ft/min
 * ```
 */
export function lineVelocity(flow: TubeFlow): Quantity<"speed"> {
  const { v } = flowOf(flow);
  return new Quantity(v, isImperial(flow.tube.outsideDiameter) ? ftPerMinute : mPerSecond);
}

/**
 * Pressure that single-phase flow loses to friction in a tube.
 *
 * Assumes liquid all the way, or vapor whose density hardly changes; drawn copper unless the roughness
 * is given.
 *
 * @param input - Tube, length with the equivalent length of fittings, mass flow, density, viscosity.
 * @returns Loss (in psi for a length in feet or inches, else in kPa), velocity, Reynolds number and
 * friction factor; all 0 but the friction factor, which is 0 too, where nothing flows.
 * @throws {@link InvalidInputError} when an argument is missing, of another kind or impossible.
 *
 * Source: Darcy-Weisbach with Colebrook (1939), doi:10.1680/ijoti.1939.13150; roughness of drawn tubing
 * 0.000 005 ft, Moody (1944), Trans. ASME 66, 671, from memory.
 *
 * @example
 * ```ts
 * import { astmB280Tube, frictionLoss } from "hvac-install-math/line-set";
 * import { kPa, kgPerHour, kgPerM3, m } from "hvac-install-math/quantity";
 *
 * const loss = frictionLoss({
 *   tube: astmB280Tube({ size: "1/4", temper: "annealed" }),
 *   length: m(10),
 *   massFlow: kgPerHour(60),
 *   density: kgPerM3(980),
 *   viscosityMicropascalSecond: 100,
 * });
 * loss.pressureLoss.toString(kPa, 0); // => 20 kPa
 * loss.reynolds.toFixed(0); // => 43972
 * ```
 */
export function frictionLoss(input: FrictionLossInput): FrictionLoss {
  const { v, d, rho, G } = flowOf(input);
  const length = lengthOf("length", input.length);
  const mu =
    numberOf("viscosityMicropascalSecond", input.viscosityMicropascalSecond, {
      min: 1,
      max: 1e5,
      hint: say("line-set.viscosity-unit"),
    }) * 1e-6;
  const roughness =
    input.roughness === undefined
      ? 0.000005 * 0.3048 // drawn tubing, Moody (1944)
      : siOf("roughness", input.roughness, "length", { min: 0, max: 0.05 * d });
  const reynolds = (G * d) / mu;
  const f = reynolds >= 1e-30 ? frictionFactor({ reynolds, relativeRoughness: roughness / d }) : 0;
  const loss = ((f * length) / d) * (rho / 2) * v ** 2;
  const imperial = isImperial(input.length);
  return frozen({
    pressureLoss: new Quantity(loss, imperial ? psi : kPa),
    velocity: new Quantity(v, imperial ? ftPerMinute : mPerSecond),
    reynolds,
    frictionFactor: f,
  });
}
