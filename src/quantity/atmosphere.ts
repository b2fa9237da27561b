// What does a gauge read here? Gauge and absolute pressure, and the atmosphere at altitude.
// Follows the U.S. Standard Atmosphere, 1976 (NOAA-S/T 76-1562), equation 33a with its table 4.
// Does not cover the weather: a front moves the station pressure by about ±3 kPa.

import { siOf } from "./check.ts";
import { OutOfRangeError } from "./errors.ts";
import { quantityHint } from "./hints.ts";
import { Quantity } from "./quantity.ts";
import { kPaa, kPag, psi, psia, psig } from "./units/pressure.ts";

/**
 * The standard atmosphere at sea level, exactly 101.325 kPa. Name it where you mean it: no function of
 * the library assumes an atmosphere.
 *
 * Source: U.S. Standard Atmosphere, 1976, table 2; ISO 2533:1975.
 *
 * @example
 * ```ts
 * import { psia, standardAtmosphere } from "hvac-install-math/quantity";
 *
 * standardAtmosphere.toString(psia, 3); // => 14.696 psia
 * ```
 */
export const standardAtmosphere: Quantity<"absolutePressure"> = /* @__PURE__ */ kPaa(101.325);

/**
 * The pressure of the standard atmosphere at an altitude: what the barometer shows there on an average
 * day. The weather moves it by about ±3 kPa (±0.4 psi); weather services publish the pressure reduced
 * to sea level, which is not what a gauge on site is referenced to.
 *
 * The altitude is taken as geopotential meters. A map's elevation differs from that by 0.03 % at 2 km,
 * which changes the pressure by less than 0.01 %.
 *
 * @param altitude - `length` above sea level, −5000 m to 11 000 m (−16 404 ft to 36 089 ft).
 * @returns The `absolutePressure` of the atmosphere, in kPaa.
 * @throws {@link OutOfRangeError} outside the first layer of the standard atmosphere.
 * @throws {@link InvalidInputError} when the altitude is not a `length`.
 *
 * Source: U.S. Standard Atmosphere, 1976, equation 33a, first layer of table 4.
 *
 * @example
 * ```ts
 * import { atmosphereAtAltitude, ft, psia } from "hvac-install-math/quantity";
 *
 * atmosphereAtAltitude(ft(5000)).toString(psia, 2); // => 12.23 psia
 * ```
 */
export function atmosphereAtAltitude(altitude: Quantity<"length">): Quantity<"absolutePressure"> {
  const H = siOf("altitude", altitude, "length", { min: -5000, max: 11_000 }, OutOfRangeError);
  const Tb = 288.15; // K, table 2 sea-level temperature
  const L = -0.0065; // K/m, table 4, layer 0
  const exponent = (9.80665 * 0.0289644) / (8.31432 * L); // g0' M0 / (R* L), equation 33a
  return kPaa(101.325 * (Tb / (Tb + L * H)) ** exponent);
}

/**
 * The absolute pressure behind a gauge reading.
 *
 * @param pressure - `gaugePressure`; not below a perfect vacuum.
 * @param atmosphere - `absolutePressure` of the air around the gauge, above 0.
 * @returns The `absolutePressure`, in psia for a reading in psig and in kPaa otherwise.
 * @throws {@link InvalidInputError} when the reading lies below a perfect vacuum at this atmosphere, or
 * an argument is of another kind.
 *
 * Source: ISO 80000-4:2019, 4-14.2: gauge pressure is absolute pressure less ambient pressure.
 *
 * @example
 * ```ts
 * import { atmosphereAtAltitude, ft, psig, toAbsolute } from "hvac-install-math/quantity";
 *
 * toAbsolute(psig(118), atmosphereAtAltitude(ft(5000))).toString(undefined, 1); // => 130.2 psia
 * ```
 */
export function toAbsolute(
  pressure: Quantity<"gaugePressure">,
  atmosphere: Quantity<"absolutePressure">,
): Quantity<"absolutePressure"> {
  const ambient = siOf("atmosphere", atmosphere, "absolutePressure", { above: 0 });
  const gauge = siOf("pressure", pressure, "gaugePressure", {
    min: -ambient,
    hint: quantityHint("quantity.below-vacuum"),
  });
  return new Quantity(gauge + ambient, isPsi(pressure) ? psia : kPaa);
}

/**
 * What a gauge shows for an absolute pressure.
 *
 * @param pressure - `absolutePressure`.
 * @param atmosphere - `absolutePressure` of the air around the gauge, above 0.
 * @returns The `gaugePressure`, in psig for a pressure in psia and in kPag otherwise.
 * @throws {@link InvalidInputError} when an argument is of another kind.
 *
 * Source: ISO 80000-4:2019, 4-14.2: gauge pressure is absolute pressure less ambient pressure.
 *
 * @example
 * ```ts
 * import { psia, standardAtmosphere, toGauge } from "hvac-install-math/quantity";
 *
 * toGauge(psia(132.7), standardAtmosphere).toString(undefined, 1); // => 118.0 psig
 * ```
 */
export function toGauge(
  pressure: Quantity<"absolutePressure">,
  atmosphere: Quantity<"absolutePressure">,
): Quantity<"gaugePressure"> {
  const ambient = siOf("atmosphere", atmosphere, "absolutePressure", { above: 0 });
  const absolute = siOf("pressure", pressure, "absolutePressure");
  return new Quantity(absolute - ambient, isPsi(pressure) ? psig : kPag);
}

function isPsi({ unit }: Quantity<"gaugePressure"> | Quantity<"absolutePressure">): boolean {
  return unit.difference.symbol === psi.symbol;
}
