// Why is the outcome what it is? What decides, and what passed, each at its step and part.
// Follows the steps. Does not cover what to do next: see actions.ts.
import type { Held } from "./hold-points.ts";
import { eachOnceAtItsPlace, type Placed, placed } from "./placed.ts";
import { say } from "./statements.ts";
import type { InstallationStep } from "./step.ts";
import type { Waiver } from "./waiver.ts";
import { fieldWords, verbatim } from "./words.ts";

/** That nothing of a step was checked, or nothing of a run, and on whose word. */
export function saidOnTheirWord({
  step,
  run,
  by,
  at,
  reason = "no-enclosed-room",
}: Waiver): Placed {
  const why = `commissioning.waiver.${reason}` as const;
  const word = { by: verbatim(by), at: verbatim(at), why };
  return placed(
    run === undefined
      ? say("commissioning.waived", word)
      : say("commissioning.waived-for-run", { ...word, run: verbatim(run) }),
    step,
  );
}

/** What decides, in the order fail, inconclusive, missing, not applicable; and what passed. */
export function reasonsOf(
  steps: readonly InstallationStep[],
  held: readonly Held[],
): { readonly deciding: readonly Placed[]; readonly passed: readonly Placed[] } {
  const found: Record<"fail" | "inconclusive" | "pass", Placed[]> = {
    fail: held.filter(({ proven }) => proven).map(({ hold }) => hold.reason),
    inconclusive: held
      .filter(({ hold, proven, undated }) => undated || (hold.state === "breached" && !proven))
      .map(({ hold }) => hold.reason),
    pass: [],
  };
  const missing: Placed[] = [];
  const away: Placed[] = [];
  for (const step of steps) {
    const { name, waiver, runWaivers = [], fallsAway } = step;
    if (waiver) away.push(saidOnTheirWord(waiver));
    away.push(...runWaivers.map(saidOnTheirWord));
    if (fallsAway) away.push(placed(fallsAway, name));
    for (const { path, assessment } of step.checks) {
      const [first] = assessment.reasons;
      if (!first || held.some(({ hold }) => hold.reason === first)) continue;
      found[assessment.outcome].push(placed(first, name, path));
    }
    for (const { path, reason } of step.problems) {
      found.inconclusive.push(placed(reason, name, path));
    }
    if (step.missing.length > 0) {
      const fields = fieldWords(step.missing);
      missing.push(placed(say("commissioning.not-recorded", { fields }), name));
    }
  }
  return {
    // Two checks may refuse one value, or say the same of one reading.
    deciding: eachOnceAtItsPlace([...found.fail, ...found.inconclusive, ...missing, ...away]),
    passed: found.pass,
  };
}
