// How is what was derived written down? The text of the generated files.
// Follows the layout of the library. Does not cover their formatting: the formatter of the project does.
import type { Constant, Derived } from "./derive.ts";
import type { Wanted } from "./functions.ts";

/** A generated file: the question that it answers, and its source text. */
export interface Written {
  readonly question: string;
  readonly text: string;
}

const importing = (names: readonly string[], from: string, type = "") =>
  `import ${type}{ ${names.join(", ")} } from ${JSON.stringify(from)};\n`;

/** Where all that the library exports comes from, as types; the formatter drops what a file does not name. */
export const typeImports = (exported: ReadonlyMap<string, readonly string[]>): string =>
  [...exported]
    .map(([module, names]) => importing(names, `../../${module}/index.ts`, "type "))
    .join("") + importing(["ArgumentsOf", "InputOf", "ResultOf"], "../arguments-of.ts", "type ");

/** Where other shapes come from, for the shapes of one module or, without it, for codecs. */
function shapeImports(constants: readonly Constant[], own?: string): string {
  const from = [...new Set(constants.map(({ module }) => module))].filter((one) => one !== own);
  const imports = from.map((module) => {
    const names = constants.filter((one) => one.module === module).map(({ name }) => name);
    return importing(names, `./${module}.shapes.ts`);
  });
  return (
    importing(["byDesignation", "byPolicy", "byRules", "byStandard"], "../named.ts") +
    imports.join("")
  );
}

/** The shapes of the types of one module, each made when a codec that names it is first used: an app uses a few of hundreds. */
export function shapesFile(module: string, constants: readonly Constant[]): Written {
  const bodies = constants
    .filter((one) => one.module === module)
    .map(
      ({ name, kind, text }) =>
        `export function ${name}(): ${kind} { return once(${name}, () => (${text})); }`,
    );
  const text = `import { once } from "../../quantity/later.ts";
import type { Shape, StatementTable } from "../../shapes/index.ts";
${shapeImports(constants, module)}
${bodies.join("\n\n")}
`;
  return { question: `Which shapes have the types of ${module}?`, text };
}

/** The codecs of the functions of one module. */
export function codecsFile(
  module: string,
  codecs: readonly { readonly wanted: Wanted; readonly shape: Derived }[],
  imports: string,
  constants: readonly Constant[],
): Written {
  const bodies = codecs.map(({ wanted: { name, type, whole, doc }, shape: { text } }) => {
    const shape = /^\w+\(\)$/.test(text) ? text.slice(0, -2) : `() => (${text})`;
    const parts = `{ id: ${JSON.stringify(name)}, name: ${JSON.stringify(whole)}, shape: ${shape} }`;
    return `/** ${doc} */\nexport const ${name}: Codec<${type}> = /* @__PURE__ */ codecOf(${parts});`;
  });
  const text = `${imports}import { type Codec, codecOf } from "../codec.ts";
${shapeImports(constants)}
${bodies.join("\n\n")}
`;
  return { question: `How do the inputs and results of ${module} travel as JSON?`, text };
}

/** The faces of all codecs. */
export const indexFile = (modules: readonly string[]): Written => ({
  question: "Which codecs are there?",
  text: modules.map((one) => `export * from "./${one}.ts";\n`).join(""),
});

/** The shape of the record, of nothing but data. */
export function recordFile(root: string, constants: readonly Constant[]): Written {
  const own = constants.filter(({ name }) => name !== root);
  const bodies = own.map(({ name, text }) => `const ${name}: Shape = ${text};`).join("\n\n");
  const whole = constants.find(({ name }) => name === root)?.text;
  const above = "../../../";
  const imports =
    importing(["frozenInPlace"], `${above}quantity/frozen.ts`) +
    importing(["FieldsShape", "Shape"], `${above}shapes/index.ts`, "type ");
  const text = `${imports}
${bodies}

/** The form of a record, as data: for forms, reports and codecs. */
export const recordShape: FieldsShape = /* @__PURE__ */ frozenInPlace(${whole});
`;
  return { question: "Which fields has a record, and of which form?", text };
}

/** What the fields of the record are, by type and field; the type itself has no field's name. */
export function recordWordsFile(constants: readonly Constant[]): Written {
  const described = constants.filter(({ about }) => Object.keys(about).length > 0);
  const words: Record<string, Readonly<Record<string, string>>> = Object.fromEntries(
    described.map(({ type, says, about }) => [type, { ...(says && { "": says }), ...about }]),
  );
  const text = `import { frozenInPlace } from "../../quantity/frozen.ts";
import type { SchemaWords } from "../../shapes/index.ts";

/**
 * What each type of the record is, and each of its fields: the descriptions of its JSON Schema.
 *
 * Source: the doc comments of the types.
 *
 * @example
 * \`\`\`ts
 * import { jsonSchemaOf, recordCodec, recordWords } from "hvac-install-math/wire";
 *
 * recordWords.Site?.altitude; // => ${words.Site?.altitude}
 * JSON.stringify(jsonSchemaOf(recordCodec, recordWords)).includes("Where the installation is."); // => true
 * \`\`\`
 */
export const recordWords: SchemaWords = /* @__PURE__ */ frozenInPlace(${JSON.stringify(words)});
`;
  return { question: "What are the fields of a record, in words?", text };
}
