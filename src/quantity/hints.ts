// What to do about a quantity that cannot be? The codes of these hints; the sentences are in language/.
// Follows errors.ts. Does not cover the hints of other modules: each has its own.
import type { Hint } from "./errors.ts";

/** The hints of this module. */
export type QuantityHint = "quantity.below-vacuum" | "quantity.station-pressure-as-is";

/** A hint of this module. */
export const quantityHint = (code: QuantityHint): Hint => ({ code, values: {} });
