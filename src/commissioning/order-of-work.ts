// Does a test prove what was there when it was read? Dates of joints, tests, charge and the running unit.
// Follows the order of the work in manuals; common practice, no source.
// Does not cover what may not be done before its proof: see hold-points.ts.
import { overallOutcome, type Statement, statement } from "../assessment/assessment.ts";
import type { Quantity } from "../quantity/quantity.ts";
import type { IsoTime } from "../shapes/index.ts";
import { type Dated, surelyBefore } from "../shapes/index.ts";
import type { StepCheck } from "./check-verdicts.ts";
import { stated } from "./job.ts";
import type { InstallationRecord } from "./record.ts";
import { spread } from "./spread.ts";
import type { StepName, Tried } from "./step.ts";

/** What was read, over some time or at once; `at` is the end. */
interface Read {
  readonly at?: IsoTime;
  readonly readings?: readonly { readonly elapsed?: Quantity<"duration"> | undefined }[];
}

/** The step, with what was done after the test that should have proven it had begun. */
export function inOrder(record: InstallationRecord, tried: Tried): Tried {
  const late = lateFor(record, tried.name);
  if (late.length === 0) return tried;
  const outcome = overallOutcome([tried.outcome, "inconclusive"]);
  return { ...tried, outcome, checks: [...tried.checks, ...late] };
}

function lateFor(record: InstallationRecord, step: StepName): StepCheck[] {
  const { joints = [], pressureTest, evacuation, valves, power, charge, operation = [] } = record;
  const made = joints.map(({ at }, i): Dated => [`joints[${i}].at`, at]);
  if (step === "pressure-test") return laterThan(pressureTest, made);
  if (step === "evacuation") {
    return laterThan(evacuation, [...made, ["pressureTest.at", pressureTest?.at]]);
  }
  if (step !== "operation") return [];
  const charged = operation.map((one) => laterThan(one, [["charge.at", charge?.at]]));
  return [
    // A unit cannot be read before it is open and has power.
    ...operation.flatMap((one) =>
      laterThan(one, [
        ["valves.openedAt", valves?.openedAt],
        ["power.energizedAt", power?.energizedAt],
      ]),
    ),
    // Readings led to a charge; one after it has to be there.
    ...(charged.every((found) => found.length > 0) ? charged.flat() : []),
  ];
}

function laterThan({ at: read, readings = [] }: Read = {}, work: readonly Dated[]): StepCheck[] {
  const elapsed = readings.flatMap((one) => (one.elapsed ? [one.elapsed.si] : []));
  const span = 1000 * spread(elapsed); // ms
  return work.flatMap(([path, at]) => {
    if (!read || !at || !surelyBefore(read, at, span)) return [];
    const text = `Read at {read}, ${span > 0 ? "and begun " : ""}before the work of {at}, of which it proves nothing: do it again.`;
    const assessment = stated("inconclusive", "older-than-work", text, { read, at });
    return [{ name: "order", path, assessment }];
  });
}

/** Joints of which no date says that they were made before they were tested. */
export function jointsAssumed({
  joints = [],
  pressureTest,
  evacuation,
}: InstallationRecord): Statement[] {
  const undated = joints.flatMap(({ at }, i) => (at === undefined ? [`joints[${i}]`] : []));
  const text = "Without a date these count as made before they were tested: {paths}.";
  return undated.length > 0 && (pressureTest || evacuation)
    ? [statement("joints-undated", text, { paths: undated.join(", ") })]
    : [];
}
