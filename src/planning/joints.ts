// How many joints of which kind, which nuts at which torque, which adapters and caps?
// Follows flare-joint for torque; that each line has a joint at each end is common practice, no source.
// Does not cover nuts of another make: use those that come with the unit.
import { cite } from "../assessment/assessment.ts";
import { type Joint, portSize } from "../commissioning/index.ts";
import {
  type FlareLimits,
  type FlareRefrigerant,
  type FlareTube,
  flareNutSize,
  flareTorque,
  flareTube,
} from "../flare-joint/index.ts";
import { known } from "../quantity/known.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { whole } from "../shapes/index.ts";
import { type Job, type PlannedRun, servesIndoorUnit } from "./job.ts";
import type { PlanItem, PlanQuestion } from "./plan.ts";
import { item, question, type Share, together } from "./share.ts";
import { say, verbatim } from "./statements.ts";

const practice = [cite("common-practice")];
const lines = ["liquid", "vapor"] as const;
const ends = ["indoor", "outdoor"] as const;

/** Joints of all runs: two lines with two ends each, and an adapter where a tube has another size than its port. */
export function jointShare(job: Job): Share {
  const { runs, equipment, construction } = job;
  if (construction === "monobloc") return {};
  if (!job.record.runs?.length) return { ask: lines.map((line) => sizeQuestion("runs[0]", line)) };
  const adapters = runs.flatMap((run) => adaptersOf(job, run));
  const counts = { flares: 0, brazed: 0, couplings: 0 };
  for (const { run } of runs) counts[kindOf(job, run.joints)] += 4;
  const spare = spareOf(job);
  const stated = runs.reduce((sum, { run }) => sum + Math.max(4, run.tubing?.jointCount ?? 0), 0);
  const all = Math.max(4 * runs.length + adapters.length, stated);
  const made = (["flares", "brazed", "couplings"] as const).flatMap((kind) =>
    counts[kind] > 0
      ? [item("joints", say(`planning.${kind}`, { count: counts[kind] }), practice)]
      : [],
  );
  const caps =
    spare > 0 ? [item("joints", say("planning.caps", { count: 2 * spare }), practice)] : [];
  return together([
    {
      bring: [
        ...made,
        ...adapters,
        ...caps,
        ...(all > 4 * runs.length || runs.length > 1
          ? [item("joints", say("planning.joints", { count: all }), practice)]
          : []),
      ],
      ask:
        runs.length > 1 && equipment.portPairs === undefined
          ? [question("equipment.portPairs", "joints"), question("equipment.portPairs", "charge")]
          : [],
    },
    { ask: portQuestions(job) },
    nutShare(job),
  ]);
}

const sizeQuestion = (path: string, line: (typeof lines)[number]): PlanQuestion =>
  question(`${path}.tubing.${line}.outsideDiameter`, "joints");

/** How the joints of a run are made: as recorded, or as the construction has it. */
function kindOf({ construction }: Job, joints: readonly Joint[] = []) {
  const kind = joints[0]?.kind;
  if (kind === "coupling" || construction === "quick-connect") return "couplings";
  return kind === "brazed" ? "brazed" : "flares";
}

/** Pairs of ports that stay unused; those of a branch box are not known. */
function spareOf({ runs, equipment }: Job): number {
  const boxed = runs.some(({ run }) => run.serves === "branch-box");
  return boxed ? 0 : Math.max(0, (equipment.portPairs ?? 0) - runs.length);
}

/** The size of flare for a tube, where there is one. */
const sizeOf = (diameter: Quantity<"length"> | undefined): FlareTube | undefined =>
  diameter && known(() => flareTube(diameter));

/** Whether a run ends at a branch box, whose ports the record does not hold. */
const isBranch = ({ runs }: Job, { run }: PlannedRun): boolean =>
  run.serves !== "branch-box" && runs.some((one) => one.run.serves === "branch-box");

