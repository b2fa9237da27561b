// The sizes that the README states: what an app's bundler ships for a module and for a typical use, taken
// from the built package. `npm run sizes` writes them into the README.
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { type Bundle, bundle } from "./bundle.ts";

const readme = join(import.meta.dirname, "../../README.md");
const place = /(<!-- sizes -->\n)([\s\S]*?)(\n<!-- end of sizes -->)/;

/** What people import first, by what it is for. */
const uses: readonly (readonly [string, string, readonly string[]])[] = [
  ["one unit", "quantity", ["psig"]],
  [
    "gauge to absolute at an altitude",
    "quantity",
    ["psig", "psia", "ft", "atmosphereAtAltitude", "toAbsolute"],
  ],
  ["one refrigerant, its bubble pressure", "refrigerants", ["R32", "bubblePressure"]],
  [
    "superheat and subcooling of one refrigerant",
    "refrigerants",
    ["R410A", "superheat", "subcooling"],
  ],
  ["verdict on a nitrogen hold", "pressure-test", ["assessPressureTest"]],
  ["verdict on a vacuum decay", "vacuum-decay", ["assessVacuumDecay"]],
  ["added charge of a line set", "line-set", ["additionalCharge"]],
  [
    "circuit from a nameplate by one edition",
    "circuit-protection",
    ["circuitFromNameplate", "nec2023"],
  ],
  ["a record to JSON and back", "wire", ["recordCodec"]],
  ["picture of a vacuum decay", "plots", ["vacuumDecayPlot"]],
  ["typed text to a quantity, with mathjs", "field-text", ["parseQuantity"]],
  ["verdict on a whole installation", "commissioning", ["assessInstallation"]],
  ["the same as a report", "report", ["markdownReport"]],
];

const everything = (module: string) => `export * from "hvac-install-math${module}";`;
const kB = (bytes: number) => (bytes / 1000).toFixed(1);
const row = (name: string, { minified, gzip }: Bundle, rest = "") =>
  `| ${name} | ${kB(minified)} | ${kB(gzip)} |${rest}`;

/** The two tables of the README, in kB (1000 bytes). */
export async function sizeTables(): Promise<string> {
  const { exports } = JSON.parse(readFileSync(join(readme, "../package.json"), "utf8")) as {
    exports: object;
  };
  const modules = Object.keys(exports)
    .filter((name) => !name.endsWith(".json"))
    .map((name) => name.slice(1));
  const shared = `${everything("/quantity")}\n${everything("/assessment")}`;
  const base = await bundle(shared, "built");
  const useRows: string[] = [];
  for (const [what, module, names] of uses) {
    const list = names.join(", ");
    const used = await bundle(`export { ${list} } from "hvac-install-math/${module}";`, "built");
    useRows.push(row(`${what}: ${names.map((name) => `\`${name}\``).join(", ")}`, used));
  }
  const moduleRows: string[] = [];
  for (const module of modules) {
    const whole = await bundle(everything(module), "built");
    const added = await bundle(`${shared}\n${everything(module)}`, "built");
    const more = Math.max(0, added.gzip - base.gzip);
    moduleRows.push(row(`\`${module.slice(1) || "(root)"}\``, whole, ` ${kB(more)} |`));
  }
  return [
    "| use | minified, kB | gzip, kB |\n|---|---|---|",
    ...useRows,
    "",
    "| everything of | minified, kB | gzip, kB | gzip, on top of `quantity` and `assessment` |\n|---|---|---|---|",
    ...moduleRows,
  ].join("\n");
}

/** The tables as the README has them. */
export function statedTables(): string {
  const [, , stated] = place.exec(readFileSync(readme, "utf8")) ?? [];
  if (stated === undefined) throw new Error("README.md has no place for the sizes");
  return stated;
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? "").href) {
  const text = readFileSync(readme, "utf8");
  const tables = await sizeTables();
  writeFileSync(
    readme,
    text.replace(place, (_, start, __, end) => `${start}${tables}${end}`),
  );
}
