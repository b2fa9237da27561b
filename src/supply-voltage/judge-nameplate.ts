// Do the readings keep what the nameplate allows, and is something plainly missing?
// Follows NEMA MG 1, 12.44; JCGM 106:2012, 8.3, decides. The ceiling is common practice, no source.
// Does not cover the supply standard (judge-standard.ts) and unbalance (judge-phases.ts).
import { cite, type Outcome, overallOutcome } from "../assessment/assessment.ts";
import { conformity } from "../assessment/conformity.ts";
import { normalQuantile } from "../assessment/statistics.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { volt } from "../quantity/units/electricity.ts";
import type { VoltageRange } from "./standards/index.ts";
import { type SupplyVoltageCause, type SupplyVoltageStatement, say } from "./statements.ts";
import {
  assumed,
  noted,
  type SupplyEvidence,
  type SupplyFinding,
  type SupplyPart,
} from "./supply-findings.ts";
import { least, rounded } from "./voltage-reading.ts";

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
export function extremes({ low, high }: SupplyEvidence): Record<
  "low" | "high",
  Quantity<"voltage">
> & {
  readings: `supply-voltage.readings.${"one" | "several"}`;
} {
  const [from, to] = [rounded(low, 1), rounded(high, 1)];
  const readings = from === to ? "one" : "several";
  return { low: volt(from), high: volt(to), readings: `supply-voltage.readings.${readings}` };
}

type Fault = Extract<SupplyFinding, { readonly as: Outcome }>;
const fault = (
  cause: SupplyVoltageCause,
  said: SupplyVoltageStatement,
  ...actions: readonly SupplyVoltageStatement[]
): Fault => ({ as: "fail", cause, said, actions });

/** Judges the extremes by the nameplate, and sees a dead, lost or wrong supply. */
export function judgeNameplate(evidence: SupplyEvidence): SupplyPart & { outcome: Outcome } {
  const { plate, low, high, unmarkedDip } = evidence;
  const { minimum, maximum } = plate;
  const faults = [
    ...missingOf(evidence),
    ...beyondOf(evidence, keeps(evidence, low, plate), keeps(evidence, high, plate)),
  ];
  // A dip that nobody marked may be a start, which is not judged, or a sag, which fails.
  const dipped = unmarkedDip !== undefined && unmarkedDip < minimum.si && unmarkedDip === low;
  if (dipped && faults.every(({ cause }) => cause === "low-supply" || cause === "leg-missing")) {
    const values = { low: volt(rounded(low, 1)), minimum };
    const asked: SupplyFinding = {
      as: "inconclusive",
      said: say("supply-voltage.dip-not-marked", values),
      actions: [say("supply-voltage.mark-starts")],
    };
    return { outcome: "inconclusive", findings: [asked, ...nameplateNotes(evidence)], sources };
  }
  const kept = overallOutcome([keeps(evidence, low, plate), keeps(evidence, high, plate)]);
  const outcome = faults.length > 0 ? "fail" : kept;
  const values = { ...extremes(evidence), minimum, maximum };
  return {
    outcome,
    findings: [
      ...faults,
      ...(outcome === "pass" ? within(evidence, values) : []),
      ...(outcome === "inconclusive" ? [tooClose(evidence, values)] : []),
      ...nameplateNotes(evidence),
    ],
    sources,
  };
}

const sources = [cite("nema-mg-1", "12.44"), cite("common-practice")];

type Values = ReturnType<typeof extremes> & VoltageRange;

function within({ input, confidence, errors, high }: SupplyEvidence, values: Values) {
  const beyond = volt(rounded(2 * normalQuantile(confidence) * errors.of(high), 1)); // both guard bands
  const said = say("supply-voltage.within-nameplate", values);
  const found: SupplyFinding[] = [{ as: "pass", said }];
  if (input.meter)
    found.push({ as: "pass", said: say("supply-voltage.would-have-failed", { beyond }) });
  return found;
}

function tooClose({ confidence, low, high }: SupplyEvidence, values: Values): SupplyFinding {
  const { minimum, maximum } = values;
  const distance = Math.min(Math.abs(low - minimum.si), Math.abs(high - maximum.si));
  // limits ±a give u = a/√3
  const needed = volt(rounded((Math.sqrt(3) * distance) / normalQuantile(confidence), 2));
  // A good meter has limits of error of 0.1 V at mains voltage: common practice, no source.
  const action =
    needed.si < 0.1
      ? say("supply-voltage.log-near-limit")
      : say("supply-voltage.measure-better", { needed });
  return {
    as: "inconclusive",
    said: say("supply-voltage.meter-cannot-tell", values),
    actions: [action],
  };
}

