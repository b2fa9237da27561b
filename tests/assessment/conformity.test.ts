import fc from "fast-check";
import {
  type ConformityInput,
  conformity,
  normalProbability,
  normalQuantile,
} from "hvac-install-math/assessment";
import { degF, deltaF, psi, psia, psig, volt } from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";

const k95 = 1.6448536269514722; // one-sided 95 %

/** Outcome for volts: value, standard uncertainty, lower and upper limit. */
const judge = (value: number, u: number, low?: number, high?: number, confidence?: number) =>
  conformity({
    value: volt(value),
    standardUncertainty: volt(u),
    ...(low === undefined ? {} : { lowerLimit: volt(low) }),
    ...(high === undefined ? {} : { upperLimit: volt(high) }),
    ...(confidence === undefined ? {} : { confidence }),
  });

describe("without uncertainty", () => {
  it("a limit belongs to the values that conform", () => {
    expect(judge(197, 0, 197)).toEqual({ outcome: "pass", conformanceProbability: 1 });
    expect(judge(253, 0, 197, 253)).toEqual({ outcome: "pass", conformanceProbability: 1 });
  });

  it("the next number beyond it fails", () => {
    expect(judge(196.99999999, 0, 197)).toEqual({ outcome: "fail", conformanceProbability: 0 });
    expect(judge(253.00000001, 0, 197, 253)).toEqual({
      outcome: "fail",
      conformanceProbability: 0,
    });
  });

  it("two equal limits let one value pass", () => {
    expect(judge(230, 0, 230, 230).outcome).toBe("pass");
    expect(judge(230.1, 0, 230, 230).outcome).toBe("fail");
  });
});

describe("with uncertainty", () => {
  it("a value on a limit is undecided, with even odds", () => {
    expect(judge(197, 1, 197)).toEqual({ outcome: "inconclusive", conformanceProbability: 0.5 });
    expect(judge(253, 1, undefined, 253).outcome).toBe("inconclusive");
  });

  it("the guard band is k times the uncertainty, on both sides of a limit", () => {
    expect(judge(197 + k95 + 1e-9, 1, 197).outcome).toBe("pass");
    expect(judge(197 + k95 - 1e-9, 1, 197).outcome).toBe("inconclusive");
    expect(judge(197 - k95 + 1e-9, 1, 197).outcome).toBe("inconclusive");
    expect(judge(197 - k95 - 1e-9, 1, 197).outcome).toBe("fail");
    expect(judge(253 - k95 - 1e-9, 1, undefined, 253).outcome).toBe("pass");
    expect(judge(253 + k95 + 1e-9, 1, undefined, 253).outcome).toBe("fail");
  });

  it("the end of a guard band belongs to what is undecided (JCGM 106:2012, 8.3.3)", () => {
    const guard = normalQuantile(0.95);
    expect(judge(-guard, 1, 0).outcome).toBe("inconclusive");
    expect(judge(guard, 1, undefined, 0).outcome).toBe("inconclusive");
    expect(judge(guard, 1, 0).outcome).toBe("pass");
    expect(judge(-guard, 1, undefined, 0).outcome).toBe("pass");
  });

  it("an interval narrower than its two guard bands can never pass", () => {
    for (const value of [228, 229, 230, 231, 232]) {
      expect(judge(value, 1, 229, 231).outcome).not.toBe("pass");
    }
    expect(judge(230, 1, 229, 231).conformanceProbability).toBeCloseTo(0.6827, 4);
  });

  it("a higher confidence widens the guard band", () => {
    expect(judge(199, 1, 197, undefined, 0.95).outcome).toBe("pass");
    expect(judge(199, 1, 197, undefined, 0.99).outcome).toBe("inconclusive");
    expect(judge(197.1, 1, 197, undefined, 0.5).outcome).toBe("pass");
    expect(judge(196.9, 1, 197, undefined, 0.5).outcome).toBe("fail");
  });

  it("works on points, whose uncertainty is a difference", () => {
    const { outcome, conformanceProbability } = conformity({
      value: degF(80),
      standardUncertainty: deltaF(1),
      lowerLimit: degF(78),
    });
    expect(outcome).toBe("pass");
    expect(conformanceProbability).toBeCloseTo(normalProbability(2), 12);
  });

  it("bears an uncertainty so small that the distance overflows in units of it", () => {
    expect(judge(230, 1e-320, 197, 253)).toEqual({ outcome: "pass", conformanceProbability: 1 });
    expect(judge(190, 1e-320, 197, 253)).toEqual({ outcome: "fail", conformanceProbability: 0 });
    expect(judge(197, 1e-320, 197, 253).conformanceProbability).toBe(1); // as exact as arithmetic
  });

  it("bears an uncertainty that drowns everything", () => {
    const { outcome, conformanceProbability } = judge(230, 1e29, 197, 253);
    expect(outcome).toBe("inconclusive");
    expect(conformanceProbability).toBeGreaterThanOrEqual(0);
    expect(conformanceProbability).toBeLessThan(1e-12);
  });
});

