// Which of the rule sets that were passed does a record name?
// Follows the designations of the standards. Does not cover which of them applies: the adopted edition decides.
import type { CircuitRules } from "../circuit-protection/index.ts";
import { listOf, objectOf, oneOf } from "../quantity/check.ts";
import type { CircuitRulesName } from "./format/index.ts";

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

/**
 * The rule set that a record means by its name, out of those that an app passes.
 *
 * @param name - The name in the record.
 * @param passed - The rule sets at hand.
 * @returns The rule set, or nothing where it is not among them.
 *
 * Source: the designations of the standards.
 *
 * @example
 * ```ts
 * import { nec2023 } from "hvac-install-math/circuit-protection";
 * import { circuitRulesNamed } from "hvac-install-math/commissioning";
 *
 * circuitRulesNamed("nfpa-70-2023", [nec2023])?.name; // => NEC 2023
 * circuitRulesNamed("iec-60364", [nec2023]); // => undefined
 * ```
 */
export function circuitRulesNamed(
  name: CircuitRulesName,
  passed: readonly CircuitRules[],
): CircuitRules | undefined {
  const title = titles[oneOf("name", name, Object.keys(titles) as CircuitRulesName[])];
  return requireRules("passed", passed).find((one) => one.name === title);
}

/** The rule sets that were passed, checked as far as they are told apart. */
export const requireRules = (
  argument: string,
  rules: readonly CircuitRules[],
): readonly CircuitRules[] =>
  listOf(argument, rules, 100).map((one, i) => objectOf(`${argument}[${i}]`, one));
