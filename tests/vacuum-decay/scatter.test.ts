// How much do readings scatter? On readings whose scatter is known.
// Third differences of equally spaced readings: 1, −3, 3, −1 (Abramowitz & Stegun, 1964, 25.1.1); of scatter σ² they
// have 1 + 9 + 9 + 1 = 20 σ².
import { describe, expect, it } from "vitest";
import { readScatter, type Scatter, scatterOf } from "../../src/vacuum-decay/scatter.ts";

function scatterIn(readings: readonly number[], at = (i: number) => 10 * i): Scatter {
  const scatter: Scatter = { variance: 0, count: 0, recent: [] };
  for (const [i, p] of readings.entries()) readScatter(scatter, at(i), p);
  return scatter;
}
const series = (n: number, p: (i: number) => number) => Array.from({ length: n }, (_, i) => p(i));
/** +1 and −1 Pa in turn: a third difference of 8 Pa, 64 / 20 Pa². */
const alternating = (n: number) => series(n, (i) => (i % 2 ? -1 : 1));

describe("readings", () => {
  it("on a parabola do not scatter, however unevenly they come", () => {
    const at = (i: number) => i * i + 3 * i;
    const found = scatterIn(
      series(30, (i) => 40 + 0.5 * at(i) - 1e-4 * at(i) ** 2),
      at,
    );
    expect(found.variance).toBeLessThan(1e-18);
  });

  it("that alternate scatter by a twentieth of the square of their third difference", () => {
    expect(scatterIn(alternating(20)).variance).toBeCloseTo(64 / 20, 12);
  });

  it("are known to scatter from three differences on, which are six readings", () => {
    expect(scatterOf(scatterIn(alternating(5)), 7)).toBe(7);
    expect(scatterOf(scatterIn(alternating(6)), 7)).toBeCloseTo(64 / 20, 12);
  });

  it("count as three standard deviations at most where one jumps", () => {
    const { variance, count } = scatterIn([...alternating(23), 1e6]);
    expect(count).toBe(21);
    expect(variance).toBeCloseTo((64 / 20) * (1 + 8 / 21), 9);
  });

  it("count as they are up to the tenth, before it is known what a standard deviation is", () => {
    // Twelve readings have nine differences; the jump makes the tenth of 1e6 + 3 + 3 + 1.
    const { variance, count } = scatterIn([...alternating(12), 1e6]);
    expect(count).toBe(10);
    expect(variance / ((9 * 64 + (1e6 + 7) ** 2) / 20 / 10)).toBeCloseTo(1, 12);
  });
});
