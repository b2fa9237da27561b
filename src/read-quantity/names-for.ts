// Which names does a field know that takes these units? Those of the units, and of what stands beside them.
// Follows unit-names.ts and the pairs of compound-units.ts.
// Does not cover other units: a field refuses them.
import type { Kind } from "../quantity/kinds.ts";
import type { Unit } from "../quantity/quantity.ts";
import { smallerThan } from "./compound-units.ts";
import type { NameRow } from "./find-unit.ts";
import { absolute, gauge, namesOf } from "./unit-names.ts";

/**
 * The names of the units, and of units beside them: of the smaller one in 12 ft 6 in, and of the pressure whose
 * zero has to be stated.
 */
export function namesFor<K extends Kind>(units: readonly Unit<K>[]): NameRow[] {
  return units.flatMap((unit): NameRow[] => {
    const { kind, symbol } = unit;
    const base = unit.difference.symbol;
    const row = (one: string, names: string): NameRow => [[{ symbol: one }], names];
    const own = `${symbol}|${namesOf(symbol)}`;
    if (kind === "temperatureDifference") {
      return [row(symbol, `${own}|${namesOf(symbol.replace("Δ", ""))}`)];
    }
    if (base === symbol || kind === "temperature") {
      return [row(symbol, own), ...smallerThan(symbol).map((small) => row(small, namesOf(small)))];
    }
    const zero = kind === "gaugePressure" ? gauge : absolute;
    return [row(base, namesOf(base)), row(symbol, `${symbol}|${zero(namesOf(base))}`)];
  });
}
