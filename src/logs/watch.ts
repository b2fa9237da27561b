// Which rows are the watch? A part of a log, counted from its own start.
// Common practice, no source.
// Does not cover finding it: find-isolation.ts and find-fill.ts do.
import type { Quantity } from "../quantity/quantity.ts";
import { type LogsStatement, say } from "./statements.ts";

/** A row with its time. */
export interface WatchRow {
  /** Time since any moment. */
  readonly elapsed: Quantity<"duration">;
}

/**
 * Where the watch starts in a log, and its rows.
 */
export interface Watch<R> {
  /** The index of its first row in the log; nothing where none was found. */
  readonly start?: number | undefined;
  /** Its rows, `elapsed` counted from the first; none where none was found. */
  readonly rows: readonly R[];
  /** Why it starts there. */
  readonly reasons: readonly LogsStatement[];
  /** What the log does not tell: show these, and let the technician move the start. */
  readonly doubts: readonly LogsStatement[];
}

/** The watch from one row up to the first that is behind it, or to the last, with the doubts that every one has. */
export function watchFrom<R extends WatchRow>(
  rows: readonly R[],
  start: number,
  behind: number | undefined,
  reasons: readonly LogsStatement[],
  doubts: readonly LogsStatement[],
): Watch<R> {
  const [first, next] = [rows[start], rows[start + 1]] as [R, R | undefined];
  const more = [...doubts];
  if (next) more.push(say("logs.between-rows", { spacing: next.elapsed.minus(first.elapsed) }));
  if (behind !== undefined) {
    const { elapsed } = rows[behind - 1] as R;
    more.push(say("logs.ends-before", { elapsed }));
  }
  const watched = rows.slice(start, behind).map((row): R => {
    const elapsed = row.elapsed.minus(first.elapsed);
    return { ...row, elapsed };
  });
  return { start, rows: watched, reasons, doubts: more };
}
