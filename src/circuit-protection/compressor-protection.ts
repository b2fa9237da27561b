// How large may the protection of a compressor circuit be by the code itself?
// Follows NFPA 70 (2023), 440.22(A) and (B); CSA C22.1, 28-704 and 28-708.
// Does not cover a marked maximum: where the plate says less, the plate rules, 440.22(C), 28-714.

import { refuse } from "../quantity/check.ts";
import { frozen } from "../quantity/frozen.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { twelveDigits } from "../quantity/twelve-digits.ts";
import { ampere } from "../quantity/units/electricity.ts";
import { rulesOf } from "./checks.ts";
import { type Load, loadsByMode, type ModeLoads } from "./loads.ts";
import { type CircuitRules, ratingAtLeast, ratingAtMost } from "./rules/index.ts";
import { say } from "./statements.ts";

/**
 * A ceiling and the standard size under it.
 *
 * Source: NFPA 70 (2023), 440.22(A).
 */
export interface ProtectionCeiling {
  /** The ceiling, unrounded. */
  readonly calculated: Quantity<"current">;
  /** Largest standard size that does not exceed it; not required to be below the smallest of the rules. */
  readonly rating: Quantity<"current">;
}

/**
 * Ceilings of the protection of a compressor circuit.
 *
 * Source: NFPA 70 (2023), 440.22(A); CSA C22.1, 28-708.
 */
export interface CompressorProtection {
  /** The first choice: 175 % of the rated-load current, or 50 % of the locked-rotor current. */
  readonly normal: ProtectionCeiling;
  /** Where the compressor will not start on it: 225 %; left out where the rules have no such step. */
  readonly ifItWillNotStart?: ProtectionCeiling | undefined;
}

/**
 * Largest protection of a circuit with compressors by the code: a percentage of the largest compressor plus
 * all that runs beside it, rounded **down** (ordinary motors round up under 430.52: not here).
 *
 * Where a motor is larger than the compressor, its 175 % for a dual-element fuse is taken, on the safe side of
 * 430.53(C)(4); where the heaters are, the standard size above their current, 240.4. Both from memory.
 *
 * @param input - Rules that know compressors, and loads with at least one compressor.
 * @returns The ceilings and the standard sizes under them, the largest of the modes.
 * @throws {@link InvalidInputError} when the rules or the loads know no compressor.
 *
 * Cautions: a marked maximum that is smaller rules; for a licensed electrician.
 *
 * Source: NFPA 70 (2023), 440.22(A), (B)(1), (B)(2) (the last from memory); CSA C22.1, 28-704, 28-708.
 *
 * @example
 * ```ts
 * import { compressorProtection, nec2023 } from "hvac-install-math/circuit-protection";
 * import { ampere } from "hvac-install-math/quantity";
 *
 * const loads = [{ kind: "compressor", current: ampere(24) }] as const;
 * const ceiling = compressorProtection({ rules: nec2023, loads });
 * ceiling.normal.rating.toString(); // => 40 A
 * ceiling.ifItWillNotStart?.rating.toString(); // => 50 A
 * ```
 */
export function compressorProtection(input: {
  /** The rule set. */
  readonly rules: CircuitRules;
  /** What the circuit feeds. */
  readonly loads: readonly Load[];
}): CompressorProtection {
  const rules = rulesOf(input);
  const { loads } = input;
  const { compressorProtection: rule, ratings, smallestRating } = rules;
  const modes = loadsByMode(loads).filter(({ compressors }) => compressors.length > 0);
  if (!rule) refuse("rules", rules.name, "rules for compressors");
  if (modes.length === 0) {
    const hint = say("circuit-protection.add-compressor");
    refuse("loads", loads, "a list with a compressor", hint);
  }
  const { ifItWillNotStart, lockedRotorMultiple = 6 } = rule;
  const total = (
    { compressors, motors, heaters, others, lockedRotor }: ModeLoads,
    factor: number,
  ) => {
    const [compressor = 0] = compressors;
    const [largest = 0] = motors;
    const rest = motors.reduce((a, b) => a + b, 0) - largest + others;
    if (rule.of === "lockedRotor") {
      const beside = rest + largest - compressor + heaters;
      return factor * (lockedRotor ?? lockedRotorMultiple * compressor) + beside;
    }
    if (heaters > largest) {
      return largest + rest + (ratingAtLeast(heaters, ratings.breaker) ?? heaters); // (B)(2), 240.4
    }
    // (A), (B)(1); (B)(2) with the fuse value of 430.52 where a motor is the largest
    return (largest > compressor ? rule.normal : factor) * largest + rest + heaters;
  };
  const ceiling = (factor: number): ProtectionCeiling => {
    const calculated = twelveDigits(Math.max(...modes.map((mode) => total(mode, factor))));
    const size = ratingAtMost(calculated, ratings.breaker) ?? 0;
    return { calculated: ampere(calculated), rating: ampere(Math.max(size, smallestRating)) };
  };
  return frozen({
    normal: ceiling(rule.normal),
    ...(ifItWillNotStart && { ifItWillNotStart: ceiling(ifItWillNotStart) }),
  });
}
