// How far must the liquid be subcooled so that it reaches the indoor unit without flashing?
// Follows hydrostatics and saturation: riser loss + friction loss + margin, read on the bubble curve.
// Does not cover units that expand the liquid outdoors: their liquid line carries two phases by design.

import { cite, verdict } from "../assessment/assessment.ts";
import { conformity } from "../assessment/conformity.ts";
import { listOf, objectOf, refuse, siOf } from "../quantity/check.ts";
import { choose } from "../quantity/hints.ts";
import { Quantity } from "../quantity/quantity.ts";
import { deltaK } from "../quantity/units/temperature.ts";
import { decide, type Finding } from "./decide.ts";
import { manuals, underPressure } from "./line-cautions.ts";
import { say, type Verdict } from "./statements.ts";

/**
 * The liquid line of a unit that expands the liquid at its far end.
 */
export interface LiquidSubcoolingInput {
  /** Absolute pressure where the liquid leaves the outdoor unit. */
  readonly liquidPressure: Quantity<"absolutePressure">;
  /** Bubble temperature of the refrigerant at an absolute pressure, for instance `(p) => bubbleTemperature(R410A, p)`. */
  readonly bubbleTemperature: (pressure: Quantity<"absolutePressure">) => Quantity<"temperature">;
  /** Every loss on the way: static head (negative where the liquid falls), friction, drier, valve. */
  readonly losses: readonly Quantity<"pressureDifference">[];
  /** Subcooling that shall be left at the expansion device, 0 or more. */
  readonly margin: Quantity<"temperatureDifference">;
  /** Subcooling found or promised at the outdoor unit. */
  readonly available?: Quantity<"temperatureDifference"> | undefined;
  /** Standard uncertainty (k = 1) of `available`, 0 when left out. */
  readonly standardUncertainty?: Quantity<"temperatureDifference"> | undefined;
}

/**
 * The verdict on the subcooling.
 */
export interface LiquidSubcoolingAssessment extends Verdict {
  /** Sum of the losses. */
  readonly pressureLoss: Quantity<"pressureDifference">;
  /** What the losses cost in bubble temperature; negative for a gain. */
  readonly temperatureLoss: Quantity<"temperatureDifference">;
  /** Loss, where it is one, plus margin. */
  readonly neededSubcooling: Quantity<"temperatureDifference">;
}

/**
 * Subcooling that the liquid needs at the outdoor unit so that it arrives as liquid, and whether what
 * is there is enough.
 *
 * Assumes that the line takes up no heat. A gain in pressure does not lower the need below the margin.
 *
 * @param input - Pressure, bubble curve, losses, margin, and what is available.
 * @returns The verdict with losses and need, in the unit of the margin. `inconclusive` when nothing is
 * said to be available or it is too near the need for its uncertainty.
 * @throws {@link InvalidInputError} when an argument is missing or of another kind, or the losses are
 * more than the pressure.
 * Cautions: never charge more to make up for a line that is too long or too high; the manual decides.
 *
 * Source: hydrostatics; published losses per 10 ft of riser in a manufacturer's piping manual agree
 * with it. JCGM 106:2012, 8.3.
 *
 * @example
 * ```ts
 * import { liquidLineSubcooling, staticHead } from "hvac-install-math/line-set";
 * import { degC, deltaK, kgPerM3, kPa, m } from "hvac-install-math/quantity";
 * import { bubblePressure, bubbleTemperature, R410A } from "hvac-install-math/refrigerants";
 *
 * const verdict = liquidLineSubcooling({
 *   liquidPressure: bubblePressure(R410A, degC(42)),
 *   bubbleTemperature: (pressure) => bubbleTemperature(R410A, pressure),
 *   losses: [staticHead({ density: kgPerM3(962), lift: m(6) }), kPa(40)],
 *   margin: deltaK(2),
 *   available: deltaK(6),
 * });
 * verdict.outcome; // => pass
 * verdict.neededSubcooling.toString(deltaK, 1); // => 3.6 K
 * ```
 */
export function liquidLineSubcooling(input: LiquidSubcoolingInput): LiquidSubcoolingAssessment {
  const { liquidPressure, bubbleTemperature, losses, margin } = objectOf("input", input);
  const p = siOf("liquidPressure", liquidPressure, "absolutePressure", { above: 0 });
  const [first] = listOf("losses", losses, 1000, 1) as [Quantity<"pressureDifference">];
  const loss = losses.reduce(
    (sum, one, i) => sum + siOf(`losses[${i}]`, one, "pressureDifference"),
    0,
  );
  const pressureLoss = new Quantity<"pressureDifference">(loss, first.unit);
  if (loss >= p) {
    const matching = choose(["losses", "liquidPressure"], "matching");
    refuse("losses", pressureLoss, `less than the pressure ${liquidPressure}`, matching);
  }
  const left = siOf("margin", margin, "temperatureDifference", { min: 0 });
  if (typeof bubbleTemperature !== "function") {
    refuse("bubbleTemperature", bubbleTemperature, "a function of the absolute pressure");
  }
  const bubble = (pressure: number) =>
    siOf(
      "bubbleTemperature",
      bubbleTemperature(new Quantity(pressure, liquidPressure.unit)),
      "temperature",
    );
  const cost = bubble(p) - bubble(p - loss);
  const neededSubcooling = new Quantity(Math.max(0, cost) + left, margin.unit);
  const need = { needed: neededSubcooling, loss: pressureLoss };
  return verdict({
    ...decide([subcoolingFinding(input, need)]),
    assumptions: [say("line-set.no-heat-gain"), say("line-set.expansion-indoors")],
    cautions: underPressure(),
    sources: [manuals, cite("jcgm-106-2012", "8.3")],
    pressureLoss,
    temperatureLoss: new Quantity(cost, margin.unit),
    neededSubcooling,
  });
}

/** Holds the subcooling that is there against what is needed. */
function subcoolingFinding(
  { available, standardUncertainty = deltaK(0) }: LiquidSubcoolingInput,
  need: {
    readonly needed: Quantity<"temperatureDifference">;
    readonly loss: Quantity<"pressureDifference">;
  },
): Finding {
  if (available === undefined) {
    const said = say("line-set.subcooling-not-known", need);
    return { outcome: "inconclusive", said, actions: [say("line-set.measure-subcooling")] };
  }
  siOf("available", available, "temperatureDifference");
  const { outcome } = conformity<"temperatureDifference">({
    value: available,
    standardUncertainty,
    lowerLimit: need.needed,
  });
  const values = { ...need, available };
  if (outcome === "pass") return { outcome, said: say("line-set.subcooling-enough", values) };
  if (outcome === "fail") {
    return {
      outcome,
      said: say("line-set.subcooling-too-low", values),
      actions: [say("line-set.reduce-loss"), say("line-set.no-extra-charge")],
    };
  }
  const uncertainty = new Quantity(2 * standardUncertainty.si, available.unit); // k = 2
  return {
    outcome,
    said: say("line-set.subcooling-near", { ...values, uncertainty }),
    actions: [say("line-set.measure-better", { figure: "line-set.figure.subcooling" })],
  };
}
