// What does a micron reading mean for water? The saturation pressure of ice and liquid water, and back.
// Follows IAPWS R14-08(2011), eq. 6 (ice) and Wagner & Pruss (2002), eq. 2.5 (liquid), both from memory,
// reproduced against their check values. Does not cover supercooled water, salt or oil on the water.
import { siOf } from "../quantity/check.ts";
import { OutOfRangeError } from "../quantity/errors.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { micron, pascalAbsolute } from "../quantity/units/pressure.ts";
import { degC, kelvin } from "../quantity/units/temperature.ts";

const Tt = 273.16; // K, triple point: SI Brochure, 8th ed.
const pt = 611.657; // Pa, triple point: IAPWS R14-08, eq. 6
const Tc = 647.096; // K and
const pc = 22.064e6; // Pa, critical point: Wagner & Pruss (2002), table 6.1
const coldest = 173.15; // K, below every wet spot that a vacuum gauge can tell of

/** Saturation pressure in Pa over ice below the triple point, over liquid water above it. */
export function saturationPa(T: number): number {
  if (T < Tt) {
    const theta = T / Tt;
    const sum = // IAPWS R14-08, eq. 6 and table 3
      -0.212144006e2 * theta ** 0.333333333e-2 +
      0.273203819e2 * theta ** 0.120666667e1 -
      0.61059813e1 * theta ** 0.170333333e1;
    return pt * Math.exp(sum / theta);
  }
  const v = 1 - T / Tc;
  const sum = // Wagner & Pruss (2002), eq. 2.5
    -7.85951783 * v +
    1.84408259 * v ** 1.5 -
    11.7866497 * v ** 3 +
    22.6807411 * v ** 3.5 -
    15.9618719 * v ** 4 +
    1.80122502 * v ** 7.5;
  return pc * Math.exp((Tc / T) * sum);
}

/** The temperature at which water or ice has this saturation pressure, by halving; 173.15 K at least. */
export function saturationKelvin(p: number): number {
  let [low, high] = [coldest, Tc];
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2;
    if (saturationPa(middle) < p) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/**
 * The pressure at which water is in balance with its vapor: as long as water or ice of this
 * temperature is left in a closed system, the vacuum rises towards this pressure and stays there.
 *
 * Over ice below 273.16 K, over liquid water above. A cold line hides water: ice at −30 °C stops at
 * 285 micron, below every usual target, and comes back when the line warms up.
 *
 * @param temperature - `temperature` of the water, −100 °C to 373.9 °C.
 * @returns The `absolutePressure`, in micron.
 * @throws {@link OutOfRangeError} outside that range.
 *
 * Source: IAPWS R14-08(2011), eq. 6 (ice); Wagner & Pruss (2002), eq. 2.5 (liquid). From memory; check
 * values 8.947 35 Pa at 230 K, 611.657 Pa at 273.16 K and 3536.589 Pa at 300 K are reproduced.
 *
 * @example
 * ```ts
 * import { degC, micron } from "hvac-install-math/quantity";
 * import { waterSaturationPressure } from "hvac-install-math/vacuum-decay";
 *
 * waterSaturationPressure(degC(20)).toString(micron, 0); // => 17545 micron
 * ```
 */
export function waterSaturationPressure(
  temperature: Quantity<"temperature">,
): Quantity<"absolutePressure"> {
  const T = siOf(
    "temperature",
    temperature,
    "temperature",
    { min: coldest, max: Tc },
    OutOfRangeError,
  );
  return pascalAbsolute(saturationPa(T)).as(micron);
}

/**
 * The temperature at which water boils, or ice sublimes, at a vacuum reading: wet spots warmer than this
 * cannot stay wet at that pressure, given time and heat; colder ones can.
 *
 * Trade tables that pair 500 micron with −50 °F are wrong: −50 °F belongs to 50 micron, 500 micron to
 * −12 °F.
 *
 * @param pressure - `absolutePressure`, 0.0014 Pa (0.011 micron) to the critical pressure.
 * @returns The `temperature`, in °C: a frost point below 0.01 °C, a boiling point above.
 * @throws {@link OutOfRangeError} outside that range.
 *
 * Source: the inverse of {@link waterSaturationPressure}.
 *
 * @example
 * ```ts
 * import { degF, micron } from "hvac-install-math/quantity";
 * import { waterSaturationTemperature } from "hvac-install-math/vacuum-decay";
 *
 * waterSaturationTemperature(micron(500)).toString(degF, 1); // => -12.1 °F
 * ```
 */
export function waterSaturationTemperature(
  pressure: Quantity<"absolutePressure">,
): Quantity<"temperature"> {
  const limits = { min: saturationPa(coldest), max: pc };
  const p = siOf("pressure", pressure, "absolutePressure", limits, OutOfRangeError);
  return kelvin(saturationKelvin(p)).as(degC);
}
