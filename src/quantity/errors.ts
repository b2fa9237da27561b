import type { AnyQuantity } from "./json.ts";

/**
 * What was wrong with an input, in parts that a program can use.
 */
export interface InputProblem {
  /** Path of the offending argument as the caller wrote it, such as `start.pressure`. */
  readonly argument: string;
  /** The value that was passed, with its unit where it has one. */
  readonly value: string;
  /** What would have been accepted, with units. */
  readonly allowed: string;
  /** The bound that the value broke, where it broke one. */
  readonly bound?: BrokenBound | undefined;
  /** What to do about it: a statement that `explain` words. */
  readonly hint?: Hint | undefined;
}

/**
 * A figure and the bound that it broke, for an app that words errors itself.
 */
export interface BrokenBound {
  /** What was passed. */
  readonly value: AnyQuantity | number;
  /** Whether it had to be at least, above, at most or below the limit. */
  readonly is: "min" | "above" | "max" | "below";
  /** The limit, in the unit of the value. */
  readonly limit: AnyQuantity | number;
}

/**
 * What to do about a wrong input: a code with its values, as `explain` of `assessment` words it.
 */
export interface Hint {
  /** The code of the sentence. */
  readonly code: string;
  /** What stands in the sentence. */
  readonly values: Readonly<Record<string, HintValue | readonly HintValue[]>>;
}

/** What stands in a hint. */
export type HintValue = string | number | AnyQuantity | { readonly verbatim: string };

/**
 * An input that the library cannot use: a wrong kind of quantity, a value that is not finite, or one
 * that no installation can have. The message names the argument, the value with its unit and what is
 * allowed.
 *
 * @example
 * ```ts
 * import { InvalidInputError, psia } from "hvac-install-math/quantity";
 *
 * let message = "";
 * try {
 *   psia(-3);
 * } catch (error) {
 *   message = (error as InvalidInputError).message;
 * }
 * message; // => psia: -3 psia is not allowed; allowed: at least 0 psia
 * ```
 */
export class InvalidInputError extends Error {
  /** `InvalidInputError`, also after minification. */
  override name = "InvalidInputError";
  /** Path of the offending argument as the caller wrote it, such as `start.pressure`. */
  declare readonly argument: string;
  /** The value that was passed, with its unit where it has one. */
  declare readonly value: string;
  /** What would have been accepted, with units. */
  declare readonly allowed: string;
  /** What to do about it, where there is something to say: `explain(error.hint, english)`. */
  declare readonly hint: Hint | undefined;
  /** The bound that the value broke, where it broke one. */
  declare readonly bound: BrokenBound | undefined;

  /** Makes the error and its message from the parts of the problem. */
  constructor(problem: InputProblem) {
    const { argument, value, allowed, hint } = problem;
    // What goes into a field (a number, a length) is what is allowed, once more.
    const more = hint && !/\.enter\./.test(hint.code) ? ` (${hint.code})` : "";
    super(`${argument}: ${value} is not allowed; allowed: ${allowed}${more}`);
    Object.assign(this, problem);
  }
}

/**
 * A sensible input that lies beyond the range of the model or table behind the function, such as a
 * temperature above a refrigerant's critical point. `allowed` states the range in the caller's units.
 *
 * @example
 * ```ts
 * import { OutOfRangeError, atmosphereAtAltitude, ft } from "hvac-install-math/quantity";
 *
 * let name = "";
 * try {
 *   atmosphereAtAltitude(ft(60_000));
 * } catch (error) {
 *   name = (error as OutOfRangeError).name;
 * }
 * name; // => OutOfRangeError
 * ```
 */
export class OutOfRangeError extends InvalidInputError {
  /** `OutOfRangeError`, also after minification. */
  override name = "OutOfRangeError";
}

/**
 * Tells whether something that was caught is an {@link InvalidInputError} or an
 * {@link OutOfRangeError}, also when another copy of this package threw it (which `instanceof` would
 * miss).
 *
 * @param error - Anything that was caught.
 * @returns Whether the parts `argument`, `value`, `allowed` and `hint` can be read from it.
 *
 * @example
 * ```ts
 * import { isInvalidInputError } from "hvac-install-math/quantity";
 *
 * isInvalidInputError(new TypeError("something else")); // => false
 * ```
 */
export function isInvalidInputError(error: unknown): error is InvalidInputError {
  const name = (error as { name?: unknown } | null)?.name;
  return name === "InvalidInputError" || name === "OutOfRangeError";
}
