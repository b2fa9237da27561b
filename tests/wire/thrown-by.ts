// What a call refuses, as the typed error of the library.
import { type InvalidInputError, isInvalidInputError } from "hvac-install-math/quantity";

export function thrownBy(act: () => unknown): InvalidInputError {
  try {
    act();
  } catch (error) {
    if (isInvalidInputError(error)) return error;
    throw error;
  }
  throw new Error("nothing was thrown");
}
