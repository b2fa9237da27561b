// Records that contradict themselves, or that prove less than they seem to.
import { explain } from "hvac-install-math/assessment";
import { amend, type InstallationRecord, type StepName } from "hvac-install-math/commissioning";
import { english } from "hvac-install-math/language/en";
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
  m2,
  mm,
  oz,
  ozPerFt,
  percent,
  psi,
  psia,
  psig,
  volt,
} from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import { assessInstallation } from "./assess.ts";
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
    ["pressure-test", "runs[0].tubing.otherVolume", liter(-0.1)],
    ["charge", "charge.tolerance", oz(-1)],
    ["charge", "charge.tolerance", oz(50)], // more than the unit holds
  ] as [StepName, string, unknown][])("is a problem of %s at %s", (name, path, value) => {
    const { outcome, problems } = step(changed({ [path]: value }), name);
    expect(outcome).toBe("inconclusive");
    const [problem] = problems.filter((one) => one.path === path);
    expect(problem?.reason.values).toMatchObject({
      value,
      field: `commissioning.field.${path.replace(/\[\d+\]/g, "")}`,
    });
  });

  it("says that place and height of the indoor unit exclude each other", () => {
    const record = changed({
      "equipment.refrigerant": "R-32",
      "runs[0].room": { floorArea: m2(20), place: "wall", installationHeight: ft(6) },
    });
    const [problem] = step(record, "room-limit").problems;
    expect(problem?.path).toBe("runs[0].room.place");
    const { actions = [] } = assessInstallation(record);
    const own = actions.filter(({ part }) => part === "runs[0].room.place");
    expect(own.map((one) => explain(one, english))).toContain(
      "Enter one of the two: where the indoor unit is, or its installation height.",
    );
  });

  it("of the charge hides the room only where nothing was weighed that the room could be held against", () => {
    const wrong = { "equipment.manual.chargeRate": ozPerFt(-0.2) };
    const weighed = step(changed(wrong), "room-limit");
    expect([weighed.outcome, weighed.problems]).toEqual(["pass", []]);
    const planned = step(changed({ ...wrong, "charge.added": undefined }), "room-limit");
    expect(planned.problems.map(({ path }) => path)).toEqual(["equipment.manual.chargeRate"]);
  });

  it("names the part of the reading where a temperature is beyond the refrigerant", () => {
    const record = changed({ "equipment.refrigerant": "R-744" });
    expect(step(record, "operation").problems[0]?.path).toBe("operation[0]");
  });
});

describe("joints", () => {
  it.each([
    { "runs[0].joints[0].inspected": false },
    { "runs[0].joints[0]": { kind: "brazed", nitrogenFlowed: true, inspected: false } },
    { "runs[0].joints[0]": { kind: "pressed", inspected: false } },
  ])("that were found wrong fail, whatever else is right", (changes) => {
    expect(assessInstallation(changed(changes as Change)).cause).toBe("joints");
  });

  it("of one name are one joint", () => {
    const twice = changed({ "runs[0].joints[1].name": "liquid, indoor" });
    expect(step(twice, "joints").outcome).toBe("inconclusive");
    const counted = step(twice, "joints").checks.find(({ name }) => name === "joint-count");
    expect(counted?.assessment.reasons[0]).toEqual({
      code: "commissioning.joint-recorded-twice",
      values: { joints: [{ verbatim: "liquid, indoor" }] },
    });
    const more = changed({ "runs[0].joints[2]": complete.runs?.[0]?.joints?.[0] });
    expect(step(more, "joints").outcome).toBe("inconclusive");
  });
});

