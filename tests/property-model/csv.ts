import { readFileSync } from "node:fs";

/** Rows of a check file: objects by column name; lines that begin with # are its provenance. */
export function readCsv(name: string): Record<string, string>[] {
  const path = new URL(`../published/data/${name}`, import.meta.url);
  const lines = readFileSync(path, "utf8").split("\n");
  const [header = "", ...rows] = lines.filter((line) => line !== "" && !line.startsWith("#"));
  const names = header.split(",");
  return rows.map((row) => {
    const cells = row.split(",");
    return Object.fromEntries(names.map((column, i) => [column, cells[i] ?? ""]));
  });
}
