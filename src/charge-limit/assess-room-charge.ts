// Is this charge of flammable refrigerant right for this room? A verdict by Annex GG.
// Follows IEC 60335-2-40, GG.1 and GG.2; decision by JCGM 106:2012, 8.3.
// Does not cover what annex-gg.ts and room-protection.ts do not: mechanical ventilation, portable units.
import { type Assessment, cite, type Outcome, verdict } from "../assessment/assessment.ts";
import { objectOf, siOf } from "../quantity/check.ts";
import { frozen } from "../quantity/frozen.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { m2 } from "../quantity/units/geometry.ts";
import { kg } from "../quantity/units/mass.ts";
import { areaFor, type RoomUnit, ruleOf } from "./annex-gg.ts";
import { decide, type RoomInstruments } from "./decide.ts";
import { roomCautions } from "./refrigerant-safety.ts";
import {
  type RoomChargeLimit,
  type RoomLimitDecider,
  roomChargeLimit,
} from "./room-charge-limit.ts";
import {
  allowedPerArea,
  countedOf,
  missingOf,
  type ProtectedLimit,
  protectedLimit,
  type RoomProtection,
  rememberedOf,
} from "./room-protection.ts";
import { type ChargeLimitCause, type ChargeLimitStatement, say } from "./statements.ts";

/**
 * A unit, its charge and its room.
 */
export interface RoomChargeInput extends RoomUnit {
  /** Total charge of the whole system, factory charge and what was added, above 0. */
  readonly charge: Quantity<"mass">;
  /** Floor area of the room, above 0. */
  readonly floorArea: Quantity<"area">;
  /** What lets the room hold more than its own floor area. */
  readonly protection?: RoomProtection | undefined;
  /** What is known of scale and tape; counted as exact when left out. */
  readonly instruments?: RoomInstruments<"area"> | undefined;
  /** How sure a pass or a fail has to be; 0.95 when left out. */
  readonly confidence?: number | undefined;
}

/** What is wrong. Source: see {@link assessRoomCharge}. */
export type RoomChargeCause = Exclude<ChargeLimitCause, "too-near-an-opening" | "closed-in">;

/**
 * The limit of a room with its protection.
 *
 * Source: see {@link assessRoomCharge}.
 */
export interface ProtectedRoomLimit extends Omit<RoomChargeLimit, "decidedBy"> {
  /** What decides the limit. */
  readonly decidedBy: RoomLimitDecider | ProtectedLimit["decidedBy"];
}

/**
 * The verdict on a charge in a room.
 *
 * Source: see {@link assessRoomCharge}.
 */
export interface RoomChargeAssessment extends Assessment<RoomChargeCause, ChargeLimitStatement> {
  /** The largest charge allowed, and what decides it. */
  readonly limit: ProtectedRoomLimit;
}

/**
 * Judges a charge of flammable refrigerant against the limit of its room: closed and unventilated, or protected by
 * openings to the next room, by enhanced tightness, or by a fan that a detector starts. The verdict says by which
 * edition; what rests on memory is a finding (`charge-limit.from-memory`).
 *
 * @param input - Unit, refrigerant, place, charge, floor area, protection, instruments.
 * @returns The verdict; `beyond-m2` means that no floor area is enough by this rule, `beyond-m3` that the edition has
 * no rule for so much. Where a protection is not stated whole, a charge that the room holds by itself passes by that
 * limit; any other that does not fail is `inconclusive` and says what to state.
 * @throws {@link InvalidInputError} as {@link roomChargeLimit}, and when the protection is not one of the edition.
 *
 * Cautions: a figure for planning: the unit's manual and listing decide, and local code.
 *
 * Source: IEC 60335-2-40, GG.1 and GG.2; JCGM 106:2012, 8.3; protections see {@link RoomProtection}.
 *
 * @example
 * ```ts
 * import { assessRoomCharge } from "hvac-install-math/charge-limit";
 * import { kg, m, m2 } from "hvac-install-math/quantity";
 * import { R32 } from "hvac-install-math/refrigerants";
 *
 * const unit = { refrigerant: R32, place: "floor", charge: kg(2.1) } as const;
 * assessRoomCharge({ ...unit, floorArea: m2(40) }).outcome; // => pass
 * assessRoomCharge({ ...unit, floorArea: m2(30) }).cause; // => room-too-small
 * const protection = { kind: "enhanced-tightness", declared: true, measure: "alarm", ceilingHeight: m(2.4) } as const;
 * assessRoomCharge({ ...unit, floorArea: m2(30), protection }).limit.limit.toString(undefined, 2); // => 10.13 kg
 * ```
 */
