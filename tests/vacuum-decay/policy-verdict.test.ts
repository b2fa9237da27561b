// The decision rule on one model whose figures are given: JCGM 106:2012, 8.3.2 and 8.3.3, one-sided.
import { describe, expect, it } from "vitest";
import { overallOutcome } from "../../src/assessment/index.ts";
import {
  degC,
  micron,
  micronDifference,
  minute,
  percent,
  type Quantity,
} from "../../src/quantity/index.ts";
import type { Analysis } from "../../src/vacuum-decay/analysis.ts";
import type { Component } from "../../src/vacuum-decay/curve/component.ts";
import type { VacuumGauge } from "../../src/vacuum-decay/gauge.ts";
import { judgePolicy } from "../../src/vacuum-decay/judge-policy.ts";
import {
  acceptancePolicies,
  type Checkpoint,
} from "../../src/vacuum-decay/policies/acceptance-policies.ts";
import { judgeCheckpoint } from "../../src/vacuum-decay/policy-verdict.ts";
import { settingsOf } from "../../src/vacuum-decay/settings.ts";
import { model } from "./model.ts";

const pa = (microns: number) => micronDifference(microns).si;
/** 95 % one-sided in the logistic stand-in for the normal distribution, see mixture.test.ts. */
const z = Math.log(19) / 1.702;

interface Given {
  readonly checkpoints: readonly Checkpoint[];
  readonly gauge?: VacuumGauge;
  readonly T?: number;
  readonly first?: number;
  readonly step?: number;
  readonly mayFail?: boolean;
  readonly mayPass?: boolean;
}

/** Started at 300 micron; the checkpoint is 10 minutes after isolation. */
function situation(
  one: Component,
  {
    checkpoints,
    gauge = { accuracy: percent(0) },
    T = 600,
    first = 0,
    step = 0,
    mayFail = true,
    mayPass = true,
  }: Given,
) {
  const policy = { ...acceptancePolicies.commonPractice500, checkpoints };
  const settings = settingsOf({ ambient: degC(20), gauge, policy });
  const stage = { over: T >= 600, confidence: 0.95, mayFail, mayPass };
  const segment = { origin: pa(300), last: T, lastP: pa(300) };
  const seen = { components: [one], segment, points: 100, T, first, step, widening: 1 };
  return [seen as unknown as Analysis, settings, stage] as const;
}
function verdict(one: Component, given: Given) {
  const [analysis, settings, stage] = situation(one, given);
  const kept = settings.checkpoints.map((checkpoint) =>
    judgeCheckpoint(analysis, checkpoint, settings, stage),
  );
  return {
    outcome: overallOutcome(kept.map(({ outcome }) => outcome)),
    reasons: kept.map(({ reason }) => reason),
  };
}
function judged(one: Component, given: Given) {
  const { outcome, reasons } = verdict(one, given);
  return [outcome, reasons[0]?.code.replace("vacuum-decay.", "")];
}
const at = minute(10);
const limit = { checkpoints: [{ at, limit: micron(500) }] };
const rise = { checkpoints: [{ at, rise: micronDifference(200) }] };
const none = { checkpoints: [{ at, rise: micronDifference(0) }] };
const risen = (microns: number, u = 10) => model({ ahead: pa(microns), aheadU: pa(u) });

