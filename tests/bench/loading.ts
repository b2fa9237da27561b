// What does a subpath take to import, and to type-check, above an empty module?
import { execFileSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import ts from "typescript";
import { median } from "./measure.ts";
import type { Section } from "./section.ts";

const root = join(import.meta.dirname, "../..");
const { exports: declared } = JSON.parse(readFileSync(join(root, "package.json"), "utf8")) as {
  exports: Record<string, unknown>;
};
const subpaths = Object.keys(declared)
  .filter((name) => !name.endsWith(".json"))
  .map((name) => name.replace(/^\./, "hvac-install-math"));
const empty = "empty";

/** A project that has the package and an empty one installed. */
function makeProject(): string {
  const project = mkdtempSync(join(tmpdir(), "hvac-install-math-bench-"));
  const modules = join(project, "node_modules");
  mkdirSync(join(modules, empty), { recursive: true });
  writeFileSync(join(project, "package.json"), `{"type":"module"}`);
  writeFileSync(
    join(modules, empty, "package.json"),
    `{"type":"module","exports":"./i.js","types":"./i.d.ts"}`,
  );
  writeFileSync(join(modules, empty, "i.js"), "export const nothing = 0;");
  writeFileSync(join(modules, empty, "i.d.ts"), "export declare const nothing: number;");
  symlinkSync(root, join(modules, "hvac-install-math"));
  return project;
}

/** ms until the import of a fresh process is done. */
function importTime(project: string, name: string): number {
  const code = `const t = process.hrtime.bigint(); await import("${name}"); console.log(String(Number(process.hrtime.bigint() - t) / 1e6))`;
  return Number(
    execFileSync("node", ["--input-type=module", "-e", code], { cwd: project, encoding: "utf8" }),
  );
}

const options: ts.CompilerOptions = {
  strict: true,
  noEmit: true,
  target: ts.ScriptTarget.ES2022,
  module: ts.ModuleKind.NodeNext,
  moduleResolution: ts.ModuleResolutionKind.NodeNext,
  types: [],
};
const host = ts.createCompilerHost(options);
const { getSourceFile } = host;
const standard = new Map<string, ts.SourceFile | undefined>();
host.getSourceFile = (name, ...rest) => {
  if (!/\/lib\.[^/]*d\.ts$/.test(name)) return getSourceFile.call(host, name, ...rest);
  if (!standard.has(name)) standard.set(name, getSourceFile.call(host, name, ...rest));
  return standard.get(name);
};

/** ms that the compiler takes for one file that uses all of a subpath; the standard library is read already. */
function typeCheckTime(project: string, name: string): number {
  const file = join(project, "use.mts");
  writeFileSync(file, `import * as all from "${name}";\nexport const used: typeof all = all;\n`);
  const start = performance.now();
  const program = ts.createProgram([file], options, host);
  const problems = ts.getPreEmitDiagnostics(program);
  const time = performance.now() - start;
  if (problems.length) throw new Error(ts.formatDiagnostics(problems, host));
  return time;
}

/** Medians of several rounds, each less the empty module just before: a machine changes its pace within a round. */
function above(rounds: number, time: (name: string) => number): Map<string, number> {
  const figures = new Map(subpaths.map((name) => [name, [] as number[]]));
  time(empty); // a compiler that is warm is what others have too
  for (let round = 0; round < rounds; round++) {
    for (const [name, list] of figures) {
      const base = time(empty);
      list.push(time(name) - base);
    }
  }
  return new Map([...figures].map(([name, list]) => [name, median(list)]));
}

export async function loading(): Promise<Section> {
  const project = makeProject();
  try {
    const imports = above(9, (name) => importTime(project, name));
    const checks = above(3, (name) => typeCheckTime(project, name));
    const ms = (value: number | undefined) => `${(value ?? Number.NaN).toFixed(1)} ms`;
    return {
      title: "Loading a subpath",
      text: "Above an empty module: the import in a fresh process, and the type check of a file that uses all of it. Budget of the import: 15 ms, and 25 ms for `commissioning`, `report` and `wire`; the root opens every module, and `field-text` loads mathjs.",
      columns: ["subpath", "import", "type check"],
      rows: subpaths.map((name) => [name, ms(imports.get(name)), ms(checks.get(name))]),
    };
  } finally {
    rmSync(project, { recursive: true, force: true });
  }
}
