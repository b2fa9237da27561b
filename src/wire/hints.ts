// What to do about a document that cannot be read? The codes of these hints; the sentences are in language/.
// Follows quantity/errors.ts. Does not cover values that do not fit: path, value and what is allowed say that.
import type { Hint } from "../quantity/errors.ts";

/** The hints of this module. */
export type WireHint = "wire.newer-version";

/** A hint of this module. */
export const wireHint = (code: WireHint): Hint => ({ code, values: {} });
