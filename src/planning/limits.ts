// Are the runs what the manual allows? Each run, all of them together, and the units that are joined.
// Follows line-set for a run; the manual for sums. Does not cover the place of a branch box.
import { cite } from "../assessment/assessment.ts";
import { indoorLift } from "../commissioning/index.ts";
import { assessLineRun, type LineRunInput } from "../line-set/index.ts";
import { Quantity } from "../quantity/quantity.ts";
import { type Job, type PlannedRun, servesIndoorUnit, stated } from "./job.ts";
import type { PlanCheck } from "./plan.ts";
import { check, type Share, shareOf, together } from "./share.ts";
import { say } from "./statements.ts";

const manuals = [cite("manufacturer-manuals")];

/** What is held against the manual's limits. */
export const limitShare = (job: Job): Share =>
  together([
    ...job.runs.map((run) => runShare(job, run)),
    totalShare(job),
    liftShare(job),
    connectedShare(job),
  ]);

function runShare({ manual }: Job, { run, path }: PlannedRun): Share {
  const { length, lift, outdoorUnit, bends } = run.tubing ?? {};
  const limits = { ...manual.run, ...run.manual?.run };
  const needs = {
    [`${path}.tubing.way`]: length,
    [`${path}.tubing.lift`]: lift,
    [`${path}.tubing.outdoorUnit`]: outdoorUnit,
    "equipment.manual.run.maximumLength": limits.maximumLength,
    "equipment.manual.run.maximumLift": limits.maximumLift ?? limits.maximumLiftOutdoorAbove,
  };
  const make = (): Share => {
    const { outcome, reasons, sources, cautions } = assessLineRun(
      stated<LineRunInput>({
        length,
        lift,
        outdoorUnit,
        bends,
        limits,
      }),
    );
    return {
      check: reasons.map((one) => check(outcome, "lines", one, sources, path)),
      cautions,
    };
  };
  const paths = { limits: "equipment.manual.run", lift: `${path}.tubing.lift` };
  return shareOf("lines", needs, make, paths);
}

/** All runs together, where there are several. */
function totalShare({ runs, manual }: Job): Share {
  const lengths = runs.flatMap(({ run }) => run.tubing?.length ?? []);
  const [first] = lengths;
  if (runs.length < 2 || !first || lengths.length < runs.length) return {};
  const { maximumTotalLength } = manual;
  const path = "equipment.manual.maximumTotalLength";
  return shareOf("lines", { [path]: maximumTotalLength }, () => {
    const limit = maximumTotalLength as Quantity<"length">;
    const total = new Quantity(sum(lengths), first.unit);
    const within = total.si <= limit.si * (1 + 1e-9);
    const said = say(`planning.total-length-${within ? "within" : "above"}`, { total, limit });
    return { check: [check(within ? "pass" : "fail", "lines", said, manuals, path)] };
  });
}

/** The height between the indoor units, where they do not hang level. */
function liftShare({ runs, manual }: Job): Share {
  const lift = indoorLift({ version: 2, runs: runs.map(({ run }) => run) });
  const { maximumIndoorLift } = manual;
  if (!lift || (lift.si <= 1e-9 && !maximumIndoorLift)) return {};
  const path = "equipment.manual.maximumIndoorLift";
  return shareOf("lines", { [path]: maximumIndoorLift }, () => {
    const limit = maximumIndoorLift as Quantity<"length">;
    const within = lift.si <= limit.si * (1 + 1e-9);
    const said = say(`planning.indoor-lift-${within ? "within" : "above"}`, { lift, limit });
    return { check: [check(within ? "pass" : "fail", "lines", said, manuals, path)] };
  });
}

/** The indoor units together, where there are several. */
function connectedShare({ runs, manual }: Job): Share {
  const heads = runs.filter(servesIndoorUnit);
  if (heads.length < 2) return {};
  const { leastConnected: least, mostConnected: most } = manual;
  const own = heads.map(({ run, path }) => [path, run.indoorUnits?.[0]?.capacity] as const);
  const needs = {
    ...Object.fromEntries(own.map(([path, one]) => [`${path}.indoorUnits[0].capacity`, one])),
    "equipment.manual.mostConnected": most,
  };
  return shareOf("lines", needs, () => {
    const capacities = own.flatMap(([, one]) => one ?? []);
    const [first] = capacities as [Quantity<"power">];
    const total = new Quantity(sum(capacities), first.unit);
    const bounds = [
      [most, (limit: number) => total.si <= limit * (1 + 1e-9), "within", "above"],
      [least, (limit: number) => total.si >= limit * (1 - 1e-9), "enough", "below"],
    ] as const;
    return {
      check: bounds.flatMap(([limit, keeps, kept, beyond]): PlanCheck[] => {
        if (!limit) return [];
        const within = keeps(limit.si);
        const said = say(`planning.connected-${within ? kept : beyond}`, { total, limit });
        return [check(within ? "pass" : "fail", "lines", said, manuals, "equipment.manual")];
      }),
    };
  });
}

const sum = (all: readonly { readonly si: number }[]) =>
  all.reduce((total, one) => total + one.si, 0);
