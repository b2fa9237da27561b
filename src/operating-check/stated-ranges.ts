// Can what was stated decide anything? Approaches, targets and tolerances that let everything pass. Internal.
// Follows common practice, no source, beside what the manuals of this module print.
// Does not cover which figure is right: only the manufacturer's is.
import { type Reason, statement } from "../assessment/assessment.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { deltaK } from "../quantity/units/temperature.ts";
import type { ApproachRange } from "./expected-pressures.ts";

type Difference = Quantity<"temperatureDifference">;

// What R410A shows on all units in all weather covers 12 K of saturation temperature (usual-pressures.ts): a
// range for one unit in one weather that is wider lets a sick unit pass.
const widestRange = /* @__PURE__ */ deltaK(15);
// A coil at the temperature of its air belongs to a unit at rest.
const leastApproach = /* @__PURE__ */ deltaK(1);
// Manuals print ±5 °F for superheat (target-superheat.ts).
const largestTolerance = /* @__PURE__ */ deltaK(5);
// Charts go up to about 45 °F of superheat, from memory; subcooling targets lie well below 15 K.
const largestTargets: Record<"superheat" | "subcooling", Difference> = {
  superheat: /* @__PURE__ */ deltaK(25),
  subcooling: /* @__PURE__ */ deltaK(15),
};

/** Why a reading within the window of this approach proves nothing, if so. */
export function doubtOfApproach({ low, high }: ApproachRange): Reason | undefined {
  const values = { low, high };
  const ask = "state the manufacturer's figures.";
  if (high.si - low.si > widestRange.si) {
    const text = `An approach anywhere from {low} to {high} lets a sick unit pass; at most {widest} apart: ${ask}`;
    return statement("approach-range-wide", text, { ...values, widest: widestRange.as(low.unit) });
  }
  if (low.si < leastApproach.si) {
    const text = `An approach from {low} to {high} lets a unit at rest pass; at least {least}: ${ask}`;
    return statement("approach-at-rest", text, { ...values, least: leastApproach.as(low.unit) });
  }
  return undefined;
}

/** Why a charge cannot be told by this target, whatever was read, if so. */
export function doubtOfTarget(
  method: keyof typeof largestTargets,
  target: Difference,
): Reason | undefined {
  const most = largestTargets[method];
  if (target.si <= most.si) return undefined;
  return statement(
    "target-out-of-reach",
    `{target} is no target for ${method}, which stays below {most}: read the manufacturer's figure again, with its unit.`,
    { target, most: most.as(target.unit) },
  );
}

/** Why keeping this tolerance proves nothing, if so. */
export function doubtOfTolerance(target: Difference, tolerance: Difference): Reason | undefined {
  const values = { target, tolerance };
  const ask = "state the manufacturer's figure.";
  if (tolerance.si > largestTolerance.si) {
    const text = `±{tolerance} around {target} lets a wrong charge pass; at most ±{largest}: ${ask}`;
    const largest = largestTolerance.as(tolerance.unit);
    return statement("tolerance-wide", text, { ...values, largest });
  }
  if (tolerance.si >= target.si) {
    const text = `±{tolerance} around {target} reaches saturation, where the figure says nothing of the charge: ${ask}`;
    return statement("tolerance-reaches-saturation", text, values);
  }
  return undefined;
}
