// How is a record corrected so that nothing is lost? A new record, with the old value in its history.
// Follows common practice of records under control: who, when, why, and what stood there before; no source.
// Does not cover proof of who it was, nor locking against two people at once.
import { objectOf, oneOf, refuse, wholeNumberOf } from "../quantity/check.ts";
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
import { doneAt } from "./done-at.ts";
import { pathOf, recordShape, valueAt, whatChanged, withValue } from "./format/index.ts";
import { hasWords } from "./has-words.ts";
import type { InstallationRecord } from "./record.ts";

/**
 * A change to a record.
 */
export interface Change {
  /** The field, part or item, such as `runs[0].tubing.length` or `runs[0].joints[2]`. The position after the last item adds one. */
  readonly path: string;
  /** What it becomes; nothing takes it out. */
  readonly value?: unknown;
  /** Whether only the record was wrong, or the work was done anew: then what was tested before proves nothing of it. */
  readonly kind?: "correction" | "rework" | undefined;
  /** Who changes it; a letter or a digit at least. */
  readonly by: string;
  /** When, by ISO 8601; not before the change before it. */
  readonly at: IsoTime;
  /** Why; a letter or a digit at least. */
  readonly reason: string;
}

/**
 * Changes a record and keeps what was there: the new record has the change in its `history`, with what
 * stood there before, who changed it, when and why. The given record is left as it is.
 *
 * @param record - The record.
 * @param change - Path, new value, who, when, why.
 * @returns A new, frozen record.
 * @throws {@link InvalidInputError} when there is no such field, the value has another form, there is
 * nothing to take out, the change is earlier than the one before it or than what it changes, or the path leads to `version` or `history`.
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
 * const record = { version: 2, runs: [{ tubing: { length: ft(36) } }] } as const;
 * const change = { path: "runs[0].tubing.length", value: ft(38), by: "N. N.", at: "2026-05-05", reason: "measured again" };
 * const amended = amend(record, change);
 * amended.runs?.[0]?.tubing?.length?.toString(); // => 38 ft
 * String(amended.history?.[0]?.previous); // => 36 ft
 * ```
 */
export function amend(record: InstallationRecord, change: Change): InstallationRecord {
  const before = checkRecord(record);
  const { path, value, by, at: when, reason, kind } = objectOf("change", change);
  const shape = shapeAt("change.path", path, recordShape);
  const segments = segmentsOf("change.path", path);
  const history = before.history ?? [];
  // A misspelt `value` would take the field out.
  const known = ["path", "value", "kind", "by", "at", "reason"];
  if (kind !== undefined) oneOf("change.kind", kind, ["correction", "rework"]);
  for (const [name, given] of Object.entries(change)) {
    if (!known.includes(name)) refuse(`change.${name}`, given, `only ${known.join(", ")}`);
  }
  if (segments[0] === "version" || segments[0] === "history") {
    refuse("change.path", path, "another part than version and history");
  }
  for (const [name, text] of Object.entries({ by, reason })) {
    if (!hasWords(text)) refuse(`change.${name}`, text, "a text with words", "text");
  }
  momentOf("change.at", when);
  const last = history.at(-1);
  if (last && surelyBefore(when, last.at)) {
    refuse("change.at", when, `not before the change before it, ${last.at}`, "later-time");
  }
  const next =
    value === undefined
      ? undefined
      : checkOf(shape, recordShape)(value, "change.value", ["change", "value"]);
  const where = whatChanged(before, segments, value === undefined);
  const previous = valueAt(before, where);
  if (value === undefined && valueAt(before, segments) === undefined) {
    refuse("change.value", value, "a value: there is nothing to take out");
  }
  const done = doneAt(before, segments);
  if (done && surelyBefore(when, done.at)) {
    refuse("change.at", when, `not before what it changes was done, ${done.at}`, "later-time");
  }
  const entry: Amendment = {
    path: pathOf(where),
    ...(previous !== undefined && { previous }),
    ...(kind !== undefined && { kind }),
    by,
    at: when,
    reason,
  };
  const after = withValue(before, segments, next, "change.path") as InstallationRecord;
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
 * @example
 * ```ts
 * import { amend, recordRevision } from "hvac-install-math/commissioning";
 * import { ft } from "hvac-install-math/quantity";
 *
 * const change = { path: "runs[0].tubing.length", value: ft(38), by: "N. N.", at: "2026-05-05", reason: "measured again" };
 * const amended = amend({ version: 2, runs: [{ tubing: { length: ft(36) } }] }, change);
 * recordRevision(amended, 0).runs?.[0]?.tubing?.length?.toString(); // => 36 ft
 * ```
 */
export function recordRevision(record: InstallationRecord, revision: number): InstallationRecord {
  const { history = [], ...last } = checkRecord(record);
  const count = history.length;
  wholeNumberOf("revision", revision, { min: 0, max: count });
  let back = last as InstallationRecord;
  const own = new Set<unknown>();
  for (let i = count - 1; i >= revision; i--) {
    const { path, previous } = history[i] as Amendment;
    const argument = `history[${i}].path`;
    const segments = segmentsOf(argument, path);
    back = withValue(back, segments, previous, argument, own) as InstallationRecord;
  }
  return checkRecord(revision > 0 ? { ...back, history: history.slice(0, revision) } : back);
}
