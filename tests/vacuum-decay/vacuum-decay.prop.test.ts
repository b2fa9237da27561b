import * as fc from "fast-check";
import { degC, inch, kelvin, m, micron, pascalAbsolute, second } from "hvac-install-math/quantity";
import {
  acceptancePolicies,
  assessVacuumDecay,
  tubeConductance,
  waterSaturationPressure,
  waterSaturationTemperature,
} from "hvac-install-math/vacuum-decay";
import { describe, expect, it } from "vitest";

const options = { ambient: degC(20), policy: acceptancePolicies.commonPractice500 };
const anyLog = fc.array(
  fc.record({
    t: fc.double({ min: -100, max: 5000, noNaN: true }),
    p: fc.double({ min: 0, max: 800_000, noNaN: true }),
  }),
  { minLength: 1, maxLength: 150 },
);
const numbersIn = (value: unknown): number[] =>
  typeof value === "number"
    ? [value]
    : typeof value === "object" && value !== null
      ? Object.values(value).flatMap(numbersIn)
      : [];

describe("vacuum decay, for any input", () => {
  it("takes any log without a wrong number, and accounts for every row", () => {
    fc.assert(
      fc.property(anyLog, (log) => {
        const readings = log.map(({ t, p }) => ({ elapsed: second(t), pressure: micron(p) }));
        const result = assessVacuumDecay({ ...options, readings });
        expect(numbersIn(result).every(Number.isFinite)).toBe(true);
        const counted = Object.values(result.excludedCount).reduce((sum, n) => sum + n, 0);
        expect(result.excluded).toHaveLength(counted);
        const [low, high] = result.leakInterval ?? [];
        expect(low?.si ?? 0).toBeLessThanOrEqual(high?.si ?? 0);
        if (result.outcome === "pass") expect(result.smallestLeak?.si).toBeGreaterThan(0);
        if (result.outcome !== "pass") expect(result.actions.length).toBeGreaterThan(0);
      }),
      { numRuns: 200 },
    );
  });

  it("a straight rise scales: twice the rise is twice the leak", () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 40 }), (slope) => {
        const leak = (factor: number) =>
          assessVacuumDecay({
            ...options,
            readings: Array.from({ length: 91 }, (_, i) => ({
              elapsed: second(10 * i),
              pressure: micron(300 + (factor * slope * i) / 2),
            })),
          }).leak?.value.si ?? 0;
        expect(leak(2) / leak(1)).toBeCloseTo(2, 1);
      }),
      { numRuns: 20 },
    );
  });

  it("saturation temperature undoes saturation pressure, and both rise together", () => {
    fc.assert(
      fc.property(fc.double({ min: 175, max: 640, noNaN: true }), (T) => {
        const p = waterSaturationPressure(kelvin(T));
        expect(waterSaturationTemperature(p).si).toBeCloseTo(T, 6);
        expect(waterSaturationPressure(kelvin(T + 1)).si).toBeGreaterThan(p.si);
      }),
    );
  });

  it("a wider or shorter tube and more pressure let more through", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.05, max: 2, noNaN: true }),
        fc.double({ min: 0.1, max: 20, noNaN: true }),
        fc.double({ min: 0.5, max: 1e4, noNaN: true }),
        (d, l, p) => {
          const of = (a: number, b: number, c: number) =>
            tubeConductance({
              bore: inch(a),
              length: m(b),
              meanPressure: pascalAbsolute(c),
              temperature: degC(20),
            }).conductance.si;
          const base = of(d, l, p);
          expect(of(d * 1.2, l, p)).toBeGreaterThan(base);
          expect(of(d, l * 1.2, p)).toBeLessThan(base);
          // Knudsen's minimum: conductance may dip by some percent near the transition
          expect(of(d, l, p * 3)).toBeGreaterThan(0.9 * base);
        },
      ),
    );
  });
});
