import { parseQuantity } from "hvac-install-math/field-text";
import {
  ft,
  InvalidInputError,
  inch,
  isInvalidInputError,
  type Kind,
  percent,
  volt,
} from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import { spoken } from "../read-quantity/spoken.ts";
import { refusal } from "./catalogue.ts";

/** Refuses the text, and points at `part` (or at the end of the text, for ""). */
function expectRefused(text: string, kind: Kind, part: string, says: RegExp, options = {}) {
  const error = refusal(() => parseQuantity(text, { kind, ...options }));
  expect(text.slice(error.position, error.end)).toBe(part);
  if (part === "") expect(error.position).toBe(text.trimEnd().length);
  expect(spoken(error)).toMatch(says);
  expect(error.argument).toBe(`text at character ${error.position + 1}`);
  expect(isInvalidInputError(error)).toBe(true);
}

describe("a pressure names its zero", () => {
  it.each<[string, Kind, string, RegExp]>([
    ["118 psi", "gaugePressure", "psi", /Gauge \(psig\) or absolute \(psia\)\?/],
    ["118 psi", "absolutePressure", "psi", /Gauge \(psig\) or absolute \(psia\)\?/],
    ["814 kPa", "gaugePressure", "kPa", /Gauge \(kPag\) or absolute \(kPaa\)\?/],
    ["8 bar", "gaugePressure", "bar", /Gauge \(barg\) or absolute \(bara\)\?/],
    ["0.8 MPa", "gaugePressure", "MPa", /Gauge \(MPag\) or absolute \(MPaa\)\?/],
    ["29.92 inHg", "absolutePressure", "inHg", /Gauge \(inHg gauge\) or absolute \(inHg abs\)\?/],
    ["1013 hPa", "absolutePressure", "hPa", /absolute \(mbara\)/],
    ["50 Pa", "absolutePressure", "Pa", /absolute \(Pa abs\)/],
    ["20 inHg vac", "gaugePressure", "vac", /-20 inHg gauge/],
    ["20 inHg vacuum", "gaugePressure", "vacuum", /-20 inHg gauge/],
    ["118 psia", "gaugePressure", "psia", /absolute pressure\. Enter the gauge reading/],
    ["118 psig", "absolutePressure", "psig", /gauge pressure\. Enter the absolute pressure/],
    ["500 micron", "gaugePressure", "micron", /absolute pressure\. Enter the gauge reading/],
    ["118 psig", "pressureDifference", "psig", /kind: gauge pressure/],
    ["118 psig + 2 psig", "gaugePressure", "2 psig", /a difference, such as 5 psi/],
    ["118 psig + 2 psia", "gaugePressure", "2 psia", /cannot be added/],
    [
      "118 psig − 2 psia",
      "gaugePressure",
      "2 psia",
      /subtracted from a value of this kind: gauge pressure/,
    ],
    ["118 psig − 2 psig", "gaugePressure", "2 psig", /a difference, such as 5 psi/],
    [
      "3 psi − 118 psig",
      "gaugePressure",
      "118 psig",
      /subtracted from a value of this kind: pressure difference/,
    ],
    ["2 × 118 psig", "gaugePressure", "118 psig", /cannot be multiplied/],
    ["118 psig / 2", "gaugePressure", "118 psig", /cannot be multiplied or divided/],
    ["-(5 psig)", "gaugePressure", "5 psig", /cannot be multiplied or divided/],
    ["118 psig + 500 micron", "gaugePressure", "500 micron", /cannot be added/],
    ["500 micron + 200 micron", "absolutePressure", "200 micron", /such as 5 Δmicron/],
    ["500 micron − 200 micron", "absolutePressure", "200 micron", /such as 5 Δmicron/],
    ["-3 psia", "absolutePressure", "-3 psia", /0 psia or more/],
    ["3 psia − 5 psi", "absolutePressure", "3 psia − 5 psi", /0 psia or more/],
  ])("%s as a %s", (text, kind, part, says) => expectRefused(text, kind, part, says));
});

