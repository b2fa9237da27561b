import { execFileSync } from "node:child_process";
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, inject, it } from "vitest";
import { moduleSetups, typeComplaints } from "./type-check.ts";

const root = join(import.meta.dirname, "../..");
const consumer = inject("consumer");
const installed = join(consumer, "node_modules/hvac-install-math");
const { exports: declared, ...manifest } = JSON.parse(
  readFileSync(join(installed, "package.json"), "utf8"),
) as { exports: Record<string, unknown>; dependencies?: object; scripts: Record<string, string> };
const subpaths = Object.keys(declared)
  .filter((name) => !name.endsWith(".json"))
  .map((name) => name.replace(/^\./, "hvac-install-math"));

const run = (command: string, args: string[], cwd = consumer) =>
  execFileSync(command, args, { cwd, encoding: "utf8", stdio: ["ignore", "pipe", "pipe"] });

describe("the packed package", () => {
  it("holds the build, the license, the readme and the changelog, and nothing else", () => {
    const top = readdirSync(installed).sort();
    expect(top).toEqual(["CHANGELOG.md", "LICENSE", "README.md", "dist", "package.json"]);
    const endings = readdirSync(join(installed, "dist"), { recursive: true, encoding: "utf8" })
      .filter((name) => name.includes("."))
      .map((name) => name.replace(/^[^.]*/, ""));
    expect([...new Set(endings)].sort()).toEqual([".cjs", ".d.cts", ".d.ts", ".json", ".mjs"]);
  });

  it("has a subpath for every module and a module for every subpath", () => {
    const modules = readdirSync(join(root, "src"), { withFileTypes: true })
      .filter(
        (entry) => entry.isDirectory() && entry.name !== "language" && entry.name !== "shapes",
      )
      .map(({ name }) => name)
      .concat("language/en", "language/es", "language/fr", "wire/zod")
      .map((name) => `hvac-install-math/${name}`);
    expect(subpaths.sort()).toEqual(["hvac-install-math", ...modules].sort());
  });

  it("depends on mathjs and zod alone and runs no script at installation", () => {
    expect(Object.keys(manifest.dependencies ?? {})).toEqual(["mathjs", "zod"]);
    for (const name of ["preinstall", "install", "postinstall", "prepare"]) {
      expect(manifest.scripts[name]).toBeUndefined();
    }
  });

  it("passes publint", () => {
    expect(run("npx", ["publint", "--strict", installed], root)).toContain("All good!");
  });

  it("resolves its types under node16 and bundler for ESM and CommonJS", {
    timeout: 120_000,
  }, () => {
    const tarball = readdirSync(consumer).find((name) => name.endsWith(".tgz")) ?? "";
    // node10 knows no subpath exports; the profile leaves it out of the exit code, not of the list
    const report = run(
      "npx",
      ["attw", join(consumer, tarball), "--profile", "node16", "--format", "json"],
      root,
    );
    const { problems } = JSON.parse(report).analysis as { problems: { resolutionKind?: string }[] };
    expect(problems.filter(({ resolutionKind }) => resolutionKind !== "node10")).toEqual([]);
  });

  it.each(subpaths)("imports and requires %s with the same names", (subpath) => {
    const names = `Object.keys(m).sort().join()`;
    const esm = run("node", [
      "--input-type=module",
      "-e",
      `import * as m from "${subpath}"; console.log(${names})`,
    ]);
    const cjs = run("node", ["-e", `const m = require("${subpath}"); console.log(${names})`]);
    expect(esm.length).toBeGreaterThan(3);
    expect(cjs).toBe(esm);
  });

  it("bundles the package that draws paths, with its license and without its types", () => {
    const built = (end: string) => readFileSync(join(installed, `dist/plots/index${end}`), "utf8");
    for (const ending of [".mjs", ".cjs"]) {
      expect(built(ending)).toMatch(
        /Contains parts of d3-array and d3-shape[\s\S]*Permission to use, copy, modify/,
      );
      expect(built(ending)).not.toMatch(/(?:from ?|require\()"d3/);
    }
    for (const ending of [".d.ts", ".d.cts"]) expect(built(ending)).not.toMatch(/from "d3/);
  });

  it.each(moduleSetups)(
    "type-checks a strict project, file %s, module %s, resolution %s",
    (...setup) => {
      const compiler = join(root, "node_modules/typescript/bin/tsc");
      const plain = subpaths.filter((name) => !name.endsWith("/zod"));
      expect(typeComplaints(compiler, consumer, plain, setup)).toBe("");
      expect(typeComplaints(compiler, consumer, subpaths, setup)).toBe("");
    },
  );
});
