// Is a catalogue whole? Every code of the module, and no other; every placeholder a value of its code.
// Follows the types of the modules: what does not fit them does not compile.
// Does not cover the words themselves: a technician who works in the language reads those.
import type { Catalogue, Message, Variants } from "../assessment/catalogue.ts";
import type { None } from "../assessment/statement.ts";

/**
 * Makes the catalogue of the statements `S` in one language; a code or a placeholder that does not fit does not
 * compile. `const catalogue: Define<FlareJointStatements> = define;`
 */
export type Define<S> = <const T extends Messages>(
  locale: string,
  messages: T & Checked<S, T>,
) => CatalogueOf<S>;

/** The catalogue of the statements `S`. */
export type CatalogueOf<S> = Catalogue<keyof S & string>;

/** Freezes a catalogue; its type is {@link Define}. */
export function define(locale: string, messages: object): never {
  for (const message of Object.values(messages)) Object.freeze(message);
  return Object.freeze({ locale, messages: Object.freeze(messages) }) as never;
}

/** Several catalogues of one language as one. */
export function join<C>(catalogues: readonly [C, ...C[]]): Catalogue<CodeOf<C>> {
  const all = catalogues as unknown as readonly [Catalogue, ...Catalogue[]];
  return define(all[0].locale, Object.assign({}, ...all.map(({ messages }) => messages)));
}

/** The codes of a catalogue, or of several. */
export type CodeOf<C> = C extends Catalogue<infer Code> ? Code : never;

/** Words, which have no values, as a part of what a module says. */
export type Words<W extends string> = Readonly<Record<W, None>>;

type Messages = Readonly<Record<string, Message>>;

/** The names in a text: `Names<"{a} of {b}">` is `"a" | "b"`. */
type Names<T> = T extends `${string}{${infer N}}${infer R}`
  ? (N extends `${infer Name}:or` ? Name : N) | Names<R>
  : never;

/** The names that a message uses. */
type Used<M> = M extends string
  ? Names<M>
  : M extends Variants
    ? M["by"] | { [V in Exclude<keyof M, "by">]: Names<M[V]> }[Exclude<keyof M, "by">]
    : never;

type Checked<S, T> = {
  [C in keyof S]: C extends keyof T
    ? [Used<T[C]>] extends [keyof S[C] & string]
      ? T[C]
      : { unknownPlaceholder: Exclude<Used<T[C]>, keyof S[C]> }
    : never;
} & { [C in Exclude<keyof T, keyof S>]: never };
