// How does another country write a language? The same sentences with its own words for the same things.
// Follows no standard: each country's table of words stands beside its base, es/spain.ts and fr/france.ts.
// Does not cover grammar: where another word asks for another sentence, the table has the whole phrase.
import type { Catalogue, Message } from "../assessment/catalogue.ts";
import { define } from "./define.ts";
import { eachText } from "./each-text.ts";

/** A word or a phrase, and what stands in its place; the first letter of a sentence keeps its capital. */
type Swap = readonly [from: string, to: string];

/** A language whose texts go through `write`, with `own` sentences in place of some; written when first read. */
export function vary<C extends string>(
  { messages }: Catalogue<C>,
  locale: string,
  write: (text: string) => string,
  own: { readonly [P in C]?: Message } = {},
): Catalogue<C> {
  let varied: Catalogue<C> | undefined;
  return Object.freeze({
    locale,
    get messages() {
      varied ??= define(locale, { ...eachText(messages, write), ...own }) as Catalogue<C>;
      return varied.messages;
    },
  });
}

/** Puts words in the place of words: the longest that fits, never a part of one, nor the name of a value. */
export function swapping(swaps: readonly Swap[]): (text: string) => string {
  const to = new Map(swaps);
  const longestFirst = [...to.keys()].sort((one, other) => other.length - one.length);
  const words = longestFirst.flatMap((word) => [word, capital(word)]).join("|");
  const found = new RegExp(
    `(?<![\\p{L}\\d{])(?:${words.replaceAll(".", "\\.")})(?![\\p{L}\\d}])`,
    "gu",
  );
  return (text) =>
    text.replace(found, (word) => to.get(word) ?? capital(to.get(small(word)) ?? word));
}

const capital = (word: string) => word.charAt(0).toUpperCase() + word.slice(1);
const small = (word: string) => word.charAt(0).toLowerCase() + word.slice(1);
