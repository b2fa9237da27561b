// How much does a floor area allow? Release height, root of the area, caps for small rooms.
// Follows IEC 60335-2-40, Annex GG, GG.1 and GG.2, as manufacturers' manuals print it.
// Does not cover joined rooms, fans and sensors (room-protection.ts), mechanical ventilation, portable units.

import type { Citation } from "../assessment/assessment.ts";
import { describe, objectOf, oneOf, siOf } from "../quantity/check.ts";
import { InvalidInputError } from "../quantity/errors.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { m } from "../quantity/units/geometry.ts";
import { kgPerM3 } from "../quantity/units/mass.ts";
import { roomAltitudeFactor } from "./altitude-factor.ts";
import { chargeThresholds, type FlammableClass, hasCaps, type RoomEdition } from "./editions.ts";
import {
  type RoomCaution,
  type RoomRefrigerant,
  roomCautions,
  safetyOf,
} from "./refrigerant-safety.ts";
import { type ChargeLimitStatement, type Remembered, say } from "./statements.ts";

/** Where the indoor unit is. Source: IEC 60335-2-40:2018, GG.2. */
export type IndoorUnitPlace = "floor" | "window" | "wall" | "ceiling";

// Reference heights of installation h_inst in m: GG.2.
const places: Record<IndoorUnitPlace, number> = { floor: 0, window: 1, wall: 1.8, ceiling: 2.2 };

/**
 * Which cap a small room gets beside the root of its area. Manuals that cite the same edition differ: one prints
 * 0.75 · LFL · h0 · A (`release-height`), one 0.5 · LFL · 2.2 m · A (`room-height`), one none. The unit's manual
 * decides; `strictest` takes the least of all.
 *
 * Source: three manufacturers' published manuals, all of IEC 60335-2-40:2018.
 */
export type SmallRoomCap = "strictest" | "release-height" | "room-height" | "none";

/**
 * A unit in a room, and the rule that applies.
 *
 * Source: IEC 60335-2-40:2018, GG.2.
 */
export interface RoomUnit {
  /** A flammable refrigerant, class A2L, A2 or A3. */
  readonly refrigerant: RoomRefrigerant;
  /** LFL in place of the first figure that the module holds, above 0 to 1 kg/m³. Needed where none is held. */
  readonly lowerFlammabilityLimit?: Quantity<"density"> | undefined;
  /** Where the indoor unit is, for the reference height: 0, 1.0, 1.8 or 2.2 m. One of this and `installationHeight`. */
  readonly place?: IndoorUnitPlace | undefined;
  /** Height of the unit's underside above the floor, in place of the reference height; 0 to 10 m. One of this and `place`. */
  readonly installationHeight?: Quantity<"length"> | undefined;
  /** From there up to where a leak comes out of the unit, 0 to 10 m; 0 when left out. */
  readonly releaseOffset?: Quantity<"length"> | undefined;
  /** The edition that applies; IEC 60335-2-40:2018 when left out, and the answer says so. */
  readonly edition?: RoomEdition | undefined;
  /** The cap that the unit's manual prints for small rooms; the strictest when left out. */
  readonly smallRoomCap?: SmallRoomCap | undefined;
  /** Altitude of the site, −500 m to 3200 m: thin air needs a larger room. At most 600 m when left out. */
  readonly altitude?: Quantity<"length"> | undefined;
}

/**
 * What every answer by Annex GG carries.
 *
 * Source: IEC 60335-2-40, GG.1 and GG.2.
 */
export interface AnnexGGAnswer {
  /** The edition that was used. */
  readonly edition: RoomEdition;
  /** m1: the charge up to which the room does not matter. */
  readonly unrestricted: Quantity<"mass">;
  /** m2: the most by the rule of the floor area. */
  readonly maximum: Quantity<"mass">;
  /** m3: the most for a system at all. */
  readonly systemMaximum: Quantity<"mass">;
  /** h0, the release height that was used. */
  readonly releaseHeight: Quantity<"length">;
  /** The lower flammability limit that was used. */
  readonly lowerFlammabilityLimit: Quantity<"density">;
  /** The factor on the floor area for altitude. */
  readonly altitudeFactor: number;
  /** What was assumed. */
  readonly assumptions: readonly ChargeLimitStatement[];
  /** What can hurt someone, what is from memory, and what overrides the figure. */
  readonly cautions: readonly RoomCaution[];
  /** Where the rule and the figures stand. */
  readonly sources: readonly Citation[];
}

/** What the floor area allows, kg, by each of the three forms. */
export interface ByArea {
  readonly "floor-area": number;
  readonly "release-height-cap": number;
  readonly "room-height-cap": number;
}

/** The part of the rule that does not depend on the room's size. */
export interface GGRule {
  readonly LFL: number;
  readonly h0: number;
  readonly cap: SmallRoomCap;
  readonly remembered: readonly Remembered[];
  readonly answer: AnnexGGAnswer;
}

