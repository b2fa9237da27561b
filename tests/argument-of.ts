import { isInvalidInputError } from "hvac-install-math/quantity";

/** The argument that an error names; anything else than one of the library's own errors is thrown on. */
export function argumentOf(call: () => unknown): string {
  try {
    call();
  } catch (error) {
    if (isInvalidInputError(error)) return error.argument;
    throw error;
  }
  return "nothing was thrown";
}
