// To which pressure is a system pumped down? Targets that come without a rule for the decay.
// Follows the source named at each target; where a figure is from memory, it says so.
// Does not cover the hold: acceptance-policies.ts.
import { type Citation, cite } from "../../assessment/assessment.ts";
import { frozenInPlace } from "../../quantity/frozen.ts";
import type { Quantity } from "../../quantity/quantity.ts";
import { micron, pascalAbsolute, torr } from "../../quantity/units/pressure.ts";
import type { PolicyStanding } from "./acceptance-policies.ts";

/**
 * A target for the pump-down alone, without a hold.
 */
export interface EvacuationTarget {
  /** Pressure to reach. */
  readonly target: Quantity<"absolutePressure">;
  /** How sure the figure is. */
  readonly standing: PolicyStanding;
  /** Where it comes from. */
  readonly source: Citation;
}

/**
 * Targets that come without a rule for the decay.
 *
 * Source: each names its own.
 *
 * @example
 * ```ts
 * import { evacuationTargets } from "hvac-install-math/vacuum-decay";
 *
 * evacuationTargets.en378.target.toString(); // => 270 Pa abs
 * ```
 */
export const evacuationTargets: Readonly<
  Record<"guideSpec15730N" | "fieldChecklist" | "en378" | "factory", EvacuationTarget>
> = /* @__PURE__ */ frozenInPlace({
  /** Pump able to reach 1 torr (133 Pa), triple evacuation. Source: UFGS 15730N. */
  guideSpec15730N: {
    target: /* @__PURE__ */ torr(1),
    standing: "published",
    source: /* @__PURE__ */ cite("ufgs-15730n"),
  },
  /** Below 1000 micron (132 Pa) after an air test. Source: a city's field checklist to ASHRAE 15. */
  fieldChecklist: {
    target: /* @__PURE__ */ micron(1000),
    standing: "published",
    source: /* @__PURE__ */ cite("ashrae-15-2022", "field checklist"),
  },
  /** Below 270 Pa (2025 micron) for larger systems. Source: EN 378-2, from memory. */
  en378: {
    target: /* @__PURE__ */ pascalAbsolute(270),
    standing: "memory",
    source: /* @__PURE__ */ cite("en-378-2"),
  },
  /** 50 micron for small factory-built systems. Source: a public refrigeration reference. */
  factory: {
    target: /* @__PURE__ */ micron(50),
    standing: "published",
    source: /* @__PURE__ */ cite("manufacturer-manuals", "refrigeration reference"),
  },
});
