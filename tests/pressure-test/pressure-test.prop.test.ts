import fc from "fast-check";
import {
  assessPressureTest,
  expectedTestPressure,
  leakGas,
  pressurizationPlan,
  scaleLeak,
} from "hvac-install-math/pressure-test";
import {
  deltaK,
  hour,
  kelvin,
  kPaa,
  kPag,
  liter,
  paM3PerS,
  pascal,
  standardAtmosphere,
} from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";

const range = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const pressure = range(150, 4500); // kPa absolute
const temperature = range(240, 335); // K

const later = (p: number, from: number, to: number) =>
  expectedTestPressure({
    pressure: kPaa(p),
    temperature: kelvin(from),
    laterTemperature: kelvin(to),
  }).in(kPaa);

describe("the expected pressure", () => {
  it("comes back when the temperature does", () => {
    fc.assert(
      fc.property(pressure, temperature, temperature, (p, a, b) => {
        const there = later(p, a, b);
        fc.pre(there < 6000);
        expect(later(there, b, a) / p).toBeCloseTo(1, 10);
      }),
    );
  });

  it("does not depend on the way", () => {
    fc.assert(
      fc.property(pressure, temperature, temperature, temperature, (p, a, b, c) => {
        const middle = later(p, a, b);
        fc.pre(middle < 6000);
        expect(later(middle, b, c) / later(p, a, c)).toBeCloseTo(1, 10);
      }),
    );
  });

  it("rises with temperature and with pressure, faster than the ideal gas at test pressure", () => {
    fc.assert(
      fc.property(range(1000, 4500), range(245, 320), range(1, 12), (p, T, rise) => {
        const warm = later(p, T, T + rise);
        expect(warm).toBeGreaterThan((p * (T + rise)) / T);
        expect(later(p * 1.01, T, T + rise)).toBeGreaterThan(warm);
      }),
    );
  });

  it("lies between the zones' own answers", () => {
    fc.assert(
      fc.property(pressure, temperature, temperature, range(0.01, 0.99), (p, a, b, share) => {
        const both = expectedTestPressure({
          pressure: kPaa(p),
          temperature: kelvin(290),
          laterTemperature: [kelvin(a), kelvin(b)],
          volume: [liter(share), liter(1 - share)],
        }).in(kPaa);
        const [one, other] = [later(p, 290, a), later(p, 290, b)];
        expect(both).toBeGreaterThanOrEqual(Math.min(one, other) * (1 - 1e-9));
        expect(both).toBeLessThanOrEqual(Math.max(one, other) * (1 + 1e-9));
      }),
    );
  });
});

const verdict = (end: number, limit?: number, k = 0.97725) =>
  assessPressureTest({
    start: { pressure: kPaa(3500), temperature: kelvin(300) },
    end: { pressure: kPaa(end), temperature: kelvin(292), elapsed: hour(10) },
    instruments: {
      pressure: { accuracy: pascal(14e3), resolution: pascal(700) },
      temperature: { accuracy: deltaK(0.5), resolution: deltaK(0.1) },
    },
    volume: liter(3),
    atmosphere: standardAtmosphere,
    confidence: k,
    ...(limit && { criterion: { maximumDrop: pascal(limit) } }),
  });

describe("the verdict", () => {
  it("passes nothing without a limit", () => {
    fc.assert(
      fc.property(range(2000, 3600), (end) => {
        expect(verdict(end).outcome).not.toBe("pass");
      }),
    );
  });

  it("follows drop, uncertainty and limit as it says", () => {
    fc.assert(
      fc.property(range(3200, 3420), range(2e3, 2e5), (end, limit) => {
        const { outcome, cause, correctedDrop } = verdict(end, limit);
        const [d, U] = [correctedDrop.value.si, correctedDrop.expandedUncertainty.si];
        const used = Math.min(limit, 0.01 * (3500e3 - 101_325));
        if (outcome === "pass") expect(d + U).toBeLessThanOrEqual(used * (1 + 1e-9));
        if (outcome === "fail") {
          expect(d > 1.5 * U || d - U >= used * (1 - 1e-9)).toBe(true);
          expect(d + U).toBeGreaterThan(used);
        }
        expect(cause === "leak").toBe(d > U);
        if (cause === "leak") expect(outcome).not.toBe("pass");
      }),
    );
  });

  it("does not get better when more gas is missing", () => {
    const rank = { pass: 0, inconclusive: 1, fail: 2 };
    fc.assert(
      fc.property(range(3200, 3395), range(1, 200), range(5e3, 2e5), (end, less, limit) => {
        const [more, fewer] = [verdict(end, limit), verdict(end - less, limit)];
        fc.pre(more.cause !== "unexplained-rise");
        expect(rank[fewer.outcome]).toBeGreaterThanOrEqual(rank[more.outcome]);
      }),
    );
  });
});

describe("the plan", () => {
  it("never passes the lowest limit, whatever is wanted", () => {
    const part = fc.constantFrom(
      "low side" as const,
      "high side" as const,
      "component" as const,
      "relief device" as const,
    );
    const limit = fc.record({ part, pressure: range(100, 4500) });
    fc.assert(
      fc.property(
        fc.array(limit, { minLength: 1, maxLength: 4 }),
        range(50, 4800),
        temperature,
        temperature,
        (limits, wanted, now, warmest) => {
          const plan = pressurizationPlan({
            limits: limits.map(({ part, pressure }) => ({ part, pressure: kPag(pressure) })),
            wanted: kPag(wanted),
            temperature: kelvin(now),
            warmest: kelvin(warmest),
            atmosphere: standardAtmosphere,
          });
          const lowest = Math.min(...limits.map(({ pressure }) => pressure * 1e3));
          expect(plan.pressureWhenWarm.si).toBeLessThanOrEqual(lowest * (1 + 1e-9));
          for (const { pressure } of plan.stages) {
            expect(pressure.si).toBeLessThanOrEqual(plan.fillPressure.si);
          }
        },
      ),
    );
  });
});

describe("scaled leaks", () => {
  it("scale back to where they came from", () => {
    const gas = fc.record({
      gramsPerMole: range(2, 150),
      viscosity: range(5, 30),
      pressure: range(150, 5000),
    });
    fc.assert(
      fc.property(gas, gas, (a, b) => {
        const of = (one: typeof a) => ({
          ...leakGas.nitrogen,
          ...one,
          pressure: kPaa(one.pressure),
          outside: standardAtmosphere,
        });
        const there = scaleLeak({ throughput: paM3PerS(1e-5), from: of(a), to: of(b) });
        const back = scaleLeak({ throughput: there.viscous, from: of(b), to: of(a) });
        expect(back.viscous.si).toBeCloseTo(1e-5, 15);
      }),
    );
  });
});
