// What do quantities, units and named objects look like in JSON, and how do they come alive? The leaves of reading.
// Follows Quantity.toJSON. Does not cover lists and fields: the walk of shapes does.
import { unitsBySymbol } from "../quantity/catalogue.ts";
import { enter } from "../quantity/hints.ts";
import type { Kind } from "../quantity/kinds.ts";
import type { QuantityJson, Unit } from "../quantity/quantity.ts";
import { isRecord } from "./is-record.ts";
import { number, oneOfWords, words } from "./leaf-visits.ts";
import type { Leaves } from "./visit.ts";
import { leaf, refuse, tried, type Visit, type Walk, within } from "./walk.ts";

/** JSON becomes live, frozen values. */
export const reading: Leaves = {
  quantity: (kind) => (kind ? quantityOf(kind) : anyQuantity()),
  unit: (kind) => held(unitsBySymbol("kind", kind)),
  named: (objects) => held(new Map(Object.entries(objects()))),
  done: Object.freeze,
};

/** What goes by its name. */
function held(byName: ReadonlyMap<string, unknown>): Visit {
  const allowed = oneOfWords([...byName.keys()]);
  return {
    allowed,
    fits: (value) => typeof value === "string",
    of: (value, walk) => byName.get(value as string) ?? refuse(walk, value, allowed),
  };
}

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
  for (const name of Object.keys(json)) {
    if (!["kind", "value", "unit"].includes(name)) within(walk, name, noSuchField, json[name]);
  }
  within(walk, "kind", words([kind]), json.kind);
  within(walk, "value", number, json.value);
  if (json.kind === kind) within(walk, "unit", words([...units.keys()]), json.unit);
  return undefined;
}

/** A quantity that names its kind. */
function anyQuantity(): Visit {
  const known = new Map<string, Visit>();
  const allowed = "a quantity: an object with kind, value and unit";
  return {
    allowed,
    fits: (value) => isRecord(value) && Object.keys(value).sort().join() === "kind,unit,value",
    of(json, walk) {
      if (!isRecord(json)) return refuse(walk, json, allowed);
      const { kind } = json as unknown as QuantityJson;
      const visit = known.get(kind) ?? tried(walk, () => quantityOf(kind));
      if (visit) known.set(kind, visit);
      return visit?.of(json, walk);
    },
  };
}
