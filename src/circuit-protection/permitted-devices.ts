// Which breakers or fuses may stand ahead of the unit?
// Follows NFPA 70 (2023), 240.6(A), 440.22(C); CSA C22.1, table 13; IEC 60364-4-43:2008, 433.1 (Ib ≤ In).
// Does not cover interrupting ratings or selectivity.
import { siOf } from "../quantity/check.ts";
import { OutOfRangeError } from "../quantity/errors.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { ampere } from "../quantity/units/electricity.ts";
import type { CheckedPlate } from "./check-circuit.ts";
import { type CircuitRules, ratingAtMost } from "./rules/index.ts";

/**
 * The devices that the nameplate and the rules permit.
 *
 * Source: NFPA 70 (2023), 440.22(C); UL Marking Guide.
 */
export interface PermittedDevices {
  /** The one proposed: the largest standard size that the plate allows, or the smallest under metric rules. */
  readonly rating: Quantity<"current">;
  /** Every standard size from the minimum circuit ampacity up to the marked maximum; empty where none lies between. */
  readonly ratings: readonly Quantity<"current">[];
  /** What the plate asks for. */
  readonly kind: "fuse" | "fuse or breaker";
}

/** The window of standard ratings between the two figures of the nameplate. */
export function permittedDevices(
  rules: CircuitRules,
  { ampacity, maximum, marking }: CheckedPlate,
): PermittedDevices {
  const [min = 0] = rules.ratings.fuse;
  if (maximum < min) {
    siOf("maximumOvercurrentProtection", ampere(maximum), "current", { min }, OutOfRangeError);
  }
  const fuseOnly = marking === "fuse only";
  const { breaker, fuse } = rules.ratings;
  const list = fuseOnly ? fuse : breaker;
  const least = Math.max(ampacity, Math.min(rules.smallestRating, maximum));
  const ratings = list.filter((rating) => rating >= least && rating <= maximum);
  const rating = ((rules.proposes === "largest" ? ratings.at(-1) : ratings[0]) ??
    ratingAtMost(maximum, list) ??
    ratingAtMost(maximum, fuse)) as number;
  return {
    rating: ampere(rating),
    ratings: ratings.map((r) => ampere(r)),
    kind: fuseOnly || !breaker.includes(rating) ? "fuse" : "fuse or breaker",
  };
}
