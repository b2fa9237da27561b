import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { bundle } from "../package/bundle.ts";

const root = join(import.meta.dirname, "../..");

/** Words alone, so that line breaks and comment marks do not count. */
const words = (text: string) => text.replaceAll(/[\s*]+/g, " ").trim();

it("carries the license notice of the reader of separated values that a bundle takes in", async () => {
  const { text, inputs } = await bundle(
    `import * as logs from "hvac-install-math/logs"; globalThis.use = logs;`,
  );
  const packages = inputs.flatMap((file) => /node_modules\/([^/]+)/.exec(file)?.[1] ?? []);
  expect([...new Set(packages)]).toEqual(["d3-dsv"]);
  const license = readFileSync(join(root, "node_modules/d3-dsv/LICENSE"), "utf8").trim();
  const [copyright = "", ...terms] = license.split("\n\n");
  expect(words(text)).toContain(words(copyright));
  expect(words(text)).toContain(words(terms.join(" ")));
});
