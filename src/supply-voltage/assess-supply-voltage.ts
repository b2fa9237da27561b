// Is this supply fit to connect the unit to? Readings against the nameplate, the supply standard and, for
// three phases, the unbalance; the sag under load; what a log saw.
// Follows NEMA MG 1 (12.44, 14.36), ANSI C84.1-2020 or IEC 60038:2009 and EN 50160; JCGM 106:2012 decides.
// Does not cover surges, harmonics, frequency and a lost neutral on a 120 V circuit.

import { estimate, type Outcome, overallOutcome, verdict } from "../assessment/assessment.ts";
import { caution } from "../assessment/caution.ts";
import { danger } from "../assessment/safety.ts";
import { numberOf, objectOf, oneOf } from "../quantity/check.ts";
import { InvalidInputError } from "../quantity/errors.ts";
import { choose } from "../quantity/hints.ts";
import { volt } from "../quantity/units/electricity.ts";
import { second } from "../quantity/units/time.ts";
import { findStarts } from "./find-starts.ts";
import { judgeNameplate } from "./judge-nameplate.ts";
import { judgePhases } from "./judge-phases.ts";
import { judgeSag } from "./judge-sag.ts";
import { judgeStandard } from "./judge-standard.ts";
import { nameplateVoltageRange } from "./nameplate-voltage-range.ts";
import { type SupplyVoltageStatement, say } from "./statements.ts";
import { assumed, noted, type SupplyEvidence, type SupplyFinding } from "./supply-findings.ts";
import { resolveStandard } from "./supply-ranges.ts";
import type { SupplyVoltageAssessment, SupplyVoltageInput } from "./supply-voltage-assessment.ts";
import { statisticsOf } from "./voltage-log.ts";
import { settingsWithin } from "./voltage-monitor-settings.ts";
import {
  least,
  meterErrors,
  type PlainReading,
  plainReadings,
  rounded,
} from "./voltage-reading.ts";

/**
 * Judges whether a supply is fit for a unit: every reading at rest and under load against the nameplate,
 * against the standard's range for the place of measurement, and against the ceiling above which boards
 * die; for three phases the unbalance too.
 *
 * **What to pass in.** The nameplate, the supply's standard and nominal voltage, the readings with their state (at rest,
 * under load), where they were taken, and the meter. **What comes back.** The verdict, with sag, source resistance, log
 * statistics and monitor settings.
 *
 * **How.** Starts that nobody marked are found in a log by their current; a dip that may be one and has no current leaves the
 * outcome open. Where readings at rest and under load let the voltage at full load be predicted, that decides too.
 *
 * The worst reading decides. Near a limit, within the meter's uncertainty, the outcome is `inconclusive`
 * and says how good a meter would decide. Range B of ANSI C84.1 passes with a caution; outside it fails.
 *
 * @param input - Nameplate, supply, at least one reading, place, and the meter where it is known.
 * @returns The verdict with its parts and figures.
 * @throws {@link InvalidInputError} when there is no reading, a phase is missing from a set, a
 * line-to-neutral reading stands among line-to-line ones, phases of plate and supply differ, or a kind or
 * a sign is wrong.
 *
 * Cautions: line voltage kills; measuring it is for licensed electricians. Nameplate, instructions and
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
  const { evidence, all, found } = evidenceOf(input);
  const { plate, readings, low, high, errors, timed } = evidence;
  const byPlate = judgeNameplate(evidence);
  const phased = judgePhases(evidence);
  const bySupply = judgeStandard(evidence);
  const sagged = judgeSag(evidence);
  const parts = {
    nameplate: byPlate.outcome,
    ...(bySupply.outcome && { supply: bySupply.outcome }),
    ...(sagged.outcome && { sag: sagged.outcome }),
    ...phased.outcomes,
  };
  const outcome = overallOutcome(Object.values(parts).filter((one) => one !== undefined));
  const findings = [
    ...byPlate.findings,
    ...phased.findings,
    ...bySupply.findings,
    ...sagged.findings,
    ...startsSeen(evidence, all, found),
  ];
  const monitor = settingsWithin(plate, input.supply);
  return verdict({
    ...spoken(findings, outcome),
    outcome,
    sources: [byPlate, phased, bySupply].flatMap(({ sources = [] }) => sources),
    parts,
    nameplateRange: plate,
    lowest: estimate(volt(low), errors.of(low)),
    highest: estimate(volt(high), errors.of(high)),
    marginBelow: volt(low - plate.minimum.si),
    marginAbove: volt(plate.maximum.si - high),
    ...(bySupply.range && { supplyRange: bySupply.range }),
    ...(phased.voltage && { unbalance: phased.voltage }),
    ...(phased.current && { currentUnbalance: phased.current }),
    ...(sagged.sag && { sag: sagged.sag }),
    ...(timed && { log: logOf(evidence, readings) }),
    ...(bySupply.week && { week: bySupply.week }),
    ...(monitor && { monitor }),
  });
}

/** The input checked, and what the parts look at; `all` with the starts, `found` how many of them nobody marked. */
function evidenceOf(input: SupplyVoltageInput): {
  readonly evidence: SupplyEvidence;
  readonly all: readonly PlainReading[];
  readonly found: number;
} {
  const { nameplate, supply, confidence = 0.95 } = objectOf("input", input);
  const plate = nameplateVoltageRange(nameplate);
  resolveStandard(supply);
  const read = plainReadings(input.readings, supply);
  const { phases } = nameplate;
  if (phases !== undefined) oneOf("nameplate.phases", phases, [supply.phases]);
  const timed = (read[1]?.at ?? -1) >= 0;
  const starts = timed ? findStarts(read) : { readings: read, found: 0, unmarkedDip: undefined };
  const { readings: all, found, unmarkedDip } = starts;
  const readings = all.filter(({ state }) => state !== "start");
  if (readings.length === 0) {
    throw new InvalidInputError({
      argument: "readings",
      value: "only starts",
      allowed: "at least one reading at rest or under load",
      hint: choose(["rest", "load"]),
    });
  }
  const evidence = {
    input,
    plate,
    readings,
    low: least(readings.map(({ volts }) => least(volts))),
    high: -least(all.map(({ volts }) => -Math.max(...volts))),
    nominal: supply.voltage.si,
    confidence: numberOf("confidence", confidence, { min: 0.5, below: 1 }),
    errors: meterErrors(input.meter),
    timed: timed && readings.length > 1,
    unmarkedDip,
  };
  return { evidence, all, found };
}

