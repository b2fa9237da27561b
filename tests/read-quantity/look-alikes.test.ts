// Is a text read in whatever characters the keyboard or the page gave it?
// Names of the characters: Unicode. That they are typed for one another is common practice, no source.
import { parseQuantity } from "hvac-install-math/field-text";
import * as u from "hvac-install-math/quantity";
import { readQuantity } from "hvac-install-math/read-quantity";
import { expect, it } from "vitest";
import { expectRefused, unitOf } from "./marked.ts";

it.each<[text: string, unit: unknown, value: number]>([
  ["\u20125 °F", u.degF, -5], // figure dash
  ["\u22125 °F", u.degF, -5], // minus sign
  ["10 \u2206°F", u.deltaF, 10], // increment for delta
  ["24 N\u22c5m", u.newtonMeter, 24], // dot operator
  ["24 N\u2219m", u.newtonMeter, 24], // bullet operator
  ["24 N\u2022m", u.newtonMeter, 24], // bullet
  ["24 N\u0387m", u.newtonMeter, 24], // Greek ano teleia
  ["24 N*m", u.newtonMeter, 24],
  ["24 N×m", u.newtonMeter, 24],
  ["5 \u2126", u.ohm, 5], // ohm sign
  ["5 \u03a9", u.ohm, 5], // Greek omega
  ["500 \u00b5m", u.micron, 500], // micro sign
  ["500 \u03bcm", u.micron, 500], // Greek mu
  ["0.1 oz/ yr", u.ozPerYear, 0.1],
  ["0.1 oz /yr", u.ozPerYear, 0.1],
  ["14.7 psi abs", u.psia, 14.7],
  // An accent as a mark of its own is canonically equivalent to the letter with it (Unicode Annex #15, from memory).
  ["2 d\u00edas", u.day, 2],
  ["2 di\u0301as", u.day, 2],
  ["500 micro\u0301n", u.micron, 500],
  ["20 degre\u0301s C", u.degC, 20],
])("%s (%#)", (text, unit, value) => {
  const one = unit as u.Unit<"length">;
  expect(readQuantity(text, { kind: one.kind, units: [one] }).in(one)).toBe(value);
  expect(parseQuantity(text, { kind: one.kind }).in(one)).toBeCloseTo(value, 12);
});

it("an accent makes no power of ten", () => {
  expectRefused("1⟦\u00e83⟧", { kind: "length", units: [u.ft] }, unitOf("ft"));
});

it("a figure dash with spaces subtracts, as an en dash does", () => {
  expect(parseQuantity("12 ft \u2012 6 in", { kind: "length" }).in(u.ft)).toBe(11.5);
});
