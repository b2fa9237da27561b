// How does another country write a language? The same sentences with its own words for the same things.
// Follows no standard: each country's table of words stands beside its base, es/spain.ts and fr/france.ts.
// Does not cover grammar: where another word asks for another sentence, the table has the whole phrase.
import type { Catalogue, Message } from "../assessment/catalogue.ts";

/** A word or a phrase, and what stands in its place; the first letter of a sentence keeps its capital. */
type Swap = readonly [from: string, to: string];

/** A language whose texts go through `write`, with `own` sentences in place of some; written when first read. */
export function vary<C extends string>(
  { messages }: Catalogue<C>,
  locale: string,
  write: (text: string) => string,
  own: { readonly [P in C]?: Message } = {},
): Catalogue<C> {
  let varied: Catalogue<C>["messages"] | undefined;
  for (const message of Object.values(own)) Object.freeze(message); // by hand: a language stands on no core
  const written = () =>
    Object.entries<Message>(messages).map(([code, message]) => [
      code,
      typeof message === "string" ? write(message) : variantsOf(message, write),
    ]);
  return Object.freeze({
    locale,
    get messages() {
      varied ??= Object.freeze({ ...Object.fromEntries(written()), ...own });
      return varied as Catalogue<C>["messages"];
    },
  });
}

function variantsOf(message: object, write: (text: string) => string): object {
  const variants = Object.entries<string>(message as Record<string, string>);
  const written = variants.map(([name, text]) => [name, name === "by" ? text : write(text)]);
  return Object.freeze(Object.fromEntries(written));
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
