// Is this row taken? Its time and its cells as typed values, or the one reason why it is not.
// Follows log-format.ts.
// Does not cover remarks, blank lines and headers: log-reader.ts leaves them out before.
import { second } from "../quantity/units/time.ts";
import { placeAmong, type Titles, timePlaces } from "./column-places.ts";
import { gapWatch } from "./gaps.ts";
import type { Columns, LogFormat } from "./log-format.ts";
import { readerColumn } from "./reader-columns.ts";
import type { TextRecord } from "./records.ts";
import { type LineStatement, say } from "./statements.ts";
import { elapsedOf, type LastTime, timeReader } from "./time-reader.ts";

/** A row that was taken, what the clock showed if it is the first, and what was noticed. */
export interface TakenRow {
  readonly row: object;
  readonly started?: string | undefined;
  readonly notes: readonly LineStatement[];
}

/** Takes one row after the other: the row, why it is refused, or nothing where it is left out. */
export type RowTaker = (record: TextRecord) => TakenRow | LineStatement | undefined;

/** Looks at a format, and makes what takes its rows where the titles of the columns are known. */
export function rowTaker(format: LogFormat<Columns>): (titles: Titles) => RowTaker {
  const { time: timeFormat, blank, blankCells } = format;
  const blanks = new Set(blankCells).add("");
  const gapBefore = gapWatch();
  const readTime = timeReader(timeFormat, format);
  const timeColumns = timePlaces(timeFormat);
  const readers = Object.entries(format.columns).map(([name, column]) =>
    readerColumn(name, column, format),
  );
  const countsItself = timeFormat.written === "elapsed";
  let first = 0;
  let last: LastTime = { at: Number.NEGATIVE_INFINITY };
  let lastCells: readonly string[];

  return (titles) => {
    const timeAt = timeColumns.map(([argument, place]) => placeAmong(titles, argument, place));
    const columns = readers.map((reader) => {
      const argument = `format.columns.${reader.name}.column`;
      return { ...reader, at: placeAmong(titles, argument, reader.place) };
    });
    let width = titles ? filled(titles) : 0;
    return ({ line, cells, wrong }) => {
      if (wrong) return say(wrong, { line });
      width ||= cells.length;
      if (cells.length < width || filled(cells) > width) {
        return say("logs.cell-count", { line, count: filled(cells), expected: width });
      }
      const missing = columns.find(({ at }) => blanks.has(cells[at] ?? ""));
      if (missing) {
        const column = { verbatim: missing.title };
        return blank === "skip" ? undefined : say("logs.blank-cell", { line, column });
      }
      const time = readTime(timeAt.map((at) => cells[at] ?? "").join(" "), line, last);
      if ("code" in time) return time;
      const { at, unit, wall, mayBeSet = false, note } = time;
      if (at < last.at) return say("logs.time-goes-back", { line, by: second(last.at - at) });
      if (at === last.at) {
        return say(sameCells(cells, lastCells) ? "logs.duplicate" : "logs.same-time", { line });
      }
      const values: Record<string, unknown> = {};
      for (const { name, at: place, read } of columns) {
        const cell = read(cells[place] ?? "", line);
        if ("code" in cell) return cell;
        values[name] = cell.value;
      }
      const isFirst = last.at === Number.NEGATIVE_INFINITY;
      if (isFirst && !countsItself) first = at;
      [last, lastCells] = [{ at, wall }, cells];
      const gap = gapBefore(at, line, mayBeSet);
      const notes = [note, gap].filter((one) => one !== undefined);
      const row = { elapsed: elapsedOf(at - first, unit), ...values };
      if (!isFirst || wall === undefined) return { row, notes };
      return { row, notes, started: new Date(wall * 1000).toISOString().slice(0, 19) };
    };
  };
}

/** Whether two rows have the same cells. */
export function sameCells(a: readonly string[], b: readonly string[]): boolean {
  return a.length === b.length && a.every((cell, i) => cell === b[i]);
}

/** Whether a row says nothing: it is a remark, or all of its cells are blank. */
export function isNothing(cells: readonly string[], remark: string | undefined): boolean {
  return filled(cells) === 0 || (remark !== undefined && (cells[0] as string).startsWith(remark));
}

/** How many cells a row has without the blank ones at its end, as a separator behind the last one makes them. */
export function filled(cells: readonly string[]): number {
  let count = cells.length;
  while (cells[count - 1] === "") count -= 1;
  return count;
}
