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

/** What an import may take, as a share of the import of zod/mini on the same machine at the same time. */
const plain = 0.35;
/** These open most of the modules. */
const wide: Readonly<Record<string, number>> = {
  "": 0.9,
  commissioning: 0.95,
  planning: 1.05,
  plots: 0.6,
  report: 1.15,
  wire: 1.3,
  "wire/zod": 2.4,
};
// mathjs behind field-text takes so much time that nothing else shows.
const budgets = subpaths
  .filter((name) => !name.endsWith("/field-text"))
  .map((name) => [name, wide[name.replace(/^hvac-install-math\/?/, "")] ?? plain] as const);

it.each(budgets)("%s takes at most %f of the time of zod/mini", (name, share) => {
  // The shortest of several times is what an import costs when nothing disturbs it: a disturbance only makes
  // it longer, so a time within the budget settles it.
  const [bare, yardstick, times]: [number[], number[], number[]] = [[], [], []];
  const above = (of: readonly number[]) => Math.min(...of) - Math.min(...bare);
  const ratio = () => above(times) / above(yardstick);
  for (let round = 0; round < 25 && (round < 3 || ratio() > share); round++) {
    bare.push(importTime("empty"));
    yardstick.push(importTime("zod/mini"));
    times.push(importTime(name));
  }
  expect(ratio()).toBeLessThanOrEqual(share);
});
