// How much may leak into the effective dispersal volume? Concentration for A1, a share of the LFL for A2L.
// Follows ANSI/ASHRAE Standard 15-2022, 7.3 and 7.6, and ASHRAE 15.2-2022, all from memory.
// Does not cover machinery rooms, mitigation by ventilation, nor the tables of ASHRAE 15.2.

import { type Citation, cite } from "../assessment/assessment.ts";
import { flagOf, objectOf, oneOf, siOf, textOf } from "../quantity/check.ts";
import { frozen } from "../quantity/frozen.ts";
import { isAtMost } from "../quantity/limit.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { kg, kgPerM3 } from "../quantity/units/mass.ts";
import {
  type RoomCaution,
  type RoomRefrigerant,
  refrigerantSafety,
  roomCautions,
  type SafetyLimit,
} from "./refrigerant-safety.ts";

/** Who is in the room. Source: ANSI/ASHRAE Standard 15-2022, 4, from memory. */
export type Occupancy = "institutional" | "other";

/**
 * The charge that may leave into a dispersal volume.
 *
 * Source: see {@link dispersalChargeLimit}.
 */
export interface DispersalLimit {
  /** EDVC: the largest releasable charge. */
  readonly limit: Quantity<"mass">;
  /** The concentration limit or LFL behind it. */
  readonly basis: SafetyLimit;
  /** The factors on it: occupancy, and for A2L the concentration factor of 0.5. */
  readonly factor: number;
  /** The rule itself is from memory. */
  readonly standing: "from-memory";
  /** Where the rule stands. */
  readonly citation: Citation;
  /** What can hurt someone, and what overrides the figure. */
  readonly cautions: readonly RoomCaution[];
}

/**
 * The effective dispersal volume charge of ASHRAE 15-2022: V_eff · RCL · F_occ for A1 and the B classes, and
 * V_eff · LFL · 0.5 · F_occ for A2L in comfort cooling; F_occ is 0.5 for institutional occupancy. What can leave has to
 * stay at or below it: the whole charge, or less with listed shut-off valves.
 *
 * @param space - Refrigerant, effective dispersal volume above 0 (of the smallest space; connected spaces count only
 * by permanent openings, transfer air or continuous ducted flow), occupancy.
 * @returns The charge, with the limit behind it.
 * @throws {@link InvalidInputError} for A2 and A3, where no limit is held, or when a kind or range does not fit.
 *
 * Cautions: the rule is from memory: check it against the adopted edition before it decides.
 *
 * Source: ANSI/ASHRAE Standard 15-2022, 7.3 and 7.6, from memory; ANSI/ASHRAE Standard 34 for the limits.
 *
 * @example
 * ```ts
 * import { dispersalChargeLimit } from "hvac-install-math/charge-limit";
 * import { m3 } from "hvac-install-math/quantity";
 * import { R32, R410A } from "hvac-install-math/refrigerants";
 *
 * const volume = m3(50);
 * dispersalChargeLimit({ refrigerant: R410A, volume, occupancy: "other" }).limit.toString(); // => 21 kg
 * dispersalChargeLimit({ refrigerant: R32, volume, occupancy: "institutional" }).limit.toString(undefined, 2); // => 3.83 kg
 * ```
 */
export function dispersalChargeLimit(space: {
  /** The refrigerant. */
  readonly refrigerant: RoomRefrigerant;
  /** Effective dispersal volume. */
  readonly volume: Quantity<"volume">;
  /** Who is in the room. */
  readonly occupancy: Occupancy;
}): DispersalLimit {
  const { refrigerant, volume, occupancy } = objectOf("space", space);
  const V = siOf("volume", volume, "volume", { above: 0 });
  const people = oneOf("occupancy", occupancy, ["institutional", "other"]) === "other" ? 1 : 0.5;
  const { safetyClass, lowerFlammabilityLimits, concentrationLimits } =
    refrigerantSafety(refrigerant);
  oneOf("refrigerant.safetyClass", safetyClass, ["A1", "A2L", "B1", "B2L"]);
  const isMild = safetyClass === "A2L";
  const [basis] = isMild ? ashraeFirst(lowerFlammabilityLimits) : concentrationLimits;
  const { value } = basis as SafetyLimit;
  const factor = people * (isMild ? 0.5 : 1);
  return frozen({
    limit: kg(V * value.si * factor),
    basis: basis as SafetyLimit,
    factor,
    standing: "from-memory",
    citation: cite("ashrae-15-2022", "7.3, 7.6"),
    cautions: roomCautions(refrigerant, ["dispersal"]),
  });
}

/** The figure of ASHRAE 34 before others, where it is held. */
function ashraeFirst(limits: readonly SafetyLimit[]): readonly SafetyLimit[] {
  const its = limits.filter(({ citation }) => citation?.source === "ashrae-34-2022");
  return [...its, ...limits];
}

/**
 * What may be said of a dwelling without the tables of ASHRAE 15.2.
 *
 * Source: see {@link dwellingChargeEstimate}.
 */
export interface DwellingEstimate {
  /** Up to here no detector is asked for: 6 m³ · LFL, from memory. */
  readonly withoutDetector: Quantity<"mass">;
  /** An estimate of M_max, 0.5 · LFL · 2.2 m · A: no limit of the standard. */
  readonly estimate: Quantity<"mass">;
  /** Both are from memory. */
  readonly standing: "from-memory";
  /** The standard whose tables decide. */
  readonly citation: Citation;
}

