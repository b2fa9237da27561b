// What is to be done next? The actions of the steps in the order of the work, and what is still to be recorded.
// Follows the order of the work; common practice, no source.
// Does not cover how it is done: nameplate, manual and code say that.
import type { Held } from "./hold-points.ts";
import { eachOnce, type Placed, placed } from "./placed.ts";
import type { StaleVacuum } from "./stale-vacuum.ts";
import { say } from "./statements.ts";
import type { InstallationStep } from "./step.ts";
import { fieldWord, fieldWords, stepWord } from "./words.ts";

/** What to do next: first about what was done too early or too late, then step by step. */
export function actionsOf(
  steps: readonly InstallationStep[],
  held: readonly Held[],
  vacuum: StaleVacuum | undefined,
): readonly Placed[] {
  return eachOnce<Placed>([
    ...held.filter(({ proven }) => proven).flatMap(({ hold }) => hold.actions),
    ...(vacuum ? [placed(vacuum.action, "evacuation")] : []),
    ...steps.flatMap(ofStep),
    ...held.filter(({ proven }) => !proven).flatMap(({ hold }) => hold.actions),
  ]);
}

function ofStep({ name, checks, problems, missing }: InstallationStep): Placed[] {
  const next = checks.flatMap(({ path, assessment: { outcome, actions = [] } }): Placed[] => {
    if (outcome === "pass") return [];
    const own = actions.map((one) => placed(one, name, path));
    return own.length > 0
      ? own
      : [placed(say("commissioning.repeat-step", { step: stepWord(name) }), name, path)];
  });
  const fields = fieldWords(missing);
  return [
    ...next,
    ...problems.flatMap(({ path, hint }) =>
      [say("commissioning.correct-field", { field: fieldWord(path) }), ...(hint ? [hint] : [])].map(
        (said) => placed(said, name, path),
      ),
    ),
    ...(fields.length ? [placed(say("commissioning.record-fields", { fields }), name)] : []),
  ];
}
