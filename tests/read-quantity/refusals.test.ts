// What is said of a text that is refused: the place, what is wanted there with its values, and what to do.
// The notation is common practice, no source.
import { isFieldTextError, parseQuantity } from "hvac-install-math/field-text";
import {
  bar,
  degC,
  degF,
  ft,
  inch,
  inHgGauge,
  kelvin,
  kPag,
  m,
  psia,
  psig,
  type Unit,
  volt,
} from "hvac-install-math/quantity";
import { readQuantity } from "hvac-install-math/read-quantity";
import { describe, expect, it } from "vitest";
import { refusal } from "../field-text/catalogue.ts";
import { expectRefused, type Said, said, unitOf } from "./marked.ts";

const lengths = { kind: "length", units: [inch, ft] };
const gauges = { kind: "gaugePressure", units: [psig, kPag] };
const volts = { kind: "voltage", units: [volt] };
const v = (verbatim: string) => ({ verbatim });

const format = said("number-format", { sample: v("1234.5"), mark: v(".") });
const dash: [Said, Said] = [
  said("joined-or-subtracted", { joined: v("12 ft 6 in"), subtracted: v("12 ft − 6 in") }),
  said("dash-two-ways", { large: v("ft"), small: v("in") }),
];

describe("what is wanted and what to do", () => {
  it.each<[marked: string, options: object, wanted: Said, hint?: Said]>([
    ["⟦⟧", gauges, said("number-and-unit", { symbols: [v("psig"), v("kPag")] })],
    ["118 ⟦furlongs⟧ and more", gauges, unitOf("psig", "kPag")],
    ["118 ⟦psi⟧", gauges, unitOf("psig", "kPag"), "which-zero"],
    ["5 m 3 ⟦s⟧", { kind: "length", units: [m] }, unitOf("m")],
    ["5 ⟦ｱ⟧", lengths, unitOf("in", "ft")], // a letter, if of half width
    ["5 in ⟦!⟧", lengths, "one-number"],
    ["⟦+⟧", lengths, "one-number"],
    ["⟦-⟧ in", lengths, "one-number"],
    ["⟦in⟧ 5", lengths, "number-before-unit"],
    ["5 in ⟦5⟧", lengths, "number-with-unit"],
    ["12 ft⟦-⟧6 in", lengths, ...dash],
    ['12 ft⟦-⟧6"', lengths, ...dash],
    ["12'⟦-⟧6 in", lengths, ...dash],
    ["12'⟦‒⟧6\"", lengths, ...dash], // figure dash
    [
      "12 ft ⟦12⟧ in",
      lengths,
      said("less-than", { limit: v("12 in"), unit: v("ft") }),
      "write-plus",
    ],
    // a vacuum is a pressure; volts AC are none
    [
      "20 inHg ⟦vacuum⟧",
      { kind: "gaugePressure", units: [inHgGauge] },
      unitOf("inHg gauge"),
      "vacuum",
    ],
    ["20 ⟦vacío⟧", gauges, unitOf("psig", "kPag"), "vacuum"],
    ["20 ⟦vácuo⟧", gauges, unitOf("psig", "kPag"), "vacuum"],
    ["20 ⟦evacuated⟧", gauges, unitOf("psig", "kPag")],
    ["⟦VAC⟧", volts, "number-before-unit"],
    // too large for a number, too large in pascals, below zero
    ["⟦1e999⟧ psia", { kind: "absolutePressure", units: [psia] }, format, "too-large"],
    ["⟦1e308 psia⟧", { kind: "absolutePressure", units: [psia] }, "smaller"],
    ["⟦1e308 psig⟧", gauges, "smaller"],
  ])("%s (%#)", (marked, options, wanted, hint) => {
    expectRefused(marked, options, wanted, hint);
  });

  // SI Brochure, 9th ed., 2.3.1: 0 K is −273.15 °C; −459.67 °F follows by t/°F = 1.8 t/°C + 32.
  it.each([
    ["-274 °C", degC, -273.15],
    ["-460 °F", degF, -459.67],
    ["-1 K", kelvin, 0],
  ])("%s: no less than absolute zero, in the unit that was typed", (text, unit, limit) => {
    const error = refusal(() => readQuantity(text, { kind: "temperature", units: [unit] }));
    expect(error.wanted.code).toBe("field-text.at-least");
    const least = (error.wanted.values as { limit: { in(unit: unknown): number } }).limit;
    expect(least.in(unit)).toBe(limit);
    expect([error.position, error.end]).toEqual([0, text.length]);
  });

  it("the place of a value ends before a tight space behind it", () => {
    for (const typed of ["-3 psia", "-3 psi(a)"]) {
      const error = refusal(() =>
        readQuantity(`${typed}\u00a0`, { kind: "absolutePressure", units: [psia] }),
      );
      expect([error.position, error.end]).toEqual([0, typed.length]);
    }
  });
});

describe("of the words of a sum", () => {
  it.each<[marked: string, wanted: Said]>([
    ["3 +⟦ft⟧", "number-before-unit"],
    ["⟦VAC⟧", "number-before-unit"],
  ])("%s", (marked, wanted) => {
    expectRefused(marked, { kind: "length" }, wanted, undefined, parseQuantity as never);
  });

  it("x is a product only where no letter follows", () => {
    const error = refusal(() => parseQuantity("5 ft + xyz", { kind: "length" }));
    expect([error.position, error.end]).toEqual([7, 10]);
    expect(error.wanted.code).toBe("field-text.unit");
  });
});

describe("the error", () => {
  it.each([
    ["", "the end of the text"],
    ["5 furlongs and more", '"furlongs"'],
    [`${"9".repeat(41)}.`, `"${"9".repeat(40)}"`],
  ])("%s: shows the offending part, at most 40 characters of it", (text, value) => {
    const error = refusal(() => readQuantity(text, { kind: "length", units: [ft] }));
    expect(error.value).toBe(value);
  });

  it("is known by its name and both ends of its place, whoever threw it", () => {
    const parts = { name: "InvalidInputError", position: 0, end: 1 };
    expect(isFieldTextError(parts)).toBe(true);
    for (const other of [
      undefined,
      null,
      "text",
      {},
      { ...parts, name: "Error" },
      { ...parts, position: undefined },
      { ...parts, position: "0" },
      { ...parts, end: undefined },
      { ...parts, end: "1" },
      { name: "Error", end: 1 },
      { name: "InvalidInputError" },
    ]) {
      expect(isFieldTextError(other), JSON.stringify(other)).toBe(false);
    }
  });

  it.each<[argument: string, units: unknown[]]>([
    ["options.units[0]", [undefined]],
    ["options.units[0]", [undefined, psig]],
    ["options.units[1]", [psig, "kPag"]],
    ["options.units[1]", [psig, bar]],
  ])("names the unit that is none, or of another kind: %s", (argument, units) => {
    const kind = "gaugePressure";
    expect(() => readQuantity("5", { kind, units: units as Unit<typeof kind>[] })).toThrow(
      expect.objectContaining({ argument }),
    );
  });
});
