import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, inject, it } from "vitest";
import { moduleSetups, typeComplaints } from "../package/type-check.ts";
import { installed } from "./installed.ts";

const consumer = inject("consumer");
const { exports: declared } = JSON.parse(
  readFileSync(join(consumer, "node_modules/hvac-install-math/package.json"), "utf8"),
) as { exports: Record<string, unknown> };
const subpaths = Object.keys(declared) // a JSON file has no types of ours: how it is imported is the compiler's matter
  .filter((name) => !name.endsWith(".json"))
  .map((name) => name.replace(/^\./, "hvac-install-math"));

const compilers = ["5.5", "5.6", "5.7", "5.8", "5.9"];
it.each(compilers.flatMap((version) => moduleSetups.map((setup) => [version, ...setup] as const)))(
  "TypeScript %s type-checks a strict project, file %s, module %s, resolution %s",
  (version, ...setup) => {
    const compiler = installed(`typescript${version}/bin/tsc`);
    expect(typeComplaints(compiler, consumer, subpaths, setup)).toBe("");
  },
);
