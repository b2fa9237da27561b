import fc from "fast-check";
import { ampere, minute, ohm, percent, second, volt } from "hvac-install-math/quantity";
import {
  assessSupplyVoltage,
  assessSupplyWeek,
  nameplateVoltageRange,
  supplySag,
  unbalanceDerating,
  voltageLogStatistics,
  voltageUnbalance,
} from "hvac-install-math/supply-voltage";
import { describe, expect, it } from "vitest";

const volts = fc.double({ min: 1, max: 1000, noNaN: true });
const three = fc.tuple(volts, volts, volts);

describe("voltageUnbalance", () => {
  it("does not depend on the order of the lines, or on the size of the voltage", () => {
    fc.assert(
      fc.property(three, fc.double({ min: 0.1, max: 10, noNaN: true }), ([a, b, c], k) => {
        const u = voltageUnbalance([a, b, c].map(volt)).unbalance.si;
        expect(voltageUnbalance([c, a, b].map(volt)).unbalance.si).toBeCloseTo(u, 10);
        expect(voltageUnbalance([k * a, k * b, k * c].map(volt)).unbalance.si).toBeCloseTo(u, 10);
      }),
    );
  });

  it("is between half and two thirds of (maximum − minimum)/average", () => {
    fc.assert(
      fc.property(three, (set) => {
        const { unbalance, average } = voltageUnbalance(set.map(volt));
        const spread = (Math.max(...set) - Math.min(...set)) / average.si;
        expect(unbalance.si).toBeGreaterThanOrEqual(spread / 2 - 1e-12);
        expect(unbalance.si).toBeLessThanOrEqual((2 * spread) / 3 + 1e-12);
      }),
    );
  });

  it("has the negative sequence of the phasors that close the triangle", () => {
    const near = fc.double({ min: 380, max: 420, noNaN: true });
    fc.assert(
      fc.property(near, near, near, (ab, bc, ca) => {
        // Corners A = 0, B = ab, C = ca at the angle that leaves bc; Fortescue's components.
        const angle = Math.acos((ab ** 2 + ca ** 2 - bc ** 2) / (2 * ab * ca));
        const [cx, cy] = [ca * Math.cos(angle), ca * Math.sin(angle)];
        const sides = [
          [-ab, 0],
          [ab - cx, -cy],
          [cx, cy],
        ] as const;
        const component = (turn: number) => {
          const parts = sides.map(([x, y], i) => {
            const [c, s] = [Math.cos(turn * i), Math.sin(turn * i)];
            return [x * c - y * s, x * s + y * c] as const;
          });
          return Math.hypot(...[0, 1].map((j) => parts.reduce((sum, p) => sum + (p[j] ?? 0), 0)));
        };
        const third = (2 * Math.PI) / 3;
        const [one, other] = [component(third), component(-third)];
        const expected = Math.min(one, other) / Math.max(one, other);
        const ours = voltageUnbalance([ab, bc, ca].map(volt)).negativeSequence?.si ?? Number.NaN;
        expect(Math.abs(ours - expected)).toBeLessThan(1e-6);
      }),
    );
  });

  it("derates more the more uneven it is", () => {
    const u = fc.double({ min: 0, max: 5, noNaN: true });
    fc.assert(
      fc.property(u, u, (a, b) => {
        const [less, more] = [Math.min(a, b), Math.max(a, b)].map((x) =>
          unbalanceDerating(percent(x)),
        );
        expect(less).toBeGreaterThanOrEqual(more ?? 1);
        expect(more).toBeGreaterThanOrEqual(0.76 - 1e-12);
      }),
    );
  });
});

