// Is the installation right, as far as its record shows? Every check in the order of the work, one verdict.
// Follows the modules, each by its own standards; the order of the work is common practice, no source.
// Does not cover what was not recorded: that is listed as missing and never counts as passed.
import {
  type Assessment,
  overallOutcome,
  type Reason,
  type Statement,
  statement,
} from "../assessment/assessment.ts";
import { calibrationsOf } from "./calibration.ts";
import { checkRecord } from "./check-record.ts";
import { declared } from "./declared.ts";
import { blockersOf, type Held, type HoldPoint, holdsOf, valvesHeld } from "./hold-points.ts";
import type { NotApplicable } from "./not-applicable.ts";
import { inOrder, jointsAssumed } from "./order-of-work.ts";
import type { InstallationRecord } from "./record.ts";
import { recordCautions } from "./record-cautions.ts";
import type { InstallationStep, StepName, Tried } from "./step.ts";
import { tryCharge, tryRoomLimit, tryValves } from "./try-charge.ts";
import { tryDrain, tryOperation } from "./try-operation.ts";
import { tryCircuit, trySupply } from "./try-power.ts";
import { tryPressureTest } from "./try-pressure-test.ts";
import { tryEvacuation, tryJoints, tryLineRun } from "./try-tightness.ts";

/**
 * The verdict on an installation. `cause` is the first step that fails.
 *
 * Source: none; the library's own type.
 */
export interface InstallationAssessment extends Assessment<StepName> {
  /** The first of the reasons: all but those of checks that passed. */
  readonly deciding: readonly Reason[];
  /** The steps in the order of the work. */
  readonly steps: readonly InstallationStep[];
  /** What may not be done yet. */
  readonly holds: readonly HoldPoint[];
  /** Paths of all fields that are missing. */
  readonly missing: readonly string[];
}

