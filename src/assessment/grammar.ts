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
  return typeof Intl === "object" && Intl.PluralRules
    ? kept("plural", locale, () => new Intl.PluralRules(locale)).select(value)
    : "other";
}

/** "a, b, and c", or "a, b, or c", in the language; with commas alone where the runtime has no Intl. */
export function listed(texts: readonly string[], locale: string, or = false): string {
  if (isPlainEnglish(locale)) return inEnglish(texts, or ? "or" : "and");
  if (typeof Intl !== "object" || !Intl.ListFormat) return texts.join(", ");
  const type = or ? "disjunction" : "conjunction";
  return kept(type, locale, () => new Intl.ListFormat(locale, { type })).format(texts);
}

function inEnglish(texts: readonly string[], word: string): string {
  const last = texts.at(-1) ?? "";
  if (texts.length < 2) return last;
  const comma = texts.length > 2 ? "," : "";
  return `${texts.slice(0, -1).join(", ")}${comma} ${word} ${last}`;
}

/** An object of Intl is dear to make: each is made once. There are as many as languages. */
function kept<T>(what: string, locale: string, make: () => T): T {
  const key = `${what} ${locale}`;
  try {
    const one = made.get(key) ?? make();
    made.set(key, one);
    return one as T;
  } catch {
    return refuse("language.locale", locale, "a BCP 47 language tag");
  }
}

const made = /* @__PURE__ */ new Map<string, unknown>();
