// Which locale does Intl take for the numbers? The one that was stated, or plain English digits.
// Follows ECMA-402 for BCP 47 language tags.
// Does not cover wording: only numbers follow the locale.
import { refuse } from "../quantity/check.ts";

/** The locale as Intl wants it; plain English digits and marks when none is stated. */
export function localeOf(locale: string | undefined): string {
  if (locale === undefined) return "en";
  try {
    const [known] = typeof locale === "string" ? Intl.NumberFormat.supportedLocalesOf(locale) : [];
    if (known !== undefined) return known;
  } catch {} // not a language tag at all
  return refuse(
    "options.locale",
    locale,
    'a BCP 47 language tag that this runtime knows, such as "en-US" or "de"',
  );
}
