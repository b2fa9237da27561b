// Could the typed value be two values, or a sum? Then the person is asked, not guessed at.
// Follows the trade's notation, common practice, no source.
// Does not cover a dash between feet and inches: operand.ts asks about that.
import type { Kind } from "../quantity/kinds.ts";
import { FieldTextError } from "./field-text-error.ts";
import type { Leaf } from "./operand.ts";
import { say } from "./statements.ts";

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
    const hint = say("field-text.slash-two-values");
    throw new FieldTextError(text, start, end, say("field-text.one-decimal"), hint);
  }
  if (!units && hyphenated && wanted !== "length") {
    const hint = say("field-text.hyphen-two-ways");
    throw new FieldTextError(text, start, end, say("field-text.mixed-number"), hint);
  }
}
