// What did the person mean? Typed text to one quantity of the kind that the field wants.
// Follows ISO 80000-1:2022 for numbers and units, and the trade's notation (common practice, no source).
// Does not cover text with two readings: it is refused with the question that the person has to answer.
import { describe, oneOf, requireUnit } from "../quantity/check.ts";
import { InvalidInputError } from "../quantity/errors.ts";
import type { Kind } from "../quantity/kinds.ts";
import type { Quantity, Unit } from "../quantity/quantity.ts";
import { FieldTextError, missingUnit } from "../read-quantity/field-text-error.ts";
import { lookupOf, type NameLookup } from "../read-quantity/find-unit.ts";
import { possibleQuantity } from "../read-quantity/possible-quantity.ts";
import { readText } from "../read-quantity/read-text.ts";
import { say } from "../read-quantity/statements.ts";
import { evaluate, isReadTwoWays } from "./evaluate.ts";
import { kindMismatch } from "./kind-mismatch.ts";
import { notation, syntaxTree } from "./syntax-tree.ts";
import { tradeNotation } from "./trade-notation.ts";
import { allKinds, symbolsOf } from "./typed-units.ts";
import { inchPoundNames, metricNames } from "./unit-names.ts";
import type { Value } from "./value.ts";

/**
 * What the field wants.
 */
export interface ParseQuantityOptions<K extends Kind> {
  /** The kind of quantity that the field holds. */
  readonly kind: K;
  /**
   * The unit of a number that is typed without any unit. Without it such a number is refused. It is
   * never put on a number that stands beside a quantity: `12 ft + 9` is refused.
   */
  readonly defaultUnit?: Unit<K> | undefined;
  /**
   * BCP 47 language tag of the person's numbers, such as `"de"`: gives the decimal mark, the thousands
   * mark and the digits. Without it the decimal mark is a point and there is no thousands mark.
   * For Spanish name the country (`"es-MX"`, `"es-AR"`): in `"es-419"` a comma before three digits is asked about.
   */
  readonly locale?: string | undefined;
}

/**
 * Reads what a person typed: a number with its unit, or sums, differences, multiples and parts of such,
 * products that the trade uses (oz/ft × ft), and parentheses.
 *
 * - Fractions: `1/4 in`, `1 1/4 in`, `1-1/4 in`, `1¼ in`. Feet and inches: `12 ft 6 in`, `12' 6"`, and
 *   `12'-6"` as on drawings; pounds and ounces: `3 lb 4.5 oz`; hours and minutes.
 * - Pressure names its zero: where a gauge pressure is wanted, `118 psi` is refused with the question
 *   "psig or psia?".
 * - In a field for a temperature, °F and °C are readings; a difference is written `5 Δ°F` or `5 F°`, so
 *   `70 °F + 5 °F` is refused. In a field for a temperature difference, `10 °F` is a difference, and
 *   `95 °F − 75 °F` gives 20 Δ°F.
 * - What could be read in two ways (`12 ft-6 in`, `1,234` without a locale, `6 ft / 1/2`,
 *   `208/230 V`) is refused.
 *
 * No functions, names, comparisons, text or lists; at most 200 characters and ten levels of parentheses.
 *
 * @param text - What was typed.
 * @param options - The kind that is wanted; the unit of a bare number; the locale of the numbers.
 * @returns The quantity, in the first unit that was typed. A unit that the catalogue leaves out gives
 * the nearest that it has: in/ft gives %, L/min gives L/s.
 * @throws {@link FieldTextError} (an `InvalidInputError`) with the place in the text, for text that is
 * not such a quantity.
 * @throws {@link InvalidInputError} for a text that is no string, and for wrong options.
 *
 * Source: ISO 80000-1:2022, 7.3 for numbers; the notation is common practice, no source.
 *
 * @example
 * ```ts
 * import { parseQuantity } from "hvac-install-math/field-text";
 * import { kPag, psig } from "hvac-install-math/quantity";
 *
 * parseQuantity("118 psig", { kind: "gaugePressure" }).toString(kPag, 1); // => 813.6 kPag
 * parseQuantity("12 ft 6 in + 9 ft", { kind: "length" }).toString(); // => 21.5 ft
 * parseQuantity("1-1/4\"", { kind: "length" }).toString(); // => 1.25 in
 * parseQuantity("0,5 bar", { kind: "pressureDifference", locale: "de" }).toString(); // => 0.5 bar
 * parseQuantity("118", { kind: "gaugePressure", defaultUnit: psig }).toString(); // => 118 psig
 * parseQuantity("0.6 oz/ft × 12 ft", { kind: "mass" }).toString(); // => 7.2 oz
 * ```
 */
export function parseQuantity<K extends Kind>(
  text: string,
  options: ParseQuantityOptions<K>,
): Quantity<K> {
  const { kind, defaultUnit, locale } = optionsOf(options);
  const symbols = symbolsOf(kind);
  const parts = readText(text, { kind, locale, names, notation, symbols });
  const arithmetic = tradeNotation(text, parts);
  const tree = syntaxTree(text, arithmetic);
  const { leaves } = arithmetic;
  const asDifference = () => evaluate({ text, leaves, wanted: kind, reading: "difference" }, tree);
  const asPoint = () => evaluate({ text, leaves, wanted: kind, reading: "point" }, tree);
  const value = isReadTwoWays(leaves) ? oneMeaning(text, kind, asDifference, asPoint) : asPoint();
  return finish(text, value, kind, defaultUnit);
}

const names: NameLookup = /* @__PURE__ */ lookupOf(
  /* @__PURE__ */ [inchPoundNames, metricNames].flat(),
);

function optionsOf<K extends Kind>(options: ParseQuantityOptions<K>): ParseQuantityOptions<K> {
  if (typeof options !== "object" || options === null) {
    const value = describe(options);
    throw new InvalidInputError({ argument: "options", value, allowed: "an object with kind" });
  }
  oneOf("options.kind", options.kind, allKinds() as K[]);
  if (options.defaultUnit !== undefined) {
    requireUnit("options.defaultUnit", options.defaultUnit, options.kind);
  }
  return options;
}

/** The value when one reading fits, or both and they agree. */
function oneMeaning(text: string, kind: Kind, first: () => Value, second: () => Value): Value {
  const [a, b] = [attempt(first), attempt(second)];
  const fits = (value: Value | FieldTextError): value is Value =>
    "si" in value && value.unit?.kind === kind;
  if (
    fits(a) &&
    fits(b) &&
    Math.abs(a.si - b.si) > 1e-9 * Math.max(Math.abs(a.si), Math.abs(b.si))
  ) {
    const wanted = say("field-text.difference", { example: { verbatim: "5 Δ°F" } });
    const hint = say("field-text.readings-or-differences");
    throw new FieldTextError(text, a.start, a.end, wanted, hint);
  }
  const best = fits(a) ? a : fits(b) ? b : a;
  if (!("si" in best)) throw best;
  return best;
}

function attempt(work: () => Value): Value | FieldTextError {
  try {
    return work();
  } catch (error) {
    return error as FieldTextError;
  }
}

function finish<K extends Kind>(
  text: string,
  value: Value,
  kind: K,
  defaultUnit: Unit<K> | undefined,
): Quantity<K> {
  const { si, unit } = value;
  if (unit) {
    if (unit.kind !== kind) throw kindMismatch(text, value, unit, kind);
    return possibleQuantity(text, value, si, unit as unknown as Unit<K>);
  }
  if (!defaultUnit) throw missingUnit(text, value.end, symbolsOf(kind));
  return possibleQuantity(text, value, si * defaultUnit.scale + defaultUnit.offset, defaultUnit);
}
