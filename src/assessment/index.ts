/**
 * The shape of every verdict, the uncertainty behind it and the rule that decides it.
 *
 * @module assessment
 */
export {
  type Assessment,
  type Assumption,
  type Caution,
  type Citation,
  type Estimate,
  explain,
  type Outcome,
  overallOutcome,
  type Reason,
  type Statement,
} from "./assessment.ts";
export * from "./conformity.ts";
export * from "./statistics.ts";
export * from "./uncertainty.ts";
