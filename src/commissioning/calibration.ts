// Did the calibration hold when the reading was taken? Dates of instruments against dates of readings.
// Follows ISO/IEC 17025:2017 only in asking for the date; what interval is right is the user's rule.
// Does not cover whether the certificate covers the range.
import { caution } from "../assessment/caution.ts";
import type { IsoTime } from "../shapes/index.ts";
import { surelyBefore } from "../shapes/index.ts";
import { isNominal } from "./nominal-length.ts";
import type { PlacedCaution } from "./placed.ts";
import type { InstallationRecord } from "./record.ts";
import type { InstrumentIdentity, Instruments } from "./record-instruments.ts";
import type { Tubing } from "./record-run.ts";
import { type CommissioningStatement, say } from "./statements.ts";
import { fieldWord, fieldWords, verbatim } from "./words.ts";

type Use = readonly [
  instrument: keyof Instruments,
  path: string,
  used: unknown,
  at: IsoTime | undefined,
];

/** Where each instrument was read. */
function usesOf(record: InstallationRecord): readonly Use[] {
  const { runs = [], pressureTests = [], evacuations = [], charge, power } = record;
  const { operation = [] } = record;
  const use = (...own: Use): Use => own;
  const taped = (tubing: Tubing | undefined) =>
    isNominal(record, { tubing }) ? tubing?.lift : tubing?.length;
  return [
    ...runs.flatMap(({ tubing, joints = [], drain }, i) => [
      use("tape", `runs[${i}].tubing`, taped(tubing), tubing?.at),
      ...joints.map((one, j) =>
        use("torqueWrench", `runs[${i}].joints[${j}]`, one.torque, one.at ?? tubing?.at),
      ),
      use("level", `runs[${i}].drain`, drain?.slope ?? drain?.unitPitch, drain?.at),
    ]),
    ...pressureTests.flatMap(({ readings, at }, i) => [
      use("testGauge", `pressureTests[${i}]`, readings, at),
      use("gasThermometer", `pressureTests[${i}]`, readings, at),
    ]),
    ...evacuations.map(({ readings, at }, i) =>
      use("vacuumGauge", `evacuations[${i}]`, readings, at),
    ),
    use("scale", "charge", charge?.added?.si || undefined, charge?.at),
    use("voltmeter", "power.supply", power?.supply?.readings, power?.supply?.at),
    ...operation.flatMap((one, i) => [
      use("serviceGauge", `operation[${i}]`, one.pressure ?? one.charge?.pressure, one.at),
      use("lineThermometer", `operation[${i}]`, one.charge?.lineTemperature, one.at),
      use("airThermometer", `operation[${i}]`, one.airSide?.supplyAir, one.at),
      use("clampMeter", `operation[${i}]`, one.airSide?.current, one.at),
    ]),
  ];
}

/** Whether nothing shows how well an instrument reads; tape and level are trusted as they are: common practice, no source. */
function isUnknown(instrument: Instruments[keyof Instruments], name: keyof Instruments): boolean {
  if (!instrument || name === "tape" || name === "level") return false;
  const { serialNumber, calibratedOn, calibrationDue } = instrument;
  const { accuracy, relativeAccuracy, accuracyOfReading } = instrument as Record<string, unknown>;
  const limits = accuracy ?? relativeAccuracy ?? accuracyOfReading;
  return (limits ?? serialNumber ?? calibratedOn ?? calibrationDue) === undefined;
}

/** Cautions for calibrations that did not hold, assumptions where the dates do not say. */
export function calibrationsOf(record: InstallationRecord): {
  readonly cautions: readonly PlacedCaution[];
  readonly assumptions: readonly CommissioningStatement[];
} {
  const cautions: PlacedCaution[] = [];
  const find = (said: CommissioningStatement, part: string) =>
    cautions.push({ ...caution("finding", said), part });
  const unknown = new Set<string>();
  const nameless = new Set<string>();
  for (const [instrument, reading, used, at] of usesOf(record)) {
    if (used === undefined) continue;
    const identity: InstrumentIdentity = record.instruments?.[instrument] ?? {};
    const { calibratedOn, calibrationDue } = identity;
    const path = `instruments.${instrument}`;
    if (isUnknown(record.instruments?.[instrument], instrument)) nameless.add(path);
    if (at === undefined || calibrationDue === undefined) unknown.add(path);
    if (at === undefined) continue;
    const values = { instrument: fieldWord(path), at: verbatim(at) };
    if (calibrationDue !== undefined && surelyBefore(calibrationDue, at)) {
      const due = verbatim(calibrationDue);
      find(say("commissioning.calibration-expired", { ...values, due }), reading);
    }
    if (calibratedOn !== undefined && surelyBefore(at, calibratedOn)) {
      const on = verbatim(calibratedOn);
      find(say("commissioning.calibrated-afterwards", { ...values, on }), reading);
    }
  }
  const fields = fieldWords([...unknown]);
  const unknowns = fieldWords([...nameless]);
  if (unknowns.length) {
    const said = say("commissioning.instrument-unknown", { fields: unknowns });
    cautions.push(caution("finding", said));
  }
  return {
    cautions,
    assumptions: fields.length
      ? [say("commissioning.calibration-taken-for-granted", { fields })]
      : [],
  };
}
