import { explain } from "hvac-install-math/assessment";
import {
  amend,
  assessInstallation,
  checkRecord,
  type InstallationRecord,
  type NotApplicable,
  recordRevision,
  recordShape,
  type StepName,
} from "hvac-install-math/commissioning";
import { ft, isInvalidInputError, m2, m3, mm } from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import { changed } from "./changed.ts";
import { complete } from "./complete-record.ts";

const word = { by: "N. N.", at: "2026-05-04", reason: "heats only" } as const;
const noDrain: NotApplicable = { ...word, step: "drain" };
/** The complete record of a unit that has no drain, and says so. */
const heatingOnly = changed({ drain: undefined, "operation[0].mode": undefined });
const withWord = (record: InstallationRecord, ...given: NotApplicable[]) => ({
  ...record,
  notApplicable: given,
});
const step = (record: InstallationRecord, name: StepName) =>
  assessInstallation(record).steps.find((one) => one.name === name);

describe("a step that is declared not applicable", () => {
  // Quick couplings: no joint was made. Everything else is there and passes.
  const couplings: NotApplicable = { ...word, step: "joints", reason: "quick couplings only" };
  const record = withWord(changed({ joints: undefined, "tubing.jointCount": 0 }), couplings);
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
    expect(joints?.declaration).toEqual(couplings);
    expect(result.missing).toEqual([]);
  });

  it("lets the whole pass, and stands first among the reasons and the assumptions", () => {
    expect(result.outcome).toBe("pass");
    expect(explain(result.reasons[0] as never)).toBe(
      'joints: not applicable and not checked, declared by N. N. (2026-05-04): "quick couplings only".',
    );
    expect(explain(result.assumptions[0] as never)).toBe(
      "That joints does not apply is the word of N. N. (2026-05-04); nothing of it was checked.",
    );
  });

  it("blocks no later step", () => {
    expect(result.steps.flatMap(({ blockedBy }) => blockedBy)).toEqual([]);
  });

  it("without the declaration leaves the same record open", () => {
    const { notApplicable: _, ...silent } = record;
    expect(assessInstallation(silent).outcome).toBe("inconclusive");
  });

  it("hides no failure of another step", () => {
    const { outcome, cause } = assessInstallation(changed({ "tubing.lift": ft(36) }, record));
    expect([outcome, cause]).toEqual(["fail", "line-run"]);
  });

  it("does not make an otherwise empty record pass", () => {
    const all = (["line-run", "joints", "drain"] as const).map((name) => ({ ...word, step: name }));
    const { outcome, holds } = assessInstallation({ version: 1, notApplicable: all });
    expect(outcome).toBe("inconclusive");
    expect(holds.map(({ state }) => state)).toEqual(["held", "held", "held"]);
  });

  it("can be a drain that a heating unit does not have", () => {
    expect(step(withWord(heatingOnly, noDrain), "drain")?.state).toBe("not-applicable");
    expect(step(heatingOnly, "drain")?.state).toBe("missing");
  });

  it("can be a run of fixed length", () => {
    const gone = {
      "tubing.lift": undefined,
      "tubing.outdoorUnit": undefined,
      "tubing.bends": undefined,
      "equipment.manual.run": undefined,
    };
    const fixed = withWord(changed(gone), { ...word, step: "line-run" });
    expect(assessInstallation(fixed).outcome).toBe("pass");
  });
});

describe("the room limit", () => {
  const noRoom: NotApplicable = { ...word, step: "room-limit", reason: "all of it in the open" };
  const outdoors = withWord(changed({ room: undefined }), noRoom);

  it("can be declared away with a refrigerant of class A1, which releases its holds and warns of suffocation", () => {
    const { outcome, holds, cautions } = assessInstallation(outdoors); // R-410A: A1
    expect(outcome).toBe("pass");
    expect(holds.map(({ state }) => state)).toEqual(["released", "released", "released"]);
    expect(explain(holds[0]?.reason as never)).toMatch(/declared not applicable: room-limit\.$/);
    expect(cautions.some(({ code }) => code === "room-limit-not-checked")).toBe(true);
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
    expect(found?.missing).toContain("room.floorArea");
    expect(found?.problems.some(({ path }) => path === "notApplicable[0].step")).toBe(true);
    const { holds } = assessInstallation(record);
    expect(holds[0]).toMatchObject({ state: "held", waitsFor: ["room-limit"] });
    expect(holds[1]).toMatchObject({ state: "held", waitsFor: ["room-limit"] });
  });

  it.each([undefined, "R-999"])("cannot with a refrigerant that is not known (%s)", (name) => {
    const found = step(changed({ "equipment.refrigerant": name }, outdoors), "room-limit");
    expect(found?.state).not.toBe("not-applicable");
    expect(found?.outcome).toBe("inconclusive");
  });
});

