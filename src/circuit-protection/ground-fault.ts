// Is ground-fault protection asked for at this outlet on this day? The texts of 210.8(F) with their dates.
// Follows NFPA 70, 210.8(F), editions 2020, 2023 and 2026 and the tentative interim amendments to them.
// Does not cover local law: states amended or deleted the clause; judge-ground-fault.ts asks for what is adopted.

import { dayOf, flagOf, oneOf, refuse, siOf } from "../quantity/check.ts";
import { frozen } from "../quantity/frozen.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { rulesOf } from "./checks.ts";
import type { Supply } from "./connection.ts";
import { connectionOf } from "./connection.ts";
import { type CircuitRules, type GroundFaultRule, notAdopted } from "./rules/index.ts";

/**
 * What the clause says to one outlet. `outside`: not within its reach. `exempt`: within it, but not yet on that day.
 * `required`: asked for. `by-date`: the day was not stated and decides.
 *
 * Source: NFPA 70, 210.8(F).
 */
export interface GroundFaultAnswer {
  /** The answer. */
  readonly answer: "outside" | "exempt" | "required" | "by-date";
  /** First day of the duty, where the text has one. */
  readonly from?: string | undefined;
  /** Whether a listed class C device is permitted. */
  readonly classC: boolean;
}

/** What the answer rests on. */
export interface GroundFaultInput {
  /** A rule set with the clause, such as `nec2023`. */
  readonly rules: CircuitRules;
  /** The supply. */
  readonly supply: Supply;
  /** Rating of the branch circuit, more than 0. */
  readonly rating: Quantity<"current">;
  /** Where the outlet is; a dwelling is assumed, on the safe side. */
  readonly occupancy?: "dwelling" | "other" | undefined;
  /** Day of the work, as "2026-11-29". */
  readonly date?: string | undefined;
  /** Whether the unit has power conversion (an inverter); it is taken as having it. */
  readonly powerConversion?: boolean | undefined;
  /** Name of the text that is adopted, or "not adopted"; the last that was in force on the day is taken. */
  readonly text?: string | undefined;
}

/**
 * Whether the outdoor outlet of a unit is within 210.8(F) on a day.
 *
 * Assumes a dwelling and the last text that was in force on the day where nothing else is stated.
 *
 * @param input - Rules, supply, rating above 0, and where stated occupancy, day, power conversion, text.
 * @returns The answer, the first day of the duty, and whether a class C device is permitted.
 * @throws {@link InvalidInputError} when the rules have no such clause or no such text, or the date is none.
 *
 * Cautions: states amended or deleted the clause; the adopted text and its date decide, not this answer.
 *
 * Source: NFPA 70 (2020) with TIA 20-13 and its second amendment of 2022-08-12; NFPA 70 (2023), exception 2; NFPA 70
 * (2026), exceptions 2 and 3.
 *
 * @example
 * ```ts
 * import { groundFaultProtection, nec2023 } from "hvac-install-math/circuit-protection";
 * import { ampere, volt } from "hvac-install-math/quantity";
 *
 * const outlet = { rules: nec2023, supply: { voltage: volt(240), phases: 1 }, rating: ampere(30) } as const;
 * groundFaultProtection({ ...outlet, date: "2026-08-31" }).answer; // => exempt
 * groundFaultProtection({ ...outlet, date: "2026-09-01" }).answer; // => required
 * ```
 */
export function groundFaultProtection(input: GroundFaultInput): GroundFaultAnswer {
  const rules = rulesOf(input);
  const { occupancy = "dwelling", date, powerConversion = true, text } = input;
  const rating = siOf("rating", input.rating, "current", { above: 0 });
  oneOf("occupancy", occupancy, ["dwelling", "other"]);
  flagOf("powerConversion", powerConversion);
  if (date !== undefined) dayOf("date", date);
  const { groundFault: rule } = rules;
  if (!rule)
    refuse("rules", rules.name, "rules with a clause on ground-fault protection of outlets");
  if (text !== undefined) {
    oneOf("text", text, textsOf(rule));
  }
  const { voltsToGround } = connectionOf(rules, input.supply, "supply");
  const reach = { rating, toGround: voltsToGround, phases: input.supply.phases, occupancy };
  return frozen(groundFaultAnswer(rule, reach, { date, powerConversion, text }));
}

/** What may be stated of the text. */
export const textsOf = ({ texts }: GroundFaultRule): readonly string[] => [
  ...texts.map(({ name }) => name),
  notAdopted,
];

/** The same on checked figures. */
export function groundFaultAnswer(
  rule: GroundFaultRule,
  reach: { rating: number; toGround: number; phases: 1 | 3; occupancy: "dwelling" | "other" },
  by: { date: string | undefined; powerConversion: boolean; text: string | undefined },
): GroundFaultAnswer {
  const { classC } = rule;
  const within =
    by.text !== notAdopted &&
    reach.occupancy === "dwelling" &&
    reach.phases === 1 &&
    reach.toGround <= rule.toGround &&
    reach.rating <= rule.rating;
  if (!within) return { answer: "outside", classC };
  const [printed, ...amended] = rule.texts;
  const inForce = amended.filter(
    ({ inForceFrom }) => inForceFrom && (by.date === undefined || by.date >= inForceFrom),
  );
  const text = rule.texts.find(({ name }) => name === by.text) ?? inForce.at(-1) ?? printed;
  const converted = by.powerConversion ? text?.powerConversionFrom : undefined;
  const from = text?.listedEquipmentFrom ?? converted;
  if (from === undefined) return { answer: "required", classC };
  const answer = by.date === undefined ? "by-date" : by.date < from ? "exempt" : "required";
  return { answer, from, classC };
}
