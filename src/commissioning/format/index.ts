// Which form has a record, and what do its names stand for? What wire needs to read and write one, a file of its own in
// the build, so that reading a record doesn't load what judges it.
// Does not cover what the record proves.

export { recordShape } from "./generated/record-shape.ts";
export { valueAt, whatChanged, withValue } from "./path-values.ts";
export { leadsInto, nearestField, pathOf, type Segment } from "./record-path.ts";
export { type CircuitRulesName, circuitRules, rulesTitles } from "./rule-names.ts";
export { fromVersion1 } from "./version-1.ts";
export { standardOf, type VoltageStandardName, voltageStandards } from "./voltage-standards.ts";
