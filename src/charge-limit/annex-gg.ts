// How much flammable refrigerant may this room hold, and how large must it be? Unventilated, fixed units.
// Follows IEC 60335-2-40:2018 (edition 6), Annex GG, GG.1 and GG.2, as manufacturers' manuals print it.
// Does not cover charges above m2, ventilation, joined rooms, circulation fans, sensors, portable units.
import {
  type Assumption,
  type Caution,
  type Citation,
  cite,
  statement,
} from "../assessment/assessment.ts";
import { describe, oneOf, siOf } from "../quantity/check.ts";
import { InvalidInputError, OutOfRangeError } from "../quantity/errors.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { m, m2 } from "../quantity/units/geometry.ts";
import { kg, kgPerM3 } from "../quantity/units/mass.ts";
import { type RoomRefrigerant, refrigerantSafety, roomCautions } from "./refrigerant-safety.ts";

/** Where the indoor unit is. Source: IEC 60335-2-40:2018, GG.2. */
export type IndoorUnitPlace = "floor" | "window" | "wall" | "ceiling";

// Reference heights of installation h_inst in m: GG.2.
const places: Record<IndoorUnitPlace, number> = { floor: 0, window: 1, wall: 1.8, ceiling: 2.2 };

/**
 * A unit in a room, and the rule that applies.
 *
 * Source: IEC 60335-2-40:2018, GG.2.
 */
export interface RoomUnit {
  /** A flammable refrigerant, class A2L, A2 or A3. */
  readonly refrigerant: RoomRefrigerant;
  /** LFL in place of the IEC figure that the module holds, above 0 to 1 kg/m³. */
  readonly lowerFlammabilityLimit?: Quantity<"density">;
  /** Where the indoor unit is, for the reference height: 0, 1.0, 1.8 or 2.2 m. */
  readonly place?: IndoorUnitPlace;
  /** Height of the unit's underside above the floor, in place of the reference height; 0 to 10 m. */
  readonly installationHeight?: Quantity<"length">;
  /** From there up to where a leak comes out of the unit, 0 or more; 0 when left out. */
  readonly releaseOffset?: Quantity<"length">;
  /** `2018` (edition 6) has the cap and the 6 m³·LFL for A2L; `before-2018` has neither. */
  readonly edition?: "2018" | "before-2018";
}

/**
 * The charges at which the rule changes.
 *
 * Source: IEC 60335-2-40:2018, GG.1.
 */
export interface ChargeThresholds {
  /** m1 = 4 m³·LFL. */
  readonly m1: Quantity<"mass">;
  /** m2 = 26 m³·LFL: the most without ventilation. */
  readonly m2: Quantity<"mass">;
  /** m3 = 130 m³·LFL: above it the standard has no rule. */
  readonly m3: Quantity<"mass">;
  /** 6 m³·LFL: no room restriction for A2L in fixed units, edition 6. */
  readonly unrestrictedA2L: Quantity<"mass">;
}

/**
 * The charges at which Annex GG changes its rule.
 *
 * @param lowerFlammabilityLimit - `density`, above 0 to 1 kg/m³.
 * @returns m1, m2, m3 and the unrestricted charge of A2L.
 * @throws {@link InvalidInputError} when the limit is outside its range.
 *
 * Source: IEC 60335-2-40:2018, GG.1, as manufacturers' manuals print it.
 *
 * @example
 * ```ts
 * import { chargeThresholds } from "hvac-install-math/charge-limit";
 * import { kgPerM3 } from "hvac-install-math/quantity";
 *
 * const { m1, m2, unrestrictedA2L } = chargeThresholds(kgPerM3(0.307));
 * `${m1}, ${m2}, ${unrestrictedA2L}`; // => 1.228 kg, 7.982 kg, 1.842 kg
 * ```
 */
export function chargeThresholds(lowerFlammabilityLimit: Quantity<"density">): ChargeThresholds {
  const limits = { above: 0, max: 1 };
  const LFL = siOf("lowerFlammabilityLimit", lowerFlammabilityLimit, "density", limits);
  return { m1: kg(4 * LFL), m2: kg(26 * LFL), m3: kg(130 * LFL), unrestrictedA2L: kg(6 * LFL) };
}

/**
 * What every answer by Annex GG carries.
 *
 * Source: IEC 60335-2-40:2018, GG.1 and GG.2.
 */
