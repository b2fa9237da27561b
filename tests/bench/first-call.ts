// What does the first call take in a fresh process, when nothing is compiled yet?
import { execFileSync } from "node:child_process";
import { join } from "node:path";
import { median } from "./measure.ts";
import type { Section } from "./section.ts";

const root = join(import.meta.dirname, "../..");
const rounds = 9;

/** Run in the fresh process: everything is imported before the clock starts. */
const program = `
import { readFileSync } from "node:fs";
import { nec2023 } from "hvac-install-math/circuit-protection";
import { assessInstallation } from "hvac-install-math/commissioning";
import { english } from "hvac-install-math/language/en";
import { htmlReport } from "hvac-install-math/report";
import { recordCodec } from "hvac-install-math/wire";
const text = readFileSync("examples/worked-install/record.json", "utf8");
const rules = [nec2023];
const times = {};
const timed = (name, run) => {
  const start = performance.now();
  const result = run();
  times[name] = performance.now() - start;
  return result;
};
const record = timed("recordCodec.parse", () => recordCodec.parse(text));
timed("assessInstallation", () => assessInstallation(record, { rules }));
timed("htmlReport", () => htmlReport(record, { language: english, system: "inch-pound", rules }));
timed("assessInstallation, second call", () => assessInstallation(record, { rules }));
timed("htmlReport, second call", () => htmlReport(record, { language: english, system: "inch-pound", rules }));
console.log(JSON.stringify(times));
`;

export async function firstCall(): Promise<Section> {
  const runs = Array.from(
    { length: rounds },
    () =>
      JSON.parse(
        execFileSync("node", ["--input-type=module", "-e", program], {
          cwd: root,
          encoding: "utf8",
        }),
      ) as Record<string, number>,
  );
  return {
    title: "The first call",
    text: "On the record of the worked example, in a fresh process after the imports. Budget: 15 ms each.",
    columns: ["call", "median"],
    rows: Object.keys(runs[0] ?? {}).map((name) => [
      name,
      `${median(runs.map((run) => run[name] ?? Number.NaN)).toFixed(1)} ms`,
    ]),
  };
}
