// Waivers: the word of a person that a step does not apply, for one of the reasons that fit; and what falls away by itself.
import { explain } from "hvac-install-math/assessment";
import {
  amend,
  checkRecord,
  type InstallationRecord,
  type StepName,
  type Waiver,
} from "hvac-install-math/commissioning";
import { english } from "hvac-install-math/language/en";
import {
  ampere,
  degF,
  deltaF,
  ft,
  isInvalidInputError,
  m2,
  m3,
  mm,
} from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import { assessInstallation } from "./assess.ts";
import { type Change, changed } from "./changed.ts";
import { complete } from "./complete-record.ts";

const word = { by: "N. N.", at: "2026-05-04" } as const;
const reasons = {
  "line-run": "factory-line-set",
  joints: "existing-lines",
  "room-limit": "no-enclosed-room",
  drain: "heats-only",
} as const;
const waiverOf = (step: keyof typeof reasons): Waiver => ({ ...word, step, reason: reasons[step] });
const withWord = (record: InstallationRecord, ...waivers: Waiver[]) => ({ ...record, waivers });
/** The complete record of a unit that never cools and has no drain. */
const heatingOnly = changed({
  "equipment.duty": "heating",
  "runs[0].drain": undefined,
  "operation[0].mode": undefined,
});
const step = (record: InstallationRecord, name: StepName) =>
  assessInstallation(record).steps.find((one) => one.name === name);
/** Where the record speaks against a waiver. */
const against = (found: ReturnType<typeof step>) =>
  found?.checks.filter(({ name }) => name === "waiver").map(({ path }) => path);

describe("a step that is waived", () => {
  const record = withWord(changed({ "runs[0].joints": undefined }), waiverOf("joints"));
  const result = assessInstallation(record);
  const joints = result.steps.find(({ name }) => name === "joints");

  it("has a state of its own, proves nothing and lacks nothing", () => {
    expect(joints).toMatchObject({
      state: "not-applicable",
      checks: [],
      problems: [],
      missing: [],
    });
    expect(joints?.outcome).not.toBe("pass");
    expect(joints?.waiver).toEqual(waiverOf("joints"));
    expect(result.missing).toEqual([]);
  });

  it("lets the whole pass, and stands first among the reasons and the assumptions", () => {
    expect(result.outcome).toBe("pass");
    expect(explain(result.reasons[0] as never, english)).toBe(
      "Not checked: waived by N. N., 2026-05-04: existing lines, not opened.",
    );
    expect(result.reasons[0]?.step).toBe("joints");
    expect(result.assumptions[0]).toEqual(result.reasons[0]);
  });

  it("blocks no later step, and hides no failure of another one", () => {
    expect(result.steps.flatMap(({ blockedBy }) => blockedBy)).toEqual([]);
    const steep = assessInstallation(changed({ "runs[0].tubing.lift": ft(35.9) }, record));
    expect([steep.outcome, steep.cause]).toEqual(["fail", "line-run"]);
  });

  it("without the waiver leaves the same record open", () => {
    const { waivers: _, ...silent } = record;
    expect(assessInstallation(silent).outcome).toBe("inconclusive");
  });

  it("does not make an otherwise empty record pass", () => {
    const all = (["line-run", "joints", "drain"] as const).map(waiverOf);
    const { outcome, holds } = assessInstallation({ version: 2, waivers: all });
    expect(outcome).toBe("inconclusive");
    expect(holds.map(({ state }) => state)).toEqual(["held", "held", "held"]);
  });
});

