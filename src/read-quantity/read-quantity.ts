// What did the person type into this field? One number, with or without its unit, as a quantity.
// Follows ISO 80000-1:2022, 7.3 for numbers, and the trade's notation (common practice, no source).
// Does not cover sums, products and parentheses: those are field-text's.
import type { Verbatim } from "../assessment/statement.ts";
import { listOf, objectOf, oneOf, requireUnit } from "../quantity/check.ts";
import type { Kind } from "../quantity/kinds.ts";
import type { Quantity, Unit } from "../quantity/quantity.ts";
import { FieldTextError } from "./field-text-error.ts";
import { lookupOf } from "./find-unit.ts";
import { namesFor } from "./names-for.ts";
import { type Leaf, operandAt } from "./operand.ts";
import { possibleQuantity } from "./possible-quantity.ts";
import { readText } from "./read-text.ts";
import { say, verbatim } from "./statements.ts";
import { refuseTwoReadings } from "./two-readings.ts";

/**
 * What the field takes.
 */
export interface ReadQuantityOptions<K extends Kind> {
  /** The kind of quantity that the field holds. */
  readonly kind: K;
  /**
   * The units that the field takes, 1 to 100. A number without a unit is in the first: make it the one
   * that the field shows.
   */
  readonly units: readonly Unit<K>[];
  /**
   * BCP 47 language tag of the person's numbers, such as `"de"`: gives the decimal mark, the thousands mark
   * and the digits. Without it the decimal mark is a point and there is no thousands mark.
   * For Spanish name the country (`"es-MX"`, `"es-AR"`): in `"es-419"` a comma before three digits is asked about.
   */
  readonly locale?: string | undefined;
}

/** What may stand in the field, for an error message. */
const notation = /* @__PURE__ */ say("field-text.one-number");

/** More units than any field offers. */
const mostUnits = 100;

/**
 * Reads one number, with or without its unit, as a person types it. Nothing is guessed: an empty box is refused,
 * not 0, and so is what can be read in two ways.
 *
 * - Numbers in the notation of the locale: `8,14`, `1 234.5`, `1,234` only where the comma is a thousands mark.
 * - Fractions: `1/4 in`, `1 1/4 in`, `1-1/4 in`, `1¼ in`. Feet and inches: `12 ft 6 in`, `12' 6"`, `12'-6"`;
 *   pounds and ounces, hours and minutes.
 * - A unit by its symbol or by the other names that the trade gives it. Only the field's own units are taken.
 *
 * @param text - What was typed, at most 200 characters.
 * @param options - The kind and the units that the field takes; the locale of the numbers.
 * @returns The quantity, in the unit that was typed, or in the first of the field's.
 * @throws {@link FieldTextError} (an `InvalidInputError`) with the place in the text, for text that is no such
 * number.
 * @throws {@link InvalidInputError} for a text that is no string, and for wrong options.
 *
 * Source: ISO 80000-1:2022, 7.3 for numbers; the notation is common practice, no source.
 *
 * @example
 * ```ts
 * import { bar, ft, inch, kPag, psig } from "hvac-install-math/quantity";
 * import { readQuantity } from "hvac-install-math/read-quantity";
 *
 * const drop = { kind: "pressureDifference", units: [bar], locale: "de" } as const;
 * readQuantity("8,14 bar", drop).toString(); // => 8.14 bar
 * readQuantity("118", { kind: "gaugePressure", units: [psig, kPag] }).toString(); // => 118 psig
 * readQuantity("12' 6\"", { kind: "length", units: [ft, inch] }).toString(); // => 12.5 ft
 * readQuantity("1-1/4\"", { kind: "length", units: [ft, inch] }).toString(); // => 1.25 in
 * ```
 */
export function readQuantity<K extends Kind>(
  text: string,
  options: ReadQuantityOptions<K>,
): Quantity<K> {
  const { kind, units, locale } = objectOf("options", options);
  listOf("options.units", units, mostUnits, 1).forEach((unit, i) => {
    requireUnit(`options.units[${i}]`, unit, units[0]?.kind ?? kind);
  });
  const [first] = units as readonly [Unit<K>];
  oneOf("options.kind", kind, [first.kind]);
  const symbols = units.map(({ symbol }) => verbatim(symbol));
  const names = lookupOf(namesFor(units));
  const parts = readText(text, { kind, locale, names, notation, symbols });
  const found = operandAt(text, parts, 0);
  if (!found) {
    const [{ type, start, end }] = parts;
    const wanted = type === "unit" ? say("field-text.number-before-unit") : notation;
    throw new FieldTextError(text, start, end, wanted);
  }
  const { leaf, next } = found;
  const rest = parts[next];
  if (rest) throw new FieldTextError(text, rest.start, rest.end, notation);
  refuseTwoReadings(text, leaf, kind);
  const unit = unitAmong(text, leaf, units, symbols) ?? first;
  return possibleQuantity(text, leaf, leaf.value * unit.scale + unit.offset, unit);
}

/** The unit of the field that the typed name stands for; undefined where none was typed. */
function unitAmong<K extends Kind>(
  text: string,
  { units: named, unitPlace }: Leaf,
  units: readonly Unit<K>[],
  symbols: readonly Verbatim[],
): Unit<K> | undefined {
  if (!named) return undefined;
  const isTyped = (symbol: string) => named.some((one) => one.symbol === symbol);
  const unit = units.find(({ symbol }) => isTyped(symbol));
  if (unit) return unit;
  const zero = units.some(({ difference }) => isTyped(difference.symbol));
  const hint = zero ? say("field-text.which-zero") : undefined;
  throw new FieldTextError(text, ...unitPlace, say("field-text.unit", { symbols }), hint);
}
