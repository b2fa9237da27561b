// Can a run be as it is recorded? Length, height and lines held against each other and the manual.
// Follows geometry and common practice, no source; a doubt leaves the run open, it never fails it.
// Does not cover limits: line-set decides those.
import { isAtMost } from "../quantity/limit.ts";
import { Quantity } from "../quantity/quantity.ts";
import { rounded } from "../quantity/rounded.ts";
import { kW } from "../quantity/units/electricity.ts";
import { liter, m, mL } from "../quantity/units/geometry.ts";
import { doubt } from "./doubt.ts";
import type { Job } from "./job.ts";
import { manualPath } from "./manual-path.ts";
import { oddFigure } from "./odd-figure.ts";
import { type PlacedRun, servesIndoorUnit } from "./runs.ts";
import { say } from "./statements.ts";
import type { Trial } from "./step.ts";
import { fieldWord, verbatim } from "./words.ts";

/** Coils and manifold of one run: a hose holds more than the least, the coils of 20 kW less than the most. */
const coils = [/* @__PURE__ */ mL(10), /* @__PURE__ */ liter(30)] as const;

/** A coil holds less than so many meters of the vapor line that serves it: 7.1 L on 3/8 in, 20 L on 5/8 in. */
const largestCoil = 100;

/** How much longer the way was paced off than the line became, at most. */
const pacedOver = 1.25;

/** Indoor units of split systems. */
const heads = [/* @__PURE__ */ kW(1), /* @__PURE__ */ kW(35)] as const;

/** Longest runs that manuals of split and small multi-split systems allow. */
const longestRuns = [/* @__PURE__ */ m(3), /* @__PURE__ */ m(165)] as const;

/** What cannot be right of a run. */
export function doubtsOfRun(job: Job, placed: PlacedRun): Trial[] {
  const { run, path } = placed;
  const { length, lift, way, liquid, vapor, otherVolume: vessels } = run.tubing ?? {};
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
    doubts.push(doubt(manualPath(placed, "preChargedLength"), reason));
  }
  const highest = run.manual?.run?.maximumLift ?? limits?.maximumLift;
  if (longest) {
    const where = manualPath(placed, "run", "maximumLift");
    doubts.push(...oddFigure(where, highest, [m(0), longest]));
  }
  doubts.push(...oddFigure(manualPath(placed, "run", "maximumLength"), longest, longestRuns));
  if (length && way) {
    const longestWay = rounded(pacedOver * length.si, way.unit, 3);
    const none = new Quantity(0, way.unit);
    doubts.push(...oddFigure(`${path}.tubing.way`, way, [none, longestWay]));
  }
  const [thin, wide] = [liquid?.outsideDiameter, vapor?.outsideDiameter];
  if (vessels?.si) {
    const [hose, most] = coils;
    const coil = wide ? (largestCoil * Math.PI * wide.si ** 2) / 4 : most.si;
    const high = coil < most.si ? rounded(coil, vessels.unit, 2) : most;
    doubts.push(...oddFigure(`${path}.tubing.otherVolume`, vessels, [hose, high]));
  }
  for (const [i, { capacity }] of (run.indoorUnits ?? []).entries()) {
    doubts.push(...oddFigure(`${path}.indoorUnits[${i}].capacity`, capacity, heads));
  }
  // The same refrigerant flows in both, and as a vapor it needs the wider tube.
  if (thin && wide && !isAtMost(thin.si, wide.si)) {
    const reason = say("commissioning.lines-swapped", { liquid: thin, vapor: wide });
    const action = say("commissioning.see-which-line");
    doubts.push(doubt(`${path}.tubing.liquid.outsideDiameter`, reason, action, "line-sizes"));
  }
  return doubts;
}

/** What cannot be right of all runs together: two on one port, and the manual's limits of what they join. */
export function doubtsOfRuns({ record, runs }: Job): Trial[] {
  const { leastConnected: least, mostConnected: limit } = record.equipment?.manual ?? {};
  const doubts: Trial[] = [];
  // Ports of branch boxes are marked alike from box to box.
  const ported = runs.every(servesIndoorUnit) ? runs : [];
  for (const [i, { run, path }] of ported.entries()) {
    const { port } = run;
    if (port === undefined || !ported.slice(0, i).some((one) => one.run.port === port)) continue;
    const values = { field: fieldWord(`${path}.port`), value: verbatim(port) };
    doubts.push(doubt(`${path}.port`, say("commissioning.entered-twice", values)));
  }
  if (least && limit && !isAtMost(least.si, limit.si)) {
    const path = "equipment.manual.leastConnected";
    const values = { field: fieldWord(path), value: least, limit };
    doubts.push(doubt(path, say("commissioning.value-too-high", values)));
  }
  return doubts;
}