// Which zero, and which scale, is asked only where the field wants one; else the error says what was given.
describe("a unit of another kind", () => {
  it.each<[string, Kind, Kind]>([
    ["118 psi", "length", "pressureDifference"],
    ["118 psi", "temperature", "pressureDifference"],
    ["118 psia", "length", "absolutePressure"],
    ["118 psig", "length", "gaugePressure"],
    ["118 psig", "temperature", "gaugePressure"],
    ["40°", "length", "angle"],
    ["40°", "absolutePressure", "angle"],
    ["40°", "gaugePressure", "angle"],
    ["3 ft", "gaugePressure", "length"],
    ["3 ft", "absolutePressure", "length"],
    ["3 ft", "temperature", "length"],
  ])("is named: %s as a %s", (text, kind, given) => {
    const { hint } = refusal(() => parseQuantity(text, { kind }));
    expect(hint).toEqual({
      code: "field-text.given-kind",
      values: { kind: `quantity.kind.${given}` },
    });
  });
});

describe("what cannot be read on", () => {
  it.each<[string, string, string, string?]>([
    ["3 ft × + − 2 ft", "−", "number-after-sign"],
    ["3 ft × − + 2 ft", "+", "number-after-sign"],
    ["3 ft × × × 2", "×", "expression"], // no sign
    ["3 ft 5 ft", "5 ft", "operator"], // two values
    ["(3 ft) 5 ft", "5", "operator"],
    ["3 5 ft", "5", "operator", "no-spaces"], // perhaps one number
  ])("is pointed at: %s", (text, part, wanted, hint) => {
    const error = refusal(() => parseQuantity(text, { kind: "length" }));
    expect(text.slice(error.position, error.end)).toBe(part);
    expect(error.wanted.code).toBe(`field-text.${wanted}`);
    expect(error.hint && (error.hint as { code: string }).code).toBe(hint && `field-text.${hint}`);
  });

  it.each(["2 ft +", "2 ft +  ", "  2 ft +", "  2 ft ×  "])(
    "is missed at the end: “%s”",
    (text) => {
      expectRefused(
        text,
        "length",
        "",
        /^Enter numbers with their units, \+ − × ÷ and parentheses\.$/,
      );
    },
  );

  it("says how deep parentheses may be", () => {
    const text = `${"(".repeat(11)}1${")".repeat(11)} ft`;
    const { wanted } = refusal(() => parseQuantity(text, { kind: "length" }));
    expect(wanted).toEqual({ code: "field-text.fewer-parentheses", values: { most: 10 } });
  });
});

describe("a temperature is not a difference", () => {
  it.each<[string, Kind, string, RegExp]>([
    ["70 °F + 5 °F", "temperature", "5 °F", /such as 5 Δ°F or 5 F°/],
    ["70 °F − 5 °F", "temperature", "5 °F", /such as 5 Δ°F or 5 F°/],
    ["22 °C + 5 K", "temperature", "5 K", /such as 5 ΔK/],
    ["5 Δ°F", "temperature", "Δ°F", /kind: temperature difference/],
    ["72°", "temperature", "°", /°F or °C\?/],
    ["72", "temperature", "", /a unit: °F, °C, or K/],
    ["-500 °F", "temperature", "-500 °F", /-459\.7 °F or more/],
    ["2 × 72 °F", "temperature", "72 °F", /cannot be multiplied/],
    ["-(72 °F)", "temperature", "72 °F", /cannot be multiplied or divided/],
    ["95 °F − 20 °C", "temperatureDifference", "95 °F − 20 °C", /readings or differences\?/],
    ["35 °C − 5 K", "temperatureDifference", "35 °C − 5 K", /readings or differences\?/],
    [
      "3 ft − 5 °F",
      "temperatureDifference",
      "5 °F",
      /subtracted from a value of this kind: length/,
    ],
    ["300 k", "temperature", "k", /Capitals matter here\. Is it K\?/],
  ])("%s as a %s", (text, kind, part, says) => expectRefused(text, kind, part, says));
});

