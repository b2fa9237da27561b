// What is common to all readings of a test? Instruments, volume, atmosphere, limit: checked, in SI.
// Follows JCGM 100:2008, 4.3. Does not cover one reading: that is reading.ts.
import { standardAtmosphere, toGauge } from "../quantity/atmosphere.ts";
import { objectOf, requireKind, siOf } from "../quantity/check.ts";
import type { Quantity, Unit } from "../quantity/quantity.ts";
import { kPaa } from "../quantity/units/pressure.ts";
import type { PressureTestCriterion } from "./criterion.ts";
import { type GasElsewhere, type GasErrors, gasErrorsOf } from "./gas-errors.ts";
import { errorsOf, type TestErrors, type TestInstruments } from "./instruments.ts";
import {
  absoluteSi,
  atmosphereSi,
  betaOf,
  type TestReading,
  type TestVolume,
  temperaturesSi,
  volumesSi,
  type Wall,
  zoneSharesSi,
} from "./reading.ts";
import type { RefrigerantInService } from "./refrigerant-loss.ts";
import { type PressureTestStatement, say } from "./statements.ts";
import type { TestRequirement } from "./test-requirement.ts";

/** What is common to a test judged by two readings and by a log. */
export interface PressureTestSetup {
  /** What the test was read with. */
  readonly instruments: TestInstruments;
  /** Station pressure; of every reading that does not state its own. */
  readonly atmosphere: Quantity<"absolutePressure">;
  /** Inner volume of the whole, or one per zone in the order of the temperatures; needed for a leak rate. */
  readonly volume?: TestVolume | undefined;
  /** Share of the gas at each thermometer, in the order of the temperatures and together 1, where their volumes are not known one by one; counts as an estimate, each good to 15 % of itself (common practice, no source). */
  readonly zoneShares?: readonly Quantity<"ratio">[] | undefined;
  /** The stated limit; without one nothing passes. */
  readonly criterion?: PressureTestCriterion | undefined;
  /** One-sided confidence of the decision, 0.8 to below 1; 0.977 (k = 2) when left out. */
  readonly confidence?: number | undefined;
  /** What the machine will hold, for the leak in grams a year; needs volume and time. */
  readonly refrigerant?: RefrigerantInService | undefined;
  /** Time from the end of the fill to the first reading; without it the gas counts as warm from the fill, unless the thermometer is stated to follow it. */
  readonly sinceFill?: Quantity<"duration"> | undefined;
  /** What part of the gas lies where no thermometer is; without it up to 0.7 of it may, unless every zone has one or the thermometer is stated to follow the gas. */
  readonly elsewhere?: GasElsewhere | undefined;
  /** What manual and nameplate require; a test that does not meet it cannot pass. An empty object says that it was checked elsewhere. */
  readonly required?: TestRequirement | undefined;
  /** What the walls are made of; when left out they count as rigid, with copper's expansion as uncertainty. */
  readonly wall?: Wall | undefined;
}

/** What every reading shares, in SI. */
export interface Setup {
  readonly errors: TestErrors;
  /** m³, 0 when unknown. */
  readonly volume: number;
  /** Weights of the zones, and their relative standard uncertainty. */
  readonly volumes: readonly number[];
  readonly zoneError: number;
  readonly beta: number;
  readonly expansion: number;
  readonly atmosphere: number;
  readonly assumptions: readonly PressureTestStatement[];
}

/** Checks what is common to the readings. */
export function setupOf(test: PressureTestSetup): Setup {
  const { instruments, atmosphere, volume, wall } = test;
  const errors = errorsOf(instruments);
  const beta = betaOf(wall ?? "rigid");
  const assumptions = [...errors.assumptions];
  if (wall === undefined) {
    assumptions.push(say("pressure-test.rigid-walls"));
  }
  if (volume !== undefined && instruments.volumeUncertainty === undefined) {
    assumptions.push(say("pressure-test.volume-exact"));
  }
  if (!test.required && !test.refrigerant) assumptions.push(say("pressure-test.fill-unchecked"));
  const volumes = volumesSi(volume);
  const shares = zoneSharesSi(test);
  return {
    errors,
    volume: volumes.reduce((sum, one) => sum + one, 0),
    volumes: shares ?? volumes,
    zoneError: shares ? Math.max(errors.volume, GUESSED) : errors.volume,
    beta,
    // Rectangular: all of copper's when nothing is known, a fifth of a stated one (no source).
    expansion: (wall === undefined ? betaOf("copper") : betaOf(wall) / 5) / Math.sqrt(3),
    atmosphere: atmosphereSi("atmosphere", atmosphere),
    assumptions,
  };
}

