// The same misuses as in misuse.test-d.ts, from JavaScript, where no compiler stands in the way.
import * as q from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";

// biome-ignore lint/suspicious/noExplicitAny: a JavaScript caller sees no types.
const js = q as any;
const { psig, psi, psia, kPaa, kPag, degF, deltaF, micron, ft, m, mm, oz, ozPerFt, volt } = js;

/** What the call throws, as `name: message`. */
function refusal(call: () => unknown): string {
  try {
    return `no error, but ${String(call())}`;
  } catch (error) {
    const { name, message } = error as Error;
    return `${name}: ${message}`;
  }
}

describe("arithmetic names the operation, what was passed and what it takes", () => {
  it.each<[string, () => unknown, string]>([
    [
      "psig + psia",
      () => psig(118).plus(psia(14.7)),
      "plus: absolutePressure 14.7 psia is not allowed; allowed: the kind pressureDifference",
    ],
    [
      "psig + psig",
      () => psig(118).plus(psig(2)),
      "plus: gaugePressure 2 psig is not allowed; allowed: the kind pressureDifference",
    ],
    [
      "°F + °F",
      () => degF(80).plus(degF(70)),
      "plus: temperature 70 °F is not allowed; allowed: the kind temperatureDifference",
    ],
    [
      "psig − psia",
      () => psig(118).minus(psia(14.7)),
      "minus: absolutePressure 14.7 psia is not allowed; allowed: the kind pressureDifference",
    ],
    [
      "V + Δ°F",
      () => volt(1).plus(deltaF(1)),
      "plus: temperatureDifference 1 Δ°F is not allowed; allowed: the kind voltage",
    ],
    [
      "a bare number",
      () => psi(118).plus(2),
      "plus: 2 is not allowed; allowed: the kind pressureDifference",
    ],
    [
      "nothing",
      () => psi(118).plus(),
      "plus: undefined is not allowed; allowed: the kind pressureDifference",
    ],
    [
      "null",
      () => psi(118).minus(null),
      "minus: null is not allowed; allowed: the kind pressureDifference",
    ],
    [
      "a unit",
      () => psi(118).plus(psi),
      "plus: a unit of pressureDifference is not allowed; allowed: the kind pressureDifference",
    ],
    [
      "a parsed object",
      () => psi(118).plus(JSON.parse(JSON.stringify(psi(2)))),
      "plus: pressureDifference [object Object] is not allowed; allowed: the kind pressureDifference",
    ],
    [
      "2 × a temperature",
      () => degF(80).times(2),
      "times: temperature 80 °F is not allowed; allowed: a difference, not a point on a scale",
    ],
    [
      "half a gauge pressure",
      () => psig(118).dividedBy(2),
      "dividedBy: gaugePressure 118 psig is not allowed; allowed: a difference, not a point on a scale",
    ],
    [
      "the ratio of two points",
      () => psia(4).dividedBy(psia(2)),
      "dividedBy: absolutePressure 4 psia is not allowed; allowed: a difference, not a point on a scale",
    ],
    [
      "psi × psi",
      () => psi(2).times(psi(3)),
      "times: pressureDifference 3 psi is not allowed; allowed: a finite number",
    ],
    [
      "psi × text",
      () => psi(2).times("3"),
      'times: the text "3" is not allowed; allowed: a finite number',
    ],
    [
      "psi × null",
      () => psi(2).times(null),
      "times: null is not allowed; allowed: a finite number",
    ],
    [
      "psi × NaN",
      () => psi(2).times(Number.NaN),
      "times: NaN is not allowed; allowed: a finite number",
    ],
    ["psi ÷ 0", () => psi(2).dividedBy(0), "dividedBy: 0 is not allowed; allowed: not 0"],
    ["psi ÷ 0 psi", () => psi(2).dividedBy(psi(0)), "dividedBy: 0 is not allowed; allowed: not 0"],
    [
      "psi ÷ Infinity",
      () => psi(2).dividedBy(Number.POSITIVE_INFINITY),
      "dividedBy: Infinity is not allowed; allowed: a finite number",
    ],
    [
      "psi ÷ another kind",
      () => psi(2).dividedBy(ft(2)),
      "dividedBy: length 2 ft is not allowed; allowed: the kind pressureDifference",
    ],
    [
      "psi ÷ null",
      () => psi(2).dividedBy(null),
      "dividedBy: null is not allowed; allowed: the kind pressureDifference",
    ],
  ])("%s", (_, call, message) => {
    expect(refusal(call)).toBe(`InvalidInputError: ${message}`);
  });
});