describe("what reads two ways", () => {
  it.each<[string, Kind, string, RegExp]>([
    ["12 ft-6 in", "length", "-", /could join or subtract/],
    ["12ft-6in", "length", "-", /could join or subtract/],
    ["12' - 6\"", "length", "-", /could join or subtract/],
    ["12' -6\"", "length", "-", /could join or subtract/],
    ["12'–6\"", "length", "–", /could join or subtract/],
    ["12 ft -6 in", "length", "-", /could join or subtract/],
    ["12'-6 in", "length", "-", /could join or subtract/],
    ["3 lb-4 oz", "mass", "-", /could join or subtract/],
    ["12 ft 14 in", "length", "14", /less than 12 in after ft/],
    ["12 ft 12 in", "length", "12", /less than 12 in after ft/],
    ["3 lb 16 oz", "mass", "16", /less than 16 oz after lb/],
    ["12.5 ft 6 in", "length", "12.5", /whole number before a smaller unit/],
    ["12 1/2 ft 6 in", "length", "12 1/2", /whole number before a smaller unit/],
    ["1 h 5.5 min 3 s", "duration", "5.5", /whole number before a smaller unit/],
    ["6 ft / 1/2", "length", "1", /two meanings/],
    ["6 ft ÷ 1 1/2", "length", "1", /two meanings/],
    ["2 - 1/2 in", "length", "2", /1-1\/4 without spaces is a mixed number/],
    ["1−1/4 in", "length", "1", /1-1\/4 without spaces/],
    ["1–1/4 in", "length", "1", /1-1\/4 without spaces/],
    ["1/2/3 in", "length", "1/2", /Put a fraction in parentheses/],
    ["12 ft + 9", "length", "9", /a number with its unit/],
    ["9 + 12 ft", "length", "9", /a number with its unit/],
    ["12 ft 6", "length", "6", /a number with its unit/],
    ["5'6", "length", "6", /a number with its unit/],
    ["12 6 in", "length", "6", /an operator between the two/],
    ["12 in 6 ft", "length", "6 ft", /an operator between/],
    ["5 m 3 in", "length", "3 in", /an operator between/],
    ["1 234 mm", "length", "234", /Leave spaces out of a number/],
    ["1,234 mm", "length", "1,234", /decimal mark or a thousands mark\?/],
    ["0,5 mm", "length", "0,5", /decimal mark or a thousands mark\?/],
    ["12 × 14 ft", "area", "ft", /kind: length/],
  ])("%s as a %s", (text, kind, part, says) => expectRefused(text, kind, part, says));

  it("a bare 3-1/2 outside lengths", () => {
    expectRefused("3-1/2", "ratio", "3-1/2", /a sum or a difference/, { defaultUnit: percent });
  });
  it("a number beside a quantity, in spite of a default unit", () => {
    expectRefused("12 ft + 9", "length", "9", /a number with its unit/, { defaultUnit: ft });
    expectRefused("12 in 6", "length", "6", /a number with its unit/, { defaultUnit: inch });
  });
  it.each([
    ["de", "1.234 mm", "1.234", /Enter 1,234 or 1234\./],
    ["de", "0.5 mm", "0.5", /“\.” a decimal mark or a thousands mark\? Enter 0,5\.$/],
    ["de", "12.34,5 mm", "12.34,5", /such as 1234,5\. The decimal mark is “,”/],
    ["de", "0.234.567 mm", "0.234.567", /such as 1234,5\./],
    ["de", "1,234.5 mm", "1,234.5", /mark/],
    ["fr", "0.5 mm", "0.5", /decimal mark or a thousands mark/],
    ["en-US", "1,5 mm", "1,5", /“,” a decimal mark or a thousands mark\? Enter 1\.5 or 15\./],
    ["en-US", "1,2345 mm", "1,2345", /Enter 1\.2345 or 12345\./],
    ["en-US", "1234,567 mm", "1234,567", /Enter 1234\.567 or 1234567\./],
    ["en-US", "0,500 mm", "0,500", /Enter 0\.500\.$/],
    ["en-US", "1.234.567 mm", "1.234.567", /mark/],
    ["en-IN", "123,456 mm", "123,456", /Enter 123\.456 or 123456\./],
    ["es", "68.5 mm", "68.5", /Enter 68,5 or 685\./],
    ["es-419", "34,5 mm", "34,5", /Enter 34\.5 or 345\./],
    ["es-419", "1,250 mm", "1,250", /Enter 1\.250 or 1250\./],
    ["de-CH", "1'234 mm", "1'234", /could mean feet/],
    ["de-CH", "1,5 mm", "1,5", /decimal mark or a thousands mark/],
  ])("in %s, %s", (locale, text, part, says) => {
    expectRefused(text, "length", part, says, { locale });
  });
});

