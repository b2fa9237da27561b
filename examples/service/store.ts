// Where are the records kept? One row for each, its text as the library writes it, its revision beside it.
// The database is SQLite as WebAssembly: one file, no server, no compiler.
import sqlite from "node-sqlite3-wasm";

/** A row: the text of a record after so many changes. */
export interface Row {
  readonly id: string;
  readonly revision: number;
  readonly text: string;
}

/** The records by their ids. */
export interface Store {
  add(id: string, text: string): void;
  get(id: string): Row | undefined;
  /** Puts a changed record in the place of the revision that it was made from; false when that is not the latest. */
  change(id: string, from: number, text: string): boolean;
  list(limit: number): readonly Pick<Row, "id" | "revision">[];
  close(): void;
}

/** Opens the database, and makes it where there is none; `:memory:` keeps nothing. */
export function openStore(file: string): Store {
  const database = new sqlite.Database(file);
  database.exec(`CREATE TABLE IF NOT EXISTS records (
    id TEXT PRIMARY KEY,
    revision INTEGER NOT NULL,
    text TEXT NOT NULL
  ) STRICT`);
  const rows = (sql: string, values: (string | number)[]) =>
    database.all(sql, values) as unknown as Row[];
  return {
    add: (id, text) => void database.run("INSERT INTO records VALUES (?, 0, ?)", [id, text]),
    get: (id) => rows("SELECT id, revision, text FROM records WHERE id = ?", [id])[0],
    change(id, from, text) {
      const { changes } = database.run(
        "UPDATE records SET text = ?, revision = revision + 1 WHERE id = ? AND revision = ?",
        [text, id, from],
      );
      return changes === 1;
    },
    list: (limit) => rows("SELECT id, revision FROM records ORDER BY rowid DESC LIMIT ?", [limit]),
    close: () => database.close(),
  };
}
