// Which units has a kind? The catalogue, by kind and symbol.
// Follows quantity/units. Does not cover other spellings: field-text reads those.
import type { Kind } from "../quantity/kinds.ts";
import type { Unit } from "../quantity/quantity.ts";
import * as catalogue from "../quantity/units/index.ts";

const units = (): Unit<Kind>[] =>
  Object.values<Unit<Kind>>(catalogue as never).filter(({ kind, symbol }) => kind && symbol);

/** The units of a kind by their symbols. */
export const unitsOf = (kind: Kind): Map<string, Unit<Kind>> =>
  new Map(units().flatMap((unit) => (unit.kind === kind ? [[unit.symbol, unit]] : [])));

/** Every kind that a unit measures. */
export const allKinds = (): Kind[] => [...new Set(units().map(({ kind }) => kind))];

/** A unit goes by its symbol. */
export const unit = <K extends Kind>(
  kind: K,
): { readonly named: Readonly<Record<string, Unit<K>>> } => ({
  named: Object.fromEntries(unitsOf(kind)) as Record<string, never>,
});