describe("units refuse what is not a finite number on their scale", () => {
  it.each<[string, () => unknown, string]>([
    ["a text", () => psig("118"), 'psig: the text "118" is not allowed; allowed: a finite number'],
    ["nothing", () => psig(), "psig: undefined is not allowed; allowed: a finite number"],
    ["null", () => degF(null), "°F: null is not allowed; allowed: a finite number"],
    [
      "a quantity",
      () => psig(psig(1)),
      "psig: gaugePressure 1 psig is not allowed; allowed: a finite number",
    ],
    ["NaN", () => psig(Number.NaN), "psig: NaN is not allowed; allowed: a finite number"],
    [
      "Infinity",
      () => kPag(Number.POSITIVE_INFINITY),
      "kPag: Infinity is not allowed; allowed: a finite number",
    ],
    [
      "−Infinity",
      () => m(Number.NEGATIVE_INFINITY),
      "m: -Infinity is not allowed; allowed: a finite number",
    ],
    [
      "below a perfect vacuum",
      () => micron(-1),
      "micron: -1 micron is not allowed; allowed: at least 0 micron",
    ],
    [
      "below absolute zero",
      () => degF(-460),
      "°F: -460 °F is not allowed; allowed: at least -459.67 °F",
    ],
    [
      "a point that a difference takes below its zero",
      () => psia(3).minus(psi(5)),
      "psia: -2 psia is not allowed; allowed: at least 0 psia",
    ],
  ])("%s", (_, call, message) => {
    expect(refusal(call)).toBe(`InvalidInputError: ${message}`);
  });
});

describe("reading refuses what is not a unit of the kind", () => {
  it.each<[string, () => unknown, string]>([
    [
      "an absolute unit",
      () => psig(118).in(psia),
      "unit: a unit of absolutePressure is not allowed; allowed: a unit of gaugePressure",
    ],
    [
      "a gauge unit for a difference",
      () => psi(3).in(psig),
      "unit: a unit of gaugePressure is not allowed; allowed: a unit of pressureDifference",
    ],
    [
      "a quantity in place of its unit",
      () => psi(3).in(psi(1)),
      "unit: pressureDifference 1 psi is not allowed; allowed: a unit of pressureDifference",
    ],
    [
      "nothing",
      () => psi(3).in(),
      "unit: undefined is not allowed; allowed: a unit of pressureDifference",
    ],
    [
      "the name of the unit",
      () => psi(3).as("kPa"),
      'unit: the text "kPa" is not allowed; allowed: a unit of pressureDifference',
    ],
    [
      "any function",
      () => psi(3).as(() => 1),
      "unit: a function is not allowed; allowed: a unit of pressureDifference",
    ],
    [
      "a number too large for the unit",
      () => m(1e308).in(mm),
      "mm: Infinity is not allowed; allowed: a finite number",
    ],
    [
      "a ratio too large for a number",
      () => m(1e308).dividedBy(m(1e-308)),
      "dividedBy: Infinity is not allowed; allowed: a finite number",
    ],
    [
      "too many decimals",
      () => psi(3).toString(psi, 13),
      "decimals: 13 is not allowed; allowed: at least 0 and at most 12",
    ],
    [
      "decimals below none",
      () => psi(3).toString(psi, -1),
      "decimals: -1 is not allowed; allowed: at least 0 and at most 12",
    ],
    [
      "half a decimal",
      () => psi(3).toString(psi, 1.5),
      "decimals: 1.5 is not allowed; allowed: a whole number",
    ],
    [
      "decimals as a text",
      () => psi(3).toString(psi, "1"),
      'decimals: the text "1" is not allowed; allowed: a finite number',
    ],
  ])("%s", (_, call, message) => {
    expect(refusal(call)).toBe(`InvalidInputError: ${message}`);
  });
});

