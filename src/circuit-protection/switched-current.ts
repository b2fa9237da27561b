// Which current does the disconnect have to carry? The sum of the rated-load currents, as far as it is believed.
// Follows NFPA 70 (2023), 440.12(B); UL 1995, 37.14, for the least sum that belongs to an ampacity.
// Does not cover the horsepower rating.
import { statement } from "../assessment/assessment.ts";
import { siOf } from "../quantity/check.ts";
import type { CircuitInput } from "./circuit-input.ts";
import type { Findings } from "./findings.ts";

/** The stated sum in A, or the minimum circuit ampacity where none or only a part of it is stated. */
export function switchedCurrent(
  { rules, ratedLoadCurrent: stated, minimumCircuitAmpacity }: CircuitInput,
  ampacity: number,
  { assumptions, cautions }: Findings,
): number {
  if (stated === undefined) {
    assumptions.push(
      statement("rated-load", "Rated-load current not above the minimum circuit ampacity."),
    );
    return ampacity;
  }
  const load = siOf("ratedLoadCurrent", stated, "current", { above: 0, max: ampacity });
  // UL 1995, 37.14: MCA ≤ 1.25 × the sum, so that less than MCA/1.25 is not all of it; 0.5 A of rounding.
  const { ampacityFactor } = rules;
  if (ampacityFactor === 1 || load >= (ampacity - 0.5) / ampacityFactor) return load;
  cautions.push(
    statement(
      "rated-load-low",
      "{load} is less than belongs to {ampacity}: state the sum of all that runs together. The disconnect is sized for {ampacity}.",
      { load: stated, ampacity: minimumCircuitAmpacity },
    ),
  );
  return ampacity;
}
