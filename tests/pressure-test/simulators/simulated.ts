// What both simulators hand over: what the person on site would know, and the truth beside it.
import type { PressureTestSetup } from "hvac-install-math/pressure-test";
import {
  deltaK,
  kelvin,
  kPag,
  liter,
  pascal,
  pascalAbsolute,
  percent,
  type Quantity,
  second,
} from "hvac-install-math/quantity";

export interface Row {
  /** s */
  readonly t: number;
  /** Gauge pressure as shown, Pa. */
  readonly p: number;
  /** Temperatures as shown, K. */
  readonly T: readonly number[];
}

/** A pressure test from a hidden truth. */
export interface Simulated {
  readonly rows: readonly Row[];
  /** What the datasheets say, Pa and K. */
  readonly gauge: { accuracy: number; step: number; drift: number };
  readonly thermometer: { accuracy: number; step: number; follows: number };
  /** m³; stated, one per zone. */
  readonly volumes: readonly number[];
  readonly volumeError: number;
  /** Station pressure at the start, Pa. */
  readonly atmosphere: number;
  readonly copper: boolean;
  /** The limit that the person stated for the whole test, Pa. */
  readonly limit: number;
  /** Truth: drop at the true last temperatures, Pa; 0 for a tight system. */
  readonly drop: number;
  readonly tight: boolean;
}

/** What is common to a judgement by two readings and by the log. */
export function setupOf(test: Simulated): PressureTestSetup {
  const { gauge, thermometer, volumes, volumeError } = test;
  return {
    instruments: {
      pressure: {
        accuracy: pascal(gauge.accuracy),
        resolution: pascal(gauge.step),
        drift: pascal(gauge.drift),
      },
      temperature: {
        accuracy: deltaK(thermometer.accuracy),
        resolution: deltaK(thermometer.step),
        followsGasWithin: deltaK(thermometer.follows),
      },
      volumeUncertainty: percent(volumeError * 100),
    },
    atmosphere: pascalAbsolute(test.atmosphere),
    volume: volumes.map((v) => liter(v * 1e3)),
    ...(test.copper && { wall: "copper" as const }),
    criterion: { maximumDrop: pascal(test.limit) },
  };
}

/** A row as the library takes it. */
export function readingOf(row: Row): {
  elapsed: Quantity<"duration">;
  pressure: Quantity<"gaugePressure">;
  temperature: Quantity<"temperature">[];
} {
  return {
    elapsed: second(row.t),
    pressure: kPag(row.p / 1e3),
    temperature: row.T.map((T) => kelvin(T)),
  };
}

/** What a display shows. */
export const rounded = (value: number, step: number): number => Math.round(value / step) * step;
