// Are the three phases even enough? The worst voltage and current unbalance of the readings.
// Follows NEMA MG 1, 14.36 and 12.45; the limits of 2 % and 10 % are those of makers' manuals.
// Does not cover a set in which a phase is missing: judge-nameplate.ts names it.
import { type Citation, cite, type Outcome } from "../assessment/assessment.ts";
import { conformity } from "../assessment/conformity.ts";
import { siOf } from "../quantity/check.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { ampere, volt } from "../quantity/units/electricity.ts";
import { percent } from "../quantity/units/ratio.ts";
import { say } from "./statements.ts";
import {
  assumed,
  noted,
  type SupplyEvidence,
  type SupplyFinding,
  type SupplyPart,
} from "./supply-findings.ts";
import { type PlainReading, rounded } from "./voltage-reading.ts";
import {
  currentUnbalance,
  type PhaseUnbalance,
  type VoltageUnbalance,
  voltageUnbalance,
} from "./voltage-unbalance.ts";

/** What the phases say. */
export interface PhasesPart extends SupplyPart {
  readonly voltage?: VoltageUnbalance | undefined;
  readonly current?: PhaseUnbalance<"current"> | undefined;
  readonly outcomes: { unbalance?: Outcome | undefined; currentUnbalance?: Outcome | undefined };
}

/** Judges the worst set of each. */
export function judgePhases(evidence: SupplyEvidence): PhasesPart {
  const whole = evidence.readings.filter(
    ({ volts }) => volts.length === 3 && Math.min(...volts) > 0.7 * Math.max(...volts),
  );
  const voltage = worst(whole.map(({ volts }) => voltageUnbalance(volts.map(volt))));
  const byVoltage = voltage && judgeVoltage(evidence, voltage);
  const byCurrent = judgeCurrent(whole);
  return {
    findings: [...(byVoltage?.findings ?? []), ...byCurrent.findings],
    sources: byVoltage?.sources ?? [],
    ...(voltage && { voltage }),
    ...(byCurrent.current && { current: byCurrent.current }),
    outcomes: {
      ...(byVoltage && { unbalance: byVoltage.outcome }),
      ...(byCurrent.outcome && { currentUnbalance: byCurrent.outcome }),
    },
  };
}

/** The voltage unbalance against the maker's limit. */
function judgeVoltage(
  { input, errors, confidence }: SupplyEvidence,
  voltage: VoltageUnbalance,
): { outcome: Outcome; findings: SupplyFinding[]; sources: Citation[] } {
  const { unbalanceLimit: given } = input;
  const limits = { above: 0, max: 0.05 };
  const si = given === undefined ? 0.02 : siOf("unbalanceLimit", given, "ratio", limits);
  const limit = percent(100 * si);
  // One meter read all three: its common error cancels; 2/3 of the variance of the rest stays.
  const u = (errors.each * Math.sqrt(2 / 3)) / voltage.average.si;
  const { outcome } = conformity({
    value: voltage.unbalance,
    standardUncertainty: percent(100 * u),
    upperLimit: limit,
    confidence,
  });
  const unbalance = percent(rounded(voltage.unbalance.in(percent), 2));
  const sources = [cite("nema-mg-1", "14.36")];
  const findings: SupplyFinding[] = [];
  const even = say("supply-voltage.even-out-load");
  if (voltage.deratingFactor === undefined) {
    const said = say("supply-voltage.unbalance-above-5-percent", { unbalance });
    findings.push({
      as: outcome,
      cause: "unbalance",
      said,
      actions: [say("supply-voltage.do-not-energize"), even],
    });
  } else if (outcome === "fail") {
    const said = say("supply-voltage.unbalance-above", { unbalance, limit });
    findings.push({ as: outcome, cause: "unbalance", said, actions: [even] });
  } else if (outcome === "inconclusive") {
    const said = say("supply-voltage.unbalance-too-close", { unbalance, limit });
    findings.push({ as: outcome, said, actions: [say("supply-voltage.measure-finer")] });
  } else {
    const factor = rounded(voltage.deratingFactor, 2);
    const rise = percent(rounded(voltage.addedTemperatureRise.in(percent), 0));
    const said = say("supply-voltage.unbalance-within", { unbalance, limit, factor, rise });
    findings.push({ as: outcome, said });
  }
  if (voltage.unbalance.si > 0.01) findings.push(noted(say("supply-voltage.derate")));
  if (voltage.unbalance.si > 0.03) {
    findings.push(noted(say("supply-voltage.uneven-supply")));
    sources.unshift(cite("ansi-c84-1-2020", "annex on unbalance"));
  }
  if (given === undefined) findings.push(assumed(say("supply-voltage.unbalance-limit", { limit })));
  return { outcome, findings, sources };
}

/** The current unbalance under load, against the 10 % of makers' manuals, and a line without current. */
function judgeCurrent(whole: readonly PlainReading[]): {
  outcome?: Outcome | undefined;
  current?: PhaseUnbalance<"current"> | undefined;
  findings: SupplyFinding[];
} {
  const findings: SupplyFinding[] = [];
  const running = whole.filter(({ amps, state }) => state === "load" && amps.length === 3);
  // A running motor keeps up the voltage of a lost phase: only the current shows it.
  const lost = running.some(({ amps }) => Math.min(...amps) === 0 && Math.max(...amps) > 0);
  if (lost) {
    findings.push({
      as: "fail",
      cause: "current-unbalance",
      said: say("supply-voltage.line-without-current"),
      actions: [say("supply-voltage.find-missing-line")],
    });
  }
  if (whole.some(({ amps, state }) => state === undefined && amps.length === 3)) {
    findings.push(assumed(say("supply-voltage.currents-not-judged")));
  }
  const loaded = running.filter(({ amps }) => Math.min(...amps) > 0);
  const current = worst(loaded.map(({ amps }) => currentUnbalance(amps.map(ampere))));
  if (current === undefined) return { findings, ...(lost && { outcome: "fail" as const }) };
  const ok = current.unbalance.si <= 0.1; // makers' manuals: 10 %
  const values = {
    unbalance: percent(rounded(current.unbalance.in(percent), 1)),
    limit: percent(10),
  };
  findings.push(
    ok
      ? { as: "pass", said: say("supply-voltage.current-unbalance-within", values) }
      : {
          as: "fail",
          cause: "current-unbalance",
          said: say("supply-voltage.current-unbalance-above", values),
          actions: [say("supply-voltage.even-out-load")],
        },
  );
  return { findings, current, outcome: ok && !lost ? "pass" : "fail" };
}

function worst<T extends { readonly unbalance: Quantity<"ratio"> }>(
  sets: readonly T[],
): T | undefined {
  return [...sets].sort((a, b) => b.unbalance.si - a.unbalance.si)[0];
}
