// What do two readings of a nitrogen test prove?
// Follows JCGM 100:2008 and JCGM 106:2012 on the real-gas drop of Span et al. (2000).
// Does not cover a log of many readings (assess-pressure-log.ts) or where a leak is.
import { objectOf, siOf } from "../quantity/check.ts";
import { frozen } from "../quantity/frozen.ts";
import { Quantity } from "../quantity/quantity.ts";
import type { psig } from "../quantity/units/pressure.ts";
import { slopeAt, zones } from "./charge.ts";
import { limitOf } from "./criterion.ts";
import { budget, drop, expected, statesOf } from "./drop.ts";
import { judge } from "./judge.ts";
import { doubtsOf } from "./plausible.ts";
import type { TestPressure, TestReading } from "./reading.ts";
import { refrigerantLoss } from "./refrigerant-equivalent.ts";
import {
  barometerAssumption,
  barometerDrift,
  gasOf,
  type PressureTestSetup,
  type State,
  sameKind,
  setupOf,
  stateOf,
  unitsOfReading,
} from "./setup.ts";
import { swappedZones } from "./swapped-zones.ts";
import type { PressureTestAssessment } from "./verdict.ts";

/** A test judged by two readings. */
export interface PressureTest extends PressureTestSetup {
  /** First reading, some time after the fill: the gas has to have come to rest. */
  readonly start: TestReading;
  /** Last reading. */
  readonly end: TestReading;
}

/**
 * The verdict on two readings, with the pressure that the second should have shown.
 */
export interface TwoReadingAssessment extends PressureTestAssessment {
  /** What the last reading would have been without a leak, of its kind and in its unit. */
  readonly expectedPressure: TestPressure;
}

/**
 * Judges a nitrogen test by its first and last reading. A pass is proof: a drop of the limit is excluded, no
 * leak is proven, and the readings were a test at all. Everything else says what to do next.
 *
 * **What to pass in.** Pressure and gas temperature of both readings with the time between them, the atmosphere, the
 * errors of gauge and thermometer, and the drop that is allowed (`criterion`). **What comes back.** The outcome, the
 * drop that the temperature does not explain with its uncertainty, and the actions.
 *
 * **How.** The corrected drop is what is missing from the pressure of real nitrogen at the last temperature. The limit
 * is the `criterion`, at most 1 % of the fill pressure (common practice, no source). Drop plus expanded
 * uncertainty within it: `pass`, unless a leak is proven (drop larger than its expanded uncertainty); a leak
 * that the limit allows is `inconclusive`. Drop less expanded uncertainty above it: `fail`; so is a leak
 * without a limit, and one beyond chance that may be above it. Without a criterion nothing passes.
 *
 * A hold below 10 min or of unknown length, one in which 1 % of the fill pressure an hour would not move the
 * gauge by its step, a fill below what manual or refrigerant require or above what is marked, and instruments
 * without error cannot pass.
 *
 * Assumes one gauge and one thermometer for both readings, unless stated otherwise. What decides most and is
 * often not stated is assumed on the safe side: how long after the fill the first reading was taken
 * (`sinceFill`), and whether part of the tubing lies elsewhere (`elsewhere`).
 *
 * @param test - `start` and `end` (pressure, temperature, elapsed time, atmosphere), `instruments`,
 * `atmosphere` (20 kPa to 120 kPa, `absolutePressure`), and where known `volume`, `criterion`, `sinceFill`,
 * `elsewhere`, `required`, `wall`, `refrigerant`, `confidence`.
 * @returns Outcome, corrected drop ± expanded uncertainty and its budget, leak rate where volume and time
 * are known, the smallest leak that could have shown, the further hold that would decide.
 * @throws {@link OutOfRangeError} beyond the range of the nitrogen equation (6 MPa, −40 °C to 70 °C).
 * @throws {@link InvalidInputError} for another kind, readings of two kinds, an end before the start, or
 * a rate as the limit without the volume or time that it needs.
 *
 * Cautions: dry nitrogen only, regulator and relief device, raise in stages, never above the lowest
 * marked limit, vent outdoors; the result carries them.
 *
 * Source: JCGM 100:2008, 5.1 and 5.2; JCGM 106:2012, 8.3; Span et al. (2000), doi:10.1063/1.1349047.
 *
 * @example
 * ```ts
 * import { assessPressureTest } from "hvac-install-math/pressure-test";
 * import { deltaF, degF, hour, liter, psi, psig, standardAtmosphere } from "hvac-install-math/quantity";
 *
 * const test = assessPressureTest({
 *   start: { pressure: psig(500), temperature: degF(80) },
 *   end: { pressure: psig(479), temperature: degF(60), elapsed: hour(12) },
 *   volume: liter(3),
 *   instruments: {
 *     pressure: { accuracy: psi(2), resolution: psi(0.1) },
 *     temperature: { accuracy: deltaF(1), resolution: deltaF(0.1), followsGasWithin: deltaF(0.7) },
 *   },
 *   sinceFill: hour(1),
 *   criterion: { maximumDrop: psi(3) },
 *   atmosphere: standardAtmosphere,
 * });
 * test.outcome; // => pass
 * test.expectedPressure.toString(undefined, 1); // => 479.4 psig
 * test.correctedDrop.value.toString(psi, 2); // => 0.37 psi
 * ```
 */
export function assessPressureTest(test: PressureTest): TwoReadingAssessment {
  const { start, end, criterion, confidence } = objectOf("test", test);
  const setup = setupOf(test);
  const { errors, beta, expansion } = setup;
  const read = [stateOf("start", start, setup), stateOf("end", end, setup)];
  const isGauge = sameKind("end.pressure", start, end);
  const gas = gasOf(test, setup, read);
  const [first, last] = gas.states as [State, State];
  if (end.elapsed !== undefined) {
    siOf("end.elapsed", end.elapsed, "duration", { above: first.elapsed });
  }
  const seconds = end.elapsed === undefined ? 0 : last.elapsed - first.elapsed;
  const states = statesOf(first, last, gas.volumes, beta);
  const assumptions = [...setup.assumptions, ...gas.assumptions];
  let barometer = 0;
  if (isGauge && end.atmosphere === undefined) {
    barometer = barometerDrift(seconds);
    assumptions.push(barometerAssumption(barometer));
  }
  const sealed = expected(states);
  const expectedPressure = sealed - (isGauge ? last.atmosphere : 0);
  const { volume } = setup;
  const highest = Math.max(first.pressure - first.atmosphere, last.pressure - last.atmosphere);
  const units = unitsOfReading(end);
  const verdict = judge({
    drop: drop(states),
    shares: budget(states, { errors, gas, seconds, barometer, expansion }),
    gas,
    limit: limitOf(criterion, seconds, volume, first.pressure - first.atmosphere),
    first,
    last,
    isGauge,
    expected: sealed,
    confidence,
    seconds,
    volume,
    volumeError: errors.volume,
    densityPerPascal: slopeAt(states.p2, zones(states.T2, gas.volumes), beta),
    doubts: [
      ...doubtsOf(test, errors, { first, highest, seconds, gauge: units.gauge }),
      ...swappedZones(read, units.thermometer),
    ],
    assumptions,
    ...units,
  });
  return frozen({
    expectedPressure: new Quantity(expectedPressure, end.pressure.unit as typeof psig),
    ...verdict,
    ...refrigerantLoss(test, verdict, (states.p1 + states.p2) / 2, states.T2),
  });
}
