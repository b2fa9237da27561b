// How is a record corrected so that nothing is lost? A new record, with the old value in its history.
// Follows common practice of records under control: who, when, why, and what stood there before; no source.
// Does not cover proof of who it was, nor locking against two people at once.
import { describe, isOfKind } from "../quantity/check.ts";
import { InvalidInputError } from "../quantity/errors.ts";
import {
  checkOf,
  type IsoTime,
  momentOf,
  segmentsOf,
  shapeAt,
  surelyBefore,
} from "../shapes/index.ts";
import type { Amendment } from "./amendment.ts";
import { checkRecord } from "./check-record.ts";
import { recordShape } from "./generated/record-shape.ts";
import { hasWords } from "./has-words.ts";
import type { InstallationRecord } from "./record.ts";
import { pathOf } from "./record-path.ts";

/**
 * A change to a record.
 *
 * Source: none; the library's own type.
 */
export interface Change {
  /** The field, part or item, such as `tubing.length`, `drain` or `joints[2]`. The position after the last item adds one. */
  readonly path: string;
  /** What it becomes; nothing takes it out. */
  readonly value?: unknown;
  /** Who changes it; a letter or a digit at least. */
  readonly by: string;
  /** When, by ISO 8601; not before the change before it. */
  readonly at: IsoTime;
  /** Why; a letter or a digit at least. */
  readonly reason: string;
}

type Segment = string | number;

/** The value of a field of an object or a list, if there is one. */
function child(parent: unknown, segment: Segment): unknown {
  const own = parent as Record<Segment, unknown> | undefined;
  return own !== undefined && Object.hasOwn(own, segment) ? own[segment] : undefined;
}

/** A copy that can be changed; quantities stay the same, as nothing in them changes. */
function loose(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(loose);
  if (typeof value !== "object" || value === null || isOfKind(value)) return value;
  return Object.fromEntries(Object.entries(value).map(([key, own]) => [key, loose(own)]));
}

/** Gives the field at the end of the path a value, or takes it out; what is missing on the way is made. */
function place(record: object, path: readonly Segment[], value: unknown, argument: string): void {
  let parent = record as Record<Segment, unknown> | unknown[];
  for (const [i, segment] of path.entries()) {
    const next = path[i + 1];
    const own = child(parent, segment);
    const isList = typeof next === "number";
    // Fields take the place of a quantity.
    const fits = typeof own === "object" && Array.isArray(own) === isList && !isOfKind(own);
    const given = next === undefined ? value : fits ? own : isList ? [] : {};
    if (Array.isArray(parent)) {
      const [at, allowed] = [segment as number, `at most [${parent.length}], which adds an item`];
      if (at > parent.length) {
        throw new InvalidInputError({ argument, value: `position ${at}`, allowed });
      }
      parent.splice(at, 1, ...(given === undefined ? [] : [given]));
    } else if (given === undefined) delete parent[segment];
    else parent[segment] = given;
    parent = given as typeof parent;
  }
}

