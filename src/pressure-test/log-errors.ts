// How do gauge and thermometer err from point to point of a log? Their covariance, part by part.
// Follows JCGM 100:2008, 5.2 and F.1.2; the memory times are common practice, no source.
// Does not cover errors beyond the stated ones: those show as misfit and widen the result.
import type { Open } from "./drop.ts";
import { warmthAt } from "./gas-errors.ts";
import { type LogPoint, type LogPoints, sum } from "./log-points.ts";
import type { UncertaintyPart } from "./uncertainty-part.ts";

/** A part of the errors: covariance of points i and j, Pa². */
export interface ErrorSource {
  readonly part: UncertaintyPart;
  readonly covariance: (i: number, j: number) => number;
}

/**
 * Times over which a thermometer's distance from the gas changes (sun, wind, a door), s. A stated distance is that of a
 * reading (JCGM 100:2008, 4.3.7): it counts once, half of its variance with each; what is assumed where none was stated, with each. Set
 * so that 95 % intervals cover a hidden truth in a simulated study.
 */
const WANDER = [1200, 7200];

/** Share of the swing that a thermometer misses that is always thought possible. */
const MISSED = 0.03;

/**
 * Every part of the errors of a log. Of two readings far apart the distance from the gas counts once, as in drop.ts: not
 * once for each memory and each course that rows in between could show.
 */
export function errorSources(log: LogPoints, open: Open): ErrorSource[] {
  const seen = first(log.points).T.length - (open.gas.elsewhere > 0 ? 1 : 0);
  return [...instrumentSources(log, open, seen), ...gasSources(log, open, seen)];
}

/** One unknown factor of standard deviation 1 times a known course. */
const along = (part: UncertaintyPart, course: readonly number[]): ErrorSource => ({
  part,
  covariance: (i, j) => (course[i] as number) * (course[j] as number),
});

/** Errors with a memory: alike near in time, independent far apart. */
const wander = (
  part: UncertaintyPart,
  times: readonly number[],
  size: readonly number[],
  memory: number,
): ErrorSource => ({
  part,
  covariance: (i, j) =>
    (size[i] as number) *
    (size[j] as number) *
    Math.exp(-Math.abs((times[i] as number) - (times[j] as number)) / memory),
});

/** A change that grows like a random walk, to `size` at the last point. */
const walk = (
  part: UncertaintyPart,
  times: readonly number[],
  size: readonly number[],
): ErrorSource => {
  const seconds = (times.at(-1) as number) - (times[0] as number);
  return {
    part,
    covariance: (i, j) =>
      ((size[i] as number) *
        (size[j] as number) *
        Math.min(times[i] as number, times[j] as number)) /
      seconds,
  };
};

/** What gauge, thermometers, walls, volumes and barometer leave open. */
function instrumentSources(
  { points, variance }: LogPoints,
  open: Open,
  seen: number,
): ErrorSource[] {
  const { errors, gas, barometer, expansion } = open;
  const { pressure: p, temperature: T } = errors;
  const times = points.map(({ t }) => t);
  const seconds = (times.at(-1) as number) - (times[0] as number);
  const measured = ({ perKelvin }: LogPoint) => perKelvin.slice(0, seen);
  const kelvins = (point: LogPoint) => Math.hypot(...measured(point)) * T.random;
  /** Errors of single rows: they average out within a point. */
  const single = (part: UncertaintyPart, of: (point: LogPoint) => number): ErrorSource => {
    const variances = points.map((point) => of(point) / point.count);
    return { part, covariance: (i, j) => (i === j ? (variances[i] as number) : 0) };
  };
  const swing = Math.max(
    ...last(points)
      .T.slice(0, seen)
      .map((now, z) => Math.abs(now - (first(points).T[z] as number))),
  );
  const drift = p.between + p.perKelvin * swing;
  return [
    single("gauge-reading", () => p.random ** 2),
    single("thermometer-reading", (point) => kelvins(point) ** 2),
    single("scatter", (point) => Math.max(0, variance - p.random ** 2 - kelvins(point) ** 2)),
    wander(
      "gauge-reading",
      times,
      points.map(() => p.step),
      holds(
        p.step,
        points.map(({ raw }) => raw),
        seconds,
      ),
    ),
    along(
      "gauge-drift",
      times.map((t) => (drift * t) / seconds),
    ),
    along(
      "gauge-error",
      points.map(({ perPascal }) => p.common * perPascal),
    ),
    along(
      "thermometer-error",
      points.map((point) => T.common * sum(measured(point))),
    ),
    along(
      "wall-expansion",
      points.map(({ perBeta }) => perBeta * expansion),
    ),
    ...first(points).perVolume.map((_, z) =>
      along(
        "zone-volumes",
        points.map(({ perVolume }) => (perVolume[z] as number) * gas.zoneError),
      ),
    ),
    walk(
      "barometer",
      times,
      points.map(() => barometer),
    ),
  ];
}

/** How far the gas may be from the thermometers, zone by zone, and what no thermometer saw. */
function gasSources({ points }: LogPoints, { errors, gas }: Open, seen: number): ErrorSource[] {
  const { temperature: T } = errors;
  const isPair = points.length === 2;
  const once = isPair || !gas.asks.within;
  const times = points.map(({ t }) => t);
  const seconds = (times.at(-1) as number) - (times[0] as number);
  const sources = first(points)
    .T.slice(0, seen)
    .flatMap((_, z) => {
      const course = points.map((point) => point.T[z] as number);
      const per = points.map((point) => point.perKelvin[z] as number);
      const mean = sum(course) / points.length;
      const swing = course.map((value) => value - mean);
      const scaled = (shape: readonly number[], least: number) => {
        const size = Math.hypot(...shape) / Math.sqrt(shape.length);
        const most = Math.min(least * 10, Math.max(least, gas.between / (size || 1)));
        return shape.map((value, i) => value * most * (per[i] as number));
      };
      const near = per.map((c) => c * gas.between * (once ? Math.SQRT1_2 : 1));
      const missed = Math.max(MISSED, gas.missed);
      const courses = isPair
        ? [swing.map((K, i) => K * missed * (per[i] as number))]
        : [scaled(swing, missed), scaled(speeds(times, course), gas.lag)];
      return [
        wander(
          "thermometer-reading",
          times,
          per.map((c) => c * T.step),
          holds(T.step, course, seconds),
        ),
        ...WANDER.map((memory) => wander("gas-temperature", times, near, memory)),
        ...courses.map((shape) => along("gas-temperature", shape)),
      ];
    });
  const whole = points.map(({ perKelvin }) => sum(perKelvin.slice(0, seen)));
  const unseen = gas.unseen(seconds);
  sources.push(
    walk(
      "gas-temperature",
      times,
      whole.map((c) => c * unseen),
    ),
  );
  if (gas.elsewhere > 0) {
    const change = gas.change(seconds);
    const apart = points.map(({ perKelvin }) => (perKelvin[seen] as number) * change);
    sources.push(walk("gas-temperature", times, apart));
  }
  for (const warmth of gas.warmth) {
    const course = points.map(
      ({ t, perKelvin }) => warmthAt(warmth, gas.sinceFill + t) * sum(perKelvin),
    );
    sources.push(along("settling", course));
  }
  return sources;
}

const first = (points: readonly LogPoint[]) => points[0] as LogPoint;
const last = (points: readonly LogPoint[]) => points.at(-1) as LogPoint;

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
