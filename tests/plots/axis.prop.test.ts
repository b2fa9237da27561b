import fc from "fast-check";
import { expect, it } from "vitest";
import { numbersOf } from "../../src/display/format-number.ts";
import { axisOf } from "../../src/plots/axis.ts";

const numbers = numbersOf("en", undefined);
const axis = (
  values: readonly number[],
  between: readonly [number, number],
  count: number,
  isRound = true,
) => axisOf({ values, between, count, isRound }, numbers.fixed);

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

const asNumber = (word: string) => Number(word.replace("−", "-"));

it("writes every tick so that it reads as the value where it stands", () => {
  fc.assert(
    fc.property(ranges, fc.boolean(), ({ low, high, count }, round) => {
      const { at, ends, ticks } = axis([high, low], [300, 20], count, round);
      const slip = 1e-9 * (ends[1] - ends[0]);
      expect(ticks.length).toBeGreaterThanOrEqual(1);
      for (const [value, word] of ticks) {
        expect(Math.abs(asNumber(word) - value)).toBeLessThanOrEqual(slip);
        expect(at(value)).toBeCloseTo(300 - (280 * (value - ends[0])) / (ends[1] - ends[0]), 6);
      }
    }),
    { numRuns: 1000 },
  );
});

it("begins and ends at a tick around all values when it may round", () => {
  fc.assert(
    fc.property(ranges, ({ low, high, count }) => {
      const { ends, ticks } = axis([low, high], [300, 20], count);
      const slip = 1e-8 * (high - low);
      expect(ends[0]).toBeLessThanOrEqual(low + slip);
      expect(ends[1]).toBeGreaterThanOrEqual(high - slip);
      expect(Math.abs((ticks[0]?.[0] ?? Number.NaN) - ends[0])).toBeLessThanOrEqual(slip);
      expect(Math.abs((ticks.at(-1)?.[0] ?? Number.NaN) - ends[1])).toBeLessThanOrEqual(slip);
    }),
    { numRuns: 1000 },
  );
});

it("gives room where nothing varies", () => {
  for (const value of [0, 300, -40, 1e9, 1e-9]) {
    const { at, ticks } = axis([value, value], [100, 0], 3);
    expect(at(value)).toBeCloseTo(50, 0);
    expect(ticks.length).toBeGreaterThanOrEqual(2);
  }
});
