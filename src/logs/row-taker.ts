// Is this row taken? Its time and its cells as typed values, or the one reason why it is not.
// Follows log-format.ts.
// Does not cover remarks, blank lines and headers: log-reader.ts leaves them out before.
import { describe, textOf, wholeNumberOf } from "../quantity/check.ts";
import { InvalidInputError } from "../quantity/errors.ts";
import { second } from "../quantity/units/time.ts";
import { gapWatch } from "./gaps.ts";
import type { ColumnPlace, Columns, LogFormat } from "./log-format.ts";
import { type ReaderColumn, readerColumn } from "./reader-columns.ts";
import type { TextRecord } from "./records.ts";
import { type LineStatement, say } from "./statements.ts";
import { elapsedOf, type TimeReader, timeReader } from "./time-reader.ts";

/** The titles of the header; none where the format names no header. */
export type Titles = readonly string[] | undefined;

/** A row that was taken, what the clock showed if it is the first, and what was noticed. */
export interface TakenRow {
  readonly row: object;
  readonly started?: string;
  readonly notes: readonly LineStatement[];
}

/** Takes one row after the other. */
export interface RowTaker {
  /** Finds the columns, before the first row. */
  begin(titles: Titles): void;
  /** The row, why it is refused, or nothing where it is left out. */
  row(record: TextRecord): TakenRow | LineStatement | undefined;
}

/** Makes what takes the rows of a format. */
export function rowTaker(format: LogFormat<Columns>): RowTaker {
  const { time: timeFormat, blank, blankCells = [] } = format;
  const blanks = new Set(["", ...blankCells]);
  const gapBefore = gapWatch();
  let columns: readonly ReaderColumn[] = [];
  let readTime: TimeReader;
  let width = 0;
  const countsItself = timeFormat.written === "elapsed";
  let first = 0;
  let last = Number.NEGATIVE_INFINITY;
  let lastCells: readonly string[] = [];

  return {
    begin(titles) {
      const placeOf = (argument: string, place: ColumnPlace) => placeAmong(titles, argument, place);
      readTime = timeReader(timeFormat, format, placeOf);
      columns = Object.entries(format.columns).map(([name, column]) =>
        readerColumn(name, column, format, placeOf),
      );
      width = titles ? filled(titles) : 0;
    },
    row({ line, cells, wrong }) {
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
      const time = readTime(cells, line, last);
      if ("code" in time) return time;
      const { at, unit, wall, mayBeSet = false, note } = time;
      if (at < last) return say("logs.time-goes-back", { line, by: second(last - at) });
      if (at === last) {
        return say(sameCells(cells, lastCells) ? "logs.duplicate" : "logs.same-time", { line });
      }
      const values: Record<string, unknown> = {};
      for (const { name, at: place, read } of columns) {
        const cell = read(cells[place] ?? "", line);
        if ("code" in cell) return cell;
        values[name] = cell.value;
      }
      const isFirst = last === Number.NEGATIVE_INFINITY;
      if (isFirst && !countsItself) first = at;
      [last, lastCells] = [at, cells];
      const gap = gapBefore(at, line, mayBeSet);
      const notes = [note, gap].filter((one) => one !== undefined);
      const row = { elapsed: elapsedOf(at - first, unit), ...values };
      if (!isFirst || wall === undefined) return { row, notes };
      return { row, notes, started: new Date(wall * 1000).toISOString().slice(0, 19) };
    },
  };
}

/** Whether two rows have the same cells. */
export function sameCells(a: readonly string[], b: readonly string[]): boolean {
  return a.length === b.length && a.every((cell, i) => cell === b[i]);
}

/** How many cells a row has without the blank ones at its end, as a separator behind the last one makes them. */
function filled(cells: readonly string[]): number {
  let count = cells.length;
  while (count > 1 && cells[count - 1] === "") count -= 1;
  return count;
}

/** The index of a column, from 0. */
function placeAmong(titles: Titles, argument: string, place: ColumnPlace): number {
  if (typeof place === "number") {
    return wholeNumberOf(argument, place, { min: 1, max: titles?.length ?? 1000 }) - 1;
  }
  const at = titles?.indexOf(textOf(argument, place)) ?? -1;
  const twice = titles ? titles.indexOf(place, at + 1) >= 0 : false;
  if (at >= 0 && !twice) return at;
  throw new InvalidInputError({
    argument,
    value: describe(place),
    allowed: titles
      ? `a title that the header has once: ${titles.join(", ").slice(0, 200)}`
      : "a number from 1, because the format names no header",
  });
}
