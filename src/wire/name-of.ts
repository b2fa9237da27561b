// Which name has an object that the library holds? Its own, or that of one that says the same.
// Follows no standard. Does not cover an object that differs in anything: it has no name.

import type { Kind } from "../quantity/kinds.ts";
import type { Unit } from "../quantity/quantity.ts";

/** All that an object says. JSON leaves functions out: a unit in it counts by what it is. */
const said = (value: unknown) =>
  JSON.stringify(value, (_, own) =>
    typeof own === "function" ? [own.kind, own.symbol, (own as Unit<Kind>).scale] : own,
  );

/**
 * The name of an object among those that are held. Another copy of the package has objects of its own, so what
 * they say counts. A name that stands in the object would not do: one who changes a figure of a known object,
 * such as for a local amendment, may keep it.
 */
export function namesOf(
  held: Readonly<Record<string, object>>,
): (value: unknown) => string | undefined {
  const names = Object.keys(held);
  let known: Map<string, string> | undefined;
  return (value) => {
    const own = names.find((name) => held[name] === value);
    if (own !== undefined) return own;
    known ??= new Map(names.map((name) => [said(held[name]), name]));
    try {
      return known.get(said(value));
    } catch {} // a ring, or a getter that throws
    return undefined;
  };
}
