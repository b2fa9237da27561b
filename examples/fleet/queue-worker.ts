// One of several machines: takes portions out of the queue and judges them until it is told to stop. When a machine
// dies, its portion falls back into the queue and another takes it.
import { parseArgs } from "node:util";
import { Worker } from "bullmq";
import { Redis } from "ioredis";
import judgeBatch from "./worker.ts";

const { values } = parseArgs({
  options: { redis: { type: "string", default: "redis://127.0.0.1:6379" } },
});
const connection = new Redis(values.redis, { maxRetriesPerRequest: null });
const worker = new Worker("judge-again", async ({ data }) => judgeBatch(data), {
  connection,
  // A dead machine is found out after this.
  lockDuration: 10_000,
  stalledInterval: 5_000,
});
worker.on("completed", ({ id }) => process.stdout.write(`done ${id}\n`));
worker.on("error", (error) => process.stderr.write(`${error.message}\n`));
for (const signal of ["SIGINT", "SIGTERM"] as const) {
  process.once(signal, async () => {
    await worker.close();
    await connection.quit();
  });
}
