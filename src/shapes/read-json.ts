// What do quantities, units and named objects look like in JSON, and how do they come alive? The leaves of reading.
// Follows Quantity.toJSON. Does not cover lists and fields: the walk of shapes does.
import { unitsBySymbol } from "../quantity/catalogue.ts";
import { enter } from "../quantity/hints.ts";
import type { Kind } from "../quantity/kinds.ts";
import type { QuantityJson, Unit } from "../quantity/quantity.ts";
import { isRecord } from "./is-record.ts";
import { number, oneOfWords, words } from "./leaf-visits.ts";
import type { Leaves } from "./visit.ts";
import { leaf, refuse, tried, type Visit, type Walk } from "./walk.ts";

/** JSON becomes live, frozen values. */
export const reading: Leaves = {
  quantity: (kind) => (kind ? quantityOf(kind) : anyQuantity()),
  unit(kind) {
    const units = unitsBySymbol("kind", kind);
    const allowed = [...units.keys()].join(", ");
    return {
      allowed,
      fits: (value) => typeof value === "string",
      of: (value, walk) => units.get(value as string) ?? refuse(walk, value, allowed),
    };
  },
  named(objects) {
    const held = objects();
    const allowed = oneOfWords(Object.keys(held));
    return {
      allowed,
      fits: (value) => typeof value === "string",
      of: (value, walk) =>
        typeof value === "string" && Object.hasOwn(held, value)
          ? held[value]
          : refuse(walk, value, allowed),
    };
  },
  done: Object.freeze,
};

function quantityOf(kind: Kind): Visit {
  const units = unitsBySymbol("kind", kind);
  const allowed = `a quantity of the kind ${kind}: an object with kind, value and unit`;
  const hint = enter(kind);
  return {
    allowed,
    hint,
    fits: (value) => isRecord(value) && value.kind === kind,
    of(json, walk) {
      if (!isRecord(json)) return refuse(walk, json, allowed, hint);
      const { kind: own, value, unit: symbol } = json as Partial<QuantityJson>;
      const unit = units.get(symbol as string);
      const names = Object.keys(json).length;
      walk.names += names;
      walk.values += names;
      if (own === kind && unit && names === 3 && typeof value === "number" && value - value === 0) {
        return made(walk, unit, value);
      }
      return refusePart(walk, json, kind, units);
    },
  };
}

/** A value that a quantity of its kind cannot have is refused by the unit. */
function made(walk: Walk, unit: Unit<Kind>, value: number): unknown {
  try {
    return unit(value);
  } catch {
    return tried(walk, () => unit(value));
  }
}

const noSuchField = leaf("no such field; the fields are kind, value, unit", () => false);

/** Which part of a quantity does not fit. */
function refusePart(
  walk: Walk,
  json: Record<string, unknown>,
  kind: Kind,
  units: ReadonlyMap<string, unknown>,
): undefined {
  const part = (name: string, visit: Visit) => {
    walk.path.push(name);
    visit.of(json[name], walk);
    walk.path.pop();
  };
  for (const name of Object.keys(json)) {
    if (!["kind", "value", "unit"].includes(name)) part(name, noSuchField);
  }
  part("kind", words([kind]));
  part("value", number);
  if (json.kind === kind) part("unit", words([...units.keys()]));
  return undefined;
}

/** A quantity that names its kind. */
function anyQuantity(): Visit {
  const known = new Map<string, Visit>();
  return {
    allowed: "a quantity: an object with kind, value and unit",
    fits: (value) => isRecord(value) && Object.keys(value).sort().join() === "kind,unit,value",
    of(json, walk) {
      const { kind } = json as QuantityJson;
      let visit = known.get(kind);
      if (!visit) {
        const found = tried(walk, () => quantityOf(kind));
        if (!found) return undefined;
        known.set(kind, found);
        visit = found;
      }
      return visit.of(json, walk);
    },
  };
}
