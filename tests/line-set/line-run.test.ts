import { assessLineRun, type LineRunInput } from "hvac-install-math/line-set";
import { ft, m, mL, psi } from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import { inEnglish, sentences } from "./in-english.ts";

const run: LineRunInput = {
  length: m(20),
  lift: m(8),
  outdoorUnit: "above",
  bends: 6,
  limits: { maximumLength: m(25), minimumLength: m(3), maximumLift: m(10), maximumBends: 10 },
};
const outcome = (change: object) => assessLineRun({ ...run, ...change } as LineRunInput).outcome;

describe("assessLineRun", () => {
  it("passes a run that keeps every limit of the manual", () => {
    const result = assessLineRun(run);
    expect(result.outcome).toBe("pass");
    expect(result.reasons.map(({ code }) => code)).toEqual([
      "line-set.within-maximum",
      "line-set.above-minimum",
      "line-set.within-maximum",
      "line-set.bends-within-maximum",
    ]);
    expect(result.cautions.map(({ code }) => code)).toContain("safety.work-at-height");
  });

  it("puts the broken limit first", () => {
    const result = assessLineRun({ ...run, lift: m(12) });
    expect(result.outcome).toBe("fail");
    expect(inEnglish(result.reasons[0])).toBe("Height difference 12 m: above the 10 m maximum.");
    expect(sentences(result.actions)).toEqual([
      "Reduce the height difference to 10 m or less, or install a unit that allows it.",
    ]);
  });

  it("fails too short, too long and too many bends", () => {
    expect(outcome({ length: m(2), lift: m(1) })).toBe("fail");
    expect(outcome({ length: ft(83) })).toBe("fail");
    expect(outcome({ length: ft(82) })).toBe("pass");
    expect(outcome({ bends: 11 })).toBe("fail");
    expect(outcome({ bends: 10 })).toBe("pass");
    expect(outcome({ bends: undefined })).toBe("inconclusive");
    const said = (bends: number | undefined) =>
      sentences(assessLineRun({ ...run, bends } as LineRunInput).reasons);
    expect(said(6)).toContain("6 bends: within the 10 allowed.");
    expect(said(1)).toContain("1 bend: within the 10 allowed.");
    expect(said(11)).toContain("11 bends: above the 10 allowed.");
    expect(said(undefined)).toContain("The bends were not counted; at most 10 allowed.");
  });

  it("counts bends as length where the manual gives their equivalent", () => {
    const limits = { ...run.limits, bendEquivalentLength: m(1) };
    const result = assessLineRun({ ...run, limits });
    expect(result.equivalentLength.toString()).toBe("26 m");
    expect(result.outcome).toBe("fail");
  });

  it("takes the lift limit that belongs to the unit's place", () => {
    const limits = { ...run.limits, maximumLiftOutdoorAbove: m(5) };
    expect(outcome({ limits })).toBe("fail");
    expect(outcome({ limits, outdoorUnit: "below" })).toBe("pass");
  });

  // A tape good to ± 0.3 m: u = 0.3/√3 m, U = 0.35 m, below 5 % of each limit. JCGM 106:2012, 8.2: what is measured
  // within the limit is accepted; 8.3.3: what is beyond it by less than 1.645 · u = 0.28 m is not rejected yet.
  describe("with a tape", () => {
    const standardUncertainty = m(0.3 / Math.sqrt(3));
    const taped = (change: object) => outcome({ ...change, standardUncertainty });
    it("passes at the limit and within it", () => {
      expect(taped({ length: m(25) })).toBe("pass");
      expect(taped({ length: m(24.9) })).toBe("pass");
      expect(taped({ length: m(24) })).toBe("pass");
      expect(taped({ lift: m(10) })).toBe("pass");
      expect(
        inEnglish(assessLineRun({ ...run, length: m(25), standardUncertainty }).reasons[0]),
      ).toBe("Length 25 m ± 0.35 m: as measured, within the 25 m allowed.");
    });
    it("asks to measure again just beyond the limit, and fails beyond the tape's error", () => {
      expect(taped({ length: m(25.01) })).toBe("inconclusive");
      expect(taped({ length: m(25.27) })).toBe("inconclusive");
      expect(taped({ length: m(25.3) })).toBe("fail"); // the limit and all that the tape may err
      expect(taped({ length: m(27) })).toBe("fail");
      expect(taped({ lift: m(10.1) })).toBe("inconclusive");
      expect(taped({ lift: m(10.3) })).toBe("fail");
    });
    it("keeps the guard bands where the tape errs by more than 5 % of the limit", () => {
      const coarse = (length: number) =>
        outcome({ length: m(length), standardUncertainty: m(0.7) });
      expect([coarse(25), coarse(24), coarse(23.8)]).toEqual([
        "inconclusive",
        "inconclusive",
        "pass",
      ]);
    });
    it("passes a factory-made line set of the longest length, whatever the tape", () => {
      const set = { length: ft(25), lift: ft(6), limits: { maximumLength: ft(25) } };
      const poor = { ...set, standardUncertainty: ft(1) };
      expect(outcome(poor)).toBe("inconclusive");
      expect(outcome({ ...poor, lengthIs: "nominal" })).toBe("pass");
      expect(outcome({ ...poor, length: ft(35), lengthIs: "nominal" })).toBe("fail");
      const high = { ...poor, lengthIs: "nominal", limits: { ...set.limits, maximumLift: ft(6) } };
      expect(outcome(high)).toBe("inconclusive"); // the lift was taped all the same
    });
  });

  it("counts oil traps only where vapor rises far", () => {
    const oilTraps = { above: m(10), spacing: m(6) };
    const limits = { maximumLength: m(40), oilTraps };
    const traps = (lift: number, outdoorUnit: LineRunInput["outdoorUnit"] = "above") =>
      assessLineRun({ length: m(30), lift: m(lift), outdoorUnit, limits }).oilTraps;
    expect([traps(10), traps(11), traps(12), traps(12.1), traps(18), traps(20)]).toEqual([
      0, 1, 1, 2, 2, 3,
    ]);
    expect(traps(20, "below")).toBe(0);
  });

  it("adds oil for every started step beyond the factory's oil", () => {
    const extraOil = { beyond: m(10), per: m(5), volume: mL(5) };
    const limits = { maximumLength: m(40), extraOil };
    const oil = (length: number) =>
      assessLineRun({ length: m(length), lift: m(0), outdoorUnit: "level", limits }).extraOil.in(
        mL,
      );
    expect([oil(5), oil(10), oil(10.1), oil(15), oil(15.1)]).toEqual([0, 0, 5, 5, 10]);
  });

  it("does not pass a length whose bends count but were not counted", () => {
    const limits = { maximumLength: m(25), bendEquivalentLength: m(0.5) };
    const { bends: _, ...rest } = run;
    const uncounted = assessLineRun({ ...rest, limits });
    expect(uncounted.outcome).toBe("inconclusive");
    expect(sentences(uncounted.reasons)).toContain(
      "The bends were not counted; each adds 0.5 m to the equivalent length.",
    );
    expect(uncounted.reasons.map(({ code }) => code)).toContain("line-set.bend-length-not-counted");
    expect(uncounted.actions?.map(({ code }) => code)).toContain("line-set.count-bends");
    expect(assessLineRun({ ...run, bends: 0, limits }).outcome).toBe("pass");
  });

  it("is not too long by a hair of binary arithmetic", () => {
    const limits = { maximumLength: m(0.3), bendEquivalentLength: m(0.1) };
    const full = { ...run, length: m(0.1), lift: m(0), bends: 2, limits };
    expect(0.1 + 2 * 0.1).toBeGreaterThan(0.3);
    expect(assessLineRun(full).outcome).toBe("pass");
    expect(0.7 + 0.1).toBeLessThan(0.8);
    const least = { length: m(0.7 + 0.1), lift: m(0), limits: { minimumLength: m(0.8) } };
    expect(outcome(least)).toBe("pass");
  });

  it("takes a run that goes straight up", () => {
    expect(outcome({ length: m(8), lift: m(8) })).toBe("pass");
  });

  it("says what it rests on", () => {
    const { assumptions, cautions, sources } = assessLineRun(run);
    expect(assumptions.map(({ code }) => code)).toEqual(["line-set.limits-of-the-manual"]);
    expect(cautions.map(({ code }) => code)).toEqual([
      "safety.work-at-height",
      "safety.others-govern",
    ]);
    expect(sources.map(({ source }) => source)).toEqual(["manufacturer-manuals", "jcgm-106-2012"]);
  });

  it("names what it cannot use", () => {
    const bad = (change: object) => () => outcome(change);
    expect(bad({ limits: {} })).toThrow(
      /^limits: nothing is not allowed; allowed: one of maximumLength/,
    );
    expect(bad({ limits: undefined })).toThrow(/^limits: nothing/);
    expect(bad({ lift: m(21) })).toThrow(/^lift: 21 m is not allowed; allowed: at most the length/);
    expect(bad({ lift: m(-1) })).toThrow(/^lift: -1 m/);
    expect(bad({ lengthIs: "guessed" })).toThrow(/^lengthIs:/);
    expect(bad({ outdoorUnit: "roof" })).toThrow(/^outdoorUnit:/);
    expect(bad({ bends: Number.NaN })).toThrow(/^bends: NaN/);
    expect(bad({ bends: -1 })).toThrow(/^bends: -1/);
    expect(bad({ bends: 1.5 })).toThrow(/^bends: 1.5 is not allowed; allowed: a whole number/);
    expect(bad({ limits: { maximumBends: 9.5 } })).toThrow(/^limits\.maximumBends: 9.5 .*whole/);
    expect(bad({ limits: { maximumBends: -1 } })).toThrow(/^limits\.maximumBends: -1 .*at least 0/);
    expect(bad({ limits: { maximumLength: psi(3) } })).toThrow(/^limits\.maximumLength:/);
    expect(bad({ limits: { ...run.limits, oilTraps: { above: m(10), spacing: m(0) } } })).toThrow(
      /^limits\.oilTraps\.spacing: 0 m/,
    );
    expect(bad({ limits: { ...run.limits, extraOil: "none" } })).toThrow(/^limits\.extraOil: /);
    const oil = { beyond: m(10), per: m(5), volume: mL(5) };
    const withOil = (change: object) =>
      bad({ limits: { ...run.limits, extraOil: { ...oil, ...change } } });
    expect(withOil({ per: m(0) })).toThrow(/^limits\.extraOil\.per: 0 m/);
    expect(withOil({ volume: mL(-5) })).toThrow(/^limits\.extraOil\.volume: -5 mL/);
    // A limit that does not apply here is held to be one all the same.
    const unused = { maximumLift: psi(3), maximumLiftOutdoorAbove: m(15) };
    expect(bad({ limits: unused })).toThrow(/^limits\.maximumLift: /);
    const other = { maximumLift: m(15), maximumLiftOutdoorAbove: psi(3) };
    expect(bad({ limits: other, outdoorUnit: "below" })).toThrow(
      /^limits\.maximumLiftOutdoorAbove: /,
    );
    expect(bad({ standardUncertainty: m(-1) })).toThrow(/standardUncertainty/);
  });
});
