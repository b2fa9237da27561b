// Is the installation right, as far as its record shows? Every check in the order of the work, one verdict.
// Follows the modules, each by its own standards; the order of the work is common practice, no source.
// Does not cover what was not recorded: that is listed as missing and never counts as passed.
import {
  type Assessment,
  type Citation,
  type Outcome,
  overallOutcome,
} from "../assessment/assessment.ts";
import { danger, heed } from "../assessment/safety.ts";
import type { CircuitRules } from "../circuit-protection/index.ts";
import { objectOf } from "../quantity/check.ts";
import { frozen } from "../quantity/frozen.ts";
import { actionsOf } from "./actions.ts";
import { calibrationsOf } from "./calibration.ts";
import { sealedCharge } from "./charge-doubts.ts";
import { checkRecord } from "./check-record.ts";
import { completed, type Files } from "./complete-record.ts";
import { earlierTests } from "./coverage.ts";
import { type HoldPoint, holdsOf, valvesHeld } from "./hold-points.ts";
import { ofSteps } from "./installation-cautions.ts";
import { type Job, jobOf } from "./job.ts";
import type { StepName } from "./names.ts";
import { inOrder, jointsAssumed } from "./order-of-work.ts";
import { eachOnce, type Placed, type PlacedCaution, placed } from "./placed.ts";
import { problemOf } from "./problem.ts";
import { reasonsOf, saidOnTheirWord } from "./reasons.ts";
import type { InstallationRecord } from "./record.ts";
import { recordCautions } from "./record-cautions.ts";
import { requireRules } from "./rule-sets.ts";
import { lastOfEachRun } from "./runs.ts";
import { staleVacuum } from "./stale-vacuum.ts";
import type { InstallationStep, Tried } from "./step.ts";
import { blockersOf } from "./step-order.ts";
import { tryCharge, tryValves } from "./try-charge.ts";
import { tryDrain } from "./try-drain.ts";
import { tryEvacuation } from "./try-evacuation.ts";
import { tryJoints } from "./try-joints.ts";
import { tryLineRun } from "./try-line-run.ts";
import { tryOperation } from "./try-operation.ts";
import { tryCircuit, trySupply } from "./try-power.ts";
import { tryPressureTest } from "./try-pressure-test.ts";
import { standsOutdoors, tryRoomLimit } from "./try-room-limit.ts";
import { waived } from "./waived.ts";

/**
 * The verdict on an installation. `cause` is the first step that fails; a statement has the step and the part of
 * the record of which it speaks beside it.
 */
export interface InstallationAssessment extends Assessment<StepName, Placed> {
  /** Findings of the record and of its steps, each danger once, and who governs. */
  readonly cautions: readonly PlacedCaution[];
  /** What to do next, in the order of the work; empty on a clean pass. */
  readonly actions: readonly Placed[];
  /** The first of the reasons: all but those of checks that passed. */
  readonly deciding: readonly Placed[];
  /** The steps in the order of the work. */
  readonly steps: readonly InstallationStep[];
  /** What may not be done yet. */
  readonly holds: readonly HoldPoint[];
  /** Paths of all fields that are missing. */
  readonly missing: readonly string[];
}

/** What a record is judged by. */
export interface AssessInstallationOptions {
  /** The rule sets for circuits that the record may name; the one that it names and that is missing here is asked for. */
  readonly rules: readonly CircuitRules[];
  /** Equipment and instruments that the record refers to by `onFile`. */
  readonly onFile?: Files | undefined;
}

/**
 * Runs every check that a record allows, in the order of the work: run, joints, pressure test, evacuation,
 * room limit, charge, valves, circuit, supply, drain, operation.
 *
 * **What to pass in.** The record, however much of it is filled in, and the sets of electrical rules that it may name.
 * **What comes back.** The verdict on the whole, each step with its state and checks, the hold points, the missing
 * fields and the actions in the order of the work.
 *
 * **How.** One step that fails fails the whole, and so does a record that shows by its own dates that valves, charge
 * or power came before their proof. A step that is missing, incomplete, inconclusive or unusable leaves the
 * whole `inconclusive`. It passes only when every step is done and passes, but for steps that were declared
 * not applicable: those are no pass, and come first among the reasons and the assumptions. A test that is
 * older than the work that it should prove leaves its step open. A value that no check can use, a
 * declaration that the record contradicts and a rule set that was not passed leave their step open and hide none of
 * the others.
 *
 * Assumes that the record tells what was done; what each check assumes is listed.
 *
 * @param record - The record, in whatever state of filling.
 * @param options - The rule sets for circuits that the record may name: `{ rules: [nec2023] }` for one that says
 * `rules: "nfpa-70-2023"` of a circuit; {@link circuitRules} has the names.
 * @returns The verdict with steps, hold points and missing fields.
 * @throws {@link InvalidInputError} when it is not a record: an unknown field, a value of another form, with
 * the path.
 *
 * Cautions: a pass says that the recorded figures keep their limits, not that the work is safe. Nitrogen
 * under pressure, refrigerant, flammable gas and line voltage can kill; nameplate, manufacturer's instructions, local
 * code and licensed practice govern.
 *
 * Source: common practice, no source, for the order; JCGM 106:2012, 8.3, for the outcomes.
 *
 * @example
 * ```ts
 * import { nec2023 } from "hvac-install-math/circuit-protection";
 * import { assessInstallation } from "hvac-install-math/commissioning";
 * import { ft } from "hvac-install-math/quantity";
 *
 * const record = {
 *   version: 2,
 *   runs: [{ tubing: { length: ft(36), lift: ft(9), outdoorUnit: "below" } }],
 *   equipment: { manual: { run: { maximumLength: ft(66), maximumLift: ft(33) } } },
 * } as const;
 * const result = assessInstallation(record, { rules: [nec2023] });
 * result.outcome; // => inconclusive
 * `${result.steps[0]?.name}: ${result.steps[0]?.outcome}`; // => line-run: inconclusive
 * result.holds.map(({ name, state }) => `${name} ${state}`).join(", "); // => open-valves held, add-charge held, power-on held
 * ```
 */