describe("what is no quantity", () => {
  it.each<[string, string, RegExp]>([
    ["", "", /a number and a unit: in, ft/],
    ["  \u00a0\u2009\t", "", /a number and a unit/],
    ["5", "", /a unit: in, ft/],
    ["ft", "ft", /a number before the unit/],
    ["3 + ft", "ft", /a number before the unit/],
    ["5 ft in", "in", /a number before the unit/],
    ["5 ft +", "", /numbers with their units/],
    ["* 5 ft", "*", /numbers with their units/],
    ["5 ft + * 3 ft", "*", /numbers with their units/],
    ["5 ft × / 3", "/", /numbers with their units/],
    ["(", "", /numbers with their units/],
    ["()", ")", /numbers with their units/],
    ["(5 ft", "", /Close the parenthesis/],
    ["((5 ft) + 3 ft", "", /Close the parenthesis/],
    ["(5 ft))", ")", /Open the parenthesis first/],
    [")5 ft(", ")", /Open the parenthesis first/],
    ["2(3 ft)", "(", /Enter × if you mean it/],
    ["(2)(3 ft)", "(", /Enter × if you mean it/],
    ["(2) 3 ft", "3", /an operator between the two/],
    ["(3 ft) in", "in", /The parentheses have theirs/],
    ["(12) ft 6 in", "6", /an operator between the two/],
    ["--5 ft", "-", /a number after the sign/],
    ["5 ft - - -3 in", "-", /a number after the sign/],
    ["5. ft", "5.", /digits after the decimal mark/],
    ["1.2.3 ft", "1.2.3", /mark/],
    ["1 5/4 in", "5/4", /a fraction less than 1/],
    ["1.5 1/4 in", "1/4", /a fraction less than 1/],
    ["1/0 in", "0", /other than 0/],
    ["5 ft / 0", "0", /other than 0/],
    ["5 ft / (1 − 1)", "1 − 1", /other than 0/],
    ["1e400 ft", "1e400", /too large/],
    ["1e300 ft × 1e300", "1e300 ft × 1e300", /a smaller number/],
    ["1e300 × 1e300 ft", "1e300 × 1e300 ft", /a smaller number/],
    ["5 furlongs", "furlongs", /a unit: in, ft/],
    ["5 Mm", "Mm", /Capitals matter here\. Is it mm\?/],
    ["5 ft 3 lb", "3 lb", /an operator between/],
    ["5 ft + 3 lb", "3 lb", /added to a value of this kind: length/],
    ["5 ft × 3 ft", "ft", /kind: area/],
    ["5 ft × 3 s", "3 s", /does not use length × time/],
    ["5 ft / 3 lb", "3 lb", /does not use length ÷ mass/],
    ["3 / (5 ft)", "3", /a number with its unit/],
  ])("%s", (text, part, says) => expectRefused(text, "length", part, says));

  it.each([
    ["constructor", "constructor"],
    ["5 constructor", "constructor"],
    ["5 __proto__", "__proto__"],
    ["5 toString", "toString"],
    ["5 hasOwnProperty", "hasOwnProperty"],
    ["sin(3 ft)", "sin"],
    ["import('fs')", "import"],
    ["pi ft", "pi"],
    ["a.b", "."],
    ["x", "x"],
    ["5 ft to mm", "to"],
    ["5 mod 3 ft", "mod"],
    ["x = 5 ft", "="],
    ["5 ft = 3", "="],
    ["5 ft == 5 ft", "="],
    ["5 ft < 3 ft", "<"],
    ["[5 ft]", "["],
    ["{5 ft}", "{"],
    ["5 ft; 3 ft", ";"],
    ["5 ft, 3 in", ","],
    ["1:2 ft", ":"],
    ["5 ft!", "!"],
    ["5 ft ^ 2", "ft ^ 2"],
    ["#5 ft", "#"],
    ["5 ft # comment", "#"],
    ["`5 ft`", "`"],
    ["5 $ft", "$ft"],
    ["5 ft 💥", "💥"],
    ["∞ ft", "∞"],
    ["NaN ft", "NaN"],
    ["Infinity ft", "Infinity"],
    ["5 — 3 ft", "—"],
  ])("%s is not understood", (text, part) => {
    const error = refusal(() => parseQuantity(text, { kind: "length" }));
    expect(text.slice(error.position, error.end)).toBe(part);
  });

  it("nests parentheses ten deep and no deeper", () => {
    const text = `${"(".repeat(11)}1 ft${")".repeat(11)}`;
    expect(refusal(() => parseQuantity(text, { kind: "length" })).position).toBe(10);
  });

  it("reads 200 characters and no more", () => {
    expect(parseQuantity(`5 ft${" ".repeat(196)}`, { kind: "length" }).toString()).toBe("5 ft");
    const error = refusal(() => parseQuantity(`5 ft${" ".repeat(197)}`, { kind: "length" }));
    expect(error.position).toBe(200);
    expect(spoken(error)).toMatch(/at most 200 characters/);
  });
});

