import { readFileSync } from "node:fs";
import { join } from "node:path";
import ts from "typescript";
import { expect, it } from "vitest";

const root = join(import.meta.dirname, "../..");
const file = join(import.meta.dirname, "misuse.test-d.ts");
const text = readFileSync(file, "utf8");
const directive = /\/\/ @ts-expect-error (\d+): .+$/;

/** What the compiler says of the file once the directives are gone. */
function diagnostics(): readonly ts.Diagnostic[] {
  const config = ts.readConfigFile(join(root, "tsconfig.json"), ts.sys.readFile).config;
  const { options } = ts.parseJsonConfigFileContent(config, ts.sys, root);
  const host = ts.createCompilerHost(options);
  const read = host.getSourceFile;
  const bare = text.replaceAll("@ts-expect-error", "");
  host.getSourceFile = (name, target, ...rest) =>
    name === file ? ts.createSourceFile(name, bare, target) : read(name, target, ...rest);
  const program = ts.createProgram([file], options, host);
  return program.getSemanticDiagnostics(program.getSourceFile(file));
}

const found = diagnostics();

/** The complaints by line. */
function complaints(): Map<number, number[]> {
  const bare = text.replaceAll("@ts-expect-error", "");
  const byLine = new Map<number, number[]>();
  for (const { start = 0, code } of found) {
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
    const match = directive.exec(line);
    return match ? [[i + 1, [Number(match[1])]]] : [];
  });
  expect(expected.length).toBeGreaterThanOrEqual(25);
  expect(text.match(/@ts-expect-error/g)).toHaveLength(expected.length);
  expect([...complaints()]).toEqual(expected);
});

it("scaling a point is refused in words that say what to do", () => {
  const said = found
    .map(({ messageText }) => ts.flattenDiagnosticMessageText(messageText, " "))
    .filter((message) => message.includes("cannot be multiplied or divided"));
  expect(said.length).toBeGreaterThanOrEqual(3);
});
