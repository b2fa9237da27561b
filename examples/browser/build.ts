// Bundles the page with esbuild. The library comes from the built package, through its own `exports`.
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { type BuildOptions, build } from "esbuild";

/** What esbuild is told; `serve.ts` uses the same. */
export function pageOptions(folder: string): BuildOptions & { metafile: true } {
  return {
    absWorkingDir: import.meta.dirname,
    entryPoints: ["page.ts", "page.css", "index.html"],
    outdir: folder,
    bundle: true,
    minify: true,
    sourcemap: true,
    metafile: true,
    format: "esm",
    target: "es2022",
    charset: "utf8",
    loader: { ".html": "copy" },
    // This repository's own tsconfig.json leads to the sources; an app has the package.
    tsconfigRaw: "{}",
    logLevel: "warning",
  };
}

/** Writes the page into a folder; the answer says what it weighs and what makes it up. */
export async function buildPage(folder: string): Promise<string> {
  const { metafile } = await build(pageOptions(folder));
  const kB = (bytes: number) => `${(bytes / 1000).toFixed(1)} kB`;
  const [, script] = Object.entries(metafile.outputs).find(([name]) => name.endsWith(".js")) ?? [];
  const weights = new Map<string, number>();
  for (const [name, { bytesInOutput }] of Object.entries(script?.inputs ?? {})) {
    const [, part = "this page"] = /(?:\.\.\/dist|node_modules)\/([^/]+)/.exec(name) ?? [];
    weights.set(part, (weights.get(part) ?? 0) + bytesInOutput);
  }
  const parts = [...weights].sort(([, a], [, b]) => b - a);
  const size = gzipSync(readFileSync(join(folder, "page.js"))).length;
  return [
    `page.js: ${kB(script?.bytes ?? 0)}, ${kB(size)} with gzip; before gzip it holds`,
    ...parts.map(([name, bytes]) => `  ${name} ${kB(bytes)}`),
  ].join("\n");
}
