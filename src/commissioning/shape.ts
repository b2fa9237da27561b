// Has this value the form that it should have? A small language of shapes, and the check against it.
// Follows no standard. Does not cover what a value means: the modules check that.
import { describe, isOfKind, numberOf, oneOf, requireKind } from "../quantity/check.ts";
import { InvalidInputError } from "../quantity/errors.ts";
import type { Kind } from "../quantity/kinds.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { momentOf } from "./iso-time.ts";

/**
 * The form of a value in a record: a kind of quantity, `text`, `number`, `flag` (true or false), `time` (ISO
 * 8601), `any`, one of a few words, a list, fields by name, or several of these; `More` adds forms that a
 * record has not.
 *
 * Source: none; the library's own type.
 */
export type Shape<More = never> =
  | Kind
  | "text"
  | "number"
  | "flag"
  | "time"
  | "any"
  | {
      /** The words or numbers that are allowed. */
      readonly words: readonly (string | number)[];
    }
  | {
      /** The form of every item. */
      readonly list: Shape<More>;
    }
  | ObjectShape<More>
  | {
      /** A value has one of these forms. */
      readonly either: readonly Shape<More>[];
    }
  | More;

/** The form of an object. Source: none; the library's own type. */
export interface ObjectShape<More = never> {
  /** The forms of the fields; other fields are refused. */
  readonly fields: Fields<More>;
  /** The fields that have to be there; none when left out. */
  readonly required?: readonly string[];
}

/** The form of the fields of an object. Source: none; the library's own type. */
export type Fields<More = never> = Readonly<Record<string, Shape<More>>>;

/** Every field of `T`, and no other. */
export type FieldsOf<T> = { readonly [P in keyof T]-?: Shape };

/** An object with the fields of `T`. */
export function of<T>(fields: FieldsOf<T>, ...required: (keyof T & string)[]): ObjectShape {
  return { fields, required };
}

/** A list of such items. */
export const list = (item: Shape): Shape => ({ list: item });

/** One of several forms. */
export const either = (...shapes: Shape[]): Shape => ({ either: shapes });

/** A lower and an upper value. */
export const range = (low: string, high: string, kind: Shape): Shape => ({
  fields: { [low]: kind, [high]: kind },
});

const plain = (value: unknown): value is Record<string, unknown> =>
  typeof value === "object" && value !== null && !Array.isArray(value) && !isOfKind(value);

/** A copy of the value, frozen, of nothing but what the shape knows; throws where it has another form. */
export function shaped(path: string, value: unknown, shape: Shape): unknown {
  if (shape === "any") return value;
  if (shape === "text" || shape === "flag") {
    if (typeof value === (shape === "text" ? "string" : "boolean")) return value;
    return refuse(path, value, shape === "text" ? "a text" : "true or false");
  }
  if (shape === "number") return numberOf(path, value as number);
  if (shape === "time") {
    momentOf(path, value as string);
    return value;
  }
  if (typeof shape === "string") {
    requireKind(path, value, shape);
    return value as Quantity<Kind>;
  }
  if ("words" in shape) return oneOf(path, value as string, shape.words as readonly string[]);
  if ("either" in shape) return shaped(path, value, fitting(value, shape.either));
  if ("list" in shape) {
    if (!Array.isArray(value)) return refuse(path, value, "a list");
    return Object.freeze(Array.from(value, (one, i) => shaped(`${path}[${i}]`, one, shape.list)));
  }
  if (!plain(value)) return refuse(path, value, "an object");
  const under = (key: string) => (path ? `${path}.${key.slice(0, 40)}` : key.slice(0, 40));
  for (const key of Object.keys(value)) {
    if (fieldOf(shape.fields, key)) continue;
    const allowed = `no such field; the fields are ${Object.keys(shape.fields).join(", ")}`;
    return refuse(under(key), value[key], allowed);
  }
  const copy: Record<string, unknown> = {}; // in the order of the shape
  for (const [key, own] of Object.entries(shape.fields)) {
    if (!Object.hasOwn(value, key) || value[key] === undefined) continue;
    copy[key] = shaped(under(key), value[key], own);
  }
  for (const key of shape.required ?? []) {
    if (copy[key] === undefined) return refuse(under(key), undefined, "a value");
  }
  return Object.freeze(copy);
}

/** The shape of a field; nothing that an object inherits is a field. */
export function fieldOf(fields: Fields, key: string): Shape | undefined {
  return Object.hasOwn(fields, key) ? fields[key] : undefined;
}

/** The one of several shapes that a value was meant to have. */
export function fitting(value: unknown, shapes: readonly Shape[]): Shape {
  const found = shapes.find((shape) => {
    if (typeof shape === "string") return (value as { kind?: unknown } | null)?.kind === shape;
    return "list" in shape ? Array.isArray(value) : "fields" in shape && plain(value);
  });
  return found ?? (shapes[0] as Shape);
}

function refuse(argument: string, value: unknown, allowed: string): never {
  throw new InvalidInputError({ argument, value: describe(value), allowed });
}
