// Is a unit with a flammable refrigerant right where it stands outdoors? Open air, and the zone around it.
// Follows manufacturers' manuals, whose protection zone decides; common practice, no source, for the open air.
// Does not cover the rooms that a split serves (assess-rooms.ts), plant rooms, roofs with parapets.
import { type Assessment, cite, verdict } from "../assessment/assessment.ts";
import { conformity } from "../assessment/conformity.ts";
import { type Instrument, standardUncertainty } from "../assessment/uncertainty.ts";
import { listOf, objectOf, oneOf, siOf, textOf } from "../quantity/check.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { m } from "../quantity/units/geometry.ts";
import { type RoomCaution, type RoomRefrigerant, roomCautions } from "./refrigerant-safety.ts";
import { type ChargeLimitCause, type ChargeLimitStatement, say } from "./statements.ts";

/**
 * A unit whose refrigerant stays outdoors, such as a monobloc heat pump: only water enters the building.
 */
export interface OutdoorUnitInput {
  /** The refrigerant: flammable, or the question does not arise. */
  readonly refrigerant: RoomRefrigerant;
  /** Where it stands: in open air, or closed in by walls on three sides or more, in a pit or below ground. */
  readonly surroundings: "open-air" | "closed-in";
  /** Radius of the protection zone in the unit's manual, above 0. */
  readonly protectionZone?: Quantity<"length"> | undefined;
  /**
   * Distances from the unit to every door, window, air intake, drain, cellar opening and ignition source near it,
   * 0 or more; an empty list where there is none.
   */
  readonly distances?: readonly Quantity<"length">[] | undefined;
  /** What is known of the tape; counted as exact when left out. */
  readonly tape?: Instrument<"length"> | undefined;
  /** How sure a pass or a fail has to be; 0.95 when left out. */
  readonly confidence?: number | undefined;
}

/** What is wrong outdoors. Source: see {@link assessOutdoorUnit}. */
export type OutdoorUnitCause = Extract<ChargeLimitCause, "too-near-an-opening" | "closed-in">;

/** The verdict on a unit outdoors. Source: see {@link assessOutdoorUnit}. */
export type OutdoorUnitAssessment = Assessment<OutdoorUnitCause, ChargeLimitStatement>;

/**
 * Judges where a unit with a flammable refrigerant stands outdoors, such as a monobloc with R-290. No floor area
 * limits its charge there; what counts is that a leak drifts away and meets neither an opening of the building nor an
 * ignition source. How far that is, only the unit's manual says: without its protection zone the answer is
 * `inconclusive`, and a unit that is closed in fails, for heavier-than-air refrigerant collects there.
 *
 * @param input - Refrigerant, surroundings, the manual's zone, the distances.
 * @returns The verdict.
 * @throws {@link InvalidInputError} when the refrigerant does not burn, or a kind or range does not fit.
 *
 * Cautions: a leak in the water heat exchanger carries refrigerant into the heating water. The manual's air separator
 * and safety valve belong to the unit.
 *
 * Source: manufacturers' published manuals for the zone; common practice, no source, for the rest.
 *
 * @example
 * ```ts
 * import { assessOutdoorUnit } from "hvac-install-math/charge-limit";
 * import { m } from "hvac-install-math/quantity";
 * import { R290 } from "hvac-install-math/refrigerants";
 *
 * const unit = { refrigerant: R290, surroundings: "open-air", distances: [m(1.4), m(3)] } as const;
 * assessOutdoorUnit(unit).outcome; // => inconclusive
 * assessOutdoorUnit({ ...unit, protectionZone: m(1) }).outcome; // => pass
 * assessOutdoorUnit({ ...unit, protectionZone: m(1.5) }).cause; // => too-near-an-opening
 * ```
 */
export function assessOutdoorUnit(input: OutdoorUnitInput): OutdoorUnitAssessment {
  const { refrigerant, surroundings, tape, confidence } = objectOf("input", input);
  const { safetyClass, designation } = objectOf("refrigerant", refrigerant);
  textOf("refrigerant.designation", designation);
  oneOf("refrigerant.safetyClass", safetyClass, ["A2L", "A2", "A3", "B2L", "B2", "B3"]);
  const closed =
    oneOf("surroundings", surroundings, ["open-air", "closed-in"] as const) === "closed-in";
  const common = {
    assumptions: tape ? [] : [say("charge-limit.exact-distance")],
    cautions: cautionsOf(refrigerant),
    sources: [cite("manufacturer-manuals", "protection zone"), cite("common-practice")],
  };
  if (closed) {
    return verdict({
      outcome: "fail",
      cause: "closed-in",
      reasons: [say("charge-limit.closed-in-outdoors")],
      actions: [say("charge-limit.move-to-open-air")],
      ...common,
    });
  }
  const asked = questionsOf(input);
  if (asked) return verdict({ outcome: "inconclusive", ...asked, ...common });
  const required = input.protectionZone as Quantity<"length">;
  const distance = nearestOf(input.distances as readonly Quantity<"length">[]);
  if (distance === undefined) {
    return verdict({
      outcome: "pass",
      reasons: [say("charge-limit.nothing-near", { required })],
      ...common,
    });
  }
  const u = tape === undefined ? m(0) : standardUncertainty(tape, m, "tape");
  const { outcome } = conformity({
    value: distance,
    standardUncertainty: u,
    lowerLimit: required,
    confidence,
  });
  const values = { distance, required: required.as(distance.unit) };
  const said = {
    pass: () => say("charge-limit.clear-of-openings", values),
    fail: () => say("charge-limit.too-near-an-opening", values),
    inconclusive: () => say("charge-limit.distance-too-close-to-call", values),
  }[outcome]();
  return verdict({
    outcome,
    ...(outcome === "fail" && { cause: "too-near-an-opening" }),
    reasons: [said],
    actions:
      outcome === "pass"
        ? []
        : [
            outcome === "fail"
              ? say("charge-limit.move-outdoor-unit", { required: values.required })
              : say("charge-limit.measure-distances"),
          ],
    ...common,
  });
}

/** What has to be stated before anything can be judged, if so. */
function questionsOf({ protectionZone, distances }: OutdoorUnitInput) {
  if (protectionZone === undefined) {
    return {
      reasons: [say("charge-limit.protection-zone-not-stated")],
      actions: [say("charge-limit.state-protection-zone")],
    };
  }
  siOf("protectionZone", protectionZone, "length", { above: 0 });
  if (distances === undefined) {
    return {
      reasons: [say("charge-limit.distances-not-stated")],
      actions: [say("charge-limit.measure-distances")],
    };
  }
  return undefined;
}

/** The smallest distance; `undefined` where nothing is near. */
function nearestOf(distances: readonly Quantity<"length">[]): Quantity<"length"> | undefined {
  listOf("distances", distances, 1000).forEach((one, i) => {
    siOf(`distances[${i}]`, one, "length", { min: 0 });
  });
  return distances.reduce<Quantity<"length"> | undefined>(
    (least, one) => (least && least.si <= one.si ? least : one),
    undefined,
  );
}

function cautionsOf(refrigerant: RoomRefrigerant): readonly RoomCaution[] {
  return roomCautions(refrigerant, [], [say("charge-limit.refrigerant-in-water")]);
}
