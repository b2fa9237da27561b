// How much water is in the air? Humidity ratio, specific volume and enthalpy of moist air.
// Follows ASHRAE Handbook, Fundamentals (2021), chapter 1, equations 6, 20, 26, 30 and 33, from memory.
// Does not cover air below 0 °C or above 60 °C, nor the 0.5 % by which real moist air is wetter.

import { askOneOf, refuse, siOf } from "../quantity/check.ts";
import { OutOfRangeError } from "../quantity/errors.ts";
import { choose } from "../quantity/hints.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { fraction } from "../quantity/units/ratio.ts";

/**
 * The state of air: its dry-bulb temperature, 0 to 60 °C, and one measure of its moisture. Name one.
 *
 * Source: ASHRAE Handbook, Fundamentals (2021), chapter 1.
 */
export interface AirState {
  /** Temperature of the air, 0 to 60 °C. */
  readonly dryBulb: Quantity<"temperature">;
  /** Relative humidity, above 0 to 100 %. */
  readonly relativeHumidity?: Quantity<"ratio"> | undefined;
  /** Thermodynamic wet-bulb temperature, 0 °C to the dry bulb. */
  readonly wetBulb?: Quantity<"temperature"> | undefined;
  /** Dew point, 0 °C to the dry bulb. */
  readonly dewPoint?: Quantity<"temperature"> | undefined;
}

/** Saturation pressure over water in Pa at T in K, 0 to 200 °C: equation 6 (Hyland and Wexler). */
export function waterVaporPressure(T: number): number {
  return Math.exp(
    -5.8002206e3 / T +
      1.3914993 -
      4.8640239e-2 * T +
      4.1764768e-5 * T ** 2 -
      1.4452093e-8 * T ** 3 +
      6.5459673 * Math.log(T),
  );
}

/** Humidity ratio from the partial pressure of water vapor: equation 20. */
export const ratioOf = (pw: number, p: number): number => (0.621945 * pw) / (p - pw);

/** Moist air per kilogram of dry air: W in kg/kg, v in m³/kg, h in kJ/kg, t in °C. */
export interface MoistAir {
  readonly t: number;
  readonly W: number;
  readonly v: number;
  readonly h: number;
}

export function atmosphereOf(atmosphere: Quantity<"absolutePressure">): number {
  const limits = { min: 30e3, max: 120e3 };
  return siOf("atmosphere", atmosphere, "absolutePressure", limits, OutOfRangeError);
}

export function moistAir(argument: string, air: AirState, p: number): MoistAir {
  const { relativeHumidity, wetBulb, dewPoint } = air ?? {};
  const range = { min: 273.15, max: 333.15 };
  const T = siOf(`${argument}.dryBulb`, air?.dryBulb, "temperature", range, OutOfRangeError);
  const given = [relativeHumidity, wetBulb, dewPoint].filter((x) => x !== undefined);
  if (given.length !== 1) {
    askOneOf(argument, `${given.length} of them`, ["relativeHumidity", "wetBulb", "dewPoint"]);
  }
  const wetLimits = { min: 273.15, max: T };
  const t = T - 273.15;
  let W: number;
  if (relativeHumidity !== undefined) {
    const limits = { above: 0, max: 1 };
    const phi = siOf(`${argument}.relativeHumidity`, relativeHumidity, "ratio", limits);
    W = ratioOf(phi * waterVaporPressure(T), p);
  } else if (wetBulb !== undefined) {
    const Tw = siOf(`${argument}.wetBulb`, wetBulb, "temperature", wetLimits);
    const tw = Tw - 273.15;
    const saturated = ratioOf(waterVaporPressure(Tw), p);
    // Equation 33, above freezing.
    W = ((2501 - 2.326 * tw) * saturated - 1.006 * (t - tw)) / (2501 + 1.86 * t - 4.186 * tw);
  } else {
    const Td = siOf(
      `${argument}.dewPoint`,
      dewPoint as Quantity<"temperature">,
      "temperature",
      wetLimits,
    );
    W = ratioOf(waterVaporPressure(Td), p);
  }
  if (!(W > 0)) {
    const matching = choose(["dryBulb", "wetBulb"], "matching");
    refuse(`${argument}.wetBulb`, wetBulb, `possible at ${air.dryBulb}`, matching);
  }
  return {
    t,
    W,
    v: (287.042 * T * (1 + 1.607858 * W)) / p, // equation 26
    h: 1.006 * t + W * (2501 + 1.86 * t), // equation 30
  };
}

/**
 * The humidity ratio of air: kilograms of water vapor per kilogram of dry air.
 *
 * Ideal-gas relations: real moist air holds about 0.5 % more.
 *
 * @param air - Dry bulb, 0 to 60 °C, and one of relative humidity, wet bulb, dew point.
 * @param atmosphere - `absolutePressure` on site, 30 to 120 kPa; thin air holds more per kilogram.
 * @returns The `ratio`, as a fraction.
 * @throws {@link OutOfRangeError} when the dry bulb or the atmosphere is outside its range.
 * @throws {@link InvalidInputError} when no or more than one measure of moisture is given, or one that
 * air cannot have.
 *
 * Source: ASHRAE Handbook, Fundamentals (2021), chapter 1, equations 6, 20, 33, from memory.
 *
 * @example
 * ```ts
 * import { humidityRatio } from "hvac-install-math/condensate";
 * import { degC, percent, standardAtmosphere } from "hvac-install-math/quantity";
 *
 * const air = { dryBulb: degC(30), relativeHumidity: percent(50) };
 * humidityRatio(air, standardAtmosphere).si.toFixed(5); // => 0.01331
 * ```
 */
export function humidityRatio(
  air: AirState,
  atmosphere: Quantity<"absolutePressure">,
): Quantity<"ratio"> {
  return fraction(moistAir("air", air, atmosphereOf(atmosphere)).W);
}
