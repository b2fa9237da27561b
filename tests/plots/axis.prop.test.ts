// The axis against d3-scale, a well-kept library that it does not bring along.
import { scaleLinear } from "d3-scale";
import fc from "fast-check";
import { expect, it } from "vitest";
import { axisOf } from "../../src/plots/axis.ts";

/** Ends with a few decimals, as readings have. */
const ranges = fc
  .tuple(
    fc.integer({ min: -99_999, max: 99_999 }),
    fc.integer({ min: 1, max: 99_999 }),
    fc.integer({ min: -8, max: 5 }),
    fc.integer({ min: 2, max: 9 }),
  )
  .map(([low, span, power, count]) => ({
    low: Number(`${low}e${power}`),
    high: Number(`${low + span}e${power}`),
    count,
  }))
  .filter(({ low, high }) => high - low > 2e-6 * Math.max(Math.abs(low), Math.abs(high)));

it("has the ticks, the words and the places of d3-scale, with ends as they are", () => {
  fc.assert(
    fc.property(ranges, ({ low, high, count }) => {
      const ours = axisOf([high, low], [300, 20], count, false);
      const scale = scaleLinear([low, high], [300, 20]);
      const say = scale.tickFormat(count);
      expect(ours.ticks).toEqual(scale.ticks(count).map((value) => [value, say(value)]));
      for (const [value] of ours.ticks) expect(ours.at(value)).toBeCloseTo(scale(value), 6);
    }),
    { numRuns: 1000 },
  );
});

it("begins and ends at a tick, around all values and no wider than with d3-scale", () => {
  fc.assert(
    fc.property(ranges, ({ low, high, count }) => {
      const [theirLow = 0, theirHigh = 0] = scaleLinear([low, high], [0, 1]).nice(count).domain();
      const { ends, ticks } = axisOf([low, high], [300, 20], count);
      const slip = 1e-8 * (high - low);
      expect(ends[0]).toBeLessThanOrEqual(low + slip);
      expect(ends[1]).toBeGreaterThanOrEqual(high - slip);
      expect(ends[0]).toBeGreaterThanOrEqual(theirLow - slip);
      expect(ends[1]).toBeLessThanOrEqual(theirHigh + slip);
      expect(Math.abs((ticks[0]?.[0] ?? Number.NaN) - ends[0])).toBeLessThanOrEqual(slip);
      expect(Math.abs((ticks.at(-1)?.[0] ?? Number.NaN) - ends[1])).toBeLessThanOrEqual(slip);
    }),
    { numRuns: 1000 },
  );
});

it("gives room where nothing varies", () => {
  for (const value of [0, 300, -40, 1e9, 1e-9]) {
    const { at, ticks } = axisOf([value, value], [100, 0], 3);
    expect(at(value)).toBeCloseTo(50, 0);
    expect(ticks.length).toBeGreaterThanOrEqual(2);
  }
});
