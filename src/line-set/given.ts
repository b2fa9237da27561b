// Was an options object passed, and are its switches switches? For callers without the compiler. Internal.
// Follows the library's own error vocabulary. Does not cover quantities and words: see quantity/check.ts.
import { describe } from "../quantity/check.ts";
import { InvalidInputError } from "../quantity/errors.ts";

/** The object, or an error where there is none. */
export function given<T>(input: T, argument = "input"): T {
  if (typeof input === "object" && input !== null) return input;
  throw new InvalidInputError({ argument, value: describe(input), allowed: "an object" });
}

/** The boolean, or an error where it is something else. */
export function flag(argument: string, value: boolean): boolean {
  if (typeof value === "boolean") return value;
  throw new InvalidInputError({ argument, value: describe(value), allowed: "true or false" });
}
