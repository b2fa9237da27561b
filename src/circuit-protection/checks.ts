import { describe, objectOf, oneOf, siOf, textOf, wholeNumberOf } from "../quantity/check.ts";
import { InvalidInputError } from "../quantity/errors.ts";
import type { Quantity } from "../quantity/quantity.ts";
import type { Material } from "./conductor-size.ts";
import type { CircuitRules, RuleFamily } from "./rules/circuit-rules.ts";

/** A current above 0, in A. */
export const amperesOf = (argument: string, value: Quantity<"current">): number =>
  siOf(argument, value, "current", { above: 0 });

/** Copper or aluminum. */
export const materialOf = (argument: string, value: Material): Material =>
  oneOf(argument, value, ["copper", "aluminum"]);

/** The rule set of an input, which has to be one. */
export function rulesOf<F extends RuleFamily>(input: {
  readonly rules: CircuitRules<F>;
}): CircuitRules<F> {
  const { rules } = objectOf("input", input);
  if (Array.isArray(rules?.systems)) return rules;
  throw new InvalidInputError({
    argument: "rules",
    value: describe(rules),
    allowed: "a rule set such as nec2023",
  });
}

/** A whole number from 1 to 1000. */
export function countOf(argument: string, count: number): number {
  return wholeNumberOf(argument, count, { min: 1, max: 1000 });
}

/** A day of the calendar, written "2026-11-29". */
export function dayOf(argument: string, day: string): string {
  const time = /^\d{4}-\d\d-\d\d$/.test(textOf(argument, day)) ? Date.parse(`${day}T00:00Z`) : NaN;
  // 2026-02-30 is read as March 2 by some engines.
  if (time >= 0 && new Date(time).toISOString().startsWith(day)) return day;
  throw new InvalidInputError({
    argument,
    value: describe(day),
    allowed: 'a day such as "2026-11-29"',
  });
}
