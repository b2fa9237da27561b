// Which unit does this name mean in a log? The units that loggers write, by name or symbol.
// Follows the unit catalogue and read-quantity/unit-names.ts.
// Does not cover units that no logger writes: pass those themselves.
import type { Kind } from "../quantity/kinds.ts";
import type { Unit } from "../quantity/quantity.ts";
import * as u from "../quantity/units/index.ts";
import { lookupOf, type NameLookup, unitsNamed } from "../read-quantity/find-unit.ts";
import { namesFor } from "../read-quantity/names-for.ts";
import type { AnyUnit } from "./log-format.ts";

/** The units that loggers write; a pressure that states no zero is looked for among the gauge pressures first. */
const written: readonly AnyUnit[] = /* @__PURE__ */ (() => [
  u.second,
  u.minute,
  u.hour,
  u.day,
  u.degC,
  u.degF,
  u.kelvin,
  u.psig,
  u.kPag,
  u.MPag,
  u.barg,
  u.inHgGauge,
  u.micron,
  u.torr,
  u.psia,
  u.kPaa,
  u.MPaa,
  u.bara,
  u.mbara,
  u.pascalAbsolute,
  u.inHgAbsolute,
  u.volt,
  u.ampere,
  u.watt,
  u.kW,
  u.percent,
])();

/** The kinds that loggers write. */
export const writtenKinds: readonly Kind[] = /* @__PURE__ */ (() => [
  ...new Set(written.map(({ kind }) => kind)),
])();

const lookups: Map<Kind, NameLookup> = /* @__PURE__ */ new Map();

/** The unit of a kind that a name stands for; `zero` is false where a pressure does not state its zero. */
export function unitNamed<K extends Kind>(
  name: string,
  kind: K,
): { readonly unit: Unit<K>; readonly zero: boolean } | undefined {
  const units = written.filter((one) => one.kind === kind) as unknown as Unit<K>[];
  const lookup = lookups.get(kind) ?? lookupOf(namesFor(units));
  lookups.set(kind, lookup);
  const symbols = unitsNamed(name, lookup)?.map(({ symbol }) => symbol);
  const unit = units.find(({ symbol }) => symbols?.includes(symbol));
  if (unit) return { unit, zero: true };
  const bare = units.find(({ difference }) => symbols?.includes(difference.symbol));
  return bare && { unit: bare, zero: false };
}

/** The symbols of a kind, for an error message. */
export function symbolsOf(kind: Kind): string {
  return written
    .filter((one) => one.kind === kind)
    .map(({ symbol }) => symbol)
    .join(", ");
}