const order: readonly ((record: InstallationRecord) => Tried)[] = [
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

/**
 * Runs every check that a record allows, in the order of the work: run, joints, pressure test, evacuation,
 * room limit, charge, valves, circuit, supply, drain, operation.
 *
 * One step that fails fails the whole, and so does a record that shows by its own dates that valves, charge
 * or power came before their proof. A step that is missing, incomplete, undecided or unusable leaves the
 * whole `inconclusive`. It passes only when every step is done and passes, but for steps that were declared
 * not applicable: those are no pass, and come first among the reasons and the assumptions. A test that is
 * older than the work that it should prove leaves its step open. A value that no check can use and a
 * declaration that the record contradicts are problems of their step and hide none of the others.
 *
 * Assumes that the record tells what was done; what each check assumes is listed.
 *
 * @param record - The record, in whatever state of filling.
 * @returns The verdict with steps, hold points and missing fields.
 * @throws {@link InvalidInputError} when it is not a record: an unknown field, a value of another form, with
 * the path.
 *
 * Cautions: a pass says that the recorded figures keep their limits, not that the work is safe. Nitrogen
 * under pressure, refrigerant, flammable gas and mains can kill; nameplate, manufacturer's instructions, local
 * code and licensed practice govern.
 *
 * Source: common practice, no source, for the order; JCGM 106:2012, 8.3, for the outcomes.
 *
 * @example
 * ```ts
 * import { assessInstallation } from "hvac-install-math/commissioning";
 * import { ft } from "hvac-install-math/quantity";
 *
 * const result = assessInstallation({
 *   version: 1,
 *   tubing: { length: ft(36), lift: ft(9), outdoorUnit: "below" },
 *   equipment: { manual: { run: { maximumLength: ft(66), maximumLift: ft(33) } } },
 * });
 * result.outcome; // => inconclusive
 * `${result.steps[0]?.name}: ${result.steps[0]?.outcome}`; // => line-run: pass
 * result.holds.map(({ name, state }) => `${name} ${state}`).join(", "); // => open-valves held, add-charge held, power-on held
 * ```
 */
export function assessInstallation(record: InstallationRecord): InstallationAssessment {
  const checked = checkRecord(record);
  const tried = order
    .map((step) => declared(checked, step(checked)))
    .map((step) => inOrder(checked, step));
  const held = holdsOf(checked, tried);
  const judged = tried.map((step) => (step.name === "valves" ? valvesHeld(step, held) : step));
  const steps = judged.map(
    (step): InstallationStep => ({ ...step, blockedBy: blockersOf(step.name, judged) }),
  );
  const outcome = overallOutcome([
    ...steps.filter(({ state }) => state !== "not-applicable").map((step) => step.outcome),
    ...(held.some(({ proven }) => proven) ? (["fail"] as const) : []),
  ]);
  const cause = steps.find((step) => step.outcome === "fail")?.name;
  const verdicts = steps.flatMap(({ checks }) => checks.map(({ assessment }) => assessment));
  const calibration = calibrationsOf(checked);
  const { deciding, passed } = reasonsOf(steps, held);
  return {
    outcome,
    ...(cause && { cause }),
    reasons: [...deciding, ...passed],
    deciding,
    assumptions: unlike([
      ...steps.flatMap(({ declaration }) => (declaration ? [onTheirWord(declaration)] : [])),
      ...orderAssumed(held),
      ...jointsAssumed(checked),
      ...oneRunAssumed(checked),
      ...verdicts.flatMap(({ assumptions }) => assumptions),
      ...calibration.assumptions,
    ]),
    cautions: unlike([
      ...calibration.cautions,
      ...recordCautions(checked),
      ...steps.flatMap(({ declaration }) =>
        declaration?.step === "room-limit" ? [suffocates] : [],
      ),
      ...verdicts.flatMap(({ cautions }) => cautions),
      recordOnly,
    ]),
    sources: verdicts
      .flatMap(({ sources }) => sources)
      .filter(
        ({ source, clause }, i, all) =>
          all.findIndex((one) => one.source === source && one.clause === clause) === i,
      ),
    steps,
    holds: held.map(({ hold }) => hold),
    missing: [...new Set(steps.flatMap(({ missing }) => missing))],
  };
}

const recordOnly = /* @__PURE__ */ statement(
  "record-only",
  "This judges a record, not the work: nameplate, manufacturer's instructions, local code and licensed practice govern.",
);

const suffocates = /* @__PURE__ */ statement(
  "room-limit-not-checked",
  "No room was held against the charge: every refrigerant takes the place of air, and in a closed room a leak can suffocate.",
);

function onTheirWord({ step, by, at }: NotApplicable): Statement {
  const text = "That {step} does not apply is the word of {by} ({at}); nothing of it was checked.";
  return statement("not-applicable", text, { step, by, at });
}

/** What was done without dates that say that its proof came first. */
function orderAssumed(held: readonly Held[]): Statement[] {
  const holds = held.filter(({ undated }) => undated).map(({ hold }) => hold.name);
  const text = "The dates do not show that the proof came first; taken for granted of: {holds}.";
  return holds.length ? [statement("order-unknown", text, { holds: holds.join(", ") })] : [];
}

/** A record has one run, one drain and one room: they stand for all indoor units. */
function oneRunAssumed({ equipment }: InstallationRecord): Statement[] {
  const units = equipment?.indoorUnits?.length ?? 0;
  const text =
    "There are {units} indoor units, and one run, drain and room: taken for the worst of each.";
  return units > 1 ? [statement("several-indoor-units", text, { units })] : [];
}

/** What decides, in the order fail, undecided, missing, not applicable; and what passed. */
function reasonsOf(
  steps: readonly InstallationStep[],
  held: readonly Held[],
): { readonly deciding: readonly Reason[]; readonly passed: readonly Reason[] } {
  const said: Record<"fail" | "inconclusive" | "pass", Reason[]> = {
    fail: held.filter(({ proven }) => proven).map(({ hold }) => hold.reason),
    inconclusive: held
      .filter(({ hold, proven }) => hold.state === "breached" && !proven)
      .map(({ hold }) => hold.reason),
    pass: [],
  };
  const lacking: Reason[] = [];
  const away: Reason[] = [];
  for (const { name, checks, problems, missing, declaration } of steps) {
    if (declaration) {
      const { by, at, reason } = declaration;
      const text = '{inStep}: not applicable and not checked, declared by {by} ({at}): "{reason}".';
      away.push(statement("not-applicable", text, { inStep: name, by, at, reason }));
    }
    for (const { path, assessment } of checks) {
      const [first] = assessment.reasons;
      if (!first || held.some(({ hold }) => hold.reason === first)) continue;
      const text = `{inStep} ({inPart}): ${first.text}`;
      said[assessment.outcome].push(
        first.text === undefined
          ? first
          : statement(first.code, text, { ...first.values, inStep: name, inPart: path }),
      );
    }
    for (const { path, value, allowed } of problems) {
      const text = "{inStep}: {path} is {value}; allowed: {allowed}.";
      const values = { inStep: name, path, value, allowed };
      said.inconclusive.push(statement("unusable-value", text, values));
    }
    if (missing.length > 0) {
      const values = { inStep: name, fields: missing.join(", ") };
      lacking.push(statement("missing", "{inStep}: not recorded: {fields}.", values));
    }
  }
  const deciding = [...said.fail, ...said.inconclusive, ...lacking, ...away];
  return { deciding, passed: said.pass };
}

/** Each statement once. */
function unlike(all: readonly Statement[]): Statement[] {
  return [...new Map(all.map((one) => [JSON.stringify([one.code, one.values]), one])).values()];
}