/** Checks the unit and works out what the room's size does not change. */
export function ruleOf(unit: RoomUnit, further: readonly Remembered[] = []): GGRule {
  const { refrigerant, lowerFlammabilityLimit: stated, altitude } = objectOf("unit", unit);
  const { edition = "iec-60335-2-40-2018", smallRoomCap = "strictest" } = unit;
  const held = safetyOf(refrigerant, stated === undefined)?.lowerFlammabilityLimits[0];
  const safetyClass = oneOf(
    "refrigerant.safetyClass",
    refrigerant.safetyClass,
    ["A2L", "A2", "A3"],
    say("charge-limit.others-by-concentration"),
  ) as FlammableClass;
  const lowerFlammabilityLimit = stated === undefined ? (held?.value ?? kgPerM3(0)) : stated;
  const thresholds = chargeThresholds({ lowerFlammabilityLimit, safetyClass, edition });
  oneOf("smallRoomCap", smallRoomCap, ["strictest", "release-height", "room-height", "none"]);
  const install = installedAt(unit);
  const release =
    unit.releaseOffset !== undefined
      ? siOf("releaseOffset", unit.releaseOffset, "length", { min: 0, max: 10 })
      : 0;
  const h0 = Math.max(install + release, 0.6); // GG.2
  const altitudeFactor = altitude === undefined ? 1 : roomAltitudeFactor(altitude);
  const usesHeld = stated === undefined && held !== undefined;
  const remembered: readonly Remembered[] = [
    ...(thresholds.standing === "from-memory" ? (["thresholds"] as const) : []),
    ...(usesHeld && held.standing === "from-memory" ? (["flammability-limit"] as const) : []),
    ...(altitudeFactor > 1 ? (["altitude-factor"] as const) : []),
    ...further,
  ];
  const assumptions: readonly ChargeLimitStatement[] = [
    say("charge-limit.edition-used", { edition: `charge-limit.edition.${edition}` }),
    ...(install > places.ceiling
      ? [say("charge-limit.above-reference-height", { height: m(install) })]
      : []),
    ...(usesHeld
      ? [
          say("charge-limit.flammability-limit-used", {
            limit: lowerFlammabilityLimit,
            standing: `charge-limit.standing.${held.standing}`,
          }),
        ]
      : []),
    ...(altitude === undefined ? [say("charge-limit.low-altitude")] : []),
  ];
  const answer: AnnexGGAnswer = {
    edition,
    unrestricted: thresholds.m1,
    maximum: thresholds.m2,
    systemMaximum: thresholds.m3,
    releaseHeight: m(h0),
    lowerFlammabilityLimit,
    altitudeFactor,
    assumptions,
    cautions: roomCautions(refrigerant, remembered),
    sources: [
      { source: edition, clause: edition === "en-378-1" ? "C.2" : "GG.1, GG.2" },
      ...(usesHeld && held.citation ? [held.citation] : []),
      ...(altitudeFactor > 1
        ? [{ source: "from-memory", clause: "altitude factor on floor areas" } as const]
        : []),
    ],
  };
  const cap = hasCaps(edition) ? smallRoomCap : "none";
  return { LFL: lowerFlammabilityLimit.si, h0, cap, remembered, answer };
}

/** Height of installation, m. */
function installedAt({ place, installationHeight }: RoomUnit): number {
  if ((place === undefined) === (installationHeight === undefined)) {
    throw new InvalidInputError({
      argument: "place",
      value: describe(place),
      allowed: "either place or installationHeight",
      hint: say("charge-limit.place-or-height"),
    });
  }
  if (installationHeight !== undefined) {
    return siOf("installationHeight", installationHeight, "length", { min: 0, max: 10 });
  }
  return places[oneOf("place", place as IndoorUnitPlace, Object.keys(places) as IndoorUnitPlace[])];
}

/** The charge that a floor area in m² allows, kg, by each form; a form that does not apply is unlimited. */
export function byArea({ LFL, h0, cap, answer }: GGRule, floorArea: number): ByArea {
  const A = floorArea / answer.altitudeFactor;
  const applies = (form: SmallRoomCap) => cap === "strictest" || cap === form;
  return {
    "floor-area": 2.5 * LFL ** 1.25 * h0 * Math.sqrt(A), // GG.2
    "release-height-cap": applies("release-height") ? 0.75 * LFL * h0 * A : Infinity,
    "room-height-cap": applies("room-height") ? 0.5 * LFL * 2.2 * A : Infinity,
  };
}

/** The floor area that a charge in kg needs, m², by the same forms. */
export function areaFor({ LFL, h0, cap, answer }: GGRule, charge: number): number {
  const applies = (form: SmallRoomCap) => cap === "strictest" || cap === form;
  const areas = [
    (charge / (2.5 * LFL ** 1.25 * h0)) ** 2, // GG.2
    applies("release-height") ? charge / (0.75 * LFL * h0) : 0,
    applies("room-height") ? charge / (0.5 * LFL * 2.2) : 0,
  ];
  return Math.max(...areas) * answer.altitudeFactor;
}
