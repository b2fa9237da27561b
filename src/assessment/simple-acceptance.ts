// Does a measured value keep a design limit? Accepted as measured where its uncertainty is small. Internal.
// Follows JCGM 106:2012, 8.2 (simple acceptance), for what keeps the limit; 8.3.3 (guarded rejection) for what fails.
// Does not cover limits beyond which something breaks or leaks: those keep their guard bands, see conformity.ts.
import type { Kind } from "../quantity/kinds.ts";
import { Quantity } from "../quantity/quantity.ts";
import { type Conformity, type ConformityInput, conformity } from "./conformity.ts";

/**
 * The largest expanded uncertainty (k = 2) with which a value is accepted as measured, as a share of its limit. JCGM
 * 106:2012, 8.2, asks that it be agreed upon beforehand; the figure is common practice, no source.
 */
const smallUncertainty = 0.05;

/**
 * Judges a length against a design limit, such as the longest run of a manual. Such a limit has its margin in it, and
 * a hand's breadth more or less costs a little capacity, so what is measured as within it is accepted, as an inspector
 * with a tape accepts it. What is measured beyond it fails only where the uncertainty excludes that it keeps the
 * limit; between the two it is to be measured again.
 */
export function simpleAcceptance<K extends Kind>(input: ConformityInput<K>): Conformity {
  const guarded = conformity(input);
  if (guarded.outcome !== "inconclusive") return guarded;
  const { standardUncertainty, upperLimit, lowerLimit } = input;
  const limits = [upperLimit, lowerLimit].flatMap((limit) => (limit ? [limit.si] : []));
  const isSmall = 2 * standardUncertainty.si <= smallUncertainty * Math.min(...limits);
  const none = new Quantity(0, standardUncertainty.unit);
  const asMeasured = conformity({ ...input, standardUncertainty: none });
  return isSmall && asMeasured.outcome === "pass" ? { ...guarded, outcome: "pass" } : guarded;
}
