// How much may leak into this room before the air is unsafe? Charge by volume and concentration limit.
// Follows ANSI/ASHRAE Standard 34 (RCL), as ASHRAE 15 applies it to A1; EN 378-1 with practical limits.
// Does not cover the effective dispersal volume of ASHRAE 15-2022 nor its rules for A2L.
import { objectOf, siOf } from "../quantity/check.ts";
import { frozen } from "../quantity/frozen.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { m3 } from "../quantity/units/geometry.ts";
import { kg } from "../quantity/units/mass.ts";
import {
  type RoomCaution,
  type RoomRefrigerant,
  roomCautions,
  type SafetyLimit,
  safetyOf,
} from "./refrigerant-safety.ts";

/**
 * A refrigerant and the concentration that it may reach.
 */
export interface ConcentrationRule {
  /** The refrigerant. */
  readonly refrigerant: RoomRefrigerant;
  /** Limit in place of the RCL that the module holds, above 0 to 1 kg/m³: a practical limit, another edition. */
  readonly concentrationLimit?: Quantity<"density"> | undefined;
}

/**
 * A charge or a volume by concentration.
 *
 * Source: see {@link concentrationChargeLimit}.
 */
export interface ConcentrationAnswer<K extends "mass" | "volume"> {
  /** The largest charge, or the smallest volume. */
  readonly value: Quantity<K>;
  /** The limit that was used, with its source. */
  readonly basis: SafetyLimit;
  /** What can hurt someone, and what overrides the figure. */
  readonly cautions: readonly RoomCaution[];
}

function cautionsOf({ refrigerant }: ConcentrationRule, { standing }: SafetyLimit) {
  return roomCautions(refrigerant, standing === "from-memory" ? ["concentration-limit"] : []);
}

/** The limit that applies: the caller's, or the first that is held. */
function basisOf({ refrigerant, concentrationLimit }: ConcentrationRule): SafetyLimit {
  const held = safetyOf(refrigerant, concentrationLimit === undefined);
  if (concentrationLimit === undefined) return held?.concentrationLimits[0] as SafetyLimit;
  // The largest RCL that is held, of R-507A, is about half of this; a lost decimal point is ten times. Common practice, no source.
  siOf("concentrationLimit", concentrationLimit, "density", { above: 0, max: 1 });
  return { value: concentrationLimit, standing: "stated" };
}

/**
 * The largest charge whose whole leak keeps a room below the concentration limit: m = RCL · V.
 *
 * @param room - Refrigerant, volume of the room above 0, limit of at most 1 kg/m³ where another one applies.
 * @returns The charge with the limit that was used.
 * @throws {@link InvalidInputError} when no limit is held for the refrigerant or a range does not fit.
 *
 * Cautions: for A1. Flammable refrigerants follow the flammability rule as well, see
 * {@link roomChargeLimit}. Take the smallest room in which the whole charge can collect.
 *
 * Source: ANSI/ASHRAE Standard 34 (2022), RCL; each figure says whether it was read or remembered.
 *
 * @example
 * ```ts
 * import { concentrationChargeLimit } from "hvac-install-math/charge-limit";
 * import { m3 } from "hvac-install-math/quantity";
 * import { R410A } from "hvac-install-math/refrigerants";
 *
 * const { value, basis } = concentrationChargeLimit({ refrigerant: R410A, volume: m3(3 * 4 * 2.5) });
 * value.toString(undefined, 1); // => 12.6 kg
 * basis.standing; // => published
 * ```
 */
export function concentrationChargeLimit(
  room: ConcentrationRule & {
    /** Volume of the room. */
    readonly volume: Quantity<"volume">;
  },
): ConcentrationAnswer<"mass"> {
  objectOf("room", room);
  const basis = basisOf(room);
  const value = kg(basis.value.si * siOf("volume", room.volume, "volume", { above: 0 }));
  return frozen({ value, basis, cautions: cautionsOf(room, basis) });
}

/**
 * The smallest room volume that a whole leak of a charge keeps below the concentration limit: V = m / RCL.
 *
 * @param unit - Refrigerant, charge above 0, limit of at most 1 kg/m³ where another one applies.
 * @returns The volume with the limit that was used.
 * @throws {@link InvalidInputError} when no limit is held for the refrigerant or a range does not fit.
 *
 * Cautions: see {@link concentrationChargeLimit}.
 *
 * Source: ANSI/ASHRAE Standard 34 (2022), RCL.
 *
 * @example
 * ```ts
 * import { minimumRoomVolume } from "hvac-install-math/charge-limit";
 * import { kg } from "hvac-install-math/quantity";
 * import { R410A } from "hvac-install-math/refrigerants";
 *
 * minimumRoomVolume({ refrigerant: R410A, charge: kg(2.1) }).value.toString(); // => 5 m³
 * ```
 */
export function minimumRoomVolume(
  unit: ConcentrationRule & {
    /** Total charge, factory charge and what was added. */
    readonly charge: Quantity<"mass">;
  },
): ConcentrationAnswer<"volume"> {
  objectOf("unit", unit);
  const basis = basisOf(unit);
  const value = m3(siOf("charge", unit.charge, "mass", { above: 0 }) / basis.value.si);
  return frozen({ value, basis, cautions: cautionsOf(unit, basis) });
}
