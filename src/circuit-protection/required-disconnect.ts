// Which disconnect, and where?
// Follows NFPA 70 (2023), 440.12, 440.14, 110.26(A), 110.29; CSA C22.1, 28-604, 28-714, 2-308; AS/NZS 3000, 4.19.
// Does not cover horsepower ratings: compare the switch's with the rated-load and locked-rotor currents.

import { refuse } from "../quantity/check.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { twelveDigits } from "../quantity/twelve-digits.ts";
import { ampere } from "../quantity/units/electricity.ts";
import { rulesOf } from "./checks.ts";
import { type Load, loadsByMode } from "./loads.ts";
import { type CircuitRules, ratingAtLeast } from "./rules/index.ts";

/**
 * Clear space in front of the disconnect.
 *
 * Source: NFPA 70 (2023), 110.26(A).
 */
export interface WorkingSpace {
  /** Depth in front, for the deepest condition or the one stated. */
  readonly depth: Quantity<"length">;
  /** Width; the width of the equipment where that is more. */
  readonly width: Quantity<"length">;
  /** Height from the ground; the height of the equipment where that is more. */
  readonly height: Quantity<"length">;
}

/**
 * What the disconnect has to be.
 *
 * Source: NFPA 70 (2023), 440.12, 440.14.
 */
export interface RequiredDisconnect {
  /** 115 % of the rated-load currents, of all or of the largest (metric rules: the currents themselves). */
  readonly minimumRating: Quantity<"current">;
  /** The next made size; common practice, no source. Left out above the largest. */
  readonly madeSize?: Quantity<"current"> | undefined;
  /** Whether one without fuses will do: the device ahead already is of the marked kind. */
  readonly nonFusedAllowed: boolean;
  /** Largest distance from the unit, where the rules have one. */
  readonly withinSight?: Quantity<"length"> | undefined;
  /** Working space in front, where the rules have one. */
  readonly workingSpace?: WorkingSpace | undefined;
}

/** Rating and place of the disconnect. */
export function requiredDisconnect(
  rules: CircuitRules,
  input: {
    load: number;
    largest: number | undefined;
    fuses: number;
    nonFusedAllowed: boolean;
    toGround: number;
  },
  condition: 1 | 2 | 3,
): RequiredDisconnect {
  const { disconnect, workingSpace: space, lengthUnit } = rules;
  const minimum = ratingFor(rules, input.load, input.largest);
  // A fused switch takes the fuses of its own size at most.
  const made = ratingAtLeast(Math.max(minimum, input.fuses), disconnect.sizes);
  const length = (meters: number) => lengthUnit(meters / lengthUnit.scale);
  const depth = space?.depth.find(([upTo]) => input.toGround <= upTo)?.[1][condition - 1];
  return {
    minimumRating: ampere(minimum),
    ...(made && { madeSize: ampere(made) }),
    nonFusedAllowed: input.nonFusedAllowed,
    ...(disconnect.within && { withinSight: length(disconnect.within) }),
    ...(space &&
      depth && {
        workingSpace: {
          depth: length(depth),
          width: length(space.width),
          height: length(space.height),
        },
      }),
  };
}

/** 440.12(A), (B): on the sum. 28-714(2): on the largest, the others as they are; on the sum where it is not known. */
function ratingFor({ disconnect }: CircuitRules, load: number, largest = load): number {
  const factored = disconnect.of === "largest" ? Math.min(largest, load) : load;
  return twelveDigits(load + (disconnect.factor - 1) * factored);
}

/**
 * Smallest rating of a disconnect from the loads that it switches, the largest of their operating modes.
 *
 * Assumes what the rules say of several loads: 115 % of the sum (NFPA 70), or 115 % of the largest compressor or motor
 * and the others' currents (CSA C22.1).
 *
 * @param input - Rules, and loads with a current above 0.
 * @returns The rating, not rounded to a made size.
 * @throws {@link InvalidInputError} for an empty list or a load that is not one, or rules without such a clause.
 *
 * Cautions: the horsepower or locked-rotor rating has to be enough too; for a licensed electrician.
 *
 * Source: NFPA 70 (2023), 440.12(A), (B); CSA C22.1, 28-714.
 *
 * @example
 * ```ts
 * import { cec2024, minimumDisconnect, nec2023 } from "hvac-install-math/circuit-protection";
 * import { ampere } from "hvac-install-math/quantity";
 *
 * const loads = [
 *   { kind: "compressor", current: ampere(14) },
 *   { kind: "motor", current: ampere(4.2) },
 * ] as const;
 * minimumDisconnect({ rules: nec2023, loads }).toString(); // => 20.93 A
 * minimumDisconnect({ rules: cec2024, loads }).toString(); // => 20.3 A
 * ```
 */
export function minimumDisconnect(input: {
  /** The rule set. */
  readonly rules: CircuitRules;
  /** What it switches. */
  readonly loads: readonly Load[];
}): Quantity<"current"> {
  const rules = rulesOf(input);
  const standing = rules.points["disconnect-rating"]?.standing ?? "missing";
  if (standing === "missing") {
    refuse("rules", rules.name, "rules with a clause on the rating of a disconnect");
  }
  const ratings = loadsByMode(input.loads).map(({ motors, heaters, others }) => {
    const load = motors.reduce((sum, one) => sum + one, 0) + heaters + others;
    return ratingFor(rules, load, motors[0] ?? 0);
  });
  return ampere(Math.max(...ratings));
}
