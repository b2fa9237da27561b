// Which of the rule sets that were passed does a record name?
// Follows the designations of the standards. Does not cover which of them applies: the adopted edition decides.
import type { CircuitRules } from "../circuit-protection/index.ts";
import { listOf, objectOf } from "../quantity/check.ts";
import type { CircuitRulesName } from "./rule-names.ts";

/** The name by which each rule set calls itself, which tells it from the others. */
const titles: Readonly<Record<CircuitRulesName, string>> = {
  "nfpa-70-2020": "NEC 2020",
  "nfpa-70-2023": "NEC 2023",
  "nfpa-70-2026": "NEC 2026",
  "csa-c22.1-2024": "CEC 2024",
  "iec-60364": "IEC 60364",
  "bs-7671-2018": "BS 7671",
  "as-nzs-3000-2018-australia": "AS/NZS 3000 (Australia)",
  "as-nzs-3000-2018-new-zealand": "AS/NZS 3000 (New Zealand)",
  "japan-interpretation": "Japan, Interpretation",
};

/** The rule set of that name, where it was passed. */
export const ruleSetOf = (
  name: CircuitRulesName,
  passed: readonly CircuitRules[],
): CircuitRules | undefined => passed.find((one) => one.name === titles[name]);

/** The rule sets that were passed, checked as far as they are told apart. */
export const requireRules = (rules: readonly CircuitRules[]): readonly CircuitRules[] =>
  listOf("options.rules", rules).map((one, i) => objectOf(`options.rules[${i}]`, one));
