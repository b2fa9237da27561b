// Which forms has a value on the wire? The language of shapes of a record, with three forms more, tied to types.
// Follows commissioning/shape.ts. Does not cover how it is read: schema-of.ts.
import type { ObjectShape, Shape } from "../commissioning/index.ts";
import type { Quantity } from "../quantity/quantity.ts";

/** The forms that inputs and results have and a record has not. Source: none; the library's own type. */
export type More =
  | {
      /** An object that goes by its name, such as a refrigerant; one that differs in anything has no name. */
      readonly named: Readonly<Record<string, object>>;
    }
  | {
      /** Fields with names of the writer's own, each of this form. */
      readonly each: WireShape;
    }
  | {
      /** The form of every item of a list that has just so many. */
      readonly items: WireShape;
      /** How many. */
      readonly count: number;
    };

/** The form of a value on the wire, as data. Source: none; the library's own type. */
export type WireShape = Shape<More>;

declare const meaning: unique symbol;

/** The shape of an object of the type `T`; only {@link of} makes it, so that none of its fields is forgotten. */
export type ObjectOf<T> = ObjectShape<More> & { readonly [meaning]: (value: T) => T };

/**
 * The shapes that a value of the type `V` may have. For several forms, `either`; for a text of a few words,
 * `words`. A type that changes no longer fits its shape, and the compiler says so.
 */
export type FormOf<V> = SingleOf<V> | { readonly either: readonly EachOf<V>[] };
type EachOf<V> = V extends unknown ? SingleOf<V> : never;
type SingleOf<V> = [V] extends [Quantity<infer K>]
  ? K
  : [V] extends [boolean]
    ? "flag"
    : [V] extends [number]
      ? "number" | { readonly words: readonly V[] }
      : [V] extends [string]
        ? "text" | { readonly words: readonly V[] }
        : [V] extends [readonly (infer U)[]]
          ? number extends V["length"]
            ? { readonly list: FormOf<U> }
            : { readonly items: FormOf<U>; readonly count: V["length"] }
          : [V] extends [object]
            ?
                | (string extends keyof V ? { readonly each: FormOf<V[keyof V]> } : ObjectOf<V>)
                | { readonly named: Readonly<Record<string, V>> }
            : never;

/** Every field of `T`, and no other; one that may be missing ends in `?`, as in TypeScript. */
export type FieldsOf<T> = {
  readonly [P in keyof T as FieldName<T, P>]-?: FormOf<Exclude<T[P], undefined>>;
};
type FieldName<T, P extends keyof T> = [Exclude<T[P], undefined>] extends [never]
  ? never
  : P extends string
    ? Record<never, never> extends Pick<T, P>
      ? `${P}?`
      : P
    : never;

/** The shape of an object of the type `T`. */
export function of<T extends object>(fields: FieldsOf<T>): ObjectOf<T> {
  const entries = Object.entries<WireShape>(fields as never);
  const shape: ObjectShape<More> = {
    fields: Object.fromEntries(entries.map(([name, form]) => [name.replace("?", ""), form])),
    required: entries.map(([name]) => name).filter((name) => !name.endsWith("?")),
  };
  return shape as ObjectOf<T>;
}

/** A list of such items. */
export const list = <F extends WireShape>(form: F): { readonly list: F } => ({ list: form });

/** One of several forms. */
export const either = <F extends readonly WireShape[]>(
  ...forms: F
): { readonly either: readonly F[number][] } => ({ either: forms });

/** One of the words of the type `W`: every one of them is named, so that a new one is not forgotten. */
export const words = <W extends string>(
  all: Readonly<Record<W, true>>,
): { readonly words: readonly W[] } => ({ words: Object.keys(all) as W[] });