/** What was seen of starts, and what readings without times stand for. */
function startsSeen(
  { plate, timed, input }: SupplyEvidence,
  all: readonly PlainReading[],
  found: number,
): SupplyFinding[] {
  if (!timed)
    return [...startDip(plate.minimum.si, all), assumed(say("supply-voltage.moment-only"))];
  const seen = startDip(plate.minimum.si, all);
  if (found > 0) return [...seen, assumed(say("supply-voltage.starts-found", { count: found }))];
  const gaps = all.slice(1).map(({ at }, i) => at - (all[i]?.at ?? 0));
  const interval = gaps.reduce((sum, gap) => sum + gap, 0) / gaps.length;
  const marked = input.readings.some(({ state }) => state === "start");
  if (marked || interval <= 1) return seen;
  const shown = second(Number(interval.toPrecision(2)));
  return [...seen, assumed(say("supply-voltage.starts-unseen", { interval: shown }))];
}

/** The deepest dip of a start, where it goes below the unit's lowest voltage. */
function startDip(minimum: number, all: readonly PlainReading[]): SupplyFinding[] {
  const dip = least(all.flatMap(({ state, volts }) => (state === "start" ? volts : [])));
  return dip < minimum
    ? [noted(say("supply-voltage.start-dip", { dip: volt(rounded(dip, 1)) }))]
    : [];
}

/** Reasons with the deciding ones first, assumptions, cautions, actions of what decided; each said once. */
function spoken(findings: readonly SupplyFinding[], outcome: Outcome) {
  const judged = findings.filter((one) => one.as !== "assumption" && one.as !== "finding");
  const decides = ({ as }: SupplyFinding) => (as === outcome ? 0 : 1);
  const ordered = [...judged].sort((a, b) => decides(a) - decides(b)) as Judged[];
  const of = (as: "assumption" | "finding") =>
    findings.filter((one) => one.as === as).map(({ said }) => said);
  const cause = ordered.find(({ as, cause }) => as === "fail" && cause)?.cause;
  return {
    ...(outcome === "fail" && cause && { cause }),
    reasons: ordered.map(({ said }) => said),
    assumptions: of("assumption"),
    cautions: [
      ...of("finding").map((said) => caution("finding", said)),
      danger("safety.line-voltage"),
      danger("safety.meter-category"),
    ],
    actions: once(ordered.filter(({ as }) => as !== "pass").flatMap(({ actions = [] }) => actions)),
  };
}

type Judged = Extract<SupplyFinding, { readonly as: Outcome }>;

const once = (statements: readonly SupplyVoltageStatement[]): SupplyVoltageStatement[] => {
  const last = statements.filter(({ code }) => code === "supply-voltage.call-utility");
  const first = statements.filter(({ code }) => code !== "supply-voltage.call-utility");
  return [...new Map([...first, ...last].map((one) => [JSON.stringify(one), one])).values()];
};

/** What a log saw against the nameplate. */
function logOf({ plate }: SupplyEvidence, readings: readonly PlainReading[]) {
  const of = (pick: (...volts: number[]) => number) =>
    statisticsOf(
      readings.map(({ at }) => at),
      readings.map(({ volts }) => pick(...volts)),
      plate.minimum.si,
      plate.maximum.si,
    );
  return { low: of(Math.min), high: of(Math.max) };
}
