import fc from "fast-check";
import { isFieldTextError, parseQuantity } from "hvac-install-math/field-text";
import {
  ampere,
  bar,
  barg,
  degC,
  degF,
  deltaF,
  ft,
  hour,
  InvalidInputError,
  inch,
  inHgGauge,
  isInvalidInputError,
  type Kind,
  kPag,
  lb,
  micron,
  minute,
  oz,
  psia,
  psig,
  torr,
  type Unit,
  volt,
} from "hvac-install-math/quantity";
import { type ReadQuantityOptions, readQuantity } from "hvac-install-math/read-quantity";
import { describe, expect, it } from "vitest";
import { allUnits, refusal } from "../field-text/catalogue.ts";

const lengths = { kind: "length", units: [inch, ft] } as const;
const gauges = { kind: "gaugePressure", units: [psig, kPag, barg] } as const;

import { spoken } from "./spoken.ts";

describe("a number as typed", () => {
  // The readings are common practice of the trade, no source; the figures follow from the definitions.
  it.each<[string, ReadQuantityOptions<Kind> | object, string]>([
    ["8,14 bar", { kind: "pressureDifference", units: [bar], locale: "de" }, "8.14 bar"],
    ["8.14", { kind: "pressureDifference", units: [bar] }, "8.14 bar"],
    ["1.234,5 kPag", { ...gauges, locale: "de" }, "1234.5 kPag"],
    ["1,234.5 psig", { ...gauges, locale: "en-US" }, "1234.5 psig"],
    ["1’234.5 psig", { ...gauges, locale: "de-CH" }, "1234.5 psig"],
    ["٣٫٥", { ...gauges, locale: "ar-EG" }, "3.5 psig"],
    ["118", gauges, "118 psig"],
    [" 118psig ", gauges, "118 psig"],
    ["118 PSI G", gauges, "118 psig"],
    ["118 psi (gauge)", gauges, "118 psig"],
    ["8,1 bars g", { ...gauges, locale: "fr" }, "8.1 barg"],
    ["-20 inHg gauge", { kind: "gaugePressure", units: [inHgGauge] }, "-20 inHg gauge"],
    ["500 microns", { kind: "absolutePressure", units: [torr, micron] }, "500 micron"],
    ["500 mTorr", { kind: "absolutePressure", units: [torr, micron] }, "500 micron"],
    ["−5 °F", { kind: "temperature", units: [degC, degF] }, "-5 °F"],
    ["72 deg. F", { kind: "temperature", units: [degC, degF] }, "72 °F"],
    ["10 °F", { kind: "temperatureDifference", units: [deltaF] }, "10 Δ°F"],
    ["10 F°", { kind: "temperatureDifference", units: [deltaF] }, "10 Δ°F"],
    ["1/4", lengths, "0.25 in"],
    ['1-1/4"', lengths, "1.25 in"],
    ["1¼ in", lengths, "1.25 in"],
    ["⅞ in", lengths, "0.875 in"],
    ["⁷⁄₁₆ in", lengths, "0.4375 in"],
    ["12 ft 6 in", lengths, "12.5 ft"],
    ["12' 6 1/2\"", lengths, "12.5416666667 ft"],
    ["12′-6″", lengths, "12.5 ft"],
    ["12 ft 6 in", { kind: "length", units: [ft] }, "12.5 ft"],
    ["-3 lb 4.5 oz", { kind: "mass", units: [lb, oz] }, "-3.28125 lb"],
    ["1 h 30 min", { kind: "duration", units: [minute, hour] }, "1.5 h"],
    ["1.5e-2 A", { kind: "current", units: [ampere] }, "0.015 A"],
  ])("%s", (text, options, shown) => {
    expect(readQuantity(text, options as ReadQuantityOptions<"length">).toString()).toBe(shown);
  });

  it("is read in every unit of the catalogue by its symbol, as parseQuantity reads it", () => {
    for (const unit of allUnits) {
      const kind = unit.kind as "length";
      const units = [unit as unknown as Unit<"length">];
      const text = `12.5 ${unit.symbol}`;
      const read = readQuantity(text, { kind, units });
      expect(read.toString(), text).toBe(parseQuantity(text, { kind }).toString());
      expect(readQuantity("12.5", { kind, units }).si, text).toBe(read.si);
    }
  });
});

