// What does a whole log of a nitrogen test prove?
// Follows generalized least squares with the error model of JCGM 100:2008, 5.2; verdict by JCGM 106:2012.
// Does not cover a valve that opens slowly: that is no jump, and shows as scatter or as a late fall.

import { listOf, objectOf, refuse } from "../quantity/check.ts";
import { InvalidInputError } from "../quantity/errors.ts";
import { frozen } from "../quantity/frozen.ts";
import { enter } from "../quantity/hints.ts";
import { Quantity } from "../quantity/quantity.ts";
import type { psig } from "../quantity/units/pressure.ts";
import { isBeyondChance } from "./decide.ts";
import { type JudgedHold, judgeHold } from "./judge-hold.ts";
import type { Jump } from "./log-course.ts";
import type { TestPressure, TestReading } from "./reading.ts";
import {
  type PressureTestSetup,
  type Setup,
  type State,
  sameKind,
  setupOf,
  stateOf,
  unitsOfReading,
} from "./setup.ts";
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
  /** Scatter around the fit against what the stated errors explain; well above 1, the log holds more than one leak and one temperature explain. Absent for two readings, which have none. */
  readonly misfit?: number | undefined;
}

/**
 * Judges a nitrogen test by a whole log. Every reading is corrected to the last temperature, and the
 * course of a leak is fitted to all of them. Errors that all rows share (scale, offset, a zero that
 * wanders, a thermometer that lags or misses part of the swing) are weighed as what they are; only what
 * differs from row to row averages out.
 *
 * The end is judged: where the pressure jumps by more than the errors explain (gas fed in, a valve opened late, a
 * thermometer moved), a new hold begins, which has to be as long as what came before; a leak before it still counts against the system. A fall that quickens at
 * the end, or more scatter than one log in a thousand has, passes nothing.
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
 * test.correctedDrop.expandedUncertainty.toString(psi, 1); // => 1.3 psi
 * ```
 */
export function assessPressureLog(test: PressureTestLog): LogAssessment {
  const { readings } = objectOf("test", test);
  const setup = setupOf(test);
  const { read, isGauge } = statesIn(readings, setup);
  const [first] = readings as [LogReading];
  const { unit } = first.pressure;
  const [start, end] = [read[0], read.at(-1)] as [State, State];
  const ofLog = {
    whole: end.elapsed - start.elapsed,
    isGauge,
    hasBarometer: !isGauge || readings.every(({ atmosphere }) => atmosphere !== undefined),
    ...unitsOfReading(first),
    highest: read.reduce((most, s) => Math.max(most, s.pressure - s.atmosphere), 0),
  };
  const whole = judgeHold(test, setup, read, ofLog);
  return frozen({
    ...(endOf(whole, read, (rows, jump) => judgeHold(test, setup, rows, ofLog, jump).verdict) ??
      whole.verdict),
    corrected: whole.points.map(({ t, level }) => ({
      elapsed: new Quantity(t + start.elapsed, first.elapsed.unit),
      pressure: new Quantity(level - (isGauge ? end.atmosphere : 0), unit as typeof psig),
    })),
  });
}

/**
 * The verdict on what comes after the last jump, or on a leak beyond chance before one; none where nothing jumps, or
 * where one moment alone comes after the last jump.
 */
function endOf(
  { jumps }: JudgedHold,
  read: readonly State[],
  judged: (rows: readonly State[], after?: Jump) => PressureTestAssessment,
): PressureTestAssessment | undefined {
  const verdictOn = (rows: readonly State[], after?: Jump) =>
    (rows.at(-1)?.elapsed ?? 0) > (rows[0]?.elapsed ?? 0) ? [judged(rows, after)] : [];
  const last = jumps.at(-1);
  const [verdict] = last ? verdictOn(read.slice(last.row), last) : [];
  if (!verdict || verdict.cause === "leak") return verdict;
  const leaking = jumps
    .flatMap(({ row }, i) => verdictOn(read.slice(jumps[i - 1]?.row ?? 0, row), jumps[i - 1]))
    .find(({ correctedDrop: { value, expandedUncertainty: U } }) => isBeyondChance(value.si, U.si));
  return leaking ? { ...leaking, reasons: [...leaking.reasons, ...verdict.reasons] } : verdict;
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
  if (read.at(-1)?.elapsed === read[0]?.elapsed) {
    const allowed = "readings at two different times or more";
    const value = `${readings.length} readings`;
    throw new InvalidInputError({ argument: "readings", value, allowed, hint: enter("two-times") });
  }
  return { read, isGauge };
}
