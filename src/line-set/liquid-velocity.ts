// Is the liquid line wide enough, and not too wide? Velocity and loss against the piping guides.
// Follows two manufacturers' piping guides, brands withheld.
// Does not cover units that expand the liquid outdoors, whose line is sized by the manual alone.
import {
  type Assessment,
  type Outcome,
  overallOutcome,
  statement,
} from "../assessment/assessment.ts";
import { flagOf, objectOf, siOf } from "../quantity/check.ts";
import { Quantity } from "../quantity/quantity.ts";
import { ftPerMinute, mPerSecond } from "../quantity/units/time.ts";
import { flowOf, type TubeFlow } from "./friction-loss.ts";
import { manualDecides, manuals } from "./line-cautions.ts";
import { isImperial } from "./tube.ts";

/**
 * Largest losses that two manufacturers' guides allow, in psi: liquid line with its riser, and suction
 * line.
 *
 * Source: manufacturers' published piping guides, brands withheld.
 *
 * @example
 * ```ts
 * import { guideLosses } from "hvac-install-math/line-set";
 *
 * guideLosses.R410A.liquid; // => 60
 * ```
 */
export const guideLosses: Readonly<
  Record<
    "R22" | "R410A",
    { /** In psi. */ readonly liquid: number /** In psi. */; readonly suction: number }
  >
> = {
  R22: { liquid: 35, suction: 3 },
  R410A: { liquid: 60, suction: 5 },
};

/**
 * The liquid line at full capacity.
 *
 * Source: none; the library's own type.
 */
export interface LiquidVelocityInput extends TubeFlow {
  /** Whether a solenoid valve closes the line: then 300 ft/min is the most, against liquid hammer. */
  readonly solenoidValve: boolean;
  /** Loss of friction, head and fittings together. */
  readonly pressureLoss?: Quantity<"pressureDifference">;
  /** Most that the manual or {@link guideLosses} allows. */
  readonly maximumLoss?: Quantity<"pressureDifference">;
}

/**
 * The verdict on the liquid line.
 *
 * Source: none; the library's own type.
 */
export interface LiquidVelocityAssessment extends Assessment {
  /** Mean velocity. */
  readonly velocity: Quantity<"speed">;
}

/**
 * Judges the velocity in the liquid line, 100 to 400 ft/min by the guides, 300 with a solenoid valve, and
 * its loss where a limit is given.
 *
 * Assumes liquid all the way. Below 100 ft/min the line is wider than it need be and holds more charge
 * than intended: `inconclusive`, the manual decides.
 *
 * @param input - Tube, mass flow, density, solenoid valve, loss and its limit.
 * @returns The verdict with the velocity.
 * @throws {@link InvalidInputError} when an argument is missing, of another kind or impossible.
 *
 * Source: two manufacturers' published piping guides, brands withheld.
 *
 * @example
 * ```ts
 * import { assessLiquidVelocity, astmB280Tube } from "hvac-install-math/line-set";
 * import { ftPerMinute, kgPerHour, kgPerM3 } from "hvac-install-math/quantity";
 *
 * const verdict = assessLiquidVelocity({
 *   tube: astmB280Tube({ size: "1/4", temper: "annealed" }),
 *   massFlow: kgPerHour(78),
 *   density: kgPerM3(980),
 *   solenoidValve: false,
 * });
 * verdict.outcome; // => pass
 * verdict.velocity.toString(ftPerMinute, 0); // => 238 ft/min
 * ```
 */
export function assessLiquidVelocity(input: LiquidVelocityInput): LiquidVelocityAssessment {
  const { pressureLoss, maximumLoss } = objectOf("input", input);
  const solenoidValve = flagOf("solenoidValve", input.solenoidValve);
  const { v } = flowOf(input);
  const unit = isImperial(input.tube.outsideDiameter) ? ftPerMinute : mPerSecond;
  const velocity = new Quantity(v, unit);
  const least = ftPerMinute(100);
  const most = ftPerMinute(solenoidValve ? 300 : 400);
  const speed: Outcome =
    velocity.si > most.si ? "fail" : velocity.si < least.si ? "inconclusive" : "pass";
  const reasons = [
    statement(
      "liquid-velocity",
      {
        pass: "{velocity} lies within the {least} to {most} of the guides.",
        fail: "{velocity} is more than {most}: noise, hammer, loss.",
        inconclusive:
          "{velocity} is less than {least}: a wide line holds more charge; ask the manual.",
      }[speed],
      { velocity: velocity, least: least.as(unit), most: most.as(unit) },
    ),
  ];
  const outcomes = [speed];
  if (maximumLoss !== undefined) {
    const limit = siOf("maximumLoss", maximumLoss, "pressureDifference", { above: 0 });
    const loss =
      pressureLoss === undefined
        ? undefined
        : siOf("pressureLoss", pressureLoss, "pressureDifference");
    outcomes.push(loss === undefined ? "inconclusive" : loss > limit ? "fail" : "pass");
    reasons.push(
      statement("liquid-loss", "The line loses {loss}; at most {limit} is allowed.", {
        loss: pressureLoss ? pressureLoss : "an unknown pressure",
        limit: maximumLoss,
      }),
    );
  }
  return {
    outcome: overallOutcome(outcomes),
    reasons,
    assumptions: [
      statement("liquid-only", "The line carries liquid only."),
      ...(maximumLoss ? [] : [statement("loss-not-checked", "No limit of the loss was given.")]),
    ],
    cautions: [manualDecides],
    sources: [manuals],
    velocity,
  };
}
