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
  type Figure,
  type Outcome,
  overallOutcome,
  type Reason,
  type Statement,
} from "./assessment.ts";
export { type Conformity, type ConformityInput, conformity } from "./conformity.ts";
export { normalProbability, normalQuantile, studentQuantile } from "./statistics.ts";
export {
  type Correlation,
  type Instrument,
  propagate,
  standardUncertainty,
  type UncertainInput,
} from "./uncertainty.ts";
