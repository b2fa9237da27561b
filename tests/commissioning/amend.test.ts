import {
  amend,
  checkRecord,
  type InstallationRecord,
  recordRevision,
} from "hvac-install-math/commissioning";
import { degreeAngle, fromJSON, ft, isQuantity, m, psig } from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import { argumentOf } from "../argument-of.ts";
import { complete } from "./complete-record.ts";

const who = { by: "N. N.", at: "2026-05-06", reason: "corrected", kind: "correction" } as const;

describe("an amendment", () => {
  it("keeps what was there, who changed it, when and why", () => {
    const amended = amend(complete, { ...who, path: "runs[0].tubing.length", value: ft(38) });
    expect(amended.runs?.[0]?.tubing?.length?.toString()).toBe("38 ft");
    expect(amended.history).toEqual([{ ...who, path: "runs[0].tubing.length", previous: ft(36) }]);
  });

  it("leaves the given record as it is, also when that is frozen", () => {
    const frozen = checkRecord(complete);
    const text = JSON.stringify(frozen);
    amend(frozen, { ...who, path: "runs[0].joints[1]", value: undefined });
    expect(JSON.stringify(frozen)).toBe(text);
    expect(Object.isFrozen(frozen.runs?.[0]?.tubing)).toBe(true);
  });

  it("gives every earlier revision back", () => {
    const steps = [
      { path: "runs[0].tubing.length", value: ft(38) },
      { path: "runs[0].joints[2]", value: { kind: "brazed", nitrogenFlowed: true } },
      { path: "runs[0].joints[0]", value: undefined },
      { path: "runs[0].joints[0].inspected", value: true },
      { path: "runs[0].drain", value: undefined },
      { path: "pressureTests[0].readings[1].pressure", value: psig(488) },
      { path: "equipment.manual.run.maximumBends", value: 10 },
      { path: "valves.openedAt", value: undefined },
      { path: "photos[0].caption", value: "plate" },
    ];
    const all: InstallationRecord[] = [checkRecord(complete)];
    for (const step of steps)
      all.push(amend(all.at(-1) as InstallationRecord, { ...who, ...step }));
    const last = all.at(-1) as InstallationRecord;
    for (const [i, record] of all.entries()) {
      expect(JSON.stringify(recordRevision(last, i)), `revision ${i}`).toBe(JSON.stringify(record));
    }
  });

  it("makes the parts that are missing on its way, and takes them back", () => {
    const amended = amend(
      { version: 2 },
      { ...who, path: "runs[0].joints[0].name", value: "roof" },
    );
    expect(amended.runs).toEqual([{ joints: [{ name: "roof" }] }]);
    expect(amended.history?.[0]?.path).toBe("runs");
    expect(recordRevision(amended, 0)).toEqual({ version: 2 });
  });

  it("survives storage", () => {
    const amended = amend(complete, { ...who, path: "runs[0].tubing.length", value: ft(38) });
    const stored = JSON.parse(JSON.stringify(amended), (_, value) =>
      typeof value === "object" && value && "unit" in value && "value" in value
        ? fromJSON(value)
        : value,
    );
    const read = checkRecord(stored);
    expect(isQuantity(read.history?.[0]?.previous, "length")).toBe(true);
    expect(JSON.stringify(read)).toBe(JSON.stringify(amended));
  });

  it("is refused where it would lose or fake something", () => {
    const with1 = (change: object) => () =>
      amend(complete, { ...who, path: "runs[0].tubing.length", value: ft(38), ...change } as never);
    expect(argumentOf(with1({ path: "history" }))).toBe("change.path");
    expect(argumentOf(with1({ path: "history[0].by", value: "me" }))).toBe("change.path");
    expect(argumentOf(with1({ path: "version", value: 1 }))).toBe("change.path");
    expect(argumentOf(with1({ path: "runs[0].tubing.lenght" }))).toBe("change.path");
    expect(argumentOf(with1({ path: "__proto__.polluted" }))).toBe("change.path");
    expect(argumentOf(with1({ path: "constructor" }))).toBe("change.path");
    expect(argumentOf(with1({ path: "" }))).toBe("change.path");
    expect(argumentOf(with1({ path: 7 }))).toBe("change.path");
    expect(argumentOf(with1({ path: "runs[0].joints[9]", value: { kind: "flare" } }))).toBe(
      "change.path",
    );
    expect(argumentOf(with1({ value: psig(3) }))).toBe("change.value");
    expect(argumentOf(with1({ value: 38 }))).toBe("change.value");
    expect(argumentOf(with1({ path: "runs[0].tubing.jointCount", value: Number.NaN }))).toBe(
      "change.value",
    );
    expect(argumentOf(with1({ path: "runs[0].room.floorArea", value: undefined }))).toBe(
      "change.value",
    );
    expect(argumentOf(with1({ by: " " }))).toBe("change.by");
    expect(argumentOf(with1({ reason: undefined }))).toBe("change.reason");
    expect(argumentOf(with1({ at: "today" }))).toBe("change.at");
    expect(argumentOf(() => amend(complete, null as never))).toBe("change");
    const amended = amend(complete, { ...who, path: "runs[0].tubing.length", value: ft(38) });
    const earlier = { ...who, at: "2026-05-05", path: "runs[0].tubing.length", value: ft(39) };
    expect(argumentOf(() => amend(amended, earlier))).toBe("change.at");
    expect(argumentOf(() => recordRevision(amended, 2))).toBe("revision");
    expect(argumentOf(() => recordRevision(amended, 0.5))).toBe("revision");
  });

  it("is refused before what it changes was done, by amend and on reading", () => {
    const laid = {
      version: 2,
      runs: [{ tubing: { at: "2026-04-28", bends: 2 }, joints: [{ turn: degreeAngle(60) }] }],
    } as const;
    const early = { by: "N. N.", at: "2026-04-27", reason: "read again" };
    const paths = ["runs[0].tubing.bends", "runs[0].joints[0].turn"];
    for (const path of paths) {
      const value = path.endsWith("bends") ? 3 : degreeAngle(70);
      const late = amend(laid, { ...early, at: "2026-04-29", path, value });
      const [entry] = late.history ?? [];
      const forged = { ...late, history: [{ ...entry, at: early.at }] } as InstallationRecord;
      expect(argumentOf(() => amend(laid, { ...early, path, value }))).toBe("change.at");
      expect(argumentOf(() => checkRecord(forged))).toBe("history[0].at");
      // Where the date itself was amended, it says nothing of what came before.
      const dated = { ...early, path: "runs[0].tubing.at", previous: "2026-04-20" };
      const part = { ...early, path: "runs[0].tubing", previous: { at: "2026-04-20" } };
      for (const one of [dated, part]) {
        const history = [...(forged.history ?? []), one];
        expect(() => checkRecord({ ...forged, history })).not.toThrow();
      }
    }
  });

  it("replaces a quantity by fields and back", () => {
    const path = "equipment.manual.chargeRate";
    const amended = amend(complete, { ...who, path: `${path}.per`, value: m(1) });
    expect(recordRevision(amended, 0)).toEqual(checkRecord(complete));
  });
});

