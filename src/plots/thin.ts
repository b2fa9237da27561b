// How does a log of 100 000 rows become a line of a few hundred points that hides no peak? Internal.
// Common practice of plotting, no source: the lowest and the highest point of equal stretches of time.
// Does not cover averaging, which would hide what the plot is looked at for.

/** Points that one line may have. Source: the library's own limit; a picture is about as many units wide. */
export const mostPoints = 600;

/**
 * Which rows to draw: the first, the last, and the lowest and highest of each of equal stretches, in
 * order. `x` has to rise.
 */
export function thinned(
  x: readonly number[],
  y: readonly number[],
  most: number = mostPoints,
): number[] {
  const last = x.length - 1;
  if (last < most) return x.map((_, i) => i);
  const [start, stretches] = [x[0] as number, Math.floor((most - 2) / 2)];
  const span = (x[last] as number) - start || 1;
  const kept = [0];
  let [stretch, low, high] = [0, 1, 1];
  const keep = () => {
    const [one, other] = low < high ? [low, high] : [high, low];
    if (one > 0 && one < last) kept.push(one);
    if (other !== one && other < last) kept.push(other);
  };
  for (let i = 1; i < last; i++) {
    const at = Math.min(stretches - 1, Math.floor((((x[i] as number) - start) / span) * stretches));
    if (at !== stretch) {
      if (i > 1) keep();
      stretch = at;
      low = i;
      high = i;
    } else if ((y[i] as number) < (y[low] as number)) low = i;
    else if ((y[i] as number) > (y[high] as number)) high = i;
  }
  keep();
  kept.push(last);
  return kept;
}

/** Rows in order of time; those that are in order already are not copied. */
export function inOrder<T>(
  rows: readonly T[],
  times: readonly number[],
): [readonly T[], readonly number[]] {
  if (times.every((at, i) => i === 0 || at >= (times[i - 1] as number))) return [rows, times];
  const order = times.map((_, i) => i).sort((a, b) => (times[a] as number) - (times[b] as number));
  return [order.map((i) => rows[i] as T), order.map((i) => times[i] as number)];
}
