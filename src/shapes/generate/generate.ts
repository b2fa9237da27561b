// What are the generated files? All of them by path, formatted, made in memory.
// Follows settings.ts. Does not cover writing them: main.ts does.
import { execFileSync } from "node:child_process";
import ts from "typescript";
import { type Derived, Deriver } from "./derive.ts";
import { exportsOf, faceOf, wanted } from "./functions.ts";
import { programOf, root } from "./program.ts";
import {
  codecsFile,
  indexFile,
  recordFile,
  recordWordsFile,
  shapesFile,
  typeImports,
  type Written,
} from "./render.ts";
import { modules } from "./settings.ts";

const folder = "src/wire/generated";
const memoryPath = `${root}/${folder}/types-in-memory.ts`;

/** What each module exports that none below it does. */
function exportedBy(program: ts.Program): ReadonlyMap<string, readonly string[]> {
  const seen = new Set<string>();
  const all = modules.map((module) => {
    const own = [...exportsOf(program, module).keys()].filter((name) => !seen.has(name));
    for (const name of own) seen.add(name);
    return [module, own] as const;
  });
  return new Map(all.filter(([, own]) => own.length > 0));
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
  const imports = typeImports(exportedBy(first));
  const codecs = wanted(first);
  // A file that names the type of every codec, for the compiler to look at.
  const text =
    imports + codecs.map(({ name, type }) => `export type ${name} = ${type};`).join("\n");
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

  const files = new Map<string, Written>();
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
    files.set(`${folder}/${module}.ts`, codecsFile(module, own, imports, constants));
  }
  files.set(`${folder}/index.ts`, indexFile(withCodecs));
  files.set(`${folder}/record-words.ts`, recordWordsFile(record.constants));
  files.set(
    "src/commissioning/format/generated/record-shape.ts",
    recordFile("InstallationRecordShape", record.constants),
  );
  return new Map([...files].map(([path, file]) => [path, formatted(path, file)]));
}

/** The text as the formatter leaves it, without the imports that it does not need. */
function formatted(path: string, { question, text }: Written): string {
  const biome = `${root}/node_modules/.bin/biome`;
  const args = ["check", "--write", "--unsafe", `--stdin-file-path=${path}`];
  const body = execFileSync(biome, args, { cwd: root, input: text, encoding: "utf8" });
  return `// ${question}
// Derived from the types by \`npm run generate\`; a test holds it current. Not edited by hand.

${body}`;
}
