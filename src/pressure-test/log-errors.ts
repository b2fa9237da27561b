// How do gauge and thermometer err from point to point of a log? Their covariance, part by part.
// Follows JCGM 100:2008, 5.2 and F.1.2; the memory times are common practice, no source.
// Does not cover errors beyond the stated ones: those show as misfit and widen the result.
import type { UncertaintyPart } from "./drop.ts";
import type { TestErrors } from "./instruments.ts";
import { type LogPoint, type LogPoints, sum } from "./log-points.ts";

/** A part of the errors: covariance of points i and j, Pa². */
export interface ErrorSource {
  readonly part: UncertaintyPart;
  readonly covariance: (i: number, j: number) => number;
}

/**
 * Times over which a thermometer's distance from the gas changes (sun, wind, a door), s; each counts with
 * the whole stated distance. Set so that 95 % intervals cover a hidden truth in a simulated study.
 */
const WANDER = [1200, 7200];
/** Lag of the thermometer, s, and share of the swing that it misses, that are always thought possible. */
const LAG = 120;
const MISSED = 0.03;

/** Every part of the errors of a log. `barometer` is the standard uncertainty of its change, Pa. */
export function errorSources(
  { points, variance }: LogPoints,
  { pressure: p, temperature: T, volume }: TestErrors,
  expansion: number,
  barometer: number,
): ErrorSource[] {
  const seconds = (points.at(-1) as LogPoint).t - (points[0] as LogPoint).t;
  const times = points.map(({ t }) => t);
  const zones = (points[0] as LogPoint).T.map((_, z) => z);
  const sources: ErrorSource[] = [];
  const add = (part: UncertaintyPart, covariance: ErrorSource["covariance"]) =>
    sources.push({ part, covariance });
  /** One unknown factor of standard deviation 1 times a known course. */
  const along = (part: UncertaintyPart, course: readonly number[]) =>
    add(part, (i, j) => (course[i] as number) * (course[j] as number));
  /** Errors with a memory: alike near in time, independent far apart. */
  const wander = (part: UncertaintyPart, size: readonly number[], memory: number) =>
    add(
      part,
      (i, j) =>
        (size[i] as number) *
        (size[j] as number) *
        Math.exp(-Math.abs((times[i] as number) - (times[j] as number)) / memory),
    );
  /** Errors of single rows: they average out within a point. */
  const single = (part: UncertaintyPart, of: (point: LogPoint) => number) => {
    const variances = points.map((point) => of(point) / point.count);
    add(part, (i, j) => (i === j ? (variances[i] as number) : 0));
  };
  const kelvins = ({ perKelvin }: LogPoint) => Math.hypot(...perKelvin) * T.random;

  single("gauge reading", () => p.random ** 2);
  single("thermometer reading", (point) => kelvins(point) ** 2);
  single("scatter", (point) => Math.max(0, variance - p.random ** 2 - kelvins(point) ** 2));
  wander(
    "gauge reading",
    points.map(() => p.step),
    holds(
      p.step,
      points.map(({ raw }) => raw),
      seconds,
    ),
  );
  along(
    "gauge drift",
    times.map((t) => (p.between * t) / seconds),
  );
  along(
    "gauge error",
    points.map(({ perPascal }) => p.common * perPascal),
  );
  along(
    "thermometer error",
    points.map(({ perKelvin }) => T.common * sum(perKelvin)),
  );
  along(
    "wall expansion",
    points.map(({ perBeta }) => perBeta * expansion),
  );
  for (const z of zones) {
    const course = points.map((point) => point.T[z] as number);
    const per = points.map((point) => point.perKelvin[z] as number);
    const mean = sum(course) / points.length;
    const swing = course.map((value) => value - mean);
    const speed = speeds(times, course);
    const scaled = (shape: readonly number[], least: number) => {
      const size = Math.hypot(...shape) / Math.sqrt(shape.length);
      const most = Math.min(least * 10, Math.max(least, T.between / (size || 1)));
      return shape.map((value, i) => value * most * (per[i] as number));
    };
    wander(
      "thermometer reading",
      per.map((c) => c * T.step),
      holds(T.step, course, seconds),
    );
    for (const memory of WANDER) {
      wander(
        "gas temperature",
        per.map((c) => c * T.between),
        memory,
      );
    }
    along("gas temperature", scaled(swing, MISSED));
    along("gas temperature", scaled(speed, LAG));
  }
  (points[0] as LogPoint).perVolume.forEach((_, z) => {
    along(
      "zone volumes",
      points.map(({ perVolume }) => (perVolume[z] as number) * volume),
    );
  });
  // The barometer's change grows like a random walk.
  add(
    "barometer",
    (i, j) => (barometer ** 2 * Math.min(times[i] as number, times[j] as number)) / seconds,
  );
  return sources;
}

/** How long a display step holds: the time in which the reading moves on by one. */
function holds(step: number, list: readonly number[], seconds: number): number {
  const path = sum(list.slice(1).map((v, i) => Math.abs(v - (list[i] as number))));
  return Math.max(1, seconds * (path > step ? step / path : 1));
}

/** Rate of change over ± 5 min, per second. */
function speeds(times: readonly number[], list: readonly number[]): number[] {
  return times.map((t) => {
    const a = Math.max(times[0] as number, t - 300);
    const b = Math.min(times.at(-1) as number, t + 300);
    return (interpolated(times, list, b) - interpolated(times, list, a)) / (b - a);
  });
}

/** The list at a time that is not after the last. */
function interpolated(times: readonly number[], list: readonly number[], at: number): number {
  let i = 1;
  while ((times[i] as number) < at) i++;
  const [a, b] = [times[i - 1] as number, times[i] as number];
  const [u, v] = [list[i - 1] as number, list[i] as number];
  return b > a ? u + ((v - u) * (at - a)) / (b - a) : v;
}
