// Is a leak of the whole charge still safe to breathe here? A verdict by concentration.
// Follows ANSI/ASHRAE Standard 34 (RCL); decision by JCGM 106:2012, 8.3.
// Does not cover flammability: a flammable refrigerant needs assess-room-charge.ts as well.

import { type Assessment, cite, verdict } from "../assessment/assessment.ts";
import { caution } from "../assessment/caution.ts";
import { objectOf } from "../quantity/check.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { m3 } from "../quantity/units/geometry.ts";
import {
  type ConcentrationAnswer,
  type ConcentrationRule,
  concentrationChargeLimit,
} from "./concentration-limit.ts";
import { decide, type RoomInstruments } from "./decide.ts";
import { type ChargeLimitStatement, say } from "./statements.ts";

/**
 * A charge and its room.
 */
export interface ConcentrationInput extends ConcentrationRule {
  /** Total charge, factory charge and what was added, above 0. */
  readonly charge: Quantity<"mass">;
  /** Volume of the smallest room in which it can collect, above 0. */
  readonly volume: Quantity<"volume">;
  /** What is known of scale and tape; counted as exact when left out. */
  readonly instruments?: RoomInstruments<"volume"> | undefined;
  /** How sure a pass or a fail has to be; 0.95 when left out. */
  readonly confidence?: number | undefined;
}

/**
 * The verdict on a charge by concentration.
 *
 * Source: see {@link assessConcentration}.
 */
export interface ConcentrationAssessment
  extends Assessment<"room-too-small", ChargeLimitStatement> {
  /** The largest charge allowed, and the limit behind it. */
  readonly limit: ConcentrationAnswer<"mass">;
}

/**
 * Judges a charge against the concentration limit of its room: m / V ≤ RCL.
 *
 * @param input - Refrigerant, charge, volume, instruments.
 * @returns The verdict.
 * @throws {@link InvalidInputError} when no limit is held for the refrigerant or a range does not fit.
 *
 * Cautions: see {@link concentrationChargeLimit}.
 *
 * Source: ANSI/ASHRAE Standard 34 (2022), RCL; JCGM 106:2012, 8.3.
 *
 * @example
 * ```ts
 * import { assessConcentration } from "hvac-install-math/charge-limit";
 * import { kg, m3 } from "hvac-install-math/quantity";
 * import { R410A } from "hvac-install-math/refrigerants";
 *
 * const unit = { refrigerant: R410A, charge: kg(1.5) };
 * assessConcentration({ ...unit, volume: m3(30) }).outcome; // => pass
 * assessConcentration({ ...unit, volume: m3(3) }).cause; // => room-too-small
 * ```
 */
export function assessConcentration(input: ConcentrationInput): ConcentrationAssessment {
  objectOf("input", input);
  const limit = concentrationChargeLimit(input);
  const { basis, cautions } = limit;
  const { instruments, charge, confidence } = input;
  const { outcome, reasons, assumptions } = decide({
    charge,
    limit: limit.value,
    slope: basis.value.si,
    instruments,
    unit: input.volume.unit,
    confidence,
  });
  const used = say("charge-limit.concentration-limit-used", {
    limit: basis.value,
    standing: `charge-limit.standing.${basis.standing}`,
  });
  const flammable = input.refrigerant.safetyClass.endsWith("1")
    ? []
    : [caution("finding", say("charge-limit.flammability-too"))];
  const volume = m3(charge.si / basis.value.si);
  const actions = {
    pass: () => [],
    fail: () => [
      say("charge-limit.add-no-refrigerant"),
      say("charge-limit.find-larger-volume", { volume }),
    ],
    inconclusive: () => [say("charge-limit.weigh-or-measure-better")],
  }[outcome]();
  return verdict({
    outcome,
    ...(outcome === "fail" && { cause: "room-too-small" as const }),
    reasons,
    assumptions: [used, ...assumptions],
    cautions: [...flammable, ...cautions],
    actions,
    sources: [...(basis.citation ? [basis.citation] : []), cite("jcgm-106-2012", "8.3")],
    limit,
  });
}
