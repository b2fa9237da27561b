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
    expect(judged(withWaivers(none, ...all)).step?.state).toBe("not-applicable");
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
