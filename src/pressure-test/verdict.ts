// What does a verdict on a pressure test hold? The types that the judge fills.
// Follows JCGM 106:2012, 8.3, for the outcome. Does not cover how it is found: judge.ts.
import type { Assessment, Estimate } from "../assessment/assessment.ts";
import type { Quantity } from "../quantity/quantity.ts";
import type { RefrigerantEquivalent } from "./refrigerant-loss.ts";
import type { PressureTestCause, PressureTestStatement } from "./statements.ts";
import type { UncertaintyPart } from "./uncertainty-part.ts";

/**
 * One part of the uncertainty of the drop.
 *
 * Source: JCGM 100:2008, 5.1.2.
 */
export interface UncertaintyShare {
  /** Where it comes from. */
  readonly part: UncertaintyPart;
  /** Standard uncertainty that it gives the drop. */
  readonly standardUncertainty: Quantity<"pressureDifference">;
}

/**
 * The verdict on a pressure test. `pass`: a drop of the limit or more is excluded, and no leak is proven.
 * `fail`: a drop above the limit is proven, or a leak. Without a limit nothing passes:
 * {@link PressureTestAssessment.noLeakAbove} says what was seen.
 *
 * Source: JCGM 106:2012, 8.3; the shape is the library's own.
 */
export interface PressureTestAssessment
  extends Assessment<PressureTestCause, PressureTestStatement> {
  /** What is missing at the temperature of the last reading; negative when there is too much. */
  readonly correctedDrop: Estimate<"pressureDifference">;
  /** What makes up the uncertainty, the largest first. */
  readonly uncertaintyBudget: readonly UncertaintyShare[];
  /** What to do next, in order; empty on a pass. */
  readonly actions: readonly PressureTestStatement[];
  /** The limit as a drop over this test: as stated, at most 1 % of the fill pressure. */
  readonly limit?: Quantity<"pressureDifference"> | undefined;
  /** Probability that the true drop keeps the stated limit. */
  readonly conformanceProbability?: number | undefined;
  /** The smallest drop that would have proven a leak: the expanded uncertainty. A leak of just this size shows in half of all tests, one of twice the size in almost all. */
  readonly smallestProvableDrop: Quantity<"pressureDifference">;
  /** No drop above this was seen: the drop, or 0, plus the expanded uncertainty. */
  readonly noLeakAbove: Quantity<"pressureDifference">;
  /** Throughput V·d/Δt at the gas temperature of the last reading, where volume and time are known. */
  readonly leakRate?: Estimate<"throughput"> | undefined;
  /** The same leak as mass of nitrogen, from the density of the real gas. */
  readonly nitrogenLoss?: Estimate<"massFlow"> | undefined;
  /** The smallest leak that this test could have proven, where volume and time are known. */
  readonly smallestProvableLeak?: Quantity<"throughput"> | undefined;
  /** The leak as refrigerant in service, where `refrigerant` was stated: of the drop that was found. Order of magnitude. */
  readonly refrigerantLoss?: RefrigerantEquivalent | undefined;
  /** The same of the largest drop that is not excluded, {@link PressureTestAssessment.noLeakAbove}. */
  readonly refrigerantLossAtMost?: RefrigerantEquivalent | undefined;
  /** How much longer to hold until the evidence decides, if the drop goes on as it did; absent when it decides already, or when waiting up to a week would not help. */
  readonly furtherHold?: Quantity<"duration"> | undefined;
}
