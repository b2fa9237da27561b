// Texts made to be slow, and objects made to poison: the time grows no faster than the text, and nothing
// that an object inherits is read or written.

import { explain } from "hvac-install-math/assessment";
import { blendWarmingPotential, refrigerantSafety } from "hvac-install-math/charge-limit";
import { checkRecord } from "hvac-install-math/commissioning";
import { parseQuantity, typedUnits } from "hvac-install-math/field-text";
import { flareTubeOfThread } from "hvac-install-math/flare-joint";
import { fromJSON, ft, isInvalidInputError } from "hvac-install-math/quantity";
import { readQuantity } from "hvac-install-math/read-quantity";
import { refrigerantByDesignation } from "hvac-install-math/refrigerants";
import { describe, expect, it } from "vitest";

const pieces = [
  " ",
  "\t",
  "-",
  "r",
  "R-",
  "(",
  ")",
  "0",
  "1/",
  "1 ",
  "ft ",
  "e",
  "{",
  "{a",
  "UN",
  ".",
];
const ends = ["", "x", "!", "\u0000"];

const readers: readonly (readonly [string, (text: string) => unknown])[] = [
  ["parseQuantity", (text) => parseQuantity(text, { kind: "length" })],
  ["readQuantity", (text) => readQuantity(text, { kind: "length", units: [ft] })],
  ["refrigerantByDesignation", refrigerantByDesignation],
  ["flareTubeOfThread", flareTubeOfThread],
  [
    "explain",
    (text) => explain({ code: "a", values: {} }, { locale: "en", messages: { a: text } }),
  ],
  ["refrigerantSafety", (designation) => refrigerantSafety({ designation, safetyClass: "A1" })],
  [
    "blendWarmingPotential",
    (designation) =>
      blendWarmingPotential({
        composition: [{ designation, massPercent: 100 }],
        basis: "ipcc-ar4",
      }),
  ],
  ["checkRecord", (at) => checkRecord({ version: 1, tubing: { at } })],
  ["fromJSON", (unit) => fromJSON({ kind: "length", value: 1, unit })],
];

function outcomeOf(act: (text: string) => unknown, text: string): number {
  const start = performance.now();
  try {
    act(text);
  } catch (error) {
    expect(isInvalidInputError(error), String(error)).toBe(true);
    expect((error as Error).message.length).toBeLessThan(2000);
  }
  return performance.now() - start;
}

describe("a long text", () => {
  it.each(readers)("is read or refused by %s in time that does not outgrow it", (_, act) => {
    for (const piece of pieces) {
      for (const end of ends) {
        // A square of 5e4 steps would take seconds; linear is milliseconds.
        const text = `R410A ${piece.repeat(5e4 / piece.length)}${end}`;
        expect(outcomeOf(act, text), `${piece} ${end}`).toBeLessThan(500);
      }
    }
  });
});

describe("an object that poisons", () => {
  const poison = () => JSON.parse('{"__proto__": {"polluted": "yes"}}');

  it("leaves the prototype of all objects as it was", () => {
    for (const act of [
      () => fromJSON(poison()),
      () => fromJSON(JSON.parse('{"kind":"__proto__","value":1,"unit":"constructor"}')),
      () => checkRecord({ version: 1, ...poison() }),
      () => checkRecord(JSON.parse('{"version": 1, "__proto__": {"polluted": 1}}')),
      () => checkRecord(JSON.parse('{"version": 1, "tubing": {"__proto__": {"polluted": 1}}}')),
      () => parseQuantity("__proto__", { kind: "length" }),
      () => typedUnits("__proto__" as never),
      () => typedUnits("constructor" as never),
      () => refrigerantByDesignation("__proto__"),
    ]) {
      try {
        act();
      } catch (error) {
        expect(isInvalidInputError(error), String(error)).toBe(true);
      }
    }
    expect(({} as { polluted?: unknown }).polluted).toBeUndefined();
    expect(Object.keys(Object.prototype)).toEqual([]);
  });

  it("does not lend what it inherits to a quantity or a record", () => {
    const inherits = Object.create({ kind: "length", value: 1, unit: "m" });
    expect(() => fromJSON(inherits)).toThrow(/json/);
    const record = Object.assign(Object.create({ runs: "none" }, {}), { version: 2 });
    expect(() => checkRecord(record)).toThrow(/an object of a class/);
  });
});
