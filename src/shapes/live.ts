// Has a live value, typed or from JavaScript, the form that it should have? A frozen copy, or the typed error.
// Follows the shapes that are derived from the types. Does not cover JSON: the codecs of wire do.
import { isOfKind } from "../quantity/check.ts";
import { enter } from "../quantity/hints.ts";
import { later } from "../quantity/later.ts";
import { type Path, pathText } from "./path-text.ts";
import type { Shape } from "./shape.ts";
import { type Leaves, visitOf } from "./visit.ts";
import { errorOf, leaf, startWalk } from "./walk.ts";

/** Live values stay what they are. */
export const live: Leaves = {
  quantity: (kind) =>
    leaf(
      kind ? `the kind ${kind}` : "a quantity",
      (value) => isOfKind(value, kind),
      enter(kind ?? "quantity"),
    ),
  unit: (kind) =>
    leaf(
      `a unit of ${kind}`,
      (value) => typeof value === "function" && "kind" in value && value.kind === kind,
    ),
  named: () => leaf("an object", (value) => typeof value === "object" && value !== null),
  done: Object.freeze,
};

/** The values of a caller end somewhere by themselves; a ring does not. */
const limits = { depth: 500, listItems: Infinity, stringLength: Infinity, values: Infinity };

/** Makes the check of a shape: a frozen copy of nothing but what the shape knows; throws where a value has another form. */
export function checkOf<T>(
  shape: Shape,
  root: Shape = shape,
): (value: unknown, whole: string, under?: Path) => T {
  const visit = later(() => visitOf(shape, live, root));
  return (value, whole, under = []) => {
    const walk = startWalk(limits, 1);
    const copy = visit().of(value, walk);
    const [first] = walk.findings;
    if (!first) return copy as T;
    const path = pathText([...under, ...first.path], whole);
    throw errorOf({ ...first, path: [] }, path);
  };
}
