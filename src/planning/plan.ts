// What is a plan? What to bring, what to set, what to check, what to ask. Types only.
// Follows the order of the work; common practice, no source.
// Does not cover how the figures come about: one file per part of the plan.
import type { Citation, Outcome } from "../assessment/assessment.ts";
import type { Caution } from "../assessment/caution.ts";
import type { Statement } from "../assessment/statement.ts";
import type { PlanPart } from "./statements.ts";

/**
 * One line of a plan: a statement with its figures, what it is about and where it comes from.
 */
export interface PlanItem extends Statement {
  /** What it is about. */
  readonly part: PlanPart;
  /** Path of the part of the record that it is about, such as `runs[0]`. */
  readonly path?: string | undefined;
  /** Where its figures come from. */
  readonly sources: readonly Citation[];
}

/** A line of a plan that holds something against a limit. */
export interface PlanCheck extends PlanItem {
  /** Whether the plan keeps the limit; `inconclusive` where it can't be told yet. */
  readonly outcome: Outcome;
}

/** What the plan can't say yet. */
export interface PlanQuestion extends Statement {
  /** Path of the field of the record, such as `equipment.manual.testPressure`. */
  readonly path: string;
  /** The parts of the plan that wait for it. */
  readonly changes: readonly PlanPart[];
}

/**
 * The plan of an installation, each list in the order of the work. Deeply frozen.
 */
export interface InstallationPlan {
  /** What to put into the van. */
  readonly bring: readonly PlanItem[];
  /** What to set, fill, hold and expect. */
  readonly set: readonly PlanItem[];
  /** What was held against manual, plates and rules. */
  readonly check: readonly PlanCheck[];
  /** What plates, manual or site must still say. */
  readonly ask: readonly PlanQuestion[];
  /** What this job hides, what can hurt someone, who governs. */
  readonly cautions: readonly Caution[];
  /** Where all of it comes from, each place once. */
  readonly sources: readonly Citation[];
}
