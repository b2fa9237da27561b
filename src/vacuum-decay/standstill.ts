// Did the rise stop at once, as where a valve before the gauge is shut? Leaks, water, walls and equalization only slow down.
// Follows Widder (1941), chapter IV, from memory: sums of decays are log-convex, so that of the rises in three equal spans
// the second's square is at most the product of the others.
// Does not cover a rise that stops before the second reading, nor one as small as the scatter.

/** Lengths of the spans, as parts of the stretch. */
const parts = [4, 6, 9, 13, 20] as const;

/** Part of what should have risen that may rise after a stop; water that dries up stops more softly. Common practice, no source. */
const leftOver = 0.25;

/** A stop: when, s, and by how much less rose in a span than any sum of decays would have, Pa. */
export interface Standstill {
  readonly at: number;
  readonly missing: number;
}

/** The stop of which most is missing, of more than `least`; the points are times, which rise, and pressures. */
export function standstill(
  t: readonly number[],
  p: readonly number[],
  least: number,
): Standstill | undefined {
  const [first, last] = [t[0] as number, t.at(-1) as number];
  const smooth = p.map((value, i) => middleOf(p[i - 1] ?? value, value, p[i + 1] ?? value));
  const end = smooth.at(-1) as number;
  let found: Standstill | undefined;
  for (const part of parts) {
    const span = (last - first) / part;
    for (let from = first; from + 3 * span <= last; from += span / 2) {
      const place = (spans: number) => placeOf(t, smooth, from + spans * span);
      const [a, b, c, d] = [place(0), place(1), place(2), place(3)];
      // within a gap the line between its ends lies below any sum of decays
      if (Math.max(a.apart, b.apart, c.apart, d.apart) > span / 2) continue;
      const [before, second, third] = [b.value - a.value, c.value - b.value, d.value - c.value];
      if (before <= 0 || second <= 0) continue;
      const at = from + 2 * span;
      const onward = (end - c.value) * (span / (last - at));
      // A gauge that lags shows the first of them too small.
      const expected = second * Math.min(1, second / before);
      const missing = expected - Math.max(third, onward);
      if (missing > Math.max(least, (1 - leftOver) * expected, found?.missing ?? 0))
        found = { at, missing };
    }
  }
  return found;
}

const middleOf = (a: number, b: number, c: number): number =>
  Math.max(Math.min(a, b), Math.min(Math.max(a, b), c));

interface Place {
  /** On the line between the points on either side. */
  readonly value: number;
  /** How far apart these lie, s. */
  readonly apart: number;
}

function placeOf(t: readonly number[], p: readonly number[], time: number): Place {
  let [low, high] = [0, t.length - 1];
  while (high - low > 1) {
    const mid = (low + high) >> 1;
    if ((t[mid] as number) <= time) low = mid;
    else high = mid;
  }
  const apart = (t[high] as number) - (t[low] as number);
  const share = (time - (t[low] as number)) / apart;
  return { value: (p[low] as number) + share * ((p[high] as number) - (p[low] as number)), apart };
}
