// What an app gets along with the package: who, under which license, and that none runs a script at installation.
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";

interface Locked {
  readonly license?: string;
  readonly dev?: boolean;
  readonly hasInstallScript?: boolean;
}
const { packages } = JSON.parse(readFileSync("package-lock.json", "utf8")) as {
  packages: Readonly<Record<string, Locked>>;
};
const installed = Object.entries(packages)
  .filter(([path, { dev }]) => path !== "" && !dev)
  .map(([path, one]) => ({ ...one, name: path.replace(/^.*node_modules\//, "") }));

/** The table "What it brings along" of the README: each license stands behind the names that it covers. */
const listed = new Map<string, string>();
for (const [, cell = ""] of readFileSync("README.md", "utf8")
  .split("What it brings along")[1]
  ?.matchAll(/^\| `.*?\| (.*) \|$/gm) ?? []) {
  for (const [, names = "", license = ""] of cell.matchAll(/([^()]+) \(([^)]+)\)/g)) {
    for (const name of names.match(/@?[a-z0-9-]+(?:[./][a-z0-9-]+)*/g) ?? []) {
      listed.set(name, license);
    }
  }
}

describe("what the package brings along", () => {
  it("starts with the two packages of the manifest", () => {
    const { dependencies } = JSON.parse(readFileSync("package.json", "utf8"));
    expect(Object.keys(dependencies)).toEqual(["mathjs", "zod"]);
    expect(installed.map(({ name }) => name)).toEqual(expect.arrayContaining(["mathjs", "zod"]));
  });

  it.each(installed)("$name is listed in the README under its license, $license", (one) => {
    expect(listed.get(one.name)).toBe(one.license);
    expect(["MIT", "Apache-2.0", "ISC"]).toContain(one.license);
  });

  it("runs no script at installation", () => {
    expect(installed.filter(({ hasInstallScript }) => hasInstallScript)).toEqual([]);
  });

  it.each(["d3-array", "d3-dsv", "d3-shape", "d3-path"])(
    "%s is built in under its license",
    (name) => {
      expect(listed.get(name)).toBe(packages[`node_modules/${name}`]?.license);
    },
  );
});
