// How much flammable refrigerant may this room hold? One closed, unventilated room, a fixed unit.
// Follows IEC 60335-2-40, Annex GG, GG.2, as manufacturers' manuals print it.
// Does not cover what annex-gg.ts does not.
import { objectOf, siOf } from "../quantity/check.ts";
import { frozen } from "../quantity/frozen.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { kg } from "../quantity/units/mass.ts";
import { type AnnexGGAnswer, type ByArea, byArea, type RoomUnit, ruleOf } from "./annex-gg.ts";

/** What decides a limit by floor area. Source: see {@link roomChargeLimit}. */
export type RoomLimitDecider = "unrestricted" | "m2" | keyof ByArea;

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
  readonly decidedBy: RoomLimitDecider;
}

/**
 * The largest charge of a flammable refrigerant in a closed, unventilated room.
 *
 * m_max = 2.5 · LFL^(5/4) · h0 · √A. From edition 6 manuals print two caps for small rooms, 0.75 · LFL · h0 · A and
 * 0.5 · LFL · 2.2 m · A, and some none: see {@link SmallRoomCap}. Never above m2, and never below m1, the charge for
 * which the room does not matter.
 *
 * @param room - The unit, its refrigerant and place, and the floor area, above 0.
 * @returns The limit, the formula's figure, and what decides.
 * @throws {@link InvalidInputError} when the refrigerant does not burn, no LFL is held or given, neither or both of
 * place and height are given, or a kind or range does not fit.
 *
 * Cautions: a figure for planning. The unit's manual and listing decide, and local code. Rooms that are joined or
 * watched by sensors: see {@link assessRoomCharge}.
 *
 * Source: IEC 60335-2-40:2018, GG.2, as manufacturers' manuals print it.
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
  const rule = ruleOf(room);
  const forms = byArea(rule, siOf("floorArea", room.floorArea, "area", { above: 0 }));
  const [form, byFormula] = (Object.entries(forms) as [keyof ByArea, number][]).reduce((a, b) =>
    b[1] < a[1] ? b : a,
  );
  const { unrestricted, maximum } = rule.answer;
  const decidedBy =
    byFormula <= unrestricted.si ? "unrestricted" : byFormula > maximum.si ? "m2" : form;
  const limit = Math.max(unrestricted.si, Math.min(byFormula, maximum.si));
  return frozen({ limit: kg(limit), byFormula: kg(byFormula), decidedBy, ...rule.answer });
}
