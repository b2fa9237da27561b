// What do the instruments leave open? The errors of a gauge and a thermometer that are read twice.
// Follows JCGM 100:2008 (GUM), 4.3.7, 5.2 (common errors) and F.2.2.1 (resolution).
// Does not cover a wrong reading: a thermometer that hangs in the sun has no stated error.
import { type Instrument, standardUncertainty } from "../assessment/uncertainty.ts";
import { flagOf, objectOf, siOf } from "../quantity/check.ts";
import type { DifferenceOf } from "../quantity/kinds.ts";
import type { Quantity, Unit } from "../quantity/quantity.ts";
import { kPa } from "../quantity/units/pressure.ts";
import { deltaK } from "../quantity/units/temperature.ts";
import { type PressureTestStatement, say } from "./statements.ts";

/**
 * The gauge or pressure sensor. Read twice, its common error nearly cancels in the drop; its resolution,
 * its repeatability and what its zero wanders in between remain.
 *
 * Source: JCGM 100:2008, 5.2.
 */
export interface TestGauge extends Instrument<"gaugePressure"> {
  /** How far zero and hysteresis may wander from the first to the last reading, ±. When left out, a quarter of the accuracy (at least one display step) and 2 % of it for each kelvin that the temperature moved are assumed. */
  readonly drift?: Quantity<"pressureDifference"> | undefined;
  /** Two different gauges read start and end, so that their errors do not cancel. */
  readonly separateInstruments?: boolean | undefined;
}

/**
 * The thermometer that stands for the gas temperature.
 *
 * Source: JCGM 100:2008, 5.2.
 */
export interface GasThermometer extends Instrument<"temperature"> {
  /** How far the reading may be from the mean gas temperature, differently at each reading, ±: sun on one pipe, indoor and outdoor parts, lag, warmth of the fill. Under the insulation of tubing in one place and in shade, ±0.5 K. When left out, a bound that grows with the swing, the time and the volume is assumed. */
  readonly followsGasWithin?: Quantity<"temperatureDifference"> | undefined;
  /** Two different thermometers read start and end, so that their errors do not cancel. */
  readonly separateInstruments?: boolean | undefined;
}

/**
 * What the test was read with.
 *
 * Source: JCGM 100:2008, 4.1.
 */
export interface TestInstruments {
  /** The gauge or pressure sensor. */
  readonly pressure: TestGauge;
  /** The thermometer. */
  readonly temperature: GasThermometer;
  /** Standard uncertainty of each volume as a fraction of it; taken as exact when left out. */
  readonly volumeUncertainty?: Quantity<"ratio"> | undefined;
}

/** Standard uncertainties in SI: of one reading, made of its display step and the rest that is random; common to all. */
export interface ReadingErrors {
  readonly each: number;
  readonly step: number;
  readonly random: number;
  readonly common: number;
}

/** Pressure, temperature and volume errors, and what was assumed for them. */
export interface TestErrors {
  /** With its wandering from the first to the last reading, and more of it for each kelvin of swing. */
  readonly pressure: ReadingErrors & { readonly between: number; readonly perKelvin: number };
  readonly temperature: ReadingErrors;
  readonly volume: number;
  /** Neither accuracy nor step nor repeatability is above 0. */
  readonly isGaugeExact: boolean;
  readonly isThermometerExact: boolean;
  readonly assumptions: readonly PressureTestStatement[];
}

/** A rectangular distribution of limits ±a has the standard deviation a/√3 (JCGM 100:2008, 4.3.7). */
const rectangular = (limit: number) => limit / Math.sqrt(3);

const isExact = ({ each, common }: ReadingErrors) => each === 0 && common === 0;

/** Reads and checks the instruments. */
export function errorsOf(instruments: TestInstruments): TestErrors {
  const { pressure, temperature, volumeUncertainty } = objectOf("instruments", instruments);
  const p = parts<"gaugePressure">("instruments.pressure", pressure, kPa);
  const T = parts<"temperature">("instruments.temperature", temperature, deltaK);
  const assumptions: PressureTestStatement[] = [];
  const { accuracy, resolution, separateInstruments } = pressure;
  const limits = accuracy?.si ?? 0;
  let drift = Math.max(limits / 4, resolution?.si ?? 0); // common practice, no source
  let perKelvin = limits * 0.02; // thermal zero shift of pressure sensors, from memory
  if (pressure.drift !== undefined) {
    drift = siOf("instruments.pressure.drift", pressure.drift, "pressureDifference", { min: 0 });
    perKelvin = 0;
  } else if (separateInstruments) drift = perKelvin = 0;
  else if (drift > 0) {
    const { unit } = (accuracy ?? resolution) as Quantity<"pressureDifference">;
    assumptions.push(say("pressure-test.gauge-drift", { drift: kPa(drift / 1e3).as(unit) }));
  }
  const volume =
    volumeUncertainty === undefined
      ? 0
      : siOf("instruments.volumeUncertainty", volumeUncertainty, "ratio", { min: 0, below: 1 });
  return {
    pressure: { ...p, between: rectangular(drift), perKelvin: rectangular(perKelvin) },
    temperature: T,
    volume,
    isGaugeExact: isExact(p) && drift === 0,
    isThermometerExact: isExact(T),
    assumptions,
  };
}

/** Errors of each reading and common ones: the accuracy is common unless the instrument changed. */
function parts<K extends "gaugePressure" | "temperature">(
  path: string,
  instrument: Instrument<K> & { readonly separateInstruments?: boolean | undefined },
  unit: Unit<DifferenceOf<K>>,
): ReadingErrors {
  standardUncertainty(instrument, unit, path); // refuses what is no instrument
  const { accuracy, resolution, repeatability, separateInstruments = false } = instrument;
  flagOf(`${path}.separateInstruments`, separateInstruments);
  const limits = rectangular(accuracy?.si ?? 0);
  const step = (resolution?.si ?? 0) / Math.sqrt(12); // F.2.2.1
  const random = Math.hypot(repeatability?.si ?? 0, separateInstruments ? limits : 0);
  return {
    each: Math.hypot(step, random),
    step,
    random,
    common: separateInstruments ? 0 : limits,
  };
}
