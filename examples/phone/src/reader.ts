// Who reads the screen: language and units. A language of the library is loaded when it is chosen, and kept with the app.
import { explain, label, type Statement } from "hvac-install-math/assessment";
import { figureText, type UnitSystem } from "hvac-install-math/display";
import { type Words, words } from "./words.ts";

/** The languages, each with the function that loads it. */
const languages = {
  en: async () => (await import("hvac-install-math/language/en")).english,
  es: async () => (await import("hvac-install-math/language/es")).spanish,
  fr: async () => (await import("hvac-install-math/language/fr")).french,
} as const;

export type Tongue = keyof typeof languages;
/** Every sentence of the library in one of them. */
export type Language = Awaited<ReturnType<(typeof languages)[Tongue]>>;

/** What a person chose in the head of the page. */
export interface Choice {
  readonly tongue: Tongue;
  readonly system: UnitSystem;
}

/** Everything that turns codes and figures into text for this person. */
export interface Reader extends Choice {
  readonly language: Language;
  readonly words: Words;
  /** A statement as a sentence, with figures in the reader's units. */
  readonly say: (statement: Statement) => string;
  /** A word of the library by its code. */
  readonly name: (code: string) => string;
  /** The name of a field by its path: `runs[0].tubing.way`. */
  readonly field: (path: string) => string;
}

/** The language of the phone, where the app has it. */
export function tongueOf(tag: string): Tongue {
  const [short = ""] = tag.split("-");
  return Object.hasOwn(languages, short) ? (short as Tongue) : "en";
}

/** Loads what a choice needs. */
export async function readerFor({ tongue, system }: Choice): Promise<Reader> {
  const language: Language = await languages[tongue]();
  const show = figureText({ system, language });
  const name = (code: string) => label(code, language);
  return {
    tongue,
    system,
    language,
    words: words[tongue],
    name,
    say: (statement) => explain(statement, language, show),
    field: (path) => name(`commissioning.field.${path.replace(/\[\d+\]/g, "")}`),
  };
}
