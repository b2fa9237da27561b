// Can this target or tolerance decide anything? One that lets everything pass cannot. Internal.
// Follows common practice, no source, beside what manufacturers' manuals print.
// Does not cover which figure is right: only the manufacturer's is.
import { type Caution, caution } from "../assessment/caution.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { degC, deltaK } from "../quantity/units/temperature.ts";
import { say } from "./saturation/index.ts";
import { type LineFigure, named, type RefrigerantsStatement } from "./statements.ts";

type Difference = Quantity<"temperatureDifference">;

/** Why nothing can be decided, and what would. */
interface Doubt {
  readonly reason: RefrigerantsStatement;
  readonly action: RefrigerantsStatement;
}

// Manuals print ±5 °F for superheat.
const largestTolerance = /* @__PURE__ */ deltaK(5);
// Charts go up to about 45 °F of superheat, from memory; subcooling targets lie well below 15 K.
const largestTargets: Record<LineFigure, Difference> = {
  superheat: /* @__PURE__ */ deltaK(25),
  subcooling: /* @__PURE__ */ deltaK(15),
};

/** Why a charge cannot be told by this target, whatever was read, if so. */
export function doubtOfTarget(what: LineFigure, target: Difference): Doubt | undefined {
  const most = largestTargets[what].as(target.unit);
  if (target.si <= most.si) return undefined;
  return {
    reason: say("refrigerants.target-out-of-reach", { figure: named(what), target, most }),
    action: say("refrigerants.state-target", { figure: named(what) }),
  };
}

/** Why keeping this tolerance proves nothing, if so. */
export function doubtOfTolerance(
  what: LineFigure,
  target: Difference,
  tolerance: Difference,
): Doubt | undefined {
  const action = say("refrigerants.state-tolerance", { figure: named(what) });
  const values = { target, tolerance };
  if (tolerance.si > largestTolerance.si) {
    const largest = largestTolerance.as(tolerance.unit);
    return { reason: say("refrigerants.tolerance-wide", { ...values, largest }), action };
  }
  if (tolerance.si >= target.si) {
    return { reason: say("refrigerants.tolerance-reaches-saturation", values), action };
  }
  return undefined;
}

// No evaporator of a room unit boils above 35 °C, none of its condensers condenses below 5 °C: common practice, no source.
const warmestEvaporator = /* @__PURE__ */ degC(35);
const coldestCondenser = /* @__PURE__ */ degC(5);

/** What to look at where the gauge seems to read the other side of the running unit. */
export function cautionOfSide(
  what: LineFigure,
  saturation: Quantity<"temperature">,
): Caution<RefrigerantsStatement>[] {
  const other =
    what === "superheat"
      ? saturation.si > warmestEvaporator.si
      : saturation.si < coldestCondenser.si;
  const values = { figure: named(what), saturation };
  return other ? [caution("finding", say("refrigerants.looks-like-other-side", values))] : [];
}
