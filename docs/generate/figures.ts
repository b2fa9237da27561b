// How is a figure printed so that two of them can be compared by eye?
// Digits by the tolerance: one more than what may be off. No source; the site's own manner.
// Does not cover units: they stand beside.

/** A number to so many significant digits at most, without trailing zeros; words as they are. */
export function figure(value: number | string | boolean, digits = 12): string {
  if (typeof value !== "number") return String(value);
  if (value === 0 || !Number.isFinite(value)) return String(value);
  const rounded = Number(value.toPrecision(digits));
  const size = Math.abs(rounded);
  if (size >= 1e-4 && size < 1e9) return String(rounded);
  const [mantissa = "", exponent = ""] = rounded.toExponential().split("e");
  return `${mantissa}e${Number(exponent)}`;
}

/** A number to one digit more than what it may be off; all of it where it has to be exact. */
export function sameDigits(value: number | string | boolean, mayBeOff: number): string {
  if (typeof value !== "number" || mayBeOff <= 0 || value === 0) return figure(value);
  const above = Math.floor(Math.log10(Math.abs(value))) - Math.floor(Math.log10(mayBeOff));
  return figure(value, Math.min(Math.max(above + 3, 2), 15));
}

/** The relative difference of two figures. */
export function relative(ours: number, theirs: number): number {
  return theirs === 0 ? Math.abs(ours) : Math.abs(ours / theirs - 1);
}
