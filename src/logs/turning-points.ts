// Where does a course turn? Its highs and lows that stand out from the noise by a stated amount.
// Follows the usual zigzag rule: a turn counts once the course went back by the threshold;
// common practice, no source. Does not cover smoothing: a single spike beyond the threshold is a turn.

/** A turn of the course: its index, and whether it is a high. */
export interface TurningPoint {
  readonly at: number;
  readonly isHigh: boolean;
}

/**
 * The turning points of a course, its first and its last extreme among them, in order. `apart(low, high)` says
 * whether two values are further apart than the noise.
 */
export function turningPoints(
  values: readonly number[],
  apart: (low: number, high: number) => boolean,
): TurningPoint[] {
  const found: TurningPoint[] = [];
  let low = 0;
  let high = 0;
  let rising: boolean | undefined;
  values.forEach((value, i) => {
    // Equal values move a low on and leave a high where it is: the valve is shut at the last of the lowest rows.
    if (value <= (values[low] as number)) low = i;
    if (value > (values[high] as number)) high = i;
    if (rising !== false && apart(value, values[high] as number)) {
      found.push({ at: high, isHigh: true });
      [rising, low] = [false, i];
    } else if (rising !== true && apart(values[low] as number, value)) {
      found.push({ at: low, isHigh: false });
      [rising, high] = [true, i];
    }
  });
  if (rising !== undefined) found.push({ at: rising ? high : low, isHigh: rising });
  return found;
}
