import { requireKind, siOf } from "./check.ts";
import type { DifferenceOf, Kind } from "./kinds.ts";
import type { Quantity } from "./quantity.ts";

/**
 * Whether two quantities of a kind agree within a tolerance. There is no default tolerance: how close
 * is close enough depends on the instrument.
 *
 * @param a - Any quantity.
 * @param b - A quantity of the same kind.
 * @param tolerance - Largest difference that still counts as equal, 0 or more; of the kind that the
 * difference of the two has.
 * @returns Whether |a − b| ≤ tolerance.
 * @throws {@link InvalidInputError} when the kinds do not fit or the tolerance is negative.
 *
 * Source: common practice, no source.
 *
 * @example
 * ```ts
 * import { deltaF, degC, degF, equals } from "hvac-install-math/quantity";
 *
 * equals(degF(77), degC(25), deltaF(0.1)); // => true
 * ```
 */
export function equals<K extends Kind>(
  a: Quantity<K>,
  b: Quantity<K>,
  tolerance: Quantity<DifferenceOf<K>>,
): boolean {
  requireKind("a", a);
  requireKind("b", b, a.kind);
  const difference = a.si - b.si;
  return Math.abs(difference) <= siOf("tolerance", tolerance, a.unit.difference.kind, { min: 0 });
}