/**
 * An estimate, and no more, of the largest charge of A2L in a dwelling by ASHRAE 15.2-2022, whose tables were not
 * found: a whole release may not reach the LFL. The unit's manual and the adopted edition decide.
 *
 * @param dwelling - LFL above 0 to 1 kg/m³, floor area of the space above 0.
 * @returns The charge without detector, and the estimate.
 * @throws {@link InvalidInputError} when a kind or range does not fit.
 *
 * Cautions: nothing may be installed by this figure.
 *
 * Source: ANSI/ASHRAE Standard 15.2-2022, from memory; the estimate is the library's own.
 *
 * @example
 * ```ts
 * import { dwellingChargeEstimate } from "hvac-install-math/charge-limit";
 * import { kgPerM3, lb, sqft } from "hvac-install-math/quantity";
 *
 * const { estimate } = dwellingChargeEstimate({ lowerFlammabilityLimit: kgPerM3(0.296), floorArea: sqft(120) });
 * estimate.toString(lb, 1); // => 8.0 lb
 * ```
 */
export function dwellingChargeEstimate(dwelling: {
  /** LFL of the refrigerant. */
  readonly lowerFlammabilityLimit: Quantity<"density">;
  /** Floor area of the space. */
  readonly floorArea: Quantity<"area">;
}): DwellingEstimate {
  const { lowerFlammabilityLimit, floorArea } = objectOf("dwelling", dwelling);
  const limits = { above: 0, max: 1 };
  const LFL = siOf("lowerFlammabilityLimit", lowerFlammabilityLimit, "density", limits);
  const A = siOf("floorArea", floorArea, "area", { above: 0 });
  return frozen({
    withoutDetector: kg(6 * LFL),
    estimate: kg(0.5 * LFL * 2.2 * A),
    standing: "from-memory",
    citation: cite("ashrae-15-2-2022", "tables of M_max, not found"),
  });
}

/** Limits of EN 378-1, C.3, kg/m³. Source: see {@link ventilationLimits}. */
export interface VentilationLimits {
  /** RCL: the most in the lowest underground floor without a measure. */
  readonly underground: Quantity<"density">;
  /** QLMV: the most with minimum ventilation, without a measure. */
  readonly minimumVentilation: Quantity<"density">;
  /** QLAV: the most with one measure; above it two are needed. */
  readonly additionalVentilation: Quantity<"density">;
  /** They are from memory. */
  readonly standing: "from-memory";
}

// RCL, QLMV, QLAV in kg/m³: EN 378-1:2016, Table C.3, from memory.
const en378: Readonly<Record<string, readonly [number, number, number]>> = {
  R32: [0.061, 0.063, 0.15],
  R410A: [0.39, 0.42, 0.42],
  R1234yf: [0.058, 0.06, 0.14],
  R1234zeE: [0.061, 0.063, 0.15],
};

/**
 * How many measures (ventilation, shut-off, alarm) a charge needs by EN 378-1, C.3, for tight systems of A1 and A2L
 * up to 150 kg: none up to QLMV (in the lowest underground floor up to RCL), one up to QLAV, two above.
 *
 * @param space - Refrigerant R32, R410A, R1234yf or R1234ze(E), charge above 0 to 150 kg, volume above 0, and whether
 * it is the lowest underground floor.
 * @returns The number of measures and the limits behind it.
 * @throws {@link InvalidInputError} for another refrigerant, or when a kind or range does not fit.
 *
 * Cautions: the limits are from memory: check them against the standard before they decide.
 *
 * Source: EN 378-1:2016, C.3, from memory.
 *
 * @example
 * ```ts
 * import { ventilationLimits } from "hvac-install-math/charge-limit";
 * import { kg, m3 } from "hvac-install-math/quantity";
 * import { R32 } from "hvac-install-math/refrigerants";
 *
 * const space = { refrigerant: R32, volume: m3(50), lowestUndergroundFloor: false };
 * ventilationLimits({ ...space, charge: kg(3.1) }).measures; // => 0
 * ventilationLimits({ ...space, charge: kg(5) }).measures; // => 1
 * ```
 */
export function ventilationLimits(space: {
  /** The refrigerant. */
  readonly refrigerant: RoomRefrigerant;
  /** Total charge. */
  readonly charge: Quantity<"mass">;
  /** Volume of the room. */
  readonly volume: Quantity<"volume">;
  /** Whether the room is in the lowest underground floor. */
  readonly lowestUndergroundFloor: boolean;
}): {
  /** Measures that are needed. */
  readonly measures: 0 | 1 | 2;
  /** The limits. */
  readonly limits: VentilationLimits;
  /** What can hurt someone, and what overrides the figure. */
  readonly cautions: readonly RoomCaution[];
} {
  const { refrigerant, charge, volume, lowestUndergroundFloor } = objectOf("space", space);
  const key = String(objectOf("refrigerant", refrigerant).designation).replace(/[^\w]/g, "");
  const [rcl, qlmv, qlav] = en378[
    oneOf("refrigerant.designation", key, Object.keys(en378))
  ] as readonly [number, number, number];
  textOf("refrigerant.safetyClass", refrigerant.safetyClass);
  const V = siOf("volume", volume, "volume", { above: 0 });
  const density = siOf("charge", charge, "mass", { above: 0, max: 150 }) / V;
  const low = flagOf("lowestUndergroundFloor", lowestUndergroundFloor);
  const keeps = (limit: number) => isAtMost(density, limit);
  return frozen({
    measures: keeps(low ? rcl : qlmv) ? 0 : keeps(qlav) ? 1 : 2,
    limits: {
      underground: kgPerM3(rcl),
      minimumVentilation: kgPerM3(qlmv),
      additionalVentilation: kgPerM3(qlav),
      standing: "from-memory",
    },
    cautions: roomCautions(refrigerant, ["ventilation-limits"]),
  });
}
