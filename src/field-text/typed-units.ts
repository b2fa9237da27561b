// What may a person type for this kind of quantity? The units and their names, for help texts and menus.
// Follows the table in unit-names.ts.
// Does not cover translation: the names are English and the symbols international.

import type { Verbatim } from "../assessment/statement.ts";
import { oneOf } from "../quantity/check.ts";
import { frozen } from "../quantity/frozen.ts";
import type { Kind } from "../quantity/kinds.ts";
import type { Unit } from "../quantity/quantity.ts";
import { verbatim } from "../read-quantity/statements.ts";
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

/** The rows of the table that hold a unit of the kind, with that unit. */
function rowsOf(kind: Kind): { unit: AnyUnit; names: string[] }[] {
  return [...inchPoundNames, ...metricNames].flatMap(([units, names]) =>
    units
      .filter((unit) => unit.kind === kind)
      .map((unit) => ({ unit, names: names.replaceAll("=", "").split("|") })),
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
 * The units that {@link parseQuantity} accepts for a kind, each with its names. A unit can appear more
 * than once, and one that the catalogue leaves out (in/ft, L/min) appears under the unit in which its
 * answer comes.
 *
 * @param kind - The kind of quantity.
 * @returns The units, inch-pound first.
 * @throws {@link InvalidInputError} when the kind is not one of the library's.
 *
 * Source: the symbols are the catalogue's; the other names are common practice, no source.
 *
 * @example
 * ```ts
 * import { typedUnits } from "hvac-install-math/field-text";
 *
 * typedUnits("gaugePressure").map(({ unit }) => unit.symbol).join(", "); // => psig, inHg gauge, kPag, MPag, barg
 * typedUnits("mass").find(({ unit }) => unit.symbol === "oz")?.names.join(", "); // => oz, ozs, ounce, onza, once
 * ```
 */
export function typedUnits<K extends Kind>(kind: K): readonly TypedUnit<K>[] {
  oneOf("kind", kind, allKinds());
  return frozen(
    rowsOf(kind).map(({ unit, names }) => ({
      unit: (homeUnits.get(unit) ?? unit) as unknown as Unit<K>,
      names,
    })),
  );
}
