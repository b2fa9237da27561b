// What did a log see? Extremes, percentiles and the time outside a range, weighted by time.
// Each reading stands for half the time to its neighbors. Common practice, no source.
// Does not cover judging: assess-supply-voltage.ts and assess-supply-week.ts do.

import { listOf, objectOf, requireKind, siOf } from "../quantity/check.ts";
import { frozen } from "../quantity/frozen.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { volt } from "../quantity/units/electricity.ts";
import { percent } from "../quantity/units/ratio.ts";
import { second } from "../quantity/units/time.ts";
import type { VoltageRange } from "./standards/index.ts";

/**
 * A reading of a log.
 */
export interface LoggedVoltage {
  /** Time since the start of the log. */
  readonly elapsed: Quantity<"duration">;
  /** The voltage, 0 or more. */
  readonly voltage: Quantity<"voltage">;
}

/**
 * What a log of one voltage saw.
 */
export interface VoltageLogStatistics {
  /** Readings in the log. */
  readonly count: number;
  /** From the first reading to the last. */
  readonly duration: Quantity<"duration">;
  /** Lowest reading. */
  readonly minimum: Quantity<"voltage">;
  /** Highest reading. */
  readonly maximum: Quantity<"voltage">;
  /** Mean over time. */
  readonly mean: Quantity<"voltage">;
  /** Stayed at or below it for 5 % of the time. */
  readonly percentile5: Quantity<"voltage">;
  /** Stayed at or below it for half of the time. */
  readonly median: Quantity<"voltage">;
  /** Stayed at or below it for 95 % of the time. */
  readonly percentile95: Quantity<"voltage">;
  /** Time below the range. */
  readonly timeBelow: Quantity<"duration">;
  /** Time above the range. */
  readonly timeAbove: Quantity<"duration">;
  /** Share of the time outside the range. */
  readonly shareOutside: Quantity<"ratio">;
}

/**
 * Statistics of a log of one voltage over time: each reading stands for half the time to its neighbors.
 *
 * @param input - At least two readings in order of time, and the range that the voltage should keep.
 * @returns Extremes, mean, percentiles and time outside the range.
 * @throws {@link InvalidInputError} when there are fewer than two readings, or the times do not grow.
 *
 * Source: common practice, no source.
 *
 * @example
 * ```ts
 * import { minute, volt } from "hvac-install-math/quantity";
 * import { voltageLogStatistics } from "hvac-install-math/supply-voltage";
 *
 * const readings = [231, 229, 206, 230, 231].map((v, i) => ({ elapsed: minute(i), voltage: volt(v) }));
 * const seen = voltageLogStatistics({ readings, range: { minimum: volt(207), maximum: volt(253) } });
 * seen.timeBelow.toString(minute); // => 1 min
 * ```
 */
export function voltageLogStatistics(input: {
  /** The log. */
  readonly readings: readonly LoggedVoltage[];
  /** The range that the voltage should keep. */
  readonly range: VoltageRange;
}): VoltageLogStatistics {
  const { readings, range } = objectOf("input", input);
  const low = siOf("range.minimum", range?.minimum, "voltage");
  const high = siOf("range.maximum", range.maximum, "voltage", { min: low });
  const { times, volts } = columnsOf(readings);
  return frozen(statisticsOf(times, volts, low, high));
}

/** The statistics of plain columns: times that grow, at least two. */
export function statisticsOf(
  times: readonly number[],
  volts: readonly number[],
  low: number,
  high: number,
): VoltageLogStatistics {
  const end = times.length - 1;
  const at = (i: number) => times[Math.min(Math.max(i, 0), end)] as number;
  const rows = volts.map((v, i) => ({ v, weight: (at(i + 1) - at(i - 1)) / 2 }));
  const total = at(end) - at(0);
  const timeOf = (holds: (v: number) => boolean) =>
    rows.reduce((sum, { v, weight }) => sum + (holds(v) ? weight : 0), 0);
  const rising = [...rows].sort((a, b) => a.v - b.v);
  const lowest = rising[0] as (typeof rows)[0];
  const highest = rising[end] as (typeof rows)[0];
  const percentile = (share: number) => {
    let left = share * total * (1 - 1e-12);
    const found = rising.find(({ weight }) => {
      left -= weight;
      return left <= 0;
    });
    return volt((found ?? highest).v);
  };
  const below = timeOf((v) => v < low);
  const above = timeOf((v) => v > high);
  return {
    count: times.length,
    duration: second(total),
    minimum: volt(lowest.v),
    maximum: volt(highest.v),
    mean: volt(rows.reduce((sum, { v, weight }) => sum + weight * v, 0) / total),
    percentile5: percentile(0.05),
    median: percentile(0.5),
    percentile95: percentile(0.95),
    timeBelow: second(below),
    timeAbove: second(above),
    shareOutside: percent((100 * (below + above)) / total),
  };
}

/** Times and voltages of a log in SI, checked. */
export function columnsOf(readings: readonly LoggedVoltage[]): {
  readonly times: readonly number[];
  readonly volts: readonly number[];
} {
  listOf("readings", readings, Infinity, 2);
  const times: number[] = [];
  const volts: number[] = [];
  for (const [i, reading] of readings.entries()) {
    const path = `readings[${i}]`;
    requireKind(`${path}.elapsed`, reading?.elapsed, "duration");
    const before = times[i - 1] ?? Number.NEGATIVE_INFINITY;
    times.push(siOf(`${path}.elapsed`, reading.elapsed, "duration", { above: before }));
    volts.push(siOf(`${path}.voltage`, reading.voltage, "voltage", { min: 0 }));
  }
  return { times, volts };
}
