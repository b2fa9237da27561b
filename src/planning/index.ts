/**
 * The job before it is begun: what to bring, what to set, what to check, what to ask.
 *
 * Start with {@link planInstallation}.
 *
 * @module planning
 */
export type { InstallationPlan, PlanCheck, PlanItem, PlanQuestion } from "./plan.ts";
export { type PlanInstallationOptions, planInstallation } from "./plan-installation.ts";
export type {
  PlanningStatement,
  PlanningStatements,
  PlanningWord,
  PlanPart,
} from "./statements.ts";
