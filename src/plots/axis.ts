// Where do the numbers of an axis stand? Round ticks and how they are written. Internal.
// Scales by d3-scale. Does not cover logarithmic axes: a straight rise has to look straight.
import { scaleLinear } from "d3-scale";

/** Where a value lies, the values at its ends, and those that get a number. */
export interface Axis {
  readonly at: (value: number) => number;
  readonly ends: readonly number[];
  readonly ticks: readonly (readonly [value: number, word: string])[];
}

// The build bundles d3; the comment stays in the built file and in that of an app.
/*!
 * Contains parts of d3-array, d3-color, d3-format, d3-interpolate, d3-scale and d3-shape,
 * Copyright 2010-2026 Mike Bostock, and of d3-path, Copyright 2015-2026 Mike Bostock.
 *
 * Permission to use, copy, modify, and/or distribute this software for any purpose
 * with or without fee is hereby granted, provided that the above copyright notice
 * and this permission notice appear in all copies.
 *
 * THE SOFTWARE IS PROVIDED "AS IS" AND THE AUTHOR DISCLAIMS ALL WARRANTIES WITH
 * REGARD TO THIS SOFTWARE INCLUDING ALL IMPLIED WARRANTIES OF MERCHANTABILITY AND
 * FITNESS. IN NO EVENT SHALL THE AUTHOR BE LIABLE FOR ANY SPECIAL, DIRECT,
 * INDIRECT, OR CONSEQUENTIAL DAMAGES OR ANY DAMAGES WHATSOEVER RESULTING FROM LOSS
 * OF USE, DATA OR PROFITS, WHETHER IN AN ACTION OF CONTRACT, NEGLIGENCE OR OTHER
 * TORTIOUS ACTION, ARISING OUT OF OR IN CONNECTION WITH THE USE OR PERFORMANCE OF
 * THIS SOFTWARE.
 */

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
  const scale = scaleLinear([low, high], [from, to]);
  if (round) scale.nice(count);
  const say = scale.tickFormat(count);
  return {
    at: (value) => scale(value),
    ends: scale.domain(),
    ticks: scale.ticks(count).map((value) => [value, say(value)]),
  };
}