describe("properties", () => {
  const value = fc.double({ min: -1000, max: 1000, noNaN: true });
  const u = fc.double({ min: 0, max: 100, noNaN: true });

  it("the probability lies in 0 to 1, and mirrors about the interval", () => {
    fc.assert(
      fc.property(value, u, value, value, (y, s, p, q) => {
        // An uncertainty as small as the noise of binary arithmetic, 1e-11 of a limit, is none beside one limit only.
        fc.pre(s === 0 || s > 1e-7);
        const [low, high] = [Math.min(p, q), Math.max(p, q)];
        const { outcome, conformanceProbability } = judge(y, s, low, high);
        expect(conformanceProbability).toBeGreaterThanOrEqual(0);
        expect(conformanceProbability).toBeLessThanOrEqual(1);
        const mirrored = judge(-y, s, -high, -low);
        expect(mirrored.outcome).toBe(outcome);
        expect(mirrored.conformanceProbability).toBeCloseTo(conformanceProbability, 12);
      }),
      { numRuns: 1000 },
    );
  });

  it("a one-sided pass means at least the confidence, a fail at most its complement", () => {
    const confidence = fc.double({ min: 0.55, max: 0.999, noNaN: true });
    fc.assert(
      fc.property(value, u, value, confidence, (y, s, low, level) => {
        // a guard band below the last digit of the value is lost in the subtraction
        fc.pre(s > 1e-6 * Math.max(Math.abs(y), Math.abs(low)));
        const { outcome, conformanceProbability } = judge(y, s, low, undefined, level);
        if (outcome === "pass") expect(conformanceProbability).toBeGreaterThanOrEqual(level - 1e-9);
        if (outcome === "fail")
          expect(conformanceProbability).toBeLessThanOrEqual(1 - level + 1e-9);
      }),
      { numRuns: 1000 },
    );
  });
});

describe("bad input", () => {
  const good = { value: psig(118), standardUncertainty: psi(1), lowerLimit: psig(115) };
  const refuse = (change: Record<string, unknown>) => () =>
    conformity({ ...good, ...change } as ConformityInput<"gaugePressure">);

  it.each<[string, Record<string, unknown>, string]>([
    [
      "no limit",
      { lowerLimit: undefined },
      "lowerLimit, upperLimit: nothing is not allowed; allowed: one of lowerLimit, upperLimit",
    ],
    [
      "limits that cross",
      { upperLimit: psig(110) },
      "lowerLimit: 115 psig is not allowed; allowed: at most 110 psig",
    ],
    ["no value", { value: undefined }, "value: undefined is not allowed; allowed: a quantity"],
    ["a bare value", { value: 118 }, "value: 118 is not allowed; allowed: a quantity"],
    [
      "a negative uncertainty",
      { standardUncertainty: psi(-1) },
      "standardUncertainty: -1 psi is not allowed; allowed: at least 0 psi",
    ],
    [
      "an uncertainty on the gauge scale",
      { standardUncertainty: psig(1) },
      "standardUncertainty: gaugePressure 1 psig is not allowed; allowed: the kind pressureDifference",
    ],
    [
      "no uncertainty",
      { standardUncertainty: undefined },
      "standardUncertainty: undefined is not allowed; allowed: the kind pressureDifference",
    ],
    [
      "a limit of another kind",
      { lowerLimit: psia(115) },
      "lowerLimit: absolutePressure 115 psia is not allowed; allowed: the kind gaugePressure",
    ],
    [
      "an upper limit as a number",
      { upperLimit: 120 },
      "upperLimit: 120 is not allowed; allowed: the kind gaugePressure",
    ],
    [
      "a confidence below even odds",
      { confidence: 0.4 },
      "confidence: 0.4 is not allowed; allowed: at least 0.5 and less than 1",
    ],
    [
      "certainty",
      { confidence: 1 },
      "confidence: 1 is not allowed; allowed: at least 0.5 and less than 1",
    ],
    ["a confidence in per cent", { confidence: 95 }, "confidence: 95 is not allowed"],
    [
      "a confidence that is no number",
      { confidence: Number.NaN },
      "confidence: NaN is not allowed; allowed: a finite number",
    ],
  ])("%s", (_, change, message) => {
    expect(refuse(change)).toThrow(message);
  });

  it("leaves the caller's object as it was", () => {
    const input = Object.freeze({ ...good });
    conformity(input);
    expect(input).toEqual(good);
  });
});

it("refuses a limit from JavaScript that is no quantity rather than leaving it out", () => {
  for (const lowerLimit of [null, 0, "", Number.NaN]) {
    const input = {
      value: volt(10),
      standardUncertainty: volt(1),
      upperLimit: volt(20),
      lowerLimit,
    };
    expect(() => conformity(input as never)).toThrow(/^lowerLimit: /);
  }
  expect(() => conformity(undefined as never)).toThrow(/^input: /);
});
