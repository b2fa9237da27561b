// Leak proven, the limit excluded, or neither? The decision alone: no figure is computed here, no word said.
// Follows JCGM 106:2012, 8.3.2 and 8.3.3 (guarded acceptance and rejection).
// Does not cover whether the test was one at all: plausible.ts hands over its doubts.
import type { Outcome } from "../assessment/assessment.ts";
import { conformity } from "../assessment/conformity.ts";
import { normalProbability, normalQuantile } from "../assessment/statistics.ts";
import { numberOf } from "../quantity/check.ts";
import { pascal } from "../quantity/units/pressure.ts";
import type { Limit } from "./criterion.ts";
import type { PressureTestCause } from "./statements.ts";

/** Half as much again as the expanded uncertainty: 1 in 700 by chance at k = 2. */
const BEYOND_CHANCE = 1.5;

/** Whether a drop is a leak beyond chance, with its expanded uncertainty. */
export const isBeyondChance = (drop: number, U: number): boolean => drop > BEYOND_CHANCE * U;

/**
 * The confidence of the decision and its coverage factor. Where nothing else is asked, k = 2 decides, so that the verdict
 * agrees with the ± that is shown; stricter than one-sided 95 %.
 */
export function coverage(confidence: number = normalProbability(2)): { level: number; k: number } {
  const level = numberOf("confidence", confidence, { min: 0.8, below: 1 });
  return { level, k: normalQuantile(level) };
}

/** A drop, its standard uncertainty, and that of its distance to the limit; Pa. */
export interface Weighed {
  readonly drop: number;
  readonly u: number;
  readonly uLimit: number;
  readonly confidence: number | undefined;
  readonly limit: Limit | undefined;
  /** Something keeps the test from passing, whatever the drop. */
  readonly isDoubted: boolean;
}

/** What the drop is to the limit: proven within it, proven above it, neither; or no limit was stated. */
export type Ruling = "within" | "above" | "across" | "none";

/** The decision. */
export interface Decision {
  readonly outcome: Outcome;
  readonly cause: PressureTestCause | undefined;
  readonly ruling: Ruling;
  /** Probability that the true drop is within the limit. */
  readonly probability: number;
}

/**
 * Passes only what is within the limit even if a rise was an error, without a proven leak and without a doubt. Fails what is proven: a drop
 * above the limit, or a leak where no limit is stated, or a leak beyond chance that may be above the limit.
 */
export function decide({ drop, u, uLimit, confidence, limit, isDoubted }: Weighed): Decision {
  const { level, k } = coverage(confidence);
  const { outcome: found, conformanceProbability: probability } = conformity({
    // No leak gives gas back: a rise, however large, does not make up for the uncertainty.
    value: pascal(Math.max(0, drop)),
    standardUncertainty: pascal(uLimit),
    upperLimit: pascal(limit?.drop ?? 0),
    confidence: level,
  });
  const ruling = !limit
    ? "none"
    : ({ pass: "within", fail: "above", inconclusive: "across" } as const)[found];
  const isLeak = drop > k * u;
  const isRise = isBeyondChance(-drop, k * u);
  const isProven =
    ruling === "above" ||
    (ruling === "none" && isLeak) ||
    (ruling === "across" && isBeyondChance(drop, k * u));
  const isPass = ruling === "within" && !isLeak && !isRise && !isDoubted;
  return {
    outcome: isProven ? "fail" : isPass ? "pass" : "inconclusive",
    cause: isRise ? "unexplained-rise" : isLeak ? "leak" : undefined,
    ruling,
    probability,
  };
}
