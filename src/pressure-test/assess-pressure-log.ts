// What does a whole log of a nitrogen test prove?
// Follows generalised least squares with the error model of JCGM 100:2008, 5.2; verdict by JCGM 106:2012.
// Does not cover logs in which gas was fed in or let out: start the log after the last change.
import { listOf, objectOf, refuse } from "../quantity/check.ts";
import { InvalidInputError } from "../quantity/errors.ts";
import { frozen } from "../quantity/frozen.ts";
import { Quantity, type Unit } from "../quantity/quantity.ts";
import { kPaa, kPag } from "../quantity/units/pressure.ts";
import { slopeAt, zones } from "./charge.ts";
import { type Limit, limitOf } from "./criterion.ts";
import { coverage } from "./decide.ts";
import { expected, statesOf } from "./drop.ts";
import { shown } from "./figures.ts";
import { fitLog } from "./fit-log.ts";
import { judge } from "./judge.ts";
import { errorSources } from "./log-errors.ts";
import { pointsOf, sum } from "./log-points.ts";
import { type Doubt, doubtsOf } from "./plausible.ts";
import { stillPressure } from "./pressure-still.ts";
import type { TestPressure, TestReading } from "./reading.ts";
import { refrigerantLoss } from "./refrigerant-equivalent.ts";
import {
  barometerAssumption,
  barometerDrift,
  gasOf,
  type PressureTestSetup,
  type Setup,
  type State,
  sameKind,
  setupOf,
  stateOf,
} from "./setup.ts";
import { say } from "./statements.ts";
import type { PressureTestAssessment } from "./verdict.ts";

/** A row of a log: a reading with its time. */
export interface LogReading extends TestReading {
  /** Time since the test began. */
  readonly elapsed: Quantity<"duration">;
}

/** A test judged by a log. */
export interface PressureTestLog extends PressureTestSetup {
  /** Two or more readings at different times, in any order, from the time on when the gas is at rest. */
  readonly readings: readonly LogReading[];
}

/** A point of the corrected course, for a plot. */
export interface CorrectedPoint {
  /** Time since the test began; the mean of the readings that the point stands for. */
  readonly elapsed: Quantity<"duration">;
  /** What the instrument would have shown at the temperature of the last reading. */
  readonly pressure: TestPressure;
}

/** The verdict on a log. */
export interface LogAssessment extends PressureTestAssessment {
  /** The course corrected to the last temperature, at most 100 points. */
  readonly corrected: readonly CorrectedPoint[];
  /** Scatter around the fit against what the stated errors explain; well above 1, the log holds more than one leak and one temperature explain. */
  readonly misfit: number;
}

/**
 * Judges a nitrogen test by a whole log. Every reading is corrected to the last temperature, and the
 * course of a leak is fitted to all of them. Errors that all rows share (scale, offset, a zero that
 * wanders, a thermometer that lags or misses part of the swing) are weighed as what they are; only what
 * differs from row to row averages out.
 *
 * A log tells a thermometer that misleads from a leak when the temperature comes back during the test.
 * While it only falls, no log can, and the uncertainty says so. A gauge that stands still while the
 * temperature moves passes nothing: it may be shut off from the system, or its display held.
 *
 * @param test - `readings` (pressure, temperature, elapsed time), and the rest as for
 * {@link assessPressureTest}.
 * @returns As {@link assessPressureTest}, for the drop from the first to the last reading, with the
 * corrected course.
 * @throws {@link OutOfRangeError} beyond the range of the nitrogen equation (6 MPa, −40 °C to 70 °C).
 * @throws {@link InvalidInputError} for fewer than two times, another kind, or readings of two kinds.
 *
 * Cautions: dry nitrogen only, regulator and relief device, raise in stages, never above the lowest
 * marked limit, vent outdoors; the result carries them.
 *
 * Source: JCGM 100:2008, 5.2; JCGM 106:2012, 8.3; Span et al. (2000), doi:10.1063/1.1349047.
 *
 * @example
 * ```ts
 * import { assessPressureLog } from "hvac-install-math/pressure-test";
 * import { deltaF, degF, minute, psi, psig, standardAtmosphere } from "hvac-install-math/quantity";
 *
 * const rows = [[0, 500, 80], [30, 497, 77], [60, 494.9, 75], [90, 494.8, 75], [120, 497.9, 78]];
 * const test = assessPressureLog({
 *   readings: rows.map(([min = 0, p = 0, t = 0]) => ({
 *     elapsed: minute(min),
 *     pressure: psig(p),
 *     temperature: degF(t),
 *   })),
 *   instruments: {
 *     pressure: { accuracy: psi(2), resolution: psi(0.1) },
 *     temperature: { accuracy: deltaF(1), resolution: deltaF(0.1), followsGasWithin: deltaF(0.7) },
 *   },
 *   criterion: { maximumDrop: psi(5) },
 *   atmosphere: standardAtmosphere,
 * });
 * test.outcome; // => pass
 * test.correctedDrop.value.toString(psi, 1); // => 0.0 psi
 * test.correctedDrop.expandedUncertainty.toString(psi, 1); // => 2.7 psi
 * ```
 */
