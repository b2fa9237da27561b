// The same on several machines: puts the portions into a queue in Redis, and prints what changed when all are done.
// `npm run queue -- --redis redis://127.0.0.1:6379`, and on each machine `npm run worker` with the same address.
import { setTimeout } from "node:timers/promises";
import { parseArgs } from "node:util";
import { Queue } from "bullmq";
import { Redis } from "ioredis";
import { batchesOf } from "./batches.ts";
import type { Judged, RuleChange } from "./judge.ts";
import { makeRecords } from "./records.ts";
import { tableOf } from "./table.ts";

const { values } = parseArgs({
  options: {
    count: { type: "string", default: "1000" },
    records: { type: "string", default: "records.ndjson" },
    redis: { type: "string", default: "redis://127.0.0.1:6379" },
    from: { type: "string", default: "nfpa-70-2023" },
    to: { type: "string", default: "nfpa-70-2023" },
    at: { type: "string", default: "2026-09-01" },
  },
});
const { records, from, to, at } = values;
const change = { from, to, at } as RuleChange;
await makeRecords(records, Number(values.count));

const connection = new Redis(values.redis, { maxRetriesPerRequest: null });
const queue = new Queue<{ texts: readonly string[]; change: RuleChange }, readonly Judged[]>(
  "judge-again",
  { connection },
);
const ids: string[] = [];
for await (const { number, texts } of batchesOf(records)) {
  // The number is the job's name for good: one that is in the queue, or done, is not put in twice.
  const jobId = `${from}.${to}.${at}.${number}`;
  ids.push(jobId);
  await queue.add("judge", { texts, change }, { jobId, attempts: 3 });
}

const judged: Judged[] = [];
for (const id of ids) {
  for (;;) {
    const state = await queue.getJobState(id);
    const job = ["completed", "failed"].includes(state) ? await queue.getJob(id) : undefined;
    if (state === "failed") throw new Error(`portion ${id}: ${job?.failedReason}`);
    if (job) {
      judged.push(...job.returnvalue);
      break;
    }
    await setTimeout(100);
  }
}
process.stdout.write(`${tableOf(judged)}\n${judged.length} records judged\n`);
await queue.close();
await connection.quit();
