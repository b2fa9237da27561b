import fc from "fast-check";
import { additionalCharge, multiSplitCharge, type ShortLineRule } from "hvac-install-math/line-set";
import { ft, g, gPerM, m, oz, ozPerFt } from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";

const lengths = fc.double({ min: 0, max: 200, noNaN: true });
const rates = fc.double({ min: 0, max: 200, noNaN: true });
const rules = fc.constantFrom<ShortLineRule>("add-only", "add-and-subtract", "not-stated");

const charge = (length: number, pre: number, rate: number, shortLineRule: ShortLineRule) =>
  additionalCharge({
    length: m(length),
    preChargedLength: m(pre),
    rate: gPerM(rate),
    shortLineRule,
  }).additionalCharge.si;

describe("the added charge", () => {
  it("never falls when the line gets longer", () => {
    fc.assert(
      fc.property(lengths, lengths, lengths, rates, rules, (a, b, pre, rate, rule) => {
        const [short, long] = a < b ? [a, b] : [b, a];
        expect(charge(short, pre, rate, rule)).toBeLessThanOrEqual(charge(long, pre, rate, rule));
      }),
    );
  });

  it("is never negative where the manual only adds", () => {
    fc.assert(
      fc.property(lengths, lengths, rates, (length, pre, rate) => {
        expect(charge(length, pre, rate, "add-only")).toBeGreaterThanOrEqual(0);
      }),
    );
  });

  it("is the same in feet and ounces as in meters and grams", () => {
    fc.assert(
      fc.property(lengths, lengths, rates, rules, (length, pre, rate, shortLineRule) => {
        const imperial = additionalCharge({
          length: ft(m(length).in(ft)),
          preChargedLength: ft(m(pre).in(ft)),
          rate: ozPerFt(gPerM(rate).in(ozPerFt)),
          shortLineRule,
        });
        expect(imperial.additionalCharge.unit).toBe(oz);
        expect(imperial.additionalCharge.si).toBeCloseTo(
          charge(length, pre, rate, shortLineRule),
          8,
        );
      }),
    );
  });

  it("lands on a step of the scale, within half a step", () => {
    fc.assert(
      fc.property(lengths, rates, fc.constantFrom(1, 2, 5, 10), (length, rate, step) => {
        const result = additionalCharge({
          length: m(length),
          preChargedLength: m(5),
          rate: gPerM(rate),
          shortLineRule: "add-and-subtract",
          scaleResolution: g(step),
        });
        const grams = result.additionalCharge.in(g);
        expect(Math.abs(grams / step - Math.round(grams / step))).toBeLessThan(1e-9);
        expect(Math.abs(grams - result.unroundedCharge.in(g))).toBeLessThanOrEqual(step / 2 + 1e-9);
      }),
    );
  });

  it("of several indoor units is the sum of the single ones", () => {
    const line = fc.record({ length: lengths, pre: lengths, rate: rates });
    fc.assert(
      fc.property(fc.array(line, { minLength: 1, maxLength: 5 }), rules, (lines, rule) => {
        const together = multiSplitCharge({
          lines: lines.map(({ length, pre, rate }) => ({
            length: m(length),
            preChargedLength: m(pre),
            rate: gPerM(rate),
          })),
          shortLineRule: rule,
        });
        const sum = lines.reduce((s, l) => s + charge(l.length, l.pre, l.rate, rule), 0);
        expect(together.additionalCharge.si).toBeCloseTo(sum, 9);
      }),
    );
  });
});
