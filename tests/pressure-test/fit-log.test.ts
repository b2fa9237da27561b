import { describe, expect, it } from "vitest";
import { courseOfLeak, fitLog } from "../../src/pressure-test/fit-log.ts";
import type { ErrorSource } from "../../src/pressure-test/log-errors.ts";
import { strd } from "../vacuum-decay/strd.ts";

/** Errors of single rows of one variance, or of one each. */
const single = (variance: number | readonly number[]): ErrorSource => ({
  part: "gauge-reading",
  covariance: (i, j) =>
    i !== j ? 0 : typeof variance === "number" ? variance : (variance[i] as number),
});
/** One unknown factor of standard deviation 1 times a course. */
const along = (part: ErrorSource["part"], course: readonly number[]): ErrorSource => ({
  part,
  covariance: (i, j) => (course[i] as number) * (course[j] as number),
});
const u = ({ shares }: ReturnType<typeof fitLog>, part: string) =>
  shares.find((one) => one.part === part)?.u ?? 0;

describe("the course of a leak", () => {
  it("is that of 1/p that grows linearly", () => {
    // From 4 to 1: 1/p halfway is (1/4 + 1)/2 = 0.625, p = 1.6, of which the drop is 2.4 of 3.
    expect(courseOfLeak(0.5, 4, 3)).toBeCloseTo(2.4 / 3, 12);
    expect(courseOfLeak(0, 4, 3)).toBe(0);
    expect(courseOfLeak(1, 4, 3)).toBe(1);
  });

  it("bends no further than three quarters lost, and not at all for a rise or nothing", () => {
    for (const drop of [3.5, 4]) expect(courseOfLeak(0.5, 4, drop)).toBe(courseOfLeak(0.5, 4, 3));
    for (const drop of [-1, 0]) expect(courseOfLeak(0.5, 4, drop)).toBe(0.5);
    expect(courseOfLeak(0.5, 0, 0)).toBe(0.5);
  });
});