describe("a declaration that the record contradicts", () => {
  it.each([
    ["drain", "drain.slope", {}],
    ["drain", "operation[0].mode", { drain: undefined }],
    ["joints", "joints[0]", {}],
    ["joints", "tubing.jointCount", { joints: undefined }],
    ["line-run", "tubing.lift", {}],
    ["line-run", "equipment.manual.run", { "tubing.lift": undefined }],
    ["room-limit", "room.volume", {}],
  ] as const)("of %s is a problem that names %s, and is no pass", (name, path, changes) => {
    const record = withWord(changed(changes), { ...word, step: name });
    const found = step(record, name);
    expect(found?.state).toBe("partial");
    expect(found?.declaration).toBeUndefined();
    expect(found?.problems.map((one) => one.path)).toContain(path);
    const { outcome, reasons } = assessInstallation(record);
    expect(outcome).toBe("inconclusive");
    expect(reasons.some(({ values }) => values.path === path)).toBe(true);
  });

  it("does not hide that what was recorded fails", () => {
    const uphill = withWord(changed({ "drain.slope.gap": mm(-6) }), noDrain);
    const { outcome, cause } = assessInstallation(uphill);
    expect([outcome, cause]).toEqual(["fail", "drain"]);
    const small = withWord(changed({ "room.volume": m3(1.5) }), { ...word, step: "room-limit" });
    expect(assessInstallation(small).cause).toBe("room-limit");
  });

  it("is also one that was made twice, or by nobody, or for no reason", () => {
    const twice = step(withWord(heatingOnly, noDrain, { ...noDrain, by: "M. M." }), "drain");
    expect(twice?.problems[0]?.path).toBe("notApplicable[1]");
    for (const field of ["by", "reason"] as const) {
      const found = step(withWord(heatingOnly, { ...noDrain, [field]: " " }), "drain");
      expect(found?.problems[0]?.path).toBe(`notApplicable[0].${field}`);
      expect(found?.state).toBe("partial");
    }
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
    "%s has no word in the format with which to declare it away",
    (name) => {
      const record = withWord(complete, { ...word, step: name as never });
      expect(argumentOf(() => assessInstallation(record))).toBe(
        "notApplicable[0].step: line-run, joints, room-limit, drain",
      );
    },
  );

  it("does not compile either", () => {
    // @ts-expect-error: the pressure test cannot be declared away
    const away: NotApplicable = { ...word, step: "pressure-test" };
    expect(argumentOf(() => checkRecord({ version: 1, notApplicable: [away] }))).toMatch(
      /^notApplicable\[0\]\.step/,
    );
  });

  it("needs all four fields of a declaration", () => {
    for (const field of ["step", "reason", "by", "at"] as const) {
      const { [field]: _, ...rest } = noDrain;
      expect(argumentOf(() => checkRecord({ version: 1, notApplicable: [rest] }))).toMatch(
        new RegExp(`^notApplicable\\[0\\]\\.${field}: `),
      );
    }
    const late = { ...noDrain, at: "today" };
    expect(argumentOf(() => checkRecord({ version: 1, notApplicable: [late] }))).toMatch(
      /^notApplicable\[0\]\.at: /,
    );
  });
});

describe("a declaration in the record", () => {
  it("stands in the shape after the operation", () => {
    const fields = Object.keys(recordShape.fields);
    expect(fields[fields.indexOf("operation?") + 1]).toBe("notApplicable?");
  });

  it("can be added, and taken back, by an amendment that keeps both", () => {
    const who = { by: "N. N.", at: "2026-05-06" };
    const first = checkRecord(heatingOnly);
    const declared = amend(first, {
      ...who,
      path: "notApplicable[0]",
      value: noDrain,
      reason: "no cooling in this unit",
    });
    expect(step(declared, "drain")?.state).toBe("not-applicable");
    expect(declared.history?.[0]?.path).toBe("notApplicable");
    const back = amend(declared, {
      ...who,
      path: "notApplicable[0]",
      reason: "it cools after all",
    });
    expect(step(back, "drain")?.state).toBe("missing");
    expect(back.history?.[1]?.previous).toEqual([noDrain]);
    expect(recordRevision(back, 1)).toEqual(declared);
    expect(recordRevision(back, 0)).toEqual(first);
  });

  it("is named where it is younger than a signature", () => {
    const late = withWord(heatingOnly, { ...noDrain, at: "2026-05-09" });
    const found = assessInstallation(late).cautions.find(
      ({ code }) => code === "signed-before-change",
    );
    expect(found?.values.paths).toBe("notApplicable[0]");
  });

  it("of a flammable refrigerant does not replace the room that was recorded", () => {
    const record = changed({
      "equipment.refrigerant": "R-32",
      "room.floorArea": m2(30),
      notApplicable: [{ ...word, step: "room-limit" }],
    });
    expect(step(record, "room-limit")?.outcome).not.toBe("pass");
  });
});
