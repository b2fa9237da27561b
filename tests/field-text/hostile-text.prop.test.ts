import fc from "fast-check";
import { isFieldTextError, parseQuantity } from "hvac-install-math/field-text";
import { isQuantity, type Kind } from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import { allUnits } from "./catalogue.ts";

const kinds = [...new Set(allUnits.map(({ kind }) => kind))];
const kind = fc.constantFrom(...kinds);
const locale = fc.constantFrom(
  undefined,
  "en-US",
  "de",
  "fr",
  "de-CH",
  "en-IN",
  "fa",
  "ar-EG",
  "sv",
);

/** Gives a finite quantity of the kind, or the typed error with a place inside the text. */
function survives(text: string, wanted: Kind, tag: string | undefined, bare = false): void {
  const defaultUnit = bare ? allUnits.find((unit) => unit.kind === wanted) : undefined;
  try {
    const quantity = parseQuantity(text, {
      kind: wanted,
      ...(tag === undefined ? {} : { locale: tag }),
      ...(defaultUnit ? { defaultUnit: defaultUnit as never } : {}),
    });
    expect(isQuantity(quantity, wanted)).toBe(true);
    expect(Number.isFinite(quantity.si)).toBe(true);
  } catch (error) {
    if (!isFieldTextError(error)) throw error;
    expect(error.position).toBeGreaterThanOrEqual(0);
    expect(error.end).toBeGreaterThanOrEqual(error.position);
    expect(error.end).toBeLessThanOrEqual(text.length);
    expect(error.message.length).toBeLessThan(600);
    expect(error.message).not.toMatch(/NaN|undefined|\[object/);
  }
}

const pieces = [
  ..."0123456789",
  ..." .,'\"+-−–×x*·÷/()°µΔ%¼⅜⅞′″²³⁻⁸^eE\u00a0\u2009\u202f\u200e",
  "12",
  "1/4",
  "1-1/4",
  "1e-7",
  " ft ",
  " in ",
  " lb ",
  " oz ",
  " psig ",
  " psi ",
  " micron ",
  " °F ",
  " Δ°F ",
  "1.234",
  "1,234",
  "constructor",
  "__proto__",
];

describe("hostile text", () => {
  it("of any characters gives a quantity or the typed error", () => {
    const text = fc.string({ unit: "binary", maxLength: 220 });
    fc.assert(fc.property(text, kind, locale, fc.boolean(), survives), { numRuns: 500 });
  });

  it("of the notation's own pieces gives a quantity or the typed error", () => {
    const text = fc
      .array(fc.constantFrom(...pieces), { maxLength: 40 })
      .map((parts) => parts.join(""));
    fc.assert(fc.property(text, kind, locale, fc.boolean(), survives), { numRuns: 1500 });
  });

  it("that is nearly right gives a quantity or the typed error", () => {
    const seed = fc.constantFrom(
      "12 ft 6 in + 9 ft",
      "3 lb 4.5 oz − 2 oz",
      "(72 °F − 5 Δ°F)",
      "1-1/4 in × 2",
      "0.6 oz/ft × 12'-6\"",
      "1.234.567,5 Pa abs",
    );
    const mutated = fc
      .tuple(
        seed,
        fc.array(fc.tuple(fc.nat(30), fc.constantFrom(...pieces), fc.boolean()), { maxLength: 4 }),
      )
      .map(([text, edits]) =>
        edits.reduce<string>(
          (now, [at, piece, replace]) =>
            now.slice(0, at) + piece + now.slice(at + (replace ? 1 : 0)),
          text,
        ),
      );
    fc.assert(fc.property(mutated, kind, locale, fc.boolean(), survives), { numRuns: 1000 });
  });

  it("of a million characters fails at once", () => {
    const started = performance.now();
    for (const part of [
      "(",
      "1",
      " ",
      "1 ft + ",
      "'",
      "1/",
      "1-",
      "\u0000",
      "e",
      "in ",
      "ft·",
      "1,",
      "💥",
    ]) {
      const text = part.repeat(Math.ceil(1e6 / part.length));
      expect(() => parseQuantity(text, { kind: "length", locale: "de" })).toThrow(
        /field-text\.shorter/,
      );
    }
    expect(performance.now() - started).toBeLessThan(500);
  });

  it.each([
    "(".repeat(200),
    ")".repeat(200),
    "1".repeat(200),
    "1 ".repeat(100),
    "1,".repeat(100),
    "1.".repeat(100),
    "1'".repeat(100),
    "1\u00a0111".repeat(40),
    "1-1/".repeat(50),
    "1/".repeat(100),
    "-".repeat(200),
    "+-".repeat(100),
    "1+".repeat(100),
    `${"1+".repeat(99)}1`,
    `${"1×".repeat(97)}1 in`,
    `${"(1+".repeat(10)}1${")".repeat(10)} in`,
    "a".repeat(200),
    `1 ${"in ".repeat(66)}`,
    `1 ${"ft·".repeat(66)}`,
    "°".repeat(200),
    "'".repeat(200),
    '"'.repeat(200),
    "psi(".repeat(50),
    "1e".repeat(100),
    `1e${"9".repeat(190)} in`,
    "×10^".repeat(50),
    "⁰".repeat(200),
    "¼".repeat(200),
    " ".repeat(200),
    ". ".repeat(100),
    "in.".repeat(66),
  ])("takes little time: %s", (text) => {
    survives(text, "length", "de-CH"); // warm
    // The quickest of a few, because other work on the machine can only lengthen a run.
    const times = [1, 2, 3, 4, 5].map(() => {
      const started = performance.now();
      for (const tag of [undefined, "de-CH", "fr"]) survives(text, "length", tag, true);
      return performance.now() - started;
    });
    expect(Math.min(...times)).toBeLessThan(300);
  });
});
