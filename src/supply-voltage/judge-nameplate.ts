// Do the readings keep what the nameplate allows, and is something plainly missing?
// Follows NEMA MG 1, 12.44; JCGM 106:2012, 8.3, decides. The ceiling is common practice, no source.
// Does not cover the supply standard (judge-standard.ts) and unbalance (judge-phases.ts).
import { type Outcome, overallOutcome, statement } from "../assessment/assessment.ts";
import { conformity } from "../assessment/conformity.ts";
import { normalQuantile } from "../assessment/statistics.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { volt } from "../quantity/units/electricity.ts";
import { type SupplyEvidence, type SupplyFindings, say } from "./supply-findings.ts";
import type { SupplyVoltageCause } from "./supply-voltage-assessment.ts";
import { least, rounded } from "./voltage-reading.ts";
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
  return { low: volt(rounded(low, 1)), high: volt(rounded(high, 1)) };
}

/** Judges the extremes by the nameplate, and sees a dead, lost or wrong supply. */
export function judgeNameplate(evidence: SupplyEvidence, found: SupplyFindings): Outcome {
  const { input, plate, readings, low, high, nominal, errors } = evidence;
  const { minimum, maximum, ceiling, printed, rated } = plate;
  const { voltage, phases } = input.supply;
  const k = normalQuantile(evidence.confidence);
  const uneven = readings.find(({ volts }) => least(volts) < 0.7 * Math.max(...volts))?.volts;
  const lines = uneven?.map((v) => rounded(v, 1)).join(", ") ?? "";
  const values = { ...extremes(evidence), minimum, maximum, ceiling, nominal: voltage, lines };

  const byLow = keeps(evidence, low, plate);
  const byHigh = keeps(evidence, high, plate);
  let outcome = overallOutcome([byLow, byHigh]);

  // The most dangerous first: the first failing reason is the cause.
  const fault = (code: SupplyVoltageCause, text: string) => {
    outcome = "fail";
    say(found, outcome, code, text, values);
  };
  if (high - k * errors.of(high) > ceiling.si) {
    fault("board-at-risk", "{high} is above {ceiling}: do not energise, boards are at risk.");
  }
  if (readings.some(({ volts }) => Math.max(...volts) < 0.25 * nominal)) {
    fault("no-voltage", "No voltage ({low}); it does not prove the circuit dead.");
  } else if (uneven) {
    fault("phase-missing", "{lines} V: a phase is missing, or one was read to neutral.");
  } else if (phases === 1 && Math.abs(low / nominal - 0.5) < 0.1) {
    fault("leg-missing", "{low} is about half: a leg is missing, or it was read to neutral.");
  } else if (minimum.si > 1.06 * nominal || maximum.si < 0.94 * nominal) {
    fault("plate-does-not-fit", "A unit for {minimum} to {maximum} does not fit {nominal}.");
  }
  if (byHigh === "fail" && high > maximum.si) {
    fault("high-supply", "{high} is above the unit's {maximum}.");
  }
  if (byLow === "fail" && low < minimum.si) {
    const rest = readings.filter(({ state }) => state === "rest").map(({ volts }) => least(volts));
    if (rest.length > 0 && least(rest) >= minimum.si) {
      fault(
        "sag-under-load",
        "{low} is below {minimum} only under load: thin wire or a bad joint.",
      );
    } else fault("low-supply", "{low} is below the unit's {minimum}.");
  }

  if (outcome === "pass") {
    const guard = volt(rounded(2 * k * errors.of(high), 1)); // both guard bands: what always fails
    const text = "{low} to {high} keeps the unit's {minimum} to {maximum}";
    const shown = input.meter ? "; {guard} beyond it would have failed." : ".";
    say(found, outcome, "within-nameplate", text + shown, { ...values, guard });
  } else if (outcome === "inconclusive") {
    const distance = Math.min(Math.abs(low - minimum.si), Math.abs(high - maximum.si));
    const needed = volt(rounded((Math.sqrt(3) * distance) / k, 2)); // limits ±a give u = a/√3
    const text =
      "{low} to {high} is too near a limit of {minimum} to {maximum}; a meter good to ±{needed} would decide.";
    say(found, outcome, "meter-cannot-tell", text, { ...values, needed });
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
  const off = ({ si }: Quantity<"voltage">) => Math.abs(si - nominal);
  const near = rated.reduce((a, b) => (off(b) < off(a) ? b : a));
  if (rated.length > 1) {
    cautions.push(
      statement("transformer-tap", "If it has a control transformer, set its tap to {near}.", {
        near,
      }),
    );
  } else if (off(near) > 0.06 * nominal) {
    cautions.push(
      statement("narrow-plate", "A {near} unit has little margin on {nominal}.", {
        near,
        nominal: voltage,
      }),
    );
  }
  return outcome;
}
