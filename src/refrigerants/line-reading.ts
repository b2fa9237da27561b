// How far is the refrigerant from saturation? Superheat from dew, subcooling from bubble.
// Follows common practice of the trade: dew for superheat and bubble for subcooling of blends with glide.
// Does not cover the pressure drop between the gauge port and the place of the thermometer.
import { objectOf, siOf } from "../quantity/check.ts";
import { Quantity } from "../quantity/quantity.ts";
import type { CoilReading } from "./glide.ts";
import type { Refrigerant } from "./refrigerant.ts";
import { type Side, saturationTemperatureOf } from "./saturation/index.ts";

/**
 * A pressure and the temperature of the line beside it. A gauge pressure needs the atmosphere, by its
 * type; an absolute pressure does not.
 */
export type LineReading = CoilReading & {
  /** `temperature` of the line, measured on clean, insulated metal beside the gauge port. */
  readonly lineTemperature: Quantity<"temperature">;
};

/**
 * Superheat: how much warmer the suction line is than the dew temperature at its pressure. Negative means
 * that the readings contradict each other or that liquid is in the line.
 *
 * Systems with an inverter or an electronic expansion valve have no superheat to charge by: weigh the
 * charge. The manufacturer's charging instructions go before every figure.
 *
 * @param refrigerant - Such as `R407C`.
 * @param reading - Suction pressure, line temperature, and the atmosphere for a gauge pressure.
 * @returns The superheat, in the unit of the line temperature's differences.
 * @throws {@link OutOfRangeError} when the pressure has no saturation temperature in the range.
 * @throws {@link InvalidInputError} from JavaScript, for a gauge pressure without the atmosphere.
 *
 * Source: common practice, no source; the refrigerant's `sources` for the dew temperature.
 *
 * @example
 * ```ts
 * import { degF, psig, standardAtmosphere } from "hvac-install-math/quantity";
 * import { R410A, superheat } from "hvac-install-math/refrigerants";
 *
 * const reading = { pressure: psig(118), lineTemperature: degF(52), atmosphere: standardAtmosphere };
 * superheat(R410A, reading).toString(undefined, 1); // => 12.2 Δ°F
 * ```
 */
export function superheat(
  refrigerant: Refrigerant,
  reading: LineReading,
): Quantity<"temperatureDifference"> {
  return distance(refrigerant, "dew", reading, 1);
}

/**
 * Subcooling: how much colder the liquid line is than the bubble temperature at its pressure. Negative
 * means that the readings contradict each other or that vapor is in the line.
 *
 * @param refrigerant - Such as `R410A`.
 * @param reading - Liquid pressure, line temperature, and the atmosphere for a gauge pressure.
 * @returns The subcooling, in the unit of the line temperature's differences.
 * @throws {@link OutOfRangeError} when the pressure has no saturation temperature in the range.
 * @throws {@link InvalidInputError} from JavaScript, for a gauge pressure without the atmosphere.
 *
 * Source: common practice, no source; the refrigerant's `sources` for the bubble temperature.
 *
 * @example
 * ```ts
 * import { degF, psig, standardAtmosphere } from "hvac-install-math/quantity";
 * import { R410A, subcooling } from "hvac-install-math/refrigerants";
 *
 * const reading = { pressure: psig(355), lineTemperature: degF(95), atmosphere: standardAtmosphere };
 * subcooling(R410A, reading).toString(undefined, 1); // => 12.7 Δ°F
 * ```
 */
export function subcooling(
  refrigerant: Refrigerant,
  reading: LineReading,
): Quantity<"temperatureDifference"> {
  return distance(refrigerant, "bubble", reading, -1);
}

function distance(
  refrigerant: Refrigerant,
  side: Side,
  reading: LineReading,
  sign: 1 | -1,
): Quantity<"temperatureDifference"> {
  const { pressure, lineTemperature, atmosphere } = objectOf("reading", reading);
  const T = siOf("lineTemperature", lineTemperature, "temperature");
  const saturation = saturationTemperatureOf(refrigerant, side, pressure, atmosphere);
  return new Quantity(sign * (T - saturation), lineTemperature.unit.difference);
}
