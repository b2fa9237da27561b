// Which saturation temperature belongs to this pressure? Bubble and dew temperature.
// Follows the equation of state of each refrigerant (its `sources`) to 1e-6 K by a Chebyshev series.
// Does not cover a pressure drop between the gauge and the place that matters.
import { Quantity } from "../../quantity/quantity.ts";
import type { Refrigerant } from "../refrigerant.ts";
import { type ReadPressure, saturationTemperatureOf, temperatureUnitFor } from "./arguments.ts";

/**
 * The temperature at which the liquid begins to boil at a pressure; subcooling is measured from it.
 *
 * A gauge pressure needs the atmosphere around the gauge, by its type; an absolute pressure does not.
 *
 * @param refrigerant - Such as `R410A`.
 * @param pressure - `gaugePressure` or `absolutePressure` within the saturation range.
 * @param atmosphere - `absolutePressure` of the air around the gauge.
 * @returns The bubble temperature, in °F for a pressure in psi and in °C otherwise.
 * @throws {@link OutOfRangeError} outside the range, which the message states in the caller's unit.
 * @throws {@link InvalidInputError} from JavaScript, for a gauge pressure without the atmosphere.
 *
 * Source: the refrigerant's `sources`; the series stays within 1e-6 K of that equation.
 *
 * @example
 * ```ts
 * import { degF, psig, standardAtmosphere } from "hvac-install-math/quantity";
 * import { R410A, bubbleTemperature } from "hvac-install-math/refrigerants";
 *
 * bubbleTemperature(R410A, psig(355), standardAtmosphere).toString(degF, 1); // => 107.7 °F
 * ```
 */
export function bubbleTemperature(
  refrigerant: Refrigerant,
  pressure: ReadPressure,
  atmosphere: Quantity<"absolutePressure">,
): Quantity<"temperature">;
/**
 * The bubble temperature at an absolute pressure, which needs no atmosphere.
 *
 * @param refrigerant - Such as `R410A`.
 * @param pressure - `absolutePressure` within the saturation range.
 * @returns The bubble temperature, in °F for a pressure in psi and in °C otherwise.
 * @throws {@link OutOfRangeError} outside the range, which the message states in the caller's unit.
 *
 * Source: as above.
 */
export function bubbleTemperature(
  refrigerant: Refrigerant,
  pressure: Quantity<"absolutePressure">,
): Quantity<"temperature">;
export function bubbleTemperature(
  refrigerant: Refrigerant,
  pressure: ReadPressure,
  atmosphere?: Quantity<"absolutePressure">,
): Quantity<"temperature"> {
  const T = saturationTemperatureOf(refrigerant, "bubble", pressure, atmosphere);
  return new Quantity(T, temperatureUnitFor(pressure));
}

/**
 * The temperature at which the vapor begins to condense at a pressure; superheat is measured from it.
 *
 * A gauge pressure needs the atmosphere around the gauge, by its type; an absolute pressure does not.
 *
 * @param refrigerant - Such as `R407C`.
 * @param pressure - `gaugePressure` or `absolutePressure` within the saturation range.
 * @param atmosphere - `absolutePressure` of the air around the gauge.
 * @returns The dew temperature, in °F for a pressure in psi and in °C otherwise.
 * @throws {@link OutOfRangeError} outside the range, which the message states in the caller's unit.
 * @throws {@link InvalidInputError} from JavaScript, for a gauge pressure without the atmosphere.
 *
 * Source: the refrigerant's `sources`; the series stays within 1e-6 K of that equation.
 *
 * @example
 * ```ts
 * import { atmosphereAtAltitude, degF, ft, psig, standardAtmosphere } from "hvac-install-math/quantity";
 * import { R407C, dewTemperature } from "hvac-install-math/refrigerants";
 *
 * dewTemperature(R407C, psig(80), standardAtmosphere).toString(degF, 1); // => 50.7 °F
 * dewTemperature(R407C, psig(80), atmosphereAtAltitude(ft(5000))).toString(degF, 1); // => 49.2 °F
 * ```
 */
export function dewTemperature(
  refrigerant: Refrigerant,
  pressure: ReadPressure,
  atmosphere: Quantity<"absolutePressure">,
): Quantity<"temperature">;
/**
 * The dew temperature at an absolute pressure, which needs no atmosphere.
 *
 * @param refrigerant - Such as `R410A`.
 * @param pressure - `absolutePressure` within the saturation range.
 * @returns The dew temperature, in °F for a pressure in psi and in °C otherwise.
 * @throws {@link OutOfRangeError} outside the range, which the message states in the caller's unit.
 *
 * Source: as above.
 */
export function dewTemperature(
  refrigerant: Refrigerant,
  pressure: Quantity<"absolutePressure">,
): Quantity<"temperature">;
export function dewTemperature(
  refrigerant: Refrigerant,
  pressure: ReadPressure,
  atmosphere?: Quantity<"absolutePressure">,
): Quantity<"temperature"> {
  const T = saturationTemperatureOf(refrigerant, "dew", pressure, atmosphere);
  return new Quantity(T, temperatureUnitFor(pressure));
}
