// How a catalogue counts and lists: by Unicode CLDR, whose rules the runtime's Intl has; and what is refused as one.
import { type Catalogue, explain, label, type Message } from "hvac-install-math/assessment";
import { InvalidInputError } from "hvac-install-math/quantity";
import { afterEach, describe, expect, it, vi } from "vitest";

afterEach(() => vi.unstubAllGlobals());

const words = { "w.a": "hose", "w.b": "core", "w.c": "valve", "w.kind.deep.ball": "ball valve" };
const catalogue = (a: Message, locale = "en"): Catalogue => ({
  locale,
  messages: { a, ...words },
});
const said = (message: Message, values: Record<string, unknown>, locale?: string) =>
  explain({ code: "a", values: values as never }, catalogue(message, locale));

describe("a list", () => {
  const codes = ["w.a", "w.b", "w.c"];
  const names = ["hose", "core", "valve"];

  it.each(["en", "en-US", "en-GB", "de", "es", "fr", "ja"])(
    "in %s reads as CLDR has it",
    (locale) => {
      for (const count of [1, 2, 3]) {
        for (const [place, type] of [
          ["{x}", "conjunction"],
          ["{x:or}", "disjunction"],
        ] as const) {
          const expected = new Intl.ListFormat(locale, { type }).format(names.slice(0, count));
          expect(said(place, { x: codes.slice(0, count) }, locale)).toBe(expected);
        }
      }
    },
  );

  it("in American English has a comma before the last of three", () => {
    expect(said("{x}.", { x: codes })).toBe("hose, core, and valve.");
    expect(said("{x:or}.", { x: codes.slice(0, 2) })).toBe("hose or core.");
  });

  it("has commas alone where the runtime has no Intl, in American English none the less", () => {
    vi.stubGlobal("Intl", undefined);
    expect(said("{x}", { x: codes }, "de")).toBe("hose, core, valve");
    expect(said("{x}", { x: codes }, "en-US")).toBe("hose, core, and valve");
  });
});

describe("a number", () => {
  const forms = { by: "n", zero: "z", one: "1", two: "2", few: "f", many: "m", other: "o" };
  const categories = { zero: "z", one: "1", two: "2", few: "f", many: "m", other: "o" };

  it.each(["en", "en-US", "en-GB", "fr", "es", "pl", "ar", "ja"])(
    "chooses in %s as CLDR has it",
    (locale) => {
      const rules = new Intl.PluralRules(locale);
      for (const n of [0, 1, 1.5, 2, 3, 5, 11, 21, -1, -2]) {
        expect(said(forms, { n }, locale), `${n}`).toBe(categories[rules.select(n)]);
      }
    },
  );

  it("chooses the general form where the runtime has no Intl, in American English none the less", () => {
    vi.stubGlobal("Intl", undefined);
    expect([said(forms, { n: 1 }, "pl"), said(forms, { n: 1 })]).toEqual(["o", "1"]);
  });

  it("is asked of one object of Intl for each language, which is dear to make", () => {
    const made: string[] = [];
    const counted = class extends Intl.PluralRules {
      constructor(locale: string) {
        super(locale);
        made.push(locale);
      }
    };
    vi.stubGlobal("Intl", { PluralRules: counted });
    for (const locale of ["sv", "cs", "sv", "cs"]) said(forms, { n: 2 }, locale);
    expect(made).toEqual(["sv", "cs"]);
    expect([said(forms, { n: 2 }, "sv"), said(forms, { n: 2 }, "cs")]).toEqual(["o", "f"]);
  });
});

describe("a word", () => {
  const forms = { by: "part", ball: "the ball", other: "another", constructor: undefined as never };

  it("chooses by the last part of its code", () => {
    expect(said(forms, { part: "w.kind.deep.ball" })).toBe("the ball");
    expect(said(forms, { part: "ball" })).toBe("the ball");
  });

  it("chooses the general form where it has none of its own, or one that objects inherit", () => {
    for (const part of ["w.kind.gate", "w.toString", "w.constructor"]) {
      expect(said(forms, { part })).toBe("another");
    }
  });

  it("is printed in its general form where it has several", () => {
    expect(label("a", catalogue({ by: "n", one: "joint", other: "joints" }))).toBe("joints");
    expect(label("w.a", catalogue("a"))).toBe("hose");
    expect(said("{x}", { x: "w.b" })).toBe("core");
  });
});

describe("what is refused", () => {
  const statement = { code: "a", values: {} };
  const refusal = (run: () => unknown) => {
    try {
      run();
    } catch (error) {
      return error instanceof InvalidInputError ? error.argument : String(error);
    }
    return "nothing";
  };

  it.each([
    undefined,
    null,
    3, // statements.map(explain)
    {},
    { messages: { a: "text" } },
    { locale: "en" },
    { messages: null, locale: "en" },
    { messages: "text", locale: "en" },
    { messages: { a: "text" }, locale: 3 },
  ])("as a language: %j", (language) => {
    expect(refusal(() => explain(statement, language as never))).toBe("language");
    expect(refusal(() => label("a", language as never))).toBe("language");
  });

  it("as the name of a language: what is no tag", () => {
    const forms = { by: "n", other: "o" };
    expect(refusal(() => said(forms, { n: 2 }, "no tag"))).toBe("language.locale");
    expect(refusal(() => said("{x}", { x: ["w.a", "w.b"] }, "no tag"))).toBe("language.locale");
  });

  it("as a code: one that the catalogue does not word, or not with a general form", () => {
    expect(refusal(() => explain({ code: "b", values: {} }, catalogue("a") as never))).toBe("code");
    expect(refusal(() => label("toString", catalogue("a") as never))).toBe("code");
    expect(refusal(() => said({ by: "n", one: "1" } as never, { n: 1 }))).toBe("code");
  });

  it("as a way to print: what is no function", () => {
    for (const show of [3, null, "SI"]) {
      expect(refusal(() => explain(statement, catalogue("text"), show as never))).toBe("show");
    }
  });
});
