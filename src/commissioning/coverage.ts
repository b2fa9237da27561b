// Was every run tested? Runs that no test covers, tests that name no run, and earlier tests that no longer count.
// Follows common practice, no source. Does not cover what a test shows: see the steps.
import type { Caution } from "../assessment/caution.ts";
import { caution } from "../assessment/caution.ts";
import { doubt } from "./doubt.ts";
import type { Job } from "./job.ts";
import type { StepName } from "./names.ts";
import { type Covering, type PlacedRun, uncovered } from "./runs.ts";
import { type CommissioningStatement, say } from "./statements.ts";
import type { Trial } from "./step.ts";
import { stepWord, verbatim } from "./words.ts";

/** Runs that no part covers, where there is any part. */
export function uncoveredRuns(
  step: StepName,
  runs: readonly PlacedRun[],
  parts: readonly Covering<unknown>[],
): Trial[] {
  if (parts.length === 0) return [];
  return uncovered(runs, parts).map(({ path, called: run }) =>
    doubt(
      path,
      say("commissioning.run-not-covered", { run }),
      say("commissioning.cover-run", { run, step: stepWord(step) }),
      "coverage",
    ),
  );
}

/** Names of runs that no run has. */
export function unknownRuns(
  { runs }: Job,
  parts: readonly Covering<{ readonly covers?: readonly string[] | undefined }>[],
): Trial[] {
  const known = new Set(runs.map(({ run }) => run.name));
  return parts.flatMap(({ part, path }) =>
    (part.covers ?? [])
      .filter((name) => !known.has(name))
      .map((name) => {
        const reason = say("commissioning.unknown-run", { run: verbatim(name) });
        return doubt(`${path}.covers`, reason, undefined, "coverage");
      }),
  );
}

/** A test that another one followed: that it is kept is a finding of the record. */
export const earlierTests = (
  step: StepName,
  earlier: readonly Covering<unknown>[],
): Caution<CommissioningStatement>[] =>
  earlier.length > 0
    ? [
        caution(
          "finding",
          say("commissioning.tested-again", { step: stepWord(step), tests: earlier.length }),
        ),
      ]
    : [];