// A line set that is flared throughout has a flare of each line: common practice, no source. 1/4 in: ASTM B280.
describe("flares of one size only", () => {
  const copied = {
    "runs[0].joints[1].tube": "1/4",
    "runs[0].joints[1].torque": ftLb(11.5),
    "runs[0].joints[3].tube": "1/4",
    "runs[0].joints[3].torque": ftLb(11.5),
  };
  const doubts = (changes: Change) =>
    step(changed(changes), "joints").checks.filter(({ name }) => name === "joint-sizes");

  it("leave the joints undecided where a line of another size has none", () => {
    const { outcome, checks } = step(changed(copied), "joints");
    expect(outcome).toBe("inconclusive");
    const last = checks.at(-1);
    expect(last?.path).toBe("runs[0].tubing.vapor.outsideDiameter");
    expect(explain(last?.assessment.reasons[0] as never, english)).toBe(
      "No flare on the vapor line, 0.375 in, is recorded. Sizes recorded, in inches: 1/4. Is an entry copied, or is there an adapter?",
    );
    expect(assessInstallation(changed(copied)).outcome).toBe("inconclusive");
  });

  it.each([
    [
      "the liquid line",
      {
        "runs[0].joints[0].tube": "3/8",
        "runs[0].joints[0].torque": ftLb(28),
        "runs[0].joints[2].tube": "3/8",
        "runs[0].joints[2].torque": ftLb(28),
      },
      1,
    ],
    ["a tube that no flare nut fits", { "runs[0].tubing.vapor.outsideDiameter": inch(0.875) }, 1],
    ["metric tube", { "runs[0].tubing.vapor.outsideDiameter": mm(10) }, 1],
    ["both lines", { ...copied, "runs[0].tubing.liquid.outsideDiameter": mm(8) }, 2],
    ["the same size by its metric name", { "runs[0].tubing.vapor.outsideDiameter": mm(9.52) }, 0],
    ["lines of one size", { ...copied, "runs[0].tubing.vapor.outsideDiameter": inch(0.25) }, 0],
    ["a line of unknown size", { ...copied, "runs[0].tubing.vapor": undefined }, 0],
    ["a brazed joint", { "runs[0].joints[1]": { kind: "brazed", nitrogenFlowed: true } }, 0],
    ["a joint that is still missing", { ...copied, "runs[0].tubing.jointCount": 5 }, 0],
    ["a flare of unknown size", { ...copied, "runs[0].joints[0].tube": undefined }, 0],
    ["no joint at all", { "runs[0].joints": [] }, 0],
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
      "pressureTests[0].readings": zones.map((zone, i) => ({
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
    expect(reasons.map(({ code }) => code)).toEqual([
      "commissioning.test-below-refrigerant",
      "commissioning.test-pressure-reached",
    ]);
    const { pressure, own, refrigerant, temperature } = (reasons[0]?.values ?? {}) as Record<
      string,
      unknown
    >;
    expect({ pressure, refrigerant, temperature }).toEqual({
      pressure: psig(50),
      refrigerant: { verbatim: "R-410A" },
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
    expect(tested(0, [], { "pressureTests[0].readings": at(250) }).outcome).toBe("inconclusive");
    expect(tested(0, [], { "pressureTests[0].readings": at(252) }).outcome).toBe("pass"); // 251.2 psia
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
    expect(
      cautionOf(changed({ [path]: instrument }), "commissioning.instrument-without-error")?.values,
    ).toEqual({
      fields: [`commissioning.field.${path}`],
    });
  });

  it("is none with any limit of error, or where nothing is known of it", () => {
    const ofReading = { accuracy: volt(0), accuracyOfReading: percent(1) };
    const record = changed({ "instruments.voltmeter": ofReading, "instruments.scale": {} });
    expect(cautionOf(record, "commissioning.instrument-without-error")).toBeUndefined();
    expect(cautionOf({ version: 2 }, "commissioning.instrument-without-error")).toBeUndefined();
  });
});

// The vapor of the same flow takes far more room than its liquid: common practice, no source.
describe("the two lines", () => {
  it("that were taken for each other leave the run undecided", () => {
    const { liquid, vapor } = complete.runs?.[0]?.tubing ?? {};
    const record = changed({ "runs[0].tubing.liquid": vapor, "runs[0].tubing.vapor": liquid });
    const { outcome, checks } = step(record, "line-run");
    expect(outcome).toBe("inconclusive");
    expect(
      checks.flatMap(({ assessment }) => assessment.reasons.map(({ code }) => code)),
    ).toContain("commissioning.lines-swapped");
    expect(assessInstallation(record).outcome).toBe("inconclusive");
  });

  it("may have the same size", () => {
    const { vapor } = complete.runs?.[0]?.tubing ?? {};
    const same = { "runs[0].tubing.liquid": vapor, "equipment.outdoorUnit.ports.liquid": "3/8" };
    expect(step(changed(same), "line-run").outcome).toBe("pass");
  });

  it("have the size of their ports, unless there is an adapter", () => {
    const wide = changed({ "runs[0].tubing.vapor.outsideDiameter": inch(0.5) });
    expect(step(wide, "line-run").outcome).toBe("inconclusive");
    expect(
      explain(step(wide, "line-run").checks.at(-1)?.assessment.reasons[0] as never, english),
    ).toBe(
      "The vapor line, 0.5 in, does not match its port, 3/8 in. Is there an adapter, or is the diameter wrong?",
    );
    const adapted = changed({ "runs[0].tubing.jointCount": 6 }, wide);
    expect(step(adapted, "line-run").outcome).toBe("pass");
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
      expect(checks.at(-1)?.assessment.reasons[0]?.code).toBe("line-set.rate-implausible");
    },
  );

  it("is not asked for where nothing is counted by it, nor without a tube", () => {
    const covered = { "equipment.manual.preChargedLength": ft(36) };
    expect(step(rated(0, 0, covered), "charge").outcome).toBe("pass");
    expect(step(rated(1.6, 17.6, { "runs[0].tubing.liquid": undefined }), "charge").outcome).toBe(
      "pass",
    );
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
    expect(codes.includes("commissioning.tolerance-too-wide")).toBe(tolerance > 4.126);
  });
});

describe("a hold without all of its times", () => {
  it("counts from the first time that is stated", () => {
    const record = changed({ "pressureTests[0].readings[0].elapsed": undefined });
    expect(step(record, "pressure-test").outcome).not.toBe("pass");
  });
});

describe("dates", () => {
  it.each([
    [
      "a joint made during the hold",
      "pressure-test",
      { "runs[0].joints[1].at": "2026-05-05T07:00" },
    ],
    [
      "a pressure test during the vacuum",
      "evacuation",
      { "pressureTests[0].at": "2026-05-05T10:50" },
    ],
    ["a unit read before its valves", "operation", { "valves.openedAt": "2026-05-05T15:00" }],
    ["a unit read before its power", "operation", { "power.energizedAt": "2026-05-05T15:00" }],
    ["a charge after the last reading", "operation", { "charge.at": "2026-05-05T15:00" }],
  ] as [string, StepName, Change][])("show %s, which proves nothing", (_, name, changes) => {
    const { outcome, checks } = step(changed(changes), name);
    expect(outcome).toBe("inconclusive");
    expect(checks.at(-1)?.name).toBe("order");
  });

  it("of more than a year between two parts of the work are a caution that names the older", () => {
    const old = changed({ "power.supply.at": "2023-05-05", "runs[0].joints[0].at": "2025-05-03" });
    expect(explain(cautionOf(old, "commissioning.older-than-a-year") as never, english)).toBe(
      "More than a year older than the drain of 2026-05-05: joint and supply. Is it this installation, and is the year right?",
    );
    const { power, ...begun } = old; // also before there is power
    expect(cautionOf(begun, "commissioning.older-than-a-year")?.values.fields).toEqual([
      "commissioning.field.runs.joints",
    ]);
  });

  it("of a year between, or of a later reading, are none", () => {
    expect(
      cautionOf(changed({ "runs[0].tubing.at": "2025-05-06" }), "commissioning.older-than-a-year"),
    ).toBeUndefined();
    const visit = changed({ "operation[0].at": "2029-05-05T14:00" });
    expect(cautionOf(visit, "commissioning.older-than-a-year")).toBeUndefined();
  });

  it("that joints do not have are those of their tubing, or taken to be before the tests", () => {
    const said = (record: InstallationRecord) =>
      assessInstallation(record).assumptions.find(
        ({ code }) => code === "commissioning.joints-undated",
      );
    expect(said(changed({ "runs[0].joints[1].at": undefined }))).toBeUndefined();
    const undated = changed({
      "runs[0].joints[1].at": undefined,
      "runs[0].tubing.at": undefined,
    });
    expect(said(undated)?.values.joints).toEqual([{ verbatim: "vapor, indoor" }]);
    // Of joints that nobody recorded there is nothing to assume: the step says that they are missing.
    const none = { "runs[0].joints": undefined, "runs[0].tubing.at": undefined };
    expect(said(changed(none))).toBeUndefined();
    const { pressureTests: _, evacuations, ...untested } = undated;
    expect(said(untested)).toBeUndefined();
    expect(said({ ...untested, evacuations } as InstallationRecord)).toBeDefined();
  });

  // Two days: common practice, no source. Evacuated at 2026-05-05T11:00.
  describe("of more than two days between evacuation and opening", () => {
    const code = "commissioning.opened-long-after-evacuation";
    const opened = (at: string, more: object = {}) =>
      changed({ "charge.at": at, "valves.openedAt": at, ...more });
    it("are a finding, with the gauge to read again", () => {
      expect(cautionOf(opened("2026-05-07T11:00"), code)).toBeUndefined();
      expect(cautionOf(opened("2026-05-08T11:00"), code)?.values).toEqual({
        opened: { verbatim: "2026-05-08T11:00" },
        evacuated: { verbatim: "2026-05-05T11:00" },
      });
      const { actions } = assessInstallation(opened("2026-05-08T11:00"));
      expect(actions[0]).toMatchObject({
        code: "commissioning.read-vacuum-again",
        step: "evacuation",
      });
      const { actions: none } = assessInstallation(opened("2026-05-07T11:00"));
      expect(none.map((one) => one.code)).not.toContain("commissioning.read-vacuum-again");
    });
    it("end with the charge that broke the vacuum", () => {
      const charged = opened("2026-05-08T11:00", { "charge.at": "2026-05-05T12:00" });
      expect(cautionOf(charged, code)).toBeUndefined();
    });
    it("begin again with the vacuum that was read again", () => {
      const [watch] = complete.evacuations ?? [];
      const again = { ...watch, at: "2026-05-08T09:00" };
      const read = opened("2026-05-08T11:00", { "evacuations[1]": again });
      expect(cautionOf(read, code)).toBeUndefined();
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
      changed({ "charge.added": undefined, evacuations: undefined }),
    );
    expect(holds[1]).toMatchObject({ name: "add-charge", state: "breached" });
    const none = assessInstallation(changed({ "charge.added": oz(0), evacuations: undefined }));
    expect(none.holds[1]?.state).toBe("held");
  });
});

describe("the document", () => {
  it("says who signed before the work was done", () => {
    const early = changed({ "signatures[0].at": "2026-05-05T13:00" });
    expect(cautionOf(early, "commissioning.signed-before-change")?.values.fields).toEqual([
      "commissioning.field.operation",
    ]);
  });

  it.each(["", " ", "\u200b", "."])("is not signed by %j", (name) => {
    expect(
      cautionOf(changed({ "signatures[0].name": name }), "commissioning.not-signed"),
    ).toBeDefined();
  });

  it("says what was overwritten, and not what was filled in", () => {
    const who = {
      by: "N. N.",
      at: "2026-05-05T15:00",
      reason: "misread",
      kind: "correction",
    } as const;
    const failed = changed({
      "runs[0].joints[0].torque": ftLb(5),
      "runs[0].tubing.bends": undefined,
    });
    const filled = amend(failed, { ...who, path: "runs[0].tubing.bends", value: 4 });
    expect(cautionOf(filled, "commissioning.amended")).toBeUndefined();
    const path = "runs[0].joints[0].torque";
    const corrected = amend(filled, { ...who, path, value: ftLb(11.5) });
    expect(assessInstallation(corrected).outcome).toBe("pass");
    expect(explain(cautionOf(corrected, "commissioning.amended") as never, english)).toBe(
      "Changed after it was recorded; the history keeps the earlier values: torque.",
    );
  });

  it("asks for the tests again after a joint was made anew, or may have been", () => {
    const who = { by: "N. N.", at: "2026-05-05T15:00", reason: "tightened" };
    const failed = changed({ "runs[0].joints[0].torque": ftLb(5) });
    for (const kind of ["rework", undefined] as const) {
      const path = "runs[0].joints[0].torque";
      const change = { ...who, path, value: ftLb(11.5), ...(kind && { kind }) };
      const repaired = amend(failed, change);
      expect(step(repaired, "pressure-test").outcome).toBe("inconclusive");
      expect(step(repaired, "evacuation").outcome).toBe("inconclusive");
      expect(assessInstallation(repaired).actions.map(({ code }) => code)).toContain(
        "commissioning.repeat-step",
      );
    }
  });

  // The pressure test of this record ended 2026-05-05 at 08:00 after a night, its evacuation at 11:00 of the same day.
  it("asks for the tests again where work was done anew on their day, at a time that nobody knows", () => {
    const path = "runs[0].joints[0].torque";
    const undated = changed({ "runs[0].joints[0].at": undefined, "runs[0].tubing.at": undefined });
    const anew = (at: string) => {
      const entry = {
        path,
        previous: ftLb(5),
        kind: "rework",
        by: "N. N.",
        at,
        reason: "x",
      } as const;
      const record = { ...undated, history: [entry] };
      const codes = (name: "pressure-test" | "evacuation") =>
        step(record, name).checks.flatMap(({ assessment }) =>
          assessment.reasons.map(({ code }) => code),
        );
      return [codes("pressure-test"), codes("evacuation")].map((said) =>
        said.some((code) => code === "commissioning.rework-not-ordered"),
      );
    };
    expect(anew("2026-05-04")).toEqual([true, false]);
    expect(anew("2026-05-05")).toEqual([false, true]); // surely after the test had begun
    expect(anew("2026-05-01")).toEqual([false, false]);
  });

  it("asks for the times where the test before the work that was done anew has none", () => {
    const path = "runs[0].joints[0].torque";
    const entry = {
      path,
      previous: ftLb(5),
      kind: "rework",
      by: "N. N.",
      at: "2026-05-05",
    } as const;
    const undated = changed({ "pressureTests[0].at": undefined });
    const record = { ...undated, history: [{ ...entry, reason: "x" }] };
    const { outcome, actions } = assessInstallation(record);
    expect(outcome).toBe("inconclusive");
    expect(actions.map(({ code }) => code)).toContain("commissioning.repeat-step");
    const only = assessInstallation(undated);
    expect([only.outcome, only.actions[0]?.code]).toEqual([
      "inconclusive",
      "commissioning.state-times",
    ]);
  });

  it("doubts the date of a change that lies before all work that has one", () => {
    const path = "runs[0].joints[0].torque";
    const undated = changed({ "runs[0].joints[0].at": undefined, "runs[0].tubing.at": undefined });
    const entry = { previous: ftLb(5), kind: "rework", by: "N. N.", reason: "x" } as const;
    const code = "commissioning.amended-before-work";
    const found = (at: string, where = path) =>
      cautionOf({ ...undated, history: [{ ...entry, path: where, at }] } as never, code);
    expect(found("2025-05-04")).toBeDefined();
    expect(found("2026-12-04")).toBeUndefined();
    const plate = { ...entry, previous: "old", path: "equipment.refrigerant", at: "2025-05-04" };
    expect(cautionOf({ ...undated, history: [plate] } as never, code)).toBeUndefined();
  });

  it.each([
    { "equipment.outdoorUnit": undefined },
    { "runs[0].indoorUnits": [] },
    { "runs[0].indoorUnits": [{}] },
    { runs: undefined },
    { "equipment.outdoorUnit": { model: " " } },
  ])("says that a unit is not identified", (changes) => {
    expect(cautionOf(changed(changes), "commissioning.unit-unknown")).toBeDefined();
    expect(cautionOf(complete, "commissioning.unit-unknown")).toBeUndefined();
  });

  it.each([
    { "equipment.construction": "monobloc", "runs[0].indoorUnits": undefined },
    { "runs[0].serves": "branch-box", "runs[0].indoorUnits": undefined },
    { "equipment.outdoorUnit": { serialNumber: "INV-1" } },
  ])("asks for no indoor unit where there is none, and for one of model and number", (changes) => {
    expect(cautionOf(changed(changes), "commissioning.unit-unknown")).toBeUndefined();
  });
});

describe("an amendment", () => {
  it.each([
    ["change.vaule", { vaule: degF(3) }], // would take the field out
    ["change.by", { by: "\u200b" }],
    ["change.reason", { reason: "..." }],
  ])("is refused by %s", (argument, wrong) => {
    const change = {
      path: "runs[0].tubing.bends",
      by: "N. N.",
      at: "2026-05-06",
      reason: "x",
      ...wrong,
    };
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
    const { reasons, deciding } = assessInstallation(
      changed({ "runs[0].joints[0].torque": ftLb(5) }),
    );
    expect(reasons.slice(0, deciding.length)).toEqual(deciding);
    expect(deciding.some((one) => one.step === "joints")).toBe(true);
    expect(deciding.some((one) => one.step === "line-run")).toBe(false);
    expect(assessInstallation(complete).deciding).toEqual([]);
  });
});