describe("a ceiling", () => {
  it("is kept when the guarded value is below it, broken when it is above, else too close", () => {
    expect(judged(risen(200 - z * 10 - 0.1), limit)).toEqual(["pass", "pressure-within-limit"]);
    expect(judged(risen(200 - z * 10 + 0.1), limit)).toEqual([
      "inconclusive",
      "pressure-too-close",
    ]);
    expect(judged(risen(200 + z * 10 - 0.1), limit)).toEqual([
      "inconclusive",
      "pressure-too-close",
    ]);
    expect(judged(risen(200 + z * 10 + 0.1), limit)).toEqual(["fail", "pressure-above-limit"]);
  });

  it("guards by the limits of error over √3 of the reading and the step over √12", () => {
    // JCGM 100:2008, 4.3.7 and F.2.2.1
    const gauge = { accuracy: percent(10) };
    const u = Math.hypot((0.1 * 400) / Math.sqrt(3), 30 / Math.sqrt(12));
    const open = (most: number) =>
      judged(risen(100, 0), { checkpoints: [{ at, limit: micron(most) }], gauge, step: pa(30) });
    expect(open(400 + z * u + 0.5)).toEqual(["pass", "pressure-within-limit"]);
    expect(open(400 + z * u - 0.5)).toEqual(["inconclusive", "pressure-too-close"]);
    expect(open(400 - z * u - 0.5)).toEqual(["fail", "pressure-above-limit"]);
  });

  it("fails only above the doubtful zone that the policy names", () => {
    const zone = { checkpoints: [{ at, limit: micron(500), failAbove: micron(600) }] };
    expect(judged(risen(250, 1), zone)).toEqual(["inconclusive", "pressure-too-close"]);
    expect(judged(risen(299, 1), zone)).toEqual(["inconclusive", "pressure-too-close"]);
    expect(judged(risen(303, 1), zone)).toEqual(["fail", "pressure-above-limit"]);
  });

  it("is judged at its own time where it is not the last", () => {
    const two = {
      checkpoints: [
        { at: minute(5), limit: micron(340) },
        { at, limit: micron(500) },
      ],
    };
    // 10 micron a minute: 350 after five minutes, 400 after ten
    const line = model({ line: true, slope: pa(10) / 60, ahead: pa(100) });
    expect(judged(line, two)).toEqual(["fail", "pressure-above-limit"]);
    expect(judged({ ...line, slope: pa(7) / 60 }, two)[0]).toBe("pass");
  });

  it("waits for the end of the hold", () => {
    const early = { ...limit, T: 599, mayPass: false, mayFail: false };
    expect(judged(risen(0), early)).toEqual(["inconclusive", "pressure-forecast"]);
    expect(judged(risen(900), early)).toEqual(["inconclusive", "pressure-forecast"]);
    expect(judged(risen(900), { ...early, mayFail: true })).toEqual([
      "fail",
      "pressure-above-limit",
    ]);
    expect(judged(risen(0), { ...early, mayPass: true })).toEqual([
      "pass",
      "pressure-within-limit",
    ]);
    expect(judged(risen(0), { ...early, T: 600 })).toEqual(["inconclusive", "pressure-too-close"]);
  });
});

describe("a rise", () => {
  it("is kept or broken like a ceiling, whatever the start", () => {
    expect(judged(risen(200 - z * 10 - 0.1), rise)).toEqual(["pass", "rise-within-limit"]);
    expect(judged(risen(200 - z * 10 + 0.1), rise)).toEqual(["inconclusive", "rise-too-close"]);
    expect(judged(risen(200 + z * 10 + 0.1), rise)).toEqual(["fail", "rise-above-limit"]);
  });

  it("has two ends, each with the step of the display", () => {
    const gap = (z * 30) / Math.sqrt(6);
    expect(judged(risen(200 - gap - 0.1, 0), { ...rise, step: pa(30) })[0]).toBe("pass");
    expect(judged(risen(200 - gap + 0.1, 0), { ...rise, step: pa(30) })[0]).toBe("inconclusive");
  });

  it("counts from isolation: what leak and water made before the first reading, not an equalization", () => {
    // 12 micron a minute for a minute before the first reading are part of the rise
    const leak = model({ line: true, slope: pa(12) / 60, ahead: pa(120) });
    const most = (microns: number) => ({
      checkpoints: [{ at, rise: micronDifference(microns) }],
      first: 60,
    });
    expect(judged(leak, most(120.1))[0]).toBe("pass");
    expect(judged(leak, most(119.9))[0]).toBe("fail");
    // a falling line adds nothing
    const falling = model({ line: true, slope: -pa(12) / 60, ahead: -pa(120) });
    expect(judged(falling, most(0.1))[0]).toBe("pass");
    // water: 100·(1 − e^(−t/60)), of which 63 rose in the first minute
    const end = pa(100) * -Math.expm1(-10);
    const water = model({ shape: 0, tau: 60, amplitude: pa(100), ahead: end });
    expect(judged(water, most(100.1))[0]).toBe("pass");
    expect(judged(water, most(99.9))[0]).toBe("fail");
    // an equalization of 40 micron that is over after a minute, seen by nobody
    const equalised = model({ fast: 0, fast1: pa(40), ahead: pa(40) });
    expect(judged(equalised, most(0.1))[0]).toBe("pass");
  });
});