/** A supply that is dead, lost a line, is uneven to ground, or is not the unit's. The most dangerous first. */
function missingOf({
  input,
  plate,
  readings,
  low,
  high,
  nominal,
  errors,
  confidence,
}: SupplyEvidence): Fault[] {
  const { minimum, maximum, ceiling } = plate;
  const { voltage, phases } = input.supply;
  const found: Fault[] = [];
  const shown = (volts: number) => volt(rounded(volts, 1));
  if (high - normalQuantile(confidence) * errors.of(high) > ceiling.si) {
    const said = say("supply-voltage.board-at-risk", { high: shown(high), ceiling });
    found.push(fault("board-at-risk", said, say("supply-voltage.do-not-energize")));
  }
  const uneven = readings.find(({ volts }) => least(volts) < 0.7 * Math.max(...volts))?.volts;
  const missing = say("supply-voltage.find-missing-line");
  if (readings.some(({ volts }) => Math.max(...volts) < 0.25 * nominal)) {
    found.push(fault("no-voltage", say("supply-voltage.no-voltage", { low: shown(low) }), missing));
  } else if (uneven) {
    const said = say("supply-voltage.phase-missing", { lines: uneven.map(shown) });
    found.push(fault("phase-missing", said, missing));
  } else if (phases === 1 && Math.abs(low / nominal - 0.5) < 0.1) {
    const said = say("supply-voltage.leg-missing", { low: shown(low), nominal: voltage });
    found.push(fault("leg-missing", said, missing));
  } else if (minimum.si > 1.06 * nominal || maximum.si < 0.94 * nominal) {
    const said = say("supply-voltage.plate-does-not-fit", { minimum, maximum, nominal: voltage });
    found.push(fault("plate-does-not-fit", said, say("supply-voltage.match-unit-and-supply")));
  }
  // Of two legs to ground one that is far off the other, and not at ground itself: an open neutral.
  const legs = readings.find(({ toGround }) => {
    const most = Math.max(0, ...toGround);
    return (
      toGround.length === 2 && least(toGround) >= 0.05 * most && most - least(toGround) > 0.1 * most
    );
  })?.toGround;
  if (legs) {
    const said = say("supply-voltage.uneven-to-ground", { lines: legs.map(shown) });
    const actions = [say("supply-voltage.do-not-energize"), say("supply-voltage.check-neutral")];
    found.push(fault("uneven-to-ground", said, ...actions));
  }
  return found;
}

/** Above or below what the unit allows: wiring first where the reading was not taken at the service. */
function beyondOf(
  { input, plate, readings, low, high }: SupplyEvidence,
  byLow: Outcome,
  byHigh: Outcome,
): Fault[] {
  const { minimum, maximum } = plate;
  const found: Fault[] = [];
  const utility = say("supply-voltage.call-utility");
  const wiring = [say("supply-voltage.check-wiring"), say("supply-voltage.read-at-service")];
  if (byHigh === "fail" && high > maximum.si) {
    const said = say("supply-voltage.high-supply", { high: volt(rounded(high, 1)), maximum });
    const first = say("supply-voltage.read-at-service");
    found.push(
      fault("high-supply", said, ...(input.measuredAt === "unit" ? [first] : []), utility),
    );
  }
  if (byLow === "fail" && low < minimum.si) {
    const rest = readings.filter(({ state }) => state === "rest").map(({ volts }) => least(volts));
    const values = { low: volt(rounded(low, 1)), minimum };
    if (rest.length > 0 && least(rest) >= minimum.si) {
      found.push(fault("sag-under-load", say("supply-voltage.sag-under-load", values), ...wiring));
    } else {
      const said = say("supply-voltage.low-supply", values);
      const first = input.measuredAt === "unit" ? wiring : [];
      found.push(fault("low-supply", said, ...first, utility));
    }
  }
  return found;
}

/** What was taken, and what a pass would hide. */
function nameplateNotes({ input, plate, nominal, readings }: SupplyEvidence): SupplyFinding[] {
  const { printed, rated } = plate;
  const found: SupplyFinding[] = [];
  if (!printed) found.push(assumed(say("supply-voltage.ten-percent")));
  if (!input.meter) found.push(assumed(say("supply-voltage.exact-meter")));
  const off = ({ si }: Quantity<"voltage">) => Math.abs(si - nominal);
  const near = rated.reduce((a, b) => (off(b) < off(a) ? b : a));
  if (rated.length > 1) {
    found.push(noted(say("supply-voltage.transformer-tap", { near })));
  } else if (off(near) > 0.06 * nominal) {
    const { voltage } = input.supply;
    found.push(noted(say("supply-voltage.narrow-plate", { near, nominal: voltage })));
  }
  const grounded = readings.some(
    ({ toGround }) => toGround.length === 2 && least(toGround) < 0.05 * Math.max(...toGround),
  );
  if (grounded) found.push(noted(say("supply-voltage.line-grounded")));
  return found;
}
