// Every part of the work that has a date counts in what the record says of itself: who signed before it, what is older
// than a year, what was changed before all work. Common practice, no source; the dates of the complete record are all of
// 4 and 5 May 2026, and it was signed on 5 May at 16:00.
import type { InstallationRecord } from "hvac-install-math/commissioning";
import { ampere, degF, ft, psig } from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import { assessInstallation } from "./assess.ts";
import { type Change, changed } from "./changed.ts";

const found = (record: InstallationRecord, code: string) =>
  assessInstallation(record).cautions.find((one) => one.code === `commissioning.${code}`);
const fieldsOf = (record: InstallationRecord, code: string) => found(record, code)?.values.fields;

/** Where the date of a part stands, and the part. */
const parts = [
  ["runs[0].tubing.at", "runs.tubing"],
  ["runs[0].joints[1].at", "runs.joints"],
  ["runs[0].drain.at", "runs.drain"],
  ["pressureTests[0].at", "pressureTests"],
  ["evacuations[0].at", "evacuations"],
  ["charge.at", "charge"],
  ["valves.openedAt", "valves"],
  ["power.circuits[0].at", "power.circuits"],
  ["power.supply.at", "power.supply"],
  ["power.energizedAt", "power"],
] as const;

describe("a signature", () => {
  it.each([...parts, ["operation[0].at", "operation"] as const])(
    "before %s does not cover it",
    (path, part) => {
      const late = changed({ [path]: "2026-05-06" });
      expect(fieldsOf(late, "signed-before-change")).toEqual([`commissioning.field.${part}`]);
    },
  );

  it("before a waiver does not cover it", () => {
    const waiver = { step: "joints", reason: "existing-lines", by: "N. N.", at: "2026-05-06" };
    expect(fieldsOf(changed({ waivers: [waiver] }), "signed-before-change")).toEqual([
      "commissioning.field.waivers",
    ]);
  });

  it("is held against the last of several dates, wherever it stands in its list", () => {
    for (const joint of [0, 3]) {
      const late = changed({ [`runs[0].joints[${joint}].at`]: "2026-05-06" });
      expect(fieldsOf(late, "signed-before-change")).toEqual(["commissioning.field.runs.joints"]);
    }
  });

  // The signature is of 2026-05-05 at 16:00, the other joints of the day before.
  it("is held against dates with an offset and without, each for itself", () => {
    const late = changed({ "runs[0].joints[1].at": "2026-05-07T12:00:00Z" });
    expect(fieldsOf(late, "signed-before-change")).toEqual(["commissioning.field.runs.joints"]);
  });
});

describe("a part that is more than a year older than the rest", () => {
  it.each(parts)("is named: %s", (path, part) => {
    const old = changed({ [path]: "2024-05-05" });
    expect(fieldsOf(old, "older-than-a-year")).toEqual([`commissioning.field.${part}`]);
  });
});

describe("a change before all work that has a date", () => {
  const entry = { by: "N. N.", at: "2025-05-04", reason: "x" };
  const doubted = (path: string) => {
    const undated = changed({
      "runs[0].tubing.at": undefined,
      "runs[0].joints[0].at": undefined,
      "runs[0].drain.at": undefined,
      "pressureTests[0].at": undefined,
      "evacuations[0].at": undefined,
      "charge.at": undefined,
      "valves.openedAt": undefined,
    });
    const record = { ...undated, history: [{ ...entry, path }] } as InstallationRecord;
    return found(record, "amended-before-work") !== undefined;
  };

  it.each([
    "runs[0].joints[0].torque",
    "runs[12].joints[3].torque",
    "runs[0].drain.waterRanOff",
    "pressureTests[0].criterion",
    "evacuations[0].policy",
    "charge.added",
    "valves",
  ])("is doubted where it is work: %s", (path) => expect(doubted(path)).toBe(true));

  it.each([
    "equipment.factoryCharge",
    "equipment.manual.run",
    "runs[0].tubing.length", // as planned
    "runs[0].room.volume",
    "plan.hold",
    "site.altitude",
  ])("is none where it can be known before: %s", (path) => expect(doubted(path)).toBe(false));

  it("is held against the first date, whatever part has it", () => {
    const history = [{ ...entry, path: "charge.added", at: "2026-05-04" }];
    const undated = { "charge.at": undefined, "runs[0].tubing.length": ft(36) };
    const record = { ...changed(undated), history } as InstallationRecord;
    expect(found(record, "amended-before-work")).toBeUndefined(); // of the day of the lines
    const later = changed({
      ...undated,
      "runs[0].tubing.at": undefined,
      ...Object.fromEntries([0, 1, 2, 3].map((i) => [`runs[0].joints[${i}].at`, undefined])),
    });
    expect(
      found({ ...later, history } as InstallationRecord, "amended-before-work")?.values.first,
    ).toEqual({ verbatim: "2026-05-05" });
  });
});