export interface AnnexGGAnswer {
  /** The charge up to which the room does not matter. */
  readonly unrestricted: Quantity<"mass">;
  /** m2: the most that the rule allows at all. */
  readonly maximum: Quantity<"mass">;
  /** h0, the release height that was used. */
  readonly releaseHeight: Quantity<"length">;
  /** The lower flammability limit that was used. */
  readonly lowerFlammabilityLimit: Quantity<"density">;
  /** What was assumed. */
  readonly assumptions: readonly Assumption[];
  /** What can hurt someone, and what overrides the figure. */
  readonly cautions: readonly Caution[];
  /** Where the rule and the figures stand. */
  readonly sources: readonly Citation[];
}

/** The part of the rule that does not depend on the room's size. */
interface GGRule {
  readonly LFL: number;
  readonly h0: number;
  readonly capped: boolean;
  readonly answer: AnnexGGAnswer;
}

function ruleOf(unit: RoomUnit): GGRule {
  const { refrigerant, place, installationHeight, releaseOffset } = unit;
  const safety = refrigerantSafety(refrigerant);
  oneOf("refrigerant.safetyClass", refrigerant.safetyClass, ["A2L", "A2", "A3"], "Others: by RCL");
  const edition = oneOf("edition", unit.edition ?? "2018", ["2018", "before-2018"]);
  const held = safety.lowerFlammabilityLimits[0];
  const given = unit.lowerFlammabilityLimit ?? held?.value ?? kgPerM3(0);
  const { m1, m2: maximum, unrestrictedA2L } = chargeThresholds(given);
  if (!place === !installationHeight) {
    throw new InvalidInputError({
      argument: "place",
      value: describe(place),
      allowed: "either place or installationHeight",
    });
  }
  const install = installationHeight
    ? siOf("installationHeight", installationHeight, "length", { min: 0, max: 10 })
    : places[oneOf("place", place as IndoorUnitPlace, Object.keys(places) as IndoorUnitPlace[])];
  const release = releaseOffset ? siOf("releaseOffset", releaseOffset, "length", { min: 0 }) : 0;
  const h0 = Math.max(install + release, 0.6); // GG.2
  const capped = edition === "2018";
  const assumptions = [
    statement("unventilated", "One closed, unventilated room; a fixed unit; no fan or sensor."),
  ];
  if (!unit.lowerFlammabilityLimit) {
    const text = "An LFL of {limit} is used ({standing}).";
    const values = { limit: given, standing: held?.standing ?? "" };
    assumptions.push(statement("lower-flammability-limit", text, values));
  }
  const answer: AnnexGGAnswer = {
    unrestricted: capped && refrigerant.safetyClass === "A2L" ? unrestrictedA2L : m1,
    maximum,
    releaseHeight: m(h0),
    lowerFlammabilityLimit: given,
    assumptions,
    cautions: roomCautions(refrigerant),
    sources: [
      cite("iec-60335-2-40-2018", "GG.1, GG.2"),
      ...(held?.citation && !unit.lowerFlammabilityLimit ? [held.citation] : []),
    ],
  };
  return { LFL: given.si, h0, capped, answer };
}

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
  return { limit: kg(limit), byFormula: kg(byFormula), decidedBy, ...answer };
}

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
 * {@link roomChargeLimit}. A_min = (m / (2.5 · LFL^(5/4) · h0))², from 2018 at least m / (0.75 · LFL · h0).
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
  const { LFL, h0, capped, answer } = ruleOf(room);
  const charge = siOf("charge", room.charge, "mass", { above: 0 });
  const { unrestricted, maximum } = answer;
  if (charge > maximum.si) {
    throw new OutOfRangeError({
      argument: "charge",
      value: String(room.charge),
      allowed: `at most m2, ${maximum.toString(kg, 3)}`,
      hint: "Above it other clauses apply: ventilation, sensors",
    });
  }
  const root = (charge / (2.5 * LFL ** 1.25 * h0)) ** 2; // GG.2
  const cap = capped ? charge / (0.75 * LFL * h0) : 0; // GG.2, edition 6
  const byFormula = m2(Math.max(root, cap));
  return { area: charge <= unrestricted.si ? m2(0) : byFormula, byFormula, ...answer };
}
