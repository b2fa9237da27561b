// The build puts what all modules share into one file: src/core.ts has to name each file that another module opens.
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";

const src = join(import.meta.dirname, "../src");
const shared = /from "(?:\.\.\/)+((?:quantity|assessment)\/[^"]+\.ts)"/g;

it("src/core.ts names every shared file that another module takes something of", () => {
  const core = readFileSync(join(src, "core.ts"), "utf8");
  const files = readdirSync(src, { recursive: true, encoding: "utf8" }).filter(
    (file) => /^(?!quantity|assessment).*\/.*\.ts$/.test(file) && !file.includes("generate/"),
  );
  const taken = new Set(
    files.flatMap((file) => {
      const text = readFileSync(join(src, file), "utf8").replace(/^import type [^;]*;$/gm, "");
      return [...text.matchAll(shared)].map(([, target = ""]) => target);
    }),
  );
  expect(taken.size).toBeGreaterThan(10);
  const missing = [...taken].filter(
    (file) => !file.endsWith("/index.ts") && !file.includes("/units/") && !core.includes(file),
  );
  expect(missing).toEqual([]);
});
