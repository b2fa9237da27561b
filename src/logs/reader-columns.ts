// What stands in the cells that were asked for? Each column of the format as a reader of one cell.
// Follows log-format.ts.
// Does not cover the time: time-reader.ts does.

import { objectOf, oneOf, refuse, requireUnit, textOf } from "../quantity/check.ts";
import { isInvalidInputError } from "../quantity/errors.ts";
import { choose } from "../quantity/hints.ts";
import type { Kind } from "../quantity/kinds.ts";
import type { Quantity, Unit } from "../quantity/quantity.ts";
import { requirePlace } from "./column-places.ts";
import type { Column, ColumnPlace } from "./log-format.ts";
import { type CellMarks, numberIn } from "./number-cell.ts";
import { symbolsOf, unitNamed, writtenKinds } from "./reading-units.ts";
import { type LineStatement, say } from "./statements.ts";

/** What a cell holds, or why it holds nothing. */
export type ReadCell = { readonly value: unknown } | LineStatement;

/** A column that is read, and what reads a cell of it. */
export interface ReaderColumn {
  readonly name: string;
  readonly place: ColumnPlace;
  /** What the caller calls it. */
  readonly title: string;
  readonly read: (cell: string, line: number) => ReadCell;
}

/** Makes the reader of a column. */
export function readerColumn(name: string, given: Column, marks: CellMarks): ReaderColumn {
  const path = `format.columns.${name}`;
  objectOf(path, given);
  const { column: place } = given;
  requirePlace(`${path}.column`, place);
  const title = String(place);
  const isWords = "words" in given;
  const read = isWords
    ? wordReader(path, title, given.words)
    : numberReader(path, title, given, marks);
  return { name, place, title, read };
}

function wordReader(
  path: string,
  title: string,
  words: Readonly<Record<string, string>>,
): ReaderColumn["read"] {
  for (const [word, meant] of Object.entries(objectOf(`${path}.words`, words))) {
    textOf(`${path}.words.${word}`, meant);
  }
  return (cell, line) =>
    Object.hasOwn(words, cell)
      ? { value: words[cell] }
      : say("logs.unknown-word", { line, column: { verbatim: title }, cell: { verbatim: cell } });
}

function numberReader(
  path: string,
  title: string,
  given: object,
  marks: CellMarks,
): ReaderColumn["read"] {
  const { kind } = given as { kind?: Kind | undefined };
  const unit = unitOf(`${path}.unit`, given, kind);
  return (cell, line) => {
    const place = { line, column: { verbatim: title }, cell: { verbatim: cell.slice(0, 40) } };
    const number = numberIn(cell, marks, unit.symbol);
    if (Number.isNaN(number)) return say("logs.not-a-number", place);
    try {
      return { value: unit(number) as Quantity<Kind> };
    } catch (error) {
      if (isInvalidInputError(error)) return say("logs.not-possible", place);
      throw error;
    }
  };
}

/** The unit of a column: itself, or by its name where the kind is known. */
export function unitOf<K extends Kind>(
  argument: string,
  given: object,
  kind: K | undefined,
  otherwise?: Unit<K>,
): Unit<K> {
  const { unit = otherwise } = given as { unit?: unknown };
  if (typeof unit !== "string") {
    requireUnit(
      argument,
      unit as Unit<K>,
      kind ?? (unit as Unit<K> | undefined)?.kind ?? ("a kind" as K),
    );
    return unit as Unit<K>;
  }
  if (kind === undefined) {
    return refuse(argument, unit, "a unit, or its name beside the kind");
  }
  const known = oneOf(argument.replace(/unit$/, "kind"), kind, writtenKinds as readonly K[]);
  const found = unitNamed(textOf(argument, unit), known);
  if (found?.zero) return found.unit;
  const symbols = symbolsOf(known);
  return refuse(
    argument,
    unit,
    symbols,
    found ? say("logs.which-zero") : choose(symbols.split(", ")),
  );
}