export function assessPressureLog(test: PressureTestLog): LogAssessment {
  const { readings, criterion, confidence } = objectOf("test", test);
  const setup = setupOf(test);
  const { errors, beta, expansion } = setup;
  const { read, isGauge } = statesIn(readings, setup);
  const gas = gasOf(test, setup, read);
  const { states, volumes } = gas;
  const [first, last] = [states[0], states.at(-1)] as [State, State];
  const seconds = last.elapsed - first.elapsed;
  const assumptions = [...setup.assumptions, ...gas.assumptions];
  let barometer = 0;
  if (isGauge && readings.some(({ atmosphere }) => atmosphere === undefined)) {
    barometer = barometerDrift(seconds);
    assumptions.push(barometerAssumption(barometer));
  }
  const log = pointsOf(states, volumes, beta);
  const sources = errorSources(log, { errors, gas, seconds, barometer, expansion });
  const fit = fitLog(
    log.points.map(({ t }) => t / seconds),
    log.points.map(({ level }) => level),
    sources,
  );
  const volume = sum(setup.volumes);
  const { unit } = (readings[0] as LogReading).pressure;
  const limit = limitOf(criterion, seconds, volume, first.pressure - first.atmosphere);
  const misfit = Number(fit.misfit.toPrecision(3));
  const doubts = [
    ...doubtsOf(test, errors, {
      first,
      highest: states.reduce((most, s) => Math.max(most, s.pressure - s.atmosphere), 0),
      seconds,
    }),
    // The gauge may have been shut off.
    ...stillPressure(
      readings.map(({ pressure }: LogReading) => pressure.si),
      errors.pressure.step * Math.sqrt(12),
      log.points,
      sources,
      coverage(confidence).k,
      unit.difference,
    ),
    ...courseDoubts(misfit, fit.start - last.pressure, limit, unit.difference),
  ];
  const verdict = judge({
    drop: fit.drop,
    shares: fit.shares,
    limit,
    first,
    last,
    isGauge,
    expected: expected(statesOf(first, last, volumes, beta)),
    confidence,
    seconds,
    volume,
    volumeError: errors.volume,
    densityPerPascal: slopeAt(fit.start - fit.drop, zones(last.temperatures, volumes), beta),
    doubts,
    asksElsewhere: gas.asksElsewhere,
    assumptions,
    unit: unit.difference,
  });
  return frozen({
    ...verdict,
    ...refrigerantLoss(test, verdict, (first.pressure + last.pressure) / 2, last.temperatures),
    misfit,
    corrected: log.points.map(({ t, level }) => {
      const shown = (level - (isGauge ? last.atmosphere : 0)) / 1e3;
      return {
        elapsed: new Quantity(t + first.elapsed, (readings[0] as LogReading).elapsed.unit),
        pressure: (isGauge
          ? kPag(shown).as(unit as typeof kPag)
          : kPaa(shown).as(unit as typeof kPaa)) as TestPressure,
      };
    }),
  });
}

/** The readings in order of time, in SI. */
function statesIn(
  readings: readonly LogReading[],
  setup: Setup,
): { readonly read: readonly State[]; readonly isGauge: boolean } {
  let isGauge = true;
  const read = listOf<LogReading>("readings", readings)
    .map((reading, i) => {
      const path = `readings[${i}]`;
      const state = stateOf(path, reading, setup);
      if (reading.elapsed === undefined) {
        refuse(`${path}.elapsed`, undefined, "a duration", "duration");
      }
      isGauge = sameKind(`${path}.pressure`, readings[0] as LogReading, reading);
      return state;
    })
    .sort((a, b) => a.elapsed - b.elapsed);
  if (read.length < 2 || (read.at(-1) as State).elapsed === (read[0] as State).elapsed) {
    const allowed = "readings at two different times or more";
    const value = `${readings.length} readings`;
    throw new InvalidInputError({ argument: "readings", value, allowed });
  }
  return { read, isGauge };
}

/** What one leak does not explain: it may have been filled up, or a joint may have let go at the end. */
function courseDoubts(
  misfit: number,
  now: number,
  limit: Limit | undefined,
  unit: Unit<"pressureDifference">,
): Doubt[] {
  const doubts: Doubt[] = [];
  if (misfit > 2) {
    const reason = say("pressure-test.log-misfit", { misfit });
    doubts.push({ reason, action: say("pressure-test.look-at-plot") });
  }
  if (limit && now > limit.drop) {
    const values = { drop: shown(now, unit), limit: shown(limit.drop, unit) };
    const reason = say("pressure-test.last-reading-above-limit", values);
    doubts.push({ reason, action: say("pressure-test.read-again") });
  }
  return doubts;
}
