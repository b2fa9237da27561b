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
  const code = `const t = process.cpuUsage(); await import("${name}"); const { user, system } = process.cpuUsage(t); console.log(String((user + system) / 1000))`;
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

const median = (of: readonly number[]) =>
  [...of].sort((a, b) => a - b)[of.length >> 1] ?? Number.NaN;

it.each(budgets)("%s takes at most %f of the time of zod/mini", (name, share) => {
  // A processor that changes its pace does so for longer than a round takes, so that the times of one round
  // belong together. The median of nine such ratios still strays by a tenth; more rounds settle it.
  const ratios: number[] = [];
  for (let round = 0; round < 45 && (round < 5 || median(ratios) > share); round++) {
    const bare = importTime("empty");
    const yardstick = importTime("zod/mini") - bare;
    ratios.push((importTime(name) - bare) / yardstick);
  }
  expect(median(ratios)).toBeLessThanOrEqual(share);
});
