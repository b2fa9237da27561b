// Records that contradict themselves, or that prove less than they seem to.
import { explain } from "hvac-install-math/assessment";
import {
  amend,
  assessInstallation,
  type InstallationRecord,
  type StepName,
} from "hvac-install-math/commissioning";
import {
  degF,
  deltaF,
  ft,
  ftLb,
  hour,
  inch,
  isInvalidInputError,
  isQuantity,
  liter,
  mm,
  oz,
  ozPerFt,
  percent,
  psi,
  psia,
  psig,
  second,
  volt,
} from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import { type Change, changed } from "./changed.ts";
import { complete } from "./complete-record.ts";

const step = (record: InstallationRecord, name: StepName) => {
  const found = assessInstallation(record).steps.find((one) => one.name === name);
  if (!found) throw new Error(name);
  return found;
};
const cautionOf = (record: InstallationRecord, code: string) =>
  assessInstallation(record).cautions.find((one) => one.code === code);

describe("a figure that no manual, plate or tube can have", () => {
  it.each([
    ["pressure-test", "equipment.manual.testHold", hour(0)],
    ["pressure-test", "equipment.manual.testHold", hour(-1)],
    ["pressure-test", "equipment.manual.testPressure", psig(0)],
    ["pressure-test", "equipment.lowestMarkedPressure", psig(-5)],
    ["pressure-test", "tubing.otherVolume", liter(-0.1)],
    ["charge", "charge.tolerance", oz(-1)],
    ["charge", "charge.tolerance", oz(50)], // more than the unit holds
  ] as [StepName, string, unknown][])("is a problem of %s at %s", (name, path, value) => {
    const { outcome, problems } = step(changed({ [path]: value }), name);
    expect(outcome).toBe("inconclusive");
    expect(problems).toContainEqual(expect.objectContaining({ path, value: String(value) }));
  });

  it("names the part of the reading where a temperature is beyond the refrigerant", () => {
    const record = changed({ "equipment.refrigerant": "R-744" });
    expect(step(record, "operation").problems[0]?.path).toBe("operation[0]");
  });
});

describe("joints", () => {
  it.each([
    { "joints[0].inspected": false },
    { "joints[0]": { kind: "brazed", nitrogenFlowed: true, inspected: false } },
    { "joints[0]": { kind: "pressed", inspected: false } },
  ])("that were found wrong fail, whatever else is right", (changes) => {
    expect(assessInstallation(changed(changes as Change)).cause).toBe("joints");
  });

  it("of one name are one joint", () => {
    const twice = changed({ "joints[1].name": "liquid, indoor" });
    expect(step(twice, "joints").outcome).toBe("inconclusive");
    const more = changed({ "joints[2]": complete.joints?.[0] });
    expect(step(more, "joints").outcome).toBe("inconclusive");
  });
});

// A line set that is flared throughout has a flare of each line: common practice, no source. 1/4 in: ASTM B280.
describe("flares of one size only", () => {
  const copied = { "joints[1].tube": "1/4", "joints[1].torque": ftLb(11.5) };
  const doubts = (changes: Change) =>
    step(changed(changes), "joints").checks.filter(({ name }) => name === "joint-sizes");

  it("leave the joints undecided where a line of another size has none", () => {
    const { outcome, checks } = step(changed(copied), "joints");
    expect(outcome).toBe("inconclusive");
    const last = checks.at(-1);
    expect(last?.path).toBe("tubing.vapor.outsideDiameter");
    expect(explain(last?.assessment.reasons[0] as never)).toBe(
      "No joint of the vapour line, 0.375 in, is recorded, only flares of 1/4 in: adapters or a copied entry?",
    );
    expect(assessInstallation(changed(copied)).outcome).toBe("inconclusive");
  });

  it.each([
    ["the liquid line", { "joints[0].tube": "3/8", "joints[0].torque": ftLb(28) }, 1],
    ["a tube that no flare nut fits", { "tubing.vapor.outsideDiameter": inch(0.875) }, 1],
    ["metric tube", { "tubing.vapor.outsideDiameter": mm(10) }, 1],
    ["both lines", { ...copied, "tubing.liquid.outsideDiameter": mm(8) }, 2],
    ["the same size by its metric name", { "tubing.vapor.outsideDiameter": mm(9.52) }, 0],
    ["lines of one size", { ...copied, "tubing.vapor.outsideDiameter": inch(0.25) }, 0],
    ["a line of unknown size", { ...copied, "tubing.vapor": undefined }, 0],
    ["a brazed joint", { "joints[1]": { kind: "brazed", nitrogenFlowed: true } }, 0],
    ["a joint that is still missing", { ...copied, "tubing.jointCount": 3 }, 0],
    ["joints that nobody counted", { ...copied, "tubing.jointCount": undefined }, 0],
    ["a flare of unknown size", { ...copied, "joints[0].tube": undefined }, 0],
    ["no joint at all", { joints: [], "tubing.jointCount": 0 }, 0],
  ] as [string, Change, number][])("are asked about for %s as it is recorded", (_, changes, n) => {
    expect(doubts(changes)).toHaveLength(n);
  });
});

