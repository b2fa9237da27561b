// Reads the log of an instrument: a CSV file whose header names columns with their units, such as
// `elapsed [min],pressure [psig]`. Lines that start with # are remarks.
import { existsSync } from "node:fs";
import { join } from "node:path";
import {
  fromJSON,
  isInvalidInputError,
  type Kind,
  type Quantity,
} from "hvac-install-math/quantity";
import { BadInput, textOf } from "./bad-input.ts";

/** What a column holds: a quantity of this kind, or one of these words. */
type Column = Kind | readonly string[];
type Cell<C> = C extends Kind ? Quantity<C> : C extends readonly (infer Word)[] ? Word : never;

/** The rows of a log, and the line on which each stands. */
export interface Log<C extends Readonly<Record<string, Column>>> {
  readonly rows: readonly { readonly [P in keyof C]: Cell<C[P]> }[];
  readonly lines: readonly number[];
}

/** Reads the columns that are asked for, or nothing where there is no such file. */
export function readLog<const C extends Readonly<Record<string, Column>>>(
  folder: string,
  file: string,
  columns: C,
): Log<C> | undefined {
  if (!existsSync(join(folder, file))) return undefined;
  const [header, ...rows] = textOf(folder, file)
    .split(/\r?\n/)
    .map((text, i) => ({ line: i + 1, cells: text.split(",").map((cell) => cell.trim()) }))
    .filter(({ cells }) => cells.join("") !== "" && !cells[0]?.startsWith("#"));
  if (!header || rows.length === 0) throw new BadInput(`${file}: needs a header and a row`);
  const titles = header.cells.map((cell) => {
    const [, name, unit = ""] = /^([\w ]+?)\s*(?:\[(.+)\])?$/.exec(cell) ?? [];
    if (name) return { name, unit };
    throw new BadInput(`${file}, line ${header.line}: "${cell}"; allowed: name [unit]`);
  });
  const read = ({ line, cells }: { line: number; cells: string[] }, name: string) => {
    const place = `${file}, line ${line}`;
    if (cells.length !== titles.length) {
      const allowed = `${titles.length}, one per column`;
      throw new BadInput(`${place}: ${cells.length} values; allowed: ${allowed}`);
    }
    const i = titles.findIndex((title) => title.name === name);
    const { unit } = titles[i] ?? {};
    if (unit === undefined) {
      throw new BadInput(`${file}, line ${header.line}: no column "${name}"; it is needed`);
    }
    return cellOf(`${place}, ${name}`, cells[i] ?? "", unit, columns[name] as Column);
  };
  return {
    rows: rows.map((row) =>
      Object.fromEntries(Object.keys(columns).map((name) => [name, read(row, name)])),
    ) as never,
    lines: rows.map(({ line }) => line),
  };
}

function cellOf(place: string, cell: string, unit: string, column: Column) {
  if (typeof column !== "string") {
    if (column.includes(cell)) return cell;
    throw new BadInput(`${place}: "${cell}"; allowed: ${column.join(", ")}`);
  }
  const value = cell === "" ? Number.NaN : Number(cell);
  if (Number.isNaN(value)) throw new BadInput(`${place}: "${cell}"; allowed: a number in ${unit}`);
  try {
    return fromJSON({ kind: column, value, unit }, column);
  } catch (error) {
    if (!isInvalidInputError(error)) throw error;
    throw new BadInput(`${place}: ${error.value}; allowed: ${error.allowed}`);
  }
}
