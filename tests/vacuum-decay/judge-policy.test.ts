// The last reading, the start and the gauge's range against what a policy allows by then, in micron and minutes.
import { describe, expect, it } from "vitest";
import { degC, micron, micronDifference, minute, percent } from "../../src/quantity/index.ts";
import type { Analysis } from "../../src/vacuum-decay/analysis.ts";
import type { Collector } from "../../src/vacuum-decay/collect.ts";
import { judgeGauge, judgePolicy, lastAboveLimit } from "../../src/vacuum-decay/judge-policy.ts";
import {
  acceptancePolicies,
  type Checkpoint,
} from "../../src/vacuum-decay/policies/acceptance-policies.ts";
import { settingsOf } from "../../src/vacuum-decay/settings.ts";
import { model } from "./model.ts";

const pa = (microns: number) => micronDifference(microns).si;
const given = (checkpoints: readonly Checkpoint[], range?: number) =>
  settingsOf({
    ambient: degC(20),
    policy: { ...acceptancePolicies.commonPractice500, checkpoints },
    gauge: { accuracy: percent(10), ...(range && { range: micron(range) }) },
  });
const stretch = (T: number, lastP: number, origin = 300) =>
  ({ last: 60 * T, lastP: pa(lastP), origin: pa(origin) }) as Parameters<typeof lastAboveLimit>[0];

describe("the last reading", () => {
  const two = given([
    { at: minute(10), limit: micron(1000) },
    { at: minute(20), limit: micron(2000) },
  ]);
  const limit = (T: number, p: number, settings = two, step = 0) =>
    lastAboveLimit(stretch(T, p), settings, pa(step)).map(({ reason }) =>
      Math.round((reason.values as { limit: { si: number } }).limit.si / pa(1)),
    );

  it("is held against the checkpoint that was reached last, before the first against that", () => {
    expect([limit(5, 1500), limit(10, 1500), limit(19, 1500)]).toEqual([[1000], [1000], [1000]]);
    expect([limit(20, 1500), limit(30, 2001), limit(5, 999)]).toEqual([[], [2000], []]);
  });

  it("is held against the start and the rise that is allowed", () => {
    const rise = given([{ at: minute(10), rise: micronDifference(200) }]);
    expect([limit(10, 501, rise), limit(10, 499, rise)]).toEqual([[500], []]);
  });

  it("may rise by 10 micron and a step of the gauge where no rise is allowed: common practice", () => {
    const none = given([{ at: minute(10), rise: micronDifference(0) }]);
    expect([limit(10, 316, none, 5), limit(10, 314, none, 5)]).toEqual([[315], []]);
  });
});

describe("the start", () => {
  const codes = (origin: number, confidence = 0.95) => {
    const settings = given([{ at: minute(10), limit: micron(5000) }]);
    const segment = stretch(10, 400, origin);
    const analysis = {
      segment,
      step: 0,
      T: 600,
      first: 0,
      widening: 1,
      components: [model()],
      points: 20,
    };
    const stage = { over: true, confidence, mayFail: true, mayPass: true };
    return judgePolicy(analysis as unknown as Analysis, settings, stage).flatMap(
      ({ outcome, reason, actions = [] }) =>
        outcome === "pass" ? [] : [reason.code, ...actions.map(({ code }) => code)],
    );
  };

  it("misses the target where the gauge's error does not explain it: 1.645 · 10 %/√3 are 9.5 %", () => {
    // 500/(1 − 0.09497) = 552.5 micron
    expect(codes(552)).toEqual([]);
    expect(codes(553)).toEqual(["vacuum-decay.target-missed", "vacuum-decay.evacuate-deeper"]);
    // 2.326 for 99 %: 577.6 micron
    expect([codes(577, 0.99), codes(578, 0.99).length]).toEqual([[], 2]);
  });
});

describe("a gauge over its range", () => {
  const judged = (run: number, range: number, T: number | undefined, checkpoint: Checkpoint) => {
    const settings = given([checkpoint], range);
    const segment = T === undefined ? undefined : stretch(T, 400);
    return judgeGauge({ overRangeRun: run, settings, segment } as Collector).map(
      ({ outcome, actions = [] }) => [outcome, ...actions.map(({ code }) => code.slice(13))],
    );
  };
  const at = minute(10);
  const plain = { at, limit: micron(1000) };
  const zone = { ...plain, failAbove: micron(2000) };

  it("fails where the range reaches above every limit, else asks for a better gauge", () => {
    expect(judged(2, 1001, 5, plain)).toEqual([["fail", "dry-and-repeat"]]);
    expect(judged(2, 999, 5, plain)).toEqual([["inconclusive", "better-gauge"]]);
    expect(judged(2, 1999, 5, zone)).toEqual([["inconclusive", "better-gauge"]]);
    expect(judged(2, 2001, 5, zone)).toEqual([["fail", "dry-and-repeat"]]);
  });

  it("is believed with the second reading in a row, before the hold is over or anything was read", () => {
    expect(judged(1, 2000, 5, plain)).toEqual([]);
    expect(judged(2, 2000, 10, plain)).toEqual([]);
    expect(judged(2, 2000, 9.9, plain)).toHaveLength(1);
    expect(judged(2, 2000, undefined, plain)).toHaveLength(1);
  });
});
