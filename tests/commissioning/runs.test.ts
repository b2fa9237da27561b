// Several indoor units on one outdoor unit: each run with its own length, joints, room and drain; tests that cover runs.
import type { InstallationRecord, NamedCheck, StepName } from "hvac-install-math/commissioning";
import { ft, ftLb, m3, micron, minute, oz, psig } from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import { assessInstallation } from "./assess.ts";
import { type Change, changed as changedOf } from "./changed.ts";
import { threeHeads } from "./three-heads.ts";

const changed = (changes: Change) => changedOf(changes, threeHeads);
const step = (record: InstallationRecord, name: StepName) => {
  const found = assessInstallation(record).steps.find((one) => one.name === name);
  if (!found) throw new Error(name);
  return found;
};

it("runs of which nothing is recorded yet are asked for their lines, each by itself", () => {
  const { missing } = step({ version: 2, runs: [{}, {}], evacuations: [{}] }, "line-run");
  for (const run of ["runs[0]", "runs[1]"]) expect(missing).toContain(`${run}.tubing.length`);
});

// Behind a branch box there is an indoor unit: the air of a room, and water to get away.
it("runs to branch boxes only are asked for the one to an indoor unit", () => {
  const box = { serves: "branch-box", room: undefined, drain: undefined } as const;
  const boxes = { ...threeHeads, runs: threeHeads.runs?.map((one) => ({ ...one, ...box })) };
  for (const [name, field] of [
    ["line-run", "runs[3].tubing.length"],
    ["room-limit", "runs[3].room.volume"],
    ["drain", "runs[3].drain.slope"],
  ] as const) {
    expect(step(boxes, name).missing).toContain(field);
  }
});

