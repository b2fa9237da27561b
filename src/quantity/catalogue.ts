// Which units has a kind, and which one has this symbol? The catalogue by kind and symbol.
// Follows the unit files. Does not cover other spellings ("feet", "PSI"): field-text reads those.

import { refuse } from "./check.ts";
import { frozen } from "./frozen.ts";
import { choose } from "./hints.ts";
import type { Kind } from "./kinds.ts";
import { later } from "./later.ts";
import type { Unit } from "./quantity.ts";
import * as catalogue from "./units/index.ts";

/** The units of each kind by their symbols, in the order of these: that of a namespace is another in each build. */
const bySymbol = /* @__PURE__ */ later<ReadonlyMap<string, ReadonlyMap<string, Unit<Kind>>>>(() => {
  const kinds = new Map<string, Map<string, Unit<Kind>>>();
  const all = Object.values<Unit<Kind>>(catalogue as never);
  for (const unit of all.sort((a, b) => (a.kind + a.symbol < b.kind + b.symbol ? -1 : 1))) {
    const units = kinds.get(unit.kind) ?? new Map<string, Unit<Kind>>();
    kinds.set(unit.kind, units.set(unit.symbol, unit));
  }
  return kinds;
});

/** Every kind that a unit measures. */
export const everyKind = (): readonly Kind[] => [...bySymbol().keys()] as Kind[];

/** The units of a kind by their symbols; throws where there is no such kind. */
export function unitsBySymbol<K extends Kind>(
  argument: string,
  kind: K,
): ReadonlyMap<string, Unit<K>> {
  const units = bySymbol().get(kind);
  if (units) return units as unknown as ReadonlyMap<string, Unit<K>>;
  return refuse(argument, kind, "a kind of quantity");
}

/** The unit of a kind with a symbol; throws where there is none, with those that there are. */
export function unitNamed<K extends Kind>(argument: string, kind: K, symbol: string): Unit<K> {
  const units = unitsBySymbol(argument, kind);
  const unit = units.get(symbol);
  if (unit) return unit;
  const allowed = `a unit of ${kind}: ${[...units.keys()].join(", ")}`;
  return refuse(argument, symbol, allowed, choose([...units.keys()]));
}

/**
 * The units of a kind, each once, in the order of their symbols: what a picker of units offers.
 *
 * Brings the whole catalogue of units into a bundle; an app that knows its units names them.
 *
 * @param kind - The kind.
 * @returns Its units.
 * @throws {@link InvalidInputError} when there is no such kind.
 *
 * Source: the definitions stand beside each unit.
 *
 * @example
 * ```ts
 * import { unitsOf } from "hvac-install-math/quantity";
 *
 * unitsOf("length").map(({ symbol }) => symbol).join(", "); // => cm, ft, in, m, mm
 * ```
 */
export function unitsOf<K extends Kind>(kind: K): readonly Unit<K>[] {
  return frozen([...unitsBySymbol("kind", kind).values()]);
}

/**
 * The unit of a kind with a symbol, as {@link Quantity.toJSON} writes it: the way back from a unit that was
 * stored as text, such as a setting.
 *
 * Brings the whole catalogue of units into a bundle.
 *
 * @param kind - The kind.
 * @param symbol - The symbol, written as the unit has it.
 * @returns The unit.
 * @throws {@link InvalidInputError} when the kind has no such unit, with those that it has.
 *
 * Source: the definitions stand beside each unit.
 *
 * @example
 * ```ts
 * import { psig, unitBySymbol } from "hvac-install-math/quantity";
 *
 * unitBySymbol("gaugePressure", "psig") === psig; // => true
 * ```
 */
export function unitBySymbol<K extends Kind>(kind: K, symbol: string): Unit<K> {
  return unitNamed("symbol", kind, symbol);
}
