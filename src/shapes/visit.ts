// How does one walk through a value of a shape read, check or write it? The shape made into visits.
// What a quantity, a unit or a named object is differs between JSON and live values: the leaves say that.
// Does not cover which leaves there are: live.ts, read-json.ts, and write-json.ts of wire.
import type { Kind } from "../quantity/kinds.ts";
import { type Later, later } from "../quantity/later.ts";
import { alternatives } from "./alternatives.ts";
import { isRecord } from "./is-record.ts";
import { primitives, text, words } from "./leaf-visits.ts";
import {
  type CasesShape,
  casesOf,
  type FieldsShape,
  type NamedShape,
  type Shape,
} from "./shape.ts";
import { shapeAt } from "./shape-at.ts";
import {
  counts,
  isOver,
  leaf,
  refuse,
  refuseMore,
  tried,
  type Visit,
  type Walk,
  within,
} from "./walk.ts";

/** What differs between JSON and live values. */
export interface Leaves {
  /** A quantity; of any kind when none is asked for. */
  readonly quantity: (kind?: Kind) => Visit;
  readonly unit: (kind: Kind) => Visit;
  readonly named: (objects: NamedShape["named"]) => Visit;
  /** What becomes of a list or of an object, when it is whole. */
  readonly done: <T extends object>(made: T) => T;
}

/** Any data: quantities as such, everything else part by part. */
function any(leaves: Leaves): Visit {
  const quantity = leaves.quantity();
  const visit: Visit = {
    allowed: "data",
    fits: () => true,
    of(value, walk) {
      if (value === null || typeof value === "boolean") return value;
      if (typeof value === "string") return text.of(value, walk);
      if (typeof value === "number") return primitives.number?.of(value, walk);
      if (walk.path.length >= walk.limits.depth) {
        return refuse(walk, value, `at most ${walk.limits.depth} deep`);
      }
      if (Array.isArray(value)) return items.of(value, walk);
      return (quantity.fits(value) ? quantity : fields).of(value, walk);
    },
  };
  const items = list(() => visit, leaves);
  const fields = each(visit, leaves);
  return visit;
}

/** A list; `count` items where it has just so many. */
function list(visitAt: (i: number) => Visit, { done }: Leaves, count?: number): Visit {
  const allowed = count === undefined ? "a list" : `${count} items`;
  return {
    allowed,
    fits: Array.isArray,
    of(value, walk) {
      const { path, limits } = walk;
      if (!Array.isArray(value)) return refuse(walk, value, "a list");
      const { length } = value;
      if (length > limits.listItems) {
        return refuseMore(walk, `a list of ${length} items`, length, limits.listItems);
      }
      if (count !== undefined && length !== count) return refuse(walk, value, allowed);
      const copy: unknown[] = [];
      const at = path.push(0) - 1;
      for (let i = 0; i < length && !isOver(walk); i++) {
        path[at] = i;
        if (counts(walk)) copy.push(visitAt(i).of(value[i], walk));
      }
      path.pop();
      return done(copy);
    },
  };
}

/** An object of fields alone. */
const object = (of: (value: Record<string, unknown>, walk: Walk) => unknown): Visit =>
  leaf("an object", isRecord, undefined, of as Visit["of"]);

/** An object whose writer names the fields. */
const each = (visit: Visit, { done }: Leaves): Visit =>
  object((value, walk) => {
    const copy: Record<string, unknown> = {};
    for (const key of Object.keys(value)) {
      walk.names++;
      if (isOver(walk)) break;
      if (value[key] === undefined || !counts(walk)) continue;
      walk.path.push(key);
      // Assigning __proto__ would change the prototype instead of adding a field.
      if (key === "__proto__") refuse(walk, value[key], "no such field");
      else if (text.of(key, walk) !== undefined) copy[key] = visit.of(value[key], walk);
      walk.path.pop();
    }
    return done(copy);
  });

