// How is what was derived written down? The text of the generated files.
// Follows the layout of the library. Does not cover their formatting: the formatter of the project does.
import type { Constant, Derived } from "./derive.ts";
import type { Wanted } from "./functions.ts";

const head = (question: string) =>
  `// ${question}\n// Derived from the types by \`npm run generate\`; a test holds it current. Not edited by hand.\n`;

/** Names that stand in a text. */
const mentioned = (text: string, names: Iterable<string>) =>
  [...names].filter((name) => new RegExp(`(?<!['"\\w])${name}(?!['"\\w])`).test(text)).sort();

const importing = (names: readonly string[], from: string, type = "") =>
  names.length > 0
    ? `import ${type}{ ${[...names].sort().join(", ")} } from ${JSON.stringify(from)};\n`
    : "";

/** Where the constants of other modules come from. */
function imports(text: string, own: string, constants: readonly Constant[]): string {
  const others = constants.filter(({ module }) => module !== own);
  const modules = [...new Set(others.map(({ module }) => module))];
  return modules
    .map((module) => {
      const names = others.filter((one) => one.module === module).map(({ name }) => name);
      return importing(mentioned(text, names), `./${module}.shapes.ts`);
    })
    .join("");
}

/** A constant, made when a codec that names it is first used: there are hundreds, and an app uses a few. */
const declaration = ({ name, kind, text }: Constant) =>
  `const ${name}: Later<${kind}> = /* @__PURE__ */ later(() => (${text}));`;

const tables = ["byDesignation", "byPolicy", "byRules", "byStandard"];

/** The shapes of the types of one module. */
export function shapesFile(module: string, constants: readonly Constant[]): string {
  const own = constants.filter((one) => one.module === module);
  const bodies = own.map((one) => `export ${declaration(one)}`).join("\n\n");
  const kinds = [...new Set(own.map(({ kind }) => `type ${kind}`))].join(", ");
  return `${head(`Which shapes have the types of ${module}?`)}import { type Later, later, ${kinds} } from "../../shapes/index.ts";
${importing(mentioned(bodies, tables), "../named.ts")}${imports(bodies, module, constants)}
${bodies}
`;
}

/** The codecs of the functions of one module. */
export function codecsFile(
  module: string,
  codecs: readonly { readonly wanted: Wanted; readonly shape: Derived }[],
  constants: readonly Constant[],
  exported: ReadonlyMap<string, string>,
): string {
  const bodies = codecs.map(({ wanted: { name, type, whole, doc }, shape }) => {
    const made = /^\w+\(\)$/.test(shape.text) ? shape.text.slice(0, -2) : `() => (${shape.text})`;
    const codec = `codecOf({ id: ${JSON.stringify(name)}, name: ${JSON.stringify(whole)}, shape: ${made} })`;
    return `/** ${doc} */\nexport const ${name}: Codec<${type}> = /* @__PURE__ */ ${codec};`;
  });
  const text = bodies.join("\n\n");
  const types = codecs.map(({ wanted: { type } }) => type).join(" ");
  const from = new Map<string, string[]>();
  for (const name of mentioned(types, exported.keys())) {
    const file = `../../${exported.get(name)}/index.ts`;
    from.set(file, [...(from.get(file) ?? []), name]);
  }
  const helpers = mentioned(types, ["ArgumentsOf", "InputOf", "ResultOf"]);
  const shapes = codecs.map(({ shape }) => shape.text).join(" ");
  const local = mentioned(
    shapes,
    constants.filter((one) => one.module === module).map(({ name }) => name),
  );
  return `${head(`How do the inputs and results of ${module} travel as JSON?`)}${[...from]
    .map(([file, names]) => importing(names, file, "type "))
    .join(
      "",
    )}${importing(helpers, "../arguments-of.ts", "type ")}import { type Codec, codecOf } from "../codec.ts";
${importing(mentioned(shapes, tables), "../named.ts")}${imports(shapes, module, constants)}${importing(local, `./${module}.shapes.ts`)}
${text}
`;
}

/** The faces of all codecs. */
export const indexFile = (modules: readonly string[]): string =>
  `${head("Which codecs are there?")}${modules.map((one) => `export * from "./${one}.ts";\n`).join("")}`;

/** The shape of the record, of nothing but data. */
export function recordFile(root: string, constants: readonly Constant[]): string {
  const own = constants.filter(({ name }) => name !== root);
  const bodies = own.map(({ name, text }) => `const ${name}: Shape = ${text};`).join("\n\n");
  const whole = constants.find(({ name }) => name === root)?.text;
  return `${head("Which fields has a record, and of which form?")}import { frozenInPlace } from "../../quantity/frozen.ts";
import type { FieldsShape, Shape } from "../../shapes/index.ts";

${bodies}

/** The form of a record, as data: for forms, reports and codecs. */
export const recordShape: FieldsShape = /* @__PURE__ */ frozenInPlace(${whole});
`;
}

/** What the fields of the record are, by type and field; the type itself has no field's name. */
export function recordWordsFile(constants: readonly Constant[]): string {
  const described = constants.filter(({ about }) => Object.keys(about).length > 0);
  const words = Object.fromEntries(
    described.map(({ type, says, about }) => [type, { ...(says && { "": says }), ...about }]),
  );
  return `${head("What are the fields of a record, in words?")}
/** What each type of the record is, and each of its fields. */
export const recordWords: Readonly<Record<string, Readonly<Record<string, string>>>> = ${JSON.stringify(words)};
`;
}