describe("the reason of a waiver", () => {
  it.each([
    ["none", undefined],
    ["one of another step", "factory-line-set"],
  ] as const)("is one that fits the step: %s does not", (_, reason) => {
    const { reason: __, ...rest } = waiverOf("drain");
    const found = step(withWord(heatingOnly, { ...rest, ...(reason && { reason }) }), "drain");
    expect(found?.state).toBe("partial");
    expect(against(found)).toContain("waivers[0].reason");
  });

  it("is never read from the note, which is kept", () => {
    const { reason: _, ...rest } = waiverOf("drain");
    const found = step(withWord(heatingOnly, { ...rest, note: "the unit never cools" }), "drain");
    expect(found?.state).not.toBe("not-applicable");
  });

  // A heat pump makes water whenever it cools, in whatever season it is installed: common practice, no source.
  it.each(["both", "cooling", undefined] as const)(
    "for a drain asks for a unit that never cools: not %s",
    (duty) => {
      const record = changed({ "equipment.duty": duty ?? "heating" }, heatingOnly);
      const unknown = duty ? record : changed({ "equipment.duty": undefined }, record);
      const found = step(withWord(unknown, waiverOf("drain")), "drain");
      expect(found?.outcome).toBe("inconclusive");
      expect(against(found)).toContain("equipment.duty");
    },
  );

  it("holds for a drain of a unit that only heats", () => {
    expect(step(withWord(heatingOnly, waiverOf("drain")), "drain")?.state).toBe("not-applicable");
  });

  it("holds for a run of fixed length", () => {
    const gone = {
      "runs[0].tubing.lift": undefined,
      "runs[0].tubing.outdoorUnit": undefined,
      "runs[0].tubing.bends": undefined,
      "equipment.manual.run": undefined,
    };
    const fixed = withWord(changed(gone), waiverOf("line-run"));
    expect(assessInstallation(fixed).outcome).toBe("pass");
  });

  it.each(["", " ", "\u200b", "."])("is none by %j", (by) => {
    const found = step(withWord(heatingOnly, { ...waiverOf("drain"), by }), "drain");
    expect(against(found)).toEqual(["waivers[0].by"]);
  });

  it("is given once", () => {
    const twice = withWord(heatingOnly, waiverOf("drain"), { ...waiverOf("drain"), by: "M. M." });
    expect(against(step(twice, "drain"))).toEqual(["waivers[1]"]);
  });
});

describe("the room limit", () => {
  const outdoors = withWord(changed({ "runs[0].room": undefined }), waiverOf("room-limit"));

  it("can be waived with a refrigerant of class A1, which releases its holds and warns of suffocation", () => {
    const { outcome, holds, cautions } = assessInstallation(outdoors); // R-410A: A1
    expect(outcome).toBe("pass");
    expect(holds.map(({ state }) => state)).toEqual(["released", "released", "released"]);
    expect(explain(holds[0]?.reason as never, english)).toMatch(/not checked: room limit\.$/);
    expect(cautions.some(({ code }) => code === "commissioning.heed-refrigerant")).toBe(true);
  });

  it.each([
    ["R-32", "A2L"],
    ["R-454B", "A2L"],
    ["R-290", "A3"],
    ["R-600a", "A3"],
  ])("cannot with %s, which is %s", (refrigerant) => {
    const record = changed(
      {
        "equipment.refrigerant": refrigerant,
        valves: undefined,
        operation: undefined,
        charge: undefined,
      },
      outdoors,
    );
    const found = step(record, "room-limit");
    expect(found?.state).toBe("partial");
    expect(found?.outcome).not.toBe("pass");
    expect(found?.missing).toContain("runs[0].room.floorArea");
    expect(against(found)).toContain("waivers[0].step");
    const { holds } = assessInstallation(record);
    expect(holds[0]).toMatchObject({ state: "held", waitsFor: ["room-limit"] });
    expect(holds[1]).toMatchObject({ state: "held", waitsFor: ["room-limit"] });
  });

  it.each([undefined, "R-999"])("cannot with a refrigerant that is not known (%s)", (name) => {
    const found = step(changed({ "equipment.refrigerant": name }, outdoors), "room-limit");
    expect(found?.state).not.toBe("not-applicable");
    expect(found?.outcome).toBe("inconclusive");
  });

  it("of a flammable refrigerant is judged by the room that was recorded", () => {
    const record = withWord(
      changed({ "equipment.refrigerant": "R-32", "runs[0].room.floorArea": m2(30) }),
      waiverOf("room-limit"),
    );
    expect(step(record, "room-limit")?.outcome).not.toBe("pass");
  });
});

describe("a waiver that the record contradicts", () => {
  it.each([
    ["drain", "runs[0].drain.slope", {}],
    ["drain", "operation[0].mode", { "runs[0].drain": undefined }],
    ["joints", "runs[0].joints[0]", {}],
    [
      "joints",
      "runs[0].tubing.jointCount",
      { "runs[0].joints": undefined, "runs[0].tubing.jointCount": 6 },
    ],
    ["line-run", "runs[0].tubing.lift", {}],
    ["line-run", "runs[0].tubing.outdoorUnit", {}],
    ["line-run", "runs[0].tubing.bends", { "runs[0].tubing.bends": 4 }],
    ["line-run", "equipment.manual.run", { "runs[0].tubing.lift": undefined }],
    ["room-limit", "runs[0].room.volume", {}],
  ] as [keyof typeof reasons, string, Change][])(
    "of %s names %s, and is no pass",
    (name, path, changes) => {
      const record = withWord(changed(changes), waiverOf(name));
      const found = step(record, name);
      expect(found?.state).toBe("partial");
      expect(found?.waiver).toBeUndefined();
      expect(against(found)).toContain(path);
      const { outcome, reasons: said } = assessInstallation(record);
      expect(outcome).toBe("inconclusive");
      expect(said.some(({ part }) => part === path)).toBe(true);
    },
  );

  it("does not hide that what was recorded fails", () => {
    const uphill = withWord(changed({ "runs[0].drain.slope.gap": mm(-6) }), waiverOf("drain"));
    const { outcome, cause } = assessInstallation(uphill);
    expect([outcome, cause]).toEqual(["fail", "drain"]);
    const small = withWord(changed({ "runs[0].room.volume": m3(1.5) }), waiverOf("room-limit"));
    expect(assessInstallation(small).cause).toBe("room-limit");
  });
});

