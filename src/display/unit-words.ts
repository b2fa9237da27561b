// How does a language write a unit? The units that are words somewhere, or differ from one language to another.
// Follows Unicode CLDR for plural forms; the symbols of all other units are international.
// Does not cover which unit is shown: display-units.ts.
import { type Catalogue, type Message, variantFor } from "../assessment/catalogue.ts";
import { anyKindOf, refuse, requireUnit } from "../quantity/check.ts";
import type { Kind } from "../quantity/kinds.ts";
import type { Unit } from "../quantity/quantity.ts";

/** The units that a language words, by the symbol that stands where no language is given. */
type WordedUnit =
  | "Δ°F"
  | "Δ°C"
  | "micron"
  | "micron/min"
  | "micron·L/s"
  | "Pa abs"
  | "inHg"
  | "inHg gauge"
  | "inHg abs"
  | "inH2O"
  | "in"
  | "ft"
  | "in²"
  | "ft²"
  | "in³"
  | "ft³"
  | "gal"
  | "gal/h"
  | "cfm"
  | "oz"
  | "lb"
  | "oz/ft"
  | "lb/ft"
  | "lb/ft³"
  | "lb/1000 ft³"
  | "lb/h"
  | "g/yr"
  | "oz/yr"
  | "ft/min"
  | "ft·lb"
  | "Ω/kft"
  | "ton"
  | "d"
  | "fraction";

/**
 * What a language words of figures: a unit after its number, by the unit's symbol, `display.unit.micron`.
 */
export type DisplayStatements = {
  readonly [C in `display.unit.${WordedUnit}`]: { readonly count: number };
};

/** The units of a language: `english`, or its module `display`. */
export type UnitLanguage = Catalogue<keyof DisplayStatements & string>;

/** A language as the caller stated it, checked. */
export function languageOf(
  argument: string,
  language: UnitLanguage | undefined,
): UnitLanguage | undefined {
  if (language === undefined) return undefined;
  const { messages, locale } = (language ?? {}) as Partial<UnitLanguage>;
  if (typeof messages === "object" && messages && typeof locale === "string") return language;
  const allowed = "a language or its module display, of hvac-install-math/language/en or its like";
  return refuse(argument, language, allowed);
}

/** A number that is written already, with its unit; `value` decides between singular and plural. */
export function withUnit(
  written: string,
  value: number,
  symbol: string,
  language: UnitLanguage | undefined,
): string {
  const code = `display.unit.${symbol}`;
  if (!language || !Object.hasOwn(language.messages, code)) return `${written} ${symbol}`;
  const message = (language as Catalogue).messages[code] as Message;
  return variantFor(message, value, language.locale).replace("{count}", () => written);
}

/**
 * The name of a unit in a language: for an axis, the head of a column, the label of a box.
 *
 * @param unit - Any unit.
 * @param language - A language, or its module `display`; the symbol when left out.
 * @returns The name, in the plural where it is a word.
 * @throws {@link InvalidInputError} when an argument is wrong.
 *
 * @example
 * ```ts
 * import { unitName } from "hvac-install-math/display";
 * import { english } from "hvac-install-math/language/en";
 * import { deltaF, micron } from "hvac-install-math/quantity";
 *
 * unitName(micron, english); // => microns
 * unitName(deltaF, english); // => °F
 * ```
 */
export function unitName<K extends Kind>(unit: Unit<K>, language?: UnitLanguage): string {
  requireUnit("unit", unit, anyKindOf(unit));
  return withUnit("", 2, unit.symbol, languageOf("language", language)).trim();
}
