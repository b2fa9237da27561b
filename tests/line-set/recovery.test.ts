import {
  assessRecovery,
  jisH3300Tube,
  lineContents,
  type RecoveryInput,
} from "hvac-install-math/line-set";
import { ft, g, kg, kgPerM3, m, oz } from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import { inEnglish, sentences } from "./in-english.ts";

describe("lineContents", () => {
  const lines = {
    liquid: { tube: jisH3300Tube("6.35"), density: kgPerM3(1000) },
    vapor: { tube: jisH3300Tube("9.52"), density: kgPerM3(30) },
  };
  it("adds up the two lines", () => {
    const held = lineContents({ ...lines, length: m(10) });
    expect(held.total.si).toBeCloseTo(held.liquid.si + held.vapor.si, 15);
    expect(held.liquid.toString(g, 1)).toBe("177.2 g");
    // π/4 · (9.52 − 2 · 0.8)² mm² · 30 kg/m³ · 10 m
    expect(held.vapor.in(g)).toBeCloseTo((Math.PI / 4) * 7.92 ** 2 * 1e-6 * 30 * 10 * 1000, 9);
    expect(lineContents({ ...lines, length: ft(10) }).total.unit).toBe(oz);
  });
  it("names the line that it cannot use", () => {
    const vapor = { ...lines.vapor, density: kgPerM3(-1) };
    expect(() => lineContents({ ...lines, vapor, length: m(1) })).toThrow(/^vapor\.density: -1/);
    const none = { ...lines, liquid: null as never, length: m(1) };
    expect(() => lineContents(none)).toThrow(/^liquid: null/);
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
    expect(longer.reasons[0]?.code).toBe("line-set.to-add");
    const said = (keep: number) =>
      sentences(assessRecovery({ ...job, chargeToKeep: g(keep) }).reasons);
    expect(said(1160)).toEqual(["Refrigerant to add: 60 g. It brings the system to 1160 g."]);
    expect(said(900)).toEqual(["Refrigerant to recover: 200 g. It leaves 900 g in the system."]);
    expect(said(1100)).toEqual(["Refrigerant to recover: 0 g. It leaves 1100 g in the system."]);
  });
  it("fails before the cylinder is overfilled", () => {
    const cylinder = { maximumFill: kg(9), contents: kg(8) };
    const full = assessRecovery({ ...job, cylinder });
    expect([full.outcome, full.reasons[0]?.code]).toEqual(["fail", "line-set.cylinder-too-small"]);
    expect(inEnglish(full.reasons[0])).toBe(
      "The cylinder has room for 1000 g; 1100 g has to come out.",
    );
    const exact = { ...job, chargeInSystem: kg(1), cylinder };
    expect(assessRecovery(exact).outcome).toBe("pass");
    expect(sentences(full.actions)).toEqual(["Use a cylinder with room for 1100 g or more."]);
    expect(assessRecovery(job).assumptions.map(({ code }) => code)).toEqual([
      "line-set.charge-as-labeled",
    ]);
    expect(assessRecovery(job).sources.map(({ source }) => source)).toEqual(["common-practice"]);
  });
  it("does not trust a charge that is not known", () => {
    const { chargeInSystem: _, ...unknown } = job;
    const result = assessRecovery({ ...unknown, chargeToKeep: g(900) });
    expect([result.outcome, result.toRecover]).toEqual(["inconclusive", undefined]);
    expect(sentences(result.reasons)).toEqual(["The charge in the system is not known."]);
    expect(sentences(result.actions)).toEqual([
      "Recover all of the refrigerant and weigh it.",
      "Then charge 900 g by weight.",
    ]);
  });
  it("says that the cylinder was not checked, and warns", () => {
    const { cylinder: _, ...without } = job;
    expect(assessRecovery(without).assumptions.at(-1)?.code).toBe("line-set.cylinder-not-checked");
    const codes = assessRecovery({ ...without, safetyClass: "A3" }).cautions.map((c) => c.code);
    expect(codes).toEqual([
      "safety.open-under-pressure",
      "safety.refrigerant-contact",
      "safety.flammable-refrigerant",
      "line-set.overfilled-cylinder",
      "line-set.mixed-refrigerants",
      "line-set.never-vent",
      "safety.others-govern",
    ]);
  });
  it("names what it cannot use", () => {
    const bad = (change: object) => () => assessRecovery({ ...job, ...change });
    expect(bad({ chargeToKeep: g(-1) })).toThrow(/^chargeToKeep: -1 g/);
    expect(bad({ chargeInSystem: m(1) })).toThrow(/^chargeInSystem: length/);
    expect(bad({ chargeInSystem: g(0) })).toThrow(/^chargeInSystem: 0 g/);
    expect(bad({ cylinder: { maximumFill: kg(0), contents: kg(0) } })).toThrow(
      /^cylinder\.maximumFill: 0 kg/,
    );
    expect(bad({ cylinder: { maximumFill: kg(9), contents: kg(10) } })).toThrow(
      /^cylinder\.contents: 10 kg is not allowed; allowed: at least 0 kg and at most 9 kg/,
    );
  });
});
