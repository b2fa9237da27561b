// What lets a room hold more than its own floor area? Joined rooms, enhanced tightness, a fan that a detector starts.
// Follows IEC 60335-2-40:2018, Annex GG, as manufacturers' manuals print it; the clauses from memory.
// Does not cover mechanical ventilation, A2 and A3, nor what a listing asks for beside it.
import { flagOf, numberOf, objectOf, oneOf, refuse, siOf } from "../quantity/check.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { byArea, type GGRule, type RoomUnit } from "./annex-gg.ts";
import { molarMassOf } from "./refrigerant-safety.ts";
import type { ProtectionFact, Remembered } from "./statements.ts";
import { openingPerKilogram } from "./ventilation-opening.ts";

/**
 * Two permanent openings to the next room, for natural ventilation.
 *
 * Source: IEC 60335-2-40:2018, Annex GG, as a manufacturer's manual prints it.
 */
export interface ConnectedRooms {
  readonly kind: "connected-rooms";
  /** Floor area of the adjoining room, above 0. */
  readonly adjoiningFloorArea: Quantity<"area">;
  /** Area of the lower opening that counts: what lies within 300 mm of the floor, half of it below 200 mm. */
  readonly lowerOpening: Quantity<"area">;
  /** Area of the upper opening. */
  readonly upperOpening: Quantity<"area">;
  /**
   * Whether both are permanent, the lower one begins at most 100 mm above the floor and is 20 mm high or more, and
   * the upper one begins 1.5 m above the floor or higher. A pass needs `true`.
   */
  readonly placedAsRequired?: boolean | undefined;
  /** Molar mass in g/mol, above 29; needed where the module holds none. */
  readonly molarMass?: number | undefined;
}

/**
 * A system that its maker declares as of enhanced tightness.
 *
 * Source: manufacturers' manuals of multi-split and VRF systems: 0.25 · LFL · h · A, and 0.5 · LFL · h · A with an alarm,
 * ventilation or a shut-off valve; h at most 2.2 m.
 */
export interface EnhancedTightness {
  readonly kind: "enhanced-tightness";
  /**
   * Floor area that counts, above 0, where it is not the room's own: by the 2022 text that of all rooms served, by
   * the 2018 text that of the smallest; rooms that are joined by permanent openings count together.
   */
  readonly countedFloorArea?: Quantity<"area"> | undefined;
  /** Ceiling height, above 0; what is above 2.2 m does not count. */
  readonly ceilingHeight: Quantity<"length">;
  /** Alarm, ventilation or shut-off valve on detection, or none of them. */
  readonly measure: "none" | "alarm" | "ventilation" | "shut-off";
  /** Whether the maker declares it. A pass needs `true`. */
  readonly declared?: boolean | undefined;
}

/**
 * A fan that circulates the air of a larger space as soon as a detector trips.
 *
 * Source: IEC 60335-2-40:2018 and UL 60335-2-40, Annex GG, from memory.
 */
export interface Circulation {
  readonly kind: "circulation";
  /** Floor area of the whole space that the fan serves, above 0. */
  readonly totalFloorArea: Quantity<"area">;
  /** Airflow while it circulates, above 0. */
  readonly airflow: Quantity<"volumeFlow">;
  /**
   * Whether a detector of the unit trips at 25 % of the LFL or less, acts within 30 s and keeps the fan on for 5
   * minutes or more. A pass needs `true`.
   */
  readonly detector?: boolean | undefined;
}

/** What protects a room. Source: see each of them. */
export type RoomProtection = ConnectedRooms | EnhancedTightness | Circulation;

/** What a protected room may hold, and what decides that. */
export interface ProtectedLimit {
  /** Largest charge, kg. */
  readonly limit: number;
  readonly decidedBy: "joined-area" | "openings" | "tightness" | "circulated-area" | "airflow";
}

const facts = {
  "connected-rooms": ["openings-placed", "placedAsRequired"],
  "enhanced-tightness": ["enhanced-tightness", "declared"],
  circulation: ["detector", "detector"],
} as const;

/** Whether the fact that a protection hangs on is stated: yes, no, or not at all. */
function factOf(protection: RoomProtection): [fact: ProtectionFact, stated: boolean | undefined] {
  const [fact, field] = facts[oneOf("protection.kind", protection.kind, kinds)];
  const stated = (protection as unknown as Record<string, unknown>)[field];
  if (stated !== undefined) flagOf(`protection.${field}`, stated as boolean);
  return [fact, stated as boolean | undefined];
}

/** What has not been stated, though a pass needs it. */
export function missingOf(protection: RoomProtection): readonly ProtectionFact[] {
  const [fact, stated] = factOf(protection);
  return stated === undefined ? [fact] : [];
}

