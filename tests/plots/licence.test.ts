import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { bundle } from "../package/bundle.ts";

const root = join(import.meta.dirname, "../..");

/** Words alone, so that line breaks and comment marks do not count. */
const words = (text: string) => text.replaceAll(/[\s*]+/g, " ").trim();

it("carries the license notice of every package that a bundle takes in", async () => {
  const { text, inputs } = await bundle(
    `import * as plots from "hvac-install-math/plots"; globalThis.use = plots;`,
  );
  const packages = new Set(
    inputs.flatMap((file) => /node_modules\/((?:@[^/]+\/)?[^/]+)/.exec(file)?.[1] ?? []),
  );
  expect(packages).toContain("d3-shape");
  for (const name of packages) {
    const license = readFileSync(join(root, "node_modules", name, "LICENSE"), "utf8").trim();
    const [copyright = "", ...terms] = license.split("\n\n");
    expect(words(text), name).toContain(words(copyright));
    expect(words(text), name).toContain(words(terms.join(" ")));
    expect(text, name).toMatch(new RegExp(`\\b${name}\\b`));
  }
});
