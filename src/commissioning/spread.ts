// From the least to the largest: how far apart do values lie?
// Follows common practice, no source. Does not cover order: a log may come in any.

/** Largest less least, of any number of values; 0 of none. */
export function spread(values: readonly number[]): number {
  let [least, largest] = [Infinity, -Infinity];
  for (const value of values) {
    least = Math.min(least, value);
    largest = Math.max(largest, value);
  }
  return Math.max(0, largest - least);
}
