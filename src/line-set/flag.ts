// Is a switch a switch? For callers without the compiler. Internal.
// Follows the library's own error vocabulary. Does not cover other arguments: see quantity/check.ts.
import { describe } from "../quantity/check.ts";
import { InvalidInputError } from "../quantity/errors.ts";

/** The boolean, or an error where it is something else. */
export function flag(argument: string, value: boolean): boolean {
  if (typeof value === "boolean") return value;
  throw new InvalidInputError({ argument, value: describe(value), allowed: "true or false" });
}
