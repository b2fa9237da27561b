// Is the liquid line wide enough, and not too wide? Velocity and loss against the piping guides.
// Follows two manufacturers' piping guides, brands withheld.
// Does not cover units that expand the liquid outdoors, whose line is sized by the manual alone.
import { type Outcome, verdict } from "../assessment/assessment.ts";
import { flagOf, objectOf, siOf } from "../quantity/check.ts";
import { frozenInPlace } from "../quantity/frozen.ts";
import { isAtLeast, isAtMost } from "../quantity/limit.ts";
import { Quantity } from "../quantity/quantity.ts";
import { ftPerMinute, mPerSecond } from "../quantity/units/time.ts";
import { decide, type Finding } from "./decide.ts";
import { flowOf, type TubeFlow } from "./friction-loss.ts";
import { manuals } from "./line-cautions.ts";
import { say, type Verdict } from "./statements.ts";
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
> = /* @__PURE__ */ frozenInPlace({
  R22: { liquid: 35, suction: 3 },
  R410A: { liquid: 60, suction: 5 },
});

/**
 * The liquid line at full capacity.
 */
export interface LiquidVelocityInput extends TubeFlow {
  /** Whether a solenoid valve closes the line: then 300 ft/min is the most, against liquid hammer. */
  readonly solenoidValve: boolean;
  /** Loss of friction, head and fittings together. */
  readonly pressureLoss?: Quantity<"pressureDifference"> | undefined;
  /** Most that the manual or {@link guideLosses} allows. */
  readonly maximumLoss?: Quantity<"pressureDifference"> | undefined;
}

/**
 * The verdict on the liquid line.
 */
export interface LiquidVelocityAssessment extends Verdict {
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
  objectOf("input", input);
  const solenoidValve = flagOf("solenoidValve", input.solenoidValve);
  const { v } = flowOf(input);
  const unit = isImperial(input.tube.outsideDiameter) ? ftPerMinute : mPerSecond;
  const velocity = new Quantity(v, unit);
  const findings = [velocityFinding(velocity, solenoidValve), ...lossFindings(input)];
  return verdict({
    ...decide(findings),
    assumptions: [
      say("line-set.liquid-only"),
      ...(input.maximumLoss ? [] : [say("line-set.loss-not-checked")]),
    ],
    cautions: [],
    sources: [manuals],
    velocity,
  });
}

/** The velocity against the window of the guides. */
function velocityFinding(velocity: Quantity<"speed">, solenoidValve: boolean): Finding {
  const least = ftPerMinute(100).as(velocity.unit);
  const most = ftPerMinute(solenoidValve ? 300 : 400).as(velocity.unit);
  if (!isAtMost(velocity.si, most.si)) {
    const said = say("line-set.liquid-velocity-high", { velocity, most });
    return { outcome: "fail", said, actions: [say("line-set.wider-liquid-line")] };
  }
  if (!isAtLeast(velocity.si, least.si)) {
    const said = say("line-set.liquid-velocity-low", { velocity, least });
    return { outcome: "inconclusive", said, actions: [say("line-set.ask-line-size")] };
  }
  const said = say("line-set.liquid-velocity-within", { velocity, least, most });
  return { outcome: "pass", said };
}

/** The loss against its limit, where there is one. */
function lossFindings({ pressureLoss, maximumLoss }: LiquidVelocityInput): Finding[] {
  if (maximumLoss === undefined) return [];
  const most = siOf("maximumLoss", maximumLoss, "pressureDifference", { above: 0 });
  if (pressureLoss === undefined) {
    const said = say("line-set.loss-not-known", { limit: maximumLoss });
    return [{ outcome: "inconclusive", said, actions: [say("line-set.enter-loss")] }];
  }
  const loss = siOf("pressureLoss", pressureLoss, "pressureDifference");
  const outcome: Outcome = isAtMost(loss, most) ? "pass" : "fail";
  const said = say(outcome === "fail" ? "line-set.above-maximum" : "line-set.within-maximum", {
    figure: "line-set.figure.pressure-loss",
    value: pressureLoss,
    limit: maximumLoss,
  });
  return [{ outcome, said, actions: [say("line-set.wider-liquid-line")] }];
}
