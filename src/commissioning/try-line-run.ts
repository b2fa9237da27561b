// Are the runs within the manual's limits, and are their lines what the ports take?
// Follows line-set, which decides the limits; that a line has the size of its port is common practice, no source.
// Does not cover joints: see try-joints.ts.
import { standardUncertainty } from "../assessment/uncertainty.ts";
import { type FlareTube, flareTube } from "../flare-joint/index.ts";
import { assessLineRun, type RunLimits } from "../line-set/index.ts";
import { known } from "../quantity/known.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { m } from "../quantity/units/geometry.ts";
import { whole } from "../shapes/index.ts";
import { allRuns } from "./all-runs.ts";
import { connectedUnits } from "./connected-units.ts";
import { doubt } from "./doubt.ts";
import { errorsOf } from "./instrument-errors.ts";
import type { Job } from "./job.ts";
import { manualPath } from "./manual-path.ts";
import { isNominal } from "./nominal-length.ts";
import { ownVerdict } from "./own-verdict.ts";
import { portSize } from "./port-size.ts";
import { doubtsOfRun, doubtsOfRuns } from "./run-doubts.ts";
import type { PlacedRun } from "./runs.ts";
import { say } from "./statements.ts";
import { present, type Trial, type Tried, tryAll } from "./step.ts";
import { type LineWord, verbatim } from "./words.ts";

/** Are the runs within the manual's limits? */
export function tryLineRun(job: Job): Tried {
  const missing: string[] = [];
  const trials = job.runs.flatMap((one) => [
    ...runTrials(job, one, missing),
    ...doubtsOfRun(job, one),
    ...linesOf(job, one, missing),
  ]);
  return tryAll(
    "line-run",
    [...trials, ...allRuns(job), ...connectedUnits(job), ...doubtsOfRuns(job)],
    missing,
  );
}

/** The limits of a run: its own before those of all. */
function limitsOf({ record }: Job, { run }: PlacedRun): RunLimits | undefined {
  const [all, own] = [record.equipment?.manual?.run, run.manual?.run];
  return all || own ? whole<RunLimits>({ ...all, ...own }) : undefined;
}

/** Where these limits stand. */
const limitPaths = (one: PlacedRun): Readonly<Record<string, string>> => ({
  limits: "equipment.manual.run",
  ...Object.fromEntries(
    Object.keys(one.run.manual?.run ?? {}).map((name) => [
      `limits.${name}`,
      manualPath(one, "run", name),
    ]),
  ),
});

function runTrials(job: Job, placed: PlacedRun, missing: string[]): Trial[] {
  const { run, path } = placed;
  const limits = limitsOf(job, placed);
  const { length, lift, outdoorUnit, bends } = run.tubing ?? {};
  const tape = job.record.instruments?.tape;
  const { maximumLength, maximumLift, maximumLiftOutdoorAbove } = limits ?? {};
  const most = outdoorUnit === "above" ? (maximumLiftOutdoorAbove ?? maximumLift) : maximumLift;
  // Every manual states both; a run that is held to one of them alone is not judged.
  const asked = { maximumLength, maximumLift: most };
  for (const [name, limit] of Object.entries(limits ? asked : {})) {
    if (limit === undefined) missing.push(`equipment.manual.run.${name}`);
  }
  return [
    {
      name: "line-run",
      path: `${path}.tubing`,
      needs: {
        [`${path}.tubing.length`]: length,
        [`${path}.tubing.lift`]: lift,
        [`${path}.tubing.outdoorUnit`]: outdoorUnit,
        "equipment.manual.run": limits,
      },
      paths: { ...limitPaths(placed), instrument: "instruments.tape" },
      run: () =>
        assessLineRun(
          present({
            length,
            lengthIs: isNominal(job.record, run) ? "nominal" : undefined,
            lift,
            outdoorUnit,
            bends,
            limits,
            standardUncertainty: errorsOf(tape) && standardUncertainty(tape ?? {}, m),
          }),
        ),
    },
  ];
}

/** Both lines with their walls, each of the size of its port; pre-charged lines have the couplings of their own unit. */
function linesOf(job: Job, { run, path }: PlacedRun, missing: string[]): Trial[] {
  const { tubing = {}, indoorUnits = [] } = run;
  const { outdoorUnit, construction } = job.record.equipment ?? {};
  return (["liquid", "vapor"] as const).flatMap((line): Trial[] => {
    const { outsideDiameter, wall } = tubing[line] ?? {};
    if (!outsideDiameter) missing.push(`${path}.tubing.${line}.outsideDiameter`);
    if (!wall) missing.push(`${path}.tubing.${line}.wall`);
    const port = indoorUnits[0]?.ports?.[line] ?? outdoorUnit?.ports?.[line];
    if (!port && construction !== "quick-connect")
      missing.push(`equipment.outdoorUnit.ports.${line}`);
    if (!outsideDiameter || !port || known(() => portSize(outsideDiameter)) === port) return [];
    const word: LineWord = `commissioning.line.${line}`;
    const values = { line: word, diameter: outsideDiameter, port: verbatim(port) };
    // A line of another size than its port needs an adapter, which is a joint more.
    const adapted = (tubing.jointCount ?? 0) > 4;
    const where = `${path}.tubing.${line}.outsideDiameter`;
    if (!adapted) return [doubt(where, say("commissioning.line-other-than-port", values))];
    const passes = () => ownVerdict("pass", say("commissioning.line-with-adapter", values));
    return [{ name: "line-sizes", path: where, needs: {}, run: passes }];
  });
}

/** The size of flare for a tube, where there is one. */
export const sizeOf = (diameter: Quantity<"length">): FlareTube | undefined =>
  known(() => flareTube(diameter));
