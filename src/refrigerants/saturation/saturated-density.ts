// How heavy is the refrigerant that fills a line? Density of saturated liquid and vapor.
// Follows the equation of state of each refrigerant (its `sources`) to 1e-8 by a Chebyshev series.
// Does not cover subcooled liquid, superheated vapor or a mixture of the two phases in a line.
import { Quantity } from "../../quantity/quantity.ts";
import { kgPerM3, lbPerCuft } from "../../quantity/units/mass.ts";
import type { Refrigerant } from "../refrigerant.ts";
import { temperatureOf } from "./arguments.ts";
import { liquidDensityAt, vaporDensityAt } from "./saturation-curve.ts";

/**
 * The density of the liquid at its bubble point.
 *
 * @param refrigerant - Such as `R410A`.
 * @param temperature - `temperature` within `refrigerant.range`.
 * @returns The density, in lb/ft³ for °F and in kg/m³ otherwise.
 * @throws {@link OutOfRangeError} outside the range, which the message states in the caller's unit.
 *
 * Source: the refrigerant's `sources`; the series stays within 1e-8 of that equation.
 *
 * @example
 * ```ts
 * import { degC, kgPerM3 } from "hvac-install-math/quantity";
 * import { R32, saturatedLiquidDensity } from "hvac-install-math/refrigerants";
 *
 * saturatedLiquidDensity(R32, degC(50)).toString(kgPerM3, 1); // => 839.3 kg/m³
 * ```
 */
export function saturatedLiquidDensity(
  refrigerant: Refrigerant,
  temperature: Quantity<"temperature">,
): Quantity<"density"> {
  const T = temperatureOf(refrigerant, temperature);
  return answer(liquidDensityAt(refrigerant.saturation, T), temperature);
}

/**
 * The density of the vapor at its dew point.
 *
 * @param refrigerant - Such as `R410A`.
 * @param temperature - `temperature` within `refrigerant.range`.
 * @returns The density, in lb/ft³ for °F and in kg/m³ otherwise.
 * @throws {@link OutOfRangeError} outside the range, which the message states in the caller's unit.
 *
 * Source: the refrigerant's `sources`; the series stays within 1e-8 of that equation.
 *
 * @example
 * ```ts
 * import { degC, kgPerM3 } from "hvac-install-math/quantity";
 * import { R32, saturatedVaporDensity } from "hvac-install-math/refrigerants";
 *
 * saturatedVaporDensity(R32, degC(50)).toString(kgPerM3, 2); // => 98.55 kg/m³
 * ```
 */
export function saturatedVaporDensity(
  refrigerant: Refrigerant,
  temperature: Quantity<"temperature">,
): Quantity<"density"> {
  const T = temperatureOf(refrigerant, temperature);
  return answer(vaporDensityAt(refrigerant.saturation, T), temperature);
}

function answer(density: number, { unit }: Quantity<"temperature">): Quantity<"density"> {
  return new Quantity(density, unit.symbol === "°F" ? lbPerCuft : kgPerM3);
}
