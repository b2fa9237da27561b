// What if a function that is called for another refuses an argument? The error names it as the caller wrote it. Internal.
// Common practice, no source. Does not cover errors of other kinds: they go on as they are.
import { type InvalidInputError, isInvalidInputError } from "./errors.ts";

/** What is made; the typed error names its argument as `placeOf` says. */
export function namingArguments<T>(placeOf: (argument: string) => string, make: () => T): T {
  try {
    return make();
  } catch (error) {
    if (!isInvalidInputError(error)) throw error;
    const Failure = error.constructor as typeof InvalidInputError;
    throw new Failure({ ...error, argument: placeOf(error.argument) });
  }
}
