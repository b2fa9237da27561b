// What did the logger write? Text by chunks, in a format that is stated, to typed rows.
// Follows log-format.ts; every line that is not taken is named with its reason.
// Does not cover guessing the format: guess-log.ts offers one.

import { listOf, objectOf, oneOf, refuse, textOf, wholeNumberOf } from "../quantity/check.ts";
import { frozen } from "../quantity/frozen.ts";
import type { Titles } from "./column-places.ts";
import type { Columns, LogFormat, LogRow } from "./log-format.ts";
import { recordReader, type TextRecord } from "./records.ts";
import { isNothing, type RowTaker, rowTaker, sameCells, type TakenRow } from "./row-taker.ts";
import { type LineStatement, say } from "./statements.ts";

/**
 * A part of a log, or a whole one.
 */
export interface Log<C> {
  /** The rows that were taken, in order of time; they go into the assessments as they are. */
  readonly rows: readonly LogRow<C>[];
  /** The line on which each of the rows stands, from 1. */
  readonly lines: readonly number[];
  /**
   * What the clock showed at the first row, `2026-03-29T01:55:00`: of the whole log, or in the part that holds that
   * row. Nothing where the file has no dates.
   */
  readonly started?: string | undefined;
  /** Why a line was not taken: one statement for each, with its line. */
  readonly refused: readonly LineStatement[];
  /** What was noticed in the lines that were taken: gaps, a clock that was set, midnight. */
  readonly notes: readonly LineStatement[];
}

/** Reads a log that comes in chunks. */
export interface LogReader<C> {
  /** Takes the next chunk, cut anywhere, and gives the rows that it completes. */
  add(chunk: string): Log<C>;
  /** Gives what the last line without a line ending holds. */
  end(): Log<C>;
}

/**
 * Reads a log by chunks, as a file is read or a download arrives: time grows with the text, memory with the chunk.
 *
 * @param format - How the log is written: stated, or as {@link guessLog} offered it.
 * @returns A reader. Its first rows come after the line of the header.
 * @throws {@link InvalidInputError} for a format that is none; from `add` and `end`, for a column that the header
 * does not have.
 *
 * @example
 * ```ts
 * import { createLogReader } from "hvac-install-math/logs";
 * import { micron, second } from "hvac-install-math/quantity";
 *
 * const reader = createLogReader({
 *   separator: ",",
 *   decimal: ".",
 *   time: { written: "elapsed", column: 1, unit: second },
 *   columns: { pressure: { column: 2, unit: micron } },
 * });
 * reader.add("0,275\n5,2").rows.length; // => 1
 * reader.add("83\n").rows[0]?.pressure.toString(); // => 283 micron
 * reader.end().rows.length; // => 0
 * ```
 */
export function createLogReader<const C extends Columns>(format: LogFormat<C>): LogReader<C> {
  const { separator, header, firstRow, remark } = checked(format);
  const records = recordReader(separator);
  const start = firstRow ?? (header ?? 0) + 1;
  const takerBelow = rowTaker(format);
  let titles: Titles;
  let take = header === undefined ? takerBelow(undefined) : undefined;
  const taker = (): RowTaker =>
    take ?? refuse("format.header", header, "a line of the text", "whole-number");
  const log = (found: readonly TextRecord[]): Log<C> => {
    const part = { rows: [], lines: [], refused: [], notes: [] } as Parts;
    for (const record of found) {
      const { line, cells, wrong } = record;
      if (line === header) {
        titles = cells;
        take = takerBelow(titles);
      } else if (line >= start && (wrong || !isNothing(cells, remark))) {
        if (titles && sameCells(cells, titles))
          part.refused.push(say("logs.header-again", { line }));
        else append(part, line, taker()(record)); // none where a quoted cell went over the header
      }
    }
    return part as unknown as Log<C>;
  };
  return frozen({
    add: (chunk) => log(records.add(textOf("chunk", chunk))),
    end: () => {
      const part = log(records.end());
      taker();
      return part;
    },
  });
}

/** What is collected of a part. */
interface Parts {
  readonly rows: unknown[];
  started?: string | undefined;
  readonly lines: number[];
  readonly refused: LineStatement[];
  readonly notes: LineStatement[];
}

function append(part: Parts, line: number, taken: TakenRow | LineStatement | undefined): void {
  if (!taken) return;
  if ("code" in taken) part.refused.push(taken);
  else {
    if (taken.started !== undefined) part.started = taken.started;
    part.rows.push(taken.row);
    part.lines.push(line);
    part.notes.push(...taken.notes);
  }
}

function checked<C extends Columns>(format: LogFormat<C>): LogFormat<C> {
  objectOf("format", format);
  const { separator, decimal, group, header, firstRow, remark, blank, blankCells } = format;
  if (textOf("format.separator", separator).length !== 1 || /["\r\n]/.test(separator)) {
    const allowed = "one character, no quotation mark and no line ending";
    refuse("format.separator", separator, allowed, "text");
  }
  oneOf("format.decimal", decimal, [".", ","]);
  if (group !== undefined) {
    oneOf(
      "format.group",
      group,
      ([".", ",", " ", "'"] as const).filter((mark) => mark !== decimal),
    );
  }
  if (header !== undefined) wholeNumberOf("format.header", header, { min: 1 });
  if (firstRow !== undefined)
    wholeNumberOf("format.firstRow", firstRow, { min: (header ?? 0) + 1 });
  if (remark !== undefined && textOf("format.remark", remark) === "") {
    refuse("format.remark", remark, "at least one character", "text");
  }
  if (blank !== undefined) oneOf("format.blank", blank, ["refuse", "skip"]);
  if (blankCells !== undefined) {
    listOf("format.blankCells", blankCells, 100).forEach((cell, i) => {
      textOf(`format.blankCells[${i}]`, cell);
    });
  }
  objectOf("format.time", format.time);
  objectOf("format.columns", format.columns);
  return format;
}
