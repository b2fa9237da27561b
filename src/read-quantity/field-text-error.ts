// Where in the typed text is the mistake, and what would have been right? The module's one error.
// Follows no standard; it is the library's InvalidInputError with a place in the text.
// Does not cover wrong options: those are plain InvalidInputErrors with no place in the text.
import type { Verbatim } from "../assessment/statement.ts";
import { InvalidInputError } from "../quantity/errors.ts";
import { type FieldTextStatement, say } from "./statements.ts";

/**
 * An {@link InvalidInputError} about typed text, with the place of the mistake in the text as it was
 * typed. Its `name` is that of its parent, so `isInvalidInputError` knows it too.
 */
export class FieldTextError extends InvalidInputError {
  /** Index of the first offending character in the typed text, from 0, as `setSelectionRange` counts. */
  readonly position: number;
  /** Index after the last offending character; equal to `position` where something is missing. */
  readonly end: number;

  /** What is wanted at that place. */
  readonly wanted: FieldTextStatement;
  /** The one sentence for the person who typed: what to do, or else what is wanted; `explain(error.problem, english)`. */
  readonly problem: FieldTextStatement;

  /** Makes the error for the characters from `position` to `end` of the text. */
  constructor(
    text: string,
    position: number,
    end: number,
    wanted: FieldTextStatement,
    hint?: FieldTextStatement,
  ) {
    const part = text.slice(position, Math.min(end, position + 40));
    const value = part === "" ? "the end of the text" : JSON.stringify(part);
    const argument = `text at character ${position + 1}`;
    super({ argument, value, allowed: wanted.code, ...(hint && { hint }) });
    this.wanted = wanted;
    this.problem = hint ?? wanted;
    this.position = position;
    this.end = end;
  }
}

/**
 * Tells whether something that was caught is a {@link FieldTextError}, also when another copy of this
 * package threw it.
 *
 * @param error - Anything that was caught.
 * @returns Whether `position` and `end` can be read from it, beside the parts of the parent.
 *
 * @example
 * ```ts
 * import { isFieldTextError, parseQuantity } from "hvac-install-math/field-text";
 *
 * let place = -1;
 * try {
 *   parseQuantity("118 psi", { kind: "gaugePressure" });
 * } catch (error) {
 *   if (isFieldTextError(error)) place = error.position;
 * }
 * place; // => 4
 * ```
 */
export function isFieldTextError(error: unknown): error is FieldTextError {
  const { name, position, end } = (error ?? {}) as Partial<FieldTextError>;
  return name === "InvalidInputError" && typeof position === "number" && typeof end === "number";
}

/** The error for a bare number where no unit can be put on it. */
export function missingUnit(
  text: string,
  at: number,
  symbols: readonly Verbatim[],
): FieldTextError {
  return new FieldTextError(text, at, at, say("field-text.unit", { symbols }));
}
