// What a blank test showed of hoses and gauge is no rise of the system: on a straight line, whose slope is seen at once.
import { degC, liter, micron, micronPerMinute, percent, second } from "hvac-install-math/quantity";
import { acceptancePolicies, assessVacuumDecay } from "hvac-install-math/vacuum-decay";
import { expect, it } from "vitest";
import { analyze } from "../../src/vacuum-decay/analysis.ts";
import { collectAll } from "../../src/vacuum-decay/assess.ts";
import type { Segment } from "../../src/vacuum-decay/collect.ts";
import { createWorkspace } from "../../src/vacuum-decay/workspace.ts";

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
