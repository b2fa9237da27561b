// How a verdict on a simulated case is scored. What counts as a hit is written here and nowhere else.
import type { DecayCause, VacuumDecayAssessment } from "hvac-install-math/vacuum-decay";
import type { SimulatedCase } from "./simulation.ts";

/** Sound: keeps the limit without a leak. Bad: breaks it. Doubtful: where the policy says so. Small leak: keeps it, with a leak. */
export type Soundness = "sound" | "bad" | "small leak" | "doubtful";

export function soundnessOf({
  endPressure,
  endLimit,
  endDoubtful,
  leakRate,
}: SimulatedCase): Soundness {
  if (endPressure > endLimit && endPressure <= endDoubtful)
    return leakRate > 0 ? "small leak" : "doubtful";
  if (endPressure > endLimit) return "bad";
  return leakRate > 0 ? "small leak" : "sound";
}

export type CauseScore = "right" | "partly" | "open" | "wrong";

/**
 * Right: the cause itself. Partly: moisture proven, leak not excluded, when there is moisture. Open:
 * undecided. A part of a double cause below a tenth of the other is below what a gauge with a bent
 * scale can show: naming the larger one alone is right as well.
 */
export function scoreCause(one: SimulatedCase, cause: DecayCause): CauseScore {
  const { truth, leakRise, waterRise } = one;
  if (cause === "undecided") return "open";
  if (cause === truth) return "right";
  if (truth === "leak-and-moisture") {
    if (cause === "leak" && waterRise < 0.1 * leakRise) return "right";
    if (cause === "moisture" && leakRise < 0.1 * waterRise) return "right";
  }
  if (cause === "moisture-leak-not-excluded" && truth.includes("moisture")) return "partly";
  return "wrong";
}

/** Whether the 95 % interval of the leak holds the true rate. */
export function covered(
  { leakRate }: SimulatedCase,
  { leakInterval }: VacuumDecayAssessment,
): boolean {
  const [low, high] = leakInterval;
  return leakRate >= low.si - 1e-9 && leakRate <= high.si + 1e-9;
}
