// When a straight line can be told at all: points at one time, or next to it, carry none.
import { expect, it } from "vitest";
import { addPoint, createScratch, timeUnit } from "../../src/vacuum-decay/curve/gram.ts";
import {
  createWorkspace,
  factor,
  lineUncertainty,
} from "../../src/vacuum-decay/curve/workspace.ts";

function lineOf(times: readonly number[], weight = 1) {
  const work = createWorkspace();
  for (const t of times) addPoint(work.gram, createScratch(), t, 3, weight);
  return { told: factor(work, -1), u: lineUncertainty(work, 4) };
}

it("tells no line of points at one time, or nearly at one time", () => {
  expect(lineOf([timeUnit, timeUnit, timeUnit])).toEqual({ told: false, u: 0 });
  expect(lineOf([timeUnit, timeUnit * (1 + 1e-5)])).toEqual({ told: false, u: 0 });
  expect(lineOf([timeUnit, timeUnit * (1 + 1e-5)], 1e6)).toEqual({ told: false, u: 0 });
  expect(lineOf([])).toEqual({ told: false, u: 0 });
  expect(lineOf([timeUnit, timeUnit * 1.01]).told).toBe(true);
});

it("gives the slope its textbook uncertainty, σ/√Σ(t − t̄)²", () => {
  // variance 4 over a weight of 9 each; Σ(t − t̄)² of 0, 10, 20, 30 s is 500 s²
  expect(lineOf([0, 10, 20, 30], 9).u).toBeCloseTo(2 / 3 / Math.sqrt(500), 9);
});
