// How are quantities, units and named objects written as JSON? The leaves of writing.
// Follows Quantity.toJSON. Does not cover lists and fields: the walk of shapes does.
import type { Kind } from "../quantity/kinds.ts";
import type { Quantity, Unit } from "../quantity/quantity.ts";
import { type Leaves, leaf, live, oneOfWords, refuse, tried, type Visit } from "../shapes/index.ts";
import { namesOf } from "./name-of.ts";

/** Live values become JSON data. */
export const writing: Leaves = {
  quantity: (kind) =>
    written(live.quantity(kind), (value, walk) => {
      walk.values += 3;
      return tried(walk, () => (value as Quantity<Kind>).toJSON());
    }),
  unit: (kind) => written(live.unit(kind), (value) => (value as Unit<Kind>).symbol),
  named(objects) {
    const held = objects();
    const nameOf = namesOf(held);
    const allowed = `one of ${oneOfWords(Object.keys(held))}`;
    return {
      allowed,
      fits: (value) => nameOf(value) !== undefined,
      of: (value, walk) => nameOf(value) ?? refuse(walk, value, allowed),
    };
  },
  done: (made) => made,
};

/** A live value that is written as something else. */
const written = ({ allowed, fits }: Visit, as: Visit["of"]): Visit =>
  leaf(allowed, fits, undefined, as);
