// How are feet and inches, pounds and ounces, hours and minutes written? Rounded first, then split; a part of 0 is left out.
// Follows the trade's notation, common practice, no source.
// Does not cover single units: format-quantity.ts writes those.
import { decimalsOf, type Numbers, roundTo } from "./format-number.ts";

/** A fraction of an inch in lowest terms with the whole before it, as in 1-1/8; `n` of `denominator`. */
function mixed({ fixed }: Numbers, sign: number, n: number, denominator: number): string {
  const whole = Math.floor(n / denominator);
  let [top, bottom] = [n % denominator, denominator];
  while (top > 0 && top % 2 === 0) [top, bottom] = [top / 2, bottom / 2];
  if (top === 0) return fixed(sign * whole, 0);
  const part = `/${fixed(bottom, 0)}`;
  if (whole === 0) return `${fixed(sign * top, 0)}${part}`;
  return `${fixed(sign * whole, 0)}-${fixed(top, 0)}${part}`;
}

/** Inches as feet, inches and a fraction: `8 ft 3-7/16 in`, `3/8 in`. `denominator` is a power of two. */
export function feetAndInches(numbers: Numbers, inches: number, denominator: number): string {
  const n = roundTo(Math.abs(inches) * denominator, 1);
  const sign = Math.sign(inches);
  const feet = Math.floor(n / (12 * denominator));
  const inInches = (signed: number, part: number) =>
    numbers.withUnit(mixed(numbers, signed, part, denominator), part / denominator, "in");
  if (feet === 0) return inInches(sign, n);
  const rest = n - feet * 12 * denominator;
  const inFeet = numbers.withUnit(numbers.fixed(sign * feet, 0), feet, "ft");
  return rest === 0 ? inFeet : `${inFeet} ${inInches(1, rest)}`;
}

/** Ounces as pounds and ounces, to a step in ounces: `3 lb 4.5 oz`; undefined below a pound. */
export function poundsAndOunces(
  { fixed, withUnit }: Numbers,
  ounces: number,
  step: number,
): string | undefined {
  const total = Math.abs(roundTo(ounces, step));
  const pounds = Math.floor(total / 16);
  if (pounds === 0) return undefined;
  const rest = roundTo(total - 16 * pounds, step / 1000);
  const inPounds = withUnit(fixed(Math.sign(ounces) * pounds, 0), pounds, "lb");
  if (rest === 0) return inPounds;
  return `${inPounds} ${withUnit(fixed(rest, decimalsOf(step), true), rest, "oz")}`;
}

/** Seconds as hours, minutes and seconds, to a step in seconds. */
export function hoursAndMinutes({ fixed }: Numbers, seconds: number, step: number): string {
  const total = Math.abs(roundTo(seconds, step));
  const hours = Math.floor(total / 3600);
  const minutes = Math.floor((total - 3600 * hours) / 60);
  const rest = roundTo(total - 3600 * hours - 60 * minutes, step / 1000);
  const decimals = decimalsOf(step);
  const parts: [number, string, number][] = [
    [hours, "h", 0],
    [minutes, "min", 0],
    [rest, "s", decimals],
  ];
  const shown = parts.filter(([value]) => value > 0);
  if (shown.length === 0) return `${fixed(0, 0)} s`;
  return shown
    .map(([value, symbol, places], i) => {
      const signed = i === 0 ? Math.sign(seconds) * value : value;
      return `${fixed(signed, places, true)} ${symbol}`;
    })
    .join(" ");
}
