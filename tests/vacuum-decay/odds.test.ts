// Shares of the evidence on models whose figures are given: the normal distribution, cut at no leak.
import { describe, expect, it } from "vitest";
import { normalProbability } from "../../src/assessment/statistics.ts";
import { leakUncertainty, oddsOf, type Reach, waterOf } from "../../src/vacuum-decay/odds.ts";
import { model } from "./model.ts";

const amounts = { leak: 5, provenLeak: 6, hiddenLeak: 11, water: 300, endRate: 6 };
const reach: Reach = {
  T: 600,
  scale: 0,
  stepped: 0,
  discrepancy: 0,
  blank: 0,
  widening: 1,
  equalization: 600,
};
const line = (slope: number, slopeU: number, weight = 1) =>
  model({ line: true, slope, slopeU, endRate: slope, endRateU: slopeU, weight });

describe("a leak that matters", () => {
  it("has the share of the normal distribution above it, cut at 0", () => {
    for (const [slope, u] of [
      [5, 1],
      [7, 1],
      [3, 2],
      [1, 3],
    ] as const) {
      const expected = normalProbability((slope - 5) / u) / normalProbability(slope / u);
      expect(oddsOf([line(slope, u)], amounts, reach).leak).toBeCloseTo(expected, 1);
    }
  });

  it("is averaged over the models by their weights", () => {
    const mixed = oddsOf([line(20, 0.1, 0.3), line(0, 0.1, 0.7)], amounts, reach);
    expect(mixed.leak).toBeCloseTo(0.3, 6);
    expect(mixed.provenLeak).toBeCloseTo(0.3, 6);
    expect(mixed.bad).toBeCloseTo(0.3, 6);
  });

  it("is what a blank test leaves of it", () => {
    expect(oddsOf([line(8, 0.1)], amounts, { ...reach, blank: 5 }).leak).toBeCloseTo(0, 6);
    expect(oddsOf([line(8, 0.1)], amounts, { ...reach, blank: 1 }).leak).toBeCloseTo(1, 6);
    // cut at what the blank test let in: Φ((3 − 2 − 5)/3)/Φ((3 − 2)/3), by the logistic curve within 0.01
    const cut = normalProbability(-4 / 3) / normalProbability(1 / 3);
    expect(oddsOf([line(3, 3)], amounts, { ...reach, blank: 2 }).leak).toBeCloseTo(cut, 1.7);
  });

  it("is less sure where few readings widen the distribution", () => {
    const sure = oddsOf([line(8, 1)], amounts, reach).leak;
    expect(oddsOf([line(8, 1)], amounts, { ...reach, widening: 2 }).leak).toBeLessThan(sure);
  });
});

describe("the uncertainty of a leak", () => {
  it("adds the fit, the scale, the step and what a wrong shape can feign in the second half", () => {
    const one = model({ line: true, slope: 10, slopeU: 3, shape: 0, tau: 600, amplitude: 1000 });
    const late = 1000 * (Math.exp(-0.5) - Math.exp(-1)); // rise from 300 s to 600 s
    const feigned = (0.1 * late) / 300;
    const all = { ...reach, scale: 0.2, stepped: 4, discrepancy: 0.1 };
    expect(leakUncertainty(one, all)).toBeCloseTo(Math.hypot(3, feigned, 2, 4), 9);
  });
});

describe("water", () => {
  it("counts by its plateau where that is near, else by what it will have risen in as long again", () => {
    expect(waterOf(model({ shape: 0, tau: 500, amplitude: 100 }), 600, 600)).toBe(100);
    const slow = model({ shape: 0, tau: 1200, amplitude: 100 });
    expect(waterOf(slow, 600, 600)).toBeCloseTo(100 * (1 - Math.exp(-1)), 9);
    // ten minutes at least
    expect(waterOf({ ...slow, tau: 300 }, 120, 600)).toBeCloseTo(100 * (1 - Math.exp(-2)), 9);
  });

  it("of a law that has no plateau nearby counts by what it will have risen in as long again", () => {
    const risen = (shape: number) => waterOf(model({ shape, tau: 100, amplitude: 100 }), 600, 600);
    expect(risen(4)).toBeCloseTo(100 * (12 / 13), 9); // x/(1 + x)
    expect(risen(5)).toBeCloseTo(100 * Math.log(13), 9); // ln(1 + x)
    expect(risen(6)).toBeCloseTo(200 * (Math.sqrt(13) - 1), 9); // 2(√(1 + x) − 1)
    for (const shape of [0, 1, 2, 3]) expect(risen(shape)).toBe(100);
  });

  it("is what an equalization can not be", () => {
    expect(waterOf(model({ fast: 0, fast1: 500 }), 600, 600)).toBe(0);
    expect(waterOf(model({ fast: 0, fast1: 900 }), 600, 600)).toBe(300);
    expect(waterOf(model({ fast: 0, fast1: 700, fast2: 200 }), 600, 600)).toBe(300);
  });

  it("is as sure as its amplitude", () => {
    // 310 ± 20, of which 300 matter: Φ(0.5), for which a logistic curve stands within 0.01
    const near = model({ shape: 0, tau: 100, amplitude: 310, amplitudeU: 20 });
    expect(oddsOf([near], amounts, reach).water).toBeCloseTo(normalProbability(0.5), 1.7);
    const fading = { ...near, shape: 5, tau: 500, amplitude: 310 / Math.log(1 + 1200 / 500) };
    const { water, outgassing } = oddsOf([fading], amounts, reach);
    expect(water).toBeLessThan(0.9);
    expect(outgassing).toBe(water);
  });

  it("above what matters makes the system bad without a leak", () => {
    const wet = model({ shape: 0, tau: 100, amplitude: 500, amplitudeU: 1 });
    const odds = oddsOf([wet], amounts, reach);
    expect([odds.water, odds.bad, odds.provenBad].map((x) => Math.round(x))).toEqual([1, 1, 1]);
    expect(odds.leak).toBeLessThan(1e-6);
  });
});

it("a rise that goes on is bad for a pass, and proves nothing", () => {
  const rising = model({ shape: 4, tau: 600, amplitude: 100, endRate: 9, endRateU: 0.5 });
  const odds = oddsOf([rising], amounts, reach);
  expect(odds.bad).toBeGreaterThan(0.99);
  expect(odds.provenBad).toBeLessThan(0.01);
});
