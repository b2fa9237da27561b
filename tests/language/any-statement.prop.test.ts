// Whatever stands in a statement, each language makes a sentence of it or refuses it with the typed error.
import fc from "fast-check";
import {
  type Catalogue,
  explain,
  type Message,
  type Single,
  type Statement,
  type Value,
} from "hvac-install-math/assessment";
import { figureText } from "hvac-install-math/display";
import { english } from "hvac-install-math/language/en";
import { spanish, spanishOfSpain } from "hvac-install-math/language/es";
import { french, frenchOfFrance } from "hvac-install-math/language/fr";
import { type AnyQuantity, isInvalidInputError } from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import { allUnits } from "../field-text/catalogue.ts";
import { hostile } from "../report/hostile.ts";
import { namesIn } from "./said.ts";

const languages: readonly Catalogue[] = [english, spanish, spanishOfSpain, french, frenchOfFrance];

/** The sentences with values: all names of each, and those that stand in every variant of it. */
const sentencesOf = ({ messages }: Catalogue) =>
  Object.entries(messages).flatMap(([code, message]) => {
    const names = namesIn(message);
    return names.length > 0 ? [{ code, names, always: inEachVariant(message) }] : [];
  });

function inEachVariant(message: Message): string[] {
  const texts = typeof message === "string" ? [message] : Object.values({ ...message, by: "" });
  const names = texts.filter((text) => text !== "").map((text) => namesIn(text));
  return (names[0] ?? []).filter((name) => names.every((all) => all.includes(name)));
}

/** Codes that have no values, as the code of a word has none. */
const words = Object.entries<Message>(english.messages).flatMap(([code, message]) =>
  namesIn(message).length === 0 ? [code] : [],
);

/** Not the very largest, of which a smaller unit would be more than a number can hold: that is refused. */
const numbers = fc.oneof(
  fc.constantFrom(0, -0, 1, 2, -1, 1e6, 1e9, 5e-324, -1e-9, 1e21, -1e300),
  fc.double({ noNaN: true, min: -1e300, max: 1e300 }),
);

/** A quantity of any unit; 1 of it where the unit does not take the number: no temperature is below absolute zero. */
const quantities = fc.tuple(fc.constantFrom(...allUnits), numbers).map(([unit, number]) => {
  try {
    return unit(number) as unknown as AnyQuantity;
  } catch (error) {
    if (!isInvalidInputError(error)) throw error;
    return unit(1) as unknown as AnyQuantity;
  }
});

/** What a caller writes, of any length and kind, between two marks by which it is found again. */
const verbatims = fc
  .oneof(
    fc.constantFrom("", " ", "{count}", "{name:or}", "$& $1", "undefined", "x".repeat(9999)),
    fc.constantFrom(...hostile),
    fc.string({ unit: "binary", maxLength: 20 }),
  )
  .map((text) => ({ verbatim: `\ue000${text.replace(/[\ue000\ue001]/g, "")}\ue001` }));
const written = /\ue000[^\ue001]*\ue001/g;

const singles: fc.Arbitrary<Single> = fc.oneof(
  numbers,
  quantities,
  verbatims,
  fc.constantFrom(...words),
);
const values: fc.Arbitrary<Value> = fc.oneof(singles, fc.array(singles, { maxLength: 4 }));

/** How figures are shown: as `explain` does by itself, or as a reader anywhere in the world wants them. */
const shows = fc.oneof(
  fc.constant(undefined),
  fc
    .record({
      system: fc.constantFrom("SI" as const, "inch-pound" as const),
      locale: fc.constantFrom(undefined, "de", "ar-EG", "hi-IN-u-nu-deva", "fa", "en-US", "ja"),
      language: fc.constantFrom(undefined, ...(languages as never[])),
    })
    .map(figureText),
);

const textsOf = (value: Value | undefined): string[] =>
  [value].flat().flatMap((one) => (one as { verbatim?: string })?.verbatim ?? []);

describe("any statement of any module (property)", () => {
  it.each(languages)("is a whole sentence: $locale", (language) => {
    const sentences = sentencesOf(language);
    // Every sentence takes its values from one palette, each from another place on.
    const palettes = fc.array(values, { minLength: 7, maxLength: 7 });
    fc.assert(
      fc.property(palettes, shows, (palette, show) => {
        sentences.forEach(({ code, names, always }, at) => {
          const own = (i: number) => palette[(at + i) % palette.length] as Value;
          const said = Object.fromEntries(names.map((name, i) => [name, own(i)]));
          const sentence = explain({ code, values: said }, language, show);
          const frame = sentence.replace(written, "x");
          expect(frame, code).not.toMatch(/[{}]|undefined|null|NaN|Infinity|∞|\[object/);
          expect(frame, code).not.toMatch(/[ \u00a0\u202f]{2}|^\s|\s$/);
          // What the caller wrote stands in it letter for letter.
          const kept = sentence.match(written) ?? [];
          expect(Object.values(said).flatMap(textsOf), code).toEqual(expect.arrayContaining(kept));
          expect(kept, code).toEqual(
            expect.arrayContaining(always.flatMap((name) => textsOf(said[name]))),
          );
        });
      }),
      { numRuns: 4 },
    );
  });

  it.each(languages)("with a value that is none is refused by its name: $locale", (language) => {
    const none = [
      ...[undefined, null, true, 1n, Symbol("x"), () => 1, new Date(0), {}, { verbatim: 3 }],
      ...[{ kind: "length", si: 1 }, Number.NaN, Number.POSITIVE_INFINITY, [[1]]],
    ];
    const nothing = fc.constantFrom<unknown>(...none);
    const lists = fc.tuple(nothing, fc.array(singles, { maxLength: 2 }), fc.nat(2));
    const wrong = fc.oneof(
      nothing,
      lists.map(([one, all, at]) => [...all.slice(0, at), one, ...all.slice(at)]),
    );
    fc.assert(
      fc.property(wrong, fc.nat(3), (bad, which) => {
        for (const { code, names, always } of sentencesOf(language)) {
          const name = always[which % always.length];
          if (name === undefined) continue;
          const given = Object.fromEntries(names.map((name) => [name, 1]));
          const act = () => explain({ code, values: { ...given, [name]: bad } } as never, language);
          expect(refusal(act), code).toMatch(`said.values.${name}`);
        }
      }),
      { numRuns: 3 },
    );
  });
});

/** The argument that the typed error names. */
function refusal(act: () => unknown): string {
  try {
    act();
  } catch (error) {
    if (isInvalidInputError(error)) return error.argument;
    throw error;
  }
  throw new Error("nothing was refused");
}

describe("a language", () => {
  const said: Statement = { code: "a", values: { count: 2, list: [1, 2] } };
  const messages = { a: { by: "count", one: "{list}", other: "{list:or}" } };

  // BCP 47 has a hyphen between the parts of a tag; what is none, Intl throws a RangeError at.
  it.each(["en_US", "", "x", "english language", "\u0000"])(
    "under the tag %j is refused",
    (locale) => {
      const one = { code: "b", values: said.values } as const;
      for (const act of [
        () => explain(said, { locale, messages }),
        () => explain(one, { locale, messages: { b: "{list}" } }),
      ]) {
        expect(refusal(act)).toBe("language.locale");
      }
    },
  );

  it("under any tag makes the sentence or is refused (property)", () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.stringMatching(/^[a-z]{2,3}-[A-Z]{2}$/)), (locale) => {
        try {
          expect(explain(said, { locale, messages })).toMatch(/1.*2/);
        } catch (error) {
          if (!isInvalidInputError(error)) throw error;
        }
      }),
    );
  });
});
