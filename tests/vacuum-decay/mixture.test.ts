// One figure over several models, against the normal distribution and the moments of a mixture.
import { describe, expect, it } from "vitest";
import type { Component } from "../../src/vacuum-decay/curve/component.ts";
import { boundOf, mixtureOf } from "../../src/vacuum-decay/mixture.ts";

const parts = (list: readonly (readonly [weight: number, value: number, u: number])[], extra = 0) =>
  mixtureOf(
    list.map(([weight, slope, slopeU]) => ({ weight, slope, slopeU }) as Component),
    ({ slope }) => slope,
    ({ slopeU }) => slopeU,
    extra,
  );

describe("a mixture", () => {
  it("has the mean and the variance of its parts, within and between them", () => {
    // law of total variance: ¼·(1² + 4²) + ¾·(2² + 4²) + ¼·¾·(10 − 2)²
    const { mean, u } = parts(
      [
        [1, 10, 1],
        [3, 2, 2],
      ],
      4,
    );
    expect(mean).toBeCloseTo(4, 12);
    expect(u ** 2).toBeCloseTo(0.25 * 17 + 0.75 * 20 + (3 / 16) * 64, 9);
  });

  it("has the quantiles of a normal distribution, within 0.01 in probability", () => {
    // Φ⁻¹ of 0.01 less and 0.01 more, tables of the normal distribution
    const one = parts([[1, 5, 2]]);
    const z = (p: number) => (boundOf(one, p) - 5) / 2;
    for (const [p, low, high] of [
      [0.5, -0.0251, 0.0251],
      [0.95, 1.5548, 1.7507],
      [0.975, 1.8119, 2.1701],
      [0.985, 1.96, 2.5758],
    ] as const) {
      expect(z(p)).toBeGreaterThan(low);
      expect(z(p)).toBeLessThan(high);
      expect(z(1 - p)).toBeCloseTo(-z(p), 2);
    }
    // and exactly those of the logistic curve that stands for it, 1/(1 + e^(−1.702 z))
    expect(z(0.95)).toBeCloseTo(Math.log(19) / 1.702, 3);
  });

  it("counts weights by their ratio", () => {
    const list = (k: number) =>
      parts([
        [0.25 * k, 1, 1],
        [0.75 * k, 4, 2],
      ]);
    for (const k of [0.4, 3]) {
      expect(list(k).mean).toBeCloseTo(list(1).mean, 12);
      expect(boundOf(list(k), 0.9)).toBeCloseTo(boundOf(list(1), 0.9), 9);
    }
  });

  it("keeps its parts apart where they do not overlap", () => {
    const two = parts([
      [0.9, 0, 0.001],
      [0.1, 100, 1],
    ]);
    expect(boundOf(two, 0.5)).toBeCloseTo(0, 1);
    expect(boundOf(two, 0.95)).toBeCloseTo(100, 1); // the middle of the second
    expect(boundOf(two, 0.01)).toBeCloseTo(0, 1);
  });

  it("is as good at a bound far from the mean as near it", () => {
    for (const p of [0.001, 0.01, 0.3, 0.7, 0.99, 0.999]) {
      const list = [
        [0.5, -3, 0.1],
        [0.3, 2, 1],
        [0.2, 40, 5],
      ] as const;
      const x = boundOf(parts(list), p);
      const below = list.reduce(
        (sum, [w, v, u]) => sum + w / (1 + Math.exp((-1.702 * (x - v)) / u)),
        0,
      );
      expect(below).toBeCloseTo(p, 4);
    }
  });

  it("is empty without parts", () => {
    expect(parts([])).toMatchObject({ mean: 0, u: 0 });
    expect(parts([[0, 3, 1]])).toMatchObject({ u: 0 });
  });

  it("takes a part without uncertainty", () => {
    expect(boundOf(parts([[1, 7, 0]]), 0.95)).toBeCloseTo(7, 9);
    expect(parts([[1, 7, 0]]).u).toBe(0);
  });
});
