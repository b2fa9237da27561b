// A small engine without Intl writes figures as Intl writes English ones.
import { afterEach, expect, it, vi } from "vitest";
import { numbersOf } from "../../src/display/format-number.ts";
import { InvalidInputError } from "../../src/quantity/index.ts";
import { numberMarks } from "../../src/read-quantity/number-marks.ts";

afterEach(() => vi.unstubAllGlobals());

const values = [0, -0, 1, -1, 0.5, 2.75, -17.125, 100, 1234567.875, -40, 1e-7, 6.02e23, -1.5e-9];

it("writes what Intl writes in English", () => {
  // Every value is exact in binary to the decimals asked for, so both round the same number.
  const withIntl = numbersOf(undefined, undefined);
  const written = (numbers: typeof withIntl) => [
    ...values
      .filter((value) => Math.abs(value) < 1e9)
      .flatMap((value) =>
        [0, 3].flatMap((decimals) => [
          numbers.fixed(Math.round(value * 8) / 8, 3),
          numbers.fixed(Math.trunc(value), decimals, true),
          numbers.fixed(Math.round(value * 8) / 8, 3, true),
        ]),
      ),
    ...values.flatMap((value) => [2, 4].map((digits) => numbers.scientific(value, digits))),
  ];
  const expected = written(withIntl);
  vi.stubGlobal("Intl", undefined);
  expect(written(numbersOf(undefined, undefined))).toEqual(expected);
  expect(written(numbersOf("en-US", undefined))).toEqual(expected);
});

it("refuses another locale, and reads plain English numbers", () => {
  vi.stubGlobal("Intl", undefined);
  expect(() => numbersOf("de", undefined)).toThrow(InvalidInputError);
  expect(numberMarks(undefined)).toMatchObject({ decimal: ".", exponent: "E" });
});
