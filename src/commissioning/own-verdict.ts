// How does the record itself answer a check? A verdict of one reason, and what to do about it.
// Follows assessment. Does not cover what a module judges.
import { type Assessment, cite, type Outcome, verdict } from "../assessment/assessment.ts";
import type { SafetyStatement } from "../assessment/safety.ts";
import type { CommissioningStatement } from "./statements.ts";

/** The verdict of a check that this module makes by itself. */
export interface OwnVerdict extends Assessment<never, CommissioningStatement | SafetyStatement> {}

/** A verdict of one reason, and the actions where it is no pass. */
export function ownVerdict(
  outcome: Outcome,
  reason: CommissioningStatement,
  ...actions: readonly CommissioningStatement[]
): OwnVerdict {
  return verdict({
    outcome,
    reasons: [reason],
    assumptions: [],
    cautions: [],
    actions: outcome === "pass" ? [] : actions,
    sources: [cite("common-practice")],
  });
}
