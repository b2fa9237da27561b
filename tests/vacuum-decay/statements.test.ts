// What the verdict tells besides its outcome: figures with their uncertainty, sentences with their figures.
import {
  degC,
  liter,
  mg,
  micron,
  micronDifference,
  micronPerMinute,
  minute,
  percent,
  second,
} from "hvac-install-math/quantity";
import {
  acceptancePolicies,
  assessVacuumDecay,
  createDecayMonitor,
  type DecayReading,
  type VacuumDecayAssessment,
  type VacuumDecayOptions,
  waterSaturationTemperature,
  waterVaporMass,
} from "hvac-install-math/vacuum-decay";
import { describe, expect, it } from "vitest";
import type { Segment } from "../../src/vacuum-decay/collect.ts";
import type { Component } from "../../src/vacuum-decay/curve/component.ts";
import { fitOf } from "../../src/vacuum-decay/curve/decay-curve.ts";
import { random } from "./random.ts";

const log = (pressure: (t: number) => number, until = 900, step = 5): DecayReading[] =>
  Array.from({ length: Math.floor(until / step) + 1 }, (_, i) => ({
    elapsed: second(step * i),
    pressure: micron(pressure(step * i) + ((3 * i) % 7) / 10),
  }));
const options: VacuumDecayOptions = {
  ambient: degC(20),
  volume: liter(3),
  gauge: { accuracy: percent(5), resolution: micronDifference(0.1), range: micron(20_000) },
  policy: acceptancePolicies.commonPractice500,
  isolation: "isolation-valve",
};
const assess = (readings: DecayReading[], more: Partial<VacuumDecayOptions> = {}) =>
  assessVacuumDecay({ ...options, ...more, readings });
const wet = log((t) => 300 - 2000 * Math.expm1(-t / 200), 1800);
/** A figure that these readings tell. */
function known<T>(figure: T | undefined): T {
  if (figure === undefined) throw new Error("the figure is absent");
  return figure;
}
const finding = ({ cautions }: VacuumDecayAssessment, code: string) =>
  cautions.find((one) => one.kind === "finding" && one.code === code);

// What assessVacuumDecay says that it follows, in the order in which it is needed.
it("the sources are that of the policy, then those of the judgment", () => {
  const { sources } = assess(log(() => 300));
  expect(sources[0]).toEqual(acceptancePolicies.commonPractice500.source);
  expect(sources.slice(1).map(({ source }) => source)).toEqual([
    "jcgm-106-2012",
    "burnham-anderson-2002",
    "vacuum-handbook",
    "wagner-pruss-2002",
    "iapws-r14-08",
  ]);
});

describe("what is set aside", () => {
  const spiked = log(() => 300);
  spiked[60] = { elapsed: second(300), pressure: micron(0) };

  it("is counted and listed", () => {
    const result = assess([...spiked, { elapsed: second(-5), pressure: micron(300) }]);
    expect(finding(result, "vacuum-decay.readings-excluded")?.values).toEqual({
      excluded: 2,
      rows: 182,
      why: ["vacuum-decay.exclusion.before-isolation", "vacuum-decay.exclusion.zero"],
    });
    expect(result.excluded.map(({ row, reason: why }) => [row, why])).toEqual([
      [181, "before-isolation"],
      [60, "zero"],
    ]);
    const [early, zero] = result.excluded;
    expect([early?.elapsed.in(second), early?.pressure.in(micron)]).toEqual([-5, 300]);
    expect([zero?.elapsed.in(second), zero?.pressure.in(micron)]).toEqual([300, 0]);
  });
});