// R410A at sea level: 236.5 psig at 80 °F (Lemmon 2003, doi:10.1023/A:1025048800563), the least temperature of a design
// (ANSI/ASHRAE 15, 9.2.1, from memory); 294 psig at 95 °F. At 1520 m the atmosphere is 12.23 psia instead of 14.70 (U.S. Standard Atmosphere 1976), and a gauge shows 2.46 psi more.
describe("a test below the refrigerant's own pressure", () => {
  const tested = (pressure: number, zones: readonly (number | number[])[], more: Change = {}) => {
    const record = changed({
      "equipment.manual.testPressure": psig(40),
      "pressureTest.readings": zones.map((zone, i) => ({
        pressure: psig(pressure),
        temperature: Array.isArray(zone) ? zone.map((one) => degF(one)) : degF(zone),
        elapsed: hour(14 * i),
      })),
      ...more,
    });
    const found = step(record, "pressure-test").checks.find((one) => one.name === "test-pressure");
    if (!found) throw new Error("not tested");
    return found.assessment;
  };

  it("is no test of what the tubing will carry", () => {
    const { outcome, reasons } = tested(50, [77, 77]);
    expect(outcome).toBe("inconclusive");
    expect(reasons.map(({ code }) => code)).toEqual(["test-below-own-pressure", "test-pressure"]);
    const { pressure, own, refrigerant, temperature } = reasons[0]?.values ?? {};
    expect({ pressure, refrigerant, temperature }).toEqual({
      pressure: psig(50),
      refrigerant: "R-410A",
      temperature: degF(80),
    });
    if (!isQuantity(own, "gaugePressure")) throw new Error("no pressure");
    expect(Math.abs(own.in(psig) - 239.0)).toBeLessThan(0.1); // shown with four digits
    expect(own.unit).toBe(psig);
  });

  it.each([
    [237, [77, 77], {}, "inconclusive"],
    [241, [77, 77], {}, "pass"],
    [237, [77, 77], { "site.altitude": ft(0) }, "pass"],
    [150, [10, 10], {}, "inconclusive"], // a cold day says nothing of a warm one
    [241, [95, 77], {}, "inconclusive"],
    [
      241,
      [
        [95, 20],
        [20, 95],
      ],
      {},
      "pass",
    ], // at rest the coldest part sets the pressure
    [
      241,
      [
        [95, 100],
        [100, 95],
      ],
      {},
      "inconclusive",
    ],
    [50, [77, 77], { "equipment.refrigerant": "R-999" }, "pass"], // not known
    [50, [77, 77], { "equipment.refrigerant": undefined }, "pass"],
    // Carbon dioxide boils at 80 °F at some 955 psig; its critical point is at 87.8 °F (from memory).
    [500, [80, 80], { "equipment.refrigerant": "R-744" }, "inconclusive"],
    [500, [100, 100], { "equipment.refrigerant": "R-744" }, "pass"],
  ] as [number, (number | number[])[], Change, string][])(
    "of %f psig at %j °F with %j is %s",
    (pressure, zones, more, outcome) => {
      expect(tested(pressure, zones, more).outcome).toBe(outcome);
    },
  );

  it("is seen by an absolute sensor and the barometer of the reading", () => {
    const reading = { temperature: degF(77), atmosphere: psia(14.7) };
    const at = (pressure: number) => [
      { ...reading, pressure: psia(pressure), elapsed: hour(0) },
      { ...reading, pressure: psia(pressure), elapsed: hour(14) },
    ];
    expect(tested(0, [], { "pressureTest.readings": at(250) }).outcome).toBe("inconclusive");
    expect(tested(0, [], { "pressureTest.readings": at(252) }).outcome).toBe("pass"); // 251.2 psia
  });
});

