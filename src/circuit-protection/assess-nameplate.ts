// Does the nameplate fit the parts? A cross-check of a plate that can be read.
// Follows UL 1995 / CSA C22.2 No. 236, 4th edition, 37.14 and 37.15; NFPA 70 (2023), 440.4(B).
// Does not cover which of two figures is wrong.

import { type Assessment, verdict } from "../assessment/assessment.ts";
import { objectOf, siOf } from "../quantity/check.ts";
import { isAtLeast, isAtMost } from "../quantity/limit.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { amperesOf, maximumOf } from "./checks.ts";
import type { Load } from "./loads.ts";
import {
  type NameplateFromParts,
  type NameplateStandard,
  nameplateFromParts,
} from "./nameplate-from-parts.ts";
import { type CircuitProtectionStatement, type NameplateCause, say } from "./statements.ts";

/**
 * The plate's figures against those from the parts.
 *
 * Source: UL 1995, 37.14 and 37.15.
 */
export interface NameplateAssessment
  extends Assessment<NameplateCause, CircuitProtectionStatement> {
  /** The figures from the parts. */
  readonly calculated: NameplateFromParts;
}

/**
 * Checks a nameplate against the parts of the unit. The marked ampacity has to agree within half of the last digit
 * that is printed: ±0.05 A, or ±0.5 A when it is printed in whole amperes; the marked protection may be smaller than the
 * calculated one, never larger.
 *
 * Assumes what {@link nameplateFromParts} assumes.
 *
 * @param input - Loads, the two marked figures (above 0), and where stated the last printed digit and the standard.
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
  /** Last digit that is printed of the ampacity; 1 A is taken for a whole number, else 0.1 A. */
  readonly printedTo?: Quantity<"current"> | undefined;
  /** The standard of the nameplate; UL 1995 when left out. */
  readonly standard?: NameplateStandard | undefined;
}): NameplateAssessment {
  const {
    loads,
    minimumCircuitAmpacity: mca,
    maximumOvercurrentProtection: mop,
  } = objectOf("input", input);
  const marked = amperesOf("minimumCircuitAmpacity", mca);
  const maximum = maximumOf("maximumOvercurrentProtection", mop, marked);
  const { printedTo, standard } = input;
  const calculated = nameplateFromParts(loads, standard);
  const ampacity = calculated.minimumCircuitAmpacity;
  const ceiling = calculated.maximumOvercurrentProtection;
  const digit =
    printedTo === undefined
      ? Number.isInteger(marked)
        ? 1
        : 0.1
      : siOf("printedTo", printedTo, "current", { above: 0 });
  const rounding = digit / 2;
  const tooLow = !isAtLeast(marked, ampacity.si - rounding);
  const tooHigh = !isAtMost(maximum, ceiling.si);
  const unexplained = !isAtMost(marked, ampacity.si + rounding);
  const { assumptions, cautions, sources } = calculated;
  const outcome = tooLow || tooHigh ? "fail" : unexplained ? "inconclusive" : "pass";
  const marks = unexplained
    ? "ampacity-unexplained"
    : tooLow
      ? "ampacity-too-low"
      : "ampacity-fits";
  const protection = tooHigh ? "protection-too-high" : "protection-fits";
  const reasons = [
    say(`circuit-protection.${marks}`, { marked: mca, ampacity }),
    say(`circuit-protection.${protection}`, { maximum: mop, ceiling }),
  ];
  return verdict({
    outcome,
    ...(tooLow
      ? { cause: "ampacity-too-low" as const }
      : tooHigh && { cause: "protection-too-high" as const }),
    reasons: tooHigh && !tooLow ? reasons.reverse() : reasons,
    assumptions,
    cautions,
    actions:
      outcome === "pass"
        ? []
        : [
            say("circuit-protection.read-nameplate-again"),
            say("circuit-protection.ask-manufacturer"),
          ],
    sources,
    calculated,
  });
}