/** The ports that decide on adapters; couplings come with the lines and fit. */
function portQuestions(job: Job): PlanQuestion[] {
  const { equipment, runs } = job;
  const flared = runs.filter(({ run }) => kindOf(job, run.joints) !== "couplings");
  const units = [
    ...(flared.some((one) => !isBranch(job, one))
      ? [["equipment.outdoorUnit", equipment.outdoorUnit] as const]
      : []),
    ...flared
      .filter(servesIndoorUnit)
      .map(({ run, path }) => [`${path}.indoorUnits[0]`, run.indoorUnits?.[0]] as const),
  ];
  return units.flatMap(([path, unit]) => {
    if (!unit?.ports) return [question(`${path}.ports`, "joints")];
    const { ports } = unit;
    const open = lines.filter((line) => !ports[line]);
    return open.map((line) => question(`${path}.ports.${line}`, "joints"));
  });
}

function adaptersOf(job: Job, one: PlannedRun): PlanItem[] {
  const { run, path, called } = one;
  const ports = {
    indoor: run.indoorUnits?.[0]?.ports,
    outdoor: isBranch(job, one) ? undefined : job.equipment.outdoorUnit?.ports,
  };
  return ends.flatMap((end) =>
    lines.flatMap((line) => {
      const { outsideDiameter } = run.tubing?.[line] ?? {};
      const tube = outsideDiameter && known(() => portSize(outsideDiameter));
      const port = ports[end]?.[line];
      if (!tube || !port || tube === port) return [];
      const said = say("planning.adapter", {
        run: called,
        line: `planning.line.${line}`,
        end: `planning.end.${end}`,
        tube: verbatim(tube),
        port: verbatim(port),
      });
      return [item("joints", said, practice, path)];
    }),
  );
}

/** The nut of which refrigerant a unit has; of the others none is published here. */
const nutOf: Readonly<Record<string, FlareRefrigerant>> = {
  "R-410A": "R410A",
  "R-32": "R32",
  "R-454B": "R454B",
  "R-22": "R22",
};

/** Heads of the torque wrench, for the sizes of nut that are published. */
function wrenches({ refrigerant }: Job, tubes: readonly FlareTube[]): PlanItem[] {
  const nut = nutOf[refrigerant?.designation ?? ""];
  if (!nut) return [];
  const sizes = tubes.flatMap(
    (tube) => known(() => flareNutSize({ tube, refrigerant: nut })) ?? [],
  );
  const flats = sizes.sort((a, b) => a.si - b.si).map((size) => verbatim(size.toString()));
  const said = say("planning.wrenches", { flats });
  return flats.length > 0 ? [item("joints", said, [cite("manufacturer-manuals")])] : [];
}

/** Nuts by size: the manual's torque where it is stated, else what all published ranges share. */
function nutShare(job: Job): Share {
  const counts = new Map<FlareTube, number>();
  const windows = new Map<FlareTube, FlareLimits<"torque">>();
  const unsized: PlanQuestion[] = [];
  for (const { run, path } of job.runs) {
    if (kindOf(job, run.joints) !== "flares") continue;
    for (const line of lines) {
      const diameter = run.tubing?.[line]?.outsideDiameter;
      const tube = sizeOf(diameter);
      if (tube) counts.set(tube, (counts.get(tube) ?? 0) + 2);
      if (!diameter) unsized.push(sizeQuestion(path, line));
    }
    for (const { line, tube, torqueWindow } of run.joints ?? []) {
      const size = tube ?? (line && sizeOf(run.tubing?.[line]?.outsideDiameter));
      if (size && torqueWindow?.low && torqueWindow.high)
        windows.set(size, whole<FlareLimits<"torque">>(torqueWindow));
    }
  }
  const nuts = [...counts].map(([tube, count]) => {
    const published = flareTorque(tube);
    const { low, high } = windows.get(tube) ?? published.overlap;
    const sources = windows.has(tube)
      ? [cite("manufacturer-manuals")]
      : published.windows.map(({ citation }) => citation);
    return item("joints", say("planning.nut", { tube: verbatim(tube), count, low, high }), sources);
  });
  const tubes = [...counts.keys()];
  const asked = [
    ...(tubes.some((tube) => !windows.has(tube)) ? ["runs[0].joints[0].torqueWindow"] : []),
    ...(tubes.length > 0 && !job.refrigerant ? ["equipment.refrigerant"] : []),
  ];
  return {
    bring: [...nuts, ...wrenches(job, tubes)],
    ask: [...unsized, ...asked.map((path) => question(path, "joints"))],
  };
}