describe("the figures", () => {
  it("give the pressure at the end of the hold with the gauge's limits of error", () => {
    const atHoldEnd = known(assess(log((t) => 300 + t / 10)).atHoldEnd);
    expect(atHoldEnd.value.in(micron)).toBeCloseTo(360, 0);
    // JCGM 100:2008, 4.3.7: ±5 % of 360 micron are a standard uncertainty of 5 % / √3
    const u = (0.05 * 360) / Math.sqrt(3);
    expect(atHoldEnd.standardUncertainty.in(micronDifference)).toBeCloseTo(u, 1);
  });

  it("turn a rate into a throughput by the volume, Q = V·dp/dt", () => {
    const result = assess(log((t) => 300 + t));
    const leak = known(result.leak);
    const Q = (rate: number) => rate * liter(3).si;
    expect(result.leakThroughput?.value.si).toBeCloseTo(Q(leak.value.si), 12);
    expect(result.leakThroughput?.standardUncertainty.si).toBeCloseTo(
      Q(leak.standardUncertainty.si),
      12,
    );
    expect(result.smallestLeakThroughput?.si).toBeCloseTo(Q(known(result.smallestLeak).si), 12);
    expect(leak.value.in(micronPerMinute)).toBeCloseTo(60, 0);
    // JCGM 100:2008, 4.3.7, for the scale; the fit itself is some hundred times better
    const relative = leak.standardUncertainty.si / leak.value.si;
    expect(relative).toBeCloseTo(0.05 / Math.sqrt(3), 2);
    const [low, high] = known(result.leakInterval);
    // 95 % two-sided, in the logistic stand-in for the normal distribution (within 0.01 in probability)
    expect(low.in(micronPerMinute)).toBeCloseTo(60 * (1 - 2.15 * relative), 0);
    expect(high.in(micronPerMinute)).toBeCloseTo(60 * (1 + 2.15 * relative), 0);
    const unknown = assess(
      log((t) => 300 + t),
      { volume: undefined } as never,
    );
    expect([unknown.leakThroughput, unknown.smallestLeakThroughput]).toEqual([
      undefined,
      undefined,
    ]);
  });

  it("tell of the plateau what it means for water", () => {
    const { plateau } = assess(wet);
    const p = plateau?.pressure.value as NonNullable<typeof plateau>["pressure"]["value"];
    expect(p.in(micron)).toBeCloseTo(2300, -2); // the time constants of the grid either side of 200 s are averaged
    expect(plateau?.pressure.standardUncertainty.in(micronDifference)).toBeCloseTo(
      (0.05 * p.in(micron)) / Math.sqrt(3),
      -1,
    );
    expect(plateau?.saturationTemperature.si).toBeCloseTo(waterSaturationTemperature(p).si, 6);
    const rise = { rise: micronDifference(p.in(micron) - 300), volume: liter(3) };
    const expected = waterVaporMass({ ...rise, temperature: degC(20) });
    expect(plateau?.waterMass?.in(mg)).toBeCloseTo(expected.in(mg), 2);
    expect(assess(wet, { volume: undefined } as never).plateau?.waterMass).toBeUndefined();
  });

  it("have a plateau only where there is moisture", () => {
    expect(assess(log((t) => 300 + t)).plateau).toBeUndefined();
    expect(assess(log(() => 300)).plateau).toBeUndefined();
    // a leak in whose short watch some curves level off far ahead
    const bent = assess(log((t) => 300 + t / 2 - 200 * Math.expm1(-t / 400), 300, 10));
    expect([bent.cause, bent.plateau]).toEqual(["leak", undefined]);
  });

  it("share the evidence between leak, water and either", () => {
    const shares = (pressure: (t: number) => number) => known(assess(log(pressure)).shares);
    expect(shares(() => 300).either).toBeLessThan(0.1);
    expect(shares((t) => 300 + t).leak).toBeGreaterThan(0.95);
    expect(shares((t) => 300 - 2000 * Math.expm1(-t / 183)).moisture).toBeGreaterThan(0.95);
  });

  it("count the evidence from isolation, or from the last step", () => {
    expect(assess(log(() => 300)).evidence.in(minute)).toBe(15);
    expect(assess(log((t) => (t < 300 ? 320 : 600), 1200)).evidence.in(minute)).toBe(15);
    const { steps } = assess(log((t) => (t < 300 ? 320 : 600), 1200));
    expect(steps.map(({ elapsed }) => elapsed.in(second))).toEqual([300]);
  });
});

describe("the best single model", () => {
  /** Readings with normal scatter of half a micron, which no shape follows. */
  const scattered = (pressure: (t: number) => number, until = 900) => {
    const rng = random(5);
    return log((t) => pressure(t) + 0.5 * rng.normal(), until);
  };

  it("is a line for a leak, without a shape, over the whole log", () => {
    const { fit } = assess(scattered((t) => 300 + t));
    expect(fit?.line).toBe(true);
    expect([fit?.shape, fit?.timeConstant]).toEqual([undefined, undefined]);
    expect([fit?.from.in(second), fit?.to.in(second)]).toEqual([0, 900]);
  });

  it("levels off with its time constant for water", () => {
    const { fit } = assess(scattered((t) => 300 - 2000 * Math.expm1(-t / 183), 1800));
    expect([fit?.shape, fit?.line]).toEqual(["saturating", false]);
    // 60 s · 1.25⁵ is on the grid
    expect(fit?.timeConstant?.in(second)).toBeCloseTo(60 * 1.25 ** 5, 6);
  });

  it("has an equalization where the log begins with one", () => {
    // 8 s is on the grid
    const { fit } = assess(log((t) => 300 - 80 * Math.expm1(-t / 8), 900, 2));
    expect(fit).toMatchObject({ line: false, equalization: true });
    const one = (fast: number) =>
      fitOf({ fast, shape: -1 } as Component, { start: 0, last: 60 } as Segment).equalization;
    expect([one(-1), one(0), one(3)]).toEqual([false, true, true]);
  });

  it("is of the last stretch where a valve was opened", () => {
    const { fit } = assess(log((t) => (t < 300 ? 320 : 600), 1200));
    expect([fit?.from.in(second), fit?.to.in(second)]).toEqual([300, 1200]);
  });
});

describe("the points behind the fit", () => {
  it("are the readings' means over the bins, the last one included", () => {
    const monitor = createDecayMonitor(options);
    expect(monitor.points()).toEqual([]);
    for (const one of log((t) => 300 + t, 52, 1)) monitor.add(one);
    const points = monitor.points();
    // 2 s bins to 30 s, then 5 s bins: 15 + 5 with the open one of 50 to 52 s
    expect(points).toHaveLength(20);
    const at = (i: number) => [points[i]?.elapsed.in(second), points[i]?.pressure.in(micron)];
    expect(at(0)[0]).toBeCloseTo(0.5, 9);
    expect(at(0)[1]).toBeCloseTo(300.5 + 0.15, 9);
    expect(at(15)[0]).toBeCloseTo(32, 9);
    expect(at(15)[1]).toBeCloseTo(332 + (0.6 + 0.2 + 0.5 + 0.1 + 0.4) / 5, 9);
    expect(at(19)[0]).toBeCloseTo(51, 9);
    expect(at(19)[1]).toBeCloseTo(351 + (0.3 + 0.6 + 0.2) / 3, 9);
  });

  it("start anew after a step, at their own time", () => {
    const monitor = createDecayMonitor(options);
    for (const one of log((t) => (t < 300 ? 320 : 600), 1200)) monitor.add(one);
    const [first] = monitor.points();
    expect(first?.elapsed.in(second)).toBeCloseTo(300, 9);
    expect(first?.pressure.in(micron)).toBeCloseTo(600, -1);
  });
});