describe("a history from outside", () => {
  // As the documentation of checkRecord says.
  it.each([
    ["runs.length", (n: number) => ({ version: 2, runs: Array(n).fill({}) })],
    [
      "power.circuits.length",
      (n: number) => ({ version: 2, power: { circuits: Array(n).fill({}) } }),
    ],
  ])("stands in a record of 200 entries at most: %s", (argument, record) => {
    expect(argumentOf(() => checkRecord(record(200)))).toBe("nothing was thrown");
    expect(argumentOf(() => checkRecord(record(201)))).toBe(argument);
  });
  it("is checked with its earlier values", () => {
    const entry = { ...who, path: "runs[0].tubing.length", previous: 36 };
    expect(argumentOf(() => checkRecord({ version: 2, history: [entry] }))).toBe(
      "history[0].previous",
    );
    for (const path of ["version", "history[0].by"]) {
      expect(argumentOf(() => checkRecord({ version: 2, history: [{ ...who, path }] }))).toBe(
        "history[0].path",
      );
    }
    const bends = { ...who, path: "runs[0].tubing.bends" };
    const of = (...history: object[]) =>
      argumentOf(() => checkRecord({ version: 2, history: [bends, ...history] }));
    expect(of({ ...bends, at: "2026-05-07" })).toBe("nothing was thrown");
    expect(of({ ...bends, by: "." })).toBe("history[1].by");
    expect(of({ ...bends, reason: " " })).toBe("history[1].reason");
    expect(of({ ...bends, at: "2026-05-05" })).toBe("history[1].at");
    const nowhere = { ...who, path: "nowhere" };
    expect(argumentOf(() => checkRecord({ version: 2, history: [nowhere] }))).toBe(
      "history[0].path",
    );
  });
});
