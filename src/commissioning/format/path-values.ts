// What stands at a path, and what does a change there really change? Values of a record by the segments of a path.
// Follows the writing of JavaScript. Does not cover whether a record has such a field: see record-path.ts.
import { numberOf } from "../../quantity/check.ts";
import type { Segment } from "./record-path.ts";

/** Whether a value has fields or items of its own: no word, and no quantity, live or as JSON, which stands for itself. */
const hasFields = (value: unknown): value is object =>
  typeof value === "object" && value !== null && !("unit" in value);

/** The value of a field of an object or a list, if there is one. */
const child = (parent: unknown, segment: Segment): unknown =>
  hasFields(parent) && Object.hasOwn(parent, segment)
    ? (parent as Record<Segment, unknown>)[segment]
    : undefined;

/** The value at a path. */
export const valueAt = (record: unknown, path: readonly Segment[]): unknown =>
  path.reduce<unknown>(child, record);

/** The part of the path down to what really changes: the first that was not there, or the list that grows or shrinks. */
export function whatChanged(
  record: unknown,
  path: readonly Segment[],
  removes: boolean,
): Segment[] {
  let value: unknown = record;
  for (const [i, segment] of path.entries()) {
    if (!hasFields(value)) return path.slice(0, i); // fields take its place
    const next = child(value, segment);
    const last = i === path.length - 1;
    if (typeof segment === "number" && (next === undefined || (last && removes))) {
      return path.slice(0, i);
    }
    if (next === undefined) return path.slice(0, i + 1);
    value = next;
  }
  return [...path];
}

/**
 * A copy with a value at the end of the path, or without it; what is missing on the way is made. Only what lies on the
 * path is copied. With `own`, what an earlier call with the same set has copied is changed in place, so that many
 * changes of one record cost no more than their paths.
 */
export function withValue(
  record: unknown,
  path: readonly Segment[],
  value: unknown,
  argument = "path",
  own: Set<unknown> = new Set(),
): unknown {
  const [segment, ...rest] = path;
  if (segment === undefined) return value;
  const isList = typeof segment === "number";
  const fits = hasFields(record) && Array.isArray(record) === isList;
  const next =
    rest.length === 0 ? value : withValue(child(record, segment), rest, value, argument, own);
  const copy = !fits ? (isList ? [] : {}) : own.has(record) ? record : copied(record);
  own.add(copy);
  if (isList) putInList(copy as unknown[], segment, next, argument);
  else if (next === undefined) delete (copy as Record<string, unknown>)[segment];
  else (copy as Record<string, unknown>)[segment] = next;
  return copy;
}

const copied = (value: unknown): object =>
  Array.isArray(value) ? [...value] : { ...(value as object) };

/** A copy of parts and lists all through; quantities stay, as nothing in them changes. */
export function deepCopy(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(deepCopy);
  if (!hasFields(value)) return value;
  return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, deepCopy(one)]));
}

function putInList(list: unknown[], at: number, value: unknown, argument: string): void {
  numberOf(argument, at, { max: list.length }); // the length itself adds an item
  if (value !== undefined) list[at] = value;
  else list.splice(at, 1);
}
