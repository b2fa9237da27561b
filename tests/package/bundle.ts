// Bundles a line of code as an app's bundler would and says how large it is.
import { gzipSync } from "node:zlib";
import { build } from "esbuild";

const root = new URL("../..", import.meta.url).pathname;

/** A bundle of the code: its text, its sizes in bytes, and the files that went into it. */
export interface Bundle {
  readonly text: string;
  readonly minified: number;
  readonly gzip: number;
  readonly inputs: readonly string[];
}

/** Bundles and minifies code that imports from `hvac-install-math/…`, resolved to the source or to `dist`. */
export async function bundle(code: string, of: "source" | "built" = "source"): Promise<Bundle> {
  const result = await build({
    stdin: { contents: code, resolveDir: root, loader: "ts" },
    absWorkingDir: root,
    bundle: true,
    minify: true,
    format: "esm",
    target: "es2022",
    write: false,
    metafile: true,
    logLevel: "silent",
    // without the paths of tsconfig.json, the package finds itself through its own exports
    ...(of === "source" ? { tsconfig: `${root}tsconfig.json` } : { tsconfigRaw: {} }),
  });
  const output = result.outputFiles[0];
  if (!output) throw new Error("esbuild wrote nothing");
  const inputs = Object.entries(Object.values(result.metafile.outputs)[0]?.inputs ?? {})
    .filter(([, { bytesInOutput }]) => bytesInOutput > 0)
    .map(([name]) => name);
  const minified = output.contents.length;
  return {
    text: output.text,
    minified,
    gzip: gzipSync(output.contents, { level: 9 }).length,
    inputs,
  };
}
