// A value equal to its limit keeps it in every pair of units; one display step beyond breaks it.
import { conformity } from "hvac-install-math/assessment";
import * as quantity from "hvac-install-math/quantity";
import {
  cm,
  inch,
  isQuantity,
  type Kind,
  mm,
  type Quantity,
  type Unit,
} from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";

type AnyUnit = Unit<"length">;

const units = Object.values(quantity as unknown as Record<string, AnyUnit>).filter(
  (one) => typeof one === "function" && "scale" in one && isQuantity(one(1)),
);
const kinds = [...new Set(units.map(({ kind }) => kind as Kind))];

const exact = ({ unit }: Quantity<"length">) => unit.difference(0);
const atMost = (value: Quantity<"length">, upperLimit: Quantity<"length">) =>
  conformity({ value, standardUncertainty: exact(value), upperLimit }).outcome;
const atLeast = (value: Quantity<"length">, lowerLimit: Quantity<"length">) =>
  conformity({ value, standardUncertainty: exact(value), lowerLimit }).outcome;

/** Figures as people type them; the definitions of the units make them equal, nothing else. */
const typed = [0.1, 0.3, 0.7, 1.1, 1.32, 2.2, 3.3, 7, 9.52, 13.2, 36, 66, 118, 140, 230.1, 500];

describe("a value equal to its limit", () => {
  it.each(kinds)("keeps it in every pair of units of %s", (kind) => {
    const own = units.filter((one) => (one.kind as Kind) === kind);
    for (const a of own) {
      for (const b of own) {
        for (const figure of typed) {
          const value = a(figure);
          const limit = b(value.in(b)); // to twelve digits, as a person would type the same value
          expect([atMost(value, limit), atLeast(value, limit)], `${value} ${limit}`).toEqual([
            "pass",
            "pass",
          ]);
        }
      }
    }
  });

  it("keeps it where sums and differences carry noise", () => {
    expect(atMost(cm(1.32), mm(13.2))).toBe("pass");
    expect(atLeast(cm(1.32), mm(13.2))).toBe("pass");
    expect(atMost(mm(0.1).plus(mm(0.2)), mm(0.3))).toBe("pass");
    expect(atLeast(mm(0.3).minus(mm(0.2)), mm(0.1))).toBe("pass");
    expect(atMost(mm(0.3).minus(mm(0.2)).minus(mm(0.1)), mm(0))).toBe("pass");
    expect(atMost(inch(3 / 8), mm(9.525))).toBe("pass"); // 25.4 mm/in, exact
  });
});

describe("one step of a display beyond its limit", () => {
  // A thousandth of the unit and six digits: finer than any field instrument.
  it.each(kinds)("fails for every unit of %s", (kind) => {
    for (const unit of units.filter((one) => (one.kind as Kind) === kind)) {
      for (const figure of typed) {
        const step = Math.max(figure * 1e-6, 1e-6);
        expect(atMost(unit(figure + step), unit(figure)), String(unit(figure))).toBe("fail");
        expect(atLeast(unit(figure - step), unit(figure)), String(unit(figure))).toBe("fail");
      }
    }
  });
});