/** The part of the path down to what really changes: the first that was not there, or the list that grows or shrinks. */
function changed(record: unknown, path: readonly Segment[], removes: boolean): Segment[] {
  let value: unknown = record;
  for (const [i, segment] of path.entries()) {
    if (isOfKind(value)) return path.slice(0, i); // fields take the place of a quantity
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

function at(record: unknown, path: readonly Segment[]): unknown {
  return path.reduce<unknown>(child, record);
}

/**
 * Changes a record and keeps what was there: the new record has the change in its `history`, with what
 * stood there before, who changed it, when and why. The given record is left as it is.
 *
 * @param record - The record.
 * @param change - Path, new value, who, when, why.
 * @returns A new, frozen record.
 * @throws {@link InvalidInputError} when there is no such field, the value has another form, there is
 * nothing to take out, the change is earlier than the one before it, or the path leads to `version` or `history`.
 *
 * Cautions: a signature covers what was signed; {@link assessInstallation} warns where a record was changed
 * after it was signed.
 *
 * Source: common practice, no source.
 *
 * @example
 * ```ts
 * import { amend } from "hvac-install-math/commissioning";
 * import { ft } from "hvac-install-math/quantity";
 *
 * const record = { version: 1, tubing: { length: ft(36) } } as const;
 * const change = { path: "tubing.length", value: ft(38), by: "N. N.", at: "2026-05-05", reason: "measured again" };
 * const amended = amend(record, change);
 * amended.tubing?.length?.toString(); // => 38 ft
 * String(amended.history?.[0]?.previous); // => 36 ft
 * ```
 */
export function amend(record: InstallationRecord, change: Change): InstallationRecord {
  const before = checkRecord(record);
  if (typeof change !== "object" || change === null) {
    const allowed = "an object with path, value, by, at and reason";
    throw new InvalidInputError({ argument: "change", value: describe(change), allowed });
  }
  const { path, value, by, at: when, reason } = change;
  const shape = shapeAt("change.path", path, recordShape);
  const segments = segmentsOf("change.path", path);
  const history = before.history ?? [];
  const refuse = (argument: string, given: unknown, allowed: string) => {
    throw new InvalidInputError({ argument, value: describe(given), allowed });
  };
  // A misspelt `value` would take the field out.
  const known = ["path", "value", "by", "at", "reason"];
  for (const [name, given] of Object.entries(change)) {
    if (!known.includes(name)) refuse(`change.${name}`, given, `only ${known.join(", ")}`);
  }
  if (segments[0] === "version" || segments[0] === "history") {
    refuse("change.path", path, "another part than version and history");
  }
  for (const [name, text] of Object.entries({ by, reason })) {
    if (!hasWords(text)) refuse(`change.${name}`, text, "a text with words");
  }
  momentOf("change.at", when);
  const last = history.at(-1);
  if (last && surelyBefore(when, last.at)) {
    refuse("change.at", when, `not before the change before it, ${last.at}`);
  }
  const next =
    value === undefined
      ? undefined
      : checkOf(shape, recordShape)(value, "change.value", ["change", "value"]);
  const where = changed(before, segments, value === undefined);
  const previous = at(before, where);
  if (value === undefined && at(before, segments) === undefined) {
    refuse("change.value", value, "a value: there is nothing to take out");
  }
  const entry: Amendment = {
    path: pathOf(where),
    ...(previous !== undefined && { previous }),
    by,
    at: when,
    reason,
  };
  const after = loose({ ...before, history: [] }) as InstallationRecord;
  place(after, segments, next, "change.path");
  return checkRecord({ ...after, history: [...history, entry] });
}

/**
 * The record as it was after so many of its amendments: 0 is the first version.
 *
 * @param record - The record with its history.
 * @param revision - Whole number, 0 to the number of amendments.
 * @returns The earlier record, with the history that it had then; frozen.
 * @throws {@link InvalidInputError} when there is no such revision or it is not a record.
 *
 * Source: none; the library's own format.
 *
 * @example
 * ```ts
 * import { amend, recordRevision } from "hvac-install-math/commissioning";
 * import { ft } from "hvac-install-math/quantity";
 *
 * const change = { path: "tubing.length", value: ft(38), by: "N. N.", at: "2026-05-05", reason: "measured again" };
 * const amended = amend({ version: 1, tubing: { length: ft(36) } }, change);
 * recordRevision(amended, 0).tubing?.length?.toString(); // => 36 ft
 * ```
 */
export function recordRevision(record: InstallationRecord, revision: number): InstallationRecord {
  const { history = [], ...last } = checkRecord(record);
  const count = history.length;
  if (!Number.isInteger(revision) || revision < 0 || revision > count) {
    const allowed = `a whole number from 0 to ${count}`;
    throw new InvalidInputError({ argument: "revision", value: describe(revision), allowed });
  }
  const back = loose(last) as InstallationRecord;
  for (let i = count - 1; i >= revision; i--) {
    const { path, previous } = history[i] as Amendment;
    const argument = `history[${i}].path`;
    place(back, segmentsOf(argument, path), loose(previous), argument);
  }
  return checkRecord(revision > 0 ? { ...back, history: history.slice(0, revision) } : back);
}
