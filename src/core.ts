// What every module stands on, in one file of the build. Not a subpath: the public faces are
// quantity/index.ts and assessment/index.ts, which re-export parts of it.
export * from "./assessment/assessment.ts";
export * from "./assessment/conformity.ts";
export * from "./assessment/statistics.ts";
export * from "./assessment/uncertainty.ts";
export * from "./quantity/atmosphere.ts";
export * from "./quantity/check.ts";
export * from "./quantity/equals.ts";
export * from "./quantity/errors.ts";
export * from "./quantity/json.ts";
export * from "./quantity/kinds.ts";
export * from "./quantity/products.ts";
export * from "./quantity/quantity.ts";
export * from "./quantity/units/index.ts";
