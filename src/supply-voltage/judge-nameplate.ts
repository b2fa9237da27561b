// Do the readings keep what the nameplate allows, and is something plainly missing?
// Follows NEMA MG 1, 12.44; JCGM 106:2012, 8.3, decides. The ceiling is common practice, no source.
// Does not cover the supply standard (judge-standard.ts) and unbalance (judge-phases.ts).
import { type Outcome, overallOutcome, statement } from "../assessment/assessment.ts";
import { conformity } from "../assessment/conformity.ts";
import { normalQuantile } from "../assessment/statistics.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { volt } from "../quantity/units/electricity.ts";
import { type SupplyEvidence, type SupplyFindings, say } from "./supply-findings.ts";
import { rounded } from "./voltage-reading.ts";
import type { VoltageRange } from "./voltage-standard.ts";

/** Whether a voltage keeps a range, as far as the meter can tell. */
export function keeps(evidence: SupplyEvidence, volts: number, range: VoltageRange): Outcome {
  return conformity({
    value: volt(volts),
    standardUncertainty: volt(evidence.errors.of(volts)),
    lowerLimit: range.minimum,
    upperLimit: range.maximum,
    confidence: evidence.confidence,
  }).outcome;
}

/** The extremes for a sentence. */
export function extremes({
  low,
  high,
}: SupplyEvidence): Record<"low" | "high", Quantity<"voltage">> {
  const lowest = volt(rounded(low, 1));
  return { low: lowest, high: low === high ? lowest : volt(rounded(high, 1)) };
}

/** Judges the extremes by the nameplate, and sees a dead, lost or wrong supply. */
export function judgeNameplate(evidence: SupplyEvidence, found: SupplyFindings): Outcome {
  const { input, plate, readings, low, high, nominal, errors } = evidence;
  const { minimum, maximum, ceiling, printed, rated } = plate;
  const { voltage, phases } = input.supply;
  const k = normalQuantile(evidence.confidence);
  const values = { ...extremes(evidence), minimum, maximum, ceiling, nominal: voltage };

  const byLow = keeps(evidence, low, plate);
  const byHigh = keeps(evidence, high, plate);
  let outcome = overallOutcome([byLow, byHigh]);

  if (high - k * errors.of(high) > ceiling.si) {
    say(
      found,
      "fail",
      "board-at-risk",
      "{high} is above {ceiling}: do not energise, boards are at risk.",
      values,
      "board-at-risk",
    );
  }
  const uneven = readings.find(({ volts }) => Math.min(...volts) < 0.7 * Math.max(...volts));
  if (readings.some(({ volts }) => Math.max(...volts) < 0.25 * nominal)) {
    say(
      found,
      "fail",
      "no-voltage",
      "No voltage ({low}); it does not prove the circuit dead.",
      values,
      "no-voltage",
    );
  } else if (uneven) {
    const lines = uneven.volts.map((v) => rounded(v, 1)).join(", ");
    say(
      found,
      "fail",
      "phase-missing",
      "The lines read {lines} V: a phase is missing, or one was read to neutral.",
      { lines },
      "phase-missing",
    );
  } else if (phases === 1 && Math.abs(low / nominal - 0.5) < 0.1) {
    say(
      found,
      "fail",
      "leg-missing",
      "{low} is about half: a leg is missing, or it was read to neutral.",
      values,
      "leg-missing",
    );
  } else if (minimum.si > 1.06 * nominal || maximum.si < 0.94 * nominal) {
    say(
      found,
      "fail",
      "plate-does-not-fit",
      "A unit for {minimum} to {maximum} does not fit {nominal}.",
      values,
      "plate-does-not-fit",
    );
  }
  if (found.causes.length > 0) outcome = "fail";

  if (outcome === "pass") {
    const guard = volt(rounded(2 * k * errors.of(high), 1)); // both guard bands: what always fails
    const text = "{low} to {high} keeps the unit's {minimum} to {maximum}";
    const shown = input.meter ? "; {guard} beyond it would have failed." : ".";
    say(found, outcome, "within-nameplate", text + shown, { ...values, guard });
  } else if (outcome === "inconclusive") {
    const distance = Math.min(Math.abs(low - minimum.si), Math.abs(high - maximum.si));
    const needed = volt(rounded((Math.sqrt(3) * distance) / k, 2)); // limits ±a give u = a/√3
    say(
      found,
      outcome,
      "meter-cannot-tell",
      "{low} to {high} is too near a limit of {minimum} to {maximum}; a meter good to ±{needed} would decide.",
      { ...values, needed },
    );
  }
  if (byHigh === "fail" && high > maximum.si) {
    say(
      found,
      "fail",
      "above-nameplate",
      "{high} is above the unit's {maximum}.",
      values,
      "high-supply",
    );
  }
  if (byLow === "fail" && low < minimum.si) {
    const rest = readings.filter(({ state }) => state === "rest").flatMap(({ volts }) => volts);
    const sags = rest.length > 0 && Math.min(...rest) >= minimum.si;
    const text = "{low} is below the unit's {minimum}";
    say(
      found,
      "fail",
      "below-nameplate",
      sags ? `${text}, but only under load: thin wire or a bad joint.` : `${text}.`,
      values,
      sags ? "sag-under-load" : "low-supply",
    );
  }

  const { assumptions, cautions } = found;
  if (!printed) {
    assumptions.push(
      statement("ten-percent", "The plate prints no range: ±10 % of the rated voltages."),
    );
  }
  if (!input.meter) {
    assumptions.push(statement("meter-exact", "No meter stated: readings count as exact."));
  }
  const near = [...rated].sort((a, b) => Math.abs(a.si - nominal) - Math.abs(b.si - nominal))[0];
  if (rated[1] && near) {
    cautions.push(
      statement("transformer-tap", "If it has a control transformer, set its tap to {near}.", {
        near,
      }),
    );
  } else if (near && Math.abs(near.si / nominal - 1) > 0.06) {
    cautions.push(
      statement("narrow-plate", "A {near} unit has little margin on {nominal}.", {
        near,
        nominal: voltage,
      }),
    );
  }
  return outcome;
}
