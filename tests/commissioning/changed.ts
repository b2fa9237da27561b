// A record with other values at some paths, without the history of the change.
import { amend, type InstallationRecord } from "hvac-install-math/commissioning";
import { complete } from "./complete-record.ts";

export type Change = { readonly [path: string]: unknown };

/** The complete record, or another one, with other values at some paths. */
export function changed(
  changes: Change,
  record: InstallationRecord = complete,
): InstallationRecord {
  let result = record;
  for (const [path, value] of Object.entries(changes)) {
    result = amend(result, { path, value, by: "test", at: "2030-05-06", reason: "test" });
  }
  const { history: _, ...rest } = result;
  return rest;
}
