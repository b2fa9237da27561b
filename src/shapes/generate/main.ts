// Writes the shapes and codecs that are derived from the types.
// Run: npx tsx src/shapes/generate/main.ts
import { mkdirSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { generate } from "./generate.ts";
import { root } from "./program.ts";

const files = generate();
for (const folder of new Set([...files.keys()].map(dirname))) {
  mkdirSync(join(root, folder), { recursive: true });
  for (const name of readdirSync(join(root, folder))) {
    if (!files.has(`${folder}/${name}`)) rmSync(join(root, folder, name));
  }
}
for (const [path, text] of files) {
  writeFileSync(join(root, path), text);
  console.log(`${path}: ${text.split("\n").length} lines`);
}
