// What can be said of all runs together? Every code with its values.
// Follows assessment/statement.ts; the sentences are in language/, one file per language.
// Does not cover the other statements of this module: see statements.ts.
import type { Quantity } from "../quantity/quantity.ts";

type Length = Quantity<"length">;
interface Total {
  readonly total: Length;
  readonly most: Length;
}
interface Connected {
  readonly total: Quantity<"power">;
  readonly limit: Quantity<"power">;
}
interface Lift {
  readonly lift: Length;
  readonly most: Length;
}

/** Total length, height between the indoor units and their capacities, against the manual. */
export interface AllRunsStatements {
  "commissioning.total-length-within": Total;
  "commissioning.total-length-above": Total;
  "commissioning.total-length-too-close": Total;
  "commissioning.indoor-lift-within": Lift;
  "commissioning.indoor-lift-above": Lift;
  "commissioning.indoor-lift-too-close": Lift;
  "commissioning.connected-within": Connected;
  "commissioning.connected-enough": Connected;
  "commissioning.connected-above": Connected;
  "commissioning.connected-below": Connected;
}
