// Can this target or tolerance decide anything? One that lets everything pass cannot. Internal.
// Follows common practice, no source, beside what manufacturers' manuals print.
// Does not cover which figure is right: only the manufacturer's is.
import { type Caution, type Reason, statement } from "../assessment/assessment.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { degC, deltaK } from "../quantity/units/temperature.ts";

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

// No evaporator of a room unit boils above 35 °C, none of its condensers condenses below 5 °C: common practice, no source.
const warmestEvaporator = /* @__PURE__ */ degC(35);
const coldestCondenser = /* @__PURE__ */ degC(5);

/** What to look at where the gauge seems to read the other side of the running unit. */
export function cautionOfSide(
  method: keyof typeof largestTargets,
  saturation: Quantity<"temperature">,
): Caution[] {
  const other =
    method === "superheat"
      ? saturation.si > warmestEvaporator.si && "high"
      : saturation.si < coldestCondenser.si && "low";
  if (!other) return [];
  const text = `Saturated at {saturation} it looks like the ${other} side: ${method} is read on the other one. Is the unit running, and the gauge on its port?`;
  return [statement("other-side", text, { saturation })];
}
