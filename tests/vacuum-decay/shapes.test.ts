// The shapes against their definitions: integrals and derivatives taken numerically, limits by hand.
import { describe, expect, it } from "vitest";
import { binIndex } from "../../src/vacuum-decay/binning.ts";
import { slowColumns } from "../../src/vacuum-decay/curve/gram.ts";
import {
  levelling,
  slowColumnsAt,
  slowCount,
  slowRate,
  slowShape,
  slowShapes,
  slowTau,
} from "../../src/vacuum-decay/curve/shapes.ts";

const names = [...slowShapes.entries()];
const slope = (shape: number, t: number, tau: number) =>
  (slowShape(shape, t + 1e-3, tau) - slowShape(shape, t - 1e-3, tau)) / 2e-3;

describe("the slow shapes", () => {
  it.each(names)("%i, %s, starts at 0 and slows down all the way", (shape) => {
    expect(slowShape(shape, 0, 300)).toBeCloseTo(0, 12);
    for (const t of [30, 150, 300, 500, 590]) {
      expect(slope(shape, t, 300)).toBeGreaterThan(slope(shape, t + 5, 300));
      expect(slope(shape, t, 300)).toBeGreaterThan(0);
    }
  });

  it.each(names)("%i, %s, has the rate of its slope", (shape) => {
    for (const t of [60, 300, 550, 900]) {
      expect(slowRate(shape, t, 300)).toBeCloseTo(slope(shape, t, 300), 7);
    }
  });

  it("level off at 1 for water, and never for outgassing", () => {
    for (const [shape] of names.slice(0, levelling)) {
      expect(slowShape(shape, 1e7, 60)).toBeCloseTo(1, 4);
    }
    for (const [shape] of names.slice(levelling)) {
      expect(slowShape(shape, 1e7, 60)).toBeGreaterThan(5);
    }
  });

  // each rate law as vacuum handbooks §1.3.3, the kinetics of order 1 and 2, and Kohlrausch's exponential have it
  it.each([
    ["saturating", (x: number) => Math.exp(-x)],
    ["stretched90", (x: number) => 0.9 * x ** -0.1 * Math.exp(-(x ** 0.9))],
    ["stretched80", (x: number) => 0.8 * x ** -0.2 * Math.exp(-(x ** 0.8))],
    ["stretched70", (x: number) => 0.7 * x ** -0.3 * Math.exp(-(x ** 0.7))],
    ["hyperbolic", (x: number) => 1 / (1 + x) ** 2],
    ["logarithmic", (x: number) => 1 / (1 + x)],
    ["squareRoot", (x: number) => 1 / Math.sqrt(1 + x)],
  ] as const)("%s follows its rate law", (name, law) => {
    const shape = slowShapes.indexOf(name);
    for (const t of [30, 200, 450, 700, 1500]) {
      expect(300 * slope(shape, t, 300)).toBeCloseTo(law(t / 300), 5);
    }
  });

  it("stand in the table of columns shape after shape, at 60 s and two steps to 25 %", () => {
    const into = new Float64Array(slowColumns);
    expect(slowColumns).toBe(7 * 48);
    expect(slowTau(0)).toBeCloseTo(60, 9);
    expect(slowTau(slowCount - 1)).toBeCloseTo(60 * 1.25 ** 23.5, 6);
    slowColumnsAt(777, into);
    for (const [shape] of names) {
      for (let k = 0; k < slowCount; k++) {
        expect(into[shape * slowCount + k]).toBeCloseTo(slowShape(shape, 777, slowTau(k)), 12);
      }
    }
  });
});

describe("the bins", () => {
  // widths as the guide has them: 2 s to 30 s, 5 s to 2 min, 12 s to 6 min 36 s, then 3 % of the time
  it("follow each other without a gap, from fine to coarse", () => {
    const edges = [0];
    for (let tenth = 1, last = binIndex(0); tenth < 72_000; tenth++) {
      const index = binIndex(tenth / 10);
      if (index === last) continue;
      expect(index).toBe(last + 1);
      last = index;
      edges.push(tenth / 10);
    }
    const widths = edges
      .slice(1)
      .map((edge, i) => [edges[i], edge - (edges[i] as number)] as const);
    for (const [at = 0, width] of widths) {
      if (at < 30) expect(width).toBeCloseTo(2, 6);
      else if (at < 120) expect(width).toBeCloseTo(5, 6);
      else if (at < 396) expect(width).toBeCloseTo(12, 6);
      else expect(Math.abs(width / at - 0.03)).toBeLessThan(0.001);
    }
    expect(edges).toContain(30);
    expect(edges).toContain(120);
    expect(edges).toContain(396);
    expect(edges.length).toBeGreaterThan(140); // two hours
    expect(edges.length).toBeLessThan(160);
  });
});
