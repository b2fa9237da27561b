// Every ```ts and ```tsx block in a doc comment under src, in README.md and in docs/*.md compiles and runs,
// and every line that ends in `// => text` gives that text.
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join, relative } from "node:path";
import ts from "typescript";
import { afterAll, beforeAll, describe, expect, it } from "vitest";

const root = join(import.meta.dirname, "..");
const generated = join(import.meta.dirname, ".generated");
mkdirSync(generated, { recursive: true });
/** A folder of this run alone, below the project so that its imports resolve. */
const folder = mkdtempSync(join(generated, "run-"));

interface Example {
  readonly from: string;
  readonly code: string;
  readonly file: string;
}

function filesUnder(path: string, ending: string): string[] {
  return readdirSync(path, { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(ending) && !/node_modules|^site|^generated/.test(name))
    .map((name) => join(path, name));
}

function examplesIn(path: string): Example[] {
  const text = readFileSync(path, "utf8");
  const source = path.endsWith(".ts") ? text.replace(/^[ \t]*\* ?/gm, "") : text;
  return [...source.matchAll(/^```(tsx?)\n([\s\S]*?)^```/gm)].map(([, kind, code = ""], i) => ({
    from: `${relative(root, path)} #${i + 1}`,
    code,
    file: join(folder, `${relative(root, path).replaceAll(/[^\w]+/g, "-")}-${i + 1}.${kind}`),
  }));
}

/** `expression; // => text` becomes a call that records the text beside what was expected. */
function instrument(code: string): string {
  const lines = code.split("\n").map((line) => {
    const found = /^(\s*)(?:(const|let) (\w+)(?:: [^=]+)? = )?(.+?);?\s*\/\/ => (.*)$/.exec(line);
    if (!found) return line;
    const [, indent, keyword, name, expression, expected] = found;
    const text = JSON.stringify(expected);
    return keyword
      ? `${indent}${keyword} ${name} = ${expression}; results.push([String(${name}), ${text}]);`
      : `${indent}results.push([String(${expression}), ${text}]);`;
  });
  return `export const results: [string, string][] = [];\n${lines.join("\n")}\n`;
}

const examples = [
  ...filesUnder(join(root, "src"), ".ts"),
  ...filesUnder(join(root, "docs"), ".md"),
  join(root, "README.md"),
].flatMap(examplesIn);

beforeAll(() => {
  for (const { file, code } of examples) writeFileSync(file, instrument(code));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe("every example in the docs", () => {
  it("compiles under the project's own settings", { timeout: 120_000 }, () => {
    const config = ts.readConfigFile(join(root, "tsconfig.json"), ts.sys.readFile).config;
    const { options } = ts.parseJsonConfigFileContent(config, ts.sys, root);
    const program = ts.createProgram(
      examples.map(({ file }) => file),
      {
        ...options,
        lib: ["lib.es2022.d.ts", "lib.dom.d.ts"],
        noUnusedLocals: false,
        isolatedDeclarations: false,
        declaration: false,
      },
    );
    const messages = ts
      .getPreEmitDiagnostics(program)
      .filter(({ file }) => file?.fileName.includes(".generated"))
      .map(({ file, messageText }) => {
        const example = examples.find(
          (one) => file && one.file.endsWith(file.fileName.split("/").at(-1) ?? "?"),
        );
        return `${example?.from}: ${ts.flattenDiagnosticMessageText(messageText, "\n")}`;
      });
    expect(messages).toEqual([]);
  });

  it.each(examples)("gives what it says: $from", async ({ file }) => {
    const { results } = (await import(/* @vite-ignore */ file)) as { results: [string, string][] };
    for (const [ours, expected] of results) expect(ours).toBe(expected);
  });
});
