// How much water is in a rise? The mass of vapor in a volume at a pressure.
// Follows the ideal gas law; at these pressures water vapor obeys it within 0.1 %.
// Does not cover liquid, ice or water in oil that has not evaporated: this is the least there was.
import { objectOf, siOf } from "../quantity/check.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { g, mg } from "../quantity/units/mass.ts";

const R = 8.314462618; // J/(mol·K), SI Brochure, 9th ed.
const M = 18.015268; // g/mol, water: IAPWS R6-95

/** Grams of water vapor in V m³ at p Pa and T K. */
export function vaporGrams(p: number, V: number, T: number): number {
  return (p * V * M) / (R * T);
}

/**
 * The mass of water vapor that a rise of pressure means: 1000 micron in one liter at 20 °C is about one
 * milligram.
 *
 * @param input - Rise (0 or more), volume (above 0), temperature of the gas.
 * @returns The mass, in mg.
 * @throws {@link InvalidInputError} when a value is outside its range.
 *
 * Source: ideal gas law with the molar mass of IAPWS R6-95 (from memory).
 *
 * @example
 * ```ts
 * import { degC, liter, mg, micronDifference } from "hvac-install-math/quantity";
 * import { waterVaporMass } from "hvac-install-math/vacuum-decay";
 *
 * const rise = { rise: micronDifference(1000), volume: liter(1), temperature: degC(20) };
 * waterVaporMass(rise).toString(mg, 3); // => 0.985 mg
 * ```
 */
export function waterVaporMass(input: {
  readonly rise: Quantity<"pressureDifference">;
  readonly volume: Quantity<"volume">;
  readonly temperature: Quantity<"temperature">;
}): Quantity<"mass"> {
  const { rise, volume, temperature } = objectOf("input", input);
  return g(
    vaporGrams(
      siOf("rise", rise, "pressureDifference", { min: 0 }),
      siOf("volume", volume, "volume", { above: 0 }),
      siOf("temperature", temperature, "temperature", { min: 200, max: 400 }),
    ),
  ).as(mg);
}
