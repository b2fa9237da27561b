// The one allowance for the noise of binary arithmetic, by IEEE 754: exact multiples stay exact in any unit.
import fc from "fast-check";
import { expect, it } from "vitest";
import { cm, ft, inch, mm } from "../../src/quantity/index.ts";
import { isEqual, stepsUpTo, stepsWithin } from "../../src/quantity/limit.ts";

const units = [inch, ft, mm, cm];
const unit = fc.constantFrom(...units);

it("counts a whole number of steps as just that, whatever the units", () => {
  // NIST SP 811: 1 in = 25.4 mm exactly, so that 10 × 0.1 in = 25.4 mm.
  expect(0.1 + 0.2 === 0.3).toBe(false);
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 500 }),
      fc.integer({ min: 1, max: 4000 }),
      unit,
      (n, step, one) => {
        const [size, each] = [one((n * step) / 1000).si, one(step / 1000).si];
        expect([stepsUpTo(size, each), stepsWithin(size, each)]).toEqual([n, n]);
      },
    ),
  );
});

it("sees a thousandth of a step", () => {
  expect([2.999, 3.001].map((size) => stepsUpTo(size, 1))).toEqual([3, 4]);
  expect([2.999, 3.001].map((size) => stepsWithin(size, 1))).toEqual([2, 3]);
  expect(stepsUpTo(0, 1)).toBe(0);
});

it("finds 1.32 cm and 13.2 mm equal, and a micrometer more different", () => {
  expect(isEqual(cm(1.32).si, mm(13.2).si)).toBe(true);
  expect(isEqual(cm(1.32).si, mm(13.201).si)).toBe(false);
});
