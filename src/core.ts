// What every module stands on, in one file of the build. Not a subpath: the public faces are
// quantity/index.ts and assessment/index.ts, which re-export parts of it.
export * from "./assessment/assessment.ts";
export { variantFor } from "./assessment/catalogue.ts";
export { type CautionKind, caution, inOrder } from "./assessment/caution.ts";
export * from "./assessment/conformity.ts";
export { explain, label } from "./assessment/explain.ts";
export { isPlainEnglish } from "./assessment/grammar.ts";
export * from "./assessment/safety.ts";
export * from "./assessment/simple-acceptance.ts";
export {
  type None,
  type Say,
  type Single,
  type StatementOf,
  sayer,
  type Value,
  type Verbatim,
} from "./assessment/statement.ts";
export * from "./assessment/statistics.ts";
export * from "./assessment/uncertainty.ts";
export * from "./quantity/ambient-range.ts";
export * from "./quantity/atmosphere.ts";
export * from "./quantity/catalogue.ts";
export * from "./quantity/check.ts";
export * from "./quantity/equals.ts";
export * from "./quantity/errors.ts";
export * from "./quantity/frozen.ts";
export * from "./quantity/hints.ts";
export * from "./quantity/json.ts";
export * from "./quantity/kinds.ts";
export * from "./quantity/known.ts";
export * from "./quantity/later.ts";
export * from "./quantity/limit.ts";
export * from "./quantity/naming-arguments.ts";
export * from "./quantity/plain.ts";
export * from "./quantity/problem-of.ts";
export * from "./quantity/products.ts";
export * from "./quantity/quantity.ts";
export * from "./quantity/rounded.ts";
export * from "./quantity/station-pressure.ts";
export * from "./quantity/twelve-digits.ts";
export * from "./quantity/units/index.ts";
