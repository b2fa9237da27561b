// What was read, and in what order are zones given? The readings of a test, checked and turned into SI.
// Follows the model of nitrogen-gas.ts for its range. Does not cover readings in other gases.
import { nitrogenGasRange } from "../property-model/nitrogen-gas.ts";
import { ambientRange } from "../quantity/ambient-range.ts";
import { listOf, oneOf, requireKind, siOf } from "../quantity/check.ts";
import { InvalidInputError, OutOfRangeError } from "../quantity/errors.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { percent } from "../quantity/units/ratio.ts";
import { say } from "./statements.ts";

/**
 * A pressure as the instrument gives it: above the local atmosphere (a gauge) or above vacuum (an
 * absolute sensor, which does not see the barometer change).
 *
 * Source: ISO 80000-4:2019, 4-14.
 */
export type TestPressure = Quantity<"gaugePressure"> | Quantity<"absolutePressure">;

/**
 * The gas temperature: one, or one per zone in the order of the volumes.
 */
export type TestTemperature = Quantity<"temperature"> | readonly Quantity<"temperature">[];

/**
 * The inner volume: of the whole, or one per zone in the order of the temperatures.
 */
export type TestVolume = Quantity<"volume"> | readonly Quantity<"volume">[];

/**
 * One reading of a pressure test.
 */
export interface TestReading {
  /** What the gauge or absolute sensor shows; the same kind in all readings of a test. */
  readonly pressure: TestPressure;
  /** Gas temperature, per zone where zones differ, −40 °C to 70 °C. */
  readonly temperature: TestTemperature;
  /** Time since the test began; needed for a leak rate. */
  readonly elapsed?: Quantity<"duration"> | undefined;
  /** Station pressure at this reading, where it differs from the one given for the whole test. */
  readonly atmosphere?: Quantity<"absolutePressure"> | undefined;
}

/** What the tubing is made of: how the inner volume grows with temperature; `rigid` leaves it out. */
export type Wall = "rigid" | "copper" | "aluminum";

/**
 * Cubic expansion, 1/K: three times the linear coefficient at 20 °C, 16.5e-6 copper, 23.1e-6 aluminum.
 * From memory (handbook values).
 */
const volumeExpansion: Readonly<Record<Wall, number>> = {
  rigid: 0,
  copper: 3 * 16.5e-6,
  aluminum: 3 * 23.1e-6,
};

const { minTemperature: min, maxTemperature: max, maxPressure } = nitrogenGasRange;

/** Absolute pressure, Pa, of either kind of reading. */
export function absoluteSi(argument: string, pressure: TestPressure, atmosphere: number): number {
  const kind = pressure?.kind === "absolutePressure" ? "absolutePressure" : "gaugePressure";
  requireKind(argument, pressure, kind);
  const offset = kind === "gaugePressure" ? atmosphere : 0;
  const given = pressure as Quantity<typeof kind>;
  siOf(argument, given, kind, { above: -offset });
  siOf(argument, given, kind, { max: maxPressure - offset }, OutOfRangeError);
  return given.si + offset;
}

/** Station pressure, Pa. */
export function atmosphereSi(argument: string, atmosphere: Quantity<"absolutePressure">): number {
  const hint = say("pressure-test.station-pressure");
  return siOf(argument, atmosphere, "absolutePressure", { ...ambientRange, hint });
}

/** A gas temperature in K within the range of the model. */
export function temperatureSi(argument: string, value: Quantity<"temperature">): number {
  return siOf(argument, value, "temperature", { min, max }, OutOfRangeError);
}

/** One or several values of a list argument, each with its path. */
export function each<T, R>(
  argument: string,
  given: T | readonly T[],
  read: (argument: string, value: T) => R,
): R[] {
  if (!Array.isArray(given)) return [read(argument, given as T)];
  return listOf<T>(argument, given, 1000, 1).map((value, i) => read(`${argument}[${i}]`, value));
}

/** Volumes in m³, one per zone; empty when none were given. */
export function volumesSi(volume: TestVolume | undefined): number[] {
  if (volume === undefined) return [];
  return each("volume", volume, (name, one) => siOf(name, one, "volume", { above: 0 }));
}

/** The share of each zone where shares were given; rounded ones may miss 1 by a hundredth. */
export function zoneSharesSi({
  volume,
  zoneShares,
}: {
  readonly volume?: TestVolume | undefined;
  readonly zoneShares?: readonly Quantity<"ratio">[] | undefined;
}): number[] | undefined {
  if (zoneShares === undefined) return undefined;
  if (Array.isArray(volume)) {
    throw new InvalidInputError({
      argument: "zoneShares",
      value: "given beside a list of volumes",
      allowed: "shares, or a volume for each zone",
      hint: say("pressure-test.zones-need-volumes"),
    });
  }
  const shares = listOf<Quantity<"ratio">>("zoneShares", zoneShares, 1000, 1).map((one, i) =>
    siOf(`zoneShares[${i}]`, one, "ratio", { above: 0 }),
  );
  const sum = shares.reduce((total, one) => total + one, 0);
  siOf("zoneShares", percent(100 * sum), "ratio", { min: 0.99, max: 1.01 });
  return shares.map((one) => one / sum);
}

/** The temperatures of a reading in K: one for the whole, or one for each volume. */
export function temperaturesSi(
  argument: string,
  temperature: TestTemperature,
  volumes: readonly number[],
): number[] {
  const temperatures = each(argument, temperature, temperatureSi);
  if (temperatures.length === 1 || temperatures.length === volumes.length) return temperatures;
  throw new InvalidInputError({
    argument,
    value: `${temperatures.length} temperatures`,
    allowed: `one, or one for each of the ${volumes.length} volumes`,
    hint: say("pressure-test.zones-need-volumes"),
  });
}

/** Cubic expansion of a wall, 1/K. */
export function betaOf(wall: Wall): number {
  return volumeExpansion[oneOf("wall", wall, Object.keys(volumeExpansion) as Wall[])];
}
