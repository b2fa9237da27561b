// A worker: judges the records of one portion, in a thread of this machine or on another.
import { setImmediate } from "node:timers/promises";
import { type Judged, judgeAgain, type RuleChange } from "./judge.ts";

export default async function judgeBatch(batch: {
  readonly texts: readonly string[];
  readonly change: RuleChange;
}): Promise<readonly Judged[]> {
  const judged: Judged[] = [];
  for (const text of batch.texts) {
    judged.push(judgeAgain(text, batch.change));
    await setImmediate(); // a queue wants to hear from its worker while it works
  }
  return judged;
}
