// What few readings and a blank test make of the figures: against tables, and on a straight line of a known slope.
import {
  degC,
  liter,
  micron,
  micronDifference,
  micronPerMinute,
  minute,
  pascalAbsolute,
  percent,
  second,
} from "hvac-install-math/quantity";
import {
  acceptancePolicies,
  assessVacuumDecay,
  type VacuumDecayInput,
} from "hvac-install-math/vacuum-decay";
import { describe, expect, it } from "vitest";
import { analyze, wideningOf } from "../../src/vacuum-decay/analysis.ts";
import { collectAll } from "../../src/vacuum-decay/assess.ts";
import type { Segment } from "../../src/vacuum-decay/collect.ts";
import { createWorkspace } from "../../src/vacuum-decay/curve/workspace.ts";

/** A line of 8 micron a minute for a quarter of an hour. */
const input = {
  readings: Array.from({ length: 91 }, (_, i) => ({
    elapsed: second(10 * i),
    pressure: micron(300 + (80 * i) / 60 + ((3 * i) % 7) / 10),
  })),
  ambient: degC(20),
  volume: liter(3),
  gauge: { accuracy: percent(0) },
  policy: acceptancePolicies.commonPractice500,
};

const analyzed = (given: VacuumDecayInput) => {
  const log = collectAll(given);
  const found = analyze(log, log.segment as Segment, createWorkspace());
  if (!found) throw new Error("too few readings to fit");
  return found;
};

it.each([
  [0, 8],
  [5, 3],
  [2, 6],
])("a blank test that rose by %d micron a minute in the same volume leaves %d", (blank, left) => {
  const given = { ...input, blankTest: { rate: micronPerMinute(blank), volume: liter(3) } };
  const found = analyzed(given);
  expect(found.endRate.mean / micronPerMinute.scale).toBeCloseTo(left, 0);
  expect(found.leak.mean / micronPerMinute.scale).toBeCloseTo(left, 0);
  expect(assessVacuumDecay(given).leak?.value.in(micronPerMinute)).toBeCloseTo(left, 0);
});

it("a rise at the end is known within the gauge's scale and what walls give off", () => {
  // JCGM 100:2008, 4.3.7: 10 % / √3 of 8 micron/min, and 4 micron in a quarter of an hour: 0.46 and 0.27 micron/min
  const { endRate, amounts } = analyzed({ ...input, gauge: { accuracy: percent(10) } });
  expect(endRate.u / micronPerMinute.scale).toBeCloseTo(Math.hypot(0.46, 0.27), 1);
  // 300 micron and 5 % of the 120 that rose: common practice, no source
  expect(amounts.water / micron.scale).toBeCloseTo(300 + 0.05 * 120, 0);
});

describe("few readings", () => {
  /** Every two minutes, hoses that let nothing in, a display of steps of 1 micron or more. */
  const few = (pressures: readonly number[], step = 1) =>
    analyzed({
      ...input,
      readings: pressures.map((p, i) => ({ elapsed: minute(2 * i), pressure: micron(p) })),
      gauge: { accuracy: percent(0), resolution: micronDifference(step) },
      blankTest: { rate: micronPerMinute(0), volume: liter(1) },
    }).odds;

  it("exclude nothing where they rose by as much as water that matters, or still rise as a leak does", () => {
    // 300 micron and 5 % of the rise; 5 micron a minute over the second half: common practice, no source
    expect(few([101, 407, 409, 411, 412]).bad).toBe(0);
    expect(few([101, 450, 452, 454, 455]).bad).toBe(0.5);
    expect(few([101, 102, 103, 111, 120]).bad).toBe(0);
    expect(few([101, 102, 103, 113, 124]).bad).toBe(0.5);
  });

  it("prove something bad where the second half rose by more than a sound system and a step make", () => {
    // half of an equalization of 300 micron, and 6 micron a minute for 4 minutes: 174 micron
    const proven = (risen: number) => few([301, 301, 301, 351, 301 + risen], 25).provenBad;
    expect([proven(197), proven(201)]).toEqual([0, 1]);
  });
});

// 350 micron within seconds, then nothing: the drop over the hoses, of which 300 are usual (common practice, no source)
it("an equalization of more than the usual is open, and no moisture", () => {
  const readings = Array.from({ length: 91 }, (_, i) => ({
    elapsed: second(10 * i),
    pressure: micron(100 - 350 * Math.expm1(-2 * i)),
  }));
  const { cause, shares } = assessVacuumDecay({ ...input, readings });
  expect(cause).toBe("not-determined");
  expect(shares?.moisture).toBeLessThan(0.01);
});

it("few readings widen what is known of their scatter as the Student distribution does", () => {
  // t at one-sided 95 %: Abramowitz & Stegun (1964), table 26.10, beside 1.6449 of the normal distribution
  const table = [
    [3, 2.353, 0.02],
    [5, 2.015, 0.006],
    [10, 1.812, 0.001],
    [30, 1.697, 0.001],
    [120, 1.658, 0.001],
  ] as const;
  for (const [freedom, t, within] of table) {
    expect(Math.abs((wideningOf(freedom) * 1.6449) / t - 1), `${freedom}`).toBeLessThan(within);
  }
});

it("shapes are told apart from eight readings on, and seven of the same line name no leak", () => {
  // eight: common practice, no source. 80 micron/min for 14 min, sixteen times what matters
  const of = (rows: number) =>
    assessVacuumDecay({
      ...input,
      readings: Array.from({ length: rows }, (_, i) => ({
        elapsed: minute(2 * i),
        pressure: micron(300 + 160 * i),
      })),
    });
  expect(of(7)).toMatchObject({ outcome: "fail", cause: "not-determined" });
  expect(of(8)).toMatchObject({ outcome: "fail", cause: "leak" });
});

// The vapor pressure of water is 611 Pa at 0 °C and 872 Pa at 5 °C (IAPWS-95). Wet tubing that is no warmer cannot make
// the rise: not all of it is water.
it("a rise toward 1500 Pa at 0 °C is not taken for water alone, however well it bends", () => {
  const readings = Array.from({ length: 61 }, (_, i) => ({
    elapsed: minute(i / 2),
    pressure: pascalAbsolute(1500 - 800 * Math.exp(-i / 40)),
  }));
  const { reasons } = assessVacuumDecay({
    readings,
    ambient: degC(0),
    policy: acceptancePolicies.guideSpec15182,
  });
  expect(reasons.map(({ code }) => code)).toContain("vacuum-decay.leak-proven");
});
