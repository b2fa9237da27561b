// Why is a reading set aside?
// Follows collect.ts, which does so. Does not cover what the rest shows.

/**
 * Why a reading is not part of the evidence.
 */
export type ExclusionReason =
  | "zero"
  | "over-range"
  | "before-isolation"
  | "repeated-time"
  | "out-of-order"
  | "spike"
  | "unconfirmed-jump";
