// Is this a record? Its form, the names of its runs, and its history as `amend` writes it.
// Follows recordShape, which is derived from the type. Does not cover whether a figure is possible: the steps say that.
import { numberOf, refuse } from "../quantity/check.ts";
import { checkOf, segmentsOf, surelyBefore } from "../shapes/index.ts";
import type { Amendment } from "./amendment.ts";
import { doneAt } from "./done-at.ts";
import { pathOf, recordShape } from "./format/index.ts";
import { hasWords } from "./has-words.ts";
import type { InstallationRecord } from "./record.ts";

/**
 * Checks the form of a record that came from outside: every field known and of its form. The copy that
 * comes back holds nothing else and is frozen. What the figures mean is not judged.
 *
 * @param record - Anything.
 * @returns A frozen copy.
 * @throws {@link InvalidInputError} that names the path where it is not a record; at most 200 runs, 200 circuits and
 * 100 000 changes in its history are.
 *
 * @example
 * ```ts
 * import { checkRecord } from "hvac-install-math/commissioning";
 * import { m } from "hvac-install-math/quantity";
 *
 * checkRecord({ version: 2, runs: [{ tubing: { length: m(9) } }] }).runs?.[0]?.tubing?.length?.toString(); // => 9 m
 * ```
 */
export function checkRecord(record: unknown): InstallationRecord {
  const checked = check(record, "record");
  requireNames(checked);
  const { history = [] } = checked;
  numberOf("history.length", history.length, mostChanges);
  for (const [i, entry] of history.entries()) requireEntry(entry, i, history[i - 1]);
  requireDates(checked, history);
  return checked;
}

const check = /* @__PURE__ */ checkOf<InstallationRecord>(recordShape);

/** More runs than any outdoor unit serves, and more circuits than feed one. */
const most = { max: 200 };

/** More changes than anyone makes by hand to the record of one installation. */
const mostChanges = { max: 100_000 };

/** Runs are told apart by their names. */
function requireNames({ runs = [], power }: InstallationRecord): void {
  numberOf("runs.length", runs.length, most);
  numberOf("power.circuits.length", power?.circuits?.length ?? 0, most);
  const seen = new Set<string>();
  for (const [i, { name }] of runs.entries()) {
    if (name === undefined) continue;
    if (seen.has(name))
      refuse(`runs[${i}].name`, name, "a name that no other run has", "other-name");
    seen.add(name);
  }
}

/** No amendment lies before what it changes, unless the date of that was amended too. */
function requireDates(record: InstallationRecord, history: readonly Amendment[]): void {
  const amended = new Set(history.map(({ path }) => path));
  for (const [i, { path, at }] of history.entries()) {
    const done = doneAt(record, segmentsOf(`history[${i}].path`, path));
    if (!done || !surelyBefore(at, done.at)) continue;
    if (done.of.some((_, n) => amended.has(pathOf(done.of.slice(0, n + 1))))) continue;
    refuse(`history[${i}].at`, at, `not before what it changes was done, ${done.at}`, "later-time");
  }
}

/** An amendment as {@link amend} writes it. */
function requireEntry(entry: Amendment, i: number, last: Amendment | undefined): void {
  const at = `history[${i}]`;
  const [first] = segmentsOf(`${at}.path`, entry.path);
  if (first === "version" || first === "history") {
    refuse(`${at}.path`, entry.path, "another part than version and history");
  }
  for (const field of ["by", "reason"] as const) {
    if (!hasWords(entry[field]))
      refuse(`${at}.${field}`, entry[field], "a text with words", "text");
  }
  if (last && surelyBefore(entry.at, last.at)) {
    refuse(`${at}.at`, entry.at, `not before the change before it, ${last.at}`, "later-time");
  }
}
