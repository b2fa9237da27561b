// What few readings and a blank test make of the figures: against tables, and on a straight line of a known slope.
import {
  degC,
  liter,
  micron,
  micronPerMinute,
  minute,
  pascalAbsolute,
  percent,
  second,
} from "hvac-install-math/quantity";
import { acceptancePolicies, assessVacuumDecay } from "hvac-install-math/vacuum-decay";
import { expect, it } from "vitest";
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

it.each([
  [0, 8],
  [5, 3],
  [2, 6],
])("a blank test that rose by %d micron a minute in the same volume leaves %d", (blank, left) => {
  const given = { ...input, blankTest: { rate: micronPerMinute(blank), volume: liter(3) } };
  const log = collectAll(given);
  const found = analyze(log, log.segment as Segment, createWorkspace());
  expect((found?.endRate.mean ?? 0) / micronPerMinute.scale).toBeCloseTo(left, 0);
  expect((found?.leak.mean ?? 0) / micronPerMinute.scale).toBeCloseTo(left, 0);
  expect(assessVacuumDecay(given).leak?.value.in(micronPerMinute)).toBeCloseTo(left, 0);
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
