import { existsSync, readdirSync, readFileSync } from "node:fs";
import { dirname, join, relative, sep } from "node:path";
import ts from "typescript";
import { describe, expect, it } from "vitest";

const src = join(import.meta.dirname, "../../src");

/** Layers from the ground up: a module may import from an earlier row, never from a later one. */
const layers = [
  ["quantity"],
  ["shapes"],
  ["sources"],
  ["assessment"],
  ["display"],
  ["read-quantity"],
  ["property-model"],
  ["refrigerants"],
  [
    "line-set",
    "pressure-test",
    "vacuum-decay",
    "circuit-protection",
    "supply-voltage",
    "flare-joint",
    "condensate",
    "charge-limit",
    "operating-check",
    "field-text",
    "logs",
  ],
  ["plots", "commissioning"],
  ["planning"],
  ["wire", "report"],
  ["language"],
];
/** The packages that a module may import at run time; every other module imports none. */
const packages: Readonly<Record<string, readonly string[]>> = {
  "field-text": ["mathjs/number"],
  logs: ["d3-dsv"],
  plots: ["d3-array", "d3-shape"],
  wire: ["zod/mini"],
};
const layerOf = (module: string) => layers.findIndex((row) => row.includes(module));
/** From here up a module is entered only through its index. */
const firstDomainLayer = layerOf("refrigerants");

interface Import {
  readonly from: string;
  readonly file: string;
  readonly to: string;
  readonly target: string;
  readonly text: string;
}

const imports: Import[] = readdirSync(src, { recursive: true, encoding: "utf8" })
  .filter((file) => file.endsWith(".ts") && file.includes(sep))
  .flatMap((file) => {
    const text = readFileSync(join(src, file), "utf8").replace(/^\s*\*.*$/gm, "");
    return [...text.matchAll(/^(?:import|export|\}) ?[^"=(]*from "([^"]+)"/gm)].map(
      ([whole, target = ""]) => ({
        text: whole,
        from: file.split(sep)[0] ?? "",
        file,
        to: target.startsWith(".")
          ? (relative(src, join(src, dirname(file), target)).split(sep)[0] ?? "")
          : target,
        target,
      }),
    );
  });

describe("imports", () => {
  it("exist and point to files that exist", () => {
    expect(imports.length).toBeGreaterThan(50);
    for (const { file, target } of imports.filter((one) => one.target.startsWith("."))) {
      expect(existsSync(join(src, dirname(file), target)), `${file} imports ${target}`).toBe(true);
    }
  });

  it("point downwards only", () => {
    const upward = imports.filter(({ from, to }) => {
      if (from === to || layerOf(to) < 0) return false;
      const sideways = layerOf(from) === layerOf(to) && layerOf(from) > firstDomainLayer;
      return layerOf(to) > layerOf(from) || (layerOf(from) === layerOf(to) && !sideways);
    });
    expect(upward.map(({ file, target }) => `${file} → ${target}`)).toEqual([]);
  });

  it("from a language take types only", () => {
    const taken = imports.filter(
      ({ from, to, text }) =>
        from === "language" && to !== "language" && !text.startsWith("import type"),
    );
    expect(taken.map(({ file, target }) => `${file} → ${target}`)).toEqual([]);
  });

  it("enter a domain module through its index only", () => {
    const inside = imports.filter(
      ({ from, to, target }) =>
        from !== "language" &&
        from !== to &&
        layerOf(to) >= firstDomainLayer &&
        !target.endsWith("/index.ts"),
    );
    expect(inside.map(({ file, target }) => `${file} → ${target}`)).toEqual([]);
  });

  it("reach for a package only where a module is allowed to", () => {
    const outside = imports.filter(
      ({ target, from, file }) =>
        !target.startsWith(".") &&
        !packages[from]?.includes(target) &&
        !file.includes(`${sep}generate${sep}`),
    );
    expect(outside.map(({ file, target }) => `${file} → ${target}`)).toEqual([]);
  });
});

/**
 * A quantity checks what it is given and throws; the checks and the errors show quantities. These imports, of types
 * alone, are the one ring of the source.
 */
const speakOfQuantities: ReadonlyMap<string, readonly string[]> = new Map([
  [join("quantity", "check.ts"), ["quantity.ts"]],
  [join("quantity", "errors.ts"), ["json.ts"]],
]);

/** The files that a file of the source names, types included. */
const named = new Map(
  readdirSync(src, { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".ts"))
    .map((file) => [
      file,
      ts
        .preProcessFile(readFileSync(join(src, file), "utf8"), true, true)
        .importedFiles.map(({ fileName }) => fileName)
        .filter((target) => target.startsWith("."))
        .map((target) => relative(src, join(src, dirname(file), target)))
        .filter((target) => !speakOfQuantities.get(file)?.includes(target.split(sep)[1] ?? "")),
    ]),
);

/** Imports that lead back to where they came from, each ring once. */
function ringsIn(graph: ReadonlyMap<string, readonly string[]>): string[] {
  const done = new Set<string>();
  const rings: string[] = [];
  const follow = (file: string, way: readonly string[]): void => {
    const met = way.indexOf(file);
    if (met >= 0) rings.push([...way.slice(met), file].join(" → "));
    if (met >= 0 || done.has(file)) return;
    for (const target of graph.get(file) ?? []) follow(target, [...way, file]);
    done.add(file);
  };
  for (const file of graph.keys()) follow(file, []);
  return rings;
}

describe("no import, of a type either, leads back to where it came from", () => {
  it("in the source", () => {
    expect(named.size).toBeGreaterThan(500);
    expect(ringsIn(named)).toEqual([]);
  });

  it("but by the types of a quantity, which its checks and errors show", () => {
    for (const [file, targets] of speakOfQuantities) {
      const text = readFileSync(join(src, file), "utf8");
      for (const target of targets) {
        expect(text, file).toMatch(new RegExp(`^import type .* from "./${target}";$`, "m"));
      }
    }
  });

  it("or it would be found", () => {
    const graph = { a: ["b", "d"], b: ["c"], c: ["b"], d: ["d"] };
    expect(ringsIn(new Map(Object.entries(graph)))).toEqual(["b → c → b", "d → d"]);
  });
});

it("knows every module of the source", () => {
  const folders = readdirSync(src, { withFileTypes: true }).filter((entry) => entry.isDirectory());
  for (const { name } of folders) expect(layerOf(name), name).toBeGreaterThanOrEqual(0);
});
