import { describe, expect, it } from "vitest";
import { pointsOf } from "../../src/pressure-test/log-points.ts";
import type { State } from "../../src/pressure-test/setup.ts";
import { nitrogenDensity, nitrogenPressure } from "../../src/property-model/nitrogen.ts";

const row = (elapsed: number, pressure: number, ...temperatures: number[]): State => ({
  elapsed,
  pressure,
  temperatures,
  atmosphere: 101_325,
});
/** Rows of one temperature. */
const still = (pressures: readonly number[]) => pressures.map((p, i) => row(10 * i, p, 290));

describe("the points of a log", () => {
  it("are its rows at the temperature of the last one, timed from the first", () => {
    const rows = [row(60, 3e6, 300), row(120, 2.98e6, 295), row(180, 2.9e6, 290)];
    const { points } = pointsOf(rows, [], 0);
    expect(points.map(({ t }) => t)).toEqual([0, 60, 120]);
    expect(points.map(({ raw }) => raw)).toEqual([3e6, 2.98e6, 2.9e6]);
    expect(points.map(({ T }) => T)).toEqual([[300], [295], [290]]);
    expect(points.map(({ count }) => count)).toEqual([1, 1, 1]);
    for (const { raw, T, level } of points) {
      // Constant density by the reference equation of Span et al. (2000).
      const reference = nitrogenPressure(nitrogenDensity(raw, T[0] as number), 290);
      expect(Math.abs(level / reference - 1)).toBeLessThan(1e-5);
    }
  });

  it("move as the ideal gas law says at low pressure, where nitrogen is ideal within 0.1 %", () => {
    const [p, T1, T2] = [1.2e5, 300, 280];
    const { points } = pointsOf([row(0, p, T1), row(9, p, T2)], [], 0);
    const [first, last] = [points[0], points[1]] as const;
    expect((first?.perPascal ?? 0) / (T2 / T1)).toBeCloseTo(1, 3);
    // p₂ = p₁ T₂/T₁: ∂p₂/∂T₁ = −p₁ T₂/T₁²
    expect((first?.perKelvin[0] ?? 0) / ((-p * T2) / T1 ** 2)).toBeCloseTo(1, 2);
    // V ∝ 1 + β(T − T₀): ∂p₂/∂β = p₁ T₂/T₁ (T₁ − T₂) at β = 0
    expect((first?.perBeta ?? 0) / (((p * T2) / T1) * (T1 - T2))).toBeCloseTo(1, 2);
    expect(last?.perBeta).toBeCloseTo(0, 4); // rounding noise of 1.2e5 Pa
    expect(first?.perVolume).toEqual([]);
  });

  it("weigh zones by volume, of which only the ratio counts", () => {
    const p = 1.2e5;
    const rows = [row(0, p, 300, 280), row(9, p, 280, 280)];
    const { points } = pointsOf(rows, [1e-3, 3e-3], 0);
    const first = points[0];
    // Ideal gas: p₂ = p₁ Σ(V/T₁)/Σ(V/T₂) = p₁ · 280 · (1/300 + 3/280)/4
    const held = 1 / 300 + 3 / 280;
    expect((first?.level ?? 0) / ((p * 280 * held) / 4)).toBeCloseTo(1, 4);
    expect((first?.perKelvin[0] ?? 0) / (((-p * 280) / 4) * (1 / 300 ** 2))).toBeCloseTo(1, 2);
    expect((first?.perKelvin[1] ?? 0) / (((-p * 280) / 4) * (3 / 280 ** 2))).toBeCloseTo(1, 2);
    // One part in V of zone 1: ∂p₂/∂ln V₁ = p₁ · 280 · (1/300 − held/4)/4, the opposite for zone 2.
    const perVolume = ((p * 280) / 4) * (1 / 300 - held / 4);
    expect((first?.perVolume[0] ?? 0) / perVolume).toBeCloseTo(1, 1);
    expect((first?.perVolume[1] ?? 0) / -perVolume).toBeCloseTo(1, 1);
  });

  it("let one temperature of a row stand for all zones", () => {
    const volumes = [1e-3, 3e-3];
    const each = pointsOf([row(0, 3e6, 300, 300), row(9, 3e6, 290, 280)], volumes, 0);
    const one = pointsOf([row(0, 3e6, 300), row(9, 3e6, 290, 280)], volumes, 0);
    expect(one.points[0]?.level).toBeCloseTo(each.points[0]?.level ?? 0, 3);
    const back = pointsOf([row(0, 3e6, 300, 290), row(9, 3e6, 285)], volumes, 0);
    const both = pointsOf([row(0, 3e6, 300, 290), row(9, 3e6, 285, 285)], volumes, 0);
    expect(back.points[0]?.level).toBeCloseTo(both.points[0]?.level ?? 0, 3);
    expect(back.points.map(({ T }) => T)).toEqual([
      [300, 290],
      [285, 285],
    ]);
  });

  it("take the walls with them", () => {
    const rows = [row(0, 1.2e5, 300), row(9, 1.2e5, 280)];
    const level = (beta: number) => pointsOf(rows, [], beta).points[0]?.level ?? 0;
    // Copper of 49.5e-6/K shrinks by 0.099 % on 20 K.
    expect(level(49.5e-6) / level(0)).toBeCloseTo(1 + 20 * 49.5e-6, 5);
  });
});

