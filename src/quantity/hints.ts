// What to do about a quantity that cannot be, or about what is none? The codes of these hints; the sentences are in
// language/. Follows errors.ts. Does not cover the hints of other modules: each has its own.
import type { BrokenBound, Hint } from "./errors.ts";
import type { Kind } from "./kinds.ts";

/** What goes into a field: a quantity of a kind, or of any, or something else that is no quantity. */
export type Entry =
  | Kind
  | "quantity"
  | "number"
  | "whole-number"
  | "not-zero"
  | "text"
  | "yes-or-no"
  | "day"
  | "later-time"
  | "two-times"
  | "time-zone"
  | "other-name"
  | "nothing";

/** The hints of this module without values. */
export type QuantityHint =
  | "quantity.below-vacuum"
  | "quantity.station-pressure-as-is"
  | `quantity.enter.${Entry}`;

/** The sides on which a bound lies, as `problemOf` words them. */
type BoundCode = `quantity.bound.${BrokenBound["is"]}`;

/** The hints of this module: values by code. */
export type QuantityHints = Readonly<
  Record<QuantityHint, Readonly<Record<never, never>>> &
    Record<BoundCode, Pick<BrokenBound, "value" | "limit">>
> & {
  /** The words of the interface, among which a menu lets choose. */
  readonly "quantity.enter.choice": Choices;
  /** The names of fields, one of which has to be filled in. */
  readonly "quantity.enter.one-of": Choices;
  /** The names of fields whose figures do not fit together. */
  readonly "quantity.enter.matching": Choices;
};

interface Choices {
  readonly choices: readonly { readonly verbatim: string }[];
}

/** A hint of this module. */
export const quantityHint = (code: QuantityHint): Hint => ({ code, values: {} });

/** The hint for what goes into a field. */
export const enter = (what: Entry): Hint => ({ code: `quantity.enter.${what}`, values: {} });

/** The hint for one of a few words, or for a few fields: one of them, or such as fit together. */
export const choose = (
  words: readonly (string | number)[],
  what: "choice" | "one-of" | "matching" = "choice",
): Hint => ({
  code: `quantity.enter.${what}`,
  values: { choices: words.map((word) => ({ verbatim: String(word) })) },
});
