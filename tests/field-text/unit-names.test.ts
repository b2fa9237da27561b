import { parseQuantity, typedUnits } from "hvac-install-math/field-text";
import { InvalidInputError, type Kind } from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import { homeUnits, inchPoundNames, metricNames } from "../../src/field-text/unit-names.ts";
import { spelled } from "../../src/read-quantity/unit-names.ts";
import { allUnits } from "./catalogue.ts";

const kinds = [...new Set(allUnits.map(({ kind }) => kind))];

describe("every unit of the catalogue", () => {
  it.each(allUnits.map((unit) => [unit.symbol, unit.kind, unit] as const))(
    "is read by its symbol: %s (%s)",
    (symbol, kind, unit) => {
      const read = parseQuantity(`12.5 ${symbol}`, { kind });
      expect(read.toString()).toBe(unit(12.5).toString());
      expect(read.si).toBeCloseTo(unit(12.5).si, 9);
    },
  );
});

describe("every name", () => {
  const rows = [...inchPoundNames, ...metricNames];
  it.each(rows.map(([units, names]) => [names, units] as const))(
    "means its units: %s",
    (names, units) => {
      for (const name of names.replaceAll("=", "").split("|").flatMap(spelled)) {
        for (const unit of units) {
          const home = homeUnits.get(unit) ?? unit;
          for (const text of [`3${name}`, `3 ${name}`, `3 ${name.replaceAll(" ", "\u00a0")}`]) {
            const read = parseQuantity(text, { kind: unit.kind as Kind });
            expect(read.unit.symbol, text).toBe(home.symbol);
            expect(read.si, text).toBeCloseTo(
              (unit as (value: number) => { si: number })(3).si,
              12,
            );
          }
        }
      }
    },
  );

  it("may end in a point, be written together and be in any case, unless case matters", () => {
    for (const text of ["3 sq. ft.", "3 sqft", "3 SQ FT", "3 Sq  Ft"]) {
      expect(parseQuantity(text, { kind: "area" }).toString()).toBe("3 ft²");
    }
    for (const text of ["3 mpa", "3 mPa", "3 Mpa"]) {
      expect(() => parseQuantity(text, { kind: "pressureDifference" })).toThrow(
        /field-text\.capitals/,
      );
    }
    for (const [text, kind] of [
      ["3 Mg", "mass"],
      ["3 ML", "volume"],
      ["3 H", "duration"],
      ["3 S", "duration"],
      ["3 M", "length"],
      ["3 MA", "current"],
      ["3 Mbar", "pressureDifference"],
      ["3 mω", "resistance"],
    ] as const) {
      expect(() => parseQuantity(text, { kind })).toThrow(/field-text\.capitals/);
    }
  });
});

// What a prefix means: SI Brochure, 9th edition, table 7, from memory; Δtorr: common practice, no source. No unit of the
// catalogue has these symbols.
it.each<[string, Kind, string]>([
  ["5 Δtorr", "pressureDifference", "5 torr"],
  ["50 micrometers", "length", "0.05 mm"],
  ["250 mV", "voltage", "0.25 V"],
  ["250 millivolts", "voltage", "0.25 V"],
  ["5 mΩ", "resistance", "0.005 Ω"],
  ["5 milliohms", "resistance", "0.005 Ω"],
  ["4.7 kΩ", "resistance", "4700 Ω"],
  ["4.7 kilohms", "resistance", "4700 Ω"],
])("%s as a %s is %s", (text, kind, read) => {
  expect(parseQuantity(text, { kind }).toString()).toBe(read);
});

