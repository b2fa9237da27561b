// How is this log written? What has to be known to read it, all of it stated and none of it guessed.
// Follows what loggers and spreadsheets write, common practice, no source; dates and zones as ISO 8601-1:2019
// and the IANA time zone database have them. Does not cover binary files.
import type { Kind } from "../quantity/kinds.ts";
import type { Quantity, Unit } from "../quantity/quantity.ts";

/** A unit of any kind. */
export type AnyUnit = { [K in Kind]: Unit<K> }[Kind];

/** Where a column is: its title in the header, or its number from 1. */
export type ColumnPlace = string | number;

/** A column of readings, in a unit of the library. */
export interface UnitColumn<K extends Kind> {
  /** Title or number. */
  readonly column: ColumnPlace;
  /** The unit of its numbers. */
  readonly unit: Unit<K>;
}

/** A column of readings, its unit by name or symbol. */
export interface NamedUnitColumn<K extends Kind> {
  /** Title or number. */
  readonly column: ColumnPlace;
  /** The kind of quantity. */
  readonly kind: K;
  /** The unit's symbol or one of its names, such as `"psig"`, `"deg F"` or `"microns"`. */
  readonly unit: string;
}

/** A column of words, such as the state of a reading. */
export interface WordColumn {
  /** Title or number. */
  readonly column: ColumnPlace;
  /** What each word of the file means: `{ idle: "rest", running: "load" }`. */
  readonly words: Readonly<Record<string, string>>;
}

/** Any column. */
export type Column = { [K in Kind]: UnitColumn<K> | NamedUnitColumn<K> }[Kind] | WordColumn;

/** Columns by the name that the rows give them. */
export type Columns = Readonly<Record<string, Column>>;

/** A row as read: the time and the columns asked for. */
export type LogRow<C> = {
  /** As the file counts it, or since the first row where the file has dates or times of day. */
  readonly elapsed: Quantity<"duration">;
} & {
  readonly [N in keyof C]: C[N] extends { readonly unit: Unit<infer K> }
    ? Quantity<K>
    : C[N] extends { readonly kind: infer K extends Kind }
      ? Quantity<K>
      : C[N] extends { readonly words: Readonly<Record<string, infer W>> }
        ? W
        : never;
};

/** Order of day, month and year. Source: ISO 8601-1:2019 for the first; the others are national custom. */
export type DateOrder = "year-month-day" | "day-month-year" | "month-day-year";

/**
 * How the time of a row is written.
 *
 * - `elapsed`: a number that counts in `unit` (seconds when left out), or h:mm:ss.
 * - `clock`: a time of day; it goes past midnight where it falls back by more than twelve hours.
 * - `date-time`: a date and a time of day, in one column or two. A `Z` or `+02:00` in the file goes before `zone`.
 * - `serial`: days since the beginning of a spreadsheet's calendar.
 *
 * Source: ISO 8601-1:2019; IANA time zone database; ECMA-376 (spreadsheet serial dates), from memory.
 */
export type TimeFormat =
  | {
      readonly written: "elapsed";
      readonly column: ColumnPlace;
      /** The unit of its numbers, or its name. */
      readonly unit?: Unit<"duration"> | string | undefined;
    }
  | { readonly written: "clock"; readonly column: ColumnPlace }
  | {
      readonly written: "date-time";
      readonly column: ColumnPlace;
      /** The column of the time of day, where it has one of its own. */
      readonly timeColumn?: ColumnPlace | undefined;
      readonly order: DateOrder;
      /**
       * The zone of the clock: an IANA name such as `"America/Denver"`, which knows when clocks change, or
       * `"wall-clock"`: the times as they stand, as if no clock changed.
       */
      readonly zone: string;
    }
  | {
      readonly written: "serial";
      readonly column: ColumnPlace;
      /** The calendar counts from 1900 (day 1 is 1 January 1900, and 1900 counts as a leap year) or 1904. */
      readonly epoch: 1900 | 1904;
    };

/**
 * How a log is written. Offered by {@link guessLog}, or stated.
 */
export interface LogFormat<C = Columns> {
  /** What stands between cells: one character, such as `,`, `;` or a tab. */
  readonly separator: string;
  /** The decimal mark. */
  readonly decimal: "." | ",";
  /** The thousands mark, between groups of three digits; none when left out. */
  readonly group?: "." | "," | " " | "'" | undefined;
  /** The line of the column titles, from 1; left out where there is none. */
  readonly header?: number | undefined;
  /** The line of the first row; the one after the header, or the first, when left out. */
  readonly firstRow?: number | undefined;
  /** How a line begins that is a remark, such as `#`; none when left out. */
  readonly remark?: string | undefined;
  /** The time. */
  readonly time: TimeFormat;
  /** The columns to read. */
  readonly columns: C;
  /**
   * What becomes of a row in which a cell that is read is blank: it is refused by name, or left out
   * without a word. Refused when left out.
   */
  readonly blank?: "refuse" | "skip" | undefined;
  /** Texts that mean a blank cell, such as `---` or `NaN`, beside nothing at all. */
  readonly blankCells?: readonly string[] | undefined;
}
