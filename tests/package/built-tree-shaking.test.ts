// What an app carries of the built files, which are not the source: one file holds a whole module there.
import { readdirSync } from "node:fs";
import { refrigerants } from "hvac-install-math/refrigerants";
import { describe, expect, it } from "vitest";
import { bundle } from "./bundle.ts";

const src = new URL("../../src/", import.meta.url);
const foldersIn = (folder: string) =>
  readdirSync(new URL(folder, src), { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map(({ name }) => name);
const modules = foldersIn(".")
  .filter((name) => name !== "shapes") // no subpath
  .flatMap((name) =>
    name === "language" ? foldersIn("language").map((language) => `${name}/${language}`) : [name],
  );
const found = (text: string, pattern: RegExp) =>
  [...text.matchAll(pattern)].map((match) => match[1]).sort();

describe("a bundle of the built package", () => {
  it("carries only the unit that is used and the unit of its differences", async () => {
    const { text } = await bundle(`export { psig } from "hvac-install-math/quantity";`, "built");
    expect(found(text, /\("[a-zA-Z]+","([^"]+)"/g)).toEqual(["psi", "psig"]);
  });

  it("carries only the refrigerant that is used", async () => {
    for (const { designation } of refrigerants) {
      const name = designation.replaceAll(/[^A-Za-z0-9]/g, "");
      const code = `export { ${name}, bubblePressure } from "hvac-install-math/refrigerants";`;
      const { text } = await bundle(code, "built");
      expect(found(text, /designation:"([^"]+)",name:/g)).toEqual([designation]);
    }
  });

  it.each(["", ...modules.map((name) => `/${name}`)])(
    "leaves nothing behind of hvac-install-math%s when nothing is used",
    async (module) => {
      const { text } = await bundle(`import "hvac-install-math${module}";`, "built");
      expect(text.trim()).toBe("");
    },
  );
});
