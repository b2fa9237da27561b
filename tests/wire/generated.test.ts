// The generated shapes and codecs are those of the types as they are; a type that has no form is refused by name.
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type ts from "typescript";
import { expect, it } from "vitest";
import { Deriver } from "../../src/shapes/generate/derive.ts";
import { generate } from "../../src/shapes/generate/generate.ts";
import { programOf, root } from "../../src/shapes/generate/program.ts";

it("are current: `npm run generate` would change nothing", { timeout: 300_000 }, () => {
  const files = generate();
  for (const [path, text] of files) expect(readFileSync(join(root, path), "utf8"), path).toBe(text);
  for (const folder of ["src/wire/generated", "src/commissioning/format/generated"]) {
    for (const name of readdirSync(join(root, folder)))
      expect([...files.keys()]).toContain(`${folder}/${name}`);
  }
});

const path = `${root}/src/wire/generated/of-this-test.ts`;
const text = `import type { Quantity, Unit } from "../../quantity/index.ts";
import type { IsoTime } from "../../shapes/index.ts";
export interface Lamp {
  /** How high it hangs. */
  readonly height: Quantity<"length">;
  readonly at?: IsoTime;
  readonly lit: boolean;
  readonly phases: 1 | 3;
  readonly pair: readonly [string, number];
  readonly unit?: Unit<"mass">;
  readonly gone?: never;
}
export type Post = { readonly kind: "wood"; readonly age: number } | { readonly kind: "steel"; readonly rust: Lamp };
export type Switched = { readonly lamp: Lamp; readonly turn: () => void };
export type Dated = { readonly when: Date };
export type Loose = { readonly field: any };`;

function derived(name: string): string {
  const program = programOf([], { path, text });
  const checker = program.getTypeChecker();
  const module = checker.getSymbolAtLocation(program.getSourceFile(path) as ts.SourceFile);
  const symbol = checker.getExportsOfModule(module as ts.Symbol).find((one) => one.name === name);
  const type = checker.getDeclaredTypeOfSymbol(symbol as ts.Symbol);
  const deriver = new Deriver(checker, checker.getStringType(), false);
  const { text: whole } = deriver.derive(type, name, "quantity");
  return [...deriver.constants.map((one) => one.text), whole].join("\n");
}

it("derives fields, words, times, pairs, units and cases", () => {
  expect(derived("Lamp")).toBe(
    '{ type: "Lamp", fields: { "height": "length", "at?": "time", "lit": "flag", "phases": { words: [1,3] }, "pair": { items: ["text", "number"] }, "unit?": { unit: "mass" } } }\nLampShape',
  );
  expect(derived("Post")).toContain(
    '{ by: "kind", cases: { "wood": WoodShape, "steel": SteelShape } }',
  );
});

it.each([
  ["Switched", /no form for the type \(\) => void \(Switched > turn\): a function/],
  ["Dated", /no form for the type .*Dated > when/],
  ["Loose", /no form for the type any/],
])("refuses %s by name and place", (name, message) => {
  expect(() => derived(name)).toThrow(message);
});
