// Of what parts is the text made that a person typed for a quantity? The beginning of every reading.
// Follows the notation of tokens.ts.
// Does not cover what the parts mean together.
import { textOf } from "../quantity/check.ts";
import type { Kind } from "../quantity/kinds.ts";
import { FieldTextError } from "./field-text-error.ts";
import { numberMarks } from "./number-marks.ts";
import { plainText } from "./plain-text.ts";
import { say } from "./statements.ts";
import { type Token, tokens, type Vocabulary } from "./tokens.ts";

/** Longest text, in UTF-16 code units. */
const longest = 200;

/** What the field takes, and how its reader writes numbers. */
interface Field extends Vocabulary {
  readonly kind: Kind;
  readonly locale: string | undefined;
}

/** The parts of the text, at least one. */
export function readText(
  text: string,
  { kind, locale, ...allowed }: Field,
): readonly [Token, ...Token[]] {
  const { length } = textOf("text", text);
  if (length > longest) {
    throw new FieldTextError(text, longest, length, say("field-text.shorter", { most: longest }));
  }
  const marks = numberMarks(locale);
  const plain = plainText(text, marks.digits);
  const [first, ...others] = tokens({ text, plain, marks, feet: kind === "length" }, allowed);
  if (first) return [first, ...others];
  const { symbols } = allowed;
  throw new FieldTextError(text, 0, 0, say("field-text.number-and-unit", { symbols }));
}
