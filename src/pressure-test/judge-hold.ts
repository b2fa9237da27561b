// What do some rows of a log prove, taken as one hold? Fitted, and handed to the judge with limit and doubts.
// Follows fit-log.ts and judge.ts. Does not cover which rows are one hold: assess-pressure-log.ts.
import { second } from "../quantity/units/time.ts";
import { slopeAt, zones } from "./charge.ts";
import { limitOf } from "./criterion.ts";
import { coverage } from "./decide.ts";
import { combined, expected, statesOf } from "./drop.ts";
import { fitLog } from "./fit-log.ts";
import { judge } from "./judge.ts";
import { courseDoubts, type Jump, jumpSaid, jumpsIn } from "./log-course.ts";
import { type ErrorSource, errorSources } from "./log-errors.ts";
import { type LogPoint, pointsOf } from "./log-points.ts";
import { doubtsOf } from "./plausible.ts";
import { stillPressure } from "./pressure-still.ts";
import { refrigerantLoss } from "./refrigerant-equivalent.ts";
import {
  barometerAssumption,
  barometerDrift,
  gasOf,
  type PressureTestSetup,
  type ReadingUnits,
  type Setup,
  type State,
} from "./setup.ts";
import { swappedZones } from "./swapped-zones.ts";
import type { PressureTestAssessment } from "./verdict.ts";

/** What the whole log says to each of its holds. */
export interface OfLog extends ReadingUnits {
  readonly isGauge: boolean;
  /** Every row has its barometer, or needs none. */
  readonly hasBarometer: boolean;
  /** From its first to its last row, s. */
  readonly whole: number;
  /** Highest gauge pressure, Pa. */
  readonly highest: number;
}

/** The verdict on a hold, its points and its jumps. */
export interface JudgedHold {
  readonly verdict: PressureTestAssessment;
  readonly points: readonly LogPoint[];
  readonly jumps: readonly Jump[];
}

/** Judges rows, in order of time, as one hold; `after` is the jump that it began with. */
export function judgeHold(
  given: PressureTestSetup,
  setup: Setup,
  rows: readonly State[],
  { isGauge, hasBarometer, unit, gauge, thermometer, highest, whole }: OfLog,
  after?: Jump,
): JudgedHold {
  const { errors, beta, expansion } = setup;
  const isFed = after !== undefined && after.change > 0;
  // Gas that was fed in is warm from it.
  const test = isFed ? { ...given, sinceFill: second(0) } : given;
  const gas = gasOf(test, setup, rows);
  const { states, volumes } = gas;
  const [first, last] = [states[0], states.at(-1)] as [State, State];
  const seconds = last.elapsed - first.elapsed;
  const barometer = hasBarometer ? 0 : barometerDrift(seconds);
  const { points, variance } = pointsOf(states, volumes, beta);
  const open = { errors, gas, seconds, barometer, expansion };
  const fitOf = (own: readonly LogPoint[], sources: readonly ErrorSource[]) =>
    fitLog(
      own.map(({ t }) => t / seconds),
      own.map(({ level }) => level),
      sources,
    );
  const sources = errorSources({ points, variance }, open);
  const fit = fitOf(points, sources);
  const step = errors.pressure.step * Math.sqrt(12);
  const jumps = jumpsIn(points, fit, step, first.elapsed);
  // Looks in between prove no less than the two ends alone, as long as they show nothing of their own. Two rows are
  // their own ends.
  const isPlain = jumps.length === 0 && fit.misfit !== undefined && fit.misfit <= 1;
  const ends = [points[0], points.at(-1)] as [LogPoint, LogPoint];
  const byEnds = fitOf(ends, errorSources({ points: ends, variance }, open));
  const isByEnds = isPlain && combined(byEnds.shares) < combined(fit.shares);
  const { drop, shares } = isByEnds ? byEnds : fit;
  const said = after ? [jumpSaid(after, unit)] : [];
  // As long as what came before: a loss that was filled up would be there again.
  const isEnough = isFed && 2 * seconds >= whole;
  const { volume } = setup;
  const limit = limitOf(test.criterion, seconds, volume, first.pressure - first.atmosphere);
  const verdict = judge({
    drop,
    shares,
    limit,
    first,
    last,
    isGauge,
    expected: expected(statesOf(first, last, volumes, beta)),
    gas,
    confidence: test.confidence,
    seconds,
    volume,
    volumeError: errors.volume,
    densityPerPascal: slopeAt(fit.start - fit.drop, zones(last.temperatures, volumes), beta),
    doubts: [
      ...(isEnough ? [] : said),
      ...doubtsOf(test, errors, { first, highest, seconds, gauge }),
      ...swappedZones(rows, thermometer),
      // The gauge may have been shut off.
      ...stillPressure(
        rows.map(({ pressure, atmosphere }) => pressure - (isGauge ? atmosphere : 0)),
        step,
        points,
        sources,
        coverage(test.confidence).k,
        unit,
        gas.asks.within ? 0 : gas.between * Math.sqrt(3),
      ),
      ...courseDoubts(fit, points, jumps, limit, unit),
    ],
    notes: isEnough ? said.map(({ reason }) => reason) : [],
    assumptions: [
      ...setup.assumptions,
      ...gas.assumptions,
      ...(barometer > 0 ? [barometerAssumption(barometer)] : []),
    ],
    unit,
    gauge,
    thermometer,
  });
  return {
    verdict: {
      ...verdict,
      ...(fit.misfit !== undefined && { misfit: Number(fit.misfit.toFixed(3)) }),
      ...refrigerantLoss(test, verdict, (first.pressure + last.pressure) / 2, last.temperatures),
    },
    points,
    jumps,
  };
}
