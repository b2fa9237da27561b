// How are quantities, units and named objects written as JSON? The leaves of writing.
// Follows Quantity.toJSON. Does not cover lists and fields: the walk of shapes does.
import { isOfKind } from "../quantity/check.ts";
import type { Kind } from "../quantity/kinds.ts";
import type { Quantity, Unit } from "../quantity/quantity.ts";
import { type Leaves, oneOfWords, refuse, tried } from "../shapes/index.ts";
import { namesOf } from "./name-of.ts";

/** Live values become JSON data. */
export const writing: Leaves = {
  quantity(kind) {
    const allowed = kind ? `the kind ${kind}` : "a quantity";
    const fits = (value: unknown): value is Quantity<Kind> => isOfKind(value, kind);
    return {
      allowed,
      fits,
      of(value, walk) {
        if (!fits(value)) return refuse(walk, value, allowed);
        walk.values += 3;
        return tried(walk, () => value.toJSON());
      },
    };
  },
  unit(kind) {
    const allowed = `a unit of ${kind}`;
    const fits = (value: unknown): value is Unit<Kind> =>
      typeof value === "function" && (value as Partial<Unit<Kind>>).kind === kind;
    return {
      allowed,
      fits,
      of: (value, walk) => (fits(value) ? value.symbol : refuse(walk, value, allowed)),
    };
  },
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
