// Can the stated approach decide anything? One that lets everything pass cannot. Internal.
// Follows common practice, no source, beside what the manuals of this module print.
// Does not cover which figure is right: only the manufacturer's is.
import { deltaK } from "../quantity/units/temperature.ts";
import type { ApproachRange } from "./expected-pressures.ts";
import { type OperatingCheckStatement, say } from "./statements.ts";

// What R410A shows on all units in all weather covers 12 K of saturation temperature (usual-pressures.ts): a
// range for one unit in one weather that is wider lets a sick unit pass.
const widestRange = /* @__PURE__ */ deltaK(15);
// A coil at the temperature of its air belongs to a unit at rest.
const leastApproach = /* @__PURE__ */ deltaK(1);

/** Why a reading within the window of this approach proves nothing, if so. */
export function doubtOfApproach({ low, high }: ApproachRange): OperatingCheckStatement | undefined {
  if (high.si - low.si > widestRange.si) {
    const widest = widestRange.as(low.unit);
    return say("operating-check.approach-range-wide", { low, high, widest });
  }
  if (low.si < leastApproach.si) {
    const least = leastApproach.as(low.unit);
    return say("operating-check.approach-at-rest", { low, high, least });
  }
  return undefined;
}
