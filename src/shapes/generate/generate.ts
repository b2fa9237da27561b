// What are the generated files? All of them by path, formatted, made in memory.
// Follows settings.ts. Does not cover writing them: main.ts does.
import { execFileSync } from "node:child_process";
import ts from "typescript";
import { type Derived, Deriver } from "./derive.ts";
import { exportsOf, faceOf, type Wanted, wanted } from "./functions.ts";
import { programOf, root } from "./program.ts";
import { codecsFile, indexFile, recordFile, recordWordsFile, shapesFile } from "./render.ts";
import { modules } from "./settings.ts";

const folder = "src/wire/generated";
const memoryPath = `${root}/${folder}/types-in-memory.ts`;

/** A file that names the type of every codec, for the compiler to look at. */
function typesText(codecs: readonly Wanted[], exported: ReadonlyMap<string, string>): string {
  const from = new Map<string, string[]>();
  for (const [name, module] of exported) from.set(module, [...(from.get(module) ?? []), name]);
  const imports = [...from].map(
    ([module, names]) => `import type { ${names.join(", ")} } from "../../${module}/index.ts";`,
  );
  const helpers = `import type { ArgumentsOf, InputOf, ResultOf } from "../arguments-of.ts";`;
  const types = codecs.map(({ name, type }) => `export type ${name} = ${type};`);
  return [...imports, helpers, ...types].join("\n");
}

/** The type behind an exported name of a file. */
function typeNamed(program: ts.Program, path: string, name: string): ts.Type {
  const checker = program.getTypeChecker();
  const file = program.getSourceFile(path);
  const symbol = file && checker.getSymbolAtLocation(file);
  const found = symbol && checker.getExportsOfModule(symbol).find((one) => one.name === name);
  if (!found) throw new Error(`${path} exports no ${name}`);
  const own = found.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(found) : found;
  return checker.getDeclaredTypeOfSymbol(own);
}

/** Whether a shape is that of a single figure or word. */
function isLeaf({ text, uses }: Derived): boolean {
  const [only] = [...uses].filter(({ name }) => `${name}()` === text);
  return /^"|^\{ words:|^\{ type: "\w+", words:/.test(only?.text ?? text);
}

/** Every generated file by its path below the project, formatted. */
export function generate(): ReadonlyMap<string, string> {
  const faces = modules.map(faceOf).filter((one) => ts.sys.fileExists(one));
  const first = programOf(faces, undefined);
  const exported = new Map<string, string>(); // the lowest module that exports a name
  for (const module of modules) {
    for (const name of exportsOf(first, module).keys())
      if (!exported.has(name)) exported.set(name, module);
  }
  const codecs = wanted(first);
  const text = typesText(codecs, exported);
  const program = programOf(faces, { path: memoryPath, text }, first);
  const checker = program.getTypeChecker();
  const refrigerant = typeNamed(program, faceOf("refrigerants"), "Refrigerant");

  const deriver = new Deriver(checker, refrigerant, true);
  const derived = codecs
    .map((one) => ({
      wanted: one,
      shape: deriver.derive(typeNamed(program, memoryPath, one.name), one.name, one.module),
    }))
    .filter(({ wanted: { onlyIfMore }, shape }) => !(onlyIfMore && isLeaf(shape)));
  const record = new Deriver(checker, refrigerant, false);
  record.derive(
    typeNamed(program, faceOf("commissioning"), "InstallationRecord"),
    "InstallationRecord",
    "commissioning",
  );

  const files = new Map<string, string>();
  const { constants } = deriver;
  for (const module of modules) {
    if (!constants.some((one) => one.module === module)) continue;
    files.set(`${folder}/${module}.shapes.ts`, shapesFile(module, constants));
  }
  const withCodecs = modules.filter((module) =>
    derived.some((one) => one.wanted.module === module),
  );
  for (const module of withCodecs) {
    const own = derived.filter((one) => one.wanted.module === module);
    files.set(`${folder}/${module}.ts`, codecsFile(module, own, constants, exported));
  }
  files.set(`${folder}/index.ts`, indexFile(withCodecs));
  files.set(`${folder}/record-words.ts`, recordWordsFile(record.constants));
  files.set(
    "src/commissioning/generated/record-shape.ts",
    recordFile("InstallationRecordShape", record.constants),
  );
  return new Map([...files].map(([path, text]) => [path, formatted(path, text)]));
}

function formatted(path: string, text: string): string {
  const biome = `${root}/node_modules/.bin/biome`;
  const args = ["check", "--write", `--stdin-file-path=${path}`];
  return execFileSync(biome, args, { cwd: root, input: text, encoding: "utf8" });
}
