// A waiver of one run: the others are judged all the same.
import type { InstallationRecord, Waiver } from "hvac-install-math/commissioning";
import { ft, newtonMeter } from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import { assessInstallation } from "./assess.ts";
import { type Change, changed } from "./changed.ts";
import { threeHeads } from "./three-heads.ts";

const word = { by: "N. N.", at: "2026-05-04" } as const;
const existing: Waiver = { ...word, step: "joints", reason: "existing-lines", run: "B" };
const withWaivers = (changes: Change, ...waivers: Waiver[]): InstallationRecord => ({
  ...changed(changes, threeHeads),
  waivers,
});
const withoutB = { "runs[1].joints": undefined };
const judged = (record: InstallationRecord, name = "joints") => {
  const result = assessInstallation(record);
  return { result, step: result.steps.find((one) => one.name === name) };
};

describe("a waiver of one run", () => {
  it("leaves the others to be judged, and is the first of what a pass has to say", () => {
    expect(judged(withWaivers(withoutB)).result.outcome).toBe("inconclusive");
    const { result, step } = judged(withWaivers(withoutB, existing));
    expect(step).toMatchObject({ state: "done", outcome: "pass", runWaivers: [existing] });
    expect(step?.waiver).toBeUndefined();
    expect(result.outcome).toBe("pass");
    expect(result.deciding.map(({ code }) => code)).toContain("commissioning.waived-for-run");
    expect(result.assumptions.map(({ code }) => code)).toContain("commissioning.waived-for-run");
  });

  it("hides nothing of another run", () => {
    const loose = { ...withoutB, "runs[2].joints[0].torque": newtonMeter(5) };
    expect(judged(withWaivers(loose, existing)).step?.outcome).toBe("fail");
    const blank = { ...withoutB, "runs[0].joints": undefined, "runs[2].joints": undefined };
    const { step } = judged(withWaivers(blank, existing));
    expect(step).toMatchObject({ state: "missing", runWaivers: [existing] });
    expect(step?.missing).toContain("runs[2].joints[0]");
  });

  it("does not stand against what is recorded of its own run, and stands beside that of others", () => {
    expect(judged(withWaivers({}, existing)).step?.outcome).toBe("inconclusive");
  });

  it("does not stand for a run that nobody has, or twice", () => {
    const unknown = judged(withWaivers(withoutB, { ...existing, run: "D" })).step;
    expect(unknown?.checks.flatMap(({ assessment }) => assessment.reasons)).toContainEqual(
      expect.objectContaining({ code: "commissioning.unknown-run" }),
    );
    const twice = judged(withWaivers(withoutB, existing, existing)).step;
    expect(twice?.outcome).toBe("inconclusive");
  });

  it("is told from an earlier one that holds for the same run", () => {
    const { run: _, ...ofAll } = existing;
    const other = { ...existing, run: "A" };
    const twice = (...waivers: Waiver[]) =>
      judged(withWaivers(withoutB, ...waivers)).step?.checks.flatMap(({ path, assessment }) =>
        assessment.reasons.some(({ code }) => code === "commissioning.waived-twice") ? [path] : [],
      );
    expect(twice(existing, existing)).toEqual(["waivers[1]"]);
    expect(twice(ofAll, existing)).toEqual(["waivers[1]"]);
    expect(twice(existing, ofAll)).toEqual(["waivers[1]"]);
    expect(twice(other, existing, other)).toEqual(["waivers[2]"]);
    expect(twice(other, existing)).toEqual([]);
  });

  it("takes the whole step where all runs are waived one by one", () => {
    const none = { "runs[0].joints": undefined, ...withoutB, "runs[2].joints": undefined };
    const all = ["A", "B", "C"].map((run) => ({ ...existing, run }));
    const { result, step } = judged(withWaivers(none, ...all));
    expect(step).toMatchObject({
      state: "not-applicable",
      waiver: all[0],
      runWaivers: all.slice(1),
    });
    for (const said of [result.deciding, result.assumptions]) {
      const runs = said.flatMap(({ code, values }) =>
        code === "commissioning.waived-for-run" ? [(values as { run: unknown }).run] : [],
      );
      expect(runs).toEqual([{ verbatim: "A" }, { verbatim: "B" }, { verbatim: "C" }]);
    }
  });

  it("takes the whole step with one word for all runs, whatever the manual says of their total", () => {
    const fields = ["lift", "outdoorUnit", "bends"];
    const none = Object.fromEntries(
      [0, 1, 2].flatMap((i) => fields.map((name) => [`runs[${i}].tubing.${name}`, undefined])),
    );
    const all: Waiver = { ...word, step: "line-run", reason: "factory-line-set" };
    const limits = { "equipment.manual.run": undefined };
    const { step } = judged(withWaivers({ ...none, ...limits }, all), "line-run");
    expect(step).toMatchObject({ state: "not-applicable", checks: [] });
  });

  it.each<[Waiver["step"], "room" | "drain", Waiver["reason"]]>([
    ["room-limit", "room", "no-enclosed-room"],
    ["drain", "drain", "heats-only"],
  ])("takes the whole %s where the other runs end at branch boxes", (name, part, reason) => {
    const box = { serves: "branch-box", [part]: undefined };
    const [a, b, c] = threeHeads.runs ?? [];
    const runs = [
      { ...a, [part]: undefined },
      { ...b, ...box },
      { ...c, ...box },
    ];
    const heats = { "equipment.duty": "heating", operation: undefined };
    const waiver: Waiver = { ...word, step: name, reason, run: "A" };
    const { step } = judged(withWaivers({ runs, ...heats }, waiver), name);
    expect(step).toMatchObject({ state: "not-applicable", waiver });
    expect(step).not.toHaveProperty("runWaivers");
    const other = withWaivers({ runs: [...runs.slice(0, 2), c], ...heats }, waiver);
    expect(judged(other, name).step).toMatchObject({ runWaivers: [waiver], outcome: "pass" });
  });

  // Every refrigerant takes the place of air: no room to judge is no room without that danger.
  it("of the room limit warns of suffocation, whatever else there is to say", () => {
    const room: Waiver = { ...word, step: "room-limit", reason: "no-enclosed-room", run: "B" };
    const heeded = (...waivers: Waiver[]) =>
      assessInstallation({
        version: 2,
        equipment: { refrigerant: "R-410A" },
        runs: [{ name: "A" }, { name: "B" }],
        waivers,
      }).cautions.map(({ code }) => code);
    expect(heeded(existing)).not.toContain("commissioning.heed-refrigerant");
    expect(heeded(room)).toContain("commissioning.heed-refrigerant");
    expect(heeded(room)).not.toContain(undefined);
  });

  it("leaves its length in the total", () => {
    const way: Waiver = { ...word, step: "line-run", reason: "factory-line-set", run: "A" };
    const changes = {
      "runs[0].tubing.lift": undefined,
      "runs[0].tubing.outdoorUnit": undefined,
      "runs[0].tubing.bends": undefined,
      "equipment.manual.maximumTotalLength": ft(91),
    };
    expect(judged(withWaivers(changes, way), "line-run").step?.outcome).not.toBe("pass");
  });
});
