// The build: one file per module and one, core, for what all of them share, so that an import opens few
// files. A module that imports another leaves it where it is instead of taking a copy. Parts of a module that are opened
// without the rest of it are files of their own. They end in .mjs: Node then need not look in each folder above for what
// its .js files are.
import { mkdirSync, readdirSync, writeFileSync } from "node:fs";
import { dirname, join, relative, sep } from "node:path";
import { defineConfig, type Options } from "tsup";
import { slipsJson } from "../tests/studies/slips/slips-json.ts";
import type { Catalogue } from "./assessment/catalogue.ts";

const src = import.meta.dirname;
const foldersIn = (folder: string) =>
  readdirSync(join(src, folder), { withFileTypes: true })
    .filter((one) => one.isDirectory())
    .map(({ name }) => name);
const parts = [
  "circuit-protection/rules",
  "commissioning/format",
  "refrigerants/data",
  "refrigerants/saturation",
  "supply-voltage/standards",
  "vacuum-decay/curve",
  "vacuum-decay/policies",
  "wire/zod",
];
const subpaths = foldersIn(".").flatMap((name) =>
  name === "language" ? foldersIn(name).map((language) => `${name}/${language}`) : [name],
);
const modules = [...subpaths, ...parts];
const entriesOf = (folders: readonly string[]) =>
  Object.fromEntries([
    ["index", "src/index.ts"],
    ...folders.map((name) => [`${name}/index`, `src/${name}/index.ts`]),
  ]);

/** Where an import from one source file to another leads in the build; nothing when it is bundled in. */
function builtPath(importer: string, target: string): string | undefined {
  const [from = "", to = ""] = [relative(src, importer), relative(src, target)];
  const partOf = (file: string) => parts.find((part) => file.startsWith(join(part, sep)));
  const moduleOf = (file: string) => partOf(file) ?? file.split(sep)[0] ?? "";
  const isCore = (file: string) => ["quantity", "assessment", "core.ts"].includes(moduleOf(file));
  const isFace = (file: string) =>
    file.endsWith("index.ts") && (file.split(sep).length <= 2 || parts.includes(dirname(file)));
  if (isCore(to)) return isFace(to) ? to : isCore(from) && !isFace(from) ? undefined : "core.ts";
  if (moduleOf(from) === moduleOf(to)) return undefined;
  const ends = partOf(to) ?? partOf(from);
  if (!isFace(to) && ends) throw new Error(`${from} opens ${to} across the border of ${ends}`);
  return isFace(to) ? to : undefined;
}

/**
 * Writes the sentences of each language as JSON, for apps in other languages of programming: `es.json`, and
 * `es-ES.json` of the country that writes it otherwise.
 */
async function writeLanguages(): Promise<void> {
  const folder = join(src, "../dist/language");
  for (const name of foldersIn("language")) {
    const { assessment, ...others } = (await import(join(folder, name, "index.mjs"))) as {
      readonly [module: string]: Catalogue;
    };
    const catalogues = [assessment, ...Object.values(others)] as Catalogue[];
    for (const locale of new Set(catalogues.map((one) => one.locale))) {
      const own = catalogues.filter((one) => one.locale === locale);
      const messages = Object.assign({}, ...own.map((one) => one.messages));
      const file = locale === assessment?.locale ? name : locale;
      const text = JSON.stringify({ locale, messages }, undefined, 2);
      writeFileSync(join(folder, `${file}.json`), `${text}\n`);
    }
  }
}

/** The codecs whose JSON Schemas lie in the package as files, by the name of the file. */
const schemas = {
  record: "recordCodec",
  change: "changeCodec",
  "installation-verdict": "assessInstallationResult",
};

/** Writes the schemas of what travels between programs, for the same apps. */
async function writeSchemas(): Promise<void> {
  const wire = await import(join(src, "../dist/wire/index.mjs"));
  mkdirSync(join(src, "../dist/schemas"), { recursive: true });
  for (const [file, codec] of Object.entries(schemas)) {
    const text = JSON.stringify(wire.jsonSchemaOf(wire[codec], wire.recordWords));
    writeFileSync(join(src, `../dist/schemas/${file}.json`), `${text}\n`);
  }
}

const config: Options = {
  entry: { core: "src/core.ts", ...entriesOf(modules) },
  format: ["esm", "cjs"],
  outExtension: ({ format }) => ({
    js: format === "esm" ? ".mjs" : ".cjs",
    dts: format === "esm" ? ".d.ts" : ".d.cts",
  }),
  dts: { entry: entriesOf([...subpaths, "wire/zod"]) },
  splitting: false,
  treeshake: true, // also makes one import of the many that a file has from another
  clean: true,
  target: "es2022",
  silent: true,
  onSuccess: async () => {
    await writeLanguages();
    await writeSchemas();
    writeFileSync(join(src, "../dist/slips.json"), slipsJson());
  },
  plugins: [
    {
      // An object of all units, made by a call that a bundler cannot see through, kept every unit in every
      // app. As a call marked pure it goes when nothing reads it.
      name: "pure-namespaces",
      renderChunk(code) {
        if (this.format !== "esm") return undefined;
        const made =
          "/* @__PURE__ */ (() => {\n  const all = {};\n  __export(all, $2);\n  return all;\n})()";
        return {
          code: code.replace(
            /^var (\w+) = \{\};\n__export\(\1, (\{[^}]*\})\);$/gm,
            `var $1 = ${made};`,
          ),
        };
      },
    },
  ],
  esbuildPlugins: [
    {
      name: "one-file-per-module",
      setup({ onResolve, initialOptions }) {
        const ending = initialOptions.outExtension?.[".js"] ?? ".js";
        onResolve({ filter: /^\..*\.ts$/ }, ({ importer, path, kind }) => {
          if (kind === "entry-point") return undefined;
          const built = builtPath(importer, join(dirname(importer), path));
          if (!built) return undefined;
          const file = relative(src, importer).split(sep).join("/");
          const homes = modules.filter((name) => file.startsWith(`${name}/`));
          const home = homes.at(-1) ?? "";
          const up = "../".repeat(home ? home.split("/").length : 0) || "./";
          return { path: `${up}${built.replace(/\.ts$/, ending)}`, external: true };
        });
      },
    },
  ],
};

export default defineConfig(config) as Options;
