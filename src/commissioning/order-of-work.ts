// Does a test prove what was there when it was read? Dates of joints, tests, charge and the running unit.
// Follows the order of the work in manuals; common practice, no source.
// Does not cover what may not be done before its proof: see hold-points.ts.
import { overallOutcome } from "../assessment/assessment.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { type Dated, type IsoTime, surelyBefore } from "../shapes/index.ts";
import type { Amendment } from "./amendment.ts";
import type { StepCheck } from "./check-verdicts.ts";
import type { Job } from "./job.ts";
import { joint as nameOf } from "./joint-name.ts";
import type { StepName } from "./names.ts";
import { ownVerdict } from "./own-verdict.ts";
import { isRework } from "./rework.ts";
import { type Covering, lastOfEachRun, type PlacedRun } from "./runs.ts";
import { spread } from "./spread.ts";
import { type CommissioningStatement, say } from "./statements.ts";
import type { Tried } from "./step.ts";
import { fieldWord, stepWord, verbatim } from "./words.ts";

/** What was read, over some time or at once; `at` is the end. */
interface Read {
  readonly at?: IsoTime | undefined;
  readonly readings?:
    | readonly { readonly elapsed?: Quantity<"duration"> | undefined }[]
    | undefined;
}

/** The step, with what was done after the test that should have proven it had begun. */
export function inOrder(job: Job, tried: Tried): Tried {
  if (tried.state === "not-applicable") return tried;
  const late = lateFor(job, tried.name);
  if (late.length === 0) return tried;
  const outcome = overallOutcome([tried.outcome, "inconclusive"]);
  return { ...tried, outcome, checks: [...tried.checks, ...late] };
}

function lateFor({ record, runs }: Job, step: StepName): StepCheck[] {
  const { pressureTests, evacuations, valves, power, charge, operation = [] } = record;
  const { supply, circuits = [] } = power ?? {};
  const reworked = (record.history ?? []).filter(isRework);
  const made = (covered: readonly PlacedRun[]) => [
    ...covered.flatMap(({ run, path }) =>
      (run.joints ?? []).map(
        ({ at }, i): Dated =>
          at === undefined
            ? [`${path}.tubing.at`, run.tubing?.at]
            : [`${path}.joints[${i}].at`, at],
      ),
    ),
  ];
  const madeAnew = (covered: readonly PlacedRun[]) =>
    reworked.filter(({ path }) => covered.some((one) => path.startsWith(`${one.path}.`)));
  const tests = lastOfEachRun(pressureTests, "pressureTests", runs).counting;
  if (step === "pressure-test") {
    return tests.flatMap((test) => [
      ...laterThan(step, test.part, made(test.runs)),
      ...notBefore(step, test.part, madeAnew(test.runs)),
    ]);
  }
  if (step === "evacuation") {
    return lastOfEachRun(evacuations, "evacuations", runs).counting.flatMap((one) => [
      ...laterThan(step, one.part, [...made(one.runs), ...testsOf(tests, one.runs)]),
      ...notBefore(step, one.part, madeAnew(one.runs)),
    ]);
  }
  // Lines that were measured after a test: where their joints have dates, that of the lines is wrong.
  if (step === "line-run") {
    return tests.flatMap((test) =>
      test.runs.flatMap(({ run, path }) => {
        const at = `${path}.tubing.at`;
        return laterThan(step, { at: test.part.at }, [[at, run.tubing?.at]], correct(at));
      }),
    );
  }
  // A day is left, as who hangs a unit and joins a circuit may note both in the evening.
  if (step === "drain") {
    return runs.flatMap(({ run: { drain, tubing }, path }) =>
      laterThan(step, { at: drain?.at }, [[`${path}.tubing.at`, tubing?.at]], undefined, day),
    );
  }
  if (step === "supply" && supply?.measuredAt === "unit") {
    // A circuit with a plate of its own feeds another unit.
    const joined = circuits.flatMap(({ at, plate }, i): Dated[] =>
      plate ? [] : [[`power.circuits[${i}].at`, at]],
    );
    return laterThan(step, { at: supply.at }, joined, undefined, day);
  }
  if (step !== "operation") return [];
  const charged = operation.map((one) => laterThan(step, one, [["charge.at", charge?.at]]));
  return [
    // A unit cannot be read before it is open and has power.
    ...operation.flatMap((one) =>
      laterThan(step, one, [
        ["valves.openedAt", valves?.openedAt],
        ["power.energizedAt", power?.energizedAt],
      ]),
    ),
    // Readings led to a charge; one after it has to be there.
    ...(charged.every((found) => found.length > 0) ? charged.flat() : []),
  ];
}

const day = 86_400_000; // ms

const correct = (path: string) => say("commissioning.correct-field", { field: fieldWord(path) });

/** The tests of some of these runs, by their dates. */
const testsOf = (tests: readonly Covering<Read>[], runs: readonly PlacedRun[]): Dated[] =>
  tests
    .filter((test) => test.runs.some((run) => runs.includes(run)))
    .map(({ part, path }): Dated => [`${path}.at`, part.at]);

function laterThan(
  step: StepName,
  { at: read, readings }: Read,
  work: readonly Dated[],
  action: CommissioningStatement = say("commissioning.repeat-step", { step: stepWord(step) }),
  left = 0,
): StepCheck[] {
  if (!read) return [];
  const span = spanOf(readings);
  return work.flatMap(([path, at]) => {
    if (!at || !surelyBefore(read, at, span - left)) return [];
    const code = span > 0 ? "begun-before-work" : "older-than-work";
    const assessment = ownVerdict(
      "inconclusive",
      say(`commissioning.${code}`, { read: verbatim(read), at: verbatim(at) }),
      action,
    );
    return [{ name: "order", path, assessment }];
  });
}

/**
 * What was made anew, and not surely before the test had begun: an amendment of the day of the test, without a time,
 * may have come after it, and what may have come after it asks for it again.
 */
function notBefore(step: StepName, part: Read, reworked: readonly Amendment[]): StepCheck[] {
  const { at: read, readings } = part;
  if (!read) return [];
  const span = spanOf(readings);
  const open = reworked.flatMap(({ path, at }): StepCheck[] => {
    if (surelyBefore(at, read, -span) || surelyBefore(read, at, span)) return [];
    const said = say("commissioning.rework-not-ordered", {
      read: verbatim(read),
      at: verbatim(at),
    });
    const action = say("commissioning.repeat-step", { step: stepWord(step) });
    return [{ name: "order", path, assessment: ownVerdict("inconclusive", said, action) }];
  });
  const dated = reworked.map(({ path, at }): Dated => [path, at]);
  return [...laterThan(step, part, dated), ...open];
}

/** How long the readings took, ms. */
const spanOf = (readings: Read["readings"] = []): number =>
  1000 * spread(readings.flatMap((one) => (one.elapsed ? [one.elapsed.si] : [])));

/** Joints of which no date says that they were made before they were tested. */
export function jointsAssumed({ record, runs }: Job): CommissioningStatement[] {
  const { pressureTests = [], evacuations = [] } = record;
  if (pressureTests.length + evacuations.length === 0) return [];
  const undated = runs.flatMap(({ run }) =>
    (run.joints ?? []).flatMap((one, i) => {
      const name = nameOf(one);
      if ((one.at ?? run.tubing?.at) !== undefined) return [];
      return [name === undefined ? i + 1 : verbatim(name)];
    }),
  );
  return undated.length > 0 ? [say("commissioning.joints-undated", { joints: undated })] : [];
}
