// In which portions is the work done? A few records at a time, each portion by its number.
import { createReadStream } from "node:fs";
import { createInterface } from "node:readline";

/** Records of one portion: a second of work or less, so that little is lost when it has to be done again. */
const size = 25;

/** A portion of a file of records, one on each line. */
export interface Batch {
  readonly number: number;
  readonly texts: readonly string[];
}

/** The portions of a file, one after the other; no more than one is held. */
export async function* batchesOf(file: string): AsyncGenerator<Batch> {
  let texts: string[] = [];
  let number = 0;
  for await (const line of createInterface({
    input: createReadStream(file),
    crlfDelay: Infinity,
  })) {
    if (texts.push(line) < size) continue;
    yield { number: number++, texts };
    texts = [];
  }
  if (texts.length > 0) yield { number, texts };
}
