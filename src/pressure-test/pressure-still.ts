// Did the gauge show anything at all? A log whose pressure stands while its temperature moves.
// Follows JCGM 100:2008, 5.2, for what two rows may differ by, and Tippett (1925), doi 10.1093/biomet/17.3-4.364, from
// memory, for the range of independent rows: 3.9 standard deviations of 25, 5.0 of 100. That more is a doubt: common practice, no source.
// Does not cover a temperature that stood too: that is what a tight system shows.
import type { Unit } from "../quantity/quantity.ts";
import type { Doubt } from "./evidence.ts";
import { shown } from "./figures.ts";
import type { ErrorSource } from "./log-errors.ts";
import { type LogPoint, sum } from "./log-points.ts";
import { say } from "./statements.ts";

/** A pressure that moves by this part of what the weather does to a tight system counts as standing. */
const STOOD = 0.2;
/** So many rows show a course; their range over their scatter from row to row, which independent rows keep below 5. */
const ROWS = 8;
const COURSE = 6;
/** Standard uncertainties beyond which a course is asked about: 87 % of a normal distribution, as a question needs no proof. */
const ENOUGH = 1.5;

const lowest = (list: readonly number[]) => list.reduce((a, b) => Math.min(a, b));
const highest = (list: readonly number[]) => list.reduce((a, b) => Math.max(a, b));

/** Standard deviation from row to row, which a slow course hardly widens. */
const scatterOf = (list: readonly number[]) =>
  Math.sqrt(
    sum(list.slice(1).map((one, i) => (one - (list[i] as number)) ** 2)) / (2 * list.length),
  );

/**
 * The doubt, where the pressures as shown stay within a step (0 when unknown) or a fifth of what the weather does,
 * while temperature and barometer alone move them between two points by more than the expanded uncertainty of their
 * difference and that step. Where many rows show a course, less is enough to ask. What a stated distance of gas and
 * thermometer, ± `within` K, can hide is not asked about.
 */
export function stillPressure(
  pressures: readonly number[],
  step: number,
  points: readonly LogPoint[],
  sources: readonly ErrorSource[],
  k: number,
  unit: Unit<"pressureDifference">,
  within: number,
): Doubt[] {
  // As the pressures stood, the levels move by what the weather would have done.
  const levels = points.map(({ level }) => level);
  const [low, high] = [lowest(levels), highest(levels)];
  const moved = high - low;
  // A thousandth of a pascal for what converting units leaves.
  if (highest(pressures) - lowest(pressures) > Math.max(step + 1e-3, STOOD * moved)) return [];
  const isCourse = levels.length >= ROWS && moved > COURSE * scatterOf(levels);
  const [i, j] = [levels.indexOf(low), levels.indexOf(high)];
  const variance = sum(sources.map(({ covariance: c }) => c(i, i) + c(j, j) - 2 * c(i, j)));
  // a stated distance is a bound at either end
  const perKelvin = points.map((point) => Math.abs(sum(point.perKelvin)));
  const hidden = within * ((perKelvin[i] as number) + (perKelvin[j] as number));
  const explained = (isCourse ? ENOUGH : k) * Math.sqrt(Math.max(0, variance));
  if (moved <= Math.max(explained, hidden) + step) return [];
  return [
    {
      reason: say("pressure-test.pressure-still", { moved: shown(moved, unit) }),
      action: say("pressure-test.open-to-system"),
    },
  ];
}
