// How does something that holds quantities pass from one place to another that copies only plain data?
// Follows the structured clone algorithm of HTML (WHATWG, 2.7.3, from memory), which takes plain objects, lists,
// maps, sets, dates and buffers, and no functions. Does not check what the data mean: the codecs of wire do.
import { unitNamed } from "./catalogue.ts";
import { isOfKind, refuse } from "./check.ts";
import { fromJSON } from "./json.ts";
import type { Kind } from "./kinds.ts";
import type { Quantity, QuantityJson, Unit } from "./quantity.ts";

/**
 * What {@link toPlain} makes of a value: each quantity as {@link QuantityJson}, each unit as its kind and symbol.
 *
 * @typeParam T - The value.
 */
export type Plain<T> =
  T extends Quantity<infer K>
    ? QuantityJson<K>
    : T extends Unit<infer K>
      ? { readonly kind: K; readonly unit: string }
      : T extends Date | ArrayBuffer | ArrayBufferView
        ? T
        : T extends object
          ? { readonly [P in keyof T]: Plain<T[P]> }
          : T;

/** Looks at a value before its parts; undefined leaves it to be copied part by part. */
type Turn = (value: object, path: string) => unknown;

/** Whether an object is one of fields alone, of this realm or another. */
function isRecord(value: object): boolean {
  const prototype = Object.getPrototypeOf(value);
  return prototype === null || Object.getPrototypeOf(prototype) === null;
}

/** A copy in which `turn` has had each part; what is neither a list, a map, a set nor plain fields stays as it is. */
function copied(value: unknown, turn: Turn, path: string, within: Set<object>): unknown {
  if (typeof value === "symbol") return refuse(path, value, "data");
  if ((typeof value !== "object" && typeof value !== "function") || value === null) return value;
  const turned = turn(value, path);
  if (turned !== undefined) return turned;
  if (within.has(value)) return refuse(path, value, "data that does not hold itself");
  within.add(value);
  const inner = (one: unknown, at: string) => copied(one, turn, `${path}${at}`, within);
  let copy: unknown = value;
  if (Array.isArray(value)) copy = value.map((one, i) => inner(one, `[${i}]`));
  else if (value instanceof Map) {
    copy = new Map([...value].map(([key, one]) => [inner(key, ".key"), inner(one, `.${key}`)]));
  } else if (value instanceof Set) copy = new Set([...value].map((one) => inner(one, ".item")));
  else if (isRecord(value)) {
    const fields = Object.entries(value).map(([key, one]) => [key, inner(one, `.${key}`)]);
    copy = Object.fromEntries(fields);
  }
  within.delete(value);
  return copy;
}

/**
 * A copy of anything that holds quantities, as plain data: for `structuredClone`, `postMessage` to a worker,
 * IndexedDB, or a JSON column. Quantities become `{kind, value, unit}`, units `{kind, unit}`; dates, buffers and
 * objects of a class stay as they are.
 *
 * A value that is made from outside is checked better by a codec of `hvac-install-math/wire`: this looks at
 * nothing but quantities.
 *
 * @param value - Anything; it is left as it was.
 * @returns The copy; {@link revive} reads it.
 * @throws {@link InvalidInputError} with the path where there is a function, a symbol or a ring.
 *
 * @example
 * ```ts
 * import { ft, revive, toPlain } from "hvac-install-math/quantity";
 *
 * const line = { name: "liquid", length: ft(36) };
 * const sent = structuredClone(toPlain(line));
 * revive<typeof line>(sent).length.toString(); // => 36 ft
 * ```
 */
export function toPlain<T>(value: T): Plain<T> {
  const turn: Turn = (one, path) => {
    if (isOfKind(one)) return (one as Quantity<Kind>).toJSON();
    if (typeof one !== "function") return undefined;
    const { kind, symbol } = one as Partial<Unit<Kind>>;
    return kind && symbol ? { kind, unit: symbol } : refuse(path, one, "data");
  };
  return copied(value, turn, "value", new Set()) as Plain<T>;
}

/**
 * The way back from {@link toPlain}: a copy in which every `{kind, value, unit}` is a live quantity and every
 * `{kind, unit}` a unit again.
 *
 * @param plain - What came over; it is left as it was.
 * @returns The copy, with live quantities. The type is what you say that it is: nothing else is checked.
 * @throws {@link InvalidInputError} with the path where such an object names a kind or a unit that there is
 * not, or a value that the quantity cannot have.
 *
 * @example
 * ```ts
 * import { degF, revive, toPlain } from "hvac-install-math/quantity";
 *
 * const column = JSON.stringify(toPlain([degF(70), degF(75)]));
 * revive<[typeof degF]>(JSON.parse(column)).join(" to "); // => 70 °F to 75 °F
 * ```
 */
export function revive<T>(plain: unknown): T {
  const turn: Turn = (one, path) => {
    const keys = isRecord(one) ? Object.keys(one).sort().join() : "";
    const { kind, unit } = one as QuantityJson;
    if (keys === "kind,unit" && typeof unit === "string") return unitNamed(path, kind, unit);
    return keys === "kind,unit,value" ? fromJSON(one) : undefined;
  };
  return copied(plain, turn, "plain", new Set()) as T;
}
