import { isOfKind, requireKind, siOf } from "./check.ts";
import type { DifferenceOf, Kind } from "./kinds.ts";
import { noiseAt } from "./limit.ts";
import type { Quantity } from "./quantity.ts";

/**
 * Whether two quantities of a kind agree within a tolerance. There is no default tolerance: how close
 * is close enough depends on the instrument. The noise of binary arithmetic does not decide: eleven
 * significant digits are looked at, so that 0.3 psig and 0.2 psig are within 0.1 psi.
 *
 * @param a - Any quantity.
 * @param b - A quantity of the same kind.
 * @param tolerance - Largest difference that still counts as equal, 0 or more; of the kind that the
 * difference of the two has.
 * @returns Whether |a − b| ≤ tolerance, in eleven digits of the larger of the two.
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
  const within = siOf("tolerance", tolerance, a.unit.difference.kind, { min: 0 });
  return Math.abs(a.si - b.si) <= within + noiseAt(a.si, b.si);
}

/**
 * Whether two values are the same quantity: the same kind and the same value to the twelve digits that every
 * text and every JSON keeps, in whatever unit each was entered. For lists that are compared, caches and views
 * that redraw only what changed; whether two measurements agree is asked of {@link equals}.
 *
 * @param a - Anything.
 * @param b - Anything.
 * @returns Whether both are quantities and the same.
 *
 * Source: common practice, no source.
 *
 * @example
 * ```ts
 * import { ft, fromJSON, inch, kg, sameQuantity } from "hvac-install-math/quantity";
 *
 * sameQuantity(ft(3), inch(36)); // => true
 * sameQuantity(ft(1).dividedBy(3), fromJSON(ft(1).dividedBy(3).toJSON())); // => true
 * sameQuantity(ft(3), kg(3)); // => false
 * ```
 */
export function sameQuantity(a: unknown, b: unknown): boolean {
  if (!isOfKind(a) || !isOfKind(b, (a as Quantity<Kind>).kind)) return false;
  const [one, other] = [(a as Quantity<Kind>).si, (b as Quantity<Kind>).si];
  // Twelve digits leave half of the last one open: 5e-12 of 1.00000000000.
  return Math.abs(one - other) <= 1e-11 * Math.max(Math.abs(one), Math.abs(other));
}
