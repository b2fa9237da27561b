import fc from "fast-check";
import { formatQuantity, type UnitSystem } from "hvac-install-math/display";
import { parseQuantity } from "hvac-install-math/field-text";
import { type Kind, Quantity } from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import { allUnits, type SomeUnit } from "./catalogue.ts";

const kinds = [...new Set(allUnits.map(({ kind }) => kind))];
const locales = [
  "en-US",
  "en-IN",
  "de",
  "fr",
  "sv",
  "de-CH",
  "pt-BR",
  "fa",
  "ar-EG",
  "hi-IN-u-nu-deva",
  "he",
];
const system = fc.constantFrom<UnitSystem>("inch-pound", "SI");

/** A value of any size between 1e-9 and 1e15, of either sign, or 0; never below an absolute zero. */
const size = fc.oneof(
  { weight: 4, arbitrary: fc.double({ min: -3, max: 4, noNaN: true }).map((power) => 10 ** power) },
  {
    weight: 1,
    arbitrary: fc.double({ min: -9, max: 15, noNaN: true }).map((power) => 10 ** power),
  },
  { weight: 1, arbitrary: fc.integer({ min: 0, max: 400 }).map((n) => n / 16) },
);
function quantityIn(unit: SomeUnit): fc.Arbitrary<Quantity<never>> {
  const isPositive = unit.kind === "temperature" || unit.kind === "absolutePressure";
  return fc.tuple(size, fc.boolean()).map(([n, negative]) => {
    const si = n * unit.scale * (negative && !isPositive ? -1 : 1);
    return new Quantity(si, unit as never);
  });
}
const anyQuantity = fc.constantFrom(...allUnits).chain(quantityIn);

/** With the hyphen by which JavaScript writes a minus. */
const ascii = (text: string) => text.replaceAll("−", "-");

/** Half of the step in which the plain text is printed, in SI, as a reader would tell it. */
function printedHalfStep(text: string, kind: Kind, si: number): number {
  if (
    / (ft|in)$/.test(text) &&
    kind === "length" &&
    (/[/]| ft /.test(text) || /^−?\d+ (in|ft)$/.test(text))
  ) {
    if (Math.abs(si) >= 1200 * 0.0254) return 0.5 * 0.0254; // whole inches from 100 ft
    return (Math.abs(si) >= 2.99 * 0.0254 ? 1 / 32 : 0.0006) * 0.0254;
  }
  if (/^−?\d+ lb( |$)/.test(text)) return 0.05 * (0.45359237 / 16);
  if (kind === "duration" && !text.includes("E") && Math.abs(si) >= 1)
    return Math.abs(si) < 9.95 ? 0.05 : 0.5;
  const [, decimals = "", power = "0", symbol = ""] =
    /^−?\d+(?:\.(\d+))?(?:E(−?\d+))? (.+)$/.exec(text) ?? [];
  const unit = allUnits.find((one) => one.kind === kind && one.symbol === symbol);
  const step = 10 ** (Number(ascii(power)) - decimals.length) * (unit?.scale ?? Number.NaN);
  return kind === "temperature" && si < step ? step : 0.5 * step; // nothing is colder than 0 K
}

describe("what is shown can be typed back", () => {
  it.each(kinds)("within the printed step, in both systems: %s", (kind) => {
    const units = allUnits.filter((unit) => unit.kind === kind);
    const quantity = fc.constantFrom(...units).chain(quantityIn);
    fc.assert(
      fc.property(quantity, system, (value, which) => {
        const text = formatQuantity(value, { system: which });
        expect(text).not.toMatch(/NaN|Infinity|undefined|^[-−]0(\.0+)? |^-/);
        const back = parseQuantity(text, { kind });
        const allowance =
          printedHalfStep(text, kind, value.si) * (1 + 1e-6) + 1e-11 * Math.abs(value.si);
        expect(Math.abs(back.si - (value as { si: number }).si), text).toBeLessThanOrEqual(
          allowance,
        );
      }),
      { numRuns: 100 },
    );
  });

  it.each(locales)("and means the same in the numbers of %s", (locale) => {
    fc.assert(
      fc.property(anyQuantity, system, (value, which) => {
        const kind: Kind = value.kind;
        const plain = parseQuantity(formatQuantity(value, { system: which }), { kind });
        const text = formatQuantity(value, { system: which, locale });
        expect(parseQuantity(text, { kind, locale }).si, text).toBe(plain.si);
      }),
      { numRuns: 80 },
    );
  });

  it("and showing it again changes nothing", () => {
    fc.assert(
      fc.property(anyQuantity, system, (value, which) => {
        const kind: Kind = value.kind;
        const options = { system: which } as const;
        fc.pre(!["length", "mass", "duration"].includes(kind));
        const once = formatQuantity(value, options);
        const again = formatQuantity(parseQuantity(once, { kind }), options);
        // a value that rounds up to the next power of ten loses a decimal
        const number = (text: string) => Number.parseFloat(ascii(text));
        expect(number(again)).toBeCloseTo(number(once), 9);
      }),
      { numRuns: 300 },
    );
  });

  it("in any step that an instrument has", () => {
    const steps = fc.constantFrom(
      0.001,
      0.002,
      0.005,
      0.01,
      0.02,
      0.05,
      0.1,
      0.2,
      0.25,
      0.5,
      1,
      2,
      5,
      10,
      50,
    );
    const small = allUnits.filter(({ kind }) => kind !== "temperature");
    const cases = fc
      .constantFrom(...small)
      .chain((unit) => fc.tuple(fc.constant(unit), quantityIn(unit)));
    fc.assert(
      fc.property(cases, steps, ([unit, value], step) => {
        fc.pre(Math.abs(value.si) / unit.scale < 1e9);
        const kind: Kind = unit.kind;
        const resolution = (unit.difference as unknown as (n: number) => Quantity<never>)(step);
        const text = formatQuantity(value, {
          system: "inch-pound",
          unit: unit as never,
          resolution,
        });
        const back = parseQuantity(text, { kind });
        const off = Math.abs(back.si - (value as { si: number }).si) / unit.scale;
        expect(off, text).toBeLessThanOrEqual(step * 0.500001 + 1e-9);
      }),
      { numRuns: 500 },
    );
  });
});
