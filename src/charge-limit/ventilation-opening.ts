// How large must the openings between two rooms be? Natural ventilation for a charge that one room cannot hold.
// Follows IEC 60335-2-40:2018, Annex GG, as a manufacturer's manual prints the formula.
// Does not cover openings to outdoors, false ceilings and ducts, which join no rooms by this rule.
import { numberOf, objectOf, siOf } from "../quantity/check.ts";
import { frozen } from "../quantity/frozen.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { m, m2 } from "../quantity/units/geometry.ts";
import { kg } from "../quantity/units/mass.ts";
import { byArea, type RoomUnit, ruleOf } from "./annex-gg.ts";
import { molarMassOf } from "./refrigerant-safety.ts";

/**
 * The two permanent openings between a room and the next.
 *
 * Source: see {@link ventilationOpening}.
 */
export interface VentilationOpening {
  /** Least area of the lower opening; nothing above 300 mm over the floor counts. */
  readonly lower: Quantity<"area">;
  /** Least area of the upper opening: half of it. */
  readonly upper: Quantity<"area">;
  /** Largest height of the lower opening's bottom edge above the floor. */
  readonly lowerEdge: Quantity<"length">;
  /** Least height of the lower opening itself. */
  readonly lowerHeight: Quantity<"length">;
  /** Least height of the upper opening's bottom edge above the floor. */
  readonly upperEdge: Quantity<"length">;
  /** The charge that the room could hold without openings, by formula. */
  readonly withoutOpening: Quantity<"mass">;
}

/** √(A/(g·m_max) · M/(M − 29)) / (104·LFL), m²/kg: the area of opening per kilogram above m_max. */
export function openingPerKilogram(A: number, mMax: number, M: number, LFL: number): number {
  return Math.sqrt((A / (9.81 * mMax)) * (M / (M - 29))) / (104 * LFL);
}

/**
 * The openings that let a room lean on the next one:
 * A_nv = (m − m_max)/(104 · LFL) · √(A/(g · m_max) · M/(M − 29)), with m_max of the room alone, its floor area A in
 * m² and the molar mass M in g/mol. Both rooms together must be large enough for the charge.
 *
 * @param room - Unit, floor area above 0, charge above 0; molar mass above 29 g/mol where the module holds none.
 * @returns The least openings and where they must sit; areas of 0 where the room needs none.
 * @throws {@link InvalidInputError} as {@link roomChargeLimit}, and when no molar mass is held or given.
 *
 * Cautions: the openings are permanent and cannot be closed, and lead to the next room, not outdoors.
 *
 * Source: IEC 60335-2-40:2018, Annex GG, as a manufacturer's manual prints it. A table of another manufacturer has
 * openings about 5 % smaller in every row; the cause is not known, and the larger figure is kept here.
 *
 * @example
 * ```ts
 * import { ventilationOpening } from "hvac-install-math/charge-limit";
 * import { kg, m2 } from "hvac-install-math/quantity";
 * import { R32 } from "hvac-install-math/refrigerants";
 *
 * const { lower } = ventilationOpening({ refrigerant: R32, place: "floor", floorArea: m2(20), charge: kg(2) });
 * lower.toString(undefined, 4); // => 0.0254 m²
 * ```
 */
export function ventilationOpening(
  room: RoomUnit & {
    /** Floor area of the room with the unit. */
    readonly floorArea: Quantity<"area">;
    /** Total charge, factory charge and what was added. */
    readonly charge: Quantity<"mass">;
    /** Molar mass, g/mol. */
    readonly molarMass?: number | undefined;
  },
): VentilationOpening {
  objectOf("room", room);
  const rule = ruleOf(room);
  const A = siOf("floorArea", room.floorArea, "area", { above: 0 });
  const charge = siOf("charge", room.charge, "mass", { above: 0 });
  const { molarMass = molarMassOf("molarMass", room.refrigerant) } = room;
  const M = numberOf("molarMass", molarMass, { above: 29, max: 1000 });
  const mMax = Math.min(...Object.values(byArea(rule, A)));
  const area =
    charge <= rule.answer.unrestricted.si
      ? 0
      : Math.max(0, charge - mMax) * openingPerKilogram(A, mMax, M, rule.LFL);
  return frozen({
    lower: m2(area),
    upper: m2(area / 2),
    lowerEdge: m(0.1),
    lowerHeight: m(0.02),
    upperEdge: m(1.5),
    withoutOpening: kg(mMax),
  });
}
