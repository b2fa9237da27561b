// How much does the temperature of a blend change while it boils? Glide and mean coil temperature.
// Follows the definition of glide in ANSI/ASHRAE Standard 34: dew less bubble temperature at one pressure.
// Does not cover the pressure drop in a coil, nor the flash gas at an evaporator's inlet (see `dewWeight`).
import { numberOf, objectOf } from "../quantity/check.ts";
import { Quantity } from "../quantity/quantity.ts";
import type { Refrigerant } from "./refrigerant.ts";
import {
  type ReadPressure,
  saturationTemperatureOf,
  temperatureUnitFor,
} from "./saturation/index.ts";

/**
 * A pressure in a coil; a gauge pressure needs the atmosphere, by its type.
 */
export type CoilReading =
  | {
      /** Absolute pressure. */
      readonly pressure: Quantity<"absolutePressure">;
      /** Not needed; ignored when the pressure is absolute. */
      readonly atmosphere?: Quantity<"absolutePressure"> | undefined;
    }
  | {
      /** Gauge pressure, or one of either kind. */
      readonly pressure: ReadPressure;
      /** The air around the gauge: `standardAtmosphere`, `atmosphereAtAltitude(…)` or a barometer. */
      readonly atmosphere: Quantity<"absolutePressure">;
    };

/**
 * The temperature glide at a pressure: dew less bubble temperature. Zero for a pure substance.
 *
 * @param refrigerant - Such as `R407C`.
 * @param reading - Pressure, and the atmosphere for a gauge pressure.
 * @returns The glide, in Δ°F for a pressure in psi and in Δ°C otherwise.
 * @throws {@link OutOfRangeError} when the pressure lies outside the saturation range.
 *
 * Source: ANSI/ASHRAE Standard 34, definition of temperature glide.
 *
 * @example
 * ```ts
 * import { psig, standardAtmosphere } from "hvac-install-math/quantity";
 * import { R407C, temperatureGlide } from "hvac-install-math/refrigerants";
 *
 * const reading = { pressure: psig(80), atmosphere: standardAtmosphere };
 * temperatureGlide(R407C, reading).toString(undefined, 1); // => 10.8 Δ°F
 * ```
 */
export function temperatureGlide(
  refrigerant: Refrigerant,
  reading: CoilReading,
): Quantity<"temperatureDifference"> {
  const { bubble, dew } = ends(refrigerant, reading);
  return new Quantity(dew - bubble, temperatureUnitFor(reading.pressure).difference);
}

/**
 * The mean temperature of a coil at a pressure, between bubble and dew: what to compare with the air or
 * the water on the other side. Never use it for superheat or subcooling.
 *
 * @param refrigerant - Such as `R407C`.
 * @param reading - Pressure, the atmosphere for a gauge pressure, and `dewWeight`: the share of the dew
 * temperature, 0 to 1, the arithmetic mean 0.5 when left out. An evaporator is fed with flash gas and
 * lies nearer to dew; 0.6 is used too.
 * @returns The mean temperature, in °F for a pressure in psi and in °C otherwise.
 * @throws {@link OutOfRangeError} when the pressure lies outside the saturation range.
 *
 * Source: common practice, no source.
 *
 * @example
 * ```ts
 * import { degF, psig, standardAtmosphere } from "hvac-install-math/quantity";
 * import { R407C, meanCoilTemperature } from "hvac-install-math/refrigerants";
 *
 * const reading = { pressure: psig(80), atmosphere: standardAtmosphere };
 * meanCoilTemperature(R407C, reading).toString(degF, 1); // => 45.3 °F
 * ```
 */
export function meanCoilTemperature(
  refrigerant: Refrigerant,
  reading: CoilReading & { readonly dewWeight?: number | undefined },
): Quantity<"temperature"> {
  const { bubble, dew } = ends(refrigerant, reading);
  const { dewWeight = 0.5 } = reading;
  const weight = numberOf("dewWeight", dewWeight, { min: 0, max: 1 });
  return new Quantity(bubble + weight * (dew - bubble), temperatureUnitFor(reading.pressure));
}

function ends(
  refrigerant: Refrigerant,
  reading: { pressure: ReadPressure; atmosphere?: Quantity<"absolutePressure"> | undefined },
): { bubble: number; dew: number } {
  const { pressure, atmosphere } = objectOf("reading", reading);
  return {
    bubble: saturationTemperatureOf(refrigerant, "bubble", pressure, atmosphere),
    dew: saturationTemperatureOf(refrigerant, "dew", pressure, atmosphere),
  };
}
