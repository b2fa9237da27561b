// When was the pump valved off? The lowest row between the pump-down and the rise that follows it.
// Common practice, no source: a turn counts from a tenth of the pressure and 5 micron on.
// Does not cover judging the rise: vacuum-decay does.

import { listOf, siOf } from "../quantity/check.ts";
import { frozen } from "../quantity/frozen.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { type LogsStatement, say } from "./statements.ts";
import { type TurningPoint, turningPoints } from "./turning-points.ts";
import { type Watch, type WatchRow, watchFrom } from "./watch.ts";

/** A row of a vacuum log. */
export interface VacuumRow extends WatchRow {
  /** What the vacuum gauge shows. */
  readonly pressure: Quantity<"absolutePressure">;
}

/**
 * Finds where the watch on a vacuum starts in a log that holds the pump-down too: at the lowest row before the last
 * rise. Its rows count from there, as `assessVacuumDecay` wants them.
 *
 * The valve was shut between that row and the next; an app should show the row and let the technician move it. A
 * log without a pump-down before the rise starts isolated, or cut off. Where the pressure never rises by a tenth,
 * no row is found: a tight, dry system and a pump that is still on look the same.
 *
 * @param rows - Rows in order of time, as {@link readLog} gives them.
 * @returns The watch with the reasons and doubts; without rows where none was found.
 * @throws {@link InvalidInputError} for rows that are none.
 *
 * Source: common practice, no source.
 *
 * @example
 * ```ts
 * import { findIsolation } from "hvac-install-math/logs";
 * import { micron, second } from "hvac-install-math/quantity";
 *
 * const rows = [5000, 900, 400, 290, 270, 330, 345, 350].map((p, i) => ({
 *   elapsed: second(10 * i),
 *   pressure: micron(p),
 * }));
 * const watch = findIsolation(rows);
 * watch.start; // => 4
 * watch.rows[1]?.elapsed.toString(); // => 10 s
 * ```
 */
export function findIsolation<R extends VacuumRow>(rows: readonly R[]): Watch<R> {
  const pressures = listOf("rows", rows).map((row, i) => {
    siOf(`rows[${i}].elapsed`, row?.elapsed, "duration");
    return siOf(`rows[${i}].pressure`, row.pressure, "absolutePressure");
  });
  const least = 5 * (101.325 / 760); // 5 micron in Pa
  const turns = turningPoints(pressures, (low, high) => high - low >= Math.max(least, 0.1 * low));
  const lows = turns.slice(0, -1).filter(({ isHigh }) => !isHigh);
  const last = lows.at(-1);
  const reasons: LogsStatement[] = [];
  const doubts: LogsStatement[] = [];
  if (!last) return frozen({ rows: [], reasons, doubts: [say("logs.no-rise")] });
  const { elapsed, pressure } = rows[last.at] as R;
  reasons.push(say("logs.lowest", { elapsed, pressure }));
  if (turns[0] === last) doubts.push(say("logs.starts-isolated"));
  if (lows.length > 1) doubts.push(say("logs.several-rises", { count: lows.length }));
  // The pump came on again where the pressure falls once more after the rise.
  const [high, fall] = turns.slice(turns.indexOf(last) + 1) as [TurningPoint, TurningPoint?];
  const behind = fall && high.at + 1;
  return frozen(watchFrom(rows, last.at, behind, reasons, doubts));
}
