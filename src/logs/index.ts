/**
 * What a logger or a spreadsheet wrote, to typed rows: a guess at the format with its reasons and doubts, the reading
 * of it by a format that is stated, and the moment at which a watch on a vacuum or a nitrogen hold starts.
 *
 * @module logs
 */
export { type FillRow, findFill } from "./find-fill.ts";
export { findIsolation, type VacuumRow } from "./find-isolation.ts";
export { type ColumnOf, type GuessedColumns, guessLog, type LogGuess } from "./guess-log.ts";
export type {
  Column,
  ColumnPlace,
  Columns,
  DateOrder,
  LogFormat,
  LogRow,
  NamedUnitColumn,
  TimeFormat,
  UnitColumn,
  WordColumn,
} from "./log-format.ts";
export { createLogReader, type Log, type LogReader } from "./log-reader.ts";
export { readLog } from "./read-log.ts";
export type {
  LineStatement,
  LogsStatement,
  LogsStatements,
  LogsWord,
  SeparatorWord,
  WrittenWord,
} from "./statements.ts";
export type { Watch, WatchRow } from "./watch.ts";
