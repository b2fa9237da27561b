// Does a field understand the units as people type them in Spanish and French?
// The names: usage of the trade, from memory; the definitions of the units are those of the English names.
import { formatQuantity } from "hvac-install-math/display";
import { parseQuantity } from "hvac-install-math/field-text";
import { spanish, spanishOfSpain } from "hvac-install-math/language/es";
import { french, frenchOfFrance } from "hvac-install-math/language/fr";
import * as u from "hvac-install-math/quantity";
import { readQuantity } from "hvac-install-math/read-quantity";
import { describe, expect, it } from "vitest";

const typed: readonly [text: string, unit: u.Unit<u.Kind>, locale: string, expected: string][] = [
  ["500 micras", u.micron, "es-ES", "500 micron"],
  ["500 micrones", u.micron, "es-419", "500 micron"],
  ["500 micrón", u.micron, "es-419", "500 micron"],
  ["12,5 pies", u.ft, "es-ES", "12.5 ft"],
  ["12 pies 6 pulgadas", u.ft, "es-419", "12.5 ft"],
  ["3/8 pulg", u.inch, "es-419", "0.375 in"],
  ["2 libras 8 onzas", u.lb, "es-419", "2.5 lb"],
  ["2 días", u.day, "es-419", "2 d"],
  ["2 DIAS", u.day, "es-419", "2 d"],
  ["12,5 pieds", u.ft, "fr-CA", "12.5 ft"],
  ["12 pi 6 po", u.ft, "fr-CA", "12.5 ft"],
  ["12 pieds 6 pouces", u.ft, "fr-FR", "12.5 ft"],
  ["1/4 pouce", u.inch, "fr-FR", "0.25 in"],
  ["2 livres 8 onces", u.lb, "fr-CA", "2.5 lb"],
  ["1 heure 30 minutes", u.hour, "fr-CA", "1.5 h"],
  ["15 pi-lb", u.ftLb, "fr-CA", "15 ft·lb"],
  ["15 lb·pie", u.ftLb, "es-419", "15 ft·lb"],
  ["2 mètres", u.m, "fr-FR", "2 m"],
  ["247 voltios", u.volt, "es-MX", "247 V"],
  ["20 grados C", u.degC, "es-MX", "20 °C"],
  ["90 segundos", u.second, "es-AR", "90 s"],
  ["20 degrés C", u.degC, "fr-CA", "20 °C"],
  ["90 secondes", u.second, "fr-CA", "90 s"],
  ["15 ampères", u.ampere, "fr-CA", "15 A"],
  ["0.1 oz/yr", u.ozPerYear, "en-US", "0.1 oz/yr"],
  ["0.1 OZ/YR", u.ozPerYear, "en-US", "0.1 oz/yr"],
  ["5 g/yr", u.gPerYear, "en-US", "5 g/yr"],
  ["60 in³", u.cuin, "en-US", "60 in³"],
  ["60 in3", u.cuin, "en-US", "60 in³"],
] as never;

/** Names that only field-text knows. */
const alsoTyped: readonly [text: string, unit: u.Unit<u.Kind>, locale: string][] = [
  ["0.1 oz/year", u.ozPerYear, "en-US"],
  ["0.1 ounces per year", u.ozPerYear, "en-US"],
  ["0.1 oz/año", u.ozPerYear, "es-MX"],
  ["0,1 oz/an", u.ozPerYear, "fr-CA"],
  ["5 g/a", u.gPerYear, "en-GB"],
  ["5 g/año", u.gPerYear, "es-ES"],
  ["5 g/an", u.gPerYear, "fr-FR"],
  ["60 cu. in.", u.cuin, "en-US"],
  ["60 cubic inches", u.cuin, "en-US"],
  ["60 pulgadas cúbicas", u.cuin, "es-MX"],
  ["60 pouces cubes", u.cuin, "fr-CA"],
] as never;

it.each(alsoTyped)("parseQuantity reads %s", (text, unit, locale) => {
  const { kind } = unit;
  const read = parseQuantity(text, { kind, locale });
  expect(read.in(unit)).toBe(Number.parseFloat(text.replace(",", ".")));
});

describe("a field in Spanish or French", () => {
  it.each(typed)("reads %s", (text, unit, locale, expected) => {
    const { kind } = unit;
    expect(readQuantity(text, { kind, units: [unit], locale }).toString()).toBe(expected);
    const [sameUnit] = expected.split(" ").slice(-1);
    expect(parseQuantity(text, { kind, locale }).in(unit)).toBe(Number.parseFloat(expected));
    expect(sameUnit).toBe(unit.symbol);
  });

  it.each([
    ["0.22 onzas por pie", "es-MX"],
    ["0,22 onces par pied", "fr-CA"],
  ])("reads %s where all names are known", (text, locale) => {
    const rate = parseQuantity(text, { kind: "massPerLength", locale });
    expect(rate.toString()).toBe("0.22 oz/ft");
  });

  it("does not take pounds for a pressure", () => {
    for (const text of ["450 libras", "450 livres"]) {
      expect(() => readQuantity(text, { kind: "gaugePressure", units: [u.psig] })).toThrow();
    }
  });

  it.each([spanish, spanishOfSpain, french, frenchOfFrance])(
    "reads what is shown: %#",
    (language) => {
      const { locale } = language;
      const quantities = [
        u.ft(12.5),
        u.inch(0.375),
        u.micron(487),
        u.lb(2.5),
        u.oz(3.2),
        u.ftLb(15.5),
      ];
      for (const quantity of quantities) {
        const shown = formatQuantity<u.Kind>(quantity as never, { system: "inch-pound", language });
        const read = parseQuantity(shown, { kind: quantity.kind as u.Kind, locale });
        expect(read.si, shown).toBeCloseTo(quantity.si, 9);
      }
    },
  );
});