// No instrument is exact: common practice, no source.
describe("an instrument that is recorded as exact", () => {
  it.each([
    ["torqueWrench", { relativeAccuracy: percent(0) }],
    ["torqueWrench", { accuracy: ftLb(0), resolution: ftLb(0.5) }],
    ["voltmeter", { accuracy: volt(0), accuracyOfReading: percent(0) }],
    ["scale", { accuracy: oz(0) }],
    ["scale", { resolution: oz(0) }],
    ["testGauge", { accuracy: psi(0), resolution: psi(0.1) }],
    ["serviceGauge", { accuracy: psi(0) }],
    ["vacuumGauge", { accuracy: percent(0) }],
    ["gasThermometer", { accuracy: deltaF(0) }],
    ["lineThermometer", { accuracy: deltaF(0) }],
  ])("is named in a caution: %s", (name, instrument) => {
    const path = `instruments.${name}`;
    expect(cautionOf(changed({ [path]: instrument }), "instrument-exact")?.values).toEqual({
      instruments: path,
    });
  });

  it("is none with any limit of error, or where nothing is known of it", () => {
    const ofReading = { accuracy: volt(0), accuracyOfReading: percent(1) };
    const record = changed({ "instruments.voltmeter": ofReading, "instruments.scale": {} });
    expect(cautionOf(record, "instrument-exact")).toBeUndefined();
    expect(cautionOf({ version: 1 }, "instrument-exact")).toBeUndefined();
  });
});

// The vapour of the same flow takes far more room than its liquid: common practice, no source.
describe("the two lines", () => {
  it("that were taken for each other leave the run undecided", () => {
    const { liquid, vapor } = complete.tubing ?? {};
    const record = changed({ "tubing.liquid": vapor, "tubing.vapor": liquid });
    const { outcome, checks } = step(record, "line-run");
    expect(outcome).toBe("inconclusive");
    expect(checks.at(-1)?.assessment.reasons[0]?.code).toBe("lines-swapped");
    expect(assessInstallation(record).outcome).toBe("inconclusive");
  });

  it("may have the same size, or one of them none", () => {
    const { vapor } = complete.tubing ?? {};
    expect(step(changed({ "tubing.liquid": vapor }), "line-run").outcome).toBe("pass");
    const alone = { "tubing.liquid": vapor, "tubing.vapor": undefined };
    expect(step(changed(alone), "line-run").outcome).toBe("pass");
  });
});

// 1/4 in of 0.03 in wall holds 0.19 oz/ft of R410A liquid; published rates are 0.4 to 1.9 times the full line.
describe("the rate of the manual", () => {
  const rated = (figure: number, added: number, more: Change = {}) =>
    changed({
      "equipment.manual.chargeRate": ozPerFt(figure),
      "charge.added": oz(added),
      "equipment.maximumCharge": undefined,
      ...more,
    });

  it.each([
    [1.6, 17.6], // the decimal point lost
    [0.016, 0.176],
    [0, 0], // zero where it was not known
  ])(
    "of %f oz/ft that no line of this size can have leaves the charge undecided",
    (figure, added) => {
      const { outcome, checks } = step(rated(figure, added), "charge");
      expect(outcome).toBe("inconclusive");
      expect(checks.at(-1)?.name).toBe("charge-rate");
      expect(checks.at(-1)?.assessment.reasons[0]?.code).toBe("implausible");
    },
  );

  it("is not asked for where nothing is counted by it, nor without a tube", () => {
    const covered = { "equipment.manual.preChargedLength": ft(36) };
    expect(step(rated(0, 0, covered), "charge").outcome).toBe("pass");
    expect(step(rated(1.6, 17.6, { "tubing.liquid": undefined }), "charge").outcome).toBe("pass");
    expect(step(changed({}), "charge").checks.map(({ name }) => name)).not.toContain("charge-rate");
  });
});