describe("assessSupplyVoltage", () => {
  const judge = (v: number, accuracy: number) =>
    assessSupplyVoltage({
      nameplate: { rated: [volt(208), volt(230)] },
      supply: { voltage: volt(240), phases: 1 },
      readings: [{ voltage: volt(v) }],
      measuredAt: "unit",
      meter: { accuracy: volt(accuracy) },
    });

  it("never passes a voltage that the unit does not bear, however poor the meter", () => {
    const accuracy = fc.double({ min: 0, max: 20, noNaN: true });
    fc.assert(
      fc.property(fc.double({ min: 0, max: 600, noNaN: true }), accuracy, (v, a) => {
        const { outcome, cause } = judge(v, a);
        if (v < 187 || v > 253) expect(outcome).not.toBe("pass");
        if (v >= 208 && v <= 253) expect(outcome).not.toBe("fail");
        if (outcome !== "fail") expect(cause).toBeUndefined();
        else expect(cause).toBeDefined();
      }),
      { numRuns: 500 },
    );
  });

  it("a better meter never turns a pass into a fail or a fail into a pass", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 150, max: 300, noNaN: true }),
        fc.nat(20),
        fc.nat(20),
        (v, a, b) => {
          const pair = [judge(v, a).outcome, judge(v, b).outcome];
          expect(pair.includes("pass") && pair.includes("fail")).toBe(false);
        },
      ),
      { numRuns: 500 },
    );
  });
});

describe("nameplateVoltageRange", () => {
  it("holds its rated voltages, within its ceiling", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 100, max: 690 }),
        fc.array(fc.double({ min: 0.9, max: 1.1, noNaN: true }), { minLength: 1, maxLength: 3 }),
        (usual, parts) => {
          const rated = parts.map((part) => Math.round(part * usual));
          const { minimum, maximum, ceiling } = nameplateVoltageRange({ rated: rated.map(volt) });
          for (const v of rated) expect(v > minimum.si && v < maximum.si).toBe(true);
          expect(ceiling >= maximum).toBe(true);
        },
      ),
    );
  });
});

describe("supplySag", () => {
  it("finds the resistance that made the sag", () => {
    const r = fc.double({ min: 0.01, max: 2, noNaN: true });
    fc.assert(
      fc.property(
        r,
        fc.double({ min: 1, max: 40, noNaN: true }),
        fc.constantFrom(1 as const, 3 as const),
        (R, I, phases) => {
          const drop = R * I * (phases === 3 ? Math.sqrt(3) : 1);
          const sag = supplySag({
            rest: volt(480),
            load: volt(480 - drop),
            loadCurrent: ampere(I),
            phases,
          });
          expect(sag.sourceResistance?.value.in(ohm)).toBeCloseTo(R, 8);
        },
      ),
    );
  });
});

describe("logs", () => {
  const series = fc.array(fc.double({ min: 0, max: 300, noNaN: true }), {
    minLength: 2,
    maxLength: 60,
  });
  const range = { minimum: volt(207), maximum: volt(253) };

  it("have ordered statistics, and times outside that add up", () => {
    fc.assert(
      fc.property(series, (values) => {
        const readings = values.map((v, i) => ({ elapsed: second(7 * i), voltage: volt(v) }));
        const seen = voltageLogStatistics({ readings, range });
        const order = [
          seen.minimum,
          seen.percentile5,
          seen.median,
          seen.percentile95,
          seen.maximum,
        ];
        for (let i = 1; i < order.length; i++) {
          expect((order[i - 1]?.si ?? 0) <= (order[i]?.si ?? 0)).toBe(true);
        }
        expect(seen.mean.si).toBeGreaterThanOrEqual(seen.minimum.si - 1e-9);
        expect(seen.mean.si).toBeLessThanOrEqual(seen.maximum.si + 1e-9);
        const outside = seen.timeBelow.plus(seen.timeAbove).dividedBy(seen.duration);
        expect(outside).toBeCloseTo(seen.shareOutside.si, 10);
      }),
    );
  });

  it("of constant voltage are judged by that voltage", () => {
    fc.assert(
      fc.property(fc.integer({ min: 150, max: 290 }), (v) => {
        const readings = Array.from({ length: 10_081 }, (_, i) => ({
          elapsed: minute(i),
          voltage: volt(v),
        }));
        const expected = v >= 207 && v <= 253 ? "pass" : "fail";
        expect(assessSupplyWeek({ nominal: volt(230), readings }).outcome).toBe(expected);
      }),
      { numRuns: 15 },
    );
  });
});
