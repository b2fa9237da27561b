// Is this charge of flammable refrigerant right for this room? A verdict by Annex GG.
// Follows IEC 60335-2-40:2018, GG.1 and GG.2; decision by JCGM 106:2012, 8.3.
// Does not cover what annex-gg.ts does not: ventilation, joined rooms, fans, sensors, portable units.
import { type Assessment, cite, verdict } from "../assessment/assessment.ts";
import { objectOf, siOf } from "../quantity/check.ts";
import type { Quantity } from "../quantity/quantity.ts";
import type { RoomUnit } from "./annex-gg.ts";
import { decide, type RoomInstruments } from "./decide.ts";
import { type RoomChargeLimit, roomChargeLimit } from "./room-charge-limit.ts";
import { type ChargeLimitCause, type ChargeLimitStatement, say } from "./statements.ts";

/**
 * A unit, its charge and its room.
 *
 * Source: none; the library's own type.
 */
export interface RoomChargeInput extends RoomUnit {
  /** Total charge, factory charge and what was added, above 0. */
  readonly charge: Quantity<"mass">;
  /** Floor area of the room, above 0. */
  readonly floorArea: Quantity<"area">;
  /** What is known of scale and tape; counted as exact when left out. */
  readonly instruments?: RoomInstruments<"area">;
  /** How sure a pass or a fail has to be; 0.95 when left out. */
  readonly confidence?: number;
}

/** What is wrong. Source: see {@link assessRoomCharge}. */
export type RoomChargeCause = ChargeLimitCause;

/**
 * The verdict on a charge in a room.
 *
 * Source: see {@link assessRoomCharge}.
 */
export interface RoomChargeAssessment extends Assessment<RoomChargeCause, ChargeLimitStatement> {
  /** The largest charge allowed, and what decides it. */
  readonly limit: RoomChargeLimit;
}

/**
 * Judges a charge of flammable refrigerant against the limit of its unventilated room.
 *
 * @param input - Unit, refrigerant, place, charge, floor area, instruments.
 * @returns The verdict; `beyond-m2` means that no unventilated room is large enough by this rule.
 * @throws {@link InvalidInputError} as {@link roomChargeLimit}.
 *
 * Cautions: a figure for planning: the unit's manual and listing decide, and local code.
 *
 * Source: IEC 60335-2-40:2018, GG.1 and GG.2; JCGM 106:2012, 8.3.
 *
 * @example
 * ```ts
 * import { assessRoomCharge } from "hvac-install-math/charge-limit";
 * import { kg, m2 } from "hvac-install-math/quantity";
 * import { R32 } from "hvac-install-math/refrigerants";
 *
 * const unit = { refrigerant: R32, place: "floor", charge: kg(2.1) } as const;
 * assessRoomCharge({ ...unit, floorArea: m2(40) }).outcome; // => pass
 * assessRoomCharge({ ...unit, floorArea: m2(30) }).cause; // => room-too-small
 * ```
 */
export function assessRoomCharge(input: RoomChargeInput): RoomChargeAssessment {
  objectOf("input", input);
  const limit = roomChargeLimit(input);
  const area = siOf("floorArea", input.floorArea, "area");
  // dm/dA: half of m/A along the root, m/A along the cap, none where the room does not matter.
  const powers = { unrestricted: 0, m2: 0, cap: 1, "floor-area": 0.5 };
  const { instruments, charge, confidence } = input;
  const { outcome, reasons, assumptions } = decide({
    charge,
    limit: limit.limit,
    slope: (powers[limit.decidedBy] * limit.limit.si) / area,
    instruments,
    unit: input.floorArea.unit,
    confidence,
  });
  const { maximum } = limit;
  const beyond = charge.si > maximum.si;
  const actions = {
    pass: () => [],
    fail: () => [
      say("charge-limit.add-no-refrigerant"),
      beyond
        ? say("charge-limit.use-other-clauses", { maximum: maximum.as(charge.unit) })
        : say("charge-limit.find-larger-room"),
    ],
    inconclusive: () => [say("charge-limit.weigh-or-measure-better")],
  }[outcome]();
  return verdict({
    outcome,
    ...(outcome === "fail" && { cause: beyond ? "beyond-m2" : "room-too-small" }),
    reasons,
    assumptions: [...limit.assumptions, ...assumptions],
    cautions: limit.cautions,
    actions,
    sources: [...limit.sources, cite("jcgm-106-2012", "8.3")],
    limit,
  });
}