describe("no rise at all", () => {
  const step = { accuracy: percent(0), resolution: micronDifference(5) };

  it("is answered with one step of the gauge and up to 10 micron of uncertainty", () => {
    const u = (most: number) => most / z;
    expect(judged(risen(8, u(4)), { ...none, gauge: step })).toEqual(["pass", "rise-within-limit"]);
    expect(judged(risen(10, u(4)), { ...none, gauge: step })).toEqual([
      "inconclusive",
      "rise-too-close",
    ]);
    expect(judged(risen(14, u(4)), { ...none, gauge: step })).toEqual(["fail", "rise-above-limit"]);
    // 12 micron of uncertainty count as 10
    expect(judged(risen(14.5, u(12)), { ...none, gauge: step })[0]).toBe("pass");
    expect(judged(risen(15.5, u(12)), { ...none, gauge: step })[0]).toBe("inconclusive");
  });

  it("is not proven where the uncertainty is above the step and 10 micron", () => {
    const u = (most: number) => most / z;
    expect(judged(risen(0, u(14.5)), { ...none, gauge: step })[0]).toBe("pass");
    expect(judged(risen(0, u(15.5)), { ...none, gauge: step })[0]).toBe("inconclusive");
  });

  it("takes 1 micron for the step of a gauge that states none", () => {
    expect(judged(risen(0.9, 0), none)[0]).toBe("pass");
    expect(judged(risen(1.1, 0), none)[0]).toBe("fail");
  });
});

it("fails when one checkpoint fails, and is open when one is open", () => {
  const both = (microns: number) => ({
    checkpoints: [
      { at: minute(5), limit: micron(microns) },
      { at, limit: micron(500) },
    ],
  });
  const line = model({ line: true, slope: pa(10) / 60, ahead: pa(100) });
  expect(judged(line, both(349))[0]).toBe("fail");
  expect(judged(line, both(351))[0]).toBe("pass");
  expect(judged({ ...line, aheadU: pa(90) }, both(351))[0]).toBe("inconclusive");
});

it.each([
  ["a ceiling", limit, 400, 500],
  ["a rise", rise, 100, 200],
] as const)("tells of %s when, how much and how sure", (_, given, value, most) => {
  const values = verdict(risen(100), given).reasons[0]?.values as unknown as Record<
    string,
    Quantity<"pressureDifference">
  >;
  const si = (name: string) => values[name]?.si;
  expect(si("at")).toBe(600);
  expect(si("value")).toBeCloseTo(pa(value), 9);
  expect(si("limit")).toBeCloseTo(pa(most), 9);
  expect(si("low")).toBeCloseTo(pa(value - z * 10), 4);
  expect(si("high")).toBeCloseTo(pa(value + z * 10), 4);
});

// A gauge is not bought where ten minutes more would do, and nobody waits where only a better gauge can tell.
describe("what to do next", () => {
  const advice = (one: Component, given: Given) =>
    judgePolicy(...situation(one, given)).flatMap(({ actions = [] }) => actions);
  const codes = (one: Component, given: Given) =>
    advice(one, given).map(({ code }) => code.replace("vacuum-decay.", ""));

  it("is to watch until the end of the hold before it is over", () => {
    const early = { ...limit, T: 180, mayPass: false, mayFail: false };
    expect(codes(risen(0), early)).toEqual(["watch-longer"]);
    expect(advice(risen(0), early)[0]?.values).toMatchObject({ duration: minute(7) });
  });

  it("is a better gauge where the hold is over and the figure lies on the limit", () => {
    expect(codes(risen(200), limit)).toEqual(["better-gauge"]);
  });

  it("is to dry and repeat where the limit is broken, and nothing where it is kept", () => {
    expect(codes(risen(300), limit)).toEqual(["dry-and-repeat"]);
    expect(codes(risen(100), limit)).toEqual([]);
  });
});