describe("the functions of the core name the argument", () => {
  const atmosphere = q.standardAtmosphere;
  it.each<[string, () => unknown, string]>([
    [
      "no atmosphere",
      () => js.toAbsolute(psig(118)),
      "atmosphere: undefined is not allowed; allowed: the kind absolutePressure",
    ],
    [
      "an atmosphere on the gauge scale",
      () => js.toAbsolute(psig(118), psig(14.7)),
      "atmosphere: gaugePressure 14.7 psig is not allowed; allowed: the kind absolutePressure",
    ],
    [
      "an atmosphere of nothing",
      () => js.toAbsolute(psig(118), psia(0)),
      "atmosphere: 0 psia is not allowed; allowed: more than 0 psia",
    ],
    [
      "an absolute pressure made absolute",
      () => js.toAbsolute(psia(132.7), atmosphere),
      "pressure: absolutePressure 132.7 psia is not allowed; allowed: the kind gaugePressure",
    ],
    [
      "a unit made absolute",
      () => js.toAbsolute(psig, atmosphere),
      "pressure: a unit of gaugePressure is not allowed; allowed: the kind gaugePressure",
    ],
    [
      "a gauge below a perfect vacuum",
      () => js.toAbsolute(psig(-15), atmosphere),
      "pressure: -15 psig is not allowed; allowed: at least -14.6959 psig (quantity.below-vacuum)",
    ],
    [
      "an absolute pressure made gauge where there is no air",
      () => js.toGauge(psia(118), psia(0)),
      "atmosphere: 0 psia is not allowed; allowed: more than 0 psia",
    ],
    [
      "a gauge pressure made gauge",
      () => js.toGauge(psig(1), atmosphere),
      "pressure: gaugePressure 1 psig is not allowed; allowed: the kind absolutePressure",
    ],
    [
      "an altitude as a number",
      () => js.atmosphereAtAltitude(5000),
      "altitude: 5000 is not allowed; allowed: the kind length",
    ],
    [
      "equals of nothing",
      () => js.equals(undefined, psi(1), psi(1)),
      "a: undefined is not allowed; allowed: a quantity",
    ],
    [
      "equals of two kinds",
      () => js.equals(psig(1), psia(1), psi(1)),
      "b: absolutePressure 1 psia is not allowed; allowed: the kind gaugePressure",
    ],
    [
      "equals without a tolerance",
      () => js.equals(psig(1), psig(1)),
      "tolerance: undefined is not allowed; allowed: the kind pressureDifference",
    ],
    [
      "equals with a point as the tolerance",
      () => js.equals(degF(1), degF(1), degF(1)),
      "tolerance: temperature 1 °F is not allowed; allowed: the kind temperatureDifference",
    ],
    [
      "equals with a unit as the tolerance",
      () => js.equals(psi(1), psi(1), psi),
      "tolerance: a unit of pressureDifference is not allowed; allowed: the kind pressureDifference",
    ],
    [
      "equals with a tolerance below 0",
      () => js.equals(psi(1), psi(1), psi(-1)),
      "tolerance: -1 psi is not allowed; allowed: at least 0 psi",
    ],
    [
      "a product outside the table",
      () => js.product(ft(20), volt(1), oz),
      "product or quotient: length × voltage = mass is not allowed; allowed: a pair of kinds in the table Products",
    ],
    [
      "a product of a kind that heads no row of the table",
      () => js.product(oz(1), ft(1), m),
      "product or quotient: mass × length = length is not allowed; allowed: a pair of kinds in the table Products",
    ],
    [
      "a product the wrong way round",
      () => js.product(ft(20), ozPerFt(0.16), oz),
      "product or quotient: length × massPerLength = mass is not allowed; allowed: a pair of kinds in the table Products",
    ],
    [
      "a product in the wrong unit",
      () => js.product(ozPerFt(0.16), ft(20), m),
      "product or quotient: massPerLength × length = length is not allowed; allowed: a pair of kinds in the table Products",
    ],
    [
      "a product of a unit",
      () => js.product(ozPerFt, ft(20), oz),
      "a: a unit of massPerLength is not allowed; allowed: a quantity",
    ],
    [
      "a product without a unit",
      () => js.product(ozPerFt(1), ft(20)),
      "unit: undefined is not allowed; allowed: a unit of some kind",
    ],
    [
      "a product of names of Object",
      () => js.product({ ...ft(1), kind: "constructor" }, ft(1), m),
      "a: constructor [object Object] is not allowed; allowed: a quantity",
    ],
    [
      "a quotient by nothing",
      () => js.quotient(oz(1), undefined, ft),
      "divisor: undefined is not allowed; allowed: a quantity",
    ],
    [
      "a quotient by 0",
      () => js.quotient(oz(1), ozPerFt(0), ft),
      "divisor: massPerLength 0 oz/ft is not allowed; allowed: not 0",
    ],
    [
      "a quotient outside the table",
      () => js.quotient(oz(1), volt(1), ft),
      "product or quotient: voltage × length = mass is not allowed; allowed: a pair of kinds in the table Products",
    ],
  ])("%s", (_, call, message) => {
    expect(refusal(call)).toBe(`InvalidInputError: ${message}`);
  });

  it("an altitude beyond the model is out of its range, in the caller's unit", () => {
    expect(refusal(() => q.atmosphereAtAltitude(q.ft(60_000)))).toBe(
      "OutOfRangeError: altitude: 60000 ft is not allowed; allowed: at least -16404.2 ft and at most 36089.2 ft",
    );
  });
});

