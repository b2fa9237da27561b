// Which number was meant? Binary arithmetic leaves noise behind the digits that anybody entered or can read.
// Common practice, no source, for twelve digits. Internal.
// Does not cover how many digits a person is shown: see display.

/**
 * Rounds off the noise of binary arithmetic: twelve significant digits of the larger of the value and
 * the scale's offset, so that 32 °F does not print as 32.00000000000003.
 *
 * Multiplying by a power of ten, rounding and dividing gives the same double as the text of
 * `toFixed(digits)` read back, and ten times sooner, as long as 10^digits and the rounded integer are exact
 * and the product is far from a tie; the text decides the rest.
 */
export function twelveDigits(value: number, offset = 0): number {
  const size = Math.abs(value);
  const digits = 11 - Math.floor(Math.log10(Math.max(size, offset)));
  const power = powers[digits] as number;
  const scaled = value * power;
  const whole = Math.round(scaled);
  if (Math.abs(scaled - whole) < 0.49) return whole / power + 0; // no −0
  return Number(size < offset ? value.toFixed(digits) : value.toPrecision(12)) + 0;
}

/** The powers of ten that a double holds exactly. */
const powers: readonly number[] = /* @__PURE__ */ Array.from({ length: 23 }, (_, n) =>
  Number(`1e${n}`),
);
