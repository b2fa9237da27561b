// Sound work that must not be stopped, and its unsound twin that must: fill and cold, drains by their heights, tests
// copied from run to run, thermometers of their own for each part. The limits are the manual's and the code's, as named beside each.
import { explain } from "hvac-install-math/assessment";
import type { InstallationRecord, StepName } from "hvac-install-math/commissioning";
import { english } from "hvac-install-math/language/en";
import {
  degF,
  degreeAngle,
  ft,
  hour,
  inch,
  mm,
  newtonMeter,
  percent,
  psi,
  psig,
  type Quantity,
} from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import { assessInstallation } from "./assess.ts";
import { type Change, changed } from "./changed.ts";
import { threeHeads } from "./three-heads.ts";

const checks = (changes: Change, name: StepName, record?: InstallationRecord) =>
  assessInstallation(changed(changes, record)).steps.find((step) => step.name === name)?.checks ??
  [];

const reading = (p: number, t: number | readonly number[], h: number) => ({
  pressure: psig(p),
  temperature: typeof t === "number" ? degF(t) : t.map((one) => degF(one)),
  elapsed: hour(h),
});

describe("the manual's test pressure", () => {
  const required = (readings: readonly unknown[]) => {
    const found = checks(
      { "equipment.manual.testPressure": psig(500), "pressureTests[0].readings": readings },
      "pressure-test",
    ).find(({ name }) => name === "test-pressure");
    return found?.assessment.outcome;
  };

  // 500 psig at 64 °F is 480.8 psig at 46 °F: ideal gas, (514.7 · 505.67 / 523.67) − 14.7 = 482.3, less the gas's own deviation.
  it("is reached by the fill, whatever the cold takes off afterwards", () => {
    expect(required([reading(500, 64, 0), reading(480.6, 46, 10)])).toBe("pass");
    expect(required([reading(500, 64, 0), reading(499.8, 63.9, 10)])).toBe("pass");
  });

  it("is not reached by a fill below it", () => {
    expect(required([reading(499, 64, 0), reading(498.8, 63.9, 10)])).toBe("inconclusive");
  });
});

describe("the fall of a drain", () => {
  const outcomes = (drain: Change) =>
    checks(drain, "drain").filter(({ path }) => path.endsWith(".fall"));
  // The worked record has no pump.
  const run = { "runs[0].drain.run": ft(20) };

  // IMC 2021, 307.2.1: 1/8 in per foot; 20 ft fall 2.5 in.
  it.each([
    ["enough", inch(2.5), "pass"],
    ["too little", inch(2.4), "fail"],
    ["none", inch(0), "fail"],
    ["a discharge above the pan", ft(-3), "fail"],
  ] as const)("%s", (_, fall, outcome) => {
    const [check] = outcomes({ ...run, "runs[0].drain.fall": fall });
    expect(check?.assessment.outcome).toBe(outcome);
  });

  it("is none without a length, too: water that does not fall stays", () => {
    const fall = (own: Quantity<"length">) =>
      outcomes({ "runs[0].drain.fall": own })[0]?.assessment.outcome;
    expect(fall(inch(0))).toBe("fail");
    expect(fall(inch(1))).toBe("pass");
  });

  it("names the run that cannot be", () => {
    const record = changed({ "runs[0].drain.run": ft(-1), "runs[0].drain.fall": inch(1) });
    const drain = assessInstallation(record).steps.find(({ name }) => name === "drain");
    expect(drain?.problems.map(({ path }) => path)).toContain("runs[0].drain.run");
    expect(drain?.problems.map(({ path }) => path)).not.toContain("runs[0].drain.fall");
  });

  it("says what is needed and what to do", () => {
    const [check] = outcomes({ ...run, "runs[0].drain.fall": inch(1) });
    const { reasons = [], actions = [] } = check?.assessment ?? {};
    expect([...reasons, ...actions].map((one) => explain(one as never, english))).toEqual([
      "The drain falls 1 in from the pan to its end; at least 2.5 in required.",
      "Lead the drain lower, or fit a pump.",
    ]);
  });
});

describe("a pressure test of another run, row by row the same", () => {
  const copied = (readings: readonly unknown[]) => {
    const [first, ...others] = (threeHeads.runs ?? []).map(({ name }) => name as string);
    const [test] = threeHeads.pressureTests ?? [];
    const tests = [
      { ...test, covers: [first], readings },
      { ...test, covers: others, readings },
    ];
    return checks({ pressureTests: tests }, "pressure-test", threeHeads).some(({ assessment }) =>
      assessment.reasons.some(({ code }) => code === "commissioning.log-copied"),
    );
  };

  it("is asked about where the rows show a course", () => {
    const course = [reading(500, 64, 0), reading(492.1, 57, 5), reading(480.6, 46, 10)];
    expect(copied(course)).toBe(true);
    expect(copied(course.slice(1))).toBe(false);
  });

  it("is asked about where one of three rows differs from the others in pressure", () => {
    const course = [reading(500, 64, 0), reading(500, 64, 5), reading(499.5, 63, 10)];
    expect(copied(course)).toBe(true);
  });

  it("may be two tests of which nobody wrote down a pressure", () => {
    const blank = Array.from({ length: 8 }, (_, i) => ({ elapsed: hour(i) }));
    expect(copied(blank.slice(0, 2))).toBe(false);
    expect(copied(blank)).toBe(true);
  });

  it("may be two tests where nothing moved", () => {
    expect(copied([reading(500, 64, 0), reading(500, 64, 5), reading(500, 64, 10)])).toBe(false);
  });
});

