// Which pressure and hold does the test have to keep?
// Follows the nameplate, the manual and the local code. Does not cover whether it does: plausible.ts.

import type { Quantity } from "../quantity/quantity.ts";
import type { MarkedLimit } from "./marked-limit.ts";

/**
 * What manual and nameplate require of the test.
 */
export interface TestRequirement {
  /** Lowest test pressure of the manual. */
  readonly testPressure?: Quantity<"gaugePressure"> | undefined;
  /** Shortest hold of the manual. */
  readonly hold?: Quantity<"duration"> | undefined;
  /** Pressures marked on the parts under test; none may be exceeded. */
  readonly marked?: readonly MarkedLimit[] | undefined;
}
