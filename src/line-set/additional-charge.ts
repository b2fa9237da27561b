// How much refrigerant does this run need beyond the factory charge? The nameplate's rule.
// Follows manufacturers' published manuals, brands withheld: Δm = rate · max(0, L − L_pre), or without
// the max. Does not cover a charge from tube volume: where the unit expands the liquid outdoors the line
// carries two-phase flow and holds less.
import { objectOf, oneOf, siOf } from "../quantity/check.ts";
import { Quantity } from "../quantity/quantity.ts";
import { type ChargeRate, massUnitOf, rateOf } from "./charge-rate.ts";
import { type ChargeAssessment, type ChargeBounds, judgeCharge } from "./charge-verdict.ts";
import type { Finding } from "./decide.ts";
import { say } from "./statements.ts";
import { lengthOf } from "./tube.ts";

/**
 * What the manual says of a run shorter than the pre-charged length: `add-only` (nothing is taken out),
 * `add-and-subtract`, `net-add-only` (short and long lines offset each other, but a sum below zero counts as zero), or
 * `not-stated`.
 *
 * Source: manufacturers' published manuals, brands withheld.
 */
export type ShortLineRule = "add-only" | "add-and-subtract" | "net-add-only" | "not-stated";

/**
 * One liquid line and the rule for it.
 *
 * Source: manufacturers' published manuals, brands withheld.
 */
export interface AdditionalChargeInput extends ChargeBounds {
  /** Length of liquid line as installed, one way, with what is coiled up; 0 to 1000 m. */
  readonly length: Quantity<"length">;
  /** Length that the factory charge covers, from nameplate or manual. */
  readonly preChargedLength: Quantity<"length">;
  /** Mass per length for this size of liquid line, from nameplate or manual. */
  readonly rate: ChargeRate;
  /** What happens below `preChargedLength`, from the manual. */
  readonly shortLineRule: ShortLineRule;
}

/**
 * What a full 5/8 in liquid line holds, kg/m: 0.545 in inside (ASTM B280-20, annealed), R-22 of 1190 kg/m³ at 25 °C,
 * rounded up. Small splits print about a tenth of it; most ounces read as pounds land above.
 */
const mostPerMeter = 0.2;

/** Kilograms to add for one line, how many more for a meter more, and why. Internal. */
export function chargeOfLine(
  path: string,
  input: Pick<AdditionalChargeInput, "length" | "preChargedLength" | "rate" | "shortLineRule">,
): {
  exact: number;
  slope: number;
  why: Finding;
  rate: Quantity<"massPerLength">;
} {
  const { length, preChargedLength } = objectOf("input", input);
  const rate = rateOf(`${path}rate`, input.rate);
  const excess =
    lengthOf(`${path}length`, length) - lengthOf(`${path}preChargedLength`, preChargedLength);
  const rule = oneOf("shortLineRule", input.shortLineRule, [
    "add-only",
    "add-and-subtract",
    "net-add-only",
    "not-stated",
  ]);
  const takesOut = rule === "add-and-subtract" || rule === "net-add-only";
  const counted = takesOut ? excess : Math.max(0, excess);
  const exact = rate.si * counted;
  const line = {
    length,
    preCharged: preChargedLength,
    difference: new Quantity(Math.abs(excess), length.unit),
  };
  const ruled = { ...line, rate, charge: new Quantity(Math.abs(exact), massUnitOf(rate)) };
  const why: Finding =
    exact !== 0 && rate.si > mostPerMeter
      ? {
          outcome: "inconclusive",
          said: say("line-set.rate-too-high", { rate }),
          actions: [say("line-set.read-rate-again")],
        }
      : excess < 0 && rule === "not-stated"
        ? {
            outcome: "inconclusive",
            said: say("line-set.short-line-rule-not-known", line),
            actions: [say("line-set.enter-short-line-rule")],
          }
        : {
            outcome: "pass",
            said:
              exact > 0
                ? say("line-set.add", ruled)
                : exact < 0
                  ? say("line-set.take-out", ruled)
                  : say("line-set.nothing-to-add", { length, preCharged: preChargedLength }),
          };
  return { exact, slope: counted === 0 ? 0 : rate.si, why, rate };
}

/**
 * The refrigerant to add to a split system for the length of its liquid line, by the nameplate's rule,
 * with the total for the label.
 *
 * **What to pass in.** The installed length, and from the plate or manual the pre-charged length, the rate and the rule for
 * short lines; the factory charge for a total. **What comes back.** What to add, the total, and whether it keeps the limits.
 *
 * Assumes that rate, pre-charged length and rule are those of the unit at hand: they differ from model
 * to model. The length is that of the tube installed, coils included, not the distance.
 *
 * @param input - Length (0 to 1000 m), pre-charged length (no more than the longest run), rate (0 to 1 kg/m),
 * rule for short runs, and the limits to hold it against.
 * @returns The verdict with the charge in the unit of the scale's step, the factory charge or the rate,
 * in that order. `inconclusive` when a short run's rule is not stated, a limit on the total is given
 * without the factory charge, the rate is above 0.2 kg/m, which no full liquid line of 5/8 in holds, or a limit is nearer
 * than the uncertainty lets one tell.
 * @throws {@link InvalidInputError} when an argument is missing, of another kind or impossible.
 * Cautions: weigh the charge, only into a tested and evacuated system; liquid refrigerant causes frostbite;
 * flammables (A2L, A2, A3) need tools rated for them and the room's charge limit; the nameplate decides.
 *
 * Source: manufacturers' published manuals, brands withheld.
 *
 * @example
 * ```ts
 * import { additionalCharge } from "hvac-install-math/line-set";
 * import { ft, lb, oz, ozPerFt } from "hvac-install-math/quantity";
 *
 * const result = additionalCharge({
 *   length: ft(60),
 *   preChargedLength: ft(40),
 *   rate: ozPerFt(0.16),
 *   shortLineRule: "add-only",
 *   factoryCharge: oz(52),
 *   maximumLength: ft(82),
 * });
 * result.outcome; // => pass
 * result.additionalCharge.toString(); // => 3.2 oz
 * result.totalCharge?.toString(lb, 2); // => 3.45 lb
 * ```
 */
export function additionalCharge(input: AdditionalChargeInput): ChargeAssessment {
  // One line has none to offset it.
  const { shortLineRule } = objectOf("input", input);
  const alone = shortLineRule === "net-add-only" ? "add-only" : shortLineRule;
  const { exact, slope, why, rate } = chargeOfLine("", { ...input, shortLineRule: alone });
  const { preChargedLength, maximumLength } = input;
  if (maximumLength !== undefined) {
    const max = siOf("maximumLength", maximumLength, "length", { above: 0 });
    siOf("preChargedLength", preChargedLength, "length", { max });
  }
  return judgeCharge({
    exact,
    slope,
    run: input.length,
    why: [why],
    bounds: input,
    rateUnit: massUnitOf(rate),
    rate: { argument: "rate", value: rate },
  });
}
