import { readdirSync } from "node:fs";
import { expect, it } from "vitest";
import { bundle } from "./bundle.ts";

const src = new URL("../../src/", import.meta.url);
const foldersIn = (folder: string) =>
  readdirSync(new URL(folder, src), { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map(({ name }) => name);
const modules = foldersIn(".").flatMap((name) =>
  name === "language" ? foldersIn("language").map((language) => `${name}/${language}`) : [name],
);

/** The modules that stand on another package, and that package with what it brings along. */
const dependencyOf: Readonly<Record<string, RegExp>> = {
  "/field-text":
    /node_modules\/(mathjs|typed-function|escape-latex|tiny-emitter|@babel\/runtime)\//,
  "/logs": /node_modules\/d3-dsv\//,
  "/plots": /node_modules\/(d3-(array|path|shape)|internmap)\//,
  "/wire": /node_modules\/zod\//,
};

it("carries only the unit that is used and the unit of its differences", async () => {
  const { text } = await bundle(
    `import { psig } from "hvac-install-math/quantity"; globalThis.used = psig(118);`,
  );
  const symbols = [...text.matchAll(/\("[a-zA-Z]+","([^"]+)"/g)].map((match) => match[1]);
  expect(symbols.sort()).toEqual(["psi", "psig"]);
});

it("leaves nothing behind when nothing is used", async () => {
  const { text } = await bundle(`import "hvac-install-math";`);
  expect(text.trim()).toBe("");
});

it.each(["", ...modules.map((name) => `/${name}`)])(
  "pulls no more than its own dependency into hvac-install-math%s",
  async (module) => {
    const { inputs } = await bundle(`export * from "hvac-install-math${module}";`);
    const packages = inputs.filter((name) => /node_modules/.test(name));
    const own = dependencyOf[module];
    expect(packages.filter((name) => !own?.test(name))).toEqual([]);
  },
);

it("carries only the refrigerant that is used", async () => {
  const { inputs } = await bundle(
    `import { bubblePressure, R32 } from "hvac-install-math/refrigerants";
globalThis.used = [bubblePressure, R32];`,
  );
  expect(inputs.filter((name) => name.includes("refrigerants/data/"))).toEqual([
    "src/refrigerants/data/r32.ts",
  ]);
});

it("carries only the rule set that is used", async () => {
  const { inputs } = await bundle(
    `import { circuitFromNameplate, nec2023 } from "hvac-install-math/circuit-protection";
globalThis.used = [circuitFromNameplate, nec2023];`,
  );
  const editions = inputs.filter((name) => /rules\/(nec-20|iec|cec)/.test(name));
  expect(editions).toEqual(["src/circuit-protection/rules/nec-2023.ts"]);
});
