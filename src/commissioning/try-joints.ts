// Was every joint made right, and is none of them missing?
// Follows flare-joint, which decides; that each line has a joint at each end is common practice, no source.
// Does not cover whether a joint is tight: the pressure test does.

import type { Job } from "./job.ts";
import { joint as nameOf } from "./joint-name.ts";
import { jointTrials, thinWalls } from "./joint-trials.ts";
import { type OwnVerdict, ownVerdict } from "./own-verdict.ts";
import type { Joint } from "./record-run.ts";
import type { PlacedRun } from "./runs.ts";
import { say } from "./statements.ts";
import { type Trial, type Tried, tryAll } from "./step.ts";
import { unjoinedLines } from "./unjoined-lines.ts";
import { verbatim } from "./words.ts";

/** Two lines with two ends each. */
const leastJoints = 4;

/** Was every joint made right? */
export function tryJoints(job: Job): Tried {
  const missing: string[] = [];
  const trials = job.runs.flatMap((one) => ofRun(job, one, missing));
  return tryAll("joints", trials, missing);
}

/** How many joints a run has: one at each end of each line, or as many as were stated. */
export const jointsOf = ({ run }: PlacedRun): number => run.tubing?.jointCount ?? leastJoints;

function ofRun(job: Job, placed: PlacedRun, missing: string[]): Trial[] {
  const { run, path } = placed;
  const { joints = [] } = run;
  const count = jointsOf(placed);
  if (count > joints.length) missing.push(`${path}.joints[${joints.length}]`);
  return [
    ...joints.flatMap((one, i) => jointTrials(job, placed, one, `${path}.joints[${i}]`)),
    {
      name: "joint-count",
      path: `${path}.tubing.jointCount`,
      needs: {},
      run: () => counted(joints, count),
    },
    ...thinWalls(job, placed),
    ...unjoinedLines(placed, count),
  ];
}

/** Whether each joint is recorded once, and there is one at each end of each line. */
function counted(joints: readonly Joint[], count: number): OwnVerdict {
  if (count < leastJoints) {
    return ownVerdict(
      "inconclusive",
      say("commissioning.fewer-joints-than-ends", { count }),
      say("commissioning.record-each-joint", { count: leastJoints }),
    );
  }
  // Two entries of one name are one joint: the other may have none.
  const names = joints.map((one, i) => nameOf(one) ?? i);
  const twice = joints.flatMap(({ name }, i) =>
    names.indexOf(names[i] as string) === i ? [] : [name ? verbatim(name) : i + 1],
  );
  const recorded = joints.length;
  if (recorded === count && twice.length === 0) {
    return ownVerdict("pass", say("commissioning.joints-complete", { count }));
  }
  return ownVerdict(
    "inconclusive",
    twice.length > 0
      ? say("commissioning.joint-recorded-twice", { joints: twice })
      : say("commissioning.joints-incomplete", { recorded, count }),
    say("commissioning.record-each-joint", { count }),
  );
}
