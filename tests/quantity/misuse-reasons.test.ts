import { readFileSync } from "node:fs";
import { join } from "node:path";
import ts from "typescript";
import { expect, it } from "vitest";

const root = join(import.meta.dirname, "../..");
const file = join(import.meta.dirname, "misuse.test-d.ts");
const text = readFileSync(file, "utf8");
const directive = /\/\/ @ts-expect-error (\d+): .+$/;

/** The compiler's complaints about the file once the directives are gone, by line. */
function complaints(): Map<number, number[]> {
  const config = ts.readConfigFile(join(root, "tsconfig.json"), ts.sys.readFile).config;
  const { options } = ts.parseJsonConfigFileContent(config, ts.sys, root);
  const host = ts.createCompilerHost(options);
  const read = host.getSourceFile;
  const bare = text.replaceAll("@ts-expect-error", "");
  host.getSourceFile = (name, target, ...rest) =>
    name === file ? ts.createSourceFile(name, bare, target) : read(name, target, ...rest);
  const program = ts.createProgram([file], options, host);
  const byLine = new Map<number, number[]>();
  for (const { start = 0, code } of program.getSemanticDiagnostics(program.getSourceFile(file))) {
    const line = ts.getLineAndCharacterOfPosition(
      ts.createSourceFile(file, bare, ts.ScriptTarget.ES2022),
      start,
    ).line;
    byLine.set(line, [...new Set([...(byLine.get(line) ?? []), code])]);
  }
  return byLine;
}

it("every misuse is refused, and for the reason that stands beside it", () => {
  const expected = text.split("\n").flatMap((line, i): [number, number[]][] => {
    const found = directive.exec(line);
    return found ? [[i + 1, [Number(found[1])]]] : [];
  });
  expect(expected.length).toBeGreaterThanOrEqual(25);
  expect(text.match(/@ts-expect-error/g)).toHaveLength(expected.length);
  expect([...complaints()]).toEqual(expected);
});
