// What is common to all readings of a test? Instruments, volume, atmosphere, limit: checked, in SI.
// Follows JCGM 100:2008, 4.3. Does not cover one reading: that is reading.ts.
import { type Assumption, statement } from "../assessment/assessment.ts";
import { objectOf, siOf } from "../quantity/check.ts";
import { InvalidInputError } from "../quantity/errors.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { kPaa } from "../quantity/units/pressure.ts";
import type { PressureTestCriterion } from "./criterion.ts";
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
} from "./reading.ts";
import type { RefrigerantInService } from "./refrigerant-equivalent.ts";

/** What is common to a test judged by two readings and by a log. Source: none; the library's own type. */
export interface PressureTestSetup {
  /** What the test was read with. */
  readonly instruments: TestInstruments;
  /** Station pressure; of every reading that does not state its own. */
  readonly atmosphere: Quantity<"absolutePressure">;
  /** Inner volume of the whole, or one per zone in the order of the temperatures; needed for a leak rate. */
  readonly volume?: TestVolume;
  /** The stated limit; without one nothing passes. */
  readonly criterion?: PressureTestCriterion;
  /** One-sided confidence of the decision, 0.8 to below 1; 0.977 (k = 2) when left out. */
  readonly confidence?: number;
  /** What the machine will hold, for the leak in grams a year; needs volume and time. */
  readonly refrigerant?: RefrigerantInService;
  /** What the walls are made of; when left out they count as rigid, with copper's expansion as uncertainty. */
  readonly wall?: Wall;
}

/** What every reading shares, in SI. */
export interface Setup {
  readonly errors: TestErrors;
  readonly volumes: readonly number[];
  readonly beta: number;
  readonly expansion: number;
  readonly atmosphere: number;
  readonly assumptions: readonly Assumption[];
}

/** Checks what is common to the readings. */
export function setupOf({ instruments, atmosphere, volume, wall }: PressureTestSetup): Setup {
  const errors = errorsOf(instruments);
  const beta = betaOf(wall ?? "rigid");
  const assumptions = [...errors.assumptions];
  if (wall === undefined) {
    assumptions.push(
      statement(
        "rigid-walls",
        "The walls kept their volume; copper's expansion counts as uncertainty.",
      ),
    );
  }
  if (volume !== undefined && instruments.volumeUncertainty === undefined) {
    assumptions.push(statement("volume-exact", "The stated volume is exact."));
  }
  return {
    errors,
    volumes: volumesSi(volume),
    beta,
    // Rectangular: all of copper's when nothing is known, a fifth of a stated one (no source).
    expansion: (wall === undefined ? betaOf("copper") : betaOf(wall) / 5) / Math.sqrt(3),
    atmosphere: atmosphereSi("atmosphere", atmosphere),
    assumptions,
  };
}

/** A reading in SI, pressure absolute. */
export interface State {
  readonly pressure: number;
  readonly temperatures: readonly number[];
  readonly elapsed: number;
  readonly atmosphere: number;
}

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
  if (other.pressure.kind !== kind) {
    throw new InvalidInputError({
      argument,
      value: String(other.pressure),
      allowed: `the kind of the first reading, ${kind}`,
    });
  }
  return kind !== "absolutePressure";
}

/** Standard uncertainty of a barometer that was not read again: 150 Pa·√h, at most 800 Pa; from memory. */
export function barometerDrift(seconds: number): number {
  return seconds > 0 ? Math.min(800, 150 * Math.sqrt(seconds / 3600)) : 800;
}

/** Says so. */
export function barometerAssumption(barometer: number): Assumption {
  return statement("barometer-unchanged", "The barometer stayed within about ±{change}.", {
    change: kPaa(Number((barometer / 500).toPrecision(2))).minus(kPaa(0)),
  });
}