describe("what guards life, the unit or the proof", () => {
  const argumentOf = (run: () => unknown) => {
    try {
      run();
    } catch (error) {
      if (isInvalidInputError(error)) return `${error.argument}: ${error.allowed}`;
      throw error;
    }
    return "nothing";
  };

  it.each(["pressure-test", "evacuation", "charge", "valves", "circuit", "supply", "operation"])(
    "%s has no word in the format with which to waive it",
    (name) => {
      const record = withWord(complete, { ...waiverOf("drain"), step: name as never });
      expect(argumentOf(() => assessInstallation(record))).toBe(
        "waivers[0].step: line-run, joints, room-limit, drain",
      );
    },
  );

  it("does not compile either", () => {
    // @ts-expect-error: the pressure test cannot be waived
    const away: Waiver = { ...word, step: "pressure-test" };
    expect(argumentOf(() => checkRecord({ version: 2, waivers: [away] }))).toMatch(
      /^waivers\[0\]\.step/,
    );
  });

  it("needs a step, a name and a time", () => {
    for (const field of ["step", "by", "at"] as const) {
      const { [field]: _, ...rest } = waiverOf("drain");
      expect(argumentOf(() => checkRecord({ version: 2, waivers: [rest] }))).toMatch(
        new RegExp(`^waivers\\[0\\]\\.${field}: `),
      );
    }
  });
});

it("a waiver can be added, and taken back, by an amendment that keeps both", () => {
  const who = { by: "N. N.", at: "2026-05-06" };
  const first = checkRecord(heatingOnly);
  const value = waiverOf("drain");
  const waived = amend(first, { ...who, path: "waivers[0]", value, reason: "no cooling" });
  expect(step(waived, "drain")?.state).toBe("not-applicable");
  expect(waived.history?.[0]?.path).toBe("waivers");
  const back = amend(waived, { ...who, path: "waivers[0]", reason: "it cools after all" });
  expect(step(back, "drain")?.state).toBe("missing");
  expect(back.history?.[1]?.previous).toEqual([value]);
});

