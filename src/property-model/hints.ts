// What to do about a state that the model does not have? The codes of these hints; the sentences are in language/.
// Follows quantity/errors.ts. Does not cover wrong kinds and signs: those need no hint.
import type { Hint } from "../quantity/errors.ts";

/** The hints of this module. */
export type PropertyModelHint =
  | "property-model.no-such-point"
  | "property-model.two-phases"
  | "property-model.sum-of-fractions"
  | "property-model.give-the-pair";

/** A hint of this module. */
export const modelHint = (code: PropertyModelHint): Hint => ({ code, values: {} });
