// What can hurt someone in a pressure test? The dangers that every result of this module carries.
// Follows ANSI/ASHRAE 15 (field test: medium, regulator, relief device) and common practice.
// Does not cover local law or the manufacturer's own procedure, which override all of it.
import type { Caution } from "../assessment/caution.ts";
import { danger, type SafetyStatement } from "../assessment/safety.ts";

/** Carried by every result of the module. */
export const dangers: readonly Caution<SafetyStatement>[] = /* @__PURE__ */ (() => [
  danger("safety.dry-nitrogen-only"),
  danger("safety.regulator-and-relief"),
  danger("safety.raise-in-stages"),
  danger("safety.lowest-rating"),
  danger("safety.open-under-pressure"),
  danger("safety.nitrogen-suffocates"),
])();