describe("a refrigerant circuit that is not opened on site", () => {
  const air = {
    instruments: {
      ...complete.instruments,
      airThermometer: {
        accuracy: deltaF(1),
        calibratedOn: "2026-01-10",
        calibrationDue: "2027-01-10",
      },
      clampMeter: {
        accuracy: ampere(0.2),
        calibratedOn: "2026-01-10",
        calibrationDue: "2027-01-10",
      },
    },
    operation: [
      {
        mode: "cooling" as const,
        indoorTemperature: degF(76),
        outdoorTemperature: degF(90),
        airSide: { supplyAir: degF(56), current: ampere(8.2), fullSpeed: true },
        at: "2026-05-05T14:00",
      },
    ],
  };
  const { pressureTests: _, evacuations: __, charge: ___, ...rest } = complete;
  const [run] = complete.runs ?? [];
  const couplings = (["indoor", "outdoor"] as const).flatMap((end) =>
    (["liquid", "vapor"] as const).map((line) => ({
      line,
      end,
      kind: "coupling" as const,
      inspected: true,
      at: "2026-05-04",
    })),
  );
  const quick: InstallationRecord = {
    ...rest,
    ...air,
    equipment: { ...complete.equipment, construction: "quick-connect" },
    runs: [{ ...run, joints: couplings }],
    charge: undefined,
  } as never;
  const { charge: ____, ...quickConnect } = quick;

  it("has no test, no evacuation and no charge, and says why; its couplings are looked at", () => {
    const result = assessInstallation(quickConnect as InstallationRecord);
    const away = result.steps.filter(({ state }) => state === "not-applicable");
    expect(away.map(({ name }) => name)).toEqual(["pressure-test", "evacuation", "charge"]);
    expect(explain(away[0]?.fallsAway as never, english)).toBe(
      "Not needed: pre-charged lines with couplings.",
    );
    expect(result.reasons.filter(({ step: own }) => own === undefined)).toEqual([]);
    const said = result.reasons.filter(({ code }) => code === "commissioning.falls-away");
    expect(said.map(({ step: own }) => own)).toEqual(["pressure-test", "evacuation", "charge"]);
    expect(result.outcome).toBe("pass");
    expect(result.cautions.length).toBeLessThan(60);
  });

  it("fails by a coupling that leaks, and stays open where one was not looked at", () => {
    const leaks = couplings.map((one, i) => (i ? one : { ...one, inspected: false }));
    const record = { ...quickConnect, runs: [{ ...run, joints: leaks }] } as InstallationRecord;
    expect(assessInstallation(record).cause).toBe("joints");
    const open = { ...quickConnect, runs: [{ ...run, joints: couplings.slice(1) }] };
    expect(assessInstallation(open as InstallationRecord).outcome).toBe("inconclusive");
  });

  it("is none where a nitrogen test is recorded all the same", () => {
    const record = { ...quickConnect, pressureTests: complete.pressureTests } as InstallationRecord;
    const { reasons: said, outcome } = assessInstallation(record);
    expect(outcome).toBe("inconclusive");
    expect(said.map(({ code }) => code)).toContain("commissioning.construction-contradicted");
  });

  it("asks a monobloc for circuit, supply, drain and operation alone", () => {
    const { runs: _runs, valves: _valves, ...sealed } = quickConnect as InstallationRecord;
    const monobloc: InstallationRecord = {
      ...sealed,
      equipment: { ...complete.equipment, construction: "monobloc" },
      runs: [{ drain: run?.drain ?? {} }],
    };
    const result = assessInstallation(monobloc);
    const asked = result.steps.filter(({ state }) => state !== "not-applicable");
    expect(asked.map(({ name }) => name)).toEqual(["circuit", "supply", "drain", "operation"]);
    expect(result.outcome).toBe("pass");
    // It has no service valves to open.
    const opened = { ...monobloc, valves: { openedAt: "2026-05-05T12:00" } };
    expect(against(step(opened, "valves"))).toEqual(["valves.openedAt"]);
    expect(assessInstallation(opened).outcome).toBe("inconclusive");
  });

  it("says of no split system without a room that it stands outdoors", () => {
    const split = assessInstallation(changed({ "runs[0].room": undefined }));
    expect(split.assumptions.map(({ code }) => code)).not.toContain(
      "commissioning.stands-outdoors",
    );
  });

  it("holds a monobloc to any room that is recorded, and says where none is", () => {
    const { valves: _, ...sealed } = quickConnect;
    const monobloc = (...rooms: readonly object[]) =>
      assessInstallation({
        ...sealed,
        equipment: { ...complete.equipment, construction: "monobloc" },
        runs: rooms.map((own, i) => ({ name: `${i}`, ...own })),
      } as unknown as InstallationRecord);
    const found = (...rooms: readonly object[]) => {
      const { steps, assumptions } = monobloc(...rooms);
      const state = steps.find(({ name }) => name === "room-limit")?.state;
      return [state, assumptions.some(({ code }) => code === "commissioning.stands-outdoors")];
    };
    const room = { room: { volume: m3(60) } };
    expect(found({}, {})).toEqual(["not-applicable", true]);
    expect(found(room)).toEqual(["done", false]);
    expect(found({}, room)).toEqual(["done", false]);
  });

  it.each([
    [{ "operation[0].airSide.supplyAir": degF(96) }, "inconclusive"], // the other way: swapped
    [{ "operation[0].airSide.supplyAir": degF(70) }, "inconclusive"], // 6 °F: below the usual 14 °F
    [
      { "operation[0].airSide.supplyAir": degF(70), "operation[0].airSide.least": deltaF(16) },
      "fail",
    ],
    [{ "operation[0].airSide.current": ampere(14) }, "fail"], // above the 12.4 A of the plate
    [{ "operation[0].airSide.current": ampere(3) }, "pass"], // part load: a finding
    [{ "operation[0].airSide.current": ampere(0.82) }, "inconclusive"], // a slip of ten
    [{ "operation[0].airSide.fullSpeed": false }, "inconclusive"],
    [{ "operation[0].airSide.current": undefined }, "inconclusive"],
    [{ "instruments.airThermometer": undefined }, "inconclusive"],
  ] as [Change, string][])("is judged by air and current: %j is %s", (changes, outcome) => {
    const record = changed(changes, quickConnect as InstallationRecord);
    expect(step(record, "operation")?.outcome).toBe(outcome);
  });
});
