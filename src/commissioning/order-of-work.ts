// Does a test prove what was there when it was read? The dates of joints, pressure test and evacuation.
// Follows the order of the work in manuals; common practice, no source.
// Does not cover what may not be done before its proof: see hold-points.ts.
import { overallOutcome } from "../assessment/assessment.ts";
import type { StepCheck } from "./check-verdicts.ts";
import { surelyBefore } from "./iso-time.ts";
import { stated } from "./job.ts";
import type { InstallationRecord, IsoTime } from "./record.ts";
import type { Tried } from "./step.ts";

type Dated = readonly [path: string, at: IsoTime | undefined];

/** The step, with what was done after the test that should have proven it. */
export function inOrder(record: InstallationRecord, tried: Tried): Tried {
  const { joints = [], pressureTest, evacuation } = record;
  const made = joints.map(({ at }, i): Dated => [`joints[${i}].at`, at]);
  const late =
    tried.name === "pressure-test"
      ? laterThan(pressureTest?.at, made)
      : tried.name === "evacuation"
        ? laterThan(evacuation?.at, [...made, ["pressureTest.at", pressureTest?.at]])
        : [];
  if (late.length === 0) return tried;
  const outcome = overallOutcome([tried.outcome, "inconclusive"]);
  return { ...tried, outcome, checks: [...tried.checks, ...late] };
}

function laterThan(read: IsoTime | undefined, work: readonly Dated[]): StepCheck[] {
  return work.flatMap(([path, at]) => {
    if (!read || !at || !surelyBefore(read, at)) return [];
    const text =
      "Read at {read}, before the work of {at}, of which it proves nothing: do it again.";
    const assessment = stated("inconclusive", "older-than-work", text, { read, at });
    return [{ name: "order", path, assessment }];
  });
}
