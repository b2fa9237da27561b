// Where do ten thousand records come from? From the examples beside this one, varied: no such site or unit exists.
import { createWriteStream, existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { pipeline } from "node:stream/promises";

const names = ["worked-install", "three-heads", "half-finished-install", "failing-install"];
const texts = names.map((name) =>
  readFileSync(join(import.meta.dirname, "..", name, "record.json"), "utf8"),
);

/** Numbers from 0 to below 1, the same each time (Lehmer's generator, Park and Miller 1988). */
function chance(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 16_807) % 2_147_483_647;
    return state / 2_147_483_647;
  };
}

/** So many invented records, each as a line of text. */
function* madeRecords(count: number): Generator<string> {
  const next = chance(20_261_129);
  for (let i = 0; i < count; i++) {
    const record = JSON.parse(texts[i % texts.length] as string);
    record.name = `Invented site ${i + 1}`;
    for (const circuit of record.power?.circuits ?? []) {
      const { wiring, installed } = circuit;
      if (wiring?.length) wiring.length.value = Math.round(20 + 180 * next());
      circuit.occupancy = next() < 0.5 ? "dwelling" : "other";
      if (installed?.device && next() < 0.1) installed.device.rating.value = 60;
    }
    for (const run of record.runs ?? []) {
      if (run.tubing?.length && next() < 0.1) run.tubing.length.value *= 1.5;
    }
    yield `${JSON.stringify(record)}\n`;
  }
}

/** Writes a file of so many invented records, a line for each, where there is none. */
export async function makeRecords(file: string, count: number): Promise<void> {
  if (!existsSync(file)) await pipeline(madeRecords(count), createWriteStream(file));
}
