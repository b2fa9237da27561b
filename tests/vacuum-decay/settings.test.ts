// What is taken from the options, what is assumed without them, and what a plateau means with them.
import { describe, expect, it } from "vitest";
import {
  degC,
  liter,
  micron,
  micronDifference,
  micronPerMinute,
  paM3PerS,
  percent,
} from "../../src/quantity/index.ts";
import type { Segment } from "../../src/vacuum-decay/collect.ts";
import { plateauOf } from "../../src/vacuum-decay/plateau.ts";
import { acceptancePolicies } from "../../src/vacuum-decay/policies.ts";
import { settingsOf, type VacuumDecayOptions } from "../../src/vacuum-decay/settings.ts";
import { saturation } from "./saturation.ts";

const given = (more: Partial<VacuumDecayOptions> = {}) =>
  settingsOf({ ambient: degC(20), policy: acceptancePolicies.commonPractice500, ...more });

describe("what is assumed", () => {
  const codes = (more: Partial<VacuumDecayOptions>) =>
    given(more).assumptions.map(({ code }) => code);

  it("is said, and only where it is not stated", () => {
    expect(codes({})).toEqual(["isolated", "no-cold-spot", "gauge-accuracy"]);
    expect(codes({ coldest: degC(5) })).toEqual(["isolated", "gauge-accuracy"]);
    expect(codes({ gauge: { accuracy: percent(5) } })).toEqual(["isolated", "no-cold-spot"]);
  });

  it("is an accuracy of 10 %, no cold spot, 95 % and no limit to gauge and leak", () => {
    expect(given()).toMatchObject({ accuracy: 0.1, coldest: 293.15, confidence: 0.95 });
    expect([given().range, given().leakLimit]).toEqual([Infinity, Infinity]);
    expect([given().volume, given().resolutionAt(40)]).toEqual([Number.NaN, Number.NaN]);
  });

  it("is no more water than saturates parts 5 K above the ambient, and a tenth", () => {
    // Magnus form, within 0.3 %
    for (const t of [-20, 20, 50]) {
      const { waterMax } = given({ ambient: degC(t) });
      const most = 1.1 * saturation(t + 5);
      // below 0 °C the Magnus form is that over supercooled water, above that over ice
      expect(waterMax / most).toBeGreaterThan(t < 0 ? 0.85 : 0.995);
      expect(waterMax / most).toBeLessThan(1.005);
    }
  });
});

describe("the step of the display", () => {
  const two = [
    { upTo: micron(20_000), resolution: micronDifference(50) },
    { upTo: micron(1000), resolution: micronDifference(1) },
  ];
  const at = (p: number) =>
    given({ gauge: { resolution: two } }).resolutionAt(micron(p).si) / micronDifference(1).si;

  it("is that of the range in which a reading lies, whatever the order of the ranges", () => {
    expect(at(300)).toBeCloseTo(1, 9);
    expect(at(1000)).toBeCloseTo(1, 9);
    expect(at(1001)).toBeCloseTo(50, 9);
    expect(at(20_000)).toBeCloseTo(50, 9);
  });

  it("is that of the last range above all of them", () => {
    expect(at(30_000)).toBeCloseTo(50, 9);
  });
});

describe("a leak limit", () => {
  it("is a rate, or a throughput over the volume", () => {
    expect(given({ leakLimit: micronPerMinute(6) }).leakLimit).toBeCloseTo(
      micronDifference(0.1).si,
      12,
    );
    const throughput = { leakLimit: paM3PerS(6e-4), volume: liter(3) };
    expect(given(throughput).leakLimit).toBeCloseTo(0.2, 12);
  });
});

describe("a plateau", () => {
  // 38.01 Pa over ice at −30 °C: IAPWS R14-08(2011), equation 6
  const cold = given({ coldest: degC(-30), gauge: { accuracy: percent(0) } });
  const above = (mean: number, u: number, settings = cold) =>
    plateauOf({ mean, u }, undefined, settings).aboveSaturation;

  it("is above the saturation of water when it is by twice its uncertainty", () => {
    expect([above(38, 0), above(38.1, 0)]).toEqual([false, true]);
    expect([above(42, 2), above(42.1, 2)]).toEqual([false, true]);
    const gauge = { accuracy: percent(10) };
    // p·(1 − 2 · 0.1/√3) = 38.01 Pa at 42.97 Pa
    const rough = given({ coldest: degC(-30), gauge });
    expect([above(42.9, 0, rough), above(43.05, 0, rough)]).toEqual([false, true]);
  });

  it("counts the vapour since the start, and none where it lies below", () => {
    const settings = given({ volume: liter(1) });
    const mass = (mean: number, origin: number) =>
      plateauOf({ mean, u: 0 }, { origin } as Segment, settings).waterMass?.si;
    // 133.3 Pa (1000 micron) in a litre at 20 °C are 0.985 mg of water: p·V·M/(R·T)
    expect((mass(173.3, 40) ?? 0) * 1e6).toBeCloseTo(0.985, 2);
    expect(mass(30, 40)).toBe(0);
  });

  it("is never told below a hundredth of a pascal", () => {
    expect(plateauOf({ mean: -1, u: 0 }, undefined, cold).pressure.value.si).toBe(0.01);
  });
});
