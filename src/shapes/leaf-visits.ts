// How is a value read that has no parts? Texts, numbers, flags, times, words.
// Follows the shapes that have no parts. Does not cover quantities: the leaves of a walk do.
import { momentOf } from "./iso-time.ts";
import { isOver, refuse, tried, type Visit, type Walk } from "./walk.ts";

/** Words, or a few of them where they are many. */
export const oneOfWords = (words: readonly (string | number)[]): string =>
  words.length <= 60
    ? words.join(", ")
    : `one of ${words.length} words, such as ${words.slice(0, 5).join(", ")}`;

/** A text, within the limit. */
export const text: Visit = {
  allowed: "a text",
  fits: (value) => typeof value === "string",
  of(value, walk) {
    if (typeof value !== "string") return refuse(walk, value, "a text");
    const { stringLength } = walk.limits;
    if (value.length <= stringLength) return value;
    return tooLong(walk, `a text of ${value.length} characters`, stringLength);
  },
};

/** Says that something is over a limit. */
export function tooLong(walk: Walk, value: string, most: number): undefined {
  if (!isOver(walk)) {
    walk.findings.push({ path: [...walk.path], value, allowed: `at most ${most}` });
  }
  return undefined;
}

/** What needs no look at its parts, by its name. */
export const primitives: Readonly<Record<string, Visit>> = {
  text,
  number: {
    allowed: "a finite number",
    fits: (value) => typeof value === "number",
    of: (value, walk) =>
      Number.isFinite(value) ? (value as number) + 0 : refuse(walk, value, "a finite number"), // no −0
  },
  flag: {
    allowed: "true, false",
    fits: (value) => typeof value === "boolean",
    of: (value, walk) => (typeof value === "boolean" ? value : refuse(walk, value, "true, false")),
  },
  time: {
    ...text,
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
  const allowed = oneOfWords(all);
  const fits = (value: unknown) => known.has(value);
  return {
    allowed,
    fits,
    of: (value, walk) => (fits(value) ? value : refuse(walk, value, allowed)),
  };
}