/** An object with certain fields; those of the shape, in its order. */
function fields(shape: FieldsShape, leaves: Leaves, root: Shape): Visit {
  const parts = Object.entries(shape.fields).map(([name, own]) => ({
    name: name.replace("?", ""),
    optional: name.endsWith("?"),
    visit: visitOf(own, leaves, root),
    at: typeof own === "object" && "at" in own ? own.at : undefined,
  }));
  const known = new Set(parts.map(({ name }) => name));
  return object((value, walk) => {
    const { path } = walk;
    const at = path.push("") - 1;
    const keys = Object.keys(value);
    walk.names += keys.length;
    for (const key of keys) {
      if (isOver(walk)) break;
      if (known.has(key) || value[key] === undefined) continue;
      path[at] = key;
      refuse(walk, value[key], `no such field; the fields are ${[...known].join(", ")}`);
    }
    const copy: Record<string, unknown> = {};
    for (const { name, optional, visit, at: beside } of parts) {
      if (isOver(walk)) break;
      const own = Object.hasOwn(value, name) ? value[name] : undefined;
      if (own === undefined && optional) continue;
      path[at] = name;
      if (own === undefined) refuse(walk, own, visit.allowed, visit.hint);
      else if (counts(walk)) copy[name] = visit.of(own, walk, beside && value[beside]);
    }
    path.pop();
    return leaves.done(copy);
  });
}

/** One of several objects, told apart by a field. */
function cases({ by, cases: shapes }: CasesShape, leaves: Leaves, root: Shape): Visit {
  const visits = Object.entries(shapes).map(
    ([word, shape]) => [word, later(() => visitOf(shape, leaves, root))] as const, // there are many
  );
  const byWord = new Map<unknown, Later<Visit>>(visits);
  const known = words([...byWord.keys()] as string[]);
  return object((value, walk) => {
    const word = Object.hasOwn(value, by) ? value[by] : undefined;
    const visit = byWord.get(typeof word === "number" ? String(word) : word);
    if (visit) return visit().of(value, walk);
    within(walk, by, known, word);
    return undefined;
  });
}

/** The path of a field of the whole. */
const pathIn = (root: Shape): Visit => ({
  ...text,
  allowed: "the path of a field",
  of(value, walk) {
    tried(walk, () => shapeAt("", value as string, root));
    return value;
  },
});

/** What stood in the field of the whole that a path beside it names. */
function at(leaves: Leaves, root: Shape): Visit {
  const known = new Map<Shape, Visit>();
  return {
    allowed: "what the path allows",
    fits: () => true,
    of(value, walk, path) {
      let shape: Shape;
      try {
        shape = shapeAt("", path as string, root);
      } catch {
        return undefined; // the path itself is refused where it stands
      }
      const visit = known.get(shape) ?? visitOf(shape, leaves, root);
      known.set(shape, visit);
      return visit.of(value, walk);
    },
  };
}

/** The visit of a shape; `root` is the shape of the whole, in which paths lead. */
export function visitOf(shape: Shape, leaves: Leaves, root: Shape = shape): Visit {
  const inner = (one: Shape) => visitOf(one, leaves, root);
  if (typeof shape === "string") {
    if (Object.hasOwn(primitives, shape)) return primitives[shape] as Visit;
    if (shape === "any") return any(leaves);
    if (shape === "path") return pathIn(root);
    return leaves.quantity(shape === "quantity" ? undefined : (shape as Kind));
  }
  if ("words" in shape) return words(shape.words);
  if ("list" in shape) {
    const visit = inner(shape.list);
    return list(() => visit, leaves);
  }
  if ("items" in shape) {
    const visits = shape.items.map(inner);
    return list((i) => visits[i] as Visit, leaves, visits.length);
  }
  if ("fields" in shape) return fields(shape, leaves, root);
  if ("each" in shape) return each(inner(shape.each), leaves);
  if ("cases" in shape) return cases(shape, leaves, root);
  if ("statements" in shape) return cases(casesOf(shape), leaves, root);
  if ("unit" in shape) return leaves.unit(shape.unit);
  if ("named" in shape) return leaves.named(shape.named);
  if ("at" in shape) return at(leaves, root);
  return alternatives(shape.either.map(inner));
}
