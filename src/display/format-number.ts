// How is a number written where the person lives? Digits and marks of a locale, never a thousands mark.
// Follows ECMA-402, Intl.NumberFormat; ISO 80000-1:2022, 7.3, has no comma or point between thousands.
// Does not cover units: format-quantity.ts adds them.

/** Rounds to a multiple of the step, halves away from zero; never −0. */
export function roundTo(value: number, step: number): number {
  const steps = Number((Math.abs(value) / step).toPrecision(12));
  if (!(steps < 1e12)) return value;
  return Math.sign(value) * Number((Math.round(steps) * step).toPrecision(12)) + 0;
}

/** The decimals that a step needs, at most nine: 2 for 0.25. */
export function decimalsOf(step: number): number {
  for (let decimals = 0; decimals < 9; decimals++) {
    const scaled = step * 10 ** decimals;
    if (Math.abs(scaled - Math.round(scaled)) < 1e-9 * scaled) return decimals;
  }
  return 9;
}

/** The number with exactly so many decimals, or (`trim`) without zeros at its end. */
export function fixed(locale: string, value: number, decimals: number, trim = false): string {
  return new Intl.NumberFormat(locale, {
    useGrouping: false,
    minimumFractionDigits: trim ? 0 : decimals,
    maximumFractionDigits: decimals,
  }).format(value + 0);
}

/** The number with so many significant digits and a power of ten. */
export function scientific(locale: string, value: number, digits: number): string {
  return new Intl.NumberFormat(locale, {
    notation: "scientific",
    maximumFractionDigits: digits - 1,
  }).format(value);
}
