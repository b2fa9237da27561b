import { InvalidInputError } from "../quantity/errors.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { say } from "./statements.ts";

/** The error of a plate whose figures cannot belong together. */
export function maximumBelowAmpacity(
  mca: Quantity<"current">,
  mop: Quantity<"current">,
): InvalidInputError {
  return new InvalidInputError({
    argument: "maximumOvercurrentProtection",
    value: `${mop}`,
    allowed: `at least the minimum circuit ampacity, ${mca}`,
    hint: say("circuit-protection.maximum-below-ampacity"),
  });
}
