// Does the water run off by itself, or does it take a pump? A drain through fixed points.
// Follows IMC 2021, 307.2.1: at least 1/8 in per foot in the direction of flow.
// Does not cover friction in the pipe, which is far below what the slope gives.
import { verdict } from "../assessment/assessment.ts";
import { objectOf, siOf } from "../quantity/check.ts";
import { isAtMost } from "../quantity/limit.ts";
import { Quantity } from "../quantity/quantity.ts";
import {
  askedSlope,
  flatterThanCode,
  requireList,
  slopeAssumptions,
  slopeCitations,
} from "./arguments.ts";
import { type DrainRoute, drainCautions } from "./drain-cautions.ts";
import { codeDrainSlope } from "./drain-slope.ts";
import { say, type Verdict } from "./statements.ts";

/**
 * A point that a drain goes through.
 */
export interface DrainPoint {
  /** Horizontal distance from the outlet along the drain, 0 or more, not less than the point before. */
  readonly distance: Quantity<"length">;
  /** Height of the pipe above the same datum as the outlet. */
  readonly height: Quantity<"length">;
}

/**
 * A drain to be run.
 */
export interface DrainPlanInput {
  /** Height of the pan outlet, or of the trap's outlet where there is a trap. */
  readonly outletHeight: Quantity<"length">;
  /** The points that the drain has to go through, in the direction of flow; the last is the discharge. */
  readonly points: readonly DrainPoint[];
  /** Slope asked for, 0.5 % to 100 %; 1/8 in per foot when left out. */
  readonly slope?: Quantity<"ratio"> | undefined;
  /** Where it runs, for the cautions. */
  readonly route?: DrainRoute | undefined;
}

/**
 * How the water gets away.
 *
 * Source: see {@link planDrain}.
 */
export interface DrainPlan extends Verdict<"needs-pump"> {
  /** By its own weight or by a pump. */
  readonly method: "gravity" | "pump";
  /** From the outlet down to the discharge; negative where it lies higher. */
  readonly availableFall: Quantity<"length">;
  /** Slope times the whole run. */
  readonly neededFall: Quantity<"length">;
  /** How much fall the worst stretch lacks; 0 for gravity. */
  readonly shortfall: Quantity<"length">;
  /** Position in `points` of the end of the worst stretch; only where a pump is needed. */
  readonly worstPoint?: number | undefined;
  /** How high a pump has to lift: from the outlet to the highest point, 0 or more. */
  readonly lift: Quantity<"length">;
}

/**
 * Finds out whether a drain through given points runs off by gravity. Every stretch has to fall at the
 * slope asked for; a vertical drop does. Passes for gravity, fails where a pump is needed.
 *
 * @param input - Height of the outlet and the points, the discharge last.
 * @returns The method, the fall there is and needs to be, the lift for a pump.
 * @throws {@link InvalidInputError} when there is no point, distances go backwards, or a kind does not
 * fit.
 *
 * Cautions: see {@link drainCautions}.
 *
 * Source: IMC 2021, 307.2.1; IPC 2021, 314.2.1; UPC 2021, 814.1.
 *
 * @example
 * ```ts
 * import { planDrain } from "hvac-install-math/condensate";
 * import { cm, m, mm } from "hvac-install-math/quantity";
 *
 * const points = [{ distance: m(4), height: cm(210) }, { distance: m(4), height: cm(20) }];
 * planDrain({ outletHeight: cm(215), points }).method; // => gravity
 * const { method, shortfall } = planDrain({ outletHeight: cm(213), points });
 * method; // => pump
 * shortfall.toString(mm, 1); // => 11.7 mm
 * ```
 */
export function planDrain(input: DrainPlanInput): DrainPlan {
  objectOf("input", input);
  const { outletHeight, points, route = {}, slope: asked = codeDrainSlope } = input;
  objectOf("route", route);
  const outlet = siOf("outletHeight", outletHeight, "length");
  const slope = askedSlope("slope", asked);
  requireList("points", points, 1);
  let from = { distance: 0, height: outlet };
  let highest = outlet;
  let shortfall = 0;
  let worst: number | undefined;
  points.forEach((point: DrainPoint, i) => {
    const distance = siOf(`points[${i}].distance`, point?.distance, "length", {
      min: from.distance,
    });
    const height = siOf(`points[${i}].height`, point.height, "length");
    const missing = slope * (distance - from.distance) - (from.height - height);
    if (!isAtMost(missing, shortfall, 1)) {
      shortfall = missing;
      worst = i;
    }
    highest = Math.max(highest, height);
    from = { distance, height };
  });
  const gravity = worst === undefined;
  const { unit } = outletHeight;
  const length = (si: number) => new Quantity(si, unit);
  const figures = {
    availableFall: length(outlet - from.height),
    neededFall: length(slope * from.distance),
    shortfall: length(shortfall),
    lift: length(highest - outlet),
  };
  const { shortfall: missing, lift, availableFall, neededFall } = figures;
  const point = (worst ?? 0) + 1;
  return verdict({
    outcome: gravity ? "pass" : "fail",
    ...(!gravity && { cause: "needs-pump" as const }),
    reasons: [
      gravity
        ? say("condensate.gravity", { available: availableFall, needed: neededFall })
        : say("condensate.fall-short", { shortfall: missing, point }),
    ],
    assumptions: slopeAssumptions(false, !input.slope),
    cautions: [...drainCautions({ ...route, pumped: !gravity }), ...flatterThanCode(slope)],
    actions: gravity ? [] : [say("condensate.lower-point", { shortfall: missing, point, lift })],
    sources: slopeCitations(),
    method: gravity ? "gravity" : "pump",
    ...figures,
    ...(worst !== undefined && { worstPoint: worst }),
  });
}
