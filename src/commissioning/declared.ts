// Does the record bear out that a step does not apply?
// Follows common practice, no source; the safety classes are those of ASHRAE 34.
// Does not cover who may declare it: licensed practice and local code say that.
import { overallOutcome } from "../assessment/assessment.ts";
import { describe } from "../quantity/check.ts";
import { hasWords } from "./has-words.ts";
import type { NotApplicable, OptionalStep } from "./not-applicable.ts";
import type { InstallationRecord } from "./record.ts";
import type { StepProblem, Tried } from "./step.ts";
import { safetyClassOf } from "./try-charge.ts";

/** The step as its declaration leaves it: not applicable, or tried, with what speaks against the declaration. */
export function declared(record: InstallationRecord, tried: Tried): Tried {
  const own = [...(record.notApplicable ?? []).entries()].filter(
    ([, { step }]) => step === tried.name,
  );
  const [declaration] = own.map(([, one]) => one);
  if (!declaration) return tried;
  const problems = [
    ...own.flatMap(([i, one]) => flawsOf(record, one, `notApplicable[${i}]`)),
    ...own.slice(1).map(([i]) => problem(`notApplicable[${i}]`, tried.name, "one per step")),
    ...contradictions(record, declaration.step),
  ];
  if (problems.length === 0) {
    return {
      name: tried.name,
      state: "not-applicable",
      outcome: "inconclusive",
      declaration,
      checks: [],
      problems,
      missing: [],
    };
  }
  // What was recorded is judged all the same: no declaration hides a failure.
  return {
    ...tried,
    state: "partial",
    outcome: overallOutcome([tried.outcome, "inconclusive"]),
    problems: [...tried.problems, ...problems],
  };
}

function problem(path: string, value: unknown, allowed: string, hint = ""): StepProblem {
  return { check: "not-applicable", path, value: describe(value), allowed, hint };
}

function flawsOf(record: InstallationRecord, given: NotApplicable, path: string): StepProblem[] {
  const empty = (["reason", "by"] as const)
    .filter((field) => !hasWords(given[field]))
    .map((field) => problem(`${path}.${field}`, given[field], "a text with words"));
  const refrigerant = record.equipment?.refrigerant;
  const safe = refrigerant !== undefined && safetyClassOf(refrigerant) === "A1";
  if (given.step !== "room-limit" || safe) return empty;
  const allowed = "room-limit only where equipment.refrigerant is of safety class A1";
  const hint = "What burns or poisons, or is not known, is held against its room.";
  return [...empty, problem(`${path}.step`, given.step, allowed, hint)];
}

/** What the record holds of a step that is said not to apply. */
function contradictions(record: InstallationRecord, step: OptionalStep): StepProblem[] {
  const { tubing, equipment, joints, room, drain, operation = [] } = record;
  const under = (path: string, part: object | undefined) =>
    Object.entries(part ?? {}).map(([key, value]) => [`${path}.${key}`, value] as const);
  const found: Record<OptionalStep, readonly (readonly [path: string, value: unknown])[]> = {
    "line-run": [
      ["tubing.lift", tubing?.lift],
      ["tubing.outdoorUnit", tubing?.outdoorUnit],
      ["tubing.bends", tubing?.bends],
      ["equipment.manual.run", equipment?.manual?.run],
    ],
    joints: [
      ["joints[0]", joints?.[0]],
      ["tubing.jointCount", tubing?.jointCount || undefined],
    ],
    "room-limit": under("room", room),
    drain: [
      ...under("drain", drain),
      // A coil that cools makes water.
      ...operation.map(
        ({ mode }, i) => [`operation[${i}].mode`, mode === "cooling" ? mode : undefined] as const,
      ),
    ],
  };
  const allowed = `nothing, as ${step} is declared not applicable`;
  return found[step]
    .filter(([, value]) => value !== undefined)
    .map(([path, value]) =>
      problem(path, value, allowed, "Take back the declaration or correct the record."),
    );
}
