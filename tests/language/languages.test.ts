// Is every language whole? Each code of English worded, with the same values, and no English word left.
import { type Catalogue, explain, type Message } from "hvac-install-math/assessment";
import { figureText, formatQuantity, unitName } from "hvac-install-math/display";
import * as en from "hvac-install-math/language/en";
import * as es from "hvac-install-math/language/es";
import * as fr from "hvac-install-math/language/fr";
import { deltaF, ft, micron, psi } from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import { namesIn } from "./said.ts";

const english: Catalogue = en.english;
const languages: readonly [string, Catalogue][] = [
  ["es-419", es.spanish],
  ["es-ES", es.spanishOfSpain],
  ["fr-CA", fr.french],
  ["fr-FR", fr.frenchOfFrance],
];

const textsOf = (message: Message | undefined): string[] =>
  typeof message === "object"
    ? Object.entries(message).flatMap(([name, text]) => (name === "by" ? [] : [text]))
    : [message ?? ""];

/** Trade English and small words that are none in Spanish or French. Names of values stand in braces and don't count. */
const wordsOfEnglish = new RegExp(
  `(?<![\\p{L}{])(?:${[
    "the|of|and|is|are|was|were|with|without|from|than|this|that|it|its|not|no one|to|for|by|each|every",
    "within|above|below|limit|limits|leak|leaks|pressure|gauge|reading|readings|drop|hold|enter|check|read",
    "repair|install|unit|room|line|length|valve|valves|breaker|fuse|wire|ground|supply|voltage|current",
    "drain|pump|slope|torque|flare|vacuum|moisture|charge of|weigh|record|recorded|required|allowed|missing",
    "passed|failed|inconclusive|nameplate|manual’s|first|then|again|more|less|too|close|at|on|be|has|have",
    "micron/min abs|day|days|hour|hours|minute of|feet|foot|inch|inches|pound|pounds|ounce|ounces|gauge",
  ].join("|")})(?![\\p{L}}])`,
  "iu",
);

/** Words that another language has too, letter for letter. */
const shared: Readonly<Record<string, readonly string[]>> = {
  es: ["no"],
  fr: ["on"],
};

describe.each(languages)("%s", (locale, language) => {
  const [tongue = ""] = locale.split("-");

  it("words every code of English, and no other", () => {
    expect(language.locale).toBe(locale);
    expect(Object.keys(language.messages).sort()).toEqual(Object.keys(english.messages).sort());
  });

  it("has the values of English in each sentence, and its plural forms", () => {
    for (const [code, message] of Object.entries(language.messages)) {
      const own = namesIn(message);
      const theirs = namesIn(english.messages[code]);
      const chooser = [english.messages[code], message].flatMap((one) =>
        typeof one === "object" ? [one.by] : [],
      );
      expect([...new Set([...own, ...chooser])].sort(), code).toEqual(
        [...new Set([...theirs, ...chooser])].sort(),
      );
      for (const text of textsOf(message)) expect(text, code).not.toBe("");
      // A form that is chosen by a word (the mode, the step) has all the words that English tells apart.
      const model = english.messages[code];
      if (typeof model === "object" && typeof message === "object") {
        expect(Object.keys(message).sort(), code).toEqual(Object.keys(model).sort());
      }
    }
  });

  it("leaves no English word", () => {
    const found = Object.entries(language.messages).flatMap(([code, message]) =>
      textsOf(message).flatMap((text) => {
        const [word] = wordsOfEnglish.exec(text) ?? [];
        return word && !shared[tongue]?.includes(word.toLowerCase()) ? [`${code}: ${word}`] : [];
      }),
    );
    expect(found).toEqual([]);
  });

  it("says otherwise than English what is not a sign or the same word in both", () => {
    const same = Object.keys(english.messages).filter((code) => {
      const [one, other] = [english.messages[code], language.messages[code]].map((message) =>
        JSON.stringify(message),
      );
      return (
        one === other &&
        /\p{L}{3}/u.test(
          textsOf(english.messages[code])
            .join()
            .replace(/\{\w+\}/g, ""),
        )
      );
    });
    // A standard's designation is the same in every language.
    const signs = /^(display\.unit|report\.choice\.(rules|standard)|pressure-test\.rule)\./;
    expect(same.filter((code) => !signs.test(code)).sort()).toEqual(
      tongue === "es"
        ? [
            "report.choice.compressor.inverter",
            "report.choice.fedAs.vapor",
            "report.label.from-manual",
          ]
        : sameInFrench.filter((code) => same.includes(code)).sort(),
    );
  });
});

/** French words that English took over. */
const sameInFrench = [
  "assessment.caution.danger",
  "commissioning.step.charge",
  "commissioning.step.circuit",
  "commissioning.check.circuit",
  "commissioning.field.site.altitude",
  "commissioning.field.instruments",
  "commissioning.field.charge",
  "commissioning.field.power.phases",
  "commissioning.field.photos",
  "commissioning.field.signatures",
  "planning.part.circuit",
  "planning.part.charge",
  "plots.charge-axis",
  "plots.zone",
  "plots.charge",
  "quantity.kind.volume",
  "quantity.kind.angle",
  "report.label.instruments",
  "report.label.photos",
  "report.label.signatures",
  "report.label.sources",
  "report.label.source",
  "report.label.instrument",
  "report.label.reproduction",
];

