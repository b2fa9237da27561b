// What can hurt someone at a running unit's gauges?
import { type Caution, caution } from "../assessment/caution.ts";
import { danger, heed, type SafetyStatement } from "../assessment/safety.ts";
import { textOf } from "../quantity/check.ts";
import type { Refrigerant } from "../refrigerants/index.ts";
import { type OperatingCheckStatement, say } from "./statements.ts";

/** What to heed at gauges. */
export type GaugeCaution = Caution<OperatingCheckStatement | SafetyStatement>;

const always: readonly GaugeCaution[] = /* @__PURE__ */ (() => [
  danger("safety.refrigerant-contact"),
  danger("safety.running-unit"),
  danger("safety.work-at-height"),
  caution("danger", say("operating-check.mode-first")),
  caution("finding", say("operating-check.hoses-lose-refrigerant")),
])();

/** What every answer of this module carries. */
export function gaugeCautions(
  refrigerant?: Pick<Refrigerant, "safetyClass">,
): readonly GaugeCaution[] {
  const safetyClass = refrigerant
    ? textOf("refrigerant.safetyClass", refrigerant.safetyClass)
    : "A1";
  return heed<OperatingCheckStatement | SafetyStatement>([
    ...always,
    ...(safetyClass.endsWith("1") ? [] : [danger("safety.flammable-refrigerant")]),
    ...(safetyClass.startsWith("B") ? [danger("safety.toxic-refrigerant")] : []),
  ]);
}
