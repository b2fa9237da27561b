// Could the typed value be two values, or a sum? Then the person is asked, not guessed at.
// Follows the trade's notation, common practice, no source.
// Does not cover a dash between feet and inches: operand.ts asks about that.
import type { Kind } from "../quantity/kinds.ts";
import { FieldTextError } from "./field-text-error.ts";
import type { Leaf } from "./operand.ts";

/** Kinds of which plates and logs write two values with a slash; none is measured in fractions. */
const pairKinds: readonly Kind[] = [
  "temperature",
  "gaugePressure",
  "absolutePressure",
  "voltage",
  "current",
];

/** Refuses 208/230 V, and 5-1/2 that is no length. */
export function refuseTwoReadings(text: string, leaf: Leaf, wanted: Kind): void {
  const { start, end, pair, hyphenated, units } = leaf;
  if (pair && pairKinds.includes(wanted)) {
    const hint = "A slash between two numbers can name two values, such as 208/230 V on a plate";
    throw new FieldTextError(text, start, end, "one value, as a decimal", hint);
  }
  if (!units && hyphenated && wanted !== "length") {
    const allowed = "a mixed number with a space, or a spaced −";
    const hint = "Joined by a hyphen it could be a sum or a difference";
    throw new FieldTextError(text, start, end, allowed, hint);
  }
}
