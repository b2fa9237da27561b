// How is a value of this shape read from JSON and written to it? A zod schema, made from the shape.
// The message of each schema is what it allows, for the typed error. Follows Quantity.toJSON and fromJSON.
// Does not cover limits (plain-copy.ts) and versions (format.ts).
import * as z from "zod/mini";
import { isOfKind } from "../quantity/check.ts";
import { type InvalidInputError, isInvalidInputError } from "../quantity/errors.ts";
import { fromJSON } from "../quantity/json.ts";
import type { Kind } from "../quantity/kinds.ts";
import type { Quantity, QuantityJson, Unit } from "../quantity/quantity.ts";
import { unitsOf } from "./units-of.ts";
import type { WireShape } from "./wire-shape.ts";

type Schema = z.ZodMiniType;

const one = <T>(words: readonly T[]) =>
  z.custom<T>((value) => words.includes(value as T), words.join(", "));
const number = () => z.custom<number>(Number.isFinite, "a finite number"); // 130 bytes less than z.number

/** Runs what may refuse a value; its error becomes an issue of the schema, so that it gets its path. */
function tried<T>(act: () => T, { issues }: z.core.ParsePayload): T {
  try {
    return act();
  } catch (error) {
    if (!isInvalidInputError(error)) throw error;
    const { value, allowed } = error as InvalidInputError;
    issues.push({ code: "custom", message: allowed, params: { value }, input: undefined });
    return z.NEVER;
  }
}

function quantity(kind: Kind): Schema {
  const units = unitsOf(kind);
  const fields = {
    kind: one([kind]),
    value: number(),
    unit: one([...units.keys()]),
  };
  return z.codec(
    z.strictObject(fields, `a quantity of the kind ${kind}: an object with kind, value and unit`),
    z.custom<Quantity<Kind>>((value) => isOfKind(value, kind), `the kind ${kind}`),
    {
      decode: ({ value, unit }, payload) =>
        tried(() => (units.get(unit) as Unit<Kind>)(value), payload),
      encode: (value) => value.toJSON() as QuantityJson<Kind>,
    },
  );
}

/** Quantities in a value of any form come alive again. */
function revived(value: unknown): unknown {
  if (typeof value !== "object" || value === null) return value;
  if (Array.isArray(value)) return value.map(revived);
  if (Object.keys(value).sort().join() === "kind,unit,value") return fromJSON(value);
  return Object.fromEntries(Object.entries(value).map(([key, own]) => [key, revived(own)]));
}

const primitives = {
  text: () => z.string("a text"),
  time: () => z.string("a date or a moment by ISO 8601"), // which dates there are, the record's own check says
  number,
  flag: () => one([true, false]),
  any: () =>
    z.codec(z.unknown(), z.unknown(), {
      decode: (json, payload) => tried(() => revived(json), payload),
      encode: (value) => JSON.parse(JSON.stringify(value)),
    }),
};

/** All that an object says. JSON leaves functions out: a unit in it counts by what it is. */
const said = (value: unknown) =>
  JSON.stringify(value, (_, own) =>
    typeof own === "function" ? [own.kind, own.symbol, own.scale] : own,
  );

function named(objects: Readonly<Record<string, object>>): Schema {
  const names = Object.keys(objects);
  // Another copy of the package has objects of its own. A name alone would not do: one who changes a figure
  // of a known object, such as for a local amendment, may keep the name that stands in it.
  let known: Map<string, string> | undefined;
  const nameOf = (value: unknown) => {
    const own = names.find((name) => objects[name] === value);
    if (own !== undefined) return own;
    known ??= new Map(names.map((name) => [said(objects[name]), name]));
    return known.get(said(value));
  };
  return z.codec(
    one(names),
    z.custom<object>((value) => nameOf(value) !== undefined, `one of ${names.join(", ")}`),
    {
      decode: (name) => objects[name] as object,
      encode: (value) => nameOf(value) as string,
    },
  );
}

/** The schema of a shape. */
export function schemaOf(shape: WireShape): Schema {
  const kinds = new Map<Kind, Schema>(); // one schema for each kind
  const made = (own: WireShape): Schema => {
    if (typeof own === "string") {
      if (Object.hasOwn(primitives, own)) return primitives[own as keyof typeof primitives]();
      const kind = own as Kind;
      const schema = kinds.get(kind) ?? quantity(kind);
      kinds.set(kind, schema);
      return schema;
    }
    if ("words" in own) return one(own.words);
    if ("list" in own) return z.array(made(own.list), "a list");
    if ("items" in own) {
      const { items, count } = own;
      const whole = z.custom<unknown[]>(
        (value) => Array.isArray(value) && value.length === count,
        `${count} items`,
      );
      const same = (value: unknown[]) => value;
      return z.codec(z.array(made(items), "a list"), whole, { decode: same, encode: same });
    }
    if ("either" in own) return z.union(own.either.map(made) as [Schema, Schema]);
    if ("named" in own) return named(own.named);
    if ("each" in own) return z.catchall(z.object({}, "an object"), made(own.each));
    const { fields, required = [] } = own;
    const schemas = Object.entries<WireShape>(fields).map(([name, field]) => {
      return [name, required.includes(name) ? made(field) : z.optional(made(field))];
    });
    return z.strictObject(Object.fromEntries(schemas), {
      error: ({ code }) =>
        code === "unrecognized_keys"
          ? `no such field; the fields are ${Object.keys(fields).join(", ")}`
          : "an object",
    });
  };
  return made(shape);
}