describe("a log of many rows", () => {
  it("becomes at most a hundred points of equal times, the mean of their rows", () => {
    const rows = Array.from({ length: 1000 }, (_, i) => row(5 + i, 2e6 + i, 290 + i / 1000));
    const { points } = pointsOf(rows, [], 0);
    expect(points).toHaveLength(100);
    expect(points.reduce((sum, { count }) => sum + count, 0)).toBe(1000);
    // 999 s in a hundred parts: rows 0 to 9 fall into the first, whose mean is 4.5.
    expect(points[0]).toMatchObject({ t: 4.5, count: 10 });
    expect(points[0]?.raw).toBeCloseTo(2e6 + 4.5, 6);
    expect(points[0]?.T[0]).toBeCloseTo(290.0045, 9);
    expect(points.at(-1)?.t).toBeGreaterThan(985);
    expect(Math.max(...points.map(({ count }) => count))).toBeLessThanOrEqual(11);
  });

  it("does not let a fast stretch weigh more than its time", () => {
    const fast = Array.from({ length: 900 }, (_, i) => row(i / 100, 2e6, 290));
    const slow = Array.from({ length: 100 }, (_, i) => row(10 * (i + 1), 2e6, 290));
    const { points } = pointsOf([...fast, ...slow], [], 0);
    expect(points[0]?.count).toBe(900);
    expect(points.length).toBeGreaterThan(95);
    expect(points.length).toBeLessThanOrEqual(100);
  });

  it("stays as it is up to a hundred rows, however close they are", () => {
    const close = Array.from({ length: 99 }, (_, i) => row(i / 1000, 2e6, 290));
    expect(pointsOf([...close, row(1000, 2e6, 290)], [], 0).points).toHaveLength(100);
  });
});

describe("the scatter of single rows", () => {
  it("is a sixth of the mean square of second differences, which white noise of variance 1 gives 6", () => {
    // One row 60 Pa off: second differences of 60, −120 and 60 Pa, of five.
    const { variance } = pointsOf(still([1e6, 1e6, 1e6, 1e6 + 60, 1e6, 1e6, 1e6]), [], 0);
    expect(variance / ((60 ** 2 * (1 + 4 + 1)) / 6 / 5)).toBeCloseTo(1, 6);
  });

  it("does not see a steady course, nor the temperature that is corrected for", () => {
    const steady = pointsOf(still([1e6, 1.01e6, 1.02e6, 1.03e6, 1.04e6]), [], 0);
    expect(steady.variance).toBeLessThan(1e-6);
    // Rows of one charge whose temperature jumps to and fro, averaged into points of ten.
    const rows = Array.from({ length: 1001 }, (_, i) => {
      const T = 290 + (i % 2);
      return row(i, (1.2e5 * T) / 290, T);
    });
    // ± 1 K would be 414 Pa at every row, a variance of 4.6e5 Pa².
    expect(pointsOf(rows, [], 0).variance).toBeLessThan(1);
  });

  it("takes every row for itself, also within a point", () => {
    const rows = Array.from({ length: 1001 }, (_, i) => row(i, 1e6 + (i % 2) * 10, 290));
    // Second differences of ± 20 Pa throughout.
    expect(pointsOf(rows, [], 0).variance / (20 ** 2 / 6)).toBeCloseTo(1, 6);
  });

  it("is that of the rows at the last temperature", () => {
    // One charge, 300 K and at last 270 K: ± 10 Pa at 300 K are ± 9 Pa there (ideal gas).
    const rows = Array.from({ length: 1001 }, (_, i) => row(i, 1.2e5 + (i % 2) * 10, 300));
    const colder = [...rows.slice(0, -1), row(1000, 0.9 * 1.2e5, 270)];
    expect(pointsOf(colder, [], 0).variance / (18 ** 2 / 6)).toBeCloseTo(1, 0);
    const ratio = pointsOf(colder, [], 0).variance / pointsOf(rows, [], 0).variance;
    expect(Math.abs(ratio - 0.81)).toBeLessThan(0.05);
  });

  it("is not told from fewer than five rows", () => {
    const four = [1e6, 1e6, 1e6 + 60, 1e6];
    expect(pointsOf(still(four), [], 0).variance).toBe(0);
    expect(pointsOf(still([...four, 1e6]), [], 0).variance).toBeGreaterThan(0);
  });
});
