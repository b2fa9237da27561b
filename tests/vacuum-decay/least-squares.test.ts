// Fits whose answer is seen without arithmetic; NIST StRD are in tests/published.
import { expect, it } from "vitest";
import { linearLeastSquares, separableLeastSquares } from "./qr-least-squares.ts";

it("reads the coefficients off where each point has its own column", () => {
  const columns = [
    [1, 0, 0, 0],
    [0, 1, 0, 0],
    [0, 0, -1, 0],
  ];
  const { coefficients, residuals, rss, deviations, inverse } = linearLeastSquares(
    columns,
    [5, 7, 9, 3],
  );
  expect(coefficients).toEqual([5, 7, -9]);
  expect(residuals).toEqual([0, 0, 0, 3]);
  expect(rss).toBe(9);
  // 9 over one degree of freedom, and the unit matrix
  expect(deviations).toEqual([3, 3, 3]);
  expect(inverse).toEqual([
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ]);
});

it("finds the one parameter that enters by a curve, at either end of the range too", () => {
  const x = [0, 1, 2, 3, 4, 5, 6, 7];
  const fitted = (k: number, low: number, high: number) =>
    separableLeastSquares(
      x.map((at) => 2 + 3 * Math.exp(-k * at)),
      (theta) => [x.map(() => 1), x.map((at) => Math.exp(-theta * at))],
      (theta) => [x.map(() => 0), x.map((at) => -at * Math.exp(-theta * at))],
      low,
      high,
    );
  const { parameter, coefficients } = fitted(0.37, 0.01, 10);
  expect(parameter).toBeCloseTo(0.37, 9);
  expect(coefficients[0]).toBeCloseTo(2, 9);
  expect(coefficients[1]).toBeCloseTo(3, 9);
  expect(fitted(0.37, 0.5, 10).parameter).toBeCloseTo(0.5, 9);
  expect(fitted(0.37, 0.01, 0.3).parameter).toBeCloseTo(0.3, 9);
});
