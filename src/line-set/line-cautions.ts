// What can hurt someone at a line set? The cautions that the verdicts of this module share. Internal.
// Follows the warnings of manufacturers' published manuals, in our own words; ASHRAE 34-2022 names the
// safety classes. Does not cover first aid, transport or the law on handling refrigerants.
import { type Citation, cite } from "../assessment/assessment.ts";
import type { Caution } from "../assessment/caution.ts";
import { danger, type SafetyStatement } from "../assessment/safety.ts";
import { oneOf } from "../quantity/check.ts";
import type { LineSetStatement } from "./statements.ts";

/**
 * Safety class of a refrigerant: toxicity A or B, flammability 1 (none) to 3 (higher).
 *
 * Source: ANSI/ASHRAE Standard 34-2022, 6.1.
 */
export type SafetyClass = "A1" | "A2L" | "A2" | "A3" | "B1" | "B2L" | "B2" | "B3";

/** A caution of this module. */
export type Heeded = Caution<LineSetStatement | SafetyStatement>;

/** Lines under pressure. */
export const underPressure = (): readonly Heeded[] => [
  danger("safety.open-under-pressure"),
  danger("safety.refrigerant-contact"),
];

/** Tubing facts that are not in a standard. */
export const manuals: Citation = /* @__PURE__ */ cite("manufacturer-manuals");

/** What handling this refrigerant asks for; a class that is not known may be flammable. */
export function refrigerantCautions(safetyClass?: SafetyClass): readonly Heeded[] {
  if (safetyClass !== undefined) {
    oneOf("safetyClass", safetyClass, ["A1", "A2L", "A2", "A3", "B1", "B2L", "B2", "B3"]);
  }
  return [
    ...underPressure(),
    ...(safetyClass?.endsWith("1") ? [] : [danger("safety.flammable-refrigerant")]),
    ...(safetyClass?.startsWith("B") ? [danger("safety.toxic-refrigerant")] : []),
  ];
}