describe("figures", () => {
  const half = (language: typeof es.spanish) =>
    figureText({ system: "inch-pound", language })(psi(12.5));

  // Unicode CLDR 48: decimal comma in Spain, Canada's French and France, point in es-419.
  it("have the decimal mark of the country", () => {
    expect(half(es.spanish)).toBe("12.5 psi");
    expect(half(es.spanishOfSpain)).toBe("12,5 psi");
    expect(half(fr.french)).toBe("12,5 psi");
    expect(half(fr.frenchOfFrance)).toBe("12,5 psi");
    const inChile = figureText({ system: "inch-pound", language: es.spanish, locale: "es-CL" });
    expect(inChile(psi(12.5))).toBe("12,5 psi");
  });

  it("have units in words, in their number", () => {
    const text = (
      language: typeof es.spanish,
      quantity: Parameters<typeof unitName>[0],
      n: number,
    ) => formatQuantity(quantity(n), { system: "inch-pound", language });
    expect(text(es.spanish, micron as never, 500)).toBe("500 micrones");
    expect(text(es.spanishOfSpain, micron as never, 500)).toBe("500 micras");
    expect(text(fr.french, micron as never, 500)).toBe("500 microns");
    expect(text(es.spanish, ft as never, 25)).toBe("25 pies");
    expect(text(fr.french, ft as never, 25)).toBe("25 pi");
    expect(text(fr.frenchOfFrance, ft as never, 25)).toBe("25 pieds");
    expect(text(fr.frenchOfFrance, ft as never, 1)).toBe("1 pied");
    expect(unitName(deltaF, es.spanish)).toBe("°F");
    expect(unitName(ft, fr.frenchOfFrance)).toBe("pieds");
  });
});

describe("French", () => {
  it("is set with no-break spaces", () => {
    // Source: usage of Canada and of France, from memory.
    const said = { code: "field-text.which-zero", values: {} } as const;
    expect(explain(said, fr.french)).toBe("Manométrique ou absolue?");
    expect(explain(said, fr.frenchOfFrance)).toBe("Relative ou absolue\u202f?");
    for (const [, language] of languages.slice(2)) {
      for (const [code, message] of Object.entries(language.messages)) {
        expect(textsOf(message).join(" "), code).not.toMatch(/ [:;!?%»]|« /);
      }
    }
    // None before ; ! ? in Canada, one narrow one in France: `\s` has them all.
    const textOf = ({ messages }: Catalogue) =>
      Object.values<Message>(messages).flatMap(textsOf).join("\n");
    expect(textOf(fr.french)).not.toMatch(/\s[;!?]/);
    expect(textOf(fr.frenchOfFrance)).not.toMatch(/(?<!\S\u202f)[;!?]/);
  });

  it("counts 0 to 1.9 as one", () => {
    // Unicode CLDR, plural rules of French.
    const said = (count: number) => ({ code: "report.fields-missing", values: { count } }) as const;
    expect(explain(said(0), fr.french)).toBe("il manque 0 donnée");
    expect(explain(said(2), fr.french)).toBe("il manque 2 données");
    expect(explain(said(0), es.spanish)).toBe("faltan 0 datos");
  });
});

describe("the words of a country", () => {
  // Terms: manuals and rules of the trade as published in each country, from memory.
  it.each([
    [es.spanish, "placa de datos", "interruptor termomagnético"],
    [es.spanishOfSpain, "placa de características", "interruptor automático"],
    [fr.french, "robinets", "conduite de liquide"],
    [fr.frenchOfFrance, "vannes", "liaison liquide"],
  ] as const)("%#", (language, ...words) => {
    const all = Object.values<Message>(language.messages).flatMap(textsOf).join("\n");
    for (const word of words) expect(all).toContain(word);
  });

  it("replace those of the base everywhere", () => {
    const left = (language: Catalogue, words: RegExp) =>
      Object.entries(language.messages).flatMap(([code, message]) =>
        textsOf(message).flatMap((text) => (words.test(text) ? [`${code}: ${text}`] : [])),
      );
    const ofTheAmericas =
      /abocinad|agreg|recinto|cilindro|voltaje|termomagnético|placa de datos|drenaje|ampacidad|tomacorriente|energi[cz]/i;
    const ofCanada =
      /robinet|boyau|manuel|(?<!fluides? )frigorigène|conduite de|serpentin|grosseur|plancher|cadenass/i;
    expect(left(es.spanishOfSpain, ofTheAmericas)).toEqual([]);
    expect(left(fr.frenchOfFrance, ofCanada)).toEqual([]);
  });
});
