// Can there be such a quantity? What the quantity module refuses is refused at its place in the text.
// Follows the quantity module: nothing below absolute zero, nothing too large to hold.
// Does not cover what is likely: 800 psig is possible.
import { isInvalidInputError } from "../quantity/errors.ts";
import type { Kind } from "../quantity/kinds.ts";
import { Quantity, type Unit } from "../quantity/quantity.ts";
import { FieldTextError } from "./field-text-error.ts";
import { say } from "./statements.ts";

/** The quantity, unless it is below absolute zero or too large. */
export function possibleQuantity<K extends Kind>(
  text: string,
  { start, end }: { readonly start: number; readonly end: number },
  si: number,
  unit: Unit<K>,
): Quantity<K> {
  try {
    return new Quantity(si, unit);
  } catch (error) {
    if (!isInvalidInputError(error)) throw error;
    const wanted = Number.isFinite(si) // then it is below the zero of its kind
      ? say("field-text.at-least", { limit: new Quantity(0, unit) as never })
      : say("field-text.smaller");
    throw new FieldTextError(text, start, end, wanted);
  }
}