describe("reading JSON", () => {
  const good = { kind: "gaugePressure", value: 118, unit: "psig" };
  it.each<[string, unknown, string]>([
    [
      "nothing",
      undefined,
      "json: undefined is not allowed; allowed: an object with kind, value and unit",
    ],
    ["null", null, "json: null is not allowed; allowed: an object with kind, value and unit"],
    [
      "a text",
      JSON.stringify(good),
      'json: the text "{\\"kind\\":\\"gaugePressure\\",\\"value\\":118,\\"uni" is not allowed; allowed: an object with kind, value and unit',
    ],
    [
      "an array",
      [118, "psig"],
      "json: an object with 0,1 is not allowed; allowed: an object with kind, value and unit",
    ],
    [
      "a missing unit",
      { kind: "gaugePressure", value: 118 },
      "json: an object with kind,value is not allowed; allowed: an object with kind, value and unit",
    ],
    [
      "a property too many",
      { ...good, note: "x" },
      "json: an object with kind,note,unit,value is not allowed; allowed: an object with kind, value and unit",
    ],
    [
      "an object of another kind, whose properties are shown as far as a line goes",
      { ["x".repeat(500)]: 1 },
      `json: an object with ${"x".repeat(60)} is not allowed; allowed: an object with kind, value and unit`,
    ],
    [
      "an unknown unit",
      { ...good, unit: "atg" },
      'json.unit: the text "atg" is not allowed; allowed: a unit of gaugePressure: MPag, barg, inHg gauge, kPag, psig',
    ],
    [
      "a unit of another kind",
      { ...good, unit: "psia" },
      'json.unit: the text "psia" is not allowed; allowed: a unit of gaugePressure: MPag, barg, inHg gauge, kPag, psig',
    ],
    [
      "the name of the unit's constant",
      { kind: "temperature", value: 1, unit: "degF" },
      'json.unit: the text "degF" is not allowed; allowed: a unit of temperature: K, °C, °F',
    ],
    [
      "a name of Object",
      { ...good, kind: "__proto__" },
      'json.kind: the text "__proto__" is not allowed; allowed: a kind of quantity',
    ],
    [
      "a value as a text",
      { ...good, value: "118" },
      'json.value: the text "118" is not allowed; allowed: a finite number',
    ],
    [
      "a value lost by JSON",
      { ...good, value: null },
      "json.value: null is not allowed; allowed: a finite number",
    ],
  ])("refuses %s", (_, json, message) => {
    expect(refusal(() => q.fromJSON(json))).toBe(`InvalidInputError: ${message}`);
  });

  it("refuses an expected kind that is no text", () => {
    expect(refusal(() => js.fromJSON(good, 3))).toBe(
      "InvalidInputError: kind: 3 is not allowed; allowed: a text",
    );
  });

  it("refuses another kind than the expected one", () => {
    expect(refusal(() => q.fromJSON(good, "absolutePressure"))).toBe(
      "InvalidInputError: json: gaugePressure 118 psig is not allowed; allowed: the kind absolutePressure",
    );
  });
});

