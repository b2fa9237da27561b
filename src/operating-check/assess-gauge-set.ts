// Can this gauge and this hose take it? Highest pressure against scale and rating.
// Follows common practice; the published R410A set stands in two manufacturers' manuals.
// Does not cover burst pressure, which is not a rating to work at, nor old hoses.
import { type Assessment, cite, verdict } from "../assessment/assessment.ts";
import { objectOf, siOf } from "../quantity/check.ts";
import { frozenInPlace } from "../quantity/frozen.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { psig } from "../quantity/units/pressure.ts";
import { gaugeCautions } from "./cautions.ts";
import { type OperatingCheckCause, type OperatingCheckStatement, say } from "./statements.ts";

/**
 * A gauge with its hose.
 *
 * Source: what is printed on them.
 */
export interface GaugeSetSide {
  /** End of the graduated scale, above 0. */
  readonly fullScale: Quantity<"gaugePressure">;
  /** Where the retarded part of the dial ends, not below the full scale: it survives, it does not measure. */
  readonly retardTo?: Quantity<"gaugePressure"> | undefined;
  /** Working pressure printed on the hose, above 0; not the burst pressure. */
  readonly hoseWorkingPressure: Quantity<"gaugePressure">;
}

/**
 * The gauge set that two manuals print for R410A: high side 0 to 800 psig, low side to 250 psig with retard
 * to 500 psig, hoses for 800 psig (burst 4000 psig).
 *
 * Source: manufacturers' published manuals; one prints 550 psig for the retard.
 *
 * @example
 * ```ts
 * import { publishedR410AGaugeSet } from "hvac-install-math/operating-check";
 *
 * publishedR410AGaugeSet.low.fullScale.toString(); // => 250 psig
 * ```
 */
export const publishedR410AGaugeSet: {
  /** Compound gauge, down to 30 inHg of vacuum. */
  readonly low: GaugeSetSide;
  /** High-side gauge. */
  readonly high: GaugeSetSide;
} = /* @__PURE__ */ frozenInPlace({
  low: {
    fullScale: /* @__PURE__ */ psig(250),
    retardTo: /* @__PURE__ */ psig(500),
    hoseWorkingPressure: /* @__PURE__ */ psig(800),
  },
  high: {
    fullScale: /* @__PURE__ */ psig(800),
    hoseWorkingPressure: /* @__PURE__ */ psig(800),
  },
});

/** Why a gauge must not be connected. Source: see {@link assessGaugeSet}. */
export type GaugeSetCause = Extract<
  OperatingCheckCause,
  "hose-rating" | "gauge-scale" | "retard-only"
>;

/**
 * Judges whether a gauge and its hose can take a pressure: the high end of `expectedPressures`, or the
 * saturation pressure at the hottest place while the unit stands.
 *
 * @param input - Gauge, hose, and the highest pressure, 0 or more.
 * @returns The verdict. `retard-only` means that the gauge survives and shows nothing of use.
 * @throws {@link InvalidInputError} when a kind or range does not fit.
 *
 * Cautions: a burst hose whips and sprays liquid. See {@link servicePorts} for the mode.
 *
 * Source: the ratings printed on gauge and hose; common practice, no source.
 *
 * @example
 * ```ts
 * import { assessGaugeSet, publishedR410AGaugeSet } from "hvac-install-math/operating-check";
 * import { psig } from "hvac-install-math/quantity";
 *
 * const highestPressure = psig(400); // heating, on the larger port
 * assessGaugeSet({ ...publishedR410AGaugeSet.high, highestPressure }).outcome; // => pass
 * assessGaugeSet({ ...publishedR410AGaugeSet.low, highestPressure }).cause; // => retard-only
 * ```
 */
export function assessGaugeSet(
  input: GaugeSetSide & {
    /** The highest pressure that can come. */
    readonly highestPressure: Quantity<"gaugePressure">;
  },
): Assessment<GaugeSetCause, OperatingCheckStatement> {
  objectOf("input", input);
  const { fullScale, retardTo, hoseWorkingPressure, highestPressure } = input;
  const p = siOf("highestPressure", highestPressure, "gaugePressure", { min: 0 });
  const full = siOf("fullScale", fullScale, "gaugePressure", { above: 0 });
  const retard =
    retardTo !== undefined ? siOf("retardTo", retardTo, "gaugePressure", { min: full }) : full;
  const hose = siOf("hoseWorkingPressure", hoseWorkingPressure, "gaugePressure", { above: 0 });
  const pressure = highestPressure;
  const causes: readonly GaugeSetCause[] = [
    ...(p > hose ? (["hose-rating"] as const) : []),
    ...(p > retard ? (["gauge-scale"] as const) : p > full ? (["retard-only"] as const) : []),
  ];
  const reasons: Record<GaugeSetCause, OperatingCheckStatement> = {
    "hose-rating": say("operating-check.above-hose-rating", {
      pressure,
      limit: hoseWorkingPressure,
    }),
    "gauge-scale": say("operating-check.destroys-gauge", {
      pressure,
      limit: retardTo ?? fullScale,
    }),
    "retard-only": say("operating-check.beyond-scale", { pressure, limit: fullScale }),
  };
  const [cause] = causes;
  return verdict({
    outcome: cause ? "fail" : "pass",
    ...(cause && { cause }),
    reasons: cause
      ? causes.map((one) => reasons[one])
      : [say("operating-check.gauge-set-suits", { pressure })],
    assumptions: [say("operating-check.as-printed")],
    cautions: gaugeCautions(),
    actions: causes.map((one) =>
      one === "hose-rating"
        ? say("operating-check.use-rated-hose", { pressure })
        : say("operating-check.use-larger-gauge", { pressure }),
    ),
    sources: [cite("manufacturer-manuals", "gauge set"), cite("common-practice")],
  });
}
