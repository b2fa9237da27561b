// Is the plate read right? Checks of the two figures against each other.
// Follows NFPA 70 (2023), 440.4(B), 240.6(A); UL 1995, 37.14 and 37.15, for the ceiling.
// Does not cover the short-circuit current rating on the plate.
import { statement } from "../assessment/assessment.ts";
import { oneOf } from "../quantity/check.ts";
import { ampere } from "../quantity/units/electricity.ts";
import { amperesOf } from "./checks.ts";
import type { CircuitInput, ProtectionMarking } from "./circuit-input.ts";
import type { Findings } from "./findings.ts";
import { maximumBelowAmpacity } from "./maximum-below-ampacity.ts";

const markings: readonly ProtectionMarking[] = [
  "fuse only",
  "fuse or HACR breaker",
  "fuse or breaker",
  "max overcurrent protection",
];

/** The plate's figures in A, checked against each other. */
export function readNameplate(
  input: CircuitInput,
  { assumptions, cautions, open }: Findings,
): { ampacity: number; maximum: number; marking: ProtectionMarking } {
  const { rules, minimumCircuitAmpacity, maximumOvercurrentProtection } = input;
  const { protectionMarking = "max overcurrent protection" } = input;
  const ampacity = amperesOf("minimumCircuitAmpacity", minimumCircuitAmpacity);
  const maximum = amperesOf("maximumOvercurrentProtection", maximumOvercurrentProtection);
  if (maximum < ampacity) {
    throw maximumBelowAmpacity(minimumCircuitAmpacity, maximumOvercurrentProtection);
  }
  const marking = oneOf("protectionMarking", protectionMarking, markings);
  if (input.protectionMarking === undefined) {
    assumptions.push(statement("protection-marking", "The plate does not say fuse only."));
  }
  const { breaker, fuse } = rules.ratings;
  if (![...breaker, ...fuse].includes(maximum) || maximum < rules.smallestRating) {
    cautions.push(
      statement("not-a-usual-size", "{maximum} is not a usual size: read the plate again.", {
        maximum: ampere(maximum),
      }),
    );
  }
  // From MOP ≤ 2.25·L1 + rest and MCA ≥ 1.25·L1 + rest: MOP ≤ 1.8·MCA, or the floor of UL 1995, 37.15. The size
  // that reaches the ampacity, the other floor there, is below 1.8 times it all along the list from 10 A.
  const { compressorProtection: rule, ampacityFactor, smallestRating } = rules;
  if (rule) {
    const factor = rule.ifItWillNotStart ?? rule.normal * (rule.lockedRotorMultiple ?? 1);
    const ceiling = Math.max((factor / ampacityFactor) * (ampacity + 0.5), smallestRating);
    if (maximum > ceiling) {
      open.push(
        statement(
          "maximum-too-high",
          "{maximum} is more than belongs to {ampacity}: read the plate again, or ask the manufacturer.",
          { maximum: ampere(maximum), ampacity: ampere(ampacity) },
        ),
      );
    }
  }
  return { ampacity, maximum, marking };
}
