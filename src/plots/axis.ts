// Where do the numbers of an axis stand? Round ticks by d3-array, and how they are written. Internal.
// Follows the common 1-2-5 rule of axes. Does not cover logarithmic axes: a straight rise has to look straight.
import { nice, tickStep, ticks } from "d3-array";

/** Where a value lies, the values at its ends, and those that get a number. */
export interface Axis {
  readonly at: (value: number) => number;
  readonly ends: readonly [low: number, high: number];
  readonly ticks: readonly (readonly [value: number, word: string])[];
}

/** A number of an axis: thousands apart, a real minus sign. */
function wordOf(value: number, decimals: number): string {
  const [whole = "", part] = Math.abs(value).toFixed(decimals).split(".");
  const grouped = whole.replace(/\B(?=(\d{3})+$)/g, ",");
  return `${value < 0 ? "−" : ""}${grouped}${part === undefined ? "" : `.${part}`}`;
}

/** An axis over the values, from one coordinate to another; `round` lets it begin and end at a tick. */
export function axisOf(
  values: readonly number[],
  [from, to]: readonly [number, number],
  count: number,
  round = true,
): Axis {
  let [low, high] = [Infinity, -Infinity];
  for (const value of values) {
    if (value < low) low = value;
    if (value > high) high = value;
  }
  // Nothing varies: a little room above and below, so that the line stands in the middle.
  const least = Math.max(Math.abs(low), Math.abs(high)) * 1e-6 || 1;
  if (high - low < least) [low, high] = [low - least, high + least];
  if (round) [low, high] = nice(low, high, count);
  const decimals = Math.max(0, -Math.floor(Math.log10(tickStep(low, high, count)) + 1e-9));
  return {
    at: (value) => from + ((value - low) / (high - low)) * (to - from),
    ends: [low, high],
    ticks: ticks(low, high, count).map((value) => [value, wordOf(value, decimals)]),
  };
}