export function assessInstallation(
  record: InstallationRecord,
  options: AssessInstallationOptions,
): InstallationAssessment {
  const { rules, onFile } = objectOf("options", options);
  const job = jobOf(completed(checkRecord(record), onFile), requireRules("options.rules", rules));
  const tried = attempts.map((attempt) => waived(job, attempt)).map((step) => inOrder(job, step));
  const held = holdsOf(job, tried);
  const judged = tried.map((step) => (step.name === "valves" ? valvesHeld(step, held) : step));
  const steps = judged.map(
    (step): InstallationStep => ({
      ...step,
      problems: step.problems.map((one) => problemOf(job.record, one)),
      blockedBy: blockersOf(step.name, judged),
    }),
  );
  const outcome = overallOutcome([
    ...steps.filter(({ state }) => state !== "not-applicable").map((step) => step.outcome),
    ...held.flatMap(({ proven, undated }): Outcome[] =>
      proven ? ["fail"] : undated ? ["inconclusive"] : [],
    ),
  ]);
  const cause = steps.find((step) => step.outcome === "fail")?.name;
  const calibration = calibrationsOf(job.record);
  const { deciding, passed } = reasonsOf(steps, held);
  return frozen({
    outcome,
    ...(cause && { cause }),
    reasons: [...deciding, ...passed],
    deciding,
    assumptions: eachOnce<Placed>([
      ...steps.flatMap(({ waiver, runWaivers = [] }) =>
        [...(waiver ? [waiver] : []), ...runWaivers].map(saidOnTheirWord),
      ),
      ...jointsAssumed(job),
      ...standsOutdoors(job),
      ...ofChecks(steps, ({ assumptions }) => assumptions),
      ...calibration.assumptions,
    ]),
    cautions: heed<Placed>([
      ...calibration.cautions,
      ...recordCautions(job.record),
      ...sealedCharge(job),
      ...testedAgain(job),
      ...ofSteps(steps, [
        // Every refrigerant takes the place of air: whoever says that no room counts is told so.
        ...steps.flatMap(({ waiver, runWaivers = [] }) =>
          [waiver, ...runWaivers].some((one) => one?.step === "room-limit")
            ? [danger("safety.refrigerant-suffocates")]
            : [],
        ),
        ...ofChecks(steps, ({ cautions }) => cautions).filter(({ kind }) => kind !== "governing"),
      ]),
    ]),
    actions: actionsOf(steps, held, staleVacuum(job.record)),
    sources: sourcesOf(steps),
    steps,
    holds: held.map(({ hold }) => hold),
    missing: [...new Set(steps.flatMap(({ missing }) => missing))],
  });
}

/** The steps in the order of the work. */
const attempts: readonly ((job: Job) => Tried)[] = [
  tryLineRun,
  tryJoints,
  tryPressureTest,
  tryEvacuation,
  tryRoomLimit,
  tryCharge,
  tryValves,
  tryCircuit,
  trySupply,
  tryDrain,
  tryOperation,
];

/** Tests that were done again. */
function testedAgain({ record, runs }: Job): PlacedCaution[] {
  const { pressureTests, evacuations } = record;
  return [
    ...earlierTests("pressure-test", lastOfEachRun(pressureTests, "", runs).earlier),
    ...earlierTests("evacuation", lastOfEachRun(evacuations, "", runs).earlier),
  ];
}

/** What the checks say, each at its place. */
function ofChecks<S extends Placed>(
  steps: readonly InstallationStep[],
  said: (assessment: Assessment<string>) => readonly S[],
): S[] {
  return steps.flatMap(({ name, checks }) =>
    checks.flatMap(({ path, assessment }) =>
      said(assessment as Assessment<string>).map((one) => placed(one, name, path)),
    ),
  );
}

/** Every place in a source once. */
function sourcesOf(steps: readonly InstallationStep[]): Citation[] {
  const cited = new Map<string, Citation>();
  for (const { checks } of steps) {
    for (const { assessment } of checks) {
      for (const one of assessment.sources) cited.set(`${one.source} ${one.clause}`, one);
    }
  }
  return [...cited.values()];
}
