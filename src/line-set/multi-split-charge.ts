// How much refrigerant do several indoor units on one outdoor unit need?
// Follows manufacturers' published manuals, brands withheld: either each line has its own pre-charged
// length, or one pre-charged length covers the sum of the lines; some add or take off a mass whatever the lengths.
// Does not cover branch-box systems whose manual asks for more than lengths.

import { askOneOf, listOf, objectOf, refuse, siOf } from "../quantity/check.ts";
import { choose } from "../quantity/hints.ts";
import { Quantity } from "../quantity/quantity.ts";
import { chargeOfLine, type ShortLineRule } from "./additional-charge.ts";
import { type ChargeRate, massUnitOf, rateOf } from "./charge-rate.ts";
import { type ChargeAssessment, type ChargeBounds, judgeCharge } from "./charge-verdict.ts";
import { say } from "./statements.ts";
import { lengthOf } from "./tube.ts";

/**
 * The liquid line of one indoor unit.
 *
 * Source: manufacturers' published manuals, brands withheld.
 */
export interface IndoorUnitLine {
  /** Length of liquid line as installed, one way. */
  readonly length: Quantity<"length">;
  /** Mass per length for this size of liquid line. */
  readonly rate: ChargeRate;
  /** Length that the factory charge covers on this line; leave out when one covers the sum. */
  readonly preChargedLength?: Quantity<"length"> | undefined;
  /** Mass that the manual adds for this indoor unit, or takes off (negative), whatever the length. */
  readonly allowance?: Quantity<"mass"> | undefined;
}

/**
 * Several indoor units on one outdoor unit.
 *
 * Source: manufacturers' published manuals, brands withheld.
 */
export interface MultiSplitChargeInput extends ChargeBounds {
  /** One entry per indoor unit. */
  readonly lines: readonly IndoorUnitLine[];
  /** Length that the factory charge covers for the sum of all lines; needs one rate for all. */
  readonly preChargedTotal?: Quantity<"length"> | undefined;
  /**
   * Mass that the manual adds for the system as a whole, or takes off (negative): for ports that stay unused, or what
   * the factory put in for a line of its own where `rate` counts for the whole length.
   */
  readonly allowance?: Quantity<"mass"> | undefined;
  /** What happens below the pre-charged length, from the manual. */
  readonly shortLineRule: ShortLineRule;
}

/**
 * The refrigerant to add to an outdoor unit with several indoor units, by the nameplate's rule.
 *
 * Assumes that all figures come from the manual of the outdoor unit.
 *
 * @param input - The lines, the rule and the limits; `maximumLength` and `minimumLength` are those of
 * the sum.
 * @returns The verdict, with the charge of all lines together.
 * @throws {@link InvalidInputError} when there is no line, both or neither kind of pre-charged length is
 * given, lines that share one pre-charged length have different rates, or an argument is impossible.
 * Cautions: as for `additionalCharge`.
 *
 * Source: manufacturers' published manuals, brands withheld.
 *
 * @example
 * ```ts
 * import { multiSplitCharge } from "hvac-install-math/line-set";
 * import { g, gPerM, m } from "hvac-install-math/quantity";
 *
 * const result = multiSplitCharge({
 *   lines: [
 *     { length: m(12), rate: gPerM(12) },
 *     { length: m(15), rate: gPerM(12) },
 *   ],
 *   preChargedTotal: m(20),
 *   shortLineRule: "add-only",
 * });
 * result.additionalCharge.toString(); // => 84 g
 * ```
 */
export function multiSplitCharge(input: MultiSplitChargeInput): ChargeAssessment {
  const { lines, preChargedTotal, shortLineRule } = objectOf("input", input);
  if (preChargedTotal !== undefined) lengthOf("preChargedTotal", preChargedTotal);
  const [first] = listOf("lines", lines, 1000, 1) as [MultiSplitChargeInput["lines"][number]];
  const rates = lines.map((line, i) =>
    rateOf(`lines[${i}].rate`, objectOf(`lines[${i}]`, line).rate),
  );
  const [rate] = rates as [Quantity<"massPerLength">];
  const lengths = lines.map(({ length }, i) => lengthOf(`lines[${i}].length`, length));
  const length = new Quantity(
    lengths.reduce((sum, one) => sum + one),
    first.length.unit,
  );

  lines.forEach(({ preChargedLength }, i) => {
    if ((preChargedLength === undefined) === (preChargedTotal === undefined)) {
      const names = ["preChargedLength", "preChargedTotal"];
      askOneOf(`lines[${i}].preChargedLength`, `${preChargedLength ?? "nothing"}`, names);
    }
  });
  if (preChargedTotal) {
    rates.forEach((one, i) => {
      if (one.si === rate.si) return;
      const allowed = `${rate} as on lines[0]; else give each line its preChargedLength`;
      refuse(`lines[${i}].rate`, one, allowed, choose(["rate", "preChargedTotal"], "matching"));
    });
  }

  const parts = preChargedTotal
    ? [chargeOfLine("", { length, preChargedLength: preChargedTotal, rate, shortLineRule })]
    : lines.map((line, i) =>
        chargeOfLine(`lines[${i}].`, {
          ...line,
          preChargedLength: line.preChargedLength as Quantity<"length">,
          shortLineRule,
        }),
      );
  const mass = (name: string, value: Quantity<"mass"> | undefined) =>
    value === undefined ? 0 : siOf(name, value, "mass", { min: -heaviest, max: heaviest });
  const allowances = lines.reduce(
    (sum, { allowance }, i) => sum + mass(`lines[${i}].allowance`, allowance),
    mass("allowance", input.allowance),
  );
  const unit = massUnitOf(rate);
  const sum = parts.reduce((total, { exact }) => total + exact, allowances);
  const why = parts.map((part) => part.why);
  if (allowances !== 0) {
    const said = say("line-set.allowances", { mass: new Quantity(allowances, unit) });
    why.push({ outcome: "pass", said });
  }
  const isBelow = sum < 0 && shortLineRule !== "add-and-subtract";
  if (isBelow) {
    const said = say("line-set.nothing-to-add-in-all", { total: new Quantity(sum, unit) });
    why.unshift(
      shortLineRule === "not-stated"
        ? { outcome: "inconclusive", said, actions: [say("line-set.enter-short-line-rule")] }
        : { outcome: "pass", said },
    );
  }
  return judgeCharge({
    exact: isBelow ? 0 : sum,
    // JCGM 100:2008, eq. 10: every line is measured on its own, also where one part covers them all.
    slope: Math.hypot(...parts.map((part) => part.slope)) * Math.sqrt(lines.length / parts.length),
    run: length,
    why,
    bounds: input,
    rateUnit: unit,
    rate: { argument: "lines[0].rate", value: rate },
    lines: lines.length,
  });
}

/** More than any split holds, kg: a figure beyond it was typed in another unit; common practice, no source. */
const heaviest = 100;
