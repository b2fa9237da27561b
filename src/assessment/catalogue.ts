// How is a sentence kept? As data of a language: text with the names of its values, and its plural forms.
// Follows Unicode CLDR plural categories, as grammar.ts tells them.
// Does not cover figures: the reader's units and number format are display's.
import { categoryOf } from "./grammar.ts";

/**
 * A sentence in which `{name}` stands for a value (`{name:or}` for a list of alternatives), or variants of it: by the plural category of a number, or by the
 * last part of the code of a word. Where no variant fits, `other` stands.
 *
 * Source: Unicode CLDR, language plural rules, for the categories.
 */
export type Message = string | Variants;

/**
 * Variants of one sentence: `{ by: "count", one: "{count} joint", other: "{count} joints" }`.
 *
 * Source: Unicode CLDR, language plural rules, for the categories.
 */
export interface Variants {
  /** The name of the value that chooses. */
  readonly by: string;
  /** The sentence where no other variant fits. */
  readonly other: string;
  /** The sentence for a plural category or a word. */
  readonly [variant: string]: string;
}

/**
 * The sentences and words of a module, or of a whole language, by code.
 */
export interface Catalogue<Code extends string = string> {
  /** BCP 47 tag of the language, which decides plurals and lists. */
  readonly locale: string;
  /** Every sentence and word by its code. */
  readonly messages: Readonly<Record<Code, Message>>;
}

/** The variant of a message for the value that chooses: a number by its plural category, a word by its last part. */
export function variantFor(message: Message, value: unknown, locale: string): string {
  if (typeof message === "string") return message;
  const variant =
    typeof value === "number" ? categoryOf(value, locale) : String(value).replace(/.*\./, "");
  return (Object.hasOwn(message, variant) && message[variant]) || message.other;
}