describe("typedUnits", () => {
  it("lists units of the kind for every kind, each in the catalogue", () => {
    expect(kinds.length).toBe(27);
    for (const kind of kinds) {
      const listed = typedUnits(kind);
      expect(listed.length, kind).toBeGreaterThan(0);
      for (const { unit, names } of listed) {
        expect(unit.kind).toBe(kind);
        expect(allUnits).toContain(unit);
        expect(names.length).toBeGreaterThan(0);
        expect(names.join("")).not.toContain("=");
      }
    }
  });

  // The words: dictionaries of the languages; from memory.
  it("lists the words of one language, beside the symbols", () => {
    const feet = (language: "en" | "es" | "fr") =>
      typedUnits("length", language).find(({ unit }) => unit.symbol === "ft")?.names;
    expect(feet("en")).toEqual(["ft", "foot", "feet", "'"]);
    expect(feet("es")).toEqual(["ft", "'", "pie", "pies"]);
    expect(feet("fr")).toEqual(["ft", "'", "pied", "pieds", "pi"]);
    for (const language of ["es", "fr"] as const) {
      const names = kinds.flatMap((kind) =>
        typedUnits(kind, language).flatMap(({ names, unit }) =>
          names.filter((name) => name !== unit.symbol),
        ),
      );
      expect(names.filter((name) => /foot|inch|pound|ounce|hour|year|gauge/.test(name))).toEqual(
        [],
      );
    }
    const english = kinds.flatMap((kind) => typedUnits(kind).flatMap(({ names }) => names));
    expect(
      english.filter((name) => /^(pies?|pulg|libra|onza|once|livre|pied|po|pi)\b/.test(name)),
    ).toEqual([]);
  });

  // The words: dictionaries of the languages; from memory.
  it.each([
    [
      "duration",
      "s",
      ["sec", "second", "seconds"],
      ["segundo", "segundos"],
      ["seconde", "secondes"],
    ],
    ["duration", "min", ["minute", "minutes"], ["minuto", "minutos"], ["minute", "minutes"]],
    ["voltage", "V", ["volt", "volts"], ["voltio", "voltios"], ["volt", "volts"]],
    [
      "temperature",
      "°C",
      ["degrees Celsius"],
      ["grados C", "grados Celsius"],
      ["degrés C", "Celsius"],
    ],
    ["massPerLength", "oz/ft", ["ounces per foot"], ["onzas por pie"], ["onces par pied"]],
    ["gaugePressure", "psig", ["psig", "pounds per square inch gauge"], ["psig"], ["psig"]],
    ["gaugePressure", "inHg gauge", ["inHg gauge", "inHg g"], ["inHg g"], ["inHg g"]],
    ["ratio", "%", ["per cent"], ["por ciento"], ["pour cent"]],
  ] as const)("lists %s in %s with plurals", (kind, symbol, en, es, fr) => {
    for (const [language, words] of Object.entries({ en, es, fr })) {
      const units = typedUnits<Kind>(kind, language as "en");
      const names = units.flatMap((one) => (one.unit.symbol === symbol ? one.names : []));
      expect(names).toEqual(expect.arrayContaining([...words]));
    }
  });

  // English abbreviations, which stand for no word of the other two. Dictionaries; from memory.
  it.each<[Kind, string, string[], string[], string[]]>([
    [
      "duration",
      "h",
      ["h", "hr", "hrs", "hour", "hours"],
      ["h", "hora", "horas"],
      ["h", "heure", "heures"],
    ],
    ["duration", "d", ["d", "day", "days"], ["d", "día", "días"], ["d", "jour", "jours"]],
    [
      "current",
      "A",
      ["A", "amp", "amps", "ampere", "amperes"],
      ["A", "amperio", "amperios"],
      ["A", "ampère", "ampères"],
    ],
    [
      "angle",
      "°",
      ["°", "deg", "degree", "degrees"],
      ["°", "grado", "grados"],
      ["°", "degré", "degrés"],
    ],
    [
      "mass",
      "lb",
      ["lb", "lbs", "pound", "pounds", "lbm"],
      ["lb", "libra", "libras", "lbm"],
      ["lb", "livre", "livres", "lbm"],
    ],
    [
      "mass",
      "oz",
      ["oz", "ozs", "ounce", "ounces"],
      ["oz", "onza", "onzas"],
      ["oz", "once", "onces"],
    ],
    ["ratio", "%", ["%", "per cent", "pct", "percent"], ["%", "por ciento"], ["%", "pour cent"]],
  ])("lists of %s %s just the words of the language", (kind, symbol, en, es, fr) => {
    for (const [language, words] of Object.entries({ en, es, fr })) {
      const units = typedUnits<Kind>(kind, language as "en");
      expect(units.find(({ names }) => names[0] === symbol)?.names).toEqual(words);
    }
  });

  it("lists no word with a letter stuck on it", () => {
    const names = ["gaugePressure", "absolutePressure"] as const;
    for (const name of names.flatMap((kind) => typedUnits(kind).flatMap((one) => one.names))) {
      expect(name).not.toMatch(/(?:(?:inch|mercury|pascals?|bars)[ga]|Hgg)$/);
    }
  });

  it("refuses what is no kind", () => {
    for (const kind of ["", "constructor", undefined, 3]) {
      expect(() => typedUnits(kind as never)).toThrow(InvalidInputError);
    }
  });
});