/** Standard uncertainty of volumes where a share of the gas was guessed. */
const GUESSED = 0.15;

/** What the gas leaves open, and the states with the gas elsewhere as a zone of its own. */
export interface Gas extends GasErrors {
  readonly states: readonly State[];
  readonly volumes: readonly number[];
  /** Relative standard uncertainty of the volumes as weights of the zones. */
  readonly zoneError: number;
}

/** What the gas leaves open in a test, by the time of its states. */
export function gasOf(
  { instruments, elsewhere, sinceFill }: PressureTestSetup,
  { volume, volumes, zoneError }: Setup,
  states: readonly State[],
): Gas {
  const [first] = states as [State];
  const count = states.reduce((most, { temperatures: T }) => Math.max(most, T.length), 1);
  const isZoned = count > 1;
  const gas = gasErrorsOf({
    probe: instruments.temperature,
    elsewhere,
    sinceFill,
    isZoned,
    volume,
    fill: first.pressure,
  });
  const { elsewhere: share } = gas;
  if (share === 0) return { ...gas, states, volumes, zoneError };
  const [still] = first.temperatures as [number];
  const measured = isZoned ? volumes : [volume || 1];
  const all = measured.reduce((sum, one) => sum + one, 0);
  return {
    ...gas,
    states: states.map((state) => {
      const [whole] = state.temperatures as [number];
      const seen =
        state.temperatures.length === count ? state.temperatures : new Array(count).fill(whole);
      return { ...state, temperatures: [...seen, still] };
    }),
    volumes: [...measured.map((v) => v * (1 - share)), all * share],
    zoneError: Math.max(zoneError, GUESSED),
  };
}

/** A reading in SI, pressure absolute. */
export interface State {
  readonly pressure: number;
  readonly temperatures: readonly number[];
  readonly elapsed: number;
  readonly atmosphere: number;
}

/** In which a test was read, and is told. */
export interface ReadingUnits {
  readonly unit: Unit<"pressureDifference">;
  readonly gauge: Unit<"gaugePressure">;
  readonly thermometer: Unit<"temperature">;
}

/** The units of a reading. */
export const unitsOfReading = ({ pressure, temperature }: TestReading): ReadingUnits => ({
  unit: pressure.unit.difference,
  gauge:
    pressure.kind === "absolutePressure"
      ? toGauge(pressure as Quantity<"absolutePressure">, standardAtmosphere).unit
      : (pressure as Quantity<"gaugePressure">).unit,
  thermometer: ([temperature].flat()[0] as Quantity<"temperature">).unit,
});

/** Checks a reading. */
export function stateOf(path: string, reading: TestReading, setup: Setup): State {
  const { pressure, temperature, elapsed, atmosphere } = objectOf(path, reading);
  const air =
    atmosphere === undefined ? setup.atmosphere : atmosphereSi(`${path}.atmosphere`, atmosphere);
  return {
    pressure: absoluteSi(`${path}.pressure`, pressure, air),
    temperatures: temperaturesSi(`${path}.temperature`, temperature, setup.volumes),
    elapsed: elapsed === undefined ? 0 : siOf(`${path}.elapsed`, elapsed, "duration", { min: 0 }),
    atmosphere: air,
  };
}

/** Whether the readings are gauge readings; throws when they are of two kinds. */
export function sameKind(argument: string, first: TestReading, other: TestReading): boolean {
  const { kind } = first.pressure;
  requireKind(argument, other.pressure, kind); // of the first reading
  return kind !== "absolutePressure";
}

/** Standard uncertainty of a barometer that was not read again: 150 Pa·√h, at most 800 Pa; from memory. */
export function barometerDrift(seconds: number): number {
  return seconds > 0 ? Math.min(800, 150 * Math.sqrt(seconds / 3600)) : 800;
}

/** Says so. */
export function barometerAssumption(barometer: number): PressureTestStatement {
  return say("pressure-test.barometer-unchanged", {
    change: kPaa(Number((barometer / 500).toPrecision(2))).minus(kPaa(0)),
  });
}
