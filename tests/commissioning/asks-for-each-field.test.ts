// What a step needs and the record does not have is asked for: that field by its path, and no other. The record that is
// read on gauges and in the air is invented; what each check needs is what its module says that it needs.
import type { InstallationRecord, StepName } from "hvac-install-math/commissioning";
import { ampere, degF, degreeAngle, deltaF, hour, oz, psi, psig } from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import { assessInstallation } from "./assess.ts";
import { changed } from "./changed.ts";
import { threeHeads } from "./three-heads.ts";

const measured: InstallationRecord = changed({
  "equipment.meteringDevice": "orifice",
  "equipment.compressor": "single-speed",
  "instruments.serviceGauge": { accuracy: psi(1) },
  "instruments.lineThermometer": { accuracy: deltaF(1) },
  "instruments.airThermometer": { accuracy: deltaF(1) },
  "instruments.clampMeter": { accuracy: ampere(0.2) },
  "operation[0].charge": {
    pressure: psig(118),
    lineTemperature: degF(52),
    target: deltaF(12),
    tolerance: deltaF(5),
  },
  "operation[0].airSide": { supplyAir: degF(57), current: ampere(8.2), fullSpeed: true },
});

const missing = (name: StepName, record: InstallationRecord) =>
  assessInstallation(record).steps.find((step) => step.name === name)?.missing;

const fields: Partial<Record<StepName, readonly string[]>> = {
  "line-run": [
    "runs[0].tubing.length",
    "runs[0].tubing.lift",
    "runs[0].tubing.outdoorUnit",
    "runs[0].tubing.liquid.outsideDiameter",
    "runs[0].tubing.liquid.wall",
    "runs[0].tubing.vapor.outsideDiameter",
    "runs[0].tubing.vapor.wall",
    "equipment.outdoorUnit.ports.liquid",
    "equipment.outdoorUnit.ports.vapor",
    "equipment.manual.run",
    "equipment.manual.run.maximumLength",
    "equipment.manual.run.maximumLift",
  ],
  joints: ["runs[0].joints[0].tube", "runs[0].joints[0].torque"],
  "pressure-test": [
    "pressureTests[0].criterion",
    "instruments.testGauge",
    "instruments.gasThermometer",
    "equipment.lowestMarkedPressure",
    "equipment.manual.testHold",
    "equipment.manual.testPressure",
  ],
  evacuation: [
    "evacuations[0].readings",
    "evacuations[0].policy",
    "evacuations[0].ambient",
    "instruments.vacuumGauge",
  ],
  "room-limit": ["runs[0].room.volume", "equipment.refrigerant", "equipment.factoryCharge"],
  charge: [
    "charge.added",
    "charge.tolerance",
    "charge.fedAs",
    "instruments.scale",
    "runs[0].tubing.length",
    "equipment.factoryCharge",
    "equipment.manual.preChargedLength",
    "equipment.manual.chargeRate",
    "equipment.manual.shortLineRule",
  ],
  valves: ["valves.openedAt"],
  circuit: [
    "power.circuits[0].wiring",
    "power.circuits[0].sharedWith",
    "power.circuits[0].installed.device",
    "power.circuits[0].installed.conductor",
    "power.circuits[0].installed.equipmentGrounding",
    "power.circuits[0].installed.disconnect",
    "power.circuits[0].installed.disconnect.visible",
    "power.voltage",
    "power.phases",
    "equipment.minimumCircuitAmpacity",
    "equipment.maximumOvercurrentProtection",
  ],
  supply: [
    "power.supply.readings",
    "power.supply.measuredAt",
    "power.voltage",
    "power.phases",
    "equipment.ratedVoltages",
    "instruments.voltmeter",
  ],
  drain: ["runs[0].drain.slope", "runs[0].drain.waterRanOff"],
  operation: [
    "operation[0].mode",
    "operation[0].pressure",
    "operation[0].indoorTemperature",
    "operation[0].outdoorTemperature",
    "operation[0].evaporatorApproach",
    "operation[0].condenserApproach",
    "operation[0].charge.pressure",
    "operation[0].charge.lineTemperature",
    "operation[0].airSide.supplyAir",
    "operation[0].airSide.current",
    "operation[0].airSide.fullSpeed",
    "equipment.refrigerant",
    "equipment.meteringDevice",
    "equipment.compressor",
    "equipment.minimumCircuitAmpacity",
    "equipment.ratedLoadCurrent",
    "instruments.serviceGauge",
    "instruments.lineThermometer",
    "instruments.airThermometer",
    "instruments.clampMeter",
  ],
};

describe.each(Object.entries(fields) as [StepName, readonly string[]][])("%s", (name, paths) => {
  it("lacks nothing as it is", () => {
    expect(missing(name, measured)).toEqual([]);
  });
  it.each(paths)("asks for %s alone", (path) => {
    expect(missing(name, changed({ [path]: undefined }, measured))).toEqual([path]);
  });
});

it("asks for the atmosphere, which an altitude gives too, wherever a gauge is read", () => {
  const nowhere = changed({ site: undefined }, measured);
  for (const name of ["pressure-test", "operation"] as const) {
    expect(missing(name, nowhere)).toEqual(["site.atmosphere"]);
  }
});

