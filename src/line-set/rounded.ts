// How is a computed figure shown in a sentence? Internal; results themselves are never rounded.
// Follows common practice, no source: four significant digits. Does not cover the scale's resolution.
import type { Kind } from "../quantity/kinds.ts";
import type { Quantity } from "../quantity/quantity.ts";

/** The quantity with four significant digits of its own unit, for a sentence. */
export function rounded<K extends Kind>(value: Quantity<K>): Quantity<K> {
  return value.unit(Number(value.in(value.unit).toPrecision(4)));
}
