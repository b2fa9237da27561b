import {
  type Catalogue,
  explain,
  type Figure,
  type Outcome,
  overallOutcome,
  type Statement,
} from "hvac-install-math/assessment";
import { kPa, psi, psig, volt } from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import { cite, estimate } from "../../src/assessment/assessment.ts";

/** A catalogue of one sentence and one word. */
const catalogueWith = (text: string): Catalogue => ({
  locale: "en",
  messages: { a: text, "a.flare": "flare nut" },
});

describe("explain", () => {
  /** A sentence of a catalogue that has only this one. */
  const said = (
    text: string,
    values: Statement["values"] = {},
    show?: Parameters<typeof explain>[2],
  ) => explain({ code: "a", values }, catalogueWith(text), show);

  it("puts figures, numbers and words where their names stand", () => {
    const values = { drop: psi(2.9), times: 3, where: "a.flare" };
    expect(said("Fell {drop} {times} times at the {where}; {drop}.", values)).toBe(
      "Fell 2.9 psi 3 times at the flare nut; 2.9 psi.",
    );
  });

  it("prints in the reader's units when told how", () => {
    const show = (value: unknown) =>
      psi(1)
        .plus(value as never)
        .toString(kPa, 1);
    expect(said("{drop}", { drop: psi(1) }, show)).toBe("13.8 kPa");
  });

  it("refuses a sentence that has a name without a figure", () => {
    expect(() => said("It fell by {drop}.")).toThrow("said.values.drop: undefined is not allowed");
  });

  it.each(["constructor", "toString", "__proto__", "hasOwnProperty"])(
    "does not take %s, which every object inherits, for a figure",
    (name) => {
      expect(() => said(`{${name}}`)).toThrow(`said.values.${name}: undefined is not allowed`);
    },
  );

  it("takes such a name when it is a figure, also of an object without a prototype", () => {
    const values = Object.assign(Object.create(null), {
      constructor: 1,
      toString: { verbatim: "two" },
    });
    expect(said("{constructor} {toString}", values)).toBe("1 two");
  });

  it("does not read a figure as a pattern or as another name", () => {
    const values = { a: { verbatim: "$& $1 {b}" }, b: 1 };
    expect(said("{a}", values)).toBe("$& $1 {b}");
  });

  it("prints 0 and an empty word as they are", () => {
    expect(said("[{zero}{nothing}]", { zero: 0, nothing: { verbatim: "" } })).toBe("[0]");
  });

  it("prints four significant digits, and never fewer than stand before the decimal point", () => {
    const printed = (figure: Figure) => said("{figure}", { figure });
    expect(printed(psi(2.94567))).toBe("2.946 psi");
    expect(printed(psi(0.0294567))).toBe("0.02946 psi");
    expect(printed(1234.5)).toBe("1235");
    expect(printed(12345.6)).toBe("12346");
    expect(printed(-12345.6)).toBe("-12346");
    expect(printed(0)).toBe("0");
    expect(printed(1e300)).toBe("1e+300");
  });

  it("prints more digits where two figures that differ would read the same, and only there", () => {
    const both = (a: Figure, b: Figure) => said("{a} or {b}", { a, b });
    expect(both(volt(253.04), volt(253))).toBe("253.04 V or 253 V");
    expect(both(volt(253), volt(253.004))).toBe("253 V or 253.004 V");
    expect(both(volt(253.04), volt(253.04))).toBe("253 V or 253 V");
    expect(both(volt(253.04), psi(253))).toBe("253 V or 253 psi");
    expect(both(volt(253.04), volt(260))).toBe("253 V or 260 V");
  });

  it("does not go after the noise of arithmetic, beyond twelve digits", () => {
    const both = (a: Figure, b: Figure) => said("{a} or {b}", { a, b });
    expect(both(1 + 1e-11, 1)).toBe("1.00000000001 or 1");
    expect(both(1 + 1e-12, 1)).toBe("1 or 1");
  });

  it("gives one who prints otherwise the other figures of the sentence, and not the rest", () => {
    const seen: (readonly Figure[])[] = [];
    const show = (figure: Figure, _: undefined, beside: readonly Figure[]) => {
      seen.push(beside);
      return String(figure);
    };
    expect(said("{a} of {b}", { a: 1, b: 2, c: 3 }, show)).toBe("1 of 2");
    expect(seen).toEqual([
      [1, 2],
      [1, 2],
    ]);
  });

  it("refuses a figure that is none, and a text that is none", () => {
    const printed = (figure: unknown) => () => said("{figure}", { figure } as never);
    expect(printed(Number.NaN)).toThrow("said.values.figure: NaN is not allowed");
    expect(printed({ kind: "voltage" })).toThrow("said.values.figure: ");
    expect(printed(true)).toThrow("said.values.figure: true is not allowed");
    expect(() => said(3 as never)).toThrow('code: the text "a"');
  });

  it("puts a dash where a list holds nothing, so that no gap is overlooked", () => {
    expect(said("Enter: {fields}.", { fields: [] })).toBe("Enter: —.");
    expect(said("Enter: {fields:or}.", { fields: [] })).toBe("Enter: —.");
  });

  it.each([undefined, 3, null])("refuses a show that answers %s", (answer) => {
    const values = { drop: psi(1), times: [1, 2] };
    for (const text of ["{drop}", "{times}"]) {
      expect(() => said(text, values, (() => answer) as never)).toThrow(/^show\(\): .*a text/);
    }
  });

  it("leaves text without names alone", () => {
    expect(said("100 % {} { drop } {a-b}")).toBe("100 % {} { drop } {a-b}");
  });
});

describe("overallOutcome", () => {
  it.each<[Outcome[], Outcome]>([
    [["pass"], "pass"],
    [["pass", "pass"], "pass"],
    [["pass", "inconclusive"], "inconclusive"],
    [["inconclusive", "fail", "pass"], "fail"],
    [["fail"], "fail"],
    [[], "inconclusive"],
  ])("of %j is %s", (outcomes, whole) => {
    expect(overallOutcome(outcomes)).toBe(whole);
  });

  it("does not let a word that it does not know pass", () => {
    expect(() => overallOutcome(["pass", "failed" as Outcome])).toThrow(
      'outcomes[1]: the text "failed" is not allowed; allowed: pass, fail, inconclusive',
    );
    expect(() => overallOutcome([undefined as never])).toThrow("outcomes[0]: undefined");
  });
});

describe("the short forms for modules", () => {
  it("an estimate carries k = 2 and the unit of the difference", () => {
    const { value, standardUncertainty, expandedUncertainty, coverageFactor } = estimate(
      psig(118),
      psi(0.5).si,
    );
    expect(value.toString()).toBe("118 psig");
    expect(standardUncertainty.toString()).toBe("0.5 psi");
    expect(expandedUncertainty.toString()).toBe("1 psi");
    expect(coverageFactor).toBe(2);
  });

  it("a citation may name no clause", () => {
    expect(cite("span-2000")).toEqual({ source: "span-2000", clause: "" });
  });
});

it("names what is missing when JavaScript passes no statement and no list", () => {
  for (const nothing of [undefined, null, 3, "text", []]) {
    expect(() => explain(nothing as never, catalogueWith("a"))).toThrow(
      /^said: .* allowed: an object$/,
    );
  }
  expect(() => explain({ code: "a" } as never, catalogueWith("a"))).toThrow(/^said\.values: /);
  expect(() => overallOutcome(undefined as never)).toThrow(/^outcomes: .* allowed: an array$/);
});
