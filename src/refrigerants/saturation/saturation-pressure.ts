// What does the gauge read when the refrigerant is at this temperature? Bubble and dew pressure.
// Follows the equation of state of each refrigerant (its `sources`) to 1e-9 by a Chebyshev series.
// Does not cover oil, air in the system, or a blend whose composition has shifted by a leak.
import { Quantity } from "../../quantity/quantity.ts";
import type { Refrigerant } from "../refrigerant.ts";
import { pressureUnitFor, temperatureOf } from "./arguments.ts";
import { pressureAt } from "./saturation-curve.ts";

/**
 * The pressure at which the liquid of nominal composition begins to boil: what belongs to a liquid line,
 * to subcooling and to a cylinder at rest that still holds liquid.
 *
 * @param refrigerant - Such as `R410A`.
 * @param temperature - `temperature` within `refrigerant.range`.
 * @returns The bubble pressure, absolute: in psia for °F, in kPaa otherwise. `toGauge` gives what a gauge
 * shows.
 * @throws {@link OutOfRangeError} outside the range, which the message states in the caller's unit.
 *
 * Source: the refrigerant's `sources`; the series stays within 1e-9 of that equation.
 *
 * @example
 * ```ts
 * import { degF, psig, standardAtmosphere, toGauge } from "hvac-install-math/quantity";
 * import { R410A, bubblePressure } from "hvac-install-math/refrigerants";
 *
 * const pressure = bubblePressure(R410A, degF(100));
 * toGauge(pressure, standardAtmosphere).toString(psig, 1); // => 318.5 psig
 * ```
 */
export function bubblePressure(
  refrigerant: Refrigerant,
  temperature: Quantity<"temperature">,
): Quantity<"absolutePressure"> {
  const T = temperatureOf(refrigerant, temperature);
  const p = pressureAt(refrigerant.saturation, "bubble", T);
  return new Quantity(p, pressureUnitFor(temperature));
}

/**
 * The pressure at which the vapor of nominal composition begins to condense: what belongs to a suction
 * line and to superheat. Of a pure substance it equals the bubble pressure; of a blend it is lower, and
 * some printed tables have the two columns the wrong way round.
 *
 * @param refrigerant - Such as `R407C`.
 * @param temperature - `temperature` within `refrigerant.range`.
 * @returns The dew pressure, absolute: in psia for °F, in kPaa otherwise.
 * @throws {@link OutOfRangeError} outside the range, which the message states in the caller's unit.
 *
 * Source: the refrigerant's `sources`; the series stays within 1e-9 of that equation.
 *
 * @example
 * ```ts
 * import { degC, kPaa } from "hvac-install-math/quantity";
 * import { R407C, bubblePressure, dewPressure } from "hvac-install-math/refrigerants";
 *
 * bubblePressure(R407C, degC(0)).toString(kPaa, 0); // => 568 kPaa
 * dewPressure(R407C, degC(0)).toString(kPaa, 0); // => 461 kPaa
 * ```
 */
export function dewPressure(
  refrigerant: Refrigerant,
  temperature: Quantity<"temperature">,
): Quantity<"absolutePressure"> {
  const T = temperatureOf(refrigerant, temperature);
  const p = pressureAt(refrigerant.saturation, "dew", T);
  return new Quantity(p, pressureUnitFor(temperature));
}
