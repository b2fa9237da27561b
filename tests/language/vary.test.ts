// How is a language written for another country? Its words in the place of others, on catalogues made for it.
// Words and their genders: dictionaries of Spanish, from memory.
import { describe, expect, it } from "vitest";
import { define, join } from "../../src/language/define.ts";
import { swapping, vary } from "../../src/language/vary.ts";

const write = swapping([
  ["cilindro", "botella"],
  ["el cilindro", "la botella"],
  ["cilindro de gas", "bombona"],
  ["1.36 veces", "1,36 veces"],
]);

describe("words of a country", () => {
  // A half-translated phrase ("el botella") reads as a mistake of the app.
  it.each([
    ["the longest that fits", "Cambie el cilindro.", "Cambie la botella."],
    ["the longest that begins there", "cilindro de gas", "bombona"],
    ["a word by itself", "cilindro: lleno", "botella: lleno"],
    ["with the capital of a sentence", "El cilindro. Cilindro.", "La botella. Botella."],
    ["never a part of a word", "cilindros, minicilindro, cilindroé", undefined],
    ["never a part of a number with letters", "2cilindro, cilindro2", undefined],
    ["never the name of a value", "{cilindro}, {cilindro:or}", undefined],
    ["a dot as a dot", "1.36 veces, 1x36 veces", "1,36 veces, 1x36 veces"],
  ])("%s", (_, text, said = text) => {
    expect(write(text)).toBe(said);
  });
});

describe("a language of another country", () => {
  const base = define("es-MX", {
    "a.full": "El cilindro está lleno.",
    "a.count": { by: "cilindro", one: "{cilindro} cilindro", other: "{cilindro} botes" },
    "a.said": "cilindro",
  }) as Parameters<typeof vary<"a.full" | "a.count" | "a.said">>[0];
  const varied = vary(base, "es-ES", write, { "a.said": "dicho de otro modo" });

  it("has the texts and variants of its base with its own words, and sentences of its own", () => {
    expect(varied.locale).toBe("es-ES");
    expect(varied.messages).toEqual({
      "a.full": "La botella está lleno.",
      "a.count": { by: "cilindro", one: "{cilindro} botella", other: "{cilindro} botes" },
      "a.said": "dicho de otro modo",
    });
    expect(vary(base, "es-ES", write).messages["a.said"]).toBe("botella");
  });

  it("is made once, and nobody can change it or its base", () => {
    expect(varied.messages).toBe(varied.messages);
    for (const one of [base, varied]) {
      expect(Object.isFrozen(one)).toBe(true);
      expect(Object.isFrozen(one.messages)).toBe(true);
      expect(Object.isFrozen(one.messages["a.count"])).toBe(true);
    }
    expect(base.messages["a.full"]).toBe("El cilindro está lleno.");
  });
});

it("catalogues are joined under the locale of their language, and frozen", () => {
  const [one, other] = [define("es-MX", { "a.x": "x" }), define("es-MX", { "b.y": "y" })];
  const whole = join([one, other]);
  expect(whole).toEqual({ locale: "es-MX", messages: { "a.x": "x", "b.y": "y" } });
  expect(Object.isFrozen(whole) && Object.isFrozen(whole.messages)).toBe(true);
});
