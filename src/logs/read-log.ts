// What did the logger write? A whole text, in a format that is stated, to typed rows.
// Follows log-reader.ts.
// Does not cover text that comes in chunks over time: createLogReader does.

import { refuse, textOf } from "../quantity/check.ts";
import { frozen } from "../quantity/frozen.ts";
import type { Columns, LogFormat, LogRow } from "./log-format.ts";
import { createLogReader, type Log } from "./log-reader.ts";
import type { LineStatement } from "./statements.ts";

/**
 * Reads a log to rows that go straight into `assessPressureLog`, `assessVacuumDecay`, `voltageLogStatistics` and
 * the record. Nothing is guessed: separator, decimal mark, columns, units, order of dates and zone are stated
 * (or offered by {@link guessLog}). Every line that is not taken is named with its reason.
 *
 * A byte-order mark, any line ending, quoted cells and blank lines are taken. Rows have to be later than the row
 * before: a duplicate, the doubled hour of a clock without its zone and a second recording are refused by line.
 *
 * @param text - The whole text, or its chunks in order.
 * @param format - How it is written.
 * @returns Rows with their lines, the refused lines, and what was noticed.
 * @throws {@link InvalidInputError} for a format that is none or does not fit the header.
 *
 * Source: RFC 4180 for quoted cells; ISO 8601-1:2019 for dates; the rest is common practice, no source.
 *
 * @example
 * ```ts
 * import { readLog } from "hvac-install-math/logs";
 * import { degC, barg } from "hvac-install-math/quantity";
 *
 * const text = "Zeit;p [bar];t [°C]\n29.03.2026 01:55;41,37;12,4\n29.03.2026 03:00;41,31;12,1\n29.03.2026 03:05;;12,0\n";
 * const log = readLog(text, {
 *   separator: ";",
 *   decimal: ",",
 *   header: 1,
 *   time: { written: "date-time", column: "Zeit", order: "day-month-year", zone: "Europe/Berlin" },
 *   columns: { pressure: { column: "p [bar]", unit: barg }, temperature: { column: 3, unit: degC } },
 * });
 * log.started; // => 2026-03-29T01:55:00
 * log.rows[1]?.elapsed.toString(); // => 300 s
 * log.rows[1]?.pressure.toString(); // => 41.31 barg
 * log.refused[0]?.code; // => logs.blank-cell
 * ```
 */
export function readLog<const C extends Columns>(
  text: string | Iterable<string>,
  format: LogFormat<C>,
): Log<C> {
  const chunks = typeof text === "string" ? [text] : text;
  if (typeof chunks?.[Symbol.iterator] !== "function") {
    refuse("text", text, "a text or its chunks", "text");
  }
  const reader = createLogReader(format);
  const rows: LogRow<C>[] = [];
  const lines: number[] = [];
  const refused: LineStatement[] = [];
  const notes: LineStatement[] = [];
  let started: string | undefined;
  const append = (part: Log<C>) => {
    started ??= part.started;
    for (const row of part.rows) rows.push(row);
    for (const line of part.lines) lines.push(line);
    for (const one of part.refused) refused.push(one);
    for (const one of part.notes) notes.push(one);
  };
  let i = 0;
  for (const chunk of chunks) append(reader.add(textOf(`text[${i++}]`, chunk)));
  append(reader.end());
  return frozen({ rows, ...(started !== undefined && { started }), lines, refused, notes });
}
