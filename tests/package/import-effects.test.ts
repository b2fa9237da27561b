import { execFileSync } from "node:child_process";
import { readdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, inject, it } from "vitest";

const consumer = inject("consumer");
const dist = join(consumer, "node_modules/hvac-install-math/dist");
const files = readdirSync(dist, { recursive: true, encoding: "utf8" })
  .filter((name) => /\.[cm]js$/.test(name))
  .sort();

/** Imports the files one by one and prints what each of them changed outside itself. */
const watcher = `
import { createRequire } from "node:module";
import { join } from "node:path";
const [dist, ...files] = process.argv.slice(2);
const builtIns = Object.getOwnPropertyNames(globalThis).sort().map((name) => {
  const { value } = Object.getOwnPropertyDescriptor(globalThis, name);
  return [name, value];
}).filter(([name, value]) => name !== "global" && value !== null && ["object", "function"].includes(typeof value));
const watched = builtIns.flatMap(([name, value]) =>
  value.prototype ? [[name, value], [name + ".prototype", value.prototype]] : [[name, value]]);
const iterator = Object.getPrototypeOf(Object.getPrototypeOf([].values()));
watched.push(["iterator", iterator]);
const propertiesOf = (target) => new Map(Reflect.ownKeys(target).map((key) =>
  [key, Object.getOwnPropertyDescriptor(target, key)]));
const look = () => watched.map(([name, target]) => [name, propertiesOf(target)]);
const differences = (before, after) => before.flatMap(([name, old], i) => {
  const now = after[i][1];
  return [...new Set([...old.keys(), ...now.keys()])].filter((key) => {
    const [a, b] = [old.get(key), now.get(key)];
    return !a || !b || !Object.is(a.value, b.value) || a.get !== b.get || a.set !== b.set;
  }).map((key) => name + "." + String(key));
});
const require = createRequire(import.meta.url);
const said = [];
for (const stream of [process.stdout, process.stderr]) {
  stream.write = (text) => (said.push(String(text)), true);
}
// the first import of each kind lets the loader itself settle
await import(${JSON.stringify("data:text/javascript,0")});
const report = {};
for (const file of files) {
  const [before, handles, listeners, words] =
    [look(), process.getActiveResourcesInfo().sort().join(), process.eventNames().join(), said.length];
  const env = JSON.stringify(process.env);
  if (file.endsWith(".cjs")) require(join(dist, file)); else await import(join(dist, file));
  report[file] = differences(before, look());
  if (process.getActiveResourcesInfo().sort().join() !== handles) report[file].push("a timer or handle");
  if (process.eventNames().join() !== listeners) report[file].push("a listener of the process");
  if (JSON.stringify(process.env) !== env) report[file].push("the environment");
  if (said.length !== words) report[file].push("output");
}
delete process.stdout.write;
process.stdout.write(JSON.stringify(report));
`;

/** zod, which `wire` opens, keeps its own configuration there. */
const ofZod = /^globalThis\.__zod_/;

function effectsOf(folder: string, names: readonly string[]): Record<string, string[]> {
  writeFileSync(join(consumer, "watcher.mjs"), watcher);
  const args = [join(consumer, "watcher.mjs"), folder, ...names];
  const report = JSON.parse(execFileSync("node", args, { cwd: consumer, encoding: "utf8" }));
  return Object.fromEntries(
    Object.entries(report as Record<string, string[]>).map(([file, effects]) => [
      file,
      effects.filter((effect) => !ofZod.test(effect)),
    ]),
  );
}

it("changes nothing outside itself when any built file is imported", () => {
  expect(files.length).toBeGreaterThan(40);
  const clean = Object.fromEntries(files.map((name) => [name, []]));
  expect(effectsOf(dist, files)).toEqual(clean);
});

it("would see a global, a changed prototype, a timer and a word on the console", () => {
  const culprits = {
    "global.mjs": "globalThis.added = 1;",
    "prototype.cjs": "Array.prototype.at = function () {};",
    "timer.mjs": "setInterval(() => {}, 1000).ref(); setTimeout(() => process.exit(), 100);",
    "word.mjs": "console.log('hello');",
  };
  for (const [name, code] of Object.entries(culprits)) writeFileSync(join(consumer, name), code);
  expect(effectsOf(consumer, Object.keys(culprits))).toEqual({
    "global.mjs": ["globalThis.added"],
    "prototype.cjs": ["Array.prototype.at"],
    "timer.mjs": ["a timer or handle"],
    "word.mjs": ["output"],
  });
});
