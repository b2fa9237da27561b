// Can this target or tolerance decide anything? One that lets everything pass cannot. Internal.
// Follows common practice, no source, beside what manufacturers' manuals print.
// Does not cover which figure is right: only the manufacturer's is.
import { type Reason, statement } from "../assessment/assessment.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { deltaK } from "../quantity/units/temperature.ts";

type Difference = Quantity<"temperatureDifference">;

// Manuals print ±5 °F for superheat.
const largestTolerance = /* @__PURE__ */ deltaK(5);
// Charts go up to about 45 °F of superheat, from memory; subcooling targets lie well below 15 K.
const largestTargets: Record<"superheat" | "subcooling", Difference> = {
  superheat: /* @__PURE__ */ deltaK(25),
  subcooling: /* @__PURE__ */ deltaK(15),
};

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
