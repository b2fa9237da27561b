// Does a test prove what was there when it was read? The dates of joints, pressure test and evacuation.
// Follows the order of the work in manuals; common practice, no source.
// Does not cover what may not be done before its proof: see hold-points.ts.
import { surelyBefore } from "./iso-time.ts";
import type { InstallationRecord, IsoTime } from "./record.ts";
import type { StepName, StepProblem } from "./step.ts";

/** What was done after the test that should have proven it. */
export function outOfOrder(record: InstallationRecord, step: StepName): StepProblem[] {
  const { joints = [], pressureTest, evacuation } = record;
  const made = joints.map(({ at }, i): Dated => [`joints[${i}].at`, at]);
  if (step === "pressure-test") return after("the pressure test", pressureTest?.at, made);
  if (step !== "evacuation") return [];
  return after("the evacuation", evacuation?.at, [...made, ["pressureTest.at", pressureTest?.at]]);
}

type Dated = readonly [path: string, at: IsoTime | undefined];

function after(test: string, read: IsoTime | undefined, work: readonly Dated[]): StepProblem[] {
  return work.flatMap(([path, at]) => {
    if (!read || !at || !surelyBefore(read, at)) return [];
    const allowed = `not after ${test}, read at ${read}`;
    return [
      {
        check: "order",
        path,
        value: at,
        allowed,
        hint: "It proves nothing of later work: do it again.",
      },
    ];
  });
}
