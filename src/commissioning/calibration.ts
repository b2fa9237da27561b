// Did the calibration hold when the reading was taken? Dates of instruments against dates of readings.
// Follows ISO/IEC 17025:2017 only in asking for the date; what interval is right is the user's rule.
// Does not cover whether the certificate covers the range.
import { type Assumption, type Caution, statement } from "../assessment/assessment.ts";
import type { IsoTime } from "../shapes/index.ts";
import { surelyBefore } from "../shapes/index.ts";
import type { InstallationRecord } from "./record.ts";
import type { InstrumentIdentity, Instruments } from "./record-equipment.ts";

type Use = readonly [instrument: keyof Instruments, path: string, used: unknown, at?: IsoTime];

/** Where each instrument was read. */
function usesOf(record: InstallationRecord): readonly Use[] {
  const { tubing, joints = [], pressureTest, evacuation, charge, power, operation = [] } = record;
  const { drain } = record;
  const readings = pressureTest?.readings;
  const use = (
    instrument: keyof Instruments,
    path: string,
    used: unknown,
    at: IsoTime | undefined,
  ): Use => (at === undefined ? [instrument, path, used] : [instrument, path, used, at]);
  return [
    use("tape", "tubing", tubing?.length, tubing?.at),
    ...joints.map((one, i) => use("torqueWrench", `joints[${i}]`, one.torque, one.at)),
    use("testGauge", "pressureTest", readings, pressureTest?.at),
    use("gasThermometer", "pressureTest", readings, pressureTest?.at),
    use("vacuumGauge", "evacuation", evacuation?.readings, evacuation?.at),
    use("scale", "charge", charge?.added, charge?.at),
    use("voltmeter", "power.supply", power?.supply?.readings, power?.supply?.at),
    use("level", "drain", drain?.slope ?? drain?.unitPitch, drain?.at),
    ...operation.flatMap((one, i) => [
      use("serviceGauge", `operation[${i}]`, one.pressure ?? one.charge?.pressure, one.at),
      use("lineThermometer", `operation[${i}]`, one.charge?.lineTemperature, one.at),
    ]),
  ];
}

/** Cautions for calibrations that did not hold, assumptions where the dates do not say. */
export function calibrationsOf(record: InstallationRecord): {
  readonly cautions: readonly Caution[];
  readonly assumptions: readonly Assumption[];
} {
  const cautions: Caution[] = [];
  const unknown = new Set<string>();
  for (const [instrument, path, used, at] of usesOf(record)) {
    if (used === undefined) continue;
    const given: InstrumentIdentity | undefined = record.instruments?.[instrument];
    const { calibratedOn, calibrationDue } = given ?? {};
    if (at === undefined || calibrationDue === undefined) unknown.add(instrument);
    if (at === undefined) continue;
    const values = { instrument: `instruments.${instrument}`, reading: path, at };
    if (calibrationDue !== undefined && surelyBefore(calibrationDue, at)) {
      const text =
        "The calibration of {instrument} was due on {due}, before its reading of {at} ({reading}).";
      cautions.push(statement("calibration-out-of-date", text, { ...values, due: calibrationDue }));
    }
    if (calibratedOn !== undefined && surelyBefore(at, calibratedOn)) {
      const text =
        "{instrument} was calibrated on {on}, after its reading of {at} ({reading}): that certificate says nothing of it.";
      cautions.push(statement("calibrated-afterwards", text, { ...values, on: calibratedOn }));
    }
  }
  const text = "Without dates of reading and due date, these count as calibrated: {instruments}.";
  const instruments = [...unknown].join(", ");
  return {
    cautions,
    assumptions: unknown.size ? [statement("calibration-unknown", text, { instruments })] : [],
  };
}
