// How large must a room be for this charge of flammable refrigerant? Unventilated rooms, fixed units.
// Follows IEC 60335-2-40, Annex GG, GG.2, as manufacturers' manuals print it.
// Does not cover what annex-gg.ts does not.
import { objectOf, siOf } from "../quantity/check.ts";
import { OutOfRangeError } from "../quantity/errors.ts";
import { frozen } from "../quantity/frozen.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { m2 } from "../quantity/units/geometry.ts";
import { kg } from "../quantity/units/mass.ts";
import { type AnnexGGAnswer, areaFor, type RoomUnit, ruleOf } from "./annex-gg.ts";
import { say } from "./statements.ts";

/**
 * The smallest room for a charge.
 *
 * Source: see {@link minimumFloorArea}.
 */
export interface MinimumFloorArea extends AnnexGGAnswer {
  /** The smallest floor area; 0 where the room does not matter. */
  readonly area: Quantity<"area">;
  /** A_min by the formula alone, as manuals tabulate it, also where the room does not matter. */
  readonly byFormula: Quantity<"area">;
}

/**
 * The smallest floor area for a charge of flammable refrigerant in an unventilated room: the inverse of
 * {@link roomChargeLimit}. A_min = (m / (2.5 · LFL^(5/4) · h0))², and at least what the caps for small rooms ask for.
 *
 * @param room - The unit, its refrigerant and place, and the total charge, above 0 to m2.
 * @returns The area, and the formula's figure.
 * @throws {@link OutOfRangeError} for a charge above m2, which this rule does not allow in any room.
 * @throws {@link InvalidInputError} as {@link roomChargeLimit}.
 *
 * Cautions: count the charge that was added on site. See {@link roomChargeLimit}.
 *
 * Source: IEC 60335-2-40:2018, GG.2, as manufacturers' manuals print it.
 *
 * @example
 * ```ts
 * import { minimumFloorArea } from "hvac-install-math/charge-limit";
 * import { kg } from "hvac-install-math/quantity";
 * import { R32 } from "hvac-install-math/refrigerants";
 *
 * minimumFloorArea({ refrigerant: R32, place: "floor", charge: kg(2) }).area.toString(undefined, 2); // => 34.04 m²
 * minimumFloorArea({ refrigerant: R32, place: "floor", charge: kg(1.8) }).area.toString(); // => 0 m²
 * ```
 */
export function minimumFloorArea(
  room: RoomUnit & {
    /** Total charge, factory charge and what was added. */
    readonly charge: Quantity<"mass">;
  },
): MinimumFloorArea {
  objectOf("room", room);
  const rule = ruleOf(room);
  const charge = siOf("charge", room.charge, "mass", { above: 0 });
  const { unrestricted, maximum } = rule.answer;
  if (charge > maximum.si) {
    throw new OutOfRangeError({
      argument: "charge",
      value: String(room.charge),
      allowed: `at most m2, ${maximum.toString(kg, 3)}`,
      hint: say("charge-limit.other-clauses"),
    });
  }
  const byFormula = m2(areaFor(rule, charge));
  const area = charge <= unrestricted.si ? m2(0) : byFormula;
  return frozen({ area, byFormula, ...rule.answer });
}
