// The current of the running unit against what its plate prints, by the kind of plate.
import type { InstallationRecord } from "hvac-install-math/commissioning";
import { ampere, degC, deltaK, percent } from "hvac-install-math/quantity";
import { expect, it } from "vitest";
import { assessInstallation } from "./assess.ts";
import { changed } from "./changed.ts";

/** An invented unit that is judged by air and current, with the plate of its country. */
const unit = (equipment: object, current: number, rules = "nfpa-70-2023"): InstallationRecord =>
  ({
    version: 2,
    equipment,
    power: { circuits: [{ rules }] },
    instruments: {
      airThermometer: { accuracy: deltaK(0.5) },
      clampMeter: { accuracy: ampere(0.1) },
    },
    operation: [
      {
        mode: "cooling",
        indoorTemperature: degC(26),
        outdoorTemperature: degC(17),
        airSide: { supplyAir: degC(15), current: ampere(current), fullSpeed: true },
      },
    ],
  }) as InstallationRecord;

const awg = { minimumCircuitAmpacity: ampere(9.4), ratedLoadCurrent: ampere(7.2) };
const metric = { ratedCurrent: ampere(8.5), maximumFuse: ampere(16) };

function found(record: InstallationRecord) {
  const operation = assessInstallation(record).steps.find(({ name }) => name === "operation");
  const check = operation?.checks.find(({ name }) => name === "running-current")?.assessment;
  return {
    missing: operation?.missing,
    ...(check?.assumptions.length ? { assumptions: check.assumptions } : {}),
    outcome: check?.outcome,
    reason: check?.reasons[0]?.code.replace("commissioning.current-", ""),
    findings: check?.cautions
      .filter(({ kind }) => kind === "finding")
      .map(({ code }) => code.replace("commissioning.current-", "")),
  };
}

// An inverter that runs slowly draws little, whatever is wrong with it: common practice, no source.
it.each([false, undefined])("tells nothing where full speed is %s", (fullSpeed) => {
  const slow = changed({ "operation[0].airSide.fullSpeed": fullSpeed }, unit(awg, 5.6));
  const { outcome, missing } = found(slow);
  if (fullSpeed === undefined) expect(missing).toEqual(["operation[0].airSide.fullSpeed"]);
  else expect(outcome).toBe("inconclusive");
});

// NFPA 70, 440.4: the ampacity is for the conductors; the rated load is that of the compressor alone. That an inverter
// draws less than half of it on a mild day, or a multi with few heads, is common practice, no source.
it.each([
  [5.6, "pass", "within", []],
  [3.1, "pass", "within", ["unusual"]], // 62 °F outdoors
  [7.6, "pass", "within", ["unusual"]], // above the rated load, below the ampacity
  [9.45, "inconclusive", "too-close", []],
  [9.8, "fail", "above-plate", []],
  [0.56, "inconclusive", "odd", []], // a slip of ten
  [56, "fail", "above-plate", []],
] as const)(
  "%d A on a plate with 9.4 A and a rated load of 7.2 A: %s",
  (amperes, outcome, reason, findings) => {
    expect(found(unit(awg, amperes))).toEqual({ missing: [], outcome, reason, findings });
  },
);

// IEC 60335-1, 7.1: the plate prints a rated current; neither an ampacity nor a rated load. 10.2, table 2, allows 15 %
// above it (from memory).
it.each([
  ["iec-60364", 5.4, "pass", "within", []],
  ["bs-7671-2018", 5.4, "pass", "within", []],
  ["as-nzs-3000-2018-australia", 3, "pass", "within", ["unusual"]],
  ["japan-interpretation", 9, "pass", "within-deviation", ["unusual"]],
  ["iec-60364", 10.5, "fail", "above-plate", []],
  ["iec-60364", 0.54, "inconclusive", "odd", []],
] as const)(
  "by %s, %d A on a plate with 8.5 A: %s",
  (rules, amperes, outcome, reason, findings) => {
    expect(found(unit(metric, amperes, rules))).toEqual({ missing: [], outcome, reason, findings });
  },
);

it("asks a metric plate for its rated current, and a plate by wire gauge for its own two", () => {
  const missing = (rules: string) => found(unit({}, 5, rules)).missing;
  expect(missing("iec-60364")).toEqual(["equipment.ratedCurrent"]);
  expect(missing("nfpa-70-2023")).toEqual([
    "equipment.minimumCircuitAmpacity",
    "equipment.ratedLoadCurrent",
  ]);
});

it("asks the circuit of a metric plate for rated current and largest fuse", () => {
  const record = changed({
    "power.circuits[0].rules": "iec-60364",
    "equipment.minimumCircuitAmpacity": undefined,
    "equipment.maximumOvercurrentProtection": undefined,
  });
  const circuit = assessInstallation(record).steps.find(({ name }) => name === "circuit");
  expect(circuit?.missing).toEqual(
    expect.arrayContaining(["equipment.ratedCurrent", "equipment.maximumFuse"]),
  );
});

// "±(2 % + 5 counts)" at 8.85 A: limits 0.677 A, u = 0.391 A, and 8.85 A + 1.645 u = 9.49 A is above the 9.4 A; by the
// counts alone 9.32 A is not. JCGM 100:2008, 4.3.7; JCGM 106:2012, 8.3.2.
it.each([
  [percent(2), "inconclusive"],
  [undefined, "pass"],
] as const)(
  "the part of the limits that grows with the reading counts: %s, %s",
  (part, outcome) => {
    const clampMeter = { accuracyOfReading: part, accuracy: ampere(0.5), resolution: ampere(0.1) };
    const read = { ...unit(awg, 8.85), instruments: { clampMeter } };
    expect(found(read).outcome).toBe(outcome);
  },
);

it("names the part of the reading that no meter has", () => {
  const clampMeter = { accuracyOfReading: percent(30), accuracy: ampere(0.5) };
  const { steps } = assessInstallation({ ...unit(awg, 8.85), instruments: { clampMeter } });
  expect(steps.find(({ name }) => name === "operation")).toMatchObject({
    outcome: "inconclusive",
    problems: [
      {
        path: "instruments.clampMeter.accuracyOfReading",
        reason: { values: { value: percent(30), limit: percent(20) } },
      },
    ],
  });
});
