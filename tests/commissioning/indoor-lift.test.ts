// Heads on two floors: how far apart they are, and what the manual allows. The heights are plain sums.
import { type InstallationRecord, indoorLift, type Run } from "hvac-install-math/commissioning";
import { planInstallation } from "hvac-install-math/planning";
import { ft, m } from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import { assessInstallation, rules } from "./assess.ts";
import { changed } from "./changed.ts";
import { threeHeads } from "./three-heads.ts";

const at = (lift: number, outdoorUnit: "above" | "below" | "level"): Run => ({
  tubing: { lift: m(lift), outdoorUnit },
});
const between = (...runs: Run[]) => indoorLift({ version: 2, runs });

describe("the height between indoor units", () => {
  it.each([
    ["both above the outdoor unit", [at(5, "below"), at(2, "below")], 3],
    ["one above it and one below", [at(5, "below"), at(2, "above")], 7],
    ["one level with it", [at(0, "level"), at(4, "above")], 4],
    ["three", [at(1, "below"), at(6, "below"), at(1, "above")], 7],
  ] as const)("with %s", (_, runs, expected) => {
    expect(between(...runs)?.in(m)).toBeCloseTo(expected, 9);
  });

  it("is not known where a height is not, nor with one indoor unit", () => {
    expect(between(at(5, "below"))).toBeUndefined();
    expect(between(at(5, "below"), {})).toBeUndefined();
    // The third may hang higher than both.
    expect(between(at(5, "below"), at(2, "below"), {})).toBeUndefined();
    const unsaid = { tubing: { lift: m(7) } };
    expect(between(at(5, "below"), at(2, "below"), unsaid)).toBeUndefined();
    expect(between(at(5, "below"), { ...at(1, "above"), serves: "branch-box" })).toBeUndefined();
  });
});

describe("an installation with heads on two floors", () => {
  const upstairs = (limit?: number) =>
    changed(
      {
        "runs[0].tubing.lift": ft(19),
        ...(limit && { "equipment.manual.maximumIndoorLift": ft(limit) }),
      },
      threeHeads,
    );
  const step = (record: InstallationRecord) =>
    assessInstallation(record).steps.find(({ name }) => name === "line-run");
  const planned = (record: InstallationRecord) => planInstallation(record, { rules });

  it("passes within the manual's limit and at it, and fails above it", () => {
    expect(step(upstairs(25))?.outcome).toBe("pass");
    expect(step(upstairs(8))?.outcome).toBe("fail");
    // Measured well enough for simple acceptance (JCGM 106:2012, 8.2).
    expect(step(upstairs(10))?.outcome).toBe("pass");
  });

  it("asks for the limit, and does not where all hang level", () => {
    const path = "equipment.manual.maximumIndoorLift";
    expect(step(upstairs())?.missing).toEqual([path]);
    expect(step(threeHeads)?.outcome).toBe("pass");
    const asked = (record: InstallationRecord) => planned(record).ask.map((one) => one.path);
    expect(asked(upstairs())).toContain(path);
    expect(asked(threeHeads)).not.toContain(path);
  });

  it("is held against the limit before the work", () => {
    const found = (limit: number) =>
      planned(upstairs(limit)).check.find(({ code }) => code.startsWith("planning.indoor-lift"));
    expect(found(25)?.outcome).toBe("pass");
    expect(found(8)?.outcome).toBe("fail");
    expect(found(8)?.values.lift).toMatchObject({ kind: "length" });
  });
});
