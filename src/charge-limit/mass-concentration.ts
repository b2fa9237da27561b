// How many grams per cubic meter are so many ppm? Concentration by volume to concentration by mass.
// Follows the ideal gas law, as ANSI/ASHRAE Standard 34 does at 25 °C.
// Does not cover real-gas effects, which are far below 1 % at these concentrations.
import { numberOf, objectOf, siOf } from "../quantity/check.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { gPerM3 } from "../quantity/units/mass.ts";

/**
 * The mass of a gas per volume of air from its share of the volume: ρ = x · M · p / (R · T).
 *
 * @param gas - Share of the volume 0 to 1, molar mass in g/mol, temperature, atmosphere.
 * @returns The `density`, in g/m³.
 * @throws {@link InvalidInputError} when a kind or range does not fit.
 *
 * Source: ideal gas law; R = 8.314462618 J/(mol·K), SI Brochure, 9th ed.
 *
 * @example
 * ```ts
 * import { massConcentration } from "hvac-install-math/charge-limit";
 * import { degC, ppm, standardAtmosphere } from "hvac-install-math/quantity";
 *
 * const air = { temperature: degC(25), atmosphere: standardAtmosphere };
 * massConcentration({ volumeFraction: ppm(36_000), molarMass: 52.024, ...air }).toString(undefined, 1); // => 76.6 g/m³
 * ```
 */
export function massConcentration(gas: {
  /** Share of the volume. */
  readonly volumeFraction: Quantity<"ratio">;
  /** Molar mass, g/mol, above 0. */
  readonly molarMass: number;
  /** Temperature of the air. */
  readonly temperature: Quantity<"temperature">;
  /** Pressure of the air. */
  readonly atmosphere: Quantity<"absolutePressure">;
}): Quantity<"density"> {
  objectOf("gas", gas);
  const x = siOf("volumeFraction", gas.volumeFraction, "ratio", { min: 0, max: 1 });
  const M = numberOf("molarMass", gas.molarMass, { above: 0, max: 1e4 });
  const T = siOf("temperature", gas.temperature, "temperature", { above: 0 });
  const p = siOf("atmosphere", gas.atmosphere, "absolutePressure", { above: 0 });
  return gPerM3((x * M * p) / (8.314462618 * T));
}
