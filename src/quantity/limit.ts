// Is a value its limit? The one allowance of the library for the noise of binary arithmetic. Internal.
// Follows from IEEE 754: a conversion or a short formula moves a value by some 1e-16 of it, or of the offset or
// the terms that it came from. Does not cover the step or error of an instrument: that is uncertainty.

/**
 * What arithmetic can move a value near a limit by: 1e-11 of the larger of the two, because a quantity
 * is read in another unit to twelve digits, and 1e-10 of the unit, for differences of large figures (0.3 − 0.2) and
 * for limits of 0. No instrument shows a step so small.
 *
 * @param scale - Size of the unit in SI; 0 where the two are of the size of what they came from.
 */
export function noiseAt(value: number, limit: number, scale = 0): number {
  return 1e-11 * Math.max(Math.abs(value), Math.abs(limit)) + 1e-10 * scale;
}

/** Whether a value is at most its limit, both in SI. */
export function isAtMost(value: number, limit: number, scale = 0): boolean {
  return limit === Infinity || value <= limit + noiseAt(value, limit, scale);
}

/** Whether a value is at least its limit, both in SI. */
export function isAtLeast(value: number, limit: number, scale = 0): boolean {
  return limit === -Infinity || value >= limit - noiseAt(value, limit, scale);
}

/** Whether two values are the same, both in SI. */
export function isEqual(a: number, b: number, scale = 0): boolean {
  return Math.abs(a - b) <= noiseAt(a, b, scale);
}

/** How many steps it takes to get as far as a size; a multiple of the step needs no further one. */
export function stepsUpTo(size: number, step: number): number {
  const near = Math.round(size / step);
  return isAtMost(size, near * step) ? near : Math.ceil(size / step);
}

/** How many whole steps a size holds. */
export function stepsWithin(size: number, step: number): number {
  const near = Math.round(size / step);
  return isAtMost(near * step, size) ? near : Math.floor(size / step);
}
