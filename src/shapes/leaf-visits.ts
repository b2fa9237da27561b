// How is a value read that has no parts? Texts, numbers, flags, times, words.
// Follows the shapes that have no parts. Does not cover quantities: the leaves of a walk do.
import { choose, enter } from "../quantity/hints.ts";
import { momentOf } from "./iso-time.ts";
import { leaf, refuseMore, tried, type Visit } from "./walk.ts";

/** Words, or a few of them where they are many. */
export const oneOfWords = (words: readonly (string | number)[]): string =>
  words.length <= 60
    ? words.join(", ")
    : `one of ${words.length} words, such as ${words.slice(0, 5).join(", ")}`;

const isText = (value: unknown) => typeof value === "string";

/** A text, within the limit. */
export const text: Visit = leaf("a text", isText, enter("text"), (value, walk) => {
  const { length } = value as string;
  const { stringLength } = walk.limits;
  if (length <= stringLength) return value;
  return refuseMore(walk, `a text of ${length} characters`, length, stringLength);
});

const finite = leaf("a finite number", (value) => Number.isFinite(value), enter("number"));

/** A number. */
export const number: Visit = {
  ...finite,
  fits: (value) => typeof value === "number",
  of: (value, walk) => finite.of(value === 0 ? 0 : value, walk), // no −0
};

/** What needs no look at its parts, by its name. */
export const primitives: Readonly<Record<string, Visit>> = {
  text,
  number,
  flag: leaf("true, false", (value) => typeof value === "boolean", enter("yes-or-no")),
  time: {
    ...text,
    hint: enter("day"),
    allowed: "a date or a moment by ISO 8601",
    of(value, walk) {
      tried(walk, () => momentOf("", value as string));
      return value;
    },
  },
};

/** One of a few words. */
export function words(all: readonly (string | number)[]): Visit {
  const known = new Set<unknown>(all);
  return leaf(oneOfWords(all), (value) => known.has(value), choose(all));
}
