import fc from "fast-check";
import { normalProbability, normalQuantile, studentQuantile } from "hvac-install-math/assessment";
import { describe, expect, it } from "vitest";

/** Largest relative distance allowed. */
const within = (ours: number, expected: number, relative: number) =>
  expect(Math.abs(ours / expected - 1)).toBeLessThanOrEqual(relative);

describe("the normal distribution", () => {
  // From the series of Φ in 700-digit decimal arithmetic, outside the library.
  it.each([
    [0.5, 0.6914624612740131],
    [1, 0.8413447460685429],
    [2, 0.9772498680518208],
    [2.999, 0.9986456634662729],
    [3, 0.9986501019683699],
    [3.001, 0.998654527174915],
    [5, 0.9999997133484281],
    [-0.5, 0.3085375387259869],
    [-1, 0.15865525393145705],
    [-3, 0.0013498980316300946],
    [-5, 2.866515718791939e-7],
    [-8, 6.220960574271784e-16],
    [-20, 2.7536241186062337e-89],
    [-37, 5.725571222524577e-300],
  ])("Φ(%d) = %d", (z, expected) => {
    within(normalProbability(z), expected, 2e-13);
  });

  it("is a half at 0, and mirrors", () => {
    expect(normalProbability(0)).toBe(0.5);
    fc.assert(
      fc.property(fc.double({ min: -8, max: 8, noNaN: true }), (z) => {
        expect(normalProbability(z) + normalProbability(-z)).toBeCloseTo(1, 14);
      }),
    );
  });

  it("ends at 0 and 1 without leaving them", () => {
    expect(normalProbability(-40)).toBe(0);
    expect(normalProbability(40)).toBe(1);
    expect(normalProbability(1e300)).toBe(1);
    expect(normalProbability(-1e300)).toBe(0);
  });

  it("its quantile undoes it", () => {
    fc.assert(
      fc.property(fc.double({ min: -7, max: 7, noNaN: true }), (z) => {
        const tail = normalProbability(-Math.abs(z));
        expect(normalQuantile(tail)).toBeCloseTo(-Math.abs(z), 10);
      }),
      { numRuns: 500 },
    );
  });

  it("its quantile mirrors, and is 0 at a half", () => {
    expect(normalQuantile(0.5)).toBeCloseTo(0, 15);
    for (const p of [0.25, 0.0625, 2 ** -20]) {
      expect(normalQuantile(1 - p)).toBe(-normalQuantile(p));
    }
  });

  // Newton's method on the same series; the first six are in Abramowitz & Stegun (1964), table 26.5.
  it.each([
    [0.9, 1.2815515655446004],
    [0.95, 1.6448536269514726],
    [0.975, 1.9599639845400543],
    [0.99, 2.326347874040841],
    [0.995, 2.575829303548901],
    [0.999, 3.0902323061678136],
    [1e-12, -7.034483825301132],
    [1e-100, -21.273453560965326],
  ])("quantile of %d is %d", (p, z) => {
    within(normalQuantile(p), z, 1e-12);
  });

  it.each([0, 1, -0.1, 1.1, 5e-324, 1e-101, Number.NaN, "0.5", undefined])(
    "refuses a probability of %s",
    (p) => {
      expect(() => normalQuantile(p as number)).toThrow("probability");
      expect(() => studentQuantile(p as number, 5)).toThrow("probability");
    },
  );

  it.each([Number.NaN, Number.POSITIVE_INFINITY, "1", null])("refuses a z of %s", (z) => {
    expect(() => normalProbability(z as number)).toThrow("z: ");
  });
});

describe("Student's distribution", () => {
  const probabilities = [1e-10, 0.001, 0.025, 0.3, 0.6, 0.9, 0.975, 0.999, 0.999999];

  it("has a closed form for one degree of freedom: −1/tan(πp)", () => {
    for (const p of probabilities) within(studentQuantile(p, 1), -1 / Math.tan(Math.PI * p), 1e-9);
  });

  it("has a closed form for two: (2p − 1)/√(2p(1 − p))", () => {
    for (const p of probabilities) {
      within(studentQuantile(p, 2), (2 * p - 1) / Math.sqrt(2 * p * (1 - p)), 1e-9);
    }
  });

  it("has a closed form for four", () => {
    for (const p of probabilities) {
      const a = 4 * p * (1 - p);
      const q = Math.cos(Math.acos(Math.sqrt(a)) / 3) / Math.sqrt(a);
      within(studentQuantile(p, 4), Math.sign(p - 0.5) * 2 * Math.sqrt(q - 1), 1e-9);
    }
  });

  // Abramowitz & Stegun (1964), table 26.10, from memory, printed to three decimals.
  it.each([
    [0.95, 3, 2.353],
    [0.975, 5, 2.571],
    [0.99, 8, 2.896],
    [0.975, 30, 2.042],
    [0.995, 60, 2.66],
    [0.95, 120, 1.658],
  ])("p = %d, %d degrees of freedom: %d", (p, dof, t) => {
    expect(Math.abs(studentQuantile(p, dof) - t)).toBeLessThanOrEqual(0.0005);
  });

  // From the regularised incomplete beta function in 50-digit arithmetic, outside the library.
  it.each([
    [0.3, 1.5, -0.651795482602357, 1e-13],
    [0.999, 7, 4.785289628638334, 1e-13],
    [0.975, 12.5, 2.169185942712541, 1e-13],
    [0.75, 40, 0.680672717164449, 1e-13],
    [0.51, 1000, 0.02507518020946642, 1e-9],
    [0.9, 5000, 1.281720905335718, 1e-9],
    [0.6, 99_999, 0.2533477771639202, 1e-9],
    [0.975, 100_001, 1.959987707297379, 2e-12],
    [1e-12, 100_001, -7.035371733513539, 2e-12],
    [0.01, 150_000, -2.326372734790018, 2e-12],
    [1e-10, 200_000, -6.361670646481055, 2e-12],
  ])("p = %d, %d degrees of freedom: %d within %d", (p, dof, t, relative) => {
    within(studentQuantile(p, dof), t, relative);
  });

  it("is 0 at a half", () => {
    expect(studentQuantile(0.5, 7)).toBeCloseTo(0, 15);
  });

  it("mirrors, in the far tails too", () => {
    for (const dof of [1, 3.5, 40, 1e6]) {
      for (const p of [2 ** -2, 2 ** -10, 2 ** -40]) {
        expect(studentQuantile(1 - p, dof)).toBeCloseTo(-studentQuantile(p, dof), 8);
      }
    }
    for (const p of [1e-20, 1e-60, 1e-100]) within(studentQuantile(p, 1), -1 / (Math.PI * p), 1e-9);
  });

  it("falls to the normal distribution as the degrees of freedom grow, without a step", () => {
    let last = Number.POSITIVE_INFINITY;
    for (const dof of [1, 2, 10, 100, 1e4, 99_999, 100_001, 1e6, 1e9, 1e12, 1e15]) {
      const t = studentQuantile(0.975, dof);
      expect(t).toBeLessThanOrEqual(last);
      last = t;
    }
    within(studentQuantile(0.975, 1e15), normalQuantile(0.975), 1e-12);
    within(studentQuantile(0.975, 99_999), studentQuantile(0.975, 100_001), 1e-9);
  });

  it.each([0.5, 0, -1, Number.NaN, Number.POSITIVE_INFINITY])("refuses %d degrees", (dof) => {
    expect(() => studentQuantile(0.975, dof)).toThrow("degreesOfFreedom");
  });
});
