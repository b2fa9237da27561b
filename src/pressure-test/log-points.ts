// How does a log of thousands of rows become a hundred points that all stand at one temperature?
// Follows the real-gas correction of drop.ts. Does not cover rows that are wrong: none is dropped.
import { expected } from "./drop.ts";
import type { State } from "./setup.ts";

/** Rows averaged over a short time, corrected to the last temperature, with what moves the result. */
export interface LogPoint {
  /** Seconds since the first row. */
  readonly t: number;
  /** Absolute pressure at the last temperature, Pa. */
  readonly level: number;
  /** Absolute pressure and gas temperatures as read. */
  readonly raw: number;
  readonly T: readonly number[];
  /** Change of the level per Pa of reading, per K of each zone, per 1/K of wall expansion, per relative volume of each zone. */
  readonly perPascal: number;
  readonly perKelvin: readonly number[];
  readonly perBeta: number;
  readonly perVolume: readonly number[];
  /** How many rows it stands for. */
  readonly count: number;
}

/** The points, and the variance of a single row's level from second differences. */
export interface LogPoints {
  readonly points: readonly LogPoint[];
  readonly variance: number;
}

/** At most this many points. */
const MAX = 100;

/** Sum of a list. */
export const sum = (list: readonly number[]): number => list.reduce((total, v) => total + v, 0);

/** Averages sorted rows over equal times, so that a fast stretch does not weigh more than it should. */
export function pointsOf(
  rows: readonly State[],
  volumes: readonly number[],
  beta: number,
): LogPoints {
  const { elapsed: start } = rows[0] as State;
  const last = rows.at(-1) as State;
  const { elapsed: end } = last;
  const count = rows.reduce((most, { temperatures }) => Math.max(most, temperatures.length), 0);
  // A single temperature stands for every zone.
  const zonesOf = ({ temperatures: T }: State) =>
    T.length === count ? T : Array.from({ length: count }, () => T[0] as number);
  const T2 = zonesOf(last);
  const groups: State[][] = [];
  let key = -1;
  for (const row of rows) {
    const at = Math.min(MAX - 1, Math.floor(((row.elapsed - start) / (end - start)) * MAX));
    if (rows.length <= MAX || at !== key) groups.push([]);
    groups.at(-1)?.push(row);
    key = at;
  }
  const levels: number[] = [];
  const points = groups.map((group): LogPoint => {
    const mean = (of: (row: State) => number) => sum(group.map(of)) / group.length;
    const raw = mean(({ pressure }) => pressure);
    const T = T2.map((_, z) => mean((row) => zonesOf(row)[z] as number));
    const at = (p1: number, T1: readonly number[], b = beta, v = volumes) =>
      expected({ p1, T1, p2: 0, T2, volumes: v, beta: b });
    const nudge = (list: readonly number[], z: number, by: number) =>
      list.map((v, i) => (i === z ? v + by : v));
    const level = at(raw, T);
    const perPascal = (at(raw + 100, T) - level) / 100;
    const perKelvin = T.map((_, z) => (at(raw, nudge(T, z, 0.1)) - level) / 0.1);
    for (const row of group) {
      const turned = zonesOf(row).map((v, z) => (v - (T[z] as number)) * (perKelvin[z] as number));
      levels.push(level + (row.pressure - raw) * perPascal + sum(turned));
    }
    return {
      t: mean(({ elapsed }) => elapsed) - start,
      level,
      raw,
      T,
      perPascal,
      perKelvin,
      perBeta: (at(raw, T, beta + 1e-5) - level) / 1e-5,
      perVolume: volumes.map(
        (v, z) => (at(raw, T, beta, nudge(volumes, z, v / 100)) - level) * 100,
      ),
      count: group.length,
    };
  });
  return { points, variance: secondDifferences(levels) };
}

/** Variance of single rows from their second differences, which a slow course does not enter. */
function secondDifferences(list: readonly number[]): number {
  if (list.length < 5) return 0;
  const bends = list.slice(2).map((v, i) => v - 2 * (list[i + 1] as number) + (list[i] as number));
  return sum(bends.map((v) => v * v)) / 6 / bends.length;
}