export function assessRoomCharge(input: RoomChargeInput): RoomChargeAssessment {
  const { charge, floorArea, instruments, confidence } = objectOf("input", input);
  const A = siOf("floorArea", floorArea, "area", { above: 0 });
  const protection = countedOf(input.protection);
  const missing = protection === undefined ? [] : missingOf(protection);
  const limit = limitOf(input);
  const step = 1e-4; // of the area, for the slope of the limit
  const wider = limitOf({ ...input, floorArea: m2(A * (1 + step)) });
  const decided = decide({
    charge,
    limit: limit.limit,
    slope: (wider.limit.si - limit.limit.si) / (A * step),
    instruments,
    unit: floorArea.unit,
    confidence,
  });
  const unstated = missing.length > 0 && decided.outcome !== "fail";
  if (unstated) {
    const own = assessRoomCharge({ ...input, protection: undefined });
    if (own.outcome === "pass") return own;
  }
  const outcome = unstated ? "inconclusive" : decided.outcome;
  const facts = missing.map((fact) => `charge-limit.missing.${fact}` as const);
  const stated = missing.length > 0 ? undefined : protection; // what a remedy may rest on
  const cause = outcome === "fail" ? causeOf(charge, limit, stated) : undefined;
  return verdict({
    outcome,
    ...(cause && { cause }),
    reasons: [
      ...(unstated
        ? [say("charge-limit.protection-not-stated", { missing: facts })]
        : beyond(cause, outcome, charge, limit)),
      ...(unstated && decided.outcome === "pass" ? [] : decided.reasons),
    ],
    assumptions: [
      ...(protection ? [] : [say("charge-limit.one-closed-room")]),
      ...limit.assumptions,
      ...decided.assumptions,
    ],
    cautions: limit.cautions,
    actions: [
      ...(unstated ? [say("charge-limit.state-protection", { missing: facts })] : []),
      ...(decided.outcome === "inconclusive" ? [say("charge-limit.weigh-or-measure-better")] : []),
      ...(cause
        ? [say("charge-limit.add-no-refrigerant"), remedyOf(cause, input, limit, stated)]
        : []),
    ],
    sources: [...limit.sources, cite("jcgm-106-2012", "8.3")],
    limit,
  });
}

/** The limit with the protection: it never lowers what the floor area allows. */
function limitOf(input: RoomChargeInput): ProtectedRoomLimit {
  const { refrigerant, floorArea } = input;
  const protection = countedOf(input.protection);
  const own = roomChargeLimit(input);
  if (protection === undefined) return own;
  const rule = ruleOf(input, rememberedOf(protection, input.edition));
  const { limit, decidedBy } = protectedLimit(rule, input, protection, floorArea.si);
  // Enhanced tightness is a rule for the whole system; openings and a fan are rules for one unit.
  const isForSystem = decidedBy === "tightness";
  const most = isForSystem ? own.systemMaximum : own.maximum;
  const held = Math.min(limit, most.si);
  if (held <= own.limit.si) return own;
  return frozen({
    ...own,
    limit: kg(held),
    byFormula: kg(limit),
    decidedBy: isForSystem || limit <= most.si ? decidedBy : "m2",
    cautions: roomCautions(refrigerant, rule.remembered),
  });
}

function causeOf(
  charge: Quantity<"mass">,
  { maximum, systemMaximum, decidedBy }: ProtectedRoomLimit,
  stated: RoomProtection | undefined,
): RoomChargeCause {
  if (charge.si > systemMaximum.si) return "beyond-m3";
  if (decidedBy === "openings") return "openings-too-small";
  if (decidedBy === "airflow") return "airflow-too-small";
  // In a larger room a tight system may hold more than m2.
  const isTight = stated?.kind === "enhanced-tightness";
  return charge.si > maximum.si && !isTight ? "beyond-m2" : "room-too-small";
}

/** What is said first where the charge is beyond the rule itself. */
function beyond(
  cause: RoomChargeCause | undefined,
  outcome: Outcome,
  charge: Quantity<"mass">,
  limit: ProtectedRoomLimit,
): ChargeLimitStatement[] {
  const by = (most: Quantity<"mass">) => ({ charge, limit: most.as(charge.unit) });
  if (cause === "beyond-m3") return [say("charge-limit.beyond-m3", by(limit.systemMaximum))];
  if (cause === "beyond-m2") return [say("charge-limit.beyond-m2", by(limit.maximum))];
  if (outcome === "pass" && charge.si <= limit.unrestricted.si) {
    return [say("charge-limit.room-does-not-matter", by(limit.unrestricted))];
  }
  return [];
}

function remedyOf(
  cause: RoomChargeCause,
  input: RoomChargeInput,
  { maximum, systemMaximum }: ProtectedRoomLimit,
  stated: RoomProtection | undefined,
): ChargeLimitStatement {
  const { charge } = input;
  const most = (limit: Quantity<"mass">) => ({ maximum: limit.as(charge.unit) });
  switch (cause) {
    case "beyond-m3":
      return say("charge-limit.divide-the-system", most(systemMaximum));
    case "beyond-m2":
      return say("charge-limit.use-other-clauses", most(maximum));
    case "openings-too-small":
      return say("charge-limit.enlarge-openings");
    case "airflow-too-small":
      return say("charge-limit.raise-airflow");
    default:
      return say("charge-limit.find-larger-room", { area: m2(areaNeeded(input, maximum, stated)) });
  }
}

/** The least floor area for the charge, m²: of a closed room up to m2, or the area that counts by the protection. */
function areaNeeded(
  input: RoomChargeInput,
  maximum: Quantity<"mass">,
  stated: RoomProtection | undefined,
): number {
  const { charge } = input;
  const rule = ruleOf(input);
  const closed = charge.si > maximum.si ? Infinity : areaFor(rule, charge.si);
  if (stated === undefined || stated.kind === "connected-rooms") return closed;
  return Math.min(closed, charge.si / allowedPerArea(rule, stated));
}
