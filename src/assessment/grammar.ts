// How does a language count, and how does it list? The category of a number, and "a, b, and c".
// Follows Unicode CLDR, plural rules and list patterns, by Intl where the runtime has it; American English by the same
// rules written out, because the first use of Intl takes longer than a verdict.
// Does not cover how numbers and units are written: display does.
import { refuse } from "../quantity/check.ts";

/** Whether JavaScript by itself writes as the locale does. */
export const isPlainEnglish = (locale: string): boolean => locale === "en" || locale === "en-US";

/** The plural category of a number: "one" for 1 in English, "other" where nothing else is known. */
export function categoryOf(value: number, locale: string): string {
  if (isPlainEnglish(locale)) return Math.abs(value) === 1 ? "one" : "other";
  const Rules = globalThis.Intl?.PluralRules;
  return Rules ? kept("plural", locale, () => new Rules(locale)).select(value) : "other";
}

/** "a, b, and c", or "a, b, or c", in the language; with commas alone where the runtime has no Intl. */
export function listed(texts: readonly string[], locale: string, or?: string): string {
  if (isPlainEnglish(locale)) {
    const last = texts.length - 1;
    const before = `${last > 1 ? "," : ""} ${or ? "or" : "and"} `;
    return texts.map((one, i) => (i ? (i < last ? ", " : before) + one : one)).join("");
  }
  const Format = globalThis.Intl?.ListFormat;
  const type = or ? "disjunction" : "conjunction";
  return Format
    ? kept(type, locale, () => new Format(locale, { type })).format(texts)
    : texts.join(", ");
}

/** An object of Intl is dear to make: each is made once. There are as many as languages. */
function kept<T>(what: string, locale: string, make: () => T): T {
  const key = what + locale;
  try {
    if (!made.has(key)) made.set(key, make());
  } catch {
    refuse("language.locale", locale, "a BCP 47 language tag");
  }
  return made.get(key) as T;
}

const made = /* @__PURE__ */ new Map<string, unknown>();
