// A TypeDoc plugin: the scripts of the playground. The worker holds the built package as `npm run build` left it in
// dist, one file for each module, fetched when the code on the page imports it.
import { copyFileSync, existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";

const root = fileURLToPath(new URL("../../", import.meta.url));
const { name, exports } = JSON.parse(readFileSync(join(root, "package.json"), "utf8"));

/** A module that opens each subpath of the package by its name. */
const packageModules = {
  name: "package-modules",
  setup({ onResolve, onLoad }) {
    onResolve({ filter: /^package-modules$/ }, ({ path }) => ({ path, namespace: "package" }));
    onLoad({ filter: /./, namespace: "package" }, () => {
      const lines = Object.entries(exports)
        .filter(([, there]) => typeof there === "object")
        .map(([subpath, there]) => {
          const file = JSON.stringify(join(root, there.import.default));
          return `${JSON.stringify(join(name, subpath))}: () => import(${file}),`;
        });
      return {
        contents: `export const packageModules = {\n${lines.join("\n")}\n};`,
        resolveDir: root,
      };
    });
  },
};

/** @param {import("typedoc").Application} app */
export function load(app) {
  app.renderer.postRenderAsyncJobs.push(async ({ outputDirectory }) => {
    if (!existsSync(join(root, "dist/index.mjs"))) {
      app.logger.error("dist is missing: the playground runs the built package. npm run build");
      return;
    }
    const assets = join(outputDirectory, "assets");
    copyFileSync(join(root, "docs/playground/playground.js"), join(assets, "playground.js"));
    await build({
      entryPoints: [join(root, "docs/playground/worker.mjs")],
      outdir: join(assets, "playground"),
      bundle: true,
      splitting: true,
      minify: true,
      format: "esm",
      legalComments: "inline",
      plugins: [packageModules],
    });
  });
}
