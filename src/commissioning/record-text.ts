// What is there to sign? One text of a record and its history, the same wherever it is made.
// Follows RFC 8785 (JSON Canonicalization Scheme), from memory: fields by name, no blanks, numbers as ECMAScript prints them.
// Does not cover hashing and signing: an app does that.
import { isQuantity } from "../quantity/json.ts";
import { checkRecord } from "./check-record.ts";
import type { InstallationRecord } from "./record.ts";

/**
 * The canonical text of a record with its history: JSON whose fields stand in the order of their names and whose
 * numbers have one form, so that the same record gives the same text on every runtime. An app can hash or sign it; any
 * later change of the record, or of its history, gives another text.
 *
 * Quantities stand in the unit in which they were entered: 36 ft and 10.9728 m are two texts.
 *
 * @param record - The record, in whatever state of filling.
 * @returns The text.
 * @throws {@link InvalidInputError} when it is not a record.
 *
 * Source: RFC 8785, from memory.
 *
 * @example
 * ```ts
 * import { recordText } from "hvac-install-math/commissioning";
 * import { ft } from "hvac-install-math/quantity";
 *
 * recordText({ version: 2, name: "invented", runs: [{ tubing: { length: ft(36) } }] });
 * // => {"name":"invented","runs":[{"tubing":{"length":{"kind":"length","unit":"ft","value":36}}}],"version":2}
 * ```
 */
export const recordText = (record: InstallationRecord): string => textOf(checkRecord(record));

function textOf(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(textOf).join(",")}]`;
  if (typeof value !== "object" || value === null) return JSON.stringify(value);
  const fields = (isQuantity(value) ? value.toJSON() : value) as Readonly<Record<string, unknown>>;
  // The default order of sort is by UTF-16 code units, as the scheme has it.
  return `{${Object.keys(fields)
    .sort()
    .map((name) => `${JSON.stringify(name)}:${textOf(fields[name])}`)
    .join(",")}}`;
}
