// Where the pinned runtimes lie: `npm ci --prefix tests/runtimes` brings them.
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";

const here = import.meta.dirname;

/** The pinned versions by the name of the dependency, without the package that an alias stands for. */
export const versions: Readonly<Record<string, string>> = Object.fromEntries(
  Object.entries(
    (JSON.parse(readFileSync(join(here, "package.json"), "utf8")) as { dependencies: object })
      .dependencies,
  ).map(([name, pinned]) => [name, String(pinned).replace(/^.*@/, "")]),
);

/** A file of an installed runtime. */
export function installed(file: string): string {
  const path = join(here, "node_modules", file);
  if (!existsSync(path)) throw new Error(`no ${file}: run "npm ci --prefix tests/runtimes" first`);
  return path;
}