describe("an instrument that was due before it was read", () => {
  it.each([
    ["tape", "runs[0].tubing"],
    ["torqueWrench", "runs[0].joints"],
    ["level", "runs[0].drain"],
    ["testGauge", "pressureTests[0]"],
    ["gasThermometer", "pressureTests[0]"],
    ["vacuumGauge", "evacuations[0]"],
    ["scale", "charge"],
    ["voltmeter", "power.supply"],
    ["serviceGauge", "operation[0]"],
  ])("is named at its reading: %s", (instrument, part) => {
    const record = changed({ [`instruments.${instrument}.calibrationDue`]: "2026-05-01" });
    const said = found(record, "calibration-expired");
    expect(said?.part?.startsWith(part)).toBe(true);
    expect(said?.values.instrument).toBe(`commissioning.field.instruments.${instrument}`);
  });

  it.each<[instrument: string, part: string, more: Change]>([
    ["lineThermometer", "operation[0]", { "operation[0].charge.lineTemperature": degF(52) }],
    [
      "serviceGauge",
      "operation[0]",
      { "operation[0].pressure": undefined, "operation[0].charge.pressure": psig(118) },
    ],
    ["airThermometer", "operation[0]", { "operation[0].airSide.supplyAir": degF(57) }],
    ["clampMeter", "operation[0]", { "operation[0].airSide.current": ampere(8) }],
    ["level", "runs[0].drain", { "runs[0].drain.slope": undefined }],
    ["tape", "runs[0].tubing", { "runs[0].tubing.lengthIs": "nominal" }], // for the lift
  ])("is named at its reading, also where that is the only one: %s at %s", (name, part, more) => {
    const due = { [`instruments.${name}.calibrationDue`]: "2026-05-01" };
    expect(found(changed({ ...due, ...more }), "calibration-expired")?.part).toBe(part);
  });

  it.each([
    ["tape", { "runs[0].tubing.length": undefined }],
    ["tape", { "runs[0].tubing.lengthIs": "nominal", "runs[0].tubing.lift": undefined }],
    ["torqueWrench", { "runs[0].joints": [{ kind: "pressed", inspected: true }] }],
    ["scale", { "charge.added": undefined }],
    ["serviceGauge", { "operation[0].pressure": undefined }],
  ])("is nothing where it was not read: %s", (instrument, changes) => {
    const due = { [`instruments.${instrument}.calibrationDue`]: "2026-05-01" };
    expect(found(changed({ ...due, ...changes }), "calibration-expired")).toBeUndefined();
  });

  it("is judged by the date of the lines where a joint has none of its own", () => {
    const undated = [0, 1, 2, 3].map((i) => [`runs[0].joints[${i}].at`, undefined]);
    const due = { "instruments.torqueWrench.calibrationDue": "2026-05-03" };
    const record = changed({ ...Object.fromEntries(undated), ...due });
    expect(found(record, "calibration-expired")?.values.at).toEqual({ verbatim: "2026-05-04" });
  });

  it("is taken to be in order where it was read on a day that nobody noted", () => {
    const granted = (record: InstallationRecord) =>
      assessInstallation(record).assumptions.find(
        ({ code }) => code === "commissioning.calibration-taken-for-granted",
      )?.values.fields;
    expect(granted(changed({}))).toBeUndefined();
    expect(granted(changed({ "charge.at": undefined }))).toEqual([
      "commissioning.field.instruments.scale",
    ]);
  });
});
