// Reads the files of an installation and says exactly what is wrong with them: file, line or field,
// value, and what is allowed.
import { readFileSync } from "node:fs";
import { join } from "node:path";
import {
  fromJSON,
  isInvalidInputError,
  type Kind,
  type Quantity,
} from "hvac-install-math/quantity";

/** Bad input, in one sentence for the person at the keyboard. */
export class BadInput extends Error {}

/** Turns the library's own complaint about a value into one about a place in a file. */
export function at<T>(place: string, read: () => T): T {
  try {
    return read();
  } catch (error) {
    if (!isInvalidInputError(error)) throw error;
    throw new BadInput(`${place}: ${error.message}`);
  }
}

/** The text of a file of the installation. */
export function textOf(folder: string, name: string): string {
  try {
    return readFileSync(join(folder, name), "utf8");
  } catch {
    throw new BadInput(`${name}: cannot be read in ${folder}; a readable text file is needed`);
  }
}

/** An object of the input file that knows where it stands, so that a complaint can say so. */
export class Section {
  constructor(
    private readonly file: string,
    private readonly path: string,
    private readonly fields: Record<string, unknown>,
  ) {}

  /** Opens a JSON file. */
  static open(folder: string, file: string): Section {
    const text = textOf(folder, file);
    try {
      return new Section(file, "", objectOf(file, JSON.parse(text)));
    } catch (error) {
      if (error instanceof BadInput) throw error;
      throw new BadInput(`${file}: is not JSON: ${(error as Error).message}`);
    }
  }

  /** Where a field stands, such as `install.json, equipment.refrigerant`. */
  place(name: string): string {
    return `${this.file}, ${this.path}${name}`;
  }

  /** A part of this part. */
  section(name: string): Section {
    const fields = objectOf(this.place(name), this.fields[name]);
    return new Section(this.file, `${this.path}${name}.`, fields);
  }

  /** A quantity written as `{ "value": 36, "unit": "ft" }`. */
  quantity<K extends Kind>(name: string, kind: K): Quantity<K> {
    const fields = objectOf(this.place(name), this.fields[name]);
    return at(this.place(name), () => fromJSON({ kind, ...fields }, kind));
  }

  /** The same, or nothing when the field is absent. */
  optional<K extends Kind>(name: string, kind: K): Quantity<K> | undefined {
    return this.fields[name] === undefined ? undefined : this.quantity(name, kind);
  }

  /** A text field. */
  text(name: string): string {
    const value = this.fields[name];
    if (typeof value === "string" && value !== "") return value;
    throw new BadInput(
      `${this.place(name)}: ${JSON.stringify(value)} is not allowed; allowed: a text`,
    );
  }

  /** One of a few words or numbers. */
  choice<T extends string | number>(name: string, allowed: readonly T[]): T {
    const value = this.fields[name] as T;
    if (allowed.includes(value)) return value;
    throw new BadInput(
      `${this.place(name)}: ${JSON.stringify(value)} is not allowed; allowed: ${allowed.join(", ")}`,
    );
  }
}

function objectOf(place: string, value: unknown): Record<string, unknown> {
  if (typeof value === "object" && value !== null && !Array.isArray(value)) {
    return value as Record<string, unknown>;
  }
  throw new BadInput(`${place}: ${JSON.stringify(value)} is not allowed; allowed: an object`);
}

/** A table of a CSV file whose header names a column and its unit: `pressure [psig]`. */
export class Table {
  private constructor(
    private readonly file: string,
    private readonly columns: readonly { name: string; unit: string }[],
    private readonly rows: readonly { line: number; cells: readonly string[] }[],
  ) {}

  /** Opens a CSV file; lines that start with # are remarks. */
  static open(folder: string, file: string): Table {
    const [header, ...rows] = textOf(folder, file)
      .split(/\r?\n/)
      .map((text, i) => ({ line: i + 1, cells: text.split(",").map((cell) => cell.trim()) }))
      .filter(({ cells }) => cells.join("") !== "" && !cells[0]?.startsWith("#"));
    const columns = (header?.cells ?? []).map((cell) => {
      const [, name, unit = ""] = /^([\w ]+?)\s*(?:\[(.+)\])?$/.exec(cell) ?? [];
      if (name) return { name, unit };
      throw new BadInput(
        `${file}, line ${header?.line}: "${cell}" is not a column; allowed: name [unit]`,
      );
    });
    if (rows.length === 0) throw new BadInput(`${file}: has no rows; at least one is needed`);
    for (const { line, cells } of rows) {
      if (cells.length === columns.length) continue;
      throw new BadInput(
        `${file}, line ${line}: ${cells.length} values are not allowed; allowed: ${columns.length}, one per column`,
      );
    }
    return new Table(file, columns, rows);
  }

  /** Reads every row with a function that gets a reader of the row's cells. */
  map<T>(read: (row: Row) => T): T[] {
    return this.rows.map(({ line, cells }) =>
      read({
        quantity: (name, kind) => {
          const { cell, unit, place } = this.find(name, line, cells);
          const value = cell === "" ? Number.NaN : Number(cell);
          if (Number.isNaN(value)) {
            throw new BadInput(`${place}: "${cell}" is not allowed; allowed: a number in ${unit}`);
          }
          return at(place, () => fromJSON({ kind, value, unit }, kind));
        },
        choice: (name, allowed) => {
          const { cell, place } = this.find(name, line, cells);
          const found = allowed.find((one) => one === cell);
          if (found !== undefined) return found;
          throw new BadInput(`${place}: "${cell}" is not allowed; allowed: ${allowed.join(", ")}`);
        },
      }),
    );
  }

  private find(name: string, line: number, cells: readonly string[]) {
    const i = this.columns.findIndex((column) => column.name === name);
    const column = this.columns[i];
    if (!column) {
      const names = this.columns.map((one) => one.name).join(", ");
      throw new BadInput(`${this.file}: has no column "${name}"; it has: ${names}`);
    }
    return {
      cell: cells[i] ?? "",
      unit: column.unit,
      place: `${this.file}, line ${line}, ${name}`,
    };
  }
}

/** The cells of a row, read as what they should be. */
export interface Row {
  quantity<K extends Kind>(name: string, kind: K): Quantity<K>;
  choice<T extends string>(name: string, allowed: readonly T[]): T;
}
