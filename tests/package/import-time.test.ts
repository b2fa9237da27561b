import { execFileSync } from "node:child_process";
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, expect, inject, it } from "vitest";

const consumer = inject("consumer");
const { exports: declared } = JSON.parse(
  readFileSync(join(consumer, "node_modules/hvac-install-math/package.json"), "utf8"),
) as { exports: Record<string, unknown> };
const subpaths = Object.keys(declared)
  .filter((name) => !name.endsWith(".json"))
  .map((name) => name.replace(/^\./, "hvac-install-math"));

beforeAll(() => {
  const empty = join(consumer, "node_modules/empty");
  mkdirSync(empty, { recursive: true });
  writeFileSync(join(empty, "package.json"), `{"type":"module","exports":"./i.js"}`);
  writeFileSync(join(empty, "i.js"), "export const nothing = 0;");
});

/** Processor time of one import in a fresh process, in ms: what others do on the machine is not in it. */
function importTime(name: string): number {
  const code = `const t = process.cpuUsage(); await import("${name}"); const { user, system } = process.cpuUsage(t); console.log((user + system) / 1000)`;
  const args = ["--input-type=module", "-e", code];
  return Number(execFileSync("node", args, { cwd: consumer, encoding: "utf8" }));
}

// mathjs behind field-text takes so much time that nothing else shows; zod takes its own.
/** These open most of the modules. */
const wide: Readonly<Record<string, number>> = {
  commissioning: 60,
  plots: 30,
  report: 60,
  wire: 60,
};
const measured = subpaths.filter((name) => !name.endsWith("/field-text"));
const budgets = measured.map((name) => {
  const [, module] = name.split("/");
  const budget = module === undefined ? 60 : (wide[module] ?? 15);
  return [name, budget, name.endsWith("/zod") ? "zod/mini" : "empty"] as const;
});

it.each(budgets)("%s takes at most %i ms more than %s", (name, budget, base) => {
  // The shortest of several times is what the import costs when nothing disturbs it: a disturbance only makes
  // it longer, so a time within the budget settles it.
  const [bare, times]: [number[], number[]] = [[], []];
  const more = () => Math.min(...times) - Math.min(...bare);
  for (let round = 0; round < 25 && (round < 2 || more() > budget); round++) {
    bare.push(importTime(base));
    times.push(importTime(name));
  }
  expect(more()).toBeLessThanOrEqual(budget);
});
