// Which of the rule sets that were passed does a record name?
// Follows the designations of the standards. Does not cover which of them applies: the adopted edition decides.
import type { CircuitRules } from "../circuit-protection/index.ts";
import { listOf, objectOf, oneOf } from "../quantity/check.ts";
import { type CircuitRulesName, rulesTitles } from "./format/index.ts";

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
  const title = rulesTitles[oneOf("name", name, Object.keys(rulesTitles) as CircuitRulesName[])];
  return requireRules("passed", passed).find((one) => one.name === title);
}

/** The rule sets that were passed, checked as far as they are told apart. */
export const requireRules = (
  argument: string,
  rules: readonly CircuitRules[],
): readonly CircuitRules[] =>
  listOf(argument, rules, 100).map((one, i) => objectOf(`${argument}[${i}]`, one));