// A tenth of the whole charge as the widest tolerance: common practice, no source. 39.5 oz + 11 ft · 0.16 oz/ft is 41.26 oz.
describe("the tolerance of the weighed charge", () => {
  it.each([
    [4.12, 1.8, "pass"],
    [4.13, 1.8, "inconclusive"],
    [30, -25, "inconclusive"], // most of the charge taken out
    [30, 35, "fail"],
  ])("of %f oz with %f oz added is %s", (tolerance, added, outcome) => {
    const record = changed({ "charge.tolerance": oz(tolerance), "charge.added": oz(added) });
    const charge = step(record, "charge");
    expect(charge.outcome).toBe(outcome);
    const codes = charge.checks.flatMap(({ assessment }) => assessment.reasons.map((r) => r.code));
    expect(codes.includes("tolerance-wide")).toBe(tolerance > 4.126);
  });
});

describe("a hold without all of its times", () => {
  it("counts from the first time that is stated", () => {
    const record = changed({ "pressureTest.readings[0].elapsed": undefined });
    expect(step(record, "pressure-test").outcome).not.toBe("pass");
  });
});

describe("dates", () => {
  it.each([
    ["a joint made during the hold", "pressure-test", { "joints[1].at": "2026-05-05T07:00" }],
    ["a pressure test during the vacuum", "evacuation", { "pressureTest.at": "2026-05-05T10:50" }],
    ["a unit read before its valves", "operation", { "valves.openedAt": "2026-05-05T15:00" }],
    ["a unit read before its power", "operation", { "power.energizedAt": "2026-05-05T15:00" }],
    ["a charge after the last reading", "operation", { "charge.at": "2026-05-05T15:00" }],
  ] as [string, StepName, Change][])("show %s, which proves nothing", (_, name, changes) => {
    const { outcome, checks } = step(changed(changes), name);
    expect(outcome).toBe("inconclusive");
    expect(checks.at(-1)?.name).toBe("order");
  });

  it("of more than a year between two parts of the work are a caution that names the older", () => {
    const old = changed({ "power.supply.at": "2023-05-05", "joints[0].at": "2025-05-03" });
    expect(explain(cautionOf(old, "older-than-a-year") as never)).toBe(
      "More than a year older than power of 2026-05-05T12:45: joints[0], power.supply. See whether it is of this installation and the years are right.",
    );
    const { power, ...begun } = old; // also before there is power
    expect(cautionOf(begun, "older-than-a-year")?.values.paths).toBe("joints[0]");
  });

  it("of a year between, or of a later reading, are none", () => {
    expect(cautionOf(changed({ "tubing.at": "2025-05-06" }), "older-than-a-year")).toBeUndefined();
    const visit = changed({ "operation[0].at": "2029-05-05T14:00" });
    expect(cautionOf(visit, "older-than-a-year")).toBeUndefined();
  });

  it("that joints do not have are taken to be before the tests, and the result says so", () => {
    const said = (record: InstallationRecord) =>
      assessInstallation(record).assumptions.find(({ code }) => code === "joints-undated");
    expect(said(complete)).toBeUndefined();
    const undated = changed({ "joints[1].at": undefined });
    expect(said(undated)?.values.paths).toBe("joints[1]");
    const { pressureTest, evacuation, ...untested } = undated;
    expect(said(untested)).toBeUndefined();
    expect(said({ ...untested, evacuation } as InstallationRecord)).toBeDefined();
  });

  it("of more than a week between evacuation and opening are a caution", () => {
    const opened = (openedAt: string) =>
      cautionOf(changed({ "valves.openedAt": openedAt }), "evacuation-long-before");
    expect(opened("2026-05-12T11:00")).toBeUndefined(); // evacuated at 2026-05-05T11:00
    expect(opened("2026-05-12T11:02")?.values).toEqual({
      openedAt: "2026-05-12T11:02",
      at: "2026-05-05T11:00",
    });
  });

  it("let a reading lead to a charge when another follows it", () => {
    const [first] = complete.operation ?? [];
    const again = { ...first, at: "2026-05-05T16:00" };
    const record = changed({ "charge.at": "2026-05-05T15:00", "operation[1]": again });
    expect(step(record, "operation").outcome).toBe("pass");
  });

  it("of a charge without its amount say that some was added", () => {
    const { holds } = assessInstallation(
      changed({ "charge.added": undefined, evacuation: undefined }),
    );
    expect(holds[1]).toMatchObject({ name: "add-charge", state: "breached" });
    const none = assessInstallation(changed({ "charge.added": oz(0), evacuation: undefined }));
    expect(none.holds[1]?.state).toBe("held");
  });
});