describe("what is refused", () => {
  it.each<[string, object, string, RegExp]>([
    ["", gauges, "", /psig, kPag, or barg/],
    ["   ", gauges, "", /a number and a unit/],
    ["psig", gauges, "psig", /a number before the unit/],
    ["118 psi", gauges, "psi", /Gauge or absolute/],
    ["8 bar", gauges, "bar", /Gauge or absolute/],
    ["20 vacuum", gauges, "vacuum", /negative gauge pressure/],
    ["118 psia", gauges, "psia", /a unit: psig, kPag, or barg/],
    ["118 °F", gauges, "°F", /a unit: psig/],
    ["1,234", gauges, "1,234", /decimal mark/],
    ["1.234", { ...gauges, locale: "de" }, "1.234", /Enter 1,234 or 1234/],
    ["12 ft + 6 in", lengths, "+", /one number with its unit/],
    ["12 ft-6 in", lengths, "-", /could join or subtract/],
    ["12 ft 13 in", lengths, "13", /less than 12/],
    ["6 in", { kind: "length", units: [ft] }, "in", /a unit: ft/],
    ["(3 ft)", lengths, "(", /one number with its unit/],
    ["3 ft 2 ft", lengths, "2 ft", /an operator/],
    ["sqrt(4)", lengths, "sqrt", /Functions are not available/],
    ["3 IN IN", lengths, "IN", /one number with its unit/],
    ["3 mpa", { kind: "pressureDifference", units: [bar] }, "mpa", /a unit: bar/],
    ["208/230 V", { kind: "voltage", units: [volt] }, "208/230 V", /one value/],
    ["-3 psia", { kind: "absolutePressure", units: [psia] }, "-3 psia", /0 psia or more/],
    ["9".repeat(201), gauges, "9", /at most 200 characters/],
    ["1e999", gauges, "1e999", /too large/],
  ])("%s", (text, options, part, says) => {
    const error = refusal(() => readQuantity(text, options as ReadQuantityOptions<"length">));
    expect(text.slice(error.position, error.end)).toBe(part);
    expect(spoken(error)).toMatch(says);
  });

  it("a text that is none, and wrong options, by a plain typed error", () => {
    for (const [text, options, says] of [
      [undefined, gauges, /^text/],
      [118, gauges, /^text/],
      ["118", undefined, /^options/],
      ["118", { ...gauges, units: [] }, /^options\.units\.length: 0 .*at least 1/],
      ["118", { ...gauges, units: [psia] }, /^options\.kind.*absolutePressure/],
      ["118", { ...gauges, units: undefined }, /^options\.units/],
      ["118", { ...gauges, locale: "no such tag" }, /^options\.locale/],
    ] as const) {
      const act = () => readQuantity(text as string, options as never);
      expect(act).toThrow(InvalidInputError);
      expect(act).toThrow(says);
    }
  });

  it("nothing but a typed error comes of any text", () => {
    const piece = fc.constantFrom(
      ..."0123456789 .,'\"/-–−+×()eE",
      ..."ft in psig bar ¼ ⅞ ⁷⁄₁₆ µ ° ’ \u00a0 \u202f x ^".split(" "),
    );
    const text = fc.oneof(
      fc.string({ unit: "binary" }),
      fc.array(piece).map((all) => all.join("")),
    );
    const locale = fc.constantFrom(undefined, "de", "fr", "en-IN", "ar-EG");
    fc.assert(
      fc.property(text, locale, fc.constantFrom(lengths, gauges), (typed, tag, options) => {
        try {
          const read = readQuantity(typed, {
            ...(options as ReadQuantityOptions<"length">),
            ...(tag && { locale: tag }),
          });
          expect(Number.isFinite(read.si)).toBe(true);
        } catch (error) {
          expect(isInvalidInputError(error), String(error)).toBe(true);
          if (isFieldTextError(error)) {
            expect(error.position).toBeGreaterThanOrEqual(0);
            expect(error.end).toBeLessThanOrEqual(Math.max(typed.length, error.position));
          }
        }
      }),
      { numRuns: 2000 },
    );
  });
});

it("takes no more units than a field may offer", () => {
  const units = Array.from({ length: 101 }, () => ft);
  expect(() => readQuantity("12", { kind: "length", units })).toThrow("options.units.length: 101");
  expect(readQuantity("12", { kind: "length", units: units.slice(1) }).in(ft)).toBe(12);
});