describe("the fit", () => {
  const { x, y } = strd.norris;

  it("is the certified line of NIST StRD Norris where all rows err alike", () => {
    // B0, B1, residual SD and SD of B1: NIST StRD Norris, certified values, from memory. A rise is a straight line.
    const fit = fitLog(x, y, [single(1)]);
    expect(fit.start).toBeCloseTo(-0.262323073774029, 8);
    expect(fit.drop).toBeCloseTo(-1.00211681802045, 10);
    expect(fit.misfit).toBeCloseTo(0.884796396144373, 10);
    // Scatter below the stated errors does not narrow the uncertainty: SD of B1 at σ = 1.
    expect(u(fit, "gauge-reading")).toBeCloseTo(0.000429796848199937 / 0.884796396144373, 12);
    expect(fit.shares).toHaveLength(1);
  });

  it("widens by the scatter beyond the stated errors (Birge ratio)", () => {
    const fit = fitLog(x, y, [single(0.25)]);
    expect(fit.misfit).toBeCloseTo(2 * 0.884796396144373, 10);
    expect(fit.shares.map(({ part }) => part)).toEqual(["scatter", "gauge-reading"]);
    // The certified SD of B1, which is what the residuals say.
    expect(Math.hypot(...fit.shares.map((one) => one.u))).toBeCloseTo(0.000429796848199937, 12);
  });

  it("weighs rows by their variance", () => {
    // Three rows of 1, 1 and 1e12 times the variance: the line through the first two.
    const fit = fitLog([0, 1, 2], [5, 6, 70], [single([1, 1, 1e12])]);
    expect(fit.start).toBeCloseTo(5, 9);
    expect(fit.drop).toBeCloseTo(-1, 9);
    // σ² of a slope through two points a unit apart is 1 + 1.
    expect(u(fit, "gauge-reading") ** 2).toBeCloseTo(2, 6);
  });

  it("finds the drop of a fast leak exactly, whose 1/p grows linearly", () => {
    for (const part of [0.1, 0.3, 0.75]) {
      const rows = [0, 0.1, 0.3, 0.6, 1];
      const fit = fitLog(
        rows,
        rows.map((at) => 1e6 / (1 + (part / (1 - part)) * at)),
        [single(1e4)],
      );
      expect(fit.start).toBeCloseTo(1e6, 0);
      expect(fit.drop / 1e6).toBeCloseTo(part, 6);
      expect(fit.misfit).toBeLessThan(1e-2);
    }
  });

  it("keeps an error common to all rows out of the drop, and lets a drift in whole", () => {
    const rows = [0, 0.25, 0.5, 0.75, 1];
    const rising = [100, 101, 102, 103, 104];
    const ones = rows.map(() => 30);
    const drift = rows.map((at) => 7 * at);
    const fit = fitLog(rows, rising, [
      single(1),
      along("gauge-error", ones),
      along("gauge-drift", drift),
    ]);
    expect(fit.drop).toBeCloseTo(-4, 6);
    expect(u(fit, "gauge-error")).toBeLessThan(1e-3);
    expect(u(fit, "gauge-drift")).toBeCloseTo(7, 6);
    // Textbook variance of a slope: σ²/Σ(x − x̄)² = 1/0.625.
    expect(u(fit, "gauge-reading") ** 2).toBeCloseTo(1 / 0.625, 5);
    expect(fit.shares.map(({ part }) => part).slice(0, 2)).toEqual([
      "gauge-drift",
      "gauge-reading",
    ]);
  });

  it("adds up what two sources give the same part", () => {
    const rows = [0, 0.5, 1];
    const fit = fitLog(rows, [9, 9, 9], [single(1), single(3)]);
    expect(fit.shares).toHaveLength(1);
    // σ²/Σ(x − x̄)² = 4/0.5.
    expect(u(fit, "gauge-reading") ** 2).toBeCloseTo(8, 9);
  });

  it("believes only first and last where the errors are a random walk", () => {
    // Increments of a random walk are independent, so that all between the ends says nothing of the slope.
    const rows = [0, 0.2, 0.7, 1];
    const walk: ErrorSource = {
      part: "barometer",
      covariance: (i, j) => 9 * Math.min(rows[i] as number, rows[j] as number),
    };
    const fit = fitLog(rows, [50, 58, 44, 53], [walk]);
    expect(fit.drop).toBeCloseTo(-3, 3);
    // Variance of the sum of all increments, widened by how far they scatter.
    expect(u(fit, "barometer")).toBeCloseTo(3, 3);
  });

  it("has no misfit of two rows, whose line is exact, and bears rows that repeat each other", () => {
    const two = fitLog([0, 1], [10, 7], [single(2)]);
    expect([two.drop, two.misfit]).toEqual([expect.closeTo(3, 9), undefined]);
    expect(u(two, "gauge-reading")).toBeCloseTo(2, 9);
    const same = fitLog([0, 0, 1], [10, 10, 7], [along("gauge-error", [1, 1, 1])]);
    expect(same.drop).toBeCloseTo(3, 6);
  });

  it("tells a row that jumps, and a loss that began late, in standard deviations", () => {
    // Ten rows of σ = 2 around 100, and one that is 12 off.
    const rows = Array.from({ length: 11 }, (_, i) => i / 10);
    const jump = fitLog(
      rows,
      rows.map((_, i) => (i === 6 ? 112 : 100)),
      [single(4)],
    );
    const largest = Math.max(...jump.innovations.map(Math.abs));
    expect(jump.innovations.indexOf(largest)).toBe(6);
    // Residual of a line by least squares at one row: (1 − h)·12/σ, h = 1/11 + 0.1²/1.1 (leverage).
    expect(largest).toBeCloseTo(6 * (1 - 1 / 11 - 0.01 / 1.1), 6);
    // 1 MPa until half time, then 8 Pa lost evenly: the late course takes all of it.
    const late = fitLog(
      rows,
      rows.map((at) => 1e6 - 16 * Math.max(0, at - 0.5)),
      [single(1)],
    ).late;
    expect(late.lost).toBeCloseTo(8, 3);
    // σ of a third regressor is what two others leave of it (Frisch–Waugh): by hand, on −2·max(0, x − ½).
    const hinge = rows.map((at) => -2 * Math.max(0, at - 0.5));
    const mean = hinge.reduce((a, b) => a + b) / 11;
    const slope =
      hinge.reduce((sum, h, i) => sum + h * ((rows[i] as number) - 0.5), 0) /
      rows.reduce((sum, at) => sum + (at - 0.5) ** 2, 0);
    const left = hinge.map((h, i) => h - mean - slope * ((rows[i] as number) - 0.5));
    expect(late.sigmas).toBeCloseTo(8 * Math.hypot(...left), 3);
  });
});