/** A protection that counts: what is stated not to be there protects nothing. */
export function countedOf(protection: RoomProtection | undefined): RoomProtection | undefined {
  if (protection === undefined) return undefined;
  return factOf(objectOf("protection", protection))[1] === false ? undefined : protection;
}

const kinds = ["connected-rooms", "enhanced-tightness", "circulation"] as const;

/** What of a protection rests on memory. */
export function rememberedOf({ kind }: RoomProtection, edition: RoomUnit["edition"]): Remembered[] {
  if (kind === "circulation") return ["circulation"];
  if (edition === undefined || edition === "iec-60335-2-40-2018") return [];
  return kind === "connected-rooms" ? ["openings"] : ["enhanced-tightness"];
}

/** The largest charge of a room with its protection, for its floor area in m². */
export function protectedLimit(
  rule: GGRule,
  unit: RoomUnit,
  protection: RoomProtection,
  floorArea: number,
): ProtectedLimit {
  const { edition } = rule.answer;
  const isMild = unit.refrigerant.safetyClass === "A2L";
  if (!isMild || edition === "iec-60335-2-40-2013" || edition === "en-378-1") {
    const allowed =
      "none: this rule is for A2L, from IEC 60335-2-40:2018 and UL 60335-2-40:2019 on";
    refuse("protection", protection.kind, allowed, "nothing");
  }
  if (protection.kind === "connected-rooms") {
    return byOpenings(rule, unit, protection, floorArea);
  }
  return protection.kind === "enhanced-tightness"
    ? byTightness(rule, protection, floorArea)
    : byCirculation(rule, protection);
}

/** The least of what both rooms together and the two openings allow. */
function byOpenings(
  rule: GGRule,
  unit: RoomUnit,
  protection: ConnectedRooms,
  A1: number,
): ProtectedLimit {
  const path = (name: keyof ConnectedRooms) => `protection.${name}`;
  const A2 = siOf(path("adjoiningFloorArea"), protection.adjoiningFloorArea, "area", { above: 0 });
  const lower = siOf(path("lowerOpening"), protection.lowerOpening, "area", { min: 0 });
  const upper = siOf(path("upperOpening"), protection.upperOpening, "area", { min: 0 });
  const { molarMass = molarMassOf(path("molarMass"), unit.refrigerant) } = protection;
  const M = numberOf(path("molarMass"), molarMass, { above: 29, max: 1000 });
  const alone = Math.min(...Object.values(byArea(rule, A1)));
  const opening = Math.min(lower, 2 * upper); // the upper one has to have half of the area
  const through = alone + opening / openingPerKilogram(A1, alone, M, rule.LFL);
  const joined = Math.min(...Object.values(byArea(rule, A1 + A2)));
  return through < joined
    ? { limit: through, decidedBy: "openings" }
    : { limit: joined, decidedBy: "joined-area" };
}

/** How much charge each square meter allows, kg/m²: of the area that counts by a protection which goes by area alone. */
export function allowedPerArea(
  { LFL, answer }: GGRule,
  protection: EnhancedTightness | Circulation,
): number {
  const perHeight = LFL / answer.altitudeFactor;
  if (protection.kind === "circulation") return 0.5 * 2.2 * perHeight;
  const { ceilingHeight, measure } = protection;
  const h = Math.min(2.2, siOf("protection.ceilingHeight", ceilingHeight, "length", { above: 0 }));
  const measures = ["none", "alarm", "ventilation", "shut-off"] as const;
  const share = oneOf("protection.measure", measure, measures) === "none" ? 0.25 : 0.5;
  return share * h * perHeight;
}

function byTightness(rule: GGRule, protection: EnhancedTightness, own: number): ProtectedLimit {
  const { countedFloorArea } = protection;
  const A =
    countedFloorArea === undefined
      ? own
      : siOf("protection.countedFloorArea", countedFloorArea, "area", { above: 0 });
  return { limit: allowedPerArea(rule, protection) * A, decidedBy: "tightness" };
}

function byCirculation(rule: GGRule, protection: Circulation): ProtectedLimit {
  const { totalFloorArea, airflow } = protection;
  const A = siOf("protection.totalFloorArea", totalFloorArea, "area", { above: 0 });
  const perHour = 3600 * siOf("protection.airflow", airflow, "volumeFlow", { above: 0 });
  const byFloor = allowedPerArea(rule, protection) * A;
  // 30 m³/h per kg over LFL by IEC, 60 by UL; from memory.
  const byFlow = (perHour * rule.LFL) / (rule.answer.edition.startsWith("ul-") ? 60 : 30);
  return byFlow < byFloor
    ? { limit: byFlow, decidedBy: "airflow" }
    : { limit: byFloor, decidedBy: "circulated-area" };
}