describe("thermometers at several parts of the tubing", () => {
  const zoned = [reading(500, [56.3, 72.5], 0), reading(487, [39.2, 69.8], 24)];
  const tested = (more: Change) =>
    checks({ "pressureTests[0].readings": zoned, ...more }, "pressure-test").find(
      ({ name }) => name === "pressure-test",
    );
  const shares = (...list: readonly number[]) => ({
    "pressureTests[0].zoneShares": list.map((one) => percent(one)),
  });

  it("ask for the share of the volume at each", () => {
    expect(tested({})).toBeUndefined();
    const { missing } = assessInstallation(changed({ "pressureTests[0].readings": zoned }));
    expect(missing).toContain("pressureTests[0].zoneShares");
  });

  it.each([
    ["first", [reading(500, [70, 70], 0), reading(489.3, 60, 14)]],
    ["last", [reading(500, 70, 0), reading(489.3, [60, 60], 14)]],
  ])("ask for it where only the %s reading has more than one", (_, readings) => {
    const mixed = { "pressureTests[0].readings": readings };
    const { missing } = assessInstallation(changed(mixed));
    expect(missing).toContain("pressureTests[0].zoneShares");
    expect(tested({ ...shares(50, 50), ...mixed })?.assessment.outcome).toBe("pass");
  });

  // With one temperature for all of the gas, shares weigh nothing: neither whole nor unfinished ones.
  it("ask for none where no reading has more than one", () => {
    const readings = [reading(500, 70, 0), reading(489.3, 60, 14)];
    const plain = { "pressureTests[0].readings": readings };
    for (const stated of [{}, shares(50, 50), shares(50, 40)]) {
      expect(tested({ ...stated, ...plain })?.assessment.outcome).toBe("pass");
    }
    expect(assessInstallation(changed(plain)).missing).toEqual([]);
  });

  // Ideal gas: p ∝ 1 / Σ(share / T). With half of the gas in each: 514.7 · (0.5/515.97 + 0.5/532.17) / (0.5/498.87 + 0.5/529.47) = 504.7 psia.
  it("give the mean of the gas by these shares", () => {
    const check = tested({
      ...shares(50, 50),
      "pressureTests[0].criterion": { maximumDrop: psi(5) },
    });
    if (check?.name !== "pressure-test") throw new Error("not judged");
    const drop = check.assessment.correctedDrop.value.in(psi);
    expect(drop).toBeGreaterThan(504.7 - 14.7 - 487 - 1);
    expect(drop).toBeLessThan(504.7 - 14.7 - 487 + 1);
  });

  it.each([[[50, 40]], [[50, 50, 50]], [[100, 0]]])(
    "cannot be used with shares of %j %%",
    (list) => {
      expect(tested(shares(...list))?.assessment.outcome ?? "none").not.toBe("pass");
    },
  );
});

// Manufacturers' manuals for R-410A and R-32: 0.7 mm at least on 3/8 in; none has a figure for 3/4 in, and 7/8 in is brazed.
describe("the wall of a line in a record with flares", () => {
  const joints = (changes: Change) =>
    assessInstallation(changed(changes)).steps.find(({ name }) => name === "joints");
  const walls = (changes: Change) =>
    joints(changes)?.checks.flatMap(({ name, assessment }) =>
      name === "flare-wall" ? [assessment.outcome] : [],
    );

  it("that splits at the flare fails the joints", () => {
    expect(walls({ "runs[0].tubing.vapor.wall": mm(0.5) })).toEqual(["fail"]);
    expect(walls({ "runs[0].tubing.vapor.wall": mm(0.8) })).toEqual([]);
  });

  it("counts wherever a flare is, by its kind or by a torque, and nowhere else", () => {
    const thin = (joint: object) =>
      walls({ "runs[0].tubing.vapor.wall": mm(0.5), "runs[0].joints": [joint] });
    expect(thin({ kind: "flare", turn: degreeAngle(60) })).toEqual(["fail"]);
    expect(thin({ torque: newtonMeter(38) })).toEqual(["fail"]);
    expect(thin({ kind: "brazed", nitrogenFlowed: true })).toEqual([]);
    expect(walls({ "runs[0].tubing.vapor.wall": mm(0.5), "runs[0].joints": undefined })).toEqual(
      [],
    );
  });

  // A joint cannot be finished by a figure that nobody can state: the step would stay open for good.
  it.each<[string, Change]>([
    ["that was not measured", { "runs[0].tubing.vapor.wall": undefined }],
    ["of 3/4 in", { "runs[0].tubing.vapor.outsideDiameter": inch(0.75) }],
    ["of a size that has no flare", { "runs[0].tubing.vapor.outsideDiameter": inch(0.875) }],
  ])("%s is nothing that the joints lack", (_, changes) => {
    const found = joints(changes);
    expect(found?.missing).toEqual([]);
    expect(found?.problems).toEqual([]);
    expect(walls(changes)).toEqual([]);
  });
});
