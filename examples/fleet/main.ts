// Judges a company's records again after a rule changed, over all cores: `npm start -- --count 10000`. Stopped, it
// goes on where it was. Prints what changed.
import { rmSync } from "node:fs";
import { availableParallelism } from "node:os";
import { parseArgs } from "node:util";
import { SingleBar } from "cli-progress";
import { Piscina } from "piscina";
import { batchesOf } from "./batches.ts";
import { doneIn, note } from "./done.ts";
import type { Judged, RuleChange } from "./judge.ts";
import { makeRecords } from "./records.ts";
import { tableOf } from "./table.ts";

const { values } = parseArgs({
  options: {
    count: { type: "string", default: "1000" },
    records: { type: "string", default: "records.ndjson" },
    from: { type: "string", default: "nfpa-70-2023" },
    to: { type: "string", default: "nfpa-70-2023" },
    at: { type: "string", default: "2026-09-01" },
    workers: { type: "string", default: String(availableParallelism()) },
    again: { type: "boolean", default: false },
  },
});
const { records, from, to, at } = values;
const change = { from, to, at } as RuleChange;
const results = `${records}.${from}.${to}.${at}.done`;
const workers = Number(values.workers);

await makeRecords(records, Number(values.count));
if (values.again) rmSync(results, { force: true });

const done = doneIn(results);
const before = [...done.values()].flat().length;
const pool = new Piscina<{ texts: readonly string[]; change: RuleChange }, readonly Judged[]>({
  filename: new URL("worker.ts", import.meta.url).href,
  maxThreads: workers,
  minThreads: workers,
});
const bar = new SingleBar({
  format: "{bar} {percentage} % | {value} records | {eta_formatted} left",
});
bar.start(before, before);

const started = performance.now();
let judgedNow = 0;
const running = new Set<Promise<void>>();
for await (const { number, texts } of batchesOf(records)) {
  if (done.has(number)) continue;
  bar.setTotal(bar.getTotal() + texts.length);
  const one = pool.run({ texts, change }).then((judged) => {
    note(results, number, judged);
    done.set(number, judged);
    judgedNow += judged.length;
    bar.increment(judged.length);
    running.delete(one);
  });
  running.add(one);
  // A few portions wait for each worker; the rest stays in the file.
  if (running.size >= 4 * workers) await Promise.race(running);
}
await Promise.all(running);
bar.stop();
await pool.close();

const seconds = (performance.now() - started) / 1000;
process.stdout.write(`\n${tableOf([...done.values()].flat())}
${judgedNow} records judged twice in ${seconds.toFixed(1)} s by ${workers} workers: ${(judgedNow / seconds / workers || 0).toFixed(1)} a second for each; ${before} were done before
`);
