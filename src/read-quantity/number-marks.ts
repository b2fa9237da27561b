// How are numbers written where the person lives? Decimal mark, thousands mark and digits of a locale.
// Follows ECMA-402, Intl.NumberFormat, for the marks of a BCP 47 language tag.
// Does not cover digits outside the Unicode basic plane.
import { localeOf } from "../display/locale.ts";
import { plainText } from "./plain-text.ts";

/** The marks of a locale, in plain characters. */
export interface NumberMarks {
  readonly decimal: string;
  /** Thousands mark; none unless a locale was stated. */
  readonly group?: string | undefined;
  /** The marks that could still be decimal where the locale has them between thousands. */
  readonly eitherWay?: string;
  /** Digits in the last group and in the groups before it: 3 and 3, or 3 and 2. */
  readonly groupSizes: readonly [last: number, others: number];
  /** What stands between the digits and a power of ten, such as `E` or `×10^`. */
  readonly exponent: string;
  /** The ten digits as they are typed. */
  readonly digits: readonly string[];
}

const ascii = [..."0123456789"];

/** The marks of a locale; without one, a decimal point and no thousands mark. */
export function numberMarks(locale: string | undefined): NumberMarks {
  const tag = localeOf(locale);
  if (locale === undefined) {
    return { decimal: ".", groupSizes: [3, 3], exponent: "E", digits: ascii };
  }
  const format = new Intl.NumberFormat(tag);
  const digits = ascii.map((digit) => format.format(Number(digit)));
  const plain = (part = "") => plainText(part, digits);
  const parts = format.formatToParts(12345678.5);
  const groups = parts.filter(({ type }) => type === "integer").map(({ value }) => value.length);
  const scientific = new Intl.NumberFormat(tag, { notation: "scientific" }).formatToParts(1e5);
  const markOf = (type: string, from = parts) =>
    plain(from.find((part) => part.type === type)?.value);
  return {
    decimal: markOf("decimal"),
    group: markOf("group"),
    // Gauges and keypads show a point wherever they are sold; within Latin America (419) the comma differs by country.
    eitherWay: tag.includes("-419") ? ".," : ".",
    groupSizes: [groups.at(-1) ?? 3, groups.at(-2) ?? 3],
    exponent: markOf("exponentSeparator", scientific),
    digits,
  };
}
