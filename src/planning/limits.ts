// Are the runs what the manual allows? Each run, all of them together, and the units that are joined.
// Follows line-set for a run; the manual for sums. Does not cover the place of a branch box.
import { cite, type Outcome } from "../assessment/assessment.ts";
import type { Statement } from "../assessment/statement.ts";
import { indoorLift, type Manual } from "../commissioning/index.ts";
import { assessLineRun, type LineRunInput } from "../line-set/index.ts";
import { isAtLeast, isAtMost } from "../quantity/limit.ts";
import { Quantity } from "../quantity/quantity.ts";
import { type Job, type PlannedRun, servesIndoorUnit, stated } from "./job.ts";
import type { PlanCheck } from "./plan.ts";
import { check, type Share, shareOf, together } from "./share.ts";
import { say } from "./statements.ts";

const manuals = [cite("manufacturer-manuals")];

/** What a limit of a run comes to, whatever the others do. */
const outcomes: Readonly<Partial<Record<string, Outcome>>> = {
  "line-set.within-maximum": "pass",
  "line-set.above-minimum": "pass",
  "line-set.kept-as-measured": "pass",
  "line-set.bends-within-maximum": "pass",
  "line-set.near-maximum": "inconclusive",
  "line-set.near-minimum": "inconclusive",
  "line-set.bends-not-counted": "inconclusive",
  "line-set.bend-length-not-counted": "inconclusive",
};

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
      check: reasons.map((one) =>
        check(outcomes[one.code] ?? outcome, "lines", one, sources, path),
      ),
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
  const total = new Quantity(sum(lengths), first.unit);
  return ofAll("maximumTotalLength", manual, total, (within, limit) =>
    say(`planning.total-length-${within ? "within" : "above"}`, { total, limit }),
  );
}

/** The height between the indoor units, where they do not hang level. */
function liftShare({ runs, manual }: Job): Share {
  const lift = indoorLift({ version: 2, runs: runs.map(({ run }) => run) });
  const field = "maximumIndoorLift";
  if (!lift || (isAtMost(lift.si, 0, 1) && !manual[field])) return {};
  return ofAll(field, manual, lift, (within, limit) =>
    say(`planning.indoor-lift-${within ? "within" : "above"}`, { lift, limit }),
  );
}

type Length = Quantity<"length">;

/** A length of all runs against the manual's largest, which is asked for where it is not stated. */
function ofAll(
  field: "maximumTotalLength" | "maximumIndoorLift",
  manual: Manual,
  value: Length,
  said: (within: boolean, limit: Length) => Statement,
): Share {
  const path = `equipment.manual.${field}`;
  return shareOf("lines", { [path]: manual[field] }, () => {
    const limit = manual[field] as Length;
    const within = isAtMost(value.si, limit.si);
    return { check: [kept(within, said(within, limit), path)] };
  });
}

/** A line of the plan: whether what is planned keeps the manual. */
const kept = (within: boolean, said: Statement, path: string): PlanCheck =>
  check(within ? "pass" : "fail", "lines", said, manuals, path);

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
    const held = (
      limit: typeof most,
      within: boolean,
      how: "within" | "above" | "enough" | "below",
    ) =>
      limit
        ? [kept(within, say(`planning.connected-${how}`, { total, limit }), "equipment.manual")]
        : [];
    const [fits, fills] = [isAtMost(total.si, most?.si ?? 0), isAtLeast(total.si, least?.si ?? 0)];
    return {
      check: [
        ...held(most, fits, fits ? "within" : "above"),
        ...held(least, fills, fills ? "enough" : "below"),
      ],
    };
  });
}

const sum = (all: readonly { readonly si: number }[]) =>
  all.reduce((total, one) => total + one.si, 0);
