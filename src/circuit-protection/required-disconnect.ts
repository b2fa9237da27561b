// Which disconnect, and where?
// Follows NFPA 70 (2023), 440.12, 440.14, 110.26(A), Article 100 ("within sight").
// Does not cover horsepower ratings: compare the switch's with the rated-load and locked-rotor currents.
import type { Quantity } from "../quantity/quantity.ts";
import { ampere } from "../quantity/units/electricity.ts";
import type { CircuitRules } from "./rules/circuit-rules.ts";
import { ratingAtLeast, tidy } from "./standard-ratings.ts";

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
  /** 115 % of the rated-load currents (metric rules: the currents themselves). */
  readonly minimumRating: Quantity<"current">;
  /** The next made size; common practice, no source. Left out above the largest. */
  readonly madeSize?: Quantity<"current">;
  /** Whether one without fuses will do: the device ahead already is of the marked kind. */
  readonly nonFusedAllowed: boolean;
  /** Largest distance that counts as within sight, where the rules have one. */
  readonly withinSight?: Quantity<"length">;
  /** Working space in front, where the rules have one. */
  readonly workingSpace?: WorkingSpace;
}

/** Rating and place of the disconnect. */
export function requiredDisconnect(
  rules: CircuitRules,
  input: { current: number; fuses: number; nonFusedAllowed: boolean; toGround: number },
  condition: 1 | 2 | 3,
): RequiredDisconnect {
  const { disconnect, workingSpace: space, lengthUnit } = rules;
  const minimum = tidy(disconnect.factor * input.current); // 440.12(A), (B)
  // A fused switch takes the fuses of its own size at most.
  const made = ratingAtLeast(Math.max(minimum, input.fuses), disconnect.sizes);
  const length = (metres: number) => lengthUnit(metres / lengthUnit.scale);
  const depth = space?.depth.find(([upTo]) => input.toGround <= upTo)?.[1][condition - 1];
  return {
    minimumRating: ampere(minimum),
    ...(made && { madeSize: ampere(made) }),
    nonFusedAllowed: input.nonFusedAllowed,
    ...(disconnect.withinSight && { withinSight: length(disconnect.withinSight) }),
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
