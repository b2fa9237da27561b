// mathjs stays behind parseQuantity: nothing else carries it, and it comes in its small form.
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { bundle } from "../package/bundle.ts";

const src = join(import.meta.dirname, "../../src");
const entry = (names: string) =>
  `import { ${names} } from "hvac-install-math/field-text"; globalThis.used = [${names}];`;

it("is imported by one file of the library", () => {
  const importing = readdirSync(src, { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".ts"))
    .filter((file) => /from "mathjs|import\("mathjs/.test(readFileSync(join(src, file), "utf8")));
  expect(importing).toEqual([join("field-text", "syntax-tree.ts")]);
});

it("is left out of a bundle that only lists units", async () => {
  const { inputs, gzip } = await bundle(entry("typedUnits, isFieldTextError"));
  expect(inputs.filter((name) => name.includes("mathjs"))).toEqual([]);
  expect(gzip).toBeLessThan(12_000);
});

it("adds 40 kB after gzip, where the named import adds 111 kB", async () => {
  const small = await bundle(
    `import { create, parseDependencies } from "mathjs/number"; globalThis.used = create({ parseDependencies } as never).parse;`,
  );
  const named = await bundle(`import { parse } from "mathjs/number"; globalThis.used = parse;`);
  expect(small.gzip).toBeGreaterThan(38_000);
  expect(small.gzip).toBeLessThan(42_000);
  expect(named.gzip).toBeGreaterThan(105_000);
  const ours = await bundle(entry("parseQuantity"));
  expect(ours.gzip - small.gzip).toBeLessThan(14_600);
});
