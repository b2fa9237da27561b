// What does the gauge leave open? Its steps, its limits of error and its range, as a data sheet states them.
// Follows JCGM 100:2008, 4.3.7 and F.2.2.1. Does not cover steps that are found from the readings: collect.ts.
import { listOf, numberOf, siOf } from "../quantity/check.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { percent } from "../quantity/units/ratio.ts";
import { say, type VacuumDecayStatement } from "./statements.ts";

/**
 * A vacuum gauge as its data sheet describes it.
 *
 * Source: JCGM 100:2008, 4.3.7 (limits of error) and F.2.2.1 (resolution).
 */
export interface VacuumGauge {
  /** Smallest step of the display; one per range when it changes with the reading. Found from the readings when left out; a display that stands still is believed only with it. */
  readonly resolution?: Quantity<"pressureDifference"> | readonly GaugeRange[] | undefined;
  /** Stated limits of error as a part of the reading; ±10 % is assumed when left out. */
  readonly accuracy?: Quantity<"ratio"> | undefined;
  /** Largest reading; readings at or above it are over range. */
  readonly range?: Quantity<"absolutePressure"> | undefined;
}

/** One range of a gauge. */
export interface GaugeRange {
  /** Largest reading of the range. */
  readonly upTo: Quantity<"absolutePressure">;
  /** Smallest step of the display in it. */
  readonly resolution: Quantity<"pressureDifference">;
}

/** ±10 % of the reading: common for thermal gauges, from memory. */
export function assumedAccuracy(assumptions: VacuumDecayStatement[]): Quantity<"ratio"> {
  const accuracy = percent(10);
  assumptions.push(say("vacuum-decay.gauge-accuracy", { accuracy }));
  return accuracy;
}

/** Step of the display at a pressure, Pa; NaN where it has to be found. */
export function resolutionOf(given: VacuumGauge["resolution"]): (p: number) => number {
  const limits = { min: 0 };
  if (given === undefined) return () => Number.NaN;
  if (!Array.isArray(given)) {
    const step = siOf(
      "gauge.resolution",
      given as Quantity<"pressureDifference">,
      "pressureDifference",
      limits,
    );
    return () => step;
  }
  const list = listOf("gauge.resolution", given as readonly GaugeRange[], 1000);
  numberOf("gauge.resolution.length", list.length, { min: 1 });
  const ranges = list.map((one, i) => ({
    top: siOf(`gauge.resolution[${i}].upTo`, one?.upTo, "absolutePressure", { above: 0 }),
    step: siOf(`gauge.resolution[${i}].resolution`, one.resolution, "pressureDifference", limits),
  }));
  ranges.sort((one, other) => one.top - other.top);
  return (p) => (ranges.find(({ top }) => p <= top) ?? ranges.at(-1))?.step ?? Number.NaN;
}
