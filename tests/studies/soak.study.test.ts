// Does memory stay level in a program that never stops: one monitor that is read a million times, a server that judges
// one record after the other? With SOAK=full it judges a hundred thousand records (half an hour), else five thousand.
// Memory is what is left after a collection.
import { readFileSync } from "node:fs";
import { setFlagsFromString } from "node:v8";
import { runInNewContext } from "node:vm";
import { english } from "hvac-install-math/language/en";
import { planInstallation } from "hvac-install-math/planning";
import { micron, second } from "hvac-install-math/quantity";
import { htmlReport } from "hvac-install-math/report";
import { createDecayMonitor } from "hvac-install-math/vacuum-decay";
import { recordCodec } from "hvac-install-math/wire";
import { expect, it } from "vitest";
import { vacuumOptions } from "../bench/invented-logs.ts";
import { assessInstallation, rules } from "../commissioning/assess.ts";

const records = process.env.SOAK === "full" ? 100_000 : 5_000;
setFlagsFromString("--expose-gc");
const collect = runInNewContext("gc") as () => void;

/** Bytes that are held after a collection, after each tenth of the work. */
function held(count: number, work: (i: number) => void): number[] {
  return Array.from({ length: 10 }, (_, tenth) => {
    for (let i = (tenth * count) / 10; i < ((tenth + 1) * count) / 10; i++) work(i);
    collect();
    return process.memoryUsage().heapUsed;
  });
}

/** The second half of the work may hold a megabyte more than the first: a reading kept, or a record, is seen. */
function expectLevel(bytes: readonly number[]): void {
  console.log(bytes.map((one) => `${(one / 2 ** 20).toFixed(1)} MiB`).join(", "));
  expect(Math.max(...bytes.slice(5)) - Math.max(...bytes.slice(0, 5))).toBeLessThan(2 ** 20);
}

it("holds no more memory the longer one vacuum is watched", () => {
  const monitor = createDecayMonitor(vacuumOptions);
  const bytes = held(1_000_000, (i) => {
    const noise = Math.sin(i * 12.9898) * 2;
    monitor.add({
      elapsed: second(i),
      pressure: micron(200 + 150 * (1 - Math.exp(-i / 600)) + noise),
    });
  });
  expect(monitor.assessment().outcome).toBeDefined();
  expectLevel(bytes);
});

it("holds no more memory the more records are read, judged, planned and reported", () => {
  const texts = ["worked-install", "three-heads", "failing-install", "half-finished-install"].map(
    (name) => readFileSync(new URL(`../../examples/${name}/record.json`, import.meta.url), "utf8"),
  );
  const bytes = held(records, (i) => {
    const text = texts[i % texts.length] as string;
    const record = { ...recordCodec.parse(text), name: `invented site ${i}` };
    assessInstallation(record);
    if (i % 10 === 0) planInstallation(record, { rules });
    if (i % 100 === 0) htmlReport(record, { language: english, system: "SI", rules });
  });
  expectLevel(bytes);
});
