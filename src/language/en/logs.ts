// English of the logs: sentences and words.
import type { LogsStatements, LogsWord } from "../../logs/statements.ts";
import { type CatalogueOf, type Define, define, type Words } from "../define.ts";

type Said = LogsStatements & Words<LogsWord>;
const catalogue: Define<Said> = define;

/** What `logs` says, in American English. */
export const logs: CatalogueOf<Said> = /* @__PURE__ */ catalogue("en-US", {
  "logs.open-quote": "Line {line}: a quotation mark is not closed.",
  "logs.long-line": "Line {line} is too long for a row of a log.",
  "logs.cell-count": "Line {line} has {count} cells. Expected: {expected}.",
  "logs.blank-cell": "Line {line}: {column} is blank.",
  "logs.not-a-number": "Line {line}, {column}: “{cell}” is not a number in the stated notation.",
  "logs.not-possible": "Line {line}, {column}: “{cell}” is not possible.",
  "logs.unknown-word": "Line {line}, {column}: “{cell}” is none of the stated words.",
  "logs.not-a-time": "Line {line}, {column}: “{cell}” is not a time as stated.",
  "logs.skipped-hour":
    "Line {line}, {column}: “{cell}” does not exist. Clocks were set forward over it.",
  "logs.duplicate": "Line {line} repeats the row before it.",
  "logs.same-time": "Line {line} has the time of the row before it.",
  "logs.time-goes-back":
    "Line {line} is {by} before the row above it. Was the clock set back, or does a second recording begin?",
  "logs.header-again": "Line {line} repeats the header. Does a second recording begin?",

  "logs.gap": "Rows are missing before line {line}: {gap} without one, {usual} is usual.",
  "logs.past-midnight": "Midnight passed before line {line}.",
  "logs.clock-set-back": "Clocks were set back one hour before line {line}.",
  "logs.clock-set-forward": "One hour is missing before line {line}. Was the clock set forward?",

  "logs.separator": "Cells are separated by {separator}: {columns} columns.",
  "logs.decimal-mark": "The decimal mark is “{mark}”, as in {cell}.",
  "logs.header": "Line {line} names the columns.",
  "logs.unit": "Column {column} is in {unit}.",
  "logs.date-order": "Dates are written {order}, as in {cell}.",
  "logs.time": "Column {column} is the time: {written}.",

  "logs.no-separator": "No separator was found: the text has one column.",
  "logs.decimal-unsure": "No number has a decimal mark. A point was assumed.",
  "logs.thousands-or-decimal": "Is the mark in {cell} a decimal mark or a thousands mark?",
  "logs.no-header": "No line names the columns.",
  "logs.zero-not-stated":
    "Column {column} does not say whether it is gauge or absolute. {unit} was assumed.",
  "logs.unit-unknown": "Column {column} has no unit that is known, so it is left out.",
  "logs.time-unit-unknown": "Column {column} has no unit that is known. Seconds were assumed.",
  "logs.column-missing": "No column was found for {name}.",
  "logs.two-columns": "More than one column fits {name}: {columns}. The first was taken.",
  "logs.no-time": "No column holds the time.",
  "logs.date-order-unsure":
    "Dates can be read in more than one order. {order} was assumed: {cell}.",
  "logs.zone-unknown": "The zone of the clock is not stated. The times are taken as they stand.",
  "logs.serial-unsure":
    "Column {column} looks like the dates of a spreadsheet. A calendar from 1900 was assumed.",
  "logs.elapsed-or-clock": "Column {column} may be the time of day or the time since the start.",
  "logs.blank-cells": {
    by: "count",
    one: "One row has a blank cell. As the format stands, it is refused.",
    other: "{count} rows have a blank cell. As the format stands, they are refused.",
  },

  "logs.lowest": "The pressure is lowest, {pressure}, at {elapsed}.",
  "logs.highest": "The pressure is highest, {pressure}, at {elapsed}.",
  "logs.between-rows": "The valve was closed between this row and the next: within {spacing}.",
  "logs.starts-isolated": "No pump-down comes before the rise. Does the log begin after isolation?",
  "logs.starts-filled": "No filling was found. Does the log begin after it?",
  "logs.several-rises": "The pressure rises after {count} lows. The last was taken.",
  "logs.several-fills": "The pressure was raised in {count} steps. The last was taken.",
  "logs.ends-before": "The rows after {elapsed} were left out: the pressure falls away there.",
  "logs.no-rise":
    "The pressure never rises by a tenth after it fell. A tight, dry system and a running pump look the same.",
  "logs.no-fill": "The log holds no pressure above the atmosphere.",
  "logs.gas-settles": "The gas settles for some minutes after filling.",

  "logs.which-zero": "Gauge or absolute?",

  "logs.separator.comma": "commas",
  "logs.separator.semicolon": "semicolons",
  "logs.separator.tab": "tabs",
  "logs.separator.bar": "vertical bars",
  "logs.written.elapsed": "time since the start",
  "logs.written.clock": "time of day",
  "logs.written.date-time": "date and time",
  "logs.written.serial": "days of a spreadsheet’s calendar",
  "logs.order.year-month-day": "year, month, day",
  "logs.order.day-month-year": "day, month, year",
  "logs.order.month-day-year": "month, day, year",
});
