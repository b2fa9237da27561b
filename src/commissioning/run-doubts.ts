// Can a run be as it is recorded? Length, height and lines held against each other and the manual.
// Follows geometry and common practice, no source; a doubt leaves the run open, it never fails it.
// Does not cover limits: line-set decides those.
import { isAtMost } from "../quantity/limit.ts";
import { liter, m, mL } from "../quantity/units/geometry.ts";
import { doubt } from "./doubt.ts";
import type { Job } from "./job.ts";
import { oddFigure } from "./odd-figure.ts";
import type { PlacedRun } from "./runs.ts";
import { say } from "./statements.ts";
import type { Trial } from "./step.ts";

/** Coils and manifold of one run: a hose holds more than the least, the coils of 20 kW less than the most. */
const coils = [/* @__PURE__ */ mL(10), /* @__PURE__ */ liter(30)] as const;

/** Longest runs that manuals of split and small multi-split systems allow. */
const longestRuns = [/* @__PURE__ */ m(3), /* @__PURE__ */ m(165)] as const;

/** What cannot be right of a run. */
export function doubtsOfRun(job: Job, { run, path }: PlacedRun): Trial[] {
  const { length, lift, liquid, vapor, otherVolume: vessels } = run.tubing ?? {};
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
  const highest = run.manual?.run?.maximumLift ?? limits?.maximumLift;
  if (longest) {
    doubts.push(...oddFigure("equipment.manual.run.maximumLift", highest, [m(0), longest]));
  }
  doubts.push(...oddFigure("equipment.manual.run.maximumLength", longest, longestRuns));
  if (vessels?.si) doubts.push(...oddFigure(`${path}.tubing.otherVolume`, vessels, coils));
  const [thin, wide] = [liquid?.outsideDiameter, vapor?.outsideDiameter];
  // The same refrigerant flows in both, and as a vapor it needs the wider tube.
  if (thin && wide && !isAtMost(thin.si, wide.si)) {
    const reason = say("commissioning.lines-swapped", { liquid: thin, vapor: wide });
    const action = say("commissioning.see-which-line");
    doubts.push(doubt(`${path}.tubing.liquid.outsideDiameter`, reason, action, "line-sizes"));
  }
  return doubts;
}
