// Where a rise ends, and what that says of the water.
import { describe, expect, it } from "vitest";
import { degC, liter, micronDifference, percent } from "../../src/quantity/index.ts";
import { slowShapes } from "../../src/vacuum-decay/curve/shapes.ts";
import { levelOf, plateauOf } from "../../src/vacuum-decay/plateau.ts";
import { acceptancePolicies } from "../../src/vacuum-decay/policies/acceptance-policies.ts";
import { settingsOf, type VacuumDecayOptions } from "../../src/vacuum-decay/settings.ts";
import { model } from "./model.ts";

const given = (more: Partial<VacuumDecayOptions> = {}) =>
  settingsOf({ ambient: degC(20), policy: acceptancePolicies.commonPractice500, ...more });
const pa = (microns: number) => micronDifference(microns).si;

describe("a plateau", () => {
  // 38.01 Pa over ice at −30 °C: IAPWS R14-08(2011), equation 6
  const cold = given({ coldest: degC(-30), gauge: { accuracy: percent(0) } });
  const above = (mean: number, u: number, settings = cold) =>
    plateauOf({ mean, u }, 0, settings).aboveSaturation;

  it("is above the saturation of water when it is by twice its uncertainty", () => {
    expect([above(38, 0), above(38.1, 0)]).toEqual([false, true]);
    expect([above(42, 2), above(42.1, 2)]).toEqual([false, true]);
    const gauge = { accuracy: percent(10) };
    // p·(1 − 2 · 0.1/√3) = 38.01 Pa at 42.97 Pa
    const rough = given({ coldest: degC(-30), gauge });
    expect([above(42.9, 0, rough), above(43.05, 0, rough)]).toEqual([false, true]);
  });

  it("counts the vapor since the start, and none where it lies below", () => {
    const settings = given({ volume: liter(1) });
    const mass = (mean: number, origin: number) =>
      plateauOf({ mean, u: 0 }, origin, settings).waterMass?.si;
    // 133.3 Pa (1000 micron) in a liter at 20 °C are 0.985 mg of water: p·V·M/(R·T)
    expect((mass(173.3, 40) ?? 0) * 1e6).toBeCloseTo(0.985, 2);
    expect(mass(30, 40)).toBe(0);
  });

  it("is never told below a hundredth of a pascal", () => {
    expect(plateauOf({ mean: -1, u: 0 }, 0, cold).pressure.value.si).toBe(0.01);
  });
});

describe("where the models level off", () => {
  const water = (microns: number, more: Parameters<typeof model>[0] = {}) =>
    model({ shape: 0, amplitude: pa(microns), ...more });

  it("is the start, the equalization and the water together, without the leak", () => {
    const one = water(400, { constant: 3, fast: 1, fast1: 20, fast2: -6, amplitudeU: 2, slope: 5 });
    const { mean, u } = levelOf([one], 40) ?? {};
    expect(mean).toBeCloseTo(40 + 3 + 20 - 6 + pa(400), 9);
    expect(u).toBeCloseTo(2, 9);
  });

  it("is told by shapes that level off, of water that matters: above 300 micron", () => {
    const told = slowShapes.filter((_, shape) => levelOf([water(400, { shape })], 40));
    expect(told).toEqual(["saturating", "stretched90", "stretched80", "stretched70", "hyperbolic"]);
    expect([levelOf([water(299)], 40), levelOf([model()], 40), levelOf([], 40)]).toEqual(
      [undefined, undefined, undefined], // nor by a line
    );
    expect(levelOf([water(301)], 40)).toBeDefined();
  });

  it("is averaged over those by their weights", () => {
    const outgassing = water(9000, { shape: 5, weight: 0.5 });
    const wet = [water(400, { weight: 0.1 }), water(800, { weight: 0.3 })];
    expect(levelOf([...wet, outgassing], 40)?.mean).toBeCloseTo(40 + pa(700), 9);
  });
});
