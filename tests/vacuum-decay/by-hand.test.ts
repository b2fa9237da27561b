// Which logs look as if somebody had written them down? Round times, and few rows or pressures rounder than the display.
// Common practice, no source.
import { describe, expect, it } from "vitest";
import { micron } from "../../src/quantity/index.ts";
import {
  grainOf,
  readRoundness,
  roundGrains,
  typedByHand,
} from "../../src/vacuum-decay/by-hand.ts";

const nothing = () => Number.NaN;
/** A log of readings in micron so many seconds apart, read by a display with steps in micron. */
function written(
  pressures: readonly number[],
  spacing: number,
  step: (p: number) => number = nothing,
) {
  const log = {
    wholeTimes: true,
    grains: roundGrains,
    rows: pressures.length,
    spacing: pressures.length > 1 ? spacing : 0,
    settings: { resolutionAt: (p: number) => step(p / micron.scale) * micron.scale },
    segment: { origin: (pressures[0] as number) * micron.scale },
  };
  for (const [row, p] of pressures.entries()) readRoundness(log, row * spacing, p * micron.scale);
  return { ...log, grain: grainOf(log), byHand: typedByHand(log) };
}
const rising = (rows: number, by: number, from = 300) =>
  Array.from({ length: rows }, (_, i) => from + by * i);

describe("a log was written by hand", () => {
  it("where twelve rows at most stand at full or half minutes", () => {
    expect(written(rising(12, 1), 60).byHand).toBe(true);
    expect(written(rising(12, 1), 30).byHand).toBe(true);
    expect(written(rising(13, 1), 60).byHand).toBe(false);
  });

  it("with more rows where the pressures are rounder than 5 micron or the display", () => {
    expect(written(rising(30, 5), 60).byHand).toBe(true);
    expect(written(rising(30, 2), 60).byHand).toBe(false);
    expect(written(rising(30, 25), 60, () => 1).byHand).toBe(true);
    expect(written(rising(30, 25), 60, () => 25).byHand).toBe(false);
  });

  it("where the display is asked for its step at the pressure of the start", () => {
    const ranges = (p: number) => (p <= 200 ? 1 : 25);
    expect(written(rising(30, 25), 60, ranges).byHand).toBe(false);
    expect(written(rising(30, 25, 100), 60, ranges).byHand).toBe(true);
  });

  it("at no other times, and not where a single reading is round", () => {
    expect(written(rising(8, 5), 20).byHand).toBe(false);
    expect(written(rising(8, 5), 61).byHand).toBe(false);
    expect(written([300], 60).byHand).toBe(false);
  });

  it("not where the pressures have fractions of a micron", () => {
    expect(written([300, 301.5, 303], 60).byHand).toBe(false);
  });
});

describe("the largest round step that every pressure is a multiple of", () => {
  // plain arithmetic: the step divides each of them, and no larger one of 50, 25, 20, 10, 5, 2 and 1 does
  it.each([
    [[300, 325, 330], 5],
    [[325, 300, 320], 5],
    [[320, 325], 5],
    [[300, 320, 340, 350], 10],
    [[300, 304, 308], 2],
    [[300, 400, 500], 50],
    [[300, 325, 331], 1],
    [[300, 325, 330.5], Number.NaN],
    [[300, 350, 450], 50],
    [[300, 325, 350], 25],
    [[300, 320, 340], 20],
    [[300, 310, 350], 10],
    [[300, 305, 330], 5],
    [[300, 302, 310], 2],
    [[300, 301], 1],
  ] as const)("is for %j %d micron", (pressures, grain) => {
    expect(written(pressures, 60).grain / micron.scale).toEqual(
      Number.isNaN(grain) ? grain : expect.closeTo(grain, 9),
    );
  });
});
