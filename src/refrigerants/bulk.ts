// How are a million readings turned at once? The same curves from array to array, in plain SI numbers.
// Follows the same series as the typed functions; no quantity is made on the way.
// Does not cover gauge pressure: add the atmosphere first.
import { describe } from "../quantity/check.ts";
import { InvalidInputError, OutOfRangeError } from "../quantity/errors.ts";
import { checked } from "./arguments.ts";
import type { Refrigerant, SaturationSeries } from "./refrigerant.ts";
import {
  liquidDensityAt,
  pressureAt,
  type Side,
  temperatureAt,
  vaporDensityAt,
} from "./saturation-curve.ts";

/**
 * Which curve of {@link saturationArray}, named by what goes in and what comes out. Temperatures in K,
 * pressures in Pa absolute, densities in kg/m³.
 *
 * Source: none; the library's own names.
 */
export type SaturationCurve =
  | "bubblePressure"
  | "dewPressure"
  | "bubbleTemperature"
  | "dewTemperature"
  | "saturatedLiquidDensity"
  | "saturatedVaporDensity";

type Plain = (series: SaturationSeries, value: number) => number;

const curves: Record<SaturationCurve, Plain> = {
  bubblePressure: (series, T) => pressureAt(series, "bubble", T),
  dewPressure: (series, T) => pressureAt(series, "dew", T),
  bubbleTemperature: (series, p) => temperatureAt(series, "bubble", p),
  dewTemperature: (series, p) => temperatureAt(series, "dew", p),
  saturatedLiquidDensity: liquidDensityAt,
  saturatedVaporDensity: vaporDensityAt,
};

/**
 * A saturation curve for a whole array, for telemetry: plain SI numbers in and out, nothing allocated but
 * the answer.
 *
 * @param refrigerant - Such as `R410A`.
 * @param curve - Which function, such as `"dewTemperature"`.
 * @param values - Temperatures in K, or absolute pressures in Pa for the two inverse curves.
 * @param target - Where to write; a new array when left out. May be `values` itself.
 * @returns The array of answers: Pa absolute, K or kg/m³.
 * @throws {@link OutOfRangeError} when a value lies outside the range or is not finite; the message names
 * its position, and `target` may then be filled up to it.
 * @throws {@link InvalidInputError} when the lengths differ or an argument is of another type.
 *
 * Source: as the typed functions.
 *
 * @example
 * ```ts
 * import { R32, saturationArray } from "hvac-install-math/refrigerants";
 *
 * const kelvin = Float64Array.of(273.15, 323.15);
 * const pascal = saturationArray(R32, "bubblePressure", kelvin);
 * Array.from(pascal, (p) => (p / 1000).toFixed(1)).join(" "); // => 813.1 3141.2
 * ```
 */
export function saturationArray(
  refrigerant: Refrigerant,
  curve: SaturationCurve,
  values: Float64Array,
  target: Float64Array = new Float64Array(values?.length ?? 0),
): Float64Array {
  const { saturation, range, designation } = checked(refrigerant);
  const of = Object.hasOwn(curves, curve) ? curves[curve] : undefined;
  if (of === undefined || !ArrayBuffer.isView(values) || target.length !== values.length) {
    throw new InvalidInputError({
      argument: of === undefined ? "curve" : "values, target",
      value: of === undefined ? describe(curve) : `lengths ${values?.length}, ${target?.length}`,
      allowed: of === undefined ? Object.keys(curves).join(", ") : "two Float64Array of one length",
    });
  }
  let min = range.min.si;
  let max = range.max.si;
  if (curve === "bubbleTemperature" || curve === "dewTemperature") {
    const side: Side = curve === "bubbleTemperature" ? "bubble" : "dew";
    min = pressureAt(saturation, side, min);
    max = pressureAt(saturation, side, max);
  }
  const [low, high] = [min * (1 - 1e-8), max * (1 + 1e-8)];
  for (let i = 0; i < values.length; i++) {
    const value = values[i] as number;
    if (!(value >= low && value <= high)) {
      const unit = curve.endsWith("Temperature") ? "Pa" : "K";
      throw new OutOfRangeError({
        argument: `values[${i}]`,
        value: `${value} ${unit}`,
        allowed: `at least ${Number(min.toPrecision(6))} ${unit} and at most ${Number(max.toPrecision(6))} ${unit}`,
        hint: `This is the range of ${designation}`,
      });
    }
    target[i] = of(saturation, value);
  }
  return target;
}
