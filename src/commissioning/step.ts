// What is a step of the work, and how is one tried? Runs the checks that the data allow and names what lacks.
// Follows the order of the work as manuals have it; common practice, no source.
// Does not cover what a check decides: the modules do.
import { type Outcome, overallOutcome } from "../assessment/assessment.ts";
import { isInvalidInputError } from "../quantity/errors.ts";
import { known } from "../quantity/known.ts";
import type { Draft } from "../shapes/index.ts";
import type { CheckVerdicts, StepCheck } from "./check-verdicts.ts";
import { leadsInto, nearestField } from "./format/index.ts";
import type { CheckName, StepName, StepState } from "./names.ts";
import type { Refusal, StepProblem } from "./problem.ts";
import type { CommissioningStatement } from "./statements.ts";
import type { Waiver } from "./waiver.ts";

/** A step and what came of it. */
export interface InstallationStep {
  /** Which step. */
  readonly name: StepName;
  /** How far it is recorded. */
  readonly state: StepState;
  /** `pass` only when `done` and all of its checks pass; `inconclusive` when not applicable, as nothing was proven. */
  readonly outcome: Outcome;
  /** Who waived it and why; only where it is not applicable for that. */
  readonly waiver?: Waiver | undefined;
  /** Who waived it for single runs, and why, besides `waiver`; runs that nobody waived were judged. */
  readonly runWaivers?: readonly Waiver[] | undefined;
  /** Why it falls away; only where the construction of the unit leaves it out. */
  readonly fallsAway?: CommissioningStatement | undefined;
  /** The checks that were made. */
  readonly checks: readonly StepCheck[];
  /** Values that could not be used. */
  readonly problems: readonly StepProblem[];
  /** Paths of the fields that are missing. */
  readonly missing: readonly string[];
  /** Earlier steps that have to pass before this one may be done, and have not. */
  readonly blockedBy: readonly StepName[];
}

/** A check to try: the fields that it needs by path, and where its arguments stand in the record. */
export type Trial = { readonly [Name in CheckName]: NamedTrial<Name> }[CheckName];

interface NamedTrial<Name extends CheckName> {
  readonly name: Name;
  readonly path: string;
  readonly needs: Readonly<Record<string, unknown>>;
  readonly run: () => CheckVerdicts[Name];
  readonly paths?: Readonly<Record<string, string>> | undefined;
}

/** What trying the checks of a step gave. */
export type Tried = Omit<InstallationStep, "blockedBy" | "problems"> & {
  readonly problems: readonly Refusal[];
};

/** Tries the checks of a step. Fields that are missing apart from a check are listed too. */
export function tryAll(
  name: StepName,
  trials: readonly Trial[],
  lacks: readonly string[] = [],
): Tried {
  const missing = new Set(lacks);
  const checks: StepCheck[] = [];
  const problems: Refusal[] = [];
  let some = false;
  for (const { name: check, path, needs, run, paths = {} } of trials) {
    const absent = Object.keys(needs).filter((key) => needs[key] === undefined);
    some ||= absent.length < Object.keys(needs).length;
    for (const key of absent) missing.add(key);
    if (absent.length > 0) continue;
    try {
      checks.push({ name: check, path, assessment: run() } as StepCheck);
    } catch (error) {
      if (!isInvalidInputError(error)) throw error;
      // The sign of a unit that cannot have such a figure is no path.
      const place = known(() => nearestField(recordPath(error.argument, path, paths))) ?? path;
      // What a module lacks is asked for, not refused.
      if (error.value === "undefined") missing.add(place);
      else problems.push({ check, path: place, error });
    }
  }
  const outcomes = checks.map(({ assessment }) => assessment.outcome);
  const whole = missing.size === 0 && problems.length === 0;
  return {
    name,
    state:
      checks.length > 0 && whole ? "done" : some || problems.length > 0 ? "partial" : "missing",
    outcome: overallOutcome(whole ? outcomes : [...outcomes, "inconclusive"]),
    checks,
    problems,
    missing: [...missing],
  };
}

/** Where an argument of a module stands in the record: by the longest prefix that is known. */
function recordPath(
  argument: string,
  path: string,
  paths: Readonly<Record<string, string>>,
): string {
  const own = Object.keys(paths)
    .filter((key) => leadsInto(argument, key))
    .sort((a, b) => b.length - a.length)[0];
  if (own === undefined) return `${path}.${argument}`;
  return `${paths[own]}${argument.slice(own.length)}`;
}

type Loose<T> = { readonly [P in keyof T]: T[P] | Draft<T[P]> | undefined };

/**
 * The fields that are there, as the module takes them that is called with them: what a step needs was looked for
 * before, and what a part still lacks, its module names.
 */
export function present<T extends object>(fields: Loose<NoInfer<T>>): T {
  const entries = Object.entries(fields).filter(([, value]) => value !== undefined);
  return Object.fromEntries(entries) as T;
}
