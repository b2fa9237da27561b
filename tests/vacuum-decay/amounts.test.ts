// Which leak and which water matter to a system? The figures that the documentation states, by volume and hoses.
// Common practice, no source.
import { describe, expect, it } from "vitest";
import { liter, micronDifference, micronPerMinute } from "../../src/quantity/index.ts";
import { amountsOf } from "../../src/vacuum-decay/analysis.ts";
import type { Settings } from "../../src/vacuum-decay/settings.ts";

/** In micron a minute and micron; `hoses` let in so many micron a minute. */
function amounts(liters: number, hoses = 0, rise = 0) {
  const settings = { volume: liters * liter.scale, hoses: micronPerMinute(hoses).si } as Settings;
  const { water, ...rates } = amountsOf(settings, micronDifference(rise).si);
  const round = (x: number) => Math.round(x * 1e6) / 1e6;
  const inUnits = Object.entries(rates).map(([name, si]) => [
    name,
    round(si / micronPerMinute.scale),
  ]);
  return { ...Object.fromEntries(inUnits), water: round(water / micronDifference(1).si) };
}

describe("what matters", () => {
  it("in 3 L without hoses is a leak of 5, twice that behind water, and a rise of 6 micron a minute", () => {
    const usual = { leak: 5, provenLeak: 5, hiddenLeak: 10, endRate: 6, water: 300 };
    expect(amounts(3)).toEqual(usual);
    expect(amounts(Number.NaN)).toEqual(usual); // the volume that is assumed
  });

  it("in half a liter with unknown hoses is a leak of 7 micron a minute", () => {
    // 3 micron·L/min are 6 micron/min: a third of them besides a leak, half besides a rise, all where a leak is proven
    expect(amounts(0.5, 6)).toEqual({
      leak: 7,
      provenLeak: 11,
      hiddenLeak: 16,
      endRate: 9,
      water: 300,
    });
  });

  it("in more than 4.5 L is three quarters of what a policy allows, 10 micron a minute in 3 L", () => {
    expect(amounts(4.5)).toMatchObject({ leak: 5, hiddenLeak: 10 });
    expect(amounts(9)).toMatchObject({ leak: 2.5, provenLeak: 5, hiddenLeak: 5 });
    expect(amounts(90)).toMatchObject({ leak: 0.25, provenLeak: 5, hiddenLeak: 5 });
  });

  it("of water is 300 micron and 5 % of the rise, if it rose", () => {
    expect(amounts(3, 0, 2000).water).toBe(400);
    expect(amounts(3, 0, -2000).water).toBe(300);
  });
});
