// Can a run be as it is recorded? Length, height and lines held against each other and the manual.
// Follows geometry and common practice, no source; a doubt leaves the run open, it never fails it.
// Does not cover limits: line-set decides those.

import { isAtMost } from "../quantity/limit.ts";
import { doubt } from "./doubt.ts";
import type { Job } from "./job.ts";
import type { PlacedRun } from "./runs.ts";
import { say } from "./statements.ts";
import type { Trial } from "./step.ts";

/** What cannot be right of a run. */
export function doubtsOfRun(job: Job, { run, path }: PlacedRun): Trial[] {
  const { length, lift, liquid, vapor } = run.tubing ?? {};
  const { run: limits, preChargedLength: ofAll } = job.record.equipment?.manual ?? {};
  const preCharged = run.manual?.preChargedLength ?? ofAll;
  const longest = run.manual?.run?.maximumLength ?? limits?.maximumLength;
  const doubts: Trial[] = [];
  if (length && lift && !isAtMost(lift.si, length.si)) {
    const reason = say("commissioning.lift-above-length", { lift, length });
    doubts.push(doubt(`${path}.tubing.lift`, reason));
  }
  // One pre-charged length for the sum of several runs may be longer than any of them.
  const sums = job.runs.length > 1 || job.record.equipment?.manual?.preChargedFor === "sum";
  if (preCharged && longest && !sums && !isAtMost(preCharged.si, longest.si)) {
    const reason = say("commissioning.pre-charged-above-longest", { preCharged, longest });
    doubts.push(doubt("equipment.manual.preChargedLength", reason));
  }
  const [thin, wide] = [liquid?.outsideDiameter, vapor?.outsideDiameter];
  // The same refrigerant flows in both, and as a vapor it needs the wider tube.
  if (thin && wide && !isAtMost(thin.si, wide.si)) {
    const reason = say("commissioning.lines-swapped", { liquid: thin, vapor: wide });
    const action = say("commissioning.see-which-line");
    doubts.push(doubt(`${path}.tubing.liquid.outsideDiameter`, reason, action, "line-sizes"));
  }
  return doubts;
}
