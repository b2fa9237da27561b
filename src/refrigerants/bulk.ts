// How are a million readings turned at once? The same curves from array to array, in plain SI numbers.
// Follows the same series as the typed functions; no quantity is made on the way.
// Does not cover gauge pressure: add the atmosphere first.

import { describe, oneOf } from "../quantity/check.ts";
import { InvalidInputError, OutOfRangeError } from "../quantity/errors.ts";
import type { InverseSeries, Refrigerant, SaturationSeries } from "./refrigerant.ts";
import { checked, packed, pressureAt, type Side, say, sumOf } from "./saturation/index.ts";

/**
 * Which curve of {@link saturationArray}, named by what goes in and what comes out. Temperatures in K,
 * pressures in Pa absolute, densities in kg/m³.
 */
export type SaturationCurve =
  | "bubblePressure"
  | "dewPressure"
  | "bubbleTemperature"
  | "dewTemperature"
  | "saturatedLiquidDensity"
  | "saturatedVaporDensity";

/** Which series a curve is, what its variable is made of, and whether it is a logarithm. */
interface Plan {
  readonly terms: readonly number[];
  readonly interval: readonly [from: number, to: number];
  /** Tr for temperatures, pr for pressures. */
  readonly scale: number;
  readonly inverse?: boolean;
  readonly logarithm?: boolean;
}

const plans: Record<SaturationCurve, (series: SaturationSeries) => Plan> = {
  bubblePressure: (series) => forward(series, series.bubble, true),
  dewPressure: (series) => forward(series, series.dew, true),
  bubbleTemperature: (series) => backward(series, series.bubbleInverse),
  dewTemperature: (series) => backward(series, series.dewInverse),
  saturatedLiquidDensity: (series) => forward(series, series.liquid, false),
  saturatedVaporDensity: (series) => forward(series, series.vapor, true),
};

function forward(series: SaturationSeries, terms: readonly number[], logarithm: boolean): Plan {
  return { terms, interval: series.x, scale: series.temperature, logarithm };
}

function backward(series: SaturationSeries, { s, terms }: InverseSeries): Plan {
  return { terms, interval: s, scale: series.pressure, inverse: true };
}

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
  const plan = plans[oneOf("curve", curve, Object.keys(plans) as SaturationCurve[])](saturation);
  const arrays = [values, target].every(
    (one) => Object.prototype.toString.call(one) === "[object Float64Array]",
  );
  if (!arrays || target.length !== values.length) {
    throw new InvalidInputError({
      argument: "values, target",
      value: arrays
        ? `lengths ${values.length}, ${target.length}`
        : `${describe(values)}, ${describe(target)}`,
      allowed: "two Float64Array of one length",
    });
  }
  let min = range.min.si;
  let max = range.max.si;
  if (plan.inverse) {
    const side: Side = curve === "bubbleTemperature" ? "bubble" : "dew";
    min = pressureAt(saturation, side, min);
    max = pressureAt(saturation, side, max);
  }
  const position = fill(plan, values, target, min * (1 - 1e-8), max * (1 + 1e-8));
  if (position === values.length) return target;
  const unit = plan.inverse ? "Pa" : "K";
  const value = values[position] as number;
  throw new OutOfRangeError({
    argument: `values[${position}]`,
    value: `${value} ${unit}`,
    allowed: `at least ${Number(min.toPrecision(6))} ${unit} and at most ${Number(max.toPrecision(6))} ${unit}`,
    ...(Number.isFinite(value) && {
      bound: value < min ? { value, is: "min", limit: min } : { value, is: "max", limit: max },
    }),
    hint: say("refrigerants.range-of", { refrigerant: { verbatim: designation } }),
  });
}

/** Evaluates the series for each value and returns how many lay within [low, high]: it stops at the first that does not. */
function fill(
  { terms, interval: [from, to], scale, inverse, logarithm }: Plan,
  values: Float64Array,
  target: Float64Array,
  low: number,
  high: number,
): number {
  const numbers = packed(terms);
  const slope = 2 / (to - from);
  const shift = -(from + to) / (to - from);
  const reciprocal = 1 / scale;
  const count = values.length;
  for (let i = 0; i < count; i++) {
    const value = values[i] as number;
    if (!(value >= low && value <= high)) return i;
    const x = Math.sqrt(inverse ? Math.log(scale / value) : 1 - value * reciprocal);
    const sum = sumOf(numbers, slope * x + shift);
    target[i] = logarithm ? Math.exp(sum) : sum;
  }
  return count;
}
