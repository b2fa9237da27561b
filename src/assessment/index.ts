/**
 * The shape of every verdict, the uncertainty behind it and the rule that decides it.
 *
 * @module assessment
 */
export {
  type Assessment,
  type Citation,
  type Estimate,
  type Outcome,
  overallOutcome,
} from "./assessment.ts";
export type { Catalogue, Message, Variants } from "./catalogue.ts";
export type { Caution, CautionKind } from "./caution.ts";
export { type Conformity, type ConformityInput, conformity } from "./conformity.ts";
export { explain, label } from "./explain.ts";
export type { SafetyStatement, SafetyStatements } from "./safety.ts";
export type { Figure, None, Single, Statement, StatementOf, Value, Verbatim } from "./statement.ts";
export { normalProbability, normalQuantile, studentQuantile } from "./statistics.ts";
export {
  type Correlation,
  type Instrument,
  type Meter,
  propagate,
  standardUncertainty,
  type UncertainInput,
} from "./uncertainty.ts";
