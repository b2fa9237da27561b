// How is a figure questioned? A check that leaves its step open, with what to look at again.
// Follows common practice, no source. Does not cover which figures are: see the cross-checks.
import type { CheckName } from "./names.ts";
import { ownVerdict } from "./own-verdict.ts";
import { type CommissioningStatement, say } from "./statements.ts";
import type { Trial } from "./step.ts";
import { fieldWord } from "./words.ts";

/** A check that says that a figure cannot be as it is recorded, or that it is not proven. */
export function doubt(
  path: string,
  reason: CommissioningStatement,
  action: CommissioningStatement = say("commissioning.correct-field", { field: fieldWord(path) }),
  name: CheckName = "plausibility",
): Trial {
  const run = () => ownVerdict("inconclusive", reason, action);
  return { name, path, needs: {}, run } as Trial;
}
