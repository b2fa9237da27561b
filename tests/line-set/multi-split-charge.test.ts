import { type MultiSplitChargeInput, multiSplitCharge } from "hvac-install-math/line-set";
import { ft, g, gPerM, m, oz, ozPerFt } from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import { sentences } from "./in-english.ts";

const each: MultiSplitChargeInput = {
  lines: [
    { length: m(12), preChargedLength: m(7.5), rate: gPerM(15) },
    { length: m(6), preChargedLength: m(7.5), rate: gPerM(30) },
  ],
  shortLineRule: "add-only",
};

describe("multiSplitCharge", () => {
  it("treats every line by its own pre-charged length", () => {
    const result = multiSplitCharge(each);
    expect(result.additionalCharge.toString()).toBe("67.5 g");
    expect(result.reasons.map(({ code }) => code)).toEqual([
      "line-set.add",
      "line-set.nothing-to-add",
    ]);
  });

  it("adds the manual's mass per indoor unit", () => {
    const [first, second] = each.lines;
    const lines = [{ ...first, allowance: g(50) }, second] as MultiSplitChargeInput["lines"];
    const result = multiSplitCharge({ ...each, lines });
    expect(result.additionalCharge.toString()).toBe("117.5 g");
    expect(result.reasons.at(-1)?.code).toBe("line-set.allowances");
  });

  // The worked example of a published manual for 3 and 4 ports: 82, 16 and 49 ft on 3 of 4 ports, 25 ft per port,
  // 0.22 oz/ft, −1.61 oz per unused port: (57 − 9 + 24) · 0.22 − 1.61 = 14.23 oz; a sum below zero counts as zero.
  it("takes off a mass for an unused port, and nothing out of the unit where the sum is below zero", () => {
    const manual = (...lengths: number[]) =>
      multiSplitCharge({
        lines: lengths.map((length) => ({
          length: ft(length),
          preChargedLength: ft(25),
          rate: ozPerFt(0.22),
        })),
        allowance: oz(-1.61),
        shortLineRule: "net-add-only",
      });
    expect(manual(82, 16, 49).additionalCharge.in(oz)).toBeCloseTo(14.23, 9);
    const short = manual(20, 16);
    expect(short.additionalCharge.in(oz)).toBe(0);
    expect(short.reasons[0]?.code).toBe("line-set.nothing-to-add-in-all");
    expect(short.outcome).toBe("pass");
  });

  // Published charge formulas of ducted units: the rate counts for the whole line, less what the factory put in.
  it("counts the whole length less the mass for the factory's own line", () => {
    const line = { length: ft(40), preChargedLength: ft(0), rate: ozPerFt(0.6) };
    const rule = { lines: [line], allowance: oz(-9), shortLineRule: "add-only" } as const;
    expect(multiSplitCharge(rule).additionalCharge.in(oz)).toBeCloseTo(0.6 * 40 - 9, 9);
  });

  it("is undecided when a sum below zero has no stated rule", () => {
    const result = multiSplitCharge({
      ...each,
      lines: each.lines.map((line) => ({ ...line, preChargedLength: m(30) })),
      allowance: g(-20),
      shortLineRule: "not-stated",
    });
    expect(result.outcome).toBe("inconclusive");
  });

  it("holds one pre-charged length against the sum of the lines", () => {
    const lines = [
      { length: m(12), rate: gPerM(12), allowance: g(50) },
      { length: m(15), rate: gPerM(12) },
    ];
    const shared = { lines, preChargedTotal: m(20), shortLineRule: "add-only" } as const;
    const result = multiSplitCharge(shared);
    // (12 + 15 − 20) m · 12 g/m + 50 g
    expect(result.additionalCharge.toString()).toBe("134 g");
    expect(sentences(result.reasons)).toEqual([
      "By the rule, add 84 g: the line is 27 m, 7 m more than the pre-charged 20 m, at 12 g/m.",
      "Allowances: 50 g.",
    ]);
    const covered = { ...shared, preChargedTotal: m(30), lengthUncertainty: m(0.1) };
    expect(multiSplitCharge(covered).additionalCharge.toString()).toBe("50 g");
    expect(multiSplitCharge(covered).expandedUncertainty).toBeUndefined();
  });

  it("counts no uncertainty of a line to which nothing is added", () => {
    const { expandedUncertainty } = multiSplitCharge({ ...each, lengthUncertainty: m(0.5) });
    expect(expandedUncertainty?.in(g)).toBeCloseTo(2 * 15 * 0.5, 9); // the first line alone
  });

  it("is not too short by a hair of binary arithmetic", () => {
    expect(0.7 + 0.1).toBeLessThan(0.8);
    const lines = [m(0.7), m(0.1)].map((length) => ({
      length,
      preChargedLength: m(0.1),
      rate: gPerM(15),
    }));
    expect(multiSplitCharge({ ...each, lines, minimumLength: m(0.8) }).outcome).toBe("pass");
  });

  it("holds the sum of the lines against the longest run", () => {
    expect(multiSplitCharge({ ...each, maximumLength: m(17) }).outcome).toBe("fail");
    expect(multiSplitCharge({ ...each, maximumLength: m(18) }).outcome).toBe("pass");
  });

  it("is undecided when one short line has no stated rule", () => {
    expect(multiSplitCharge({ ...each, shortLineRule: "not-stated" }).outcome).toBe("inconclusive");
  });

  it("counts the uncertainty of every line measured, whether one pre-charged length covers them or not", () => {
    const lines = [m(12), m(15), m(18), m(20)].map((length) => ({ length, rate: gPerM(15) }));
    const shared = { lines, preChargedTotal: m(20), shortLineRule: "add-only" } as const;
    const own = lines.map((line) => ({ ...line, preChargedLength: m(5) }));
    for (const system of [shared, { lines: own, shortLineRule: "add-only" } as const]) {
      const { expandedUncertainty } = multiSplitCharge({ ...system, lengthUncertainty: m(0.5) });
      expect(expandedUncertainty?.in(g)).toBeCloseTo(2 * 15 * 0.5 * Math.sqrt(4), 9);
    }
    // 65 m ± 1 m (k = 1): 1.5 m beyond the limit would fail for one line of ± 0.5 m, not for four.
    const limit = { maximumLength: m(63.5), lengthUncertainty: m(0.5) };
    expect(multiSplitCharge({ ...shared, ...limit }).outcome).toBe("inconclusive");
  });

  it("refuses a mixture that the manual cannot mean, by name", () => {
    const bad = (change: object) => () =>
      multiSplitCharge({ ...each, ...change } as MultiSplitChargeInput);
    expect(bad({ lines: [] })).toThrow(/^lines\.length: 0/);
    expect(bad({ lines: undefined })).toThrow(/^lines: undefined/);
    expect(bad({ preChargedTotal: g(20) })).toThrow(/^preChargedTotal: mass 20 g/);
    expect(bad({ lines: [{ ...each.lines[0], allowance: g(-5e5) }] })).toThrow(
      /^lines\[0\]\.allowance: -500000 g/,
    );
    expect(bad({ preChargedTotal: m(20) })).toThrow(/^lines\[0\]\.preChargedLength: 7.5 m/);
    expect(bad({ lines: [{ length: m(3), rate: gPerM(15) }] })).toThrow(
      /^lines\[0\]\.preChargedLength: nothing/,
    );
    expect(
      bad({
        preChargedTotal: m(20),
        lines: [
          { length: m(12), rate: gPerM(15) },
          { length: m(12), rate: gPerM(30) },
        ],
      }),
    ).toThrow(
      /^lines\[1\]\.rate: massPerLength 30 g\/m is not allowed; allowed: 15 g\/m as on lines\[0\]/,
    );
    expect(bad({ lines: [{ length: m(-3), preChargedLength: m(2), rate: gPerM(15) }] })).toThrow(
      /^lines\[0\]\.length: -3 m/,
    );
  });
});
