// Was the work done anew, or the record corrected? What an amendment of a joint means for the tests after it.
// Follows common practice, no source. Does not cover whether the word of who amended is true.
import type { Amendment } from "./amendment.ts";

/** What shows that a joint was made, or made anew. */
const made =
  /^runs\[\d+\]\.joints(\[\d+\](\.(kind|tube|torque|turn|flareDiameter|nitrogenFlowed|inspected))?)?$/;

/** Whether an amendment may be of work that was done anew: it is, unless it says that only the record was wrong. */
export const isRework = ({ path, previous, kind }: Amendment): boolean =>
  previous !== undefined && kind !== "correction" && made.test(path);
