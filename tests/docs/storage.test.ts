// The code of docs/storage-and-workers.md on whole records: a row of version 1, and the record of the worked example.
import { mkdirSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import { nec2023 } from "hvac-install-math/circuit-protection";
import { assessInstallation } from "hvac-install-math/commissioning";
import { recordCodec } from "hvac-install-math/wire";
import initSqlJs from "sql.js";
import { afterAll, expect, it } from "vitest";
import { readInstallation } from "../../examples/worked-install/read-installation.ts";
import { writeBlocks } from "./page-code.ts";

const root = join(import.meta.dirname, "../..");
const generated = join(root, "tests/.generated");
mkdirSync(generated, { recursive: true });
const folder = mkdtempSync(join(generated, "storage-"));
const { migrated, answer } = await import(writeBlocks("storage-and-workers.md", "ts", folder));
afterAll(() => rmSync(folder, { recursive: true }));

const { Database } = await initSqlJs();
/** Written by version 1, and never written again. */
const old = readFileSync(join(root, "tests/wire/record-version-1.json"), "utf8");
const { record } = readInstallation(join(root, "examples/worked-install"));

it("a column of SQLite is brought from version 1 to the present one, and then stays as it is", () => {
  const database = new Database();
  database.run("CREATE TABLE job (id TEXT PRIMARY KEY, record TEXT CHECK (json_valid(record)))");
  const insert = (id: string, text: string) =>
    database.run("INSERT INTO job VALUES (?, ?)", [id, text]);
  insert("first", old);
  insert("present", recordCodec.stringify(record));
  insert("newer", '{"version":9}');
  const rows = () =>
    (database.exec("SELECT id, record FROM job")[0]?.values ?? []).map(([id, text]) => ({
      id,
      text,
    }));
  const before = rows();
  const { written, left } = migrated(before);
  expect(written.map(({ id }: { id: string }) => id)).toEqual(["first"]);
  expect(left).toEqual(["newer: wire.newer-version"]);
  for (const { id, text } of written)
    database.run("UPDATE job SET record = ? WHERE id = ?", [text, id]);

  // What the file of version 1 says: 38 ft after an amendment, at first 36 ft.
  const [found] = database.exec(
    "SELECT json_extract(record, '$.version'), json_extract(record, '$.runs[0].tubing.length.value'), json_extract(record, '$.history[0].previous.value') FROM job WHERE id = 'first'",
  );
  expect(found?.values).toEqual([[2, 38, 36]]);
  expect(migrated(rows()).written).toEqual([]);
  expect(rows().slice(1)).toEqual(before.slice(1));
});

it("a text of a whole record with its logs is the same after a way through the column", () => {
  const database = new Database();
  database.run("CREATE TABLE job (record TEXT)");
  const text = recordCodec.stringify(record);
  database.run("INSERT INTO job VALUES (?)", [text]);
  const [row] = database.exec("SELECT record FROM job")[0]?.values[0] ?? [];
  expect(row).toBe(text);
  expect(recordCodec.stringify(recordCodec.parse(String(row)))).toBe(text);
});

it("the worker's answer is plain, and the verdict is that of the page", () => {
  const data = structuredClone(answer(structuredClone(recordCodec.encode(record))));
  const { outcome, reasons } = assessInstallation(record, { rules: [nec2023] });
  expect(data.outcome).toBe(outcome);
  expect(data.reasons).toEqual(JSON.parse(JSON.stringify(reasons)));
});
