// When was the system full of nitrogen? The highest row at the end of the last filling.
// Common practice, no source: gas is being filled in while the pressure rises by more than a fiftieth of the highest
// within ten minutes; the sun on a line makes a tenth of that.
// Does not cover judging the hold: pressure-test does.

import { isOfKind, listOf, refuse, siOf } from "../quantity/check.ts";
import { frozen } from "../quantity/frozen.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { type LogsStatement, say } from "./statements.ts";
import { type Watch, type WatchRow, watchFrom } from "./watch.ts";

/** A row of a pressure log. */
export interface FillRow extends WatchRow {
  /** What the gauge shows. */
  readonly pressure: Quantity<"gaugePressure"> | Quantity<"absolutePressure">;
}

/**
 * Finds where a nitrogen hold starts in a log that holds the filling too: at the highest row at the end of the last
 * filling, up to the row before the pressure is let off. Its rows count from there, as `assessPressureLog` wants them.
 *
 * The gas is still warm from the filling, or cold from the cylinder, and settles for some minutes: an app should
 * show the row and let the technician move it. A log without a filling starts filled, or cut off.
 *
 * @param rows - Rows in order of time, as {@link readLog} gives them.
 * @returns The watch with the reasons and doubts; without rows where none was found.
 * @throws {@link InvalidInputError} for rows that are none.
 *
 * Source: common practice, no source.
 *
 * @example
 * ```ts
 * import { findFill } from "hvac-install-math/logs";
 * import { minute, psig } from "hvac-install-math/quantity";
 *
 * const rows = [0, 150, 150, 300, 500, 499, 499, 498, 2].map((p, i) => ({
 *   elapsed: minute(5 * i),
 *   pressure: psig(p),
 * }));
 * const hold = findFill(rows);
 * hold.start; // => 4
 * hold.rows.at(-1)?.pressure.toString(); // => 498 psig
 * ```
 */
export function findFill<R extends FillRow>(rows: readonly R[]): Watch<R> {
  const times: number[] = [];
  const pressures = listOf("rows", rows).map((row, i) => {
    times.push(siOf(`rows[${i}].elapsed`, row?.elapsed, "duration"));
    return pressureOf(`rows[${i}].pressure`, row.pressure);
  });
  const highest = pressures.reduce((high, p) => Math.max(high, p), 0);
  if (highest < 1000) {
    // 10 mbar: below, nothing was filled
    return frozen({ rows: [], reasons: [], doubts: [say("logs.no-fill")] });
  }
  const { start, count } = endOfFilling(times, pressures, highest / 50);
  const { elapsed, pressure } = rows[start] as R;
  const reasons = [say("logs.highest", { elapsed, pressure })];
  const doubts: LogsStatement[] = [];
  if (count === 0) doubts.push(say("logs.starts-filled"));
  if (count > 1) doubts.push(say("logs.several-fills", { count }));
  doubts.push(say("logs.gas-settles"));
  const behind = rowBehind(pressures, start, highest / 20);
  return frozen(watchFrom(rows, start, behind, reasons, doubts));
}

/** The row at the end of the last filling, the first where there is none, and how many fillings there are. */
function endOfFilling(
  times: readonly number[],
  pressures: readonly number[],
  rise: number,
): { start: number; count: number } {
  let [from, to, count] = [0, 0, 0]; // the filling ended behind `from` and not behind `to`
  let wasFilling = false;
  let ahead = 0;
  for (const [i, time] of times.entries()) {
    ahead = Math.max(ahead, i + 1);
    while ((times[ahead + 1] ?? Number.NaN) - time <= 600) ahead += 1;
    const isFilling = (pressures[ahead] ?? Number.NaN) - (pressures[i] as number) > rise;
    if (isFilling) [from, to] = [i, ahead];
    if (isFilling && !wasFilling) count += 1;
    wasFilling = isFilling;
  }
  let start = from;
  for (let i = from; i <= to; i++) {
    if ((pressures[i] as number) > (pressures[start] as number)) start = i;
  }
  return { start, count };
}

/** The row at which the pressure is let off, a step down that no hold makes; nothing where it is not. */
function rowBehind(pressures: readonly number[], start: number, step: number): number | undefined {
  const hold = pressures.slice(start);
  for (const [i, pressure] of hold.entries()) {
    if ((hold[i - 1] ?? Number.NaN) - pressure > step) return start + i;
  }
  return undefined;
}

function pressureOf(argument: string, pressure: FillRow["pressure"]): number {
  if (isOfKind(pressure, "gaugePressure")) {
    return siOf(argument, pressure as Quantity<"gaugePressure">, "gaugePressure");
  }
  if (isOfKind(pressure, "absolutePressure")) {
    return siOf(argument, pressure as Quantity<"absolutePressure">, "absolutePressure");
  }
  const allowed = "a gauge pressure or an absolute pressure";
  return refuse(argument, pressure, allowed, "gaugePressure");
}