describe("the document", () => {
  it("says who signed before the work was done", () => {
    const early = changed({ "signatures[0].at": "2026-05-05T13:00" });
    expect(cautionOf(early, "signed-before-change")?.values.paths).toBe("operation[0]");
  });

  it.each(["", " ", "\u200b", "."])("is not signed by %j", (name) => {
    expect(cautionOf(changed({ "signatures[0].name": name }), "not-signed")).toBeDefined();
  });

  it("says what was overwritten, and not what was filled in", () => {
    const who = { by: "N. N.", at: "2026-05-05T15:00", reason: "misread" };
    const failed = changed({ "joints[0].torque": ftLb(5), "tubing.bends": undefined });
    const filled = amend(failed, { ...who, path: "tubing.bends", value: 4 });
    expect(cautionOf(filled, "amended")).toBeUndefined();
    const mended = amend(filled, { ...who, path: "joints[0].torque", value: ftLb(11.5) });
    expect(assessInstallation(mended).outcome).toBe("pass");
    expect(explain(cautionOf(mended, "amended") as never)).toBe(
      "Changed after it was recorded; the history says what stood there before: joints[0].torque.",
    );
  });

  it.each([
    { "equipment.outdoorUnit": undefined },
    { "equipment.indoorUnits": [] },
    { "equipment.indoorUnits": [{}] },
    { "equipment.outdoorUnit": { model: " " } },
  ])("says that a unit is not identified", (changes) => {
    expect(cautionOf(changed(changes), "unit-unknown")).toBeDefined();
    expect(cautionOf(complete, "unit-unknown")).toBeUndefined();
  });

  it("says that one run and one drain stand for several indoor units", () => {
    const many = changed({ "equipment.indoorUnits": [{ model: "a" }, { model: "b" }] });
    const said = assessInstallation(many).assumptions.map(({ code }) => code);
    expect(said).toContain("several-indoor-units");
  });

  it.each(["\u200b", "."])("takes no declaration by %j", (by) => {
    const word = { step: "joints", reason: "quick couplings", by, at: "2026-05-04" };
    const record = changed({ joints: undefined, "tubing.jointCount": 0, notApplicable: [word] });
    expect(step(record, "joints").problems[0]?.path).toBe("notApplicable[0].by");
  });
});

describe("an amendment", () => {
  it.each([
    ["change.vaule", { vaule: degF(3) }], // would take the field out
    ["change.by", { by: "\u200b" }],
    ["change.reason", { reason: "..." }],
  ])("is refused by %s", (argument, wrong) => {
    const change = { path: "tubing.bends", by: "N. N.", at: "2026-05-06", reason: "x", ...wrong };
    let refused: unknown;
    try {
      amend(complete, change);
    } catch (error) {
      refused = isInvalidInputError(error) && error.argument;
    }
    expect(refused).toBe(argument);
  });
});

describe("what decides", () => {
  it("is the first of the reasons, without what passed", () => {
    const { reasons, deciding } = assessInstallation(changed({ "joints[0].torque": ftLb(5) }));
    expect(reasons.slice(0, deciding.length)).toEqual(deciding);
    expect(deciding.some(({ values }) => values.inStep === "joints")).toBe(true);
    expect(deciding.some(({ values }) => values.inStep === "line-run")).toBe(false);
    expect(assessInstallation(complete).deciding).toEqual([]);
  });
});

it("judges a log of 200 000 readings, and a test by it", () => {
  const [start, end] = complete.pressureTest?.readings ?? [];
  const readings = Array.from({ length: 200_000 }, (_, i) => ({
    ...(i < 100_000 ? start : end),
    elapsed: second(i / 4),
  }));
  const record = { ...complete, pressureTest: { ...complete.pressureTest, readings } };
  const steps = assessInstallation(record as InstallationRecord).steps;
  const names = steps.flatMap(({ checks }) => checks.map(({ name }) => name));
  expect(names).toContain("test-hold");
});
