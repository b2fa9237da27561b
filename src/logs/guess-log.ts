// How might this log be written? A format to look at before it is used, with reasons and doubts.
// Common practice of loggers and spreadsheets, no source.
// Does not cover reading: nothing of a guess is taken until the caller hands it to readLog.

import { objectOf, oneOf, textOf } from "../quantity/check.ts";
import { frozen } from "../quantity/frozen.ts";
import type { Kind } from "../quantity/kinds.ts";
import { decimalOf, type Findings, layoutOf } from "./guess-cells.ts";
import { chooseColumns, titledColumns } from "./guess-columns.ts";
import { guessTime } from "./guess-time.ts";
import type { Columns, LogFormat, UnitColumn } from "./log-format.ts";
import { writtenKinds } from "./reading-units.ts";
import type { TextRecord } from "./records.ts";
import { type LogsStatement, say } from "./statements.ts";

/** Columns of the kinds that were asked for. */
export type GuessedColumns<W> = { readonly [N in keyof W]: ColumnOf<W[N]> };

/** A column of one of the kinds. */
export type ColumnOf<K> = K extends Kind ? UnitColumn<K> : never;

/**
 * An offer: a format, why it is as it is, and what the text does not tell.
 */
export interface LogGuess<C> {
  /** The format; nothing where the time, a column that was asked for, or any column at all was not found. */
  readonly format?: LogFormat<C> | undefined;
  /** What the text tells. */
  readonly reasons: readonly LogsStatement[];
  /** What it does not tell, and was assumed or left out: show these before the format is used. */
  readonly doubts: readonly LogsStatement[];
}

/** The kinds of the columns that are wanted, by name. */
type Wanted = Readonly<Record<string, Kind>>;

/** So much of the text is looked at, in UTF-16 code units. */
const looked = 20_000;

/**
 * Offers a format for a log, from its first 20 000 characters, with the reasons for what it found and the doubts
 * about what a text cannot tell: whether psi are gauge or absolute, whether 3/4 is in March or in April, in which
 * zone the clock stood. Show both, correct the format where it is wrong, and pass it to {@link readLog}.
 *
 * @param text - The text, or its beginning.
 * @param wanted - The names and kinds of the columns that you need.
 * @returns The offer. Without doubts, only the zone of a clock without one can still be wrong.
 * @throws {@link InvalidInputError} for a text that is none, and for kinds that no log holds.
 *
 * Source: common practice, no source.
 *
 * @example
 * ```ts
 * import { guessLog, readLog } from "hvac-install-math/logs";
 *
 * const text = "elapsed [s];pressure [micron]\n0;275,5\n5;283,0\n";
 * const { format, doubts } = guessLog(text, { pressure: "absolutePressure" });
 * doubts.length; // => 0
 * format ? readLog(text, format).rows[1]?.pressure.toString() : ""; // => 283 micron
 * ```
 */
export function guessLog<const W extends Wanted>(
  text: string,
  wanted: W,
): LogGuess<GuessedColumns<W>>;
/**
 * Offers a format with every column whose unit is known, named by its kind: `pressure`, `pressure2`, `temperature`.
 *
 * @param text - The text, or its beginning.
 * @returns The offer.
 * @throws {@link InvalidInputError} for a text that is none.
 *
 * Source: common practice, no source.
 */
export function guessLog(text: string): LogGuess<Columns>;
export function guessLog(text: string, wanted?: Wanted): LogGuess<Columns> {
  textOf("text", text);
  if (wanted !== undefined) {
    for (const [name, kind] of Object.entries(objectOf("wanted", wanted))) {
      oneOf(`wanted.${name}`, textOf(`wanted.${name}`, kind) as Kind, writtenKinds);
    }
  }
  const findings: Findings = { reasons: [], doubts: [] };
  const whole =
    text.length <= looked ? text : text.slice(0, text.lastIndexOf("\n", looked) + 1 || looked);
  const layout = layoutOf(whole, findings);
  const decimal = decimalOf(layout, findings);
  const columns = titledColumns(layout);
  const guessed = guessTime(layout, columns, decimal, findings);
  const rest = columns.filter((column) => !guessed?.taken.includes(column));
  const chosen = chooseColumns(rest, wanted, findings);
  const places = new Set(Object.values(chosen).map(({ column }) => column));
  const blank = layout.rows.filter(({ cells }) =>
    columns.some(({ at, place }) => places.has(place) && cells[at] === ""),
  ).length;
  if (blank > 0) findings.doubts.push(say("logs.blank-cells", { count: blank }));
  const isWhole = Object.keys(wanted ?? {}).every((name) => Object.hasOwn(chosen, name));
  if (!guessed || !isWhole || places.size === 0) return frozen(findings);
  const { separator, remark, header, rows } = layout;
  const { line: firstRow } = rows[0] as TextRecord; // a column has a title and rows
  return frozen({
    ...findings,
    format: {
      separator,
      decimal,
      header,
      firstRow,
      ...(remark !== undefined && { remark }),
      time: guessed.time,
      columns: chosen as Columns,
    },
  });
}
