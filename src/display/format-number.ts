// How is a number written where the person lives? Digits and marks of a locale, never a thousands mark.
// Follows ECMA-402, Intl.NumberFormat; ISO 80000-1:2022, 7.3, has no comma or point between thousands. A negative
// number has the minus sign of Unicode, U+2212, in every locale: a hyphen is easily overlooked, and read out as none.
// Does not cover which unit follows: format-quantity.ts.
import { isPlainEnglish } from "../assessment/grammar.ts";
import { twelveDigits } from "../quantity/twelve-digits.ts";
import { localeOf } from "./locale.ts";
import { languageOf, type UnitLanguage, withUnit } from "./unit-words.ts";

/** Rounds to a multiple of the step, halves away from zero. */
export function roundTo(value: number, step: number): number {
  const steps = twelveDigits(Math.abs(value) / step);
  if (!(steps < 1e12)) return value;
  return Math.sign(value) * twelveDigits(Math.round(steps) * step);
}

/** The decimals that a step needs, at most nine: 2 for 0.25. */
export function decimalsOf(step: number): number {
  for (let decimals = 0; decimals < 9; decimals++) {
    const scaled = step * 10 ** decimals;
    if (Math.abs(scaled - Math.round(scaled)) < 1e-9 * scaled) return decimals;
  }
  return 9;
}

/** Writes numbers in the digits and marks of one locale, and units in one language. */
export interface Numbers {
  /** With exactly so many decimals, or (`trim`) without zeros at its end. */
  readonly fixed: (value: number, decimals: number, trim?: boolean) => string;
  /** With so many significant digits and a power of ten. */
  readonly scientific: (value: number, digits: number) => string;
  /** A number that is written already, with its unit. */
  readonly withUnit: (written: string, value: number, symbol: string) => string;
}

/**
 * The numbers of a locale, of that of the language where none is stated. A format of Intl is dear to make: each is made
 * once, when it is first needed.
 */
export function numbersOf(stated: string | undefined, worded: UnitLanguage | undefined): Numbers {
  const language = languageOf("options.language", worded);
  const wanted = stated === undefined ? (language?.locale ?? "en") : stated;
  const unit = (text: string, value: number, symbol: string) =>
    withUnit(text, value, symbol, language);
  if (isPlainEnglish(wanted) || (!globalThis.Intl && /^en\b/.test(wanted))) {
    return { ...plainNumbers, withUnit: unit };
  }
  const locale = localeOf(wanted);
  const made = new Map<string, Intl.NumberFormat>();
  const format = (key: string, options: Intl.NumberFormatOptions): Intl.NumberFormat => {
    const one = made.get(key) ?? new Intl.NumberFormat(locale, options);
    made.set(key, one);
    return one;
  };
  const written = (value: number, key: string, options: Intl.NumberFormatOptions) =>
    withMinus(format(key, options).format(value + 0));
  return {
    fixed: (value, decimals, trim = false) =>
      written(value, `${decimals} ${trim}`, {
        useGrouping: false,
        minimumFractionDigits: trim ? 0 : decimals,
        maximumFractionDigits: decimals,
      }),
    scientific: (value, digits) =>
      written(value, `${digits} digits`, {
        notation: "scientific",
        maximumFractionDigits: digits - 1,
      }),
    withUnit: unit,
  };
}

/** Hyphens as the minus sign of Unicode. */
const withMinus = (text: string) => text.replaceAll("-", "−");

/**
 * English digits and marks as JavaScript has them, without Intl: its first use takes longer than a whole report, and
 * small engines have none.
 */
const plainNumbers: Pick<Numbers, "fixed" | "scientific"> = {
  fixed: (value, decimals, trim = false) => {
    const text = roundTo(value, 10 ** -decimals)
      .toFixed(decimals)
      .replace("-", "−");
    return trim && text.includes(".") ? text.replace(/\.?0+$/, "") : text;
  },
  scientific: (value, digits) =>
    withMinus(Number(value.toPrecision(digits)).toExponential()).replace(/e\+?/, "E"),
};
