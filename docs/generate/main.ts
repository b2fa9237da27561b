// Writes the generated pages of the site to docs/generated: `npm run docs` runs this before TypeDoc.
import { mkdirSync, rmSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { allPages } from "./all-pages.ts";

const folder = join(import.meta.dirname, "..", "generated");
rmSync(folder, { recursive: true, force: true });
for (const { path, text } of await allPages()) {
  const file = join(folder, path);
  mkdirSync(dirname(file), { recursive: true });
  writeFileSync(file, text);
}
