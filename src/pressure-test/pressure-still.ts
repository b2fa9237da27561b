// Did the gauge show anything at all? A log whose pressure stands while its temperature moves.
// Follows JCGM 100:2008, 5.2, for what two rows may differ by; that more is a doubt: common practice, no source.
// Does not cover a temperature that stood too: that is what a tight system shows.
import type { Unit } from "../quantity/quantity.ts";
import type { Doubt } from "./evidence.ts";
import { shown } from "./figures.ts";
import type { ErrorSource } from "./log-errors.ts";
import { type LogPoint, sum } from "./log-points.ts";
import { say } from "./statements.ts";

const lowest = (list: readonly number[]) => list.reduce((a, b) => Math.min(a, b));
const highest = (list: readonly number[]) => list.reduce((a, b) => Math.max(a, b));

/**
 * The doubt, where the pressures as shown stay within a step (0 when unknown), while temperature and barometer
 * alone move them between two points by more than the expanded uncertainty of their difference and that step.
 */
export function stillPressure(
  pressures: readonly number[],
  step: number,
  points: readonly LogPoint[],
  sources: readonly ErrorSource[],
  k: number,
  unit: Unit<"pressureDifference">,
): Doubt[] {
  // A thousandth of a pascal for what converting units leaves.
  if (highest(pressures) - lowest(pressures) > step + 1e-3) return [];
  // As the pressures stood, the levels move by what the weather would have done.
  const levels = points.map(({ level }) => level);
  const [low, high] = [lowest(levels), highest(levels)];
  const [i, j] = [levels.indexOf(low), levels.indexOf(high)];
  const variance = sum(sources.map(({ covariance: c }) => c(i, i) + c(j, j) - 2 * c(i, j)));
  if (high - low <= k * Math.sqrt(Math.max(0, variance)) + step) return [];
  return [
    {
      reason: say("pressure-test.pressure-still", { moved: shown(high - low, unit) }),
      action: say("pressure-test.open-to-system"),
    },
  ];
}
