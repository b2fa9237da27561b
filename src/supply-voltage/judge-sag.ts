// How far does the supply sag between the readings at rest and those under load, and what does that leave at full load?
// Follows Ohm's law on the means of both; 5 % is NFPA 70 (2023), informational note to 215.2, as advice.
// Does not cover the dip of a start, which is only reported.
import type { Outcome } from "../assessment/assessment.ts";
import { conformity } from "../assessment/conformity.ts";
import { frozenInPlace } from "../quantity/frozen.ts";
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
import { type SupplySag, supplySag } from "./supply-sag.ts";
import { type PlainReading, rounded } from "./voltage-reading.ts";

const mean = (values: readonly number[]) => values.reduce((sum, v) => sum + v, 0) / values.length;
const volts = (sets: readonly PlainReading[]) => mean(sets.map((one) => mean(one.volts)));
const amps = (sets: readonly PlainReading[]) =>
  sets.every((one) => one.amps.length) ? mean(sets.map((one) => mean(one.amps))) : undefined;

const wiring = /* @__PURE__ */ frozenInPlace([
  /* @__PURE__ */ say("supply-voltage.check-wiring"),
  /* @__PURE__ */ say("supply-voltage.read-at-service"),
]);
const atFullLoad = /* @__PURE__ */ say("supply-voltage.measure-at-full-load");

/** What the sag says. */
export interface SagPart extends SupplyPart {
  /** Of the prediction at full load, where there is one. */
  readonly outcome?: Outcome | undefined;
  readonly sag?: SupplySag | undefined;
}

/** The sag, where the supply was read both at rest and under load. */
export function judgeSag(evidence: SupplyEvidence): SagPart {
  const { meter, nameplate, supply } = evidence.input;
  const of = (state: string) =>
    evidence.readings.filter((one) => one.state === state && mean(one.volts) > 0);
  const [rest, load] = [of("rest"), of("load")];
  if (!rest.length || !load.length) return { findings: [assumed(say("supply-voltage.no-sag"))] };
  const [loadCurrent, restCurrent] = [amps(load), amps(rest)];
  const { ratedCurrent: atCurrent } = nameplate;
  const sag = supplySag({
    rest: volt(volts(rest)),
    load: volt(volts(load)),
    phases: supply.phases,
    ...(loadCurrent !== undefined && { loadCurrent: ampere(loadCurrent) }),
    ...(restCurrent !== undefined && { restCurrent: ampere(restCurrent) }),
    ...(meter && { meter }),
    ...(atCurrent && { atCurrent }),
  });
  const { share } = sag;
  const findings: SupplyFinding[] = [];
  const large = say("supply-voltage.large-sag", {
    share: percent(rounded(share.in(percent), 1)),
  });
  if (share.si < -0.05) {
    const shown = { load: volt(rounded(volts(load), 1)), rest: volt(rounded(volts(rest), 1)) };
    findings.push(noted(say("supply-voltage.rise-under-load", shown)));
  }
  const step = (loadCurrent ?? 0) - (restCurrent ?? 0);
  let predicted = predict(evidence, sag, volts(rest), step, restCurrent ?? 0);
  if (share.si > 0.05) {
    // Without currents nobody knows how far it goes on at full load.
    if (predicted) findings.unshift(noted(large));
    else predicted = { as: "inconclusive", said: large, actions: [...wiring, atFullLoad] };
  }
  return {
    sag,
    findings: predicted ? [predicted, ...findings] : findings,
    ...(predicted && { outcome: predicted.as as Outcome }),
  };
}

/**
 * The voltage at full load against the unit's lowest. A prediction from less than half of that current fails nothing:
 * it asks for a reading at full load. Common practice, no source.
 */
function predict(
  { input, plate, errors, confidence }: SupplyEvidence,
  { sag }: SupplySag,
  rest: number,
  step: number,
  restCurrent: number,
): Extract<SupplyFinding, { as: Outcome }> | undefined {
  const { ratedCurrent: current } = input.nameplate;
  if (!current || step <= 0 || sag.value.si < 0) return undefined;
  const factor = (current.si - restCurrent) / step;
  if (factor <= 0) return undefined;
  const { minimum } = plate;
  const there = rest - sag.value.si * factor;
  const cause = "sag-at-full-load";
  if (there <= 0) {
    const said = say("supply-voltage.full-load-impossible", { current, minimum });
    return factor > 2
      ? { as: "inconclusive", said, actions: [...wiring, atFullLoad] }
      : { as: "fail", cause, said, actions: wiring };
  }
  const u = Math.hypot(errors.of(rest), sag.standardUncertainty.si * factor);
  const { outcome } = conformity({
    value: volt(there),
    standardUncertainty: volt(u),
    lowerLimit: minimum,
    confidence,
  });
  const values = { there: volt(rounded(there, 1)), minimum, current };
  if (outcome === "pass")
    return { as: "pass", said: say("supply-voltage.full-load-enough", values) };
  if (outcome === "inconclusive") {
    const said = say("supply-voltage.full-load-too-close", values);
    return { as: outcome, said, actions: [atFullLoad] };
  }
  return factor > 2
    ? {
        as: "inconclusive",
        said: say("supply-voltage.full-load-far-off", values),
        actions: [...wiring, atFullLoad],
      }
    : { as: "fail", cause, said: say("supply-voltage.full-load-too-low", values), actions: wiring };
}
