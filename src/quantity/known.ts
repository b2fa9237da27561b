// What if a figure rests on something that cannot be used? It is not known, and whoever needs it asks. Internal.
// Common practice, no source. Does not cover what to say of it: the check that the input belongs to names it.
import { isInvalidInputError } from "./errors.ts";

/** What is made, or nothing where the typed error refuses what it rests on; any other error goes on. */
export function known<T>(make: () => T): T | undefined {
  try {
    return make();
  } catch (error) {
    if (isInvalidInputError(error)) return undefined;
    throw error;
  }
}
