// What can this module say? Every code with the values of its sentence.
// Follows assessment/statement.ts; the sentences are in language/, one file per language.
// Does not cover errors of the caller: those are thrown.
import {
  type None,
  type Say,
  type StatementOf,
  sayer,
  type Verbatim,
} from "../assessment/statement.ts";
import type { Quantity } from "../quantity/quantity.ts";
import type { DateOrder } from "./log-format.ts";

type Duration = Quantity<"duration">;
type Pressure = Quantity<"absolutePressure"> | Quantity<"gaugePressure">;
interface At {
  /** The line of the file, from 1. */
  readonly line: number;
}
interface Cell extends At {
  readonly column: Verbatim;
  readonly cell: Verbatim;
}
interface Titled {
  readonly column: Verbatim;
}

/**
 * The statements of this module: values by code.
 */
export interface LogsStatements {
  // lines that were refused
  "logs.open-quote": At;
  "logs.long-line": At;
  "logs.cell-count": At & { readonly count: number; readonly expected: number };
  "logs.blank-cell": At & Titled;
  "logs.not-a-number": Cell;
  "logs.not-possible": Cell;
  "logs.unknown-word": Cell;
  "logs.not-a-time": Cell;
  "logs.skipped-hour": Cell;
  "logs.duplicate": At;
  "logs.same-time": At;
  "logs.time-goes-back": At & { readonly by: Duration };
  "logs.header-again": At;
  // what was noticed in lines that were read
  "logs.gap": At & { readonly gap: Duration; readonly usual: Duration };
  "logs.past-midnight": At;
  "logs.clock-set-back": At;
  "logs.clock-set-forward": At;
  // reasons of a guess
  "logs.separator": {
    readonly separator: `logs.separator.${SeparatorWord}`;
    readonly columns: number;
  };
  "logs.decimal-mark": { readonly mark: Verbatim; readonly cell: Verbatim };
  "logs.header": At;
  "logs.unit": Titled & { readonly unit: Verbatim };
  "logs.date-order": { readonly order: `logs.order.${DateOrder}`; readonly cell: Verbatim };
  "logs.time": Titled & { readonly written: `logs.written.${WrittenWord}` };
  // doubts of a guess
  "logs.no-separator": None;
  "logs.decimal-unsure": None;
  "logs.thousands-or-decimal": { readonly cell: Verbatim };
  "logs.no-header": None;
  "logs.zero-not-stated": Titled & { readonly unit: Verbatim };
  "logs.unit-unknown": Titled;
  "logs.time-unit-unknown": Titled;
  "logs.column-missing": { readonly name: Verbatim };
  "logs.two-columns": { readonly name: Verbatim; readonly columns: readonly Verbatim[] };
  "logs.no-time": None;
  "logs.date-order-unsure": { readonly order: `logs.order.${DateOrder}`; readonly cell: Verbatim };
  "logs.zone-unknown": None;
  "logs.serial-unsure": Titled;
  "logs.elapsed-or-clock": Titled;
  "logs.blank-cells": { readonly count: number };
  // where a watch starts
  "logs.lowest": { readonly elapsed: Duration; readonly pressure: Pressure };
  "logs.highest": { readonly elapsed: Duration; readonly pressure: Pressure };
  "logs.between-rows": { readonly spacing: Duration };
  "logs.starts-isolated": None;
  "logs.starts-filled": None;
  "logs.several-rises": { readonly count: number };
  "logs.several-fills": { readonly count: number };
  "logs.ends-before": { readonly elapsed: Duration };
  "logs.no-rise": None;
  "logs.no-fill": None;
  "logs.gas-settles": None;
  // hints of errors
  "logs.which-zero": None;
}

/** The separators that have a name. */
export type SeparatorWord = "comma" | "semicolon" | "tab" | "bar";
/** The ways in which a time is written. */
export type WrittenWord = "elapsed" | "clock" | "date-time" | "serial";

/** The words of this module. */
export type LogsWord =
  | `logs.separator.${SeparatorWord}`
  | `logs.written.${WrittenWord}`
  | `logs.order.${DateOrder}`;

/** One statement of this module. */
export type LogsStatement = StatementOf<LogsStatements>;

/** A statement about one line of the file. */
export type LineStatement = Extract<LogsStatement, { readonly values: { readonly line: number } }>;

/** Makes a statement of this module. */
export const say: Say<LogsStatements> = /* @__PURE__ */ sayer();
