// What is taken from the options, and what is assumed without them.
import { describe, expect, it } from "vitest";
import {
  degC,
  type InvalidInputError,
  liter,
  m,
  micron,
  micronDifference,
  micronPerMinute,
  minute,
  paM3PerS,
  percent,
} from "../../src/quantity/index.ts";
import { acceptancePolicies } from "../../src/vacuum-decay/policies/acceptance-policies.ts";
import { settingsOf, type VacuumDecayOptions } from "../../src/vacuum-decay/settings.ts";
import { saturation } from "./saturation.ts";

const given = (more: Partial<VacuumDecayOptions> = {}) =>
  settingsOf({ ambient: degC(20), policy: acceptancePolicies.commonPractice500, ...more });

describe("what is assumed", () => {
  const codes = (more: Partial<VacuumDecayOptions>) =>
    given(more).assumptions.map(({ code }) => code.replace("vacuum-decay.", ""));

  it("is said, and only where it is not stated", () => {
    const all = [
      "isolated", // how the pump was shut off comes first
      "gauge-at-the-system",
      "no-cold-spot",
      "usual-volume",
      "gauge-accuracy",
      "hoses-unknown",
    ];
    expect(codes({})).toEqual(all);
    const without = (code: string) => all.filter((one) => one !== code);
    expect(codes({ isolation: "pump-valve" })).toEqual(without("isolated"));
    expect(codes({ coldest: degC(5) })).toEqual(without("no-cold-spot"));
    expect(codes({ volume: liter(2) })).toEqual(without("usual-volume"));
    expect(codes({ gauge: { accuracy: percent(5) } })).toEqual(without("gauge-accuracy"));
    const hoses = { material: "rubber", length: m(1) } as const;
    expect(codes({ hoses })).toEqual(without("hoses-unknown"));
    const blankTest = { rate: micronPerMinute(30), volume: liter(0.1) };
    expect(codes({ blankTest })).toEqual(without("hoses-unknown"));
  });

  it("lets hoses in by their make and length, and takes a blank test off", () => {
    const inMicrons = (more: Partial<VacuumDecayOptions>) => {
      const { hoses, blank } = given({ volume: liter(0.5), ...more });
      return [hoses, blank].map((si) => Math.round((10 * si) / micronPerMinute(1).si) / 10);
    };
    expect(inMicrons({})).toEqual([6, 0]); // 3 micron·L/min over half a liter
    expect(inMicrons({ hoses: { material: "rubber", length: m(1) } })).toEqual([4, 0]);
    expect(inMicrons({ hoses: { material: "metal", length: m(1) } })).toEqual([0, 0]);
    const blankTest = { rate: micronPerMinute(30), volume: liter(0.1) };
    expect(inMicrons({ blankTest })).toEqual([0, 6]);
  });

  it("is an accuracy of 10 %, no cold spot, 95 % and no limit to the gauge", () => {
    expect(given()).toMatchObject({ accuracy: 0.1, coldest: 293.15, confidence: 0.95 });
    expect(given().range).toBe(Infinity);
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

  it("takes no range that is nothing", () => {
    const gauge = { resolution: [undefined] } as unknown as VacuumDecayOptions["gauge"];
    expect(() => given({ gauge })).toThrow("gauge.resolution[0]");
  });

  it("is that of the last of three ranges above all of them", () => {
    const fine = { upTo: micron(100), resolution: micronDifference(0.1) };
    const { resolutionAt } = given({ gauge: { resolution: [...two, fine] } });
    expect(resolutionAt(micron(30_000).si) / micronDifference(1).si).toBeCloseTo(50, 9);
  });

  it("is that of the last range above all of them", () => {
    expect(at(30_000)).toBeCloseTo(50, 9);
  });
});

it("a checkpoint has a limit or a rise, and the error names the two to choose from", () => {
  const { commonPractice500: usual } = acceptancePolicies;
  const policy = { ...usual, checkpoints: [{ at: minute(10) }] };
  expect(() => given({ policy })).toThrow(
    expect.objectContaining({
      argument: "policy.checkpoints[0]",
      allowed: "one of limit, rise",
    }),
  );
});

describe("a leak limit", () => {
  it("is a rate, or a throughput over the volume", () => {
    expect(given({ leakLimit: micronPerMinute(6) }).leakLimit.rate).toBeCloseTo(
      micronDifference(0.1).si,
      12,
    );
    const throughput = { leakLimit: paM3PerS(6e-5), volume: liter(3) };
    expect(given(throughput).leakLimit.rate).toBeCloseTo(0.02, 12);
  });

  it("is 10 micron a minute in 3 L where neither policy nor caller names one, and less in more", () => {
    const rate = (liters: number) => given({ volume: liter(liters) }).leakLimit.rate * 60;
    expect(rate(3)).toBeCloseTo(micronDifference(10).si, 9);
    expect(rate(6)).toBeCloseTo(micronDifference(5).si, 9);
  });

  it("is never more than the policy's", () => {
    expect(() => given({ leakLimit: micronPerMinute(10.1), volume: liter(3) })).toThrow(
      expect.objectContaining({ argument: "leakLimit" }),
    );
    expect(() => given({ leakLimit: micronPerMinute(10), volume: liter(3) })).not.toThrow();
    const policy = { ...acceptancePolicies.commonPractice500, leakLimit: paM3PerS(1e-5) };
    expect(() => given({ leakLimit: paM3PerS(2e-5), policy })).toThrow("leakLimit");
    expect(given({ policy }).leakLimit.throughput).toBe(1e-5);
    const none = { ...policy, leakLimit: paM3PerS(0) };
    expect(() => given({ policy: none })).toThrow("policy.leakLimit");
  });

  it("that is more is refused with the most that is allowed, in the caller's kind of unit", () => {
    const refused = (more: Partial<VacuumDecayOptions>) => {
      try {
        return given({ volume: liter(6), ...more });
      } catch (error) {
        const { bound } = error as InvalidInputError;
        return [bound?.value, bound?.is, bound && "limit" in bound && bound.limit.toString()];
      }
    };
    const rate = micronPerMinute(7);
    expect(refused({ leakLimit: rate })).toEqual([rate, "max", micronPerMinute(5).toString()]);
    const throughput = paM3PerS(1e-4);
    const most = paM3PerS(micronPerMinute(10).si * 0.003);
    expect(refused({ leakLimit: throughput })).toEqual([throughput, "max", most.toString()]);
  });
});
