import { objectOf, oneOf, refuse, siOf, wholeNumberOf } from "../quantity/check.ts";
import type { Quantity } from "../quantity/quantity.ts";
import type { Material } from "./conductor-size.ts";
import type { CircuitRules, RuleFamily } from "./rules/index.ts";
import { say } from "./statements.ts";

/** A current above 0, in A. */
export const amperesOf = (argument: string, value: Quantity<"current">): number =>
  siOf(argument, value, "current", { above: 0 });

/** The largest device of a plate, in A, which is no smaller than the ampacity. */
export const maximumOf = (argument: string, mop: Quantity<"current">, mca: number): number =>
  siOf(argument, mop, "current", {
    min: mca,
    hint: say("circuit-protection.maximum-below-ampacity"),
  });

/** Copper or aluminum. */
export const materialOf = (argument: string, value: Material): Material =>
  oneOf(argument, value, ["copper", "aluminum"]);

/** The rule set of an input, which has to be one. */
export function rulesOf<F extends RuleFamily>(input: {
  readonly rules: CircuitRules<F>;
}): CircuitRules<F> {
  const { rules } = objectOf("input", input);
  if (Array.isArray(rules?.systems)) return rules;
  return refuse("rules", rules, "a rule set such as nec2023");
}

/** A whole number from 1 to 1000. */
export function countOf(argument: string, count: number): number {
  return wholeNumberOf(argument, count, { min: 1, max: 1000 });
}
