// Are the three phases even enough? The worst voltage and current unbalance of the readings.
// Follows NEMA MG 1, 14.36 and 12.45; the limits of 2 % and 10 % are those of makers' manuals.
// Does not cover a set in which a phase is missing: judge-nameplate.ts names it.
import { cite, type Outcome, statement } from "../assessment/assessment.ts";
import { conformity } from "../assessment/conformity.ts";
import { siOf } from "../quantity/check.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { ampere, volt } from "../quantity/units/electricity.ts";
import { percent } from "../quantity/units/ratio.ts";
import { type SupplyEvidence, type SupplyFindings, say } from "./supply-findings.ts";
import { rounded } from "./voltage-reading.ts";
import {
  currentUnbalance,
  type PhaseUnbalance,
  type VoltageUnbalance,
  voltageUnbalance,
} from "./voltage-unbalance.ts";

/** Judges the worst set of each. */
export function judgePhases(
  evidence: SupplyEvidence,
  found: SupplyFindings,
): {
  readonly voltage: VoltageUnbalance | undefined;
  readonly current: PhaseUnbalance<"current"> | undefined;
  readonly outcomes: { unbalance?: Outcome; currentUnbalance?: Outcome };
} {
  const { input, errors, confidence } = evidence;
  const whole = evidence.readings.filter(
    ({ volts }) => volts.length === 3 && Math.min(...volts) > 0.7 * Math.max(...volts),
  );
  const outcomes: { unbalance?: Outcome; currentUnbalance?: Outcome } = {};

  const voltage = worst(whole.map(({ volts }) => voltageUnbalance(volts.map(volt))));
  if (voltage) {
    const { unbalanceLimit: given } = input;
    const limits = { above: 0, max: 0.05 };
    const limit = given === undefined ? 0.02 : siOf("unbalanceLimit", given, "ratio", limits);
    // One meter read all three: its common error cancels; 2/3 of the variance of the rest stays.
    const u = (errors.each * Math.sqrt(2 / 3)) / voltage.average.si;
    const { outcome } = conformity({
      value: voltage.unbalance,
      standardUncertainty: percent(100 * u),
      upperLimit: percent(100 * limit),
      confidence,
    });
    outcomes.unbalance = outcome;
    const values = {
      unbalance: percent(rounded(voltage.unbalance.in(percent), 2)),
      limit: percent(100 * limit),
      factor: rounded(voltage.deratingFactor ?? 0, 2),
      rise: percent(rounded(voltage.addedTemperatureRise.in(percent), 0)),
    };
    say(
      found,
      outcome,
      "unbalance",
      voltage.deratingFactor === undefined
        ? "Voltage unbalance {unbalance}: do not operate above 5 %."
        : "Voltage unbalance {unbalance}, limit {limit}; derating factor {factor}, windings {rise} hotter.",
      values,
    );
    if (outcome === "inconclusive") {
      say(found, outcome, "unbalance-undecided", "A meter with a finer display would decide.", {});
    }
    if (voltage.unbalance.si > 0.01) {
      found.cautions.push(
        statement("derate", "Above 1 % a motor has to be derated; find the uneven load."),
      );
    }
    if (voltage.unbalance.si > 0.03) {
      found.cautions.push(
        statement("uneven-supply", "Above 3 % at no load, tell the utility (ANSI C84.1)."),
      );
      found.sources.push(cite("ansi-c84-1-2020", "annex on unbalance"));
    }
    if (!given)
      found.assumptions.push(statement("unbalance-limit", "Limit of voltage unbalance: 2 %."));
    found.sources.push(cite("nema-mg-1", "14.36"));
  }

  const running = whole.filter(({ amps, state }) => state === "load" && amps.length === 3);
  // A running motor keeps up the voltage of a lost phase: only the current shows it.
  if (running.some(({ amps }) => Math.min(...amps) === 0 && Math.max(...amps) > 0)) {
    outcomes.currentUnbalance = "fail";
    say(
      found,
      "fail",
      "current-unbalance",
      "A line carries no current under load: a phase is lost.",
      {},
    );
  }
  if (whole.some(({ amps, state }) => state === undefined && amps.length === 3)) {
    found.assumptions.push(
      statement(
        "currents-not-judged",
        "Currents without a state are not judged: state rest or load.",
      ),
    );
  }
  const loaded = running.filter(({ amps }) => Math.min(...amps) > 0);
  const current = worst(loaded.map(({ amps }) => currentUnbalance(amps.map(ampere))));
  if (current) {
    const outcome = current.unbalance.si <= 0.1 ? "pass" : "fail"; // makers' manuals: 10 %
    outcomes.currentUnbalance ??= outcome;
    const unbalance = percent(rounded(current.unbalance.in(percent), 1));
    say(found, outcome, "current-unbalance", "Current unbalance {unbalance}, limit 10 %.", {
      unbalance,
    });
  }
  return { voltage, current, outcomes };
}

function worst<T extends { readonly unbalance: Quantity<"ratio"> }>(
  sets: readonly T[],
): T | undefined {
  return [...sets].sort((a, b) => b.unbalance.si - a.unbalance.si)[0];
}
