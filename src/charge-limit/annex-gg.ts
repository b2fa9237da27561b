// Which rule is there for flammable refrigerant in an unventilated room? Thresholds and release height.
// Follows IEC 60335-2-40:2018 (edition 6), Annex GG, GG.1 and GG.2, as manufacturers' manuals print it.
// Does not cover charges above m2, ventilation, joined rooms, circulation fans, sensors, portable units.
import { type Citation, cite } from "../assessment/assessment.ts";
import { describe, objectOf, oneOf, siOf } from "../quantity/check.ts";
import { InvalidInputError } from "../quantity/errors.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { m } from "../quantity/units/geometry.ts";
import { kg, kgPerM3 } from "../quantity/units/mass.ts";
import {
  type RoomCaution,
  type RoomRefrigerant,
  refrigerantSafety,
  roomCautions,
} from "./refrigerant-safety.ts";
import { type ChargeLimitStatement, say } from "./statements.ts";

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
  /** LFL in place of the first figure that the module holds, above 0 to 1 kg/m³. */
  readonly lowerFlammabilityLimit?: Quantity<"density">;
  /** Where the indoor unit is, for the reference height: 0, 1.0, 1.8 or 2.2 m. */
  readonly place?: IndoorUnitPlace;
  /** Height of the unit's underside above the floor, in place of the reference height; 0 to 10 m. */
  readonly installationHeight?: Quantity<"length">;
  /** From there up to where a leak comes out of the unit, 0 to 10 m; 0 when left out. */
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
  readonly assumptions: readonly ChargeLimitStatement[];
  /** What can hurt someone, and what overrides the figure. */
  readonly cautions: readonly RoomCaution[];
  /** Where the rule and the figures stand. */
  readonly sources: readonly Citation[];
}

/** The part of the rule that does not depend on the room's size. */
export interface GGRule {
  readonly LFL: number;
  readonly h0: number;
  readonly capped: boolean;
  readonly answer: AnnexGGAnswer;
}

/** Checks the unit and works out what the room's size does not change. */
export function ruleOf(unit: RoomUnit): GGRule {
  objectOf("unit", unit);
  const { refrigerant, place, installationHeight, releaseOffset } = unit;
  const safety = refrigerantSafety(refrigerant);
  oneOf("refrigerant.safetyClass", refrigerant.safetyClass, ["A2L", "A2", "A3"], "Others: by RCL");
  const { edition = "2018", lowerFlammabilityLimit: stated } = unit;
  oneOf("edition", edition, ["2018", "before-2018"]);
  const held = safety.lowerFlammabilityLimits[0];
  const given = stated === undefined ? (held?.value ?? kgPerM3(0)) : stated;
  const { m1, m2: maximum, unrestrictedA2L } = chargeThresholds(given);
  if ((place === undefined) === (installationHeight === undefined)) {
    throw new InvalidInputError({
      argument: "place",
      value: describe(place),
      allowed: "either place or installationHeight",
    });
  }
  const install =
    installationHeight !== undefined
      ? siOf("installationHeight", installationHeight, "length", { min: 0, max: 10 })
      : places[oneOf("place", place as IndoorUnitPlace, Object.keys(places) as IndoorUnitPlace[])];
  const release =
    releaseOffset !== undefined
      ? siOf("releaseOffset", releaseOffset, "length", { min: 0, max: 10 })
      : 0;
  const h0 = Math.max(install + release, 0.6); // GG.2
  const capped = edition === "2018";
  const assumptions: ChargeLimitStatement[] = [
    say("charge-limit.unventilated"),
    ...(install > places.ceiling
      ? [say("charge-limit.above-reference-height", { height: m(install) })]
      : []),
    ...(stated === undefined && held
      ? [
          say("charge-limit.flammability-limit-used", {
            limit: given,
            standing: `charge-limit.standing.${held.standing}`,
          }),
        ]
      : []),
  ];
  const answer: AnnexGGAnswer = {
    unrestricted: capped && refrigerant.safetyClass === "A2L" ? unrestrictedA2L : m1,
    maximum,
    releaseHeight: m(h0),
    lowerFlammabilityLimit: given,
    assumptions,
    cautions: roomCautions(refrigerant),
    sources: [
      cite("iec-60335-2-40-2018", "GG.1, GG.2"),
      ...(held?.citation && stated === undefined ? [held.citation] : []),
    ],
  };
  return { LFL: given.si, h0, capped, answer };
}
