import { micron, pascalAbsolute, pascalPerSecond, second } from "hvac-install-math/quantity";
import { compareLineAndSaturating } from "hvac-install-math/vacuum-decay";
import { describe, expect, it } from "vitest";
import { aiccOf } from "../../src/vacuum-decay/least-squares.ts";
import { random } from "./simulation.ts";
import { strd } from "./strd.ts";

const noisy = (f: (t: number) => number, until: number, seed = 1) => {
  const rng = random(seed);
  return Array.from({ length: 31 }, (_, i) => {
    const t = (until * i) / 30;
    return { elapsed: second(t), pressure: micron(f(t) + 5 * rng.normal()) };
  });
};
const wet = (t: number) => 300 - 2000 * Math.expm1(-t / 900);

describe("compareLineAndSaturating", () => {
  it("prefers the saturating curve for NIST StRD Misra1a", () => {
    const { x, y } = strd.misra1a;
    const readings = x.map((t, i) => ({
      elapsed: second(t),
      pressure: pascalAbsolute(y[i] as number),
    }));
    expect(compareLineAndSaturating(readings).preferred).toBe("saturating");
  });

  it("gives the slope and its deviation that NIST certifies for Norris, in any order of rows", () => {
    const { x, y } = strd.norris;
    const readings = x.map((t, i) => ({
      elapsed: second(t),
      pressure: pascalAbsolute(y[i] as number),
    }));
    for (const rows of [readings, [...readings].reverse()]) {
      const { line } = compareLineAndSaturating(rows);
      expect(line.rate.in(pascalPerSecond)).toBeCloseTo(1.00211681802045, 9);
      expect(line.rateDeviation.in(pascalPerSecond)).toBeCloseTo(0.000429796848199937, 9);
      // residual standard deviation 0.884796396144373 with 34 degrees of freedom, certified; K counts the variance
      expect(line.aicc).toBeCloseTo(aiccOf(34 * 0.884796396144373 ** 2, 36, 3), 3);
    }
  });

  it("gives the plateau, time constant and AICc of the saturating curve", () => {
    // exact readings: 40 Pa rising by 60 Pa with a time constant of 400 s
    const exact = Array.from({ length: 40 }, (_, i) => {
      const t = 50 + 30 * i;
      return {
        elapsed: second(t),
        pressure: pascalAbsolute(40 + 60 * -Math.expm1(-(t - 50) / 400)),
      };
    });
    const { saturating, preferred } = compareLineAndSaturating(exact);
    expect(saturating.plateau.in(pascalAbsolute)).toBeCloseTo(100, 6);
    expect(saturating.timeConstant.in(second)).toBeCloseTo(400, 5);
    expect(preferred).toBe("saturating");
    // nothing is left of the squares but the 1e-12 of them that keeps the logarithm finite
    const squares = exact.reduce((sum, { pressure }) => sum + pressure.si ** 2, 0);
    expect(saturating.aicc).toBeCloseTo(aiccOf(1e-12 * squares, 40, 4), 1);
  });

  it("does not care when the log begins, nor for the order of its rows", () => {
    const from = (start: number) => {
      const rows = Array.from({ length: 40 }, (_, i) => ({
        elapsed: second(start + 30 * i),
        pressure: pascalAbsolute(40 - 60 * Math.expm1((-30 * i) / 400)),
      }));
      expect(compareLineAndSaturating([...rows].reverse())).toEqual(compareLineAndSaturating(rows));
      return compareLineAndSaturating(rows).saturating;
    };
    for (const start of [0, 86_400]) {
      expect(from(start).timeConstant.in(second)).toBeCloseTo(400, 5);
      expect(from(start).plateau.in(pascalAbsolute)).toBeCloseTo(100, 6);
    }
  });

  it("says that a minute of a slow curve cannot be told from a line, and half an hour can", () => {
    const minute = Array.from({ length: 40 }, (_, seed) =>
      compareLineAndSaturating(noisy(wet, 60, seed)),
    );
    const curved = minute.filter(({ preferred }) => preferred === "saturating");
    expect(curved.length).toBeLessThanOrEqual(6); // AICc is wrong in some percent of cases, as it must be
    expect(minute.some(({ preferred }) => preferred === "indistinguishable")).toBe(true);
    const long = compareLineAndSaturating(noisy(wet, 1800));
    expect(long.preferred).toBe("saturating");
    expect(long.saturating.timeConstant.si).toBeCloseTo(900, -2);
    expect(long.saturating.plateau.in(micron)).toBeCloseTo(2300, -2);
  });

  it("takes a constant and an exact line without failing", () => {
    expect(compareLineAndSaturating(noisy(() => 300, 600)).line.rate.si).toBeCloseTo(0, 2);
    const exact = [0, 1, 2, 3, 4, 5, 6].map((t) => ({
      elapsed: second(t),
      pressure: micron(300 + t),
    }));
    expect(compareLineAndSaturating(exact).preferred).not.toBe("saturating");
  });

  it("asks for six different times", () => {
    expect(() => compareLineAndSaturating(noisy(wet, 60).slice(0, 5))).toThrow("readings");
    expect(() => compareLineAndSaturating(undefined as never)).toThrow("readings");
  });
});
