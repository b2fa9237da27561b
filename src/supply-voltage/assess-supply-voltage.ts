// Is this supply fit to connect the unit to? Readings against the nameplate, the supply standard and, for
// three phases, the unbalance; the sag under load; what a log saw.
// Follows NEMA MG 1 (12.44, 14.36), ANSI C84.1-2020 or IEC 60038:2009 and EN 50160; JCGM 106:2012 decides.
// Does not cover surges, harmonics, frequency, grounding and a lost neutral on a 120 V circuit.
import { cite, estimate, overallOutcome, statement } from "../assessment/assessment.ts";
import { numberOf, objectOf } from "../quantity/check.ts";
import { InvalidInputError } from "../quantity/errors.ts";
import { volt } from "../quantity/units/electricity.ts";
import { judgeNameplate } from "./judge-nameplate.ts";
import { judgePhases } from "./judge-phases.ts";
import { judgeSag } from "./judge-sag.ts";
import { judgeStandard } from "./judge-standard.ts";
import { nameplateVoltageRange } from "./nameplate-voltage-range.ts";
import { cautions } from "./supply-cautions.ts";
import type { SupplyEvidence, SupplyFindings } from "./supply-findings.ts";
import type {
  SupplyVoltageAssessment,
  SupplyVoltageCause,
  SupplyVoltageInput,
} from "./supply-voltage-assessment.ts";
import { statisticsOf } from "./voltage-log.ts";
import { settingsWithin } from "./voltage-monitor-settings.ts";
import { least, meterErrors, plainReadings, rounded } from "./voltage-reading.ts";
import { standardOf } from "./voltage-standard.ts";

/**
 * Judges whether a supply is fit for a unit: every reading at rest and under load against the nameplate,
 * against the standard's range for the place of measurement, and against the ceiling above which boards
 * die; for three phases the unbalance too. Sag, source resistance, log statistics and monitor settings
 * come with it.
 *
 * The worst reading decides. Near a limit, within the meter's uncertainty, the outcome is `inconclusive`
 * and says how good a meter would decide. Range B of ANSI C84.1 passes with a caution; outside it fails.
 *
 * @param input - Nameplate, supply, at least one reading, place, and the meter where it is known.
 * @returns The verdict with its parts and figures.
 * @throws {@link InvalidInputError} when there is no reading, a phase is missing from a set, a
 * line-to-neutral reading stands among line-to-line ones, phases of plate and supply differ, or a kind or
 * a sign is wrong.
 * @throws {@link OutOfRangeError} when the standard has no such nominal voltage.
 *
 * Cautions: mains voltage kills; measuring it is for licensed electricians. Nameplate, instructions and
 * local code come first.
 *
 * Source: NEMA MG 1, 12.44 and 14.36; ANSI C84.1-2020, table 1; IEC 60038:2009; EN 50160; ceiling and
 * monitor settings: common practice, no source.
 *
 * @example
 * ```ts
 * import { volt } from "hvac-install-math/quantity";
 * import { assessSupplyVoltage } from "hvac-install-math/supply-voltage";
 *
 * const result = assessSupplyVoltage({
 *   nameplate: { rated: [volt(208), volt(230)], range: { minimum: volt(197), maximum: volt(253) } },
 *   supply: { voltage: volt(208), phases: 1 },
 *   readings: [{ voltage: volt(201) }],
 *   measuredAt: "service",
 * });
 * `${result.outcome}, ${result.supplyRange?.name}, margin ${result.marginBelow}`; // => pass, Range A, margin 4 V
 * ```
 */
export function assessSupplyVoltage(input: SupplyVoltageInput): SupplyVoltageAssessment {
  const { nameplate, supply, confidence = 0.95 } = objectOf("input", input);
  const plate = nameplateVoltageRange(nameplate);
  standardOf(supply);
  const all = plainReadings(input.readings, supply);
  const { phases } = nameplate;
  if (phases !== undefined && phases !== supply.phases) {
    throw new InvalidInputError({
      argument: "nameplate.phases",
      value: String(phases),
      allowed: `${supply.phases}, the phases of the supply`,
    });
  }
  const readings = all.filter(({ state }) => state !== "start");
  if (readings.length === 0) {
    throw new InvalidInputError({
      argument: "readings",
      value: "only starts",
      allowed: "at least one reading at rest or under load",
    });
  }
  const low = least(readings.map(({ volts }) => least(volts)));
  const high = -least(all.map(({ volts }) => -Math.max(...volts)));
  const errors = meterErrors(input.meter);
  const evidence: SupplyEvidence = {
    input,
    plate,
    readings,
    low,
    high,
    nominal: supply.voltage.si,
    confidence: numberOf("confidence", confidence, { min: 0.5, below: 1 }),
    errors,
    timed: (readings[1]?.at ?? -1) >= 0,
  };
  const found: SupplyFindings = {
    said: [],
    assumptions: [],
    cautions: [],
    sources: [cite("nema-mg-1", "12.44"), cite("common-practice")],
  };

  const byPlate = judgeNameplate(evidence, found);
  const phased = judgePhases(evidence, found);
  const bySupply = judgeStandard(evidence, found);
  const sag = judgeSag(evidence, found);
  const parts = { nameplate: byPlate, supply: bySupply.outcome, ...phased.outcomes };
  const outcome = overallOutcome(Object.values(parts));
  const cause = found.said.find(([its]) => its === "fail")?.[1].code as SupplyVoltageCause;

  const dip = least(all.flatMap(({ state, volts }) => (state === "start" ? volts : [])));
  if (dip < plate.minimum.si) {
    const shown = { dip: volt(rounded(dip, 1)) };
    found.cautions.push(statement("start-dip", "Starting pulls the supply to {dip}.", shown));
  }
  const { timed } = evidence;
  const logOf = (pick: (...volts: number[]) => number) =>
    statisticsOf(
      readings.map(({ at }) => at),
      readings.map(({ volts }) => pick(...volts)),
      plate.minimum.si,
      plate.maximum.si,
    );
  if (!timed) {
    found.assumptions.push(statement("moment", "The readings stand for their moment only."));
  }
  const { voltage: unbalance, current: currentUnbalance } = phased;
  const { range: supplyRange, week } = bySupply;
  const monitor = settingsWithin(plate, supply);
  const decides = ([its]: readonly [string, unknown]) => (its === outcome ? 0 : 1);
  return {
    outcome,
    ...(cause && { cause }),
    reasons: found.said.sort((a, b) => decides(a) - decides(b)).map(([, reason]) => reason),
    assumptions: found.assumptions,
    cautions: [...found.cautions, ...cautions],
    sources: found.sources,
    parts,
    nameplateRange: plate,
    lowest: estimate(volt(low), errors.of(low)),
    highest: estimate(volt(high), errors.of(high)),
    marginBelow: volt(low - plate.minimum.si),
    marginAbove: volt(plate.maximum.si - high),
    ...(supplyRange && { supplyRange }),
    ...(unbalance && { unbalance }),
    ...(currentUnbalance && { currentUnbalance }),
    ...(sag && { sag }),
    ...(timed && { log: { low: logOf(Math.min), high: logOf(Math.max) } }),
    ...(week && { week }),
    ...(monitor && { monitor }),
  };
}
