// American English, and any English on a small engine without Intl, is written as Intl writes it.
import { afterEach, expect, it, vi } from "vitest";
import { categoryOf, listed } from "../../src/assessment/grammar.ts";
import { numbersOf } from "../../src/display/format-number.ts";
import { InvalidInputError } from "../../src/quantity/index.ts";
import { numberMarks } from "../../src/read-quantity/number-marks.ts";

afterEach(() => vi.unstubAllGlobals());

const values = [0, -0, 1, -1, 0.5, 2.75, -17.125, 100, 1234567.875, -40, 1e-7, 6.02e23, -1.5e-9];

/** What ECMA-402 makes of a number, with the minus sign of the library. */
const byIntl = (value: number, options: Intl.NumberFormatOptions) =>
  new Intl.NumberFormat("en-US", options).format(value + 0).replaceAll("-", "−");

it("writes the numbers that Intl writes in English", () => {
  const { fixed, scientific } = numbersOf(undefined, undefined);
  // Ties included: 1.005 is a little less in binary, and people write 1.01.
  for (const value of [...values, 1.005, -2.675, 0.15, 8.345, 99.995, 123456789012345]) {
    if (value > 1e15) continue; // never written out
    for (const decimals of [0, 1, 2, 3]) {
      const most = { useGrouping: false, maximumFractionDigits: decimals };
      const least = { ...most, minimumFractionDigits: decimals };
      expect(fixed(value, decimals), `${value}`).toBe(
        byIntl(value, least).replace(/^−(?=[0.]+$)/, ""),
      );
      expect(fixed(value, decimals, true), `${value}`).toBe(
        byIntl(value, most).replace(/^−0$/, "0"),
      );
    }
  }
  for (const value of values) {
    for (const digits of [2, 4]) {
      const options = { notation: "scientific", maximumFractionDigits: digits - 1 } as const;
      expect(scientific(value, digits)).toBe(byIntl(value, options));
    }
  }
});

it("keeps the decimals of a step in any locale", () => {
  const { fixed } = numbersOf("de", undefined);
  expect([fixed(4, 1), fixed(4, 1, true)]).toEqual(["4,0", "4"]);
});

it("counts and lists as Intl does in English", () => {
  const rules = new Intl.PluralRules("en-US");
  for (const value of [0, 1, -1, 1.5, 2, 11, 21, 0.1]) {
    expect(categoryOf(value, "en-US"), `${value}`).toBe(rules.select(value));
  }
  for (const texts of [[], ["a"], ["a", "b"], ["a", "b", "c"], ["a", "b", "c", "d"]]) {
    for (const type of ["conjunction", "disjunction"] as const) {
      const expected = new Intl.ListFormat("en-US", { type }).format(texts);
      expect(listed(texts, "en-US", type === "disjunction" ? ":or" : undefined)).toBe(expected);
    }
  }
});

it("writes English alone on an engine without Intl", () => {
  const here = numbersOf("en-US", undefined);
  vi.stubGlobal("Intl", undefined);
  for (const locale of [undefined, "en-US", "en-GB"]) {
    const numbers = numbersOf(locale, undefined);
    expect(numbers.fixed(-17.125, 1)).toBe(here.fixed(-17.125, 1));
  }
  expect(() => numbersOf("de", undefined)).toThrow(InvalidInputError);
  expect(() => numbersOf("de-x-en", undefined)).toThrow(InvalidInputError);
  expect(numberMarks(undefined)).toMatchObject({ decimal: ".", exponent: "E" });
  expect(categoryOf(1, "de")).toBe("other");
  expect(listed(["a", "b", "c"], "de")).toBe("a, b, c");
});
