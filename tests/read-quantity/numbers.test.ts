// Which numbers are read, and what is said of those that are not?
// The marks of a locale are those of Unicode CLDR, as Intl has them; the notation and what is asked about is
// common practice, no source. The figures are plain arithmetic: 11/16 is 0.6875.
import { parseQuantity } from "hvac-install-math/field-text";
import { ampere, degF, ft, inch, psig, sqft, type Unit, volt } from "hvac-install-math/quantity";
import { type ReadQuantityOptions, readQuantity } from "hvac-install-math/read-quantity";
import { describe, expect, it } from "vitest";
import { expectRefused, type Said, said } from "./marked.ts";

const inches = { kind: "length", units: [inch, ft] };
const gauge = (locale?: string) => ({ kind: "gaugePressure", units: [psig], locale });

/** A number is wanted as the locale writes it, with this decimal mark. */
const format = (mark = "."): Said =>
  said("number-format", { sample: { verbatim: `1234${mark}5` }, mark: { verbatim: mark } });
const whichMark = (mark: string, ...readings: string[]): Said =>
  said("which-mark", {
    mark: { verbatim: mark },
    readings: readings.map((verbatim) => ({ verbatim })),
  });

describe("a number that is read", () => {
  it.each<[text: string, options: object, value: number]>([
    ["+5", inches, 5],
    ["+5", { kind: "temperature", units: [degF] }, 5],
    // fractions in one character or in raised and lowered digits
    ["½", inches, 0.5],
    ["½", { kind: "voltage", units: [volt] }, 0.5],
    ["¹¹⁄₁₆", inches, 0.6875],
    ["1 3/4", { kind: "current", units: [ampere] }, 1.75],
    // a tight space before three digits is between thousands, unless these begin a fraction
    ["1\u00a0234", inches, 1234],
    ["1\u00a0125/1000", inches, 1.125],
    ["1/128", { ...inches, locale: "fr" }, 0.007_812_5],
    ["1 234 567", gauge("fr"), 1_234_567],
    // powers of ten
    ["1.5×10^-3", inches, 0.0015],
    ["1.5×10^ 3", inches, 1500],
    ["1×10^-10", inches, 1e-10],
    ["2×10⁻¹²", inches, 2e-12],
  ])("%s (%#)", (text, options, value) => {
    const { units } = options as { units: [Unit<"length">] };
    const read = readQuantity(text, options as ReadQuantityOptions<"length">);
    expect(read.unit).toBe(units[0]);
    expect(read.in(units[0])).toBe(value);
  });

  it.each([
    ["12 ft ¹⁄₂ in", 12 + 0.5 / 12],
    ["12 ft ½ in", 12 + 0.5 / 12],
  ])("%s in feet", (text, value) => {
    const read = readQuantity(text, { kind: "length", units: [ft, inch] });
    expect(read.in(ft)).toBeCloseTo(value, 10);
  });

  it.each([
    ["6 ft ÷ ½", 12], // one meaning, unlike 6 ft ÷ 1/2
    ["2 × 1.5×10³ ft", 3000], // the power is that of 1.5
  ])("%s, by parseQuantity", (text, value) => {
    expect(parseQuantity(text, { kind: "length" }).in(ft)).toBe(value);
  });
});

describe("a number that is refused", () => {
  it.each<[marked: string, options: object, wanted: Said, hint?: Said]>([
    // marks without digits
    ["⟦.⟧", inches, format(), "digits-after-mark"],
    ["⟦5.⟧.3 ft", inches, format(), "digits-after-mark"],
    ["⟦5,⟧ ft", inches, format(), "digits-after-mark"],
    ["⟦1,234,⟧ psig", gauge("en-US"), format(), "digits-after-mark"],
    ["5 ft⟦,⟧", inches, "one-number"],
    ["⟦’⟧234 psig", gauge("de-CH"), "one-number"],
    // one mark of two meanings
    ["⟦,5⟧ in", inches, format(), whichMark(",", "0.5")],
    ["⟦01,234⟧ psig", gauge("en-US"), format(), whichMark(",", "01.234")],
    ["⟦1.234⟧ psig", gauge("de"), format(","), whichMark(".", "1,234", "1234")],
    // groups that are no thousands: four digits, or two different marks
    ["⟦1,2345,678⟧ psig", gauge("en-US"), format()],
    ["⟦1 234\u202f567⟧ psig", gauge("fr"), format(",")],
    ["1234\u00a0⟦567⟧ psig", gauge(), "one-number"],
    // fractions: less than 1, in digits alone, and either joined on both sides or spaced
    ["1 ⟦4/4⟧ in", inches, "small-fraction"],
    ["⟦⁰⟧⁄₄ in", inches, "one-number"],
    ["⟦⁴⟧⁄₄ in", inches, "one-number"],
    ["⟦⁵⟧⁄₄ in", inches, "one-number"],
    ["⟦¹⟧⁄₀ in", inches, "one-number"],
    ["1e1⟦/⟧4 in", inches, "one-number"],
    ["1⟦-⟧ 1/4 in", inches, "one-number"],
    ["1 ⟦-⟧1/4 in", inches, "one-number"],
    ["1⟦-⟧", inches, "one-number"],
    // before a smaller unit, a plain run of digits
    ["⟦½⟧ ft 6 in", inches, "whole-number", "write-plus"],
    ["⟦1e1⟧ ft 6 in", inches, "whole-number", "write-plus"],
    // digits behind ft are no power of it
    ["5 ⟦ft23⟧", { kind: "area", units: [sqft] }, said("unit", { symbols: [{ verbatim: "ft²" }] })],
  ])("%s (%#)", (marked, options, wanted, hint) => {
    expectRefused(marked, options, wanted, hint);
  });
});

it("reads a unit with an exponent before a space", () => {
  expect(readQuantity("5 ft2 ", { kind: "area", units: [sqft] }).in(sqft)).toBe(5);
});
