// At which temperature is the saturation pressure this one? The inverse of a curve that is known point by point.
// Follows the secant method on ln p over 1/T, in which a saturation curve is nearly straight
// (Clausius-Clapeyron); common practice, no source. Does not cover mixtures, which solve for it directly.

/** The critical point of a fluid, K and Pa. */
interface CriticalPoint {
  readonly temperature: number;
  readonly pressure: number;
}

/** d ln p/d(1/T) in units of the critical temperature: 5.4 to 8 for all fluids; where a search starts. */
const steepness = -7;

/** The temperature (K) at p (Pa) to a few per cent. */
export function boilingGuess(p: number, { temperature, pressure }: CriticalPoint): number {
  return temperature / (1 + Math.log(p / pressure) / steepness);
}

/**
 * The temperature (K) from `min` to `max` whose saturation pressure is p (Pa), or undefined where none is.
 *
 * Each step stays between what is known to be too hot and what is known to be too cold. An end of the range
 * is looked at only when a step leads there, because it costs as much as any other point.
 */
export function boilingTemperature(
  pressureAt: (T: number) => number | undefined,
  p: number,
  { min, max }: { readonly min: number; readonly max: number },
  critical: CriticalPoint,
): number | undefined {
  const [hottest, coldest] = [1 / max, 1 / min];
  let [hot, cold] = [hottest, coldest];
  let slope = steepness * critical.temperature;
  let x = Math.min(Math.max(1 / boilingGuess(p, critical), hottest), coldest);
  let [lastX, lastMiss] = [Number.NaN, Number.NaN];
  for (let i = 0; i < 100; i++) {
    const found = pressureAt(1 / x);
    if (found === undefined) return undefined;
    const miss = Math.log(found / p); // falls as x rises
    if (Math.abs(miss) < 1e-13 || cold - hot < 1e-15 * cold) break;
    if (miss > 0 ? x === coldest : x === hottest) {
      return Math.abs(miss) < 1e-11 ? 1 / x : undefined; // the rounding of a point near the critical one
    }
    if (miss > 0) hot = x;
    else cold = x;
    if (i > 0) slope = (miss - lastMiss) / (x - lastX);
    const next = x - miss / slope;
    [lastX, lastMiss] = [x, miss];
    if (next > hot && next < cold) x = next;
    else if (next <= hot && hot === hottest) x = hottest;
    else if (next >= cold && cold === coldest) x = coldest;
    else x = (hot + cold) / 2;
    if (x === lastX) break;
  }
  return 1 / x;
}
