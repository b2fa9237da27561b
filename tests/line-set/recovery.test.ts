import {
  assessRecovery,
  jisH3300Tube,
  lineContents,
  type RecoveryInput,
} from "hvac-install-math/line-set";
import { ft, g, kg, kgPerM3, m, oz } from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";

describe("lineContents", () => {
  const lines = {
    liquid: { tube: jisH3300Tube("6.35"), density: kgPerM3(1000) },
    vapor: { tube: jisH3300Tube("9.52"), density: kgPerM3(30) },
  };
  it("adds up the two lines", () => {
    const held = lineContents({ ...lines, length: m(10) });
    expect(held.total.si).toBeCloseTo(held.liquid.si + held.vapor.si, 15);
    expect(held.liquid.toString(g, 1)).toBe("177.2 g");
    expect(lineContents({ ...lines, length: ft(10) }).total.unit).toBe(oz);
  });
  it("names the line that it cannot use", () => {
    const vapor = { ...lines.vapor, density: kgPerM3(-1) };
    expect(() => lineContents({ ...lines, vapor, length: m(1) })).toThrow(/^vapor\.density: -1/);
  });
});

describe("assessRecovery", () => {
  const job: RecoveryInput = {
    chargeInSystem: g(1100),
    chargeToKeep: g(0),
    cylinder: { maximumFill: kg(9), contents: kg(2) },
  };
  it("recovers everything from a system that is taken away", () => {
    const result = assessRecovery(job);
    expect([result.outcome, result.toRecover?.in(g), result.toAdd?.in(g)]).toEqual([
      "pass",
      1100,
      0,
    ]);
    expect(result.cylinderRoom?.in(kg)).toBe(7);
  });
  it("takes out or adds the difference when the line length changes", () => {
    expect(assessRecovery({ ...job, chargeToKeep: g(980) }).toRecover?.in(g)).toBeCloseTo(120, 9);
    const longer = assessRecovery({ ...job, chargeToKeep: g(1160) });
    expect([longer.toRecover?.in(g), longer.toAdd?.toString()]).toEqual([0, "60 g"]);
    expect(longer.reasons[0]?.code).toBe("add");
  });
  it("fails before the cylinder is overfilled", () => {
    const cylinder = { maximumFill: kg(9), contents: kg(8) };
    const full = assessRecovery({ ...job, cylinder });
    expect([full.outcome, full.reasons[0]?.code]).toEqual(["fail", "cylinder-too-small"]);
  });
  it("does not trust a charge that is not known", () => {
    const { chargeInSystem: _, ...unknown } = job;
    const result = assessRecovery({ ...unknown, chargeToKeep: g(900) });
    expect([result.outcome, result.toRecover]).toEqual(["inconclusive", undefined]);
  });
  it("says that the cylinder was not checked, and warns", () => {
    const { cylinder: _, ...without } = job;
    expect(assessRecovery(without).assumptions[0]?.code).toBe("cylinder-not-given");
    const codes = assessRecovery({ ...without, safetyClass: "A3" }).cautions.map((c) => c.code);
    expect(codes).toEqual(expect.arrayContaining(["flammable", "recovery", "under-pressure"]));
  });
  it("names what it cannot use", () => {
    const bad = (change: object) => () => assessRecovery({ ...job, ...change });
    expect(bad({ chargeToKeep: g(-1) })).toThrow(/^chargeToKeep: -1 g/);
    expect(bad({ chargeInSystem: m(1) })).toThrow(/^chargeInSystem: length/);
    expect(bad({ cylinder: { maximumFill: kg(9), contents: kg(10) } })).toThrow(
      /^cylinder\.contents: 10 kg is not allowed; allowed: at least 0 kg and at most 9 kg/,
    );
  });
});