describe("three heads", () => {
  const result = assessInstallation(threeHeads);

  it("pass with every step done, each run judged by itself", () => {
    const open = result.steps.filter(({ outcome }) => outcome !== "pass");
    expect(open.map(({ name, missing, problems }) => ({ name, missing, problems }))).toEqual([]);
    expect(result.outcome).toBe("pass");
    const paths = step(threeHeads, "line-run").checks.filter(({ name }) => name === "line-run");
    expect(paths.map(({ path }) => path)).toEqual([
      "runs[0].tubing",
      "runs[1].tubing",
      "runs[2].tubing",
    ]);
  });

  // (41 − 25) + (18 − 25) + (33 − 25) ft at 0.22 oz/ft, as a manual of that kind prints it.
  it("are charged by the manual's rule for each of them", () => {
    const rule = step(threeHeads, "charge").checks.find(({ name }) => name === "additional-charge");
    const { additionalCharge } = (rule as NonNullable<typeof rule>).assessment as never as {
      additionalCharge: { in(u: unknown): number };
    };
    expect(Math.abs(additionalCharge.in(oz) - 3.74)).toBeLessThan(0.06);
  });

  // The 3.74 oz, less 0.5 oz for each of two ports that stay unused, and 0.3 oz that the manual adds in any case.
  it.each<[Change, number]>([
    [{ "equipment.portPairs": 5 }, 3.74 - 2 * 0.5],
    [{ "equipment.portPairs": 5, "equipment.manual.chargeAllowance": oz(0.3) }, 3.74 - 1 + 0.3],
  ])("are charged less for ports that stay unused: %j", (ports, expected) => {
    const record = changed({ "equipment.manual.unusedPortAllowance": oz(-0.5), ...ports });
    const rule = step(record, "charge").checks.find(({ name }) => name === "additional-charge");
    const { unroundedCharge } = (rule as NamedCheck<"additional-charge">).assessment;
    expect(unroundedCharge.in(oz)).toBeCloseTo(expected, 6);
  });

  it.each([
    ["line-run", { "runs[1].tubing.length": ft(90) }, "fail"],
    ["line-run", { "equipment.manual.maximumTotalLength": ft(80) }, "fail"],
    ["line-run", { "equipment.manual.maximumTotalLength": undefined }, "inconclusive"],
    ["joints", { "runs[2].joints[1].torque": ftLb(20) }, "fail"],
    ["joints", { "runs[1].joints[3]": undefined }, "inconclusive"],
    ["pressure-test", { "pressureTests[1].readings[1].pressure": psig(470) }, "fail"],
    ["pressure-test", { "pressureTests[2]": undefined }, "inconclusive"],
    ["room-limit", { "runs[2].room.volume": m3(5) }, "fail"],
    ["room-limit", { "runs[1].room": undefined }, "inconclusive"],
    ["charge", { "equipment.manual.preChargedFor": undefined }, "inconclusive"],
    ["drain", { "runs[1].drain.waterRanOff": false }, "fail"],
    ["drain", { "runs[2].drain": undefined }, "inconclusive"],
    ["operation", { "operation[1]": undefined }, "inconclusive"],
  ] as [StepName, Change, string][])("%s with %j is %s", (name, changes, outcome) => {
    const record = changed(changes);
    expect(step(record, name).outcome).toBe(outcome);
    expect(assessInstallation(record).outcome).not.toBe("pass");
    expect(assessInstallation(record).actions.length).toBeGreaterThan(0);
  });

  it("name the run that no test covers", () => {
    const { reasons } = assessInstallation(changed({ "pressureTests[2]": undefined }));
    const said = reasons.find(({ code }) => code === "commissioning.run-not-covered");
    expect(said).toMatchObject({
      step: "pressure-test",
      part: "runs[2]",
      values: { run: { verbatim: "C" } },
    });
  });

  it("do not take a test of a run that there is not", () => {
    const stray = changed({ "pressureTests[2].covers": ["D"] });
    const { reasons, cautions } = assessInstallation(stray);
    const codes = reasons.map(({ code }) => code);
    expect(codes).toContain("commissioning.unknown-run");
    expect(codes).toContain("commissioning.run-not-covered");
    // No other test followed it: its run has none.
    expect(cautions.map(({ code }) => code)).not.toContain("commissioning.tested-again");
  });

  it("keep a test that failed, and count the one that was done again", () => {
    const [first] = threeHeads.pressureTests ?? [];
    const failed = {
      ...first,
      readings: first?.readings?.map((one, i) => (i ? { ...one, pressure: psig(460) } : one)),
    };
    const record = { ...threeHeads, pressureTests: [failed, ...(threeHeads.pressureTests ?? [])] };
    const result = assessInstallation(record as InstallationRecord);
    expect(result.outcome).toBe("pass");
    expect(result.cautions.map(({ code }) => code)).toContain("commissioning.tested-again");
  });

  it("do not take the log of one run for that of another", () => {
    const [watch] = threeHeads.evacuations ?? [];
    const each = ["A", "B", "C"].map((name) => ({ ...watch, covers: [name] }));
    const { reasons } = assessInstallation({
      ...threeHeads,
      evacuations: each,
    } as InstallationRecord);
    expect(reasons.filter(({ code }) => code === "commissioning.log-copied")).toHaveLength(2);
  });

  describe("with logs of few rows", () => {
    const [watch] = threeHeads.evacuations ?? [];
    const course = (start: number, rises: readonly number[]) =>
      rises.map((rise, i) => ({ elapsed: minute(2 * i), pressure: micron(start + rise) }));
    const asked = (...logs: object[][]) =>
      assessInstallation({
        ...threeHeads,
        evacuations: logs.map((readings, i) => ({
          ...watch,
          covers: [["A"], ["B", "C"]][i],
          readings,
        })),
      } as InstallationRecord).reasons.some(({ code }) => code === "commissioning.log-copied");

    // Common practice, no source: three rows of a course do not agree by chance, nor five of one pressure.
    it.each([
      ["a course", [0, 19, 26], true],
      ["a course of two pressures", [0, 19, 19], true],
      ["two rows of a course", [0, 19], false],
      ["one pressure", [0, 0, 0, 0, 0], true],
      ["four rows of one pressure", [0, 0, 0, 0], false],
    ] as const)("do not take %s of one run for that of another: %j, %s", (_, rises, is) => {
      expect(asked(course(212, rises), course(212, rises))).toBe(is);
    });

    // The same: no two logs of eight rows, with six pressures among them, rise alike in every one of them.
    it.each([
      ["eight rows and six pressures", [0, 19, 26, 31, 34, 37, 37, 37], true],
      ["five pressures", [0, 19, 26, 31, 34, 34, 34, 34, 34], false],
      ["seven rows", [0, 19, 26, 31, 34, 37, 39], false],
    ] as const)(
      "do not take one for another that is 2 micron higher: %s, %j, %s",
      (_, rises, is) => {
        expect(asked(course(212, rises), course(214, rises))).toBe(is);
        expect(asked(course(212, rises), course(214, [...rises.slice(0, -1), 43]))).toBe(false);
      },
    );
  });

  it("have names of their own", () => {
    expect(() => changed({ "runs[1].name": "A" })).toThrow(/runs\[1\]\.name/);
  });
});
