// Does the nameplate fit the parts? A cross-check of a plate that can be read.
// Follows UL 1995 / CSA C22.2 No. 236, 4th edition, 37.14 and 37.15; NFPA 70 (2023), 440.4(B).
// Does not cover which of two figures is wrong.
import { type Assessment, statement } from "../assessment/assessment.ts";
import { objectOf } from "../quantity/check.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { amperesOf } from "./checks.ts";
import type { Load } from "./loads.ts";
import { maximumBelowAmpacity } from "./maximum-below-ampacity.ts";
import { type NameplateFromParts, nameplateFromParts } from "./nameplate-from-parts.ts";

/**
 * The plate's figures against those from the parts.
 *
 * Source: UL 1995, 37.14 and 37.15.
 */
export interface NameplateAssessment
  extends Assessment<"ampacity-too-low" | "protection-too-high"> {
  /** The figures from the parts. */
  readonly calculated: NameplateFromParts;
}

/**
 * Checks a nameplate against the parts of the unit. The marked ampacity has to agree within its rounding,
 * ±0.05 A, or ±0.5 A when it is printed in whole amperes; the marked protection may be smaller than the
 * calculated one, never larger.
 *
 * Assumes what {@link nameplateFromParts} assumes.
 *
 * @param input - Loads, and the two marked figures (above 0).
 * @returns `pass` when both fit; `fail` when the ampacity is too low for the parts or the protection too high;
 * `inconclusive` when the ampacity is higher than the parts explain.
 * @throws {@link InvalidInputError} when the marked maximum is below the marked ampacity ("MOP below MCA"), or
 * a load is not one.
 *
 * Cautions: the nameplate comes first; a plate that does not fit is a reason to ask the manufacturer.
 *
 * Source: UL 1995, 37.14 and 37.15.
 *
 * @example
 * ```ts
 * import { assessNameplate } from "hvac-install-math/circuit-protection";
 * import { ampere } from "hvac-install-math/quantity";
 *
 * const checked = assessNameplate({
 *   loads: [
 *     { kind: "compressor", current: ampere(31.5) },
 *     { kind: "motor", current: ampere(3.1) },
 *   ],
 *   minimumCircuitAmpacity: ampere(42.5),
 *   maximumOvercurrentProtection: ampere(50),
 * });
 * checked.outcome; // => pass
 * checked.calculated.maximumOvercurrentProtection.toString(); // => 70 A
 * ```
 */
export function assessNameplate(input: {
  /** The parts of the unit. */
  readonly loads: readonly Load[];
  /** As marked. */
  readonly minimumCircuitAmpacity: Quantity<"current">;
  /** As marked. */
  readonly maximumOvercurrentProtection: Quantity<"current">;
}): NameplateAssessment {
  const {
    loads,
    minimumCircuitAmpacity: mca,
    maximumOvercurrentProtection: mop,
  } = objectOf("input", input);
  const marked = amperesOf("minimumCircuitAmpacity", mca);
  const maximum = amperesOf("maximumOvercurrentProtection", mop);
  if (maximum < marked) throw maximumBelowAmpacity(mca, mop);
  const calculated = nameplateFromParts(loads);
  const ampacity = calculated.minimumCircuitAmpacity;
  const ceiling = calculated.maximumOvercurrentProtection;
  const rounding = (Number.isInteger(marked) ? 0.5 : 0.05) + 1e-9;
  const tooLow = marked < ampacity.si - rounding;
  const tooHigh = maximum > ceiling.si;
  const unexplained = marked > ampacity.si + rounding;
  const { assumptions, cautions, sources } = calculated;
  return {
    outcome: tooLow || tooHigh ? "fail" : unexplained ? "inconclusive" : "pass",
    ...(tooLow
      ? { cause: "ampacity-too-low" as const }
      : tooHigh && { cause: "protection-too-high" as const }),
    reasons: [
      statement(
        unexplained ? "ampacity-unexplained" : tooLow ? "ampacity-too-low" : "ampacity-fits",
        "Minimum circuit ampacity {marked} marked, {ampacity} from the parts.",
        { marked: mca, ampacity },
      ),
      statement(
        tooHigh ? "protection-too-high" : "protection-fits",
        "Overcurrent protection {maximum} marked, at most {ceiling} from the parts.",
        { maximum: mop, ceiling },
      ),
    ],
    assumptions,
    cautions,
    sources,
    calculated,
  };
}
