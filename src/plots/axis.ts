// Where do the numbers of an axis stand? Round ticks by d3-array, and how they are written. Internal.
// Follows the common 1-2-5 rule of axes. Does not cover logarithmic axes: a straight rise has to look straight.
import { nice, tickStep, ticks } from "d3-array";

/** Where a value lies, the values at its ends, and those that get a number. */
export interface Axis {
  readonly at: (value: number) => number;
  readonly ends: readonly [low: number, high: number];
  readonly ticks: readonly (readonly [value: number, word: string])[];
}

/** What an axis spans, and where. */
export interface Span {
  /** The values that it has to hold. */
  readonly values: readonly number[];
  /** The coordinates of its ends. */
  readonly between: readonly [from: number, to: number];
  /** About how many ticks it gets. */
  readonly count: number;
  /** Whether it begins and ends at a tick. */
  readonly isRound: boolean;
}

/** The axis of a span, its numbers as the reader writes them. */
export function axisOf(
  { values, between: [from, to], count, isRound }: Span,
  number: (value: number, decimals: number) => string,
): Axis {
  let [low, high] = [Infinity, -Infinity];
  for (const value of values) {
    if (value < low) low = value;
    if (value > high) high = value;
  }
  // Nothing varies: a little room above and below, so that the line stands in the middle.
  const least = Math.max(Math.abs(low), Math.abs(high)) * 1e-6 || 1;
  if (high - low < least) [low, high] = [low - least, high + least];
  if (isRound) [low, high] = nice(low, high, count);
  const decimals = Math.max(0, -Math.floor(Math.log10(tickStep(low, high, count)) + 1e-9));
  return {
    at: (value) => from + ((value - low) / (high - low)) * (to - from),
    ends: [low, high],
    ticks: ticks(low, high, count).map((value) => [value, number(value, decimals)]),
  };
}
