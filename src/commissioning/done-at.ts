// When was the part of a record done that a path leads into? The nearest date around the field.
// Follows common practice, no source. Does not cover whether the date is right.
import type { IsoTime } from "../shapes/index.ts";
import { type Segment, valueAt } from "./format/index.ts";
import type { InstallationRecord } from "./record.ts";

/** The date, and the path where it stands; nothing for the date itself, which may be what was wrong. */
export function doneAt(
  record: InstallationRecord,
  path: readonly Segment[],
): { readonly at: IsoTime; readonly of: readonly Segment[] } | undefined {
  for (let i = path.length - 1; i > 0; i--) {
    // A joint without a date of its own was not made before its tubing was run.
    const dates = [["at"], ["openedAt"], ...(path[i] === "joints" ? [["tubing", "at"]] : [])];
    for (const date of dates) {
      const of = [...path.slice(0, i), ...date];
      const at = valueAt(record, of) as IsoTime | undefined;
      if (at !== undefined) return path[i] === date[0] ? undefined : { at, of };
    }
  }
  return undefined;
}
