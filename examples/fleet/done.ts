// What is done already? One line for each portion in a file that only grows: a run that was stopped goes on from there.
import { appendFileSync, existsSync, readFileSync, truncateSync } from "node:fs";
import type { Judged } from "./judge.ts";

/** The portions that are done, by their numbers. A last line that was cut off is taken out: its portion is done again. */
export function doneIn(file: string): Map<number, readonly Judged[]> {
  const done = new Map<number, readonly Judged[]>();
  if (!existsSync(file)) return done;
  const text = readFileSync(file, "utf8");
  const whole = text.slice(0, text.lastIndexOf("\n") + 1);
  if (whole.length < text.length) truncateSync(file, Buffer.byteLength(whole));
  for (const line of whole.split("\n").filter(Boolean)) {
    const { number, judged } = JSON.parse(line) as { number: number; judged: readonly Judged[] };
    done.set(number, judged);
  }
  return done;
}

/** Notes that a portion is done. */
export function note(file: string, number: number, judged: readonly Judged[]): void {
  appendFileSync(file, `${JSON.stringify({ number, judged })}\n`);
}
