// What may a person type for this kind of quantity? The units and their names, for help texts and menus.
// Follows the table in unit-names.ts.
// Does not cover what is understood: a text may have the words of any of the languages.

import type { Verbatim } from "../assessment/statement.ts";
import { oneOf } from "../quantity/check.ts";
import { frozen } from "../quantity/frozen.ts";
import type { Kind } from "../quantity/kinds.ts";
import type { Unit } from "../quantity/quantity.ts";
import { verbatim } from "../read-quantity/statements.ts";
import { spelled } from "../read-quantity/unit-names.ts";
import { type AnyUnit, homeUnits, inchPoundNames, metricNames } from "./unit-names.ts";

/**
 * A unit with the names under which {@link parseQuantity} knows it.
 */
export interface TypedUnit<K extends Kind> {
  /** The unit of the catalogue in which the answer comes. */
  readonly unit: Unit<K>;
  /** The names that may be typed. */
  readonly names: readonly string[];
}

/** The languages that have words of their own in the table. */
export type UnitLanguageName = "en" | "es" | "fr";

/** How a word of each language is told; what is none of them is a symbol, which all of them have. */
const wordsOf: Readonly<Record<UnitLanguageName, RegExp>> = {
  es: /* @__PURE__ */ words(
    "micrón|micrones|micra|pie|pulg|pulgada|libra|onza|seg|segundo|minuto|hora|día|galón|galones|(?:mil[ií])?amperio",
    "ohmio|voltio|(?:kilo)?vatio|(?:cent[ií]|mil[ií])?metro|(?:mili)?litro|(?:kilo|mili)?gramo|grado|por|ciento|de",
    "mercurio|agua|cuadrad[oa]|cúbic[oa]",
  ),
  fr: /* @__PURE__ */ words(
    "pied|pi|pouce|po|livre|once|seconde|heure|jour|(?:milli)?ampère|(?:centi|milli)?mètre|(?:kilo|milli)?gramme",
    "degré|par|pour cent|de|d'eau|mercure|carré|cube",
  ),
  en: /[a-z]{4,}|(?<!\p{L})(?:amp|cu|day|deg|hrs?|lbs|ozs|pct|per|sec|sq)(?!\p{L})/u,
};

/** English words that are those of another language too. */
const shared = {
  es: /* @__PURE__ */ words("Celsius|Fahrenheit|kelvin|kilo"),
  fr: /* @__PURE__ */ words(
    "Celsius|Fahrenheit|kelvin|kilo|minute|(?:milli)?volt|(?:kilo)?watt|ohm|(?:milli)?litre|gallon|micron",
    "(?:kilo|mega)?pascal|(?:milli)?bar|fraction|radian",
  ),
};

function words(...stems: readonly string[]): RegExp {
  return new RegExp(`(?<!\\p{L})(?:${stems.join("|")})s?(?!\\p{L})`, "u");
}

/** Whether a name may stand in a menu of the language: it has no word of another one. */
function isOf(language: UnitLanguageName, name: string): boolean {
  const others = (["es", "fr", "en"] as const).filter((one) => one !== language);
  const own = language === "en" ? [] : [wordsOf[language], shared[language]];
  const rest = own.reduce((left, word) => left.split(word).join(""), name);
  return !others.some((one) => wordsOf[one].test(rest)) && !stuck.test(name);
}

/** A letter that is stuck on a word, which is read but belongs in no menu: kilopascalg. */
const stuck = /(?:inch|cuadrada|carré|mercur(?:y|io|e)|pascals?|bars)-?[ga]$|Hg-?g$/u;

/** The rows of the table that hold a unit of the kind, with that unit. */
function rowsOf(kind: Kind): { unit: AnyUnit; names: string[] }[] {
  return [...inchPoundNames, ...metricNames].flatMap(([units, names]) =>
    units
      .filter((unit) => unit.kind === kind)
      .map((unit) => ({
        unit,
        names: [...new Set(names.replaceAll("=", "").split("|").flatMap(spelled))],
      })),
  );
}

/** All kinds, in the order of the table. */
export function allKinds(): Kind[] {
  const kinds = [...inchPoundNames, ...metricNames].flatMap(([units]) => units.map((u) => u.kind));
  return [...new Set(kinds)];
}

/** The symbols of the kind's units, for an error message. */
export function symbolsOf(kind: Kind): Verbatim[] {
  return [...new Set(rowsOf(kind).map(({ unit }) => unit.symbol))].map(verbatim);
}

/**
 * The units that {@link parseQuantity} accepts for a kind, each with its symbols and its names in one language;
 * a text may have the names of any of them. A unit can appear more than once, and one that the catalogue leaves
 * out (in/ft, L/min) appears under the unit in which its answer comes.
 *
 * @param kind - The kind of quantity.
 * @param language - The language of the names: English, Spanish or French.
 * @returns The units, inch-pound first.
 * @throws {@link InvalidInputError} when the kind or the language is not one of the library's.
 *
 * Source: the symbols are the catalogue's; the other names are common practice, no source.
 *
 * @example
 * ```ts
 * import { typedUnits } from "hvac-install-math/field-text";
 *
 * typedUnits("gaugePressure").map(({ unit }) => unit.symbol).join(", "); // => psig, inHg gauge, kPag, MPag, barg
 * typedUnits("mass").find(({ unit }) => unit.symbol === "oz")?.names.join(", "); // => oz, ozs, ounce, ounces
 * typedUnits("mass", "es").find(({ unit }) => unit.symbol === "oz")?.names.join(", "); // => oz, onza, onzas
 * ```
 */
export function typedUnits<K extends Kind>(
  kind: K,
  language: UnitLanguageName = "en",
): readonly TypedUnit<K>[] {
  oneOf("kind", kind, allKinds());
  oneOf("language", language, ["en", "es", "fr"]);
  return frozen(
    rowsOf(kind).map(({ unit, names }) => ({
      unit: (homeUnits.get(unit) ?? unit) as unknown as Unit<K>,
      names: names.filter((name, i) => i === 0 || isOf(language, name)), // the first is the symbol
    })),
  );
}
