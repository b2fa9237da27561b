// Is the course of a log that of one hold? Where it jumps, scatters, or falls faster at the end than before.
// Follows generalized least squares: what a row is off from what the rows before it foretell (fit-log.ts); χ² for the
// scatter. Does not cover what is judged where it jumps: assess-pressure-log.ts.
import type { Unit } from "../quantity/quantity.ts";
import type { Limit } from "./criterion.ts";
import type { Doubt } from "./evidence.ts";
import { asTime, shown } from "./figures.ts";
import type { LogFit } from "./fit-log.ts";
import type { LogPoint } from "./log-points.ts";
import { say } from "./statements.ts";

/** A change that the errors do not explain: at which row, at which of the points, when, and by how much, Pa. */
export interface Jump {
  readonly row: number;
  readonly elapsed: number;
  readonly change: number;
}

/** Standard deviations beyond which a row jumps, or a late loss is none of chance or of weather; common practice, no source. */
const BEYOND = 3;
/** Fewer are enough where they are so many times what the rows of the log scatter themselves; common practice, no source. */
const QUIET = { beyond: 1.5, times: 10 };

/** The jumps beyond the errors and beyond two steps, Pa, of the display; of 1600 simulated logs without one 12 had one. */
export function jumpsIn(
  points: readonly LogPoint[],
  { innovations }: LogFit,
  step: number,
  start: number,
): Jump[] {
  const off = innovations.map(Math.abs);
  const usual = [...off].sort((a, b) => a - b)[Math.floor(0.7 * off.length)] as number;
  const least = Math.min(BEYOND, Math.max(QUIET.beyond, QUIET.times * usual));
  const jumps: Jump[] = [];
  let row = 0;
  for (const [i, { t, level, count }] of points.entries()) {
    const change = level - (points[i - 1]?.level ?? level);
    if ((off[i] as number) > least && Math.abs(change) > 2 * step)
      jumps.push({ row, elapsed: start + t, change });
    row += count;
  }
  return jumps;
}

/** A jump, and what to do: gas that was fed in begins a new hold; what took it away has to be found first. */
export const jumpSaid = ({ change, elapsed }: Jump, unit: Unit<"pressureDifference">): Doubt => ({
  reason: say("pressure-test.jump", { change: shown(change, unit), elapsed: asTime(elapsed) }),
  action: say("pressure-test.hold-again"),
});

/**
 * The misfit that one log in a thousand exceeds by chance: χ² by Wilson and Hilferty's cube (Abramowitz & Stegun 1964,
 * 26.4.17) at 3.09 standard deviations, per degree of freedom.
 */
function largestMisfit(freedom: number): number {
  const part = 2 / (9 * freedom);
  return (1 - part + 3.09 * Math.sqrt(part)) ** 1.5;
}

/** What one hold does not explain: a joint may have let go at the end, or the thermometer misleads. */
export function courseDoubts(
  { misfit = 0, late, start }: LogFit,
  points: readonly LogPoint[],
  jumps: readonly Jump[],
  limit: Limit | undefined,
  unit: Unit<"pressureDifference">,
): Doubt[] {
  const doubts = jumps.slice(-1).map((jump) => jumpSaid(jump, unit));
  const action = say("pressure-test.read-again");
  if (misfit > largestMisfit(points.length - 2)) {
    const reason = say("pressure-test.log-misfit", { misfit: Number(misfit.toPrecision(3)) });
    doubts.push({ reason, action: say("pressure-test.look-at-plot") });
  }
  // All points stand at the temperature of the last.
  const now = start - (points.at(-1) as LogPoint).level;
  if (limit && now > limit.drop) {
    const values = { drop: shown(now, unit), limit: shown(limit.drop, unit) };
    doubts.push({ reason: say("pressure-test.last-reading-above-limit", values), action });
  } else if (late.sigmas > BEYOND) {
    const lost = shown(late.lost, unit);
    doubts.push({ reason: say("pressure-test.falls-faster", { lost }), action });
  }
  return doubts;
}