describe("isQuantity", () => {
  it.each<[string, unknown]>([
    ["undefined", undefined],
    ["null", null],
    ["a number", 118],
    ["a text", "118 psig"],
    ["a unit", psig],
    ["a parsed object", JSON.parse(JSON.stringify(psig(118)))],
    ["a spread copy, which has lost its methods", { ...psig(118) }],
    [
      "an object whose properties throw",
      new Proxy(
        {},
        {
          get: () => {
            throw new Error("no");
          },
        },
      ),
    ],
  ])("is false for %s", (_, value) => {
    expect(q.isQuantity(value)).toBe(false);
  });

  it("is false for an object that has everything but a unit, of whatever kind it says it is", () => {
    const { kind, si, plus } = psig(118);
    expect(q.isQuantity({ kind, si, plus, unit: psig })).toBe(true);
    expect(q.isQuantity({ kind, si, plus, unit: "psig" }, "gaugePressure")).toBe(false);
  });

  it("is true for a quantity, and for its own kind only when one is asked for", () => {
    expect(q.isQuantity(psig(118))).toBe(true);
    expect(q.isQuantity(psig(118), "gaugePressure")).toBe(true);
    expect(q.isQuantity(psig(118), "absolutePressure")).toBe(false);
    expect(q.isQuantity(kPaa(1), "pressureDifference")).toBe(false);
  });
});

describe("the parts of an error", () => {
  it("can be read by a program, and tell the two errors apart", () => {
    const caught = (call: () => unknown) => {
      try {
        call();
      } catch (error) {
        return error;
      }
      return undefined;
    };
    const error = caught(() => q.toAbsolute(q.psig(-15), q.standardAtmosphere));
    expect(q.isInvalidInputError(error)).toBe(true);
    expect(error).toMatchObject({
      name: "InvalidInputError",
      argument: "pressure",
      value: "-15 psig",
      allowed: "at least -14.6959 psig",
      hint: { code: "quantity.below-vacuum", values: {} },
    });
    expect(error).toBeInstanceOf(Error);
    const beyond = caught(() => q.atmosphereAtAltitude(q.m(20_000)));
    expect(q.isInvalidInputError(beyond)).toBe(true);
    expect(beyond).toMatchObject({ name: "OutOfRangeError", hint: undefined });
    for (const other of [undefined, null, "InvalidInputError", new TypeError("x"), {}]) {
      expect(q.isInvalidInputError(other)).toBe(false);
    }
  });
});
