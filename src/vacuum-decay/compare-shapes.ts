// Straight or levelling off? The two plain least-squares fits of a log side by side, for those who want to see.
// Follows ordinary least squares by QR and AICc (Burnham & Anderson (2002), 2.4, from memory); solver checked
// against NIST StRD. Does not cover equalisation, correlated noise or several causes: assessVacuumDecay does.
import { describe, listOf } from "../quantity/check.ts";
import { InvalidInputError } from "../quantity/errors.ts";
import type { Quantity } from "../quantity/quantity.ts";
import {
  micron,
  micronPerMinute,
  pascalAbsolute,
  pascalPerSecond,
} from "../quantity/units/pressure.ts";
import { second } from "../quantity/units/time.ts";
import { readingSi } from "./assess.ts";
import type { DecayReading } from "./assessment.ts";
import { aiccOf, linearLeastSquares, separableLeastSquares } from "./least-squares.ts";

/**
 * A line and a saturating curve through the same readings.
 *
 * Source: none; the library's own type.
 */
export interface ShapeComparison {
  /** p = start + rate·t, with the standard deviation of the rate. */
  readonly line: {
    readonly rate: Quantity<"pressureRate">;
    readonly rateDeviation: Quantity<"pressureRate">;
    readonly aicc: number;
  };
  /** p = start + rise·(1 − e^(−t/τ)); `plateau` is start + rise, 0 or more. */
  readonly saturating: {
    readonly plateau: Quantity<"absolutePressure">;
    readonly timeConstant: Quantity<"duration">;
    readonly aicc: number;
  };
  /** The one with the smaller AICc, or `indistinguishable` when they differ by less than 2. */
  readonly preferred: "line" | "saturating" | "indistinguishable";
}

/**
 * Fits a straight line and a saturating curve to a log and says which the readings prefer, or that they
 * cannot be told apart: as long as the log is short against the time constant, a wet system rises as
 * straight as a leak.
 *
 * Every reading counts the same; use {@link assessVacuumDecay} for a verdict.
 *
 * @param readings - At least six readings at six or more different times; at most 20 000.
 * @returns Both fits and the preferred one.
 * @throws {@link InvalidInputError} when there are fewer or more, or a quantity is of another kind.
 *
 * Source: Burnham & Anderson (2002), 2.4 and 2.6 (ΔAICc below 2), from memory.
 *
 * @example
 * ```ts
 * import { micron, micronPerMinute, minute } from "hvac-install-math/quantity";
 * import { compareLineAndSaturating } from "hvac-install-math/vacuum-decay";
 *
 * const shown = [300, 352, 398, 451, 499, 552, 601];
 * const readings = shown.map((p, i) => ({ elapsed: minute(i), pressure: micron(p) }));
 * const { line, preferred } = compareLineAndSaturating(readings);
 * line.rate.toString(micronPerMinute, 1); // => 50.1 micron/min
 * preferred; // => line
 * ```
 */
export function compareLineAndSaturating(readings: readonly DecayReading[]): ShapeComparison {
  const rows = Array.isArray(readings)
    ? listOf("readings", readings as readonly DecayReading[], 20_000)
        .map((one, i) => readingSi(`readings[${i}]`, one))
        .sort(([a], [b]) => a - b)
    : [];
  const t = rows.map(([at]) => at);
  const y = rows.map(([, p]) => p);
  if (new Set(t).size < 6) {
    throw new InvalidInputError({
      argument: "readings",
      value: Array.isArray(readings) ? `${new Set(t).size} different times` : describe(readings),
      allowed: "at least six readings at different times",
    });
  }
  const n = t.length;
  const first = t[0] as number;
  const x = t.map((at) => at - first);
  const T = x[n - 1] as number;
  const ones = x.map(() => 1);
  const line = linearLeastSquares([ones, x], y);
  const curve = separableLeastSquares(
    y,
    (k) => [ones, x.map((at) => -Math.expm1(-k * at))],
    (k) => [ones.map(() => 0), x.map((at) => at * Math.exp(-k * at))],
    0.01 / T,
    n / T,
  );
  const noise = 1e-12 * y.reduce((sum, p) => sum + p * p, 0) + 1e-18; // keeps ln(RSS) finite
  const lineAicc = aiccOf(line.rss + noise, n, 3);
  const curveAicc = aiccOf(curve.rss + noise, n, 4);
  const rate = (k: number) => pascalPerSecond(k).as(micronPerMinute);
  const [start = 0, rise = 0] = curve.coefficients;
  return {
    line: {
      rate: rate(line.coefficients[1] ?? 0),
      rateDeviation: rate(line.deviations[1] ?? 0),
      aicc: lineAicc,
    },
    saturating: {
      plateau: pascalAbsolute(Math.max(0, start + rise)).as(micron),
      timeConstant: second(1 / curve.parameter),
      aicc: curveAicc,
    },
    preferred:
      Math.abs(lineAicc - curveAicc) < 2
        ? "indistinguishable"
        : lineAicc < curveAicc
          ? "line"
          : "saturating",
  };
}
