// Where does what a function answers come from? Its doc comment says it.
// The rule: every function of a trade module (a formula, limit or figure) has a line "Source:"; types, texts, and the
// functions of the modules that carry, show or word a value have none to name.
import { readdirSync, readFileSync } from "node:fs";
import { join, sep } from "node:path";
import ts from "typescript";
import { expect, it } from "vitest";

const src = join(import.meta.dirname, "../../src");

/** Modules that carry, show or word what others have computed. */
const carrying = [
  "commissioning",
  "display",
  "field-text",
  "language",
  "logs",
  "plots",
  "quantity",
  "read-quantity",
  "report",
  "shapes",
  "sources",
  "wire",
];

const files = readdirSync(src, { recursive: true, encoding: "utf8" }).filter((file) =>
  file.endsWith(".ts"),
);
const textOf = (file: string) => readFileSync(join(src, file), "utf8");

const treeOf = (file: string) =>
  ts.createSourceFile(file, textOf(file), ts.ScriptTarget.Latest, true);

/** Whether the index of a module hands out what a file of it calls so. */
function isExported(module: string, file: string, name: string): boolean {
  return treeOf(join(module, "index.ts")).statements.some((one) => {
    if (!ts.isExportDeclaration(one) || !one.moduleSpecifier) return false;
    if (join(module, one.moduleSpecifier.getText().slice(1, -1)) !== file) return false;
    const names = one.exportClause;
    return (
      !names || (ts.isNamedExports(names) && names.elements.some((own) => own.name.text === name))
    );
  });
}

it("every function of a trade module names its source", () => {
  const all = files.flatMap((file) => {
    const [module = ""] = file.split(sep);
    if (!file.includes(sep) || carrying.includes(module)) return [];
    const tree = treeOf(file);
    return tree.statements
      .filter(ts.isFunctionDeclaration)
      .filter((one) => one.modifiers?.some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword))
      .filter((one) => isExported(module, file, one.name?.text ?? ""))
      .filter((one) => one.type?.getText(tree) !== "string")
      .filter((one) => !isOverloaded(one, tree))
      .map((one) => ({
        name: `${file}: ${one.name?.text}`,
        doc: one.getFullText().slice(0, one.getLeadingTriviaWidth()),
      }));
  });
  expect(all.length).toBeGreaterThan(100);
  expect(all.filter(({ doc }) => !/Source/.test(doc)).map(({ name }) => name)).toEqual([]);
});

/** Whether an earlier overload has the doc comment. */
function isOverloaded(one: ts.FunctionDeclaration, tree: ts.SourceFile): boolean {
  const first = tree.statements.find(
    (other) => ts.isFunctionDeclaration(other) && other.name?.text === one.name?.text,
  );
  return first !== one;
}

it("no comment names a source that is none", () => {
  const empty = files.filter((file) => /Source: none(?! for)/.test(textOf(file)));
  expect(empty).toEqual([]);
});
