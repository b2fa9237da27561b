// All tests of a module and what they import as one script, in which a file is loaded when its tests are to run.
import { readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { pathToFileURL } from "node:url";
import { build } from "esbuild";

const shim = join(import.meta.dirname, "vitest-in-bundle.mjs");

/** Of a property with thousands of draws, what a mutant breaks is seen in the first of them or hardly ever. */
const mostRuns = 50;

const resolved = (root) => ({
  name: "resolved",
  setup({ onResolve, onLoad }) {
    onResolve({ filter: /^vitest$/ }, () => ({ path: shim }));
    onResolve({ filter: /^hvac-install-math(\/|$)/ }, ({ path }) => ({
      path: join(root, "src", path.slice("hvac-install-math".length), "index.ts"),
    }));
    onLoad({ filter: /\.(ts|mjs)$/ }, ({ path }) => {
      if (path.includes("/node_modules/")) return undefined;
      const contents = readFileSync(path, "utf8")
        .replaceAll(/(?<=numRuns: )\d+/g, (runs) => String(Math.min(Number(runs), mostRuns)))
        .replaceAll("import.meta.dirname", JSON.stringify(dirname(path)))
        .replaceAll("import.meta.url", JSON.stringify(pathToFileURL(path).href));
      return { contents, loader: path.endsWith(".ts") ? "ts" : "js" };
    });
  },
});

/**
 * @param {string} root
 * @param {string[]} files test files, as paths below the root
 * @param {string} outfile
 */
export const bundle = async (root, files, outfile) => {
  const loaders = files.map((file) => `${JSON.stringify(file)}: () => import("./${file}")`);
  const contents = `
    import "./tests/fixed-seed.ts";
    import fc from "fast-check";
    fc.configureGlobal({ ...fc.readConfigureGlobal(), endOnFailure: true }); // no search for the smallest failure
    export { startTests } from ${JSON.stringify(shim)};
    export const load = {${loaders.join(",\n")}};`;
  await build({
    stdin: { contents, resolveDir: root, loader: "ts" },
    outfile,
    bundle: true,
    format: "cjs",
    platform: "node",
    target: "node20",
    ignoreAnnotations: true, // package.json says that no file does anything by being loaded: of the tests that is not so
    external: ["typescript", "zod", "esbuild", "ajv"],
    plugins: [resolved(root)],
    logLevel: "error",
  });
};
