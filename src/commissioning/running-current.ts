// Does the running unit draw what its plate allows?
// Follows the plate: an ampacity with a rated load (NFPA 70, 440.4), or one rated current (IEC 60335-1, 7.1).
// Does not cover a small current: an inverter on a mild day, or a multi with few heads, draws less than half.
import { cite, verdict } from "../assessment/assessment.ts";
import { caution } from "../assessment/caution.ts";
import { conformity } from "../assessment/conformity.ts";
import { meterAt, standardUncertainty } from "../assessment/uncertainty.ts";
import { isAtMost } from "../quantity/limit.ts";
import { Quantity } from "../quantity/quantity.ts";
import { ampere } from "../quantity/units/electricity.ts";
import { errorsOf } from "./instrument-errors.ts";
import type { Job } from "./job.ts";
import { type OwnVerdict, ownVerdict } from "./own-verdict.ts";
import type { AirSideReading } from "./record-operation.ts";
import { circuitRulesNamed } from "./rule-sets.ts";
import { say } from "./statements.ts";
import { fieldWord } from "./words.ts";

type Current = Quantity<"current">;
type Printed = readonly [path: string, amperes: Current];
type Plate = Readonly<Record<string, Current | undefined>>;

/** What a plate prints of the current: the most that it allows, then what the unit draws at full load. */
export function plateCurrents({ record: { equipment = {}, power }, rules: passed }: Job): Plate {
  const { minimumCircuitAmpacity, ratedCurrent, ratedLoadCurrent } = equipment;
  const { rules } = power?.circuits?.find(({ plate }) => plate === undefined) ?? {};
  const set = rules && circuitRulesNamed(rules, passed);
  if ((set?.family ?? (ratedCurrent ? "metric" : "awg")) === "awg") {
    return {
      "equipment.minimumCircuitAmpacity": minimumCircuitAmpacity,
      "equipment.ratedLoadCurrent": ratedLoadCurrent,
    };
  }
  const printed: Plate =
    ratedCurrent || !minimumCircuitAmpacity
      ? { "equipment.ratedCurrent": ratedCurrent }
      : { "equipment.minimumCircuitAmpacity": minimumCircuitAmpacity };
  return ratedLoadCurrent
    ? { ...printed, "equipment.ratedLoadCurrent": ratedLoadCurrent }
    : printed;
}

/** What a rated current may be exceeded by: IEC 60335-1, 10.2, table 2, motors above 1.5 A, from memory. */
const deviation = 1.15;

/** Half of the load to all of it is usual at full speed; below this share a digit is missing. Common practice, no source. */
const [usual, slip] = [0.5, 0.15];

/** The current against the plate: never above what that allows; far below, it is asked about. */
export function runningCurrent(job: Job, { current, fullSpeed }: AirSideReading): OwnVerdict {
  const printed = Object.entries(plateCurrents(job)) as Printed[];
  const [[field, most], [loadField, load]] = [printed[0], printed.at(-1)] as [Printed, Printed];
  const value = current as Current;
  if (fullSpeed !== true) {
    return ownVerdict(
      "inconclusive",
      say("commissioning.not-at-full-speed"),
      say("commissioning.run-at-full-speed"),
    );
  }
  const isRated = field === "equipment.ratedCurrent";
  const meter = errorsOf(job.record.instruments?.clampMeter);
  const { outcome } = conformity({
    value,
    standardUncertainty: meter ? standardUncertainty(meterAt(meter, value), ampere) : ampere(0),
    upperLimit: isRated ? new Quantity(deviation * most.si, most.unit) : most,
  });
  const onPlate = { current: value, most, field: fieldWord(field) };
  if (outcome === "fail") {
    return ownVerdict(
      outcome,
      say("commissioning.current-above-plate", onPlate),
      say("commissioning.stop-and-find-current"),
    );
  }
  const again = say("commissioning.read-current-again");
  if (outcome === "inconclusive") {
    return ownVerdict(outcome, say("commissioning.current-too-close", onPlate), again);
  }
  const low = new Quantity(usual * load.si, load.unit);
  const atLoad = { current: value, rated: load, field: fieldWord(loadField) };
  if (value.si < slip * load.si) {
    return ownVerdict("inconclusive", say("commissioning.current-odd", atLoad), again);
  }
  const isUsual = value.si >= low.si && isAtMost(value.si, load.si);
  const code = isAtMost(value.si, most.si) ? "within" : "within-deviation";
  return verdict({
    outcome,
    reasons: [say(`commissioning.current-${code}`, onPlate)],
    assumptions: [],
    cautions: isUsual
      ? []
      : [caution("finding", say("commissioning.current-unusual", { ...atLoad, low }))],
    actions: [],
    sources: [
      isRated
        ? cite("common-practice", "rated current of the nameplate")
        : cite("common-practice", "minimum circuit ampacity of the nameplate"),
    ],
  });
}
