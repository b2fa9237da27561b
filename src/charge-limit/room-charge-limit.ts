// How much flammable refrigerant may this room hold? Unventilated rooms, fixed units.
// Follows IEC 60335-2-40:2018 (edition 6), Annex GG, GG.2, as manufacturers' manuals print it.
// Does not cover what annex-gg.ts does not.
import { objectOf, siOf } from "../quantity/check.ts";
import { frozen } from "../quantity/frozen.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { kg } from "../quantity/units/mass.ts";
import { type AnnexGGAnswer, type RoomUnit, ruleOf } from "./annex-gg.ts";

/**
 * The largest charge for a room, and what decides it.
 *
 * Source: see {@link roomChargeLimit}.
 */
export interface RoomChargeLimit extends AnnexGGAnswer {
  /** The largest charge allowed in the room. */
  readonly limit: Quantity<"mass">;
  /** m_max by the formula alone, as manuals tabulate it, also where the room does not matter. */
  readonly byFormula: Quantity<"mass">;
  /** What decides the limit. */
  readonly decidedBy: "unrestricted" | "floor-area" | "cap" | "m2";
}

/**
 * The largest charge of a flammable refrigerant in an unventilated room.
 *
 * m_max = 2.5 · LFL^(5/4) · h0 · √A, from 2018 at most 0.75 · LFL · h0 · A; never above m2, and never
 * below the charge for which the room does not matter.
 *
 * @param room - The unit, its refrigerant and place, and the floor area, above 0.
 * @returns The limit, the formula's figure, and what decides.
 * @throws {@link InvalidInputError} when the refrigerant does not burn or is not held, neither or both of
 * place and height are given, or a kind or range does not fit.
 *
 * Cautions: a figure for planning. The unit's manual and listing decide, and local code. Rooms that are
 * joined, ventilated or watched by sensors follow other clauses.
 *
 * Source: IEC 60335-2-40:2018, GG.2, as manufacturers' manuals print it; the cap from memory and by a
 * manual's table, which it reproduces.
 *
 * @example
 * ```ts
 * import { roomChargeLimit } from "hvac-install-math/charge-limit";
 * import { m2 } from "hvac-install-math/quantity";
 * import { R290, R32 } from "hvac-install-math/refrigerants";
 *
 * roomChargeLimit({ refrigerant: R290, place: "wall", floorArea: m2(20) }).limit.toString(undefined, 3); // => 0.338 kg
 * const small = roomChargeLimit({ refrigerant: R32, place: "floor", floorArea: m2(20) });
 * `${small.byFormula.toString(undefined, 3)}, ${small.limit}`; // => 1.533 kg, 1.842 kg
 * small.decidedBy; // => unrestricted
 * ```
 */
export function roomChargeLimit(
  room: RoomUnit & {
    /** Floor area of the room. */
    readonly floorArea: Quantity<"area">;
  },
): RoomChargeLimit {
  objectOf("room", room);
  const { LFL, h0, capped, answer } = ruleOf(room);
  const A = siOf("floorArea", room.floorArea, "area", { above: 0 });
  const root = 2.5 * LFL ** 1.25 * h0 * Math.sqrt(A); // GG.2
  const cap = capped ? 0.75 * LFL * h0 * A : Number.POSITIVE_INFINITY; // GG.2, edition 6
  const byFormula = Math.min(root, cap);
  const { unrestricted, maximum } = answer;
  const least = byFormula <= unrestricted.si;
  const decidedBy = least
    ? "unrestricted"
    : byFormula > maximum.si
      ? "m2"
      : cap < root
        ? "cap"
        : "floor-area";
  const limit = least ? unrestricted.si : Math.min(byFormula, maximum.si);
  return frozen({ limit: kg(limit), byFormula: kg(byFormula), decidedBy, ...answer });
}
