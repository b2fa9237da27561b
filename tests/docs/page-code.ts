// The code of a page of the docs, as files that can be imported.
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";

const docs = join(import.meta.dirname, "../../docs");

/** Writes each block of a language into a file of a folder, and one file that exports all of them. */
export function writeBlocks(page: string, language: "ts" | "tsx", folder: string): string {
  const text = readFileSync(join(docs, page), "utf8");
  const fence = new RegExp(`^\`\`\`${language}\\n([\\s\\S]*?)^\`\`\``, "gm");
  const names = [...text.matchAll(fence)].map(([, code = ""], i) => {
    writeFileSync(join(folder, `block-${i}.${language}`), code);
    return `export * from "./block-${i}.${language}";`;
  });
  const all = join(folder, "page.ts");
  writeFileSync(all, names.join("\n"));
  return all;
}