describe("wrong arguments", () => {
  it.each([[undefined], [null], [118], [{ toString: () => "118 psig" }], [["118 psig"]]])(
    "a text that is %s",
    (text) => {
      expect(() => parseQuantity(text as never, { kind: "gaugePressure" })).toThrow(
        InvalidInputError,
      );
      expect(() => parseQuantity(text as never, { kind: "gaugePressure" })).toThrow(/^text: /);
    },
  );

  it("options that are missing or wrong", () => {
    const parse = parseQuantity as (...args: unknown[]) => unknown;
    expect(() => parse("5 ft")).toThrow(/^options: undefined/);
    expect(() => parse("5 ft", null)).toThrow(/^options: null/);
    expect(() => parse("5 ft", {})).toThrow(/^options\.kind: undefined/);
    expect(() => parse("5 ft", { kind: "toString" })).toThrow(
      /^options\.kind: the text "toString"/,
    );
    expect(() => parse("5", { kind: "length", defaultUnit: percent })).toThrow(/a unit of length/);
    expect(() => parse("5", { kind: "length", defaultUnit: "ft" })).toThrow(
      /^options\.defaultUnit/,
    );
    for (const locale of ["not a locale", "xx-yy-zz", 3, null, {}, ""]) {
      expect(() => parse("5 ft", { kind: "length", locale })).toThrow(/^options\.locale/);
    }
  });

  it("leaves the options as they are", () => {
    const options = Object.freeze({ kind: "length", defaultUnit: ft, locale: "de" } as const);
    expect(parseQuantity("12,5", options).toString()).toBe("12.5 ft");
  });
});

describe("two values with a slash", () => {
  it.each([
    ["208/230 V", "voltage"],
    ["15/20 A", "current"],
    ["118/355 psig", "gaugePressure"],
    ["75/62 °F", "temperature"],
  ] as const)("%s is refused rather than divided", (text, kind) => {
    expect(() => parseQuantity(text, { kind })).toThrow(/field-text\.slash-two-values/);
  });

  it("are refused without a unit too, where the field has one", () => {
    expect(() => parseQuantity("208/230", { kind: "voltage", defaultUnit: volt })).toThrow(
      /field-text\.slash-two-values/,
    );
  });

  it("but a half, a mixed number and a division by a number stay what they are", () => {
    expect(String(parseQuantity("1/2 A", { kind: "current" }))).toBe("0.5 A");
    expect(String(parseQuantity("460 V × 1/2", { kind: "voltage" }))).toBe("230 V");
    expect(String(parseQuantity("460 V / 2", { kind: "voltage" }))).toBe("230 V");
    expect(String(parseQuantity("3/8 in", { kind: "length" }))).toBe("0.375 in");
  });
});
