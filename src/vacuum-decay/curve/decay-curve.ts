// What does the fitted curve look like? The best model as plain data, and its points for plotting.
// Follows the shapes of shapes.ts. Does not cover the averaged forecast, which is in the assessment.

import { flagOf, numberOf, objectOf, oneOf, siOf } from "../../quantity/check.ts";
import { frozen } from "../../quantity/frozen.ts";
import { Quantity } from "../../quantity/quantity.ts";
import { micron } from "../../quantity/units/pressure.ts";
import { second } from "../../quantity/units/time.ts";
import type { DecayReading } from "../decay-reading.ts";
import { type Component, componentAt } from "./component.ts";
import { fastTaus, type SlowShape, slowShapes } from "./shapes.ts";

/**
 * A fitted model as plain data: constant + equalization + line + slow shape.
 */
export interface DecayFit {
  /** Slow shape; missing for a constant or a line. */
  readonly shape?: SlowShape | undefined;
  /** Time constant of the slow shape. */
  readonly timeConstant?: Quantity<"duration"> | undefined;
  /** Whether it has a line: a leak. */
  readonly line: boolean;
  /** Whether it has an equalization right after isolation. */
  readonly equalization: boolean;
  /** Akaike's criterion with small-sample correction; only differences within one log mean anything. */
  readonly aicc: number;
  /** Start of the stretch that was fitted. */
  readonly from: Quantity<"duration">;
  /** End of the stretch that was fitted. */
  readonly to: Quantity<"duration">;
  /** Coefficients in SI units for {@link decayCurve}; not for reading. */
  readonly coefficients: Omit<Component, "weight" | "endRate" | "endRateU"> & {
    readonly origin: number;
  };
}

/** The best model of a stretch, as it is handed out; times in s, the origin in Pa. */
export function fitOf(
  best: Component,
  segment: { readonly start: number; readonly last: number; readonly origin: number },
): DecayFit {
  const { weight: _, endRate: _rate, endRateU: _u, ...rest } = best;
  const shape = slowShapes[best.shape];
  return {
    ...(shape && { shape, timeConstant: second(best.tau) }),
    line: best.line,
    equalization: best.fast >= 0,
    aicc: best.aicc,
    from: second(segment.start),
    to: second(segment.start + segment.last),
    coefficients: { ...rest, origin: segment.origin },
  };
}

/**
 * Points of a fitted curve, evenly spaced in time, for plotting.
 *
 * @param fit - The `fit` of an assessment.
 * @param options - How many `points`, 2 to 10 000, and until when; the end of the log when left out.
 * @returns The points from the start of the fitted stretch.
 * @throws {@link InvalidInputError} when an argument is outside its range.
 *
 * Source: the shapes of {@link SlowShape}.
 *
 * @example
 * ```ts
 * import { degC, micron, minute, second } from "hvac-install-math/quantity";
 * import { acceptancePolicies, assessVacuumDecay, decayCurve } from "hvac-install-math/vacuum-decay";
 *
 * const readings = Array.from({ length: 61 }, (_, i) => ({
 *   elapsed: second(10 * i),
 *   pressure: micron(300 + 5 * i),
 * }));
 * const policy = acceptancePolicies.commonPractice500;
 * const { fit } = assessVacuumDecay({ readings, ambient: degC(20), policy });
 * const curve = fit ? decayCurve(fit, { points: 3, until: minute(20) }) : [];
 * curve.map(({ pressure }) => pressure.toString(micron, 0)).join(); // => 300 micron,600 micron,900 micron
 * ```
 */
export function decayCurve(
  fit: DecayFit,
  options: { readonly points: number; readonly until?: Quantity<"duration"> | undefined },
): DecayReading[] {
  const { from, to, coefficients } = objectOf("fit", fit);
  const { points, until = to } = objectOf("options", options);
  const start = siOf("fit.from", from, "duration");
  const { fast, shape, tau, line, constant, amplitude, slope, origin } = objectOf(
    "fit.coefficients",
    coefficients,
  );
  oneOf("fit.coefficients.fast", fast, [-1, ...fastTaus.slice(1).keys()]);
  oneOf("fit.coefficients.shape", shape, [-1, ...slowShapes.keys()]);
  numberOf("fit.coefficients.tau", tau, { min: shape < 0 ? 0 : 1e-30, max: 1e30 });
  const figures = { constant, amplitude, slope, origin };
  const { fast1, fast2 } = coefficients;
  for (const [name, figure] of Object.entries({ ...figures, fast1, fast2 })) {
    numberOf(`fit.coefficients.${name}`, figure, { min: -1e30, max: 1e30 });
  }
  flagOf("fit.coefficients.line", line);
  const count = numberOf("points", points, { min: 2, max: 10_000 });
  const end = siOf("until", until, "duration", { above: start });
  return frozen(
    Array.from({ length: Math.floor(count) }, (_, i) => {
      const t = ((end - start) * i) / (count - 1);
      const p = coefficients.origin + componentAt(coefficients, t);
      return { elapsed: second(start + t), pressure: new Quantity(Math.max(0, p), micron) };
    }),
  );
}