it("asks for the time of the last reading, by which a test was held", () => {
  const [first, second] = measured.pressureTests?.[0]?.readings ?? [];
  const third = { ...second, elapsed: undefined };
  const log = (...readings: unknown[]) =>
    missing("pressure-test", changed({ "pressureTests[0].readings": readings }, measured));
  expect(log(first, third)).toEqual(["pressureTests[0].readings[1].elapsed"]);
  expect(log(first, second, third)).toEqual(["pressureTests[0].readings[2].elapsed"]);
  expect(log(first)).toEqual([
    "pressureTests[0].readings[1]",
    "pressureTests[0].readings[1].elapsed",
  ]);
});

describe("a port", () => {
  const charge = (changes: Record<string, unknown>) =>
    missing("charge", changed(changes, measured));
  const allowance = "equipment.manual.unusedPortAllowance";

  it("that stays unused can take charge off: what the manual says of it is asked for", () => {
    expect(charge({ "equipment.portPairs": 1 })).toEqual([]);
    expect(charge({ "equipment.portPairs": 2 })).toEqual([allowance]);
    expect(charge({ "equipment.portPairs": 2, [allowance]: oz(0) })).toEqual([]);
    expect(charge({ [allowance]: oz(-1) })).toEqual(["equipment.portPairs"]);
  });

  it("serves a branch box with all of its units", () => {
    const [main, head] = [{ ...measured.runs?.[0], name: "main" }, { ...measured.runs?.[0] }];
    const box = {
      "equipment.manual.preChargedFor": "each-run",
      runs: [{ ...main, serves: "branch-box" }, head, { ...head, name: "B" }],
    };
    expect(charge({ ...box, "equipment.portPairs": 1 })).toEqual([]);
    expect(charge({ ...box, "equipment.portPairs": 2 })).toEqual([allowance]);
  });
});

it("asks of several runs whether the pre-charged length is that of each", () => {
  const path = "equipment.manual.preChargedFor";
  expect(missing("charge", threeHeads)).toEqual([]);
  expect(missing("charge", changed({ [path]: undefined }, threeHeads))).toEqual([path]);
});

// The voltage at rest decides whether power may be connected; a reading of which nobody said how it was taken may be it.
it("asks for a voltage at rest, or whether one of the readings is it", () => {
  const [rest, load] = measured.power?.supply?.readings ?? [];
  const unsaid = { ...rest, state: undefined };
  const asked = (...readings: unknown[]) =>
    missing("supply", changed({ "power.supply.readings": readings }, measured));
  expect(asked(rest, unsaid)).not.toContain("power.supply.readings[2]");
  expect(asked(load)).toContain("power.supply.readings[1]");
  expect(asked(load, unsaid)).toContain("power.supply.readings[1].state");
  expect(asked(unsaid, load)).toContain("power.supply.readings[0].state");
});

describe("a joint", () => {
  const asked = (joint: object) =>
    missing("joints", changed({ "runs[0].joints[0]": joint }, measured))?.map((path) =>
      path.replace("runs[0].joints[0].", ""),
    );

  it("of no kind is asked for it, and for what a flare would show", () => {
    expect(asked({ tube: "1/4" })).toEqual(["kind", "torque"]);
    expect(asked({ tube: "1/4", inspected: true })).toEqual(["kind", "torque"]);
  });

  it("of a line has the size of that line", () => {
    expect(asked({ kind: "flare", turn: degreeAngle(75) })).toEqual(["tube"]);
    expect(asked({ kind: "flare", turn: degreeAngle(75), line: "liquid" })).toEqual([]);
  });

  it("of another kind is asked for what shows that it is sound", () => {
    expect(asked({ kind: "brazed" })).toEqual(["nitrogenFlowed"]);
    expect(asked({ kind: "pressed" })).toEqual(["inspected"]);
    expect(asked({ kind: "coupling" })).toEqual(["inspected"]);
  });
});

describe("a test of which the manual says nothing", () => {
  const requirement = { pressure: psig(450), hold: hour(12) };
  const silent = {
    "equipment.manual.testPressure": undefined,
    "equipment.manual.testHold": undefined,
  };
  const at = "pressureTests[0].requirement";
  const assumed = (changes: Record<string, unknown>) =>
    assessInstallation(changed(changes, measured)).assumptions.find(
      ({ code }) => code === "commissioning.manual-silent",
    )?.values;

  it("is asked who asks for its pressure", () => {
    const own = { ...silent, [at]: requirement };
    expect(missing("pressure-test", changed(own, measured))).toEqual([`${at}.standing`]);
  });

  it("goes by what was asked for, and says on whose word", () => {
    for (const standing of ["adopted-code", "manufacturer", "common-practice"]) {
      const own = { ...silent, [at]: { ...requirement, standing } };
      expect(missing("pressure-test", changed(own, measured))).toEqual([]);
      expect(assumed(own)).toEqual({ standing: `commissioning.standing.${standing}` });
    }
  });

  it("is the manual's where that says something", () => {
    const own = { [at]: { pressure: psig(900), hold: hour(48), standing: "adopted-code" } };
    const { steps } = assessInstallation(changed(own, measured));
    expect(steps.find(({ name }) => name === "pressure-test")?.outcome).toBe("pass");
    expect(assumed(own)).toBeUndefined();
  });
});
