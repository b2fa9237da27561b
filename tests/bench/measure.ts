// How long does a piece of work take, and how many times another one? Medians of tinybench over several rounds,
// in each of which every case runs, so that a ratio compares what the machine did at the same time.
import { Bench } from "tinybench";

/** A piece of work on `values` values at once; what `run` returns is kept so that it cannot be optimised away. */
export interface Case {
  readonly name: string;
  readonly values: number;
  readonly run: () => unknown;
}

/** Median time of one value, and its median ratio to the first case of the same round. */
export interface Figure {
  readonly name: string;
  readonly nanoseconds: number;
  readonly ratio: number;
}

export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
}

let kept: unknown;
/** The last result: it has to exist somewhere. */
export const last = (): unknown => kept;

export async function measure(cases: readonly Case[], rounds = 7, time = 25): Promise<Figure[]> {
  const times = cases.map((): number[] => []);
  for (let round = 0; round < rounds; round++) {
    const bench = new Bench({
      time,
      iterations: 3,
      warmupTime: 5,
      warmupIterations: 1,
      throws: true,
    });
    for (const { name, run } of cases) {
      bench.add(name, () => {
        kept = run();
      });
    }
    await bench.run();
    for (const [i, { result }] of bench.tasks.entries()) {
      if (!("latency" in result)) throw new Error(`${cases[i]?.name}: ${result.state}`);
      times[i]?.push((result.latency.p50 * 1e6) / (cases[i]?.values ?? 1));
    }
  }
  const reference = times[0] ?? [];
  return cases.map(({ name }, i) => ({
    name,
    nanoseconds: median(times[i] ?? []),
    ratio: median((times[i] ?? []).map((t, round) => t / (reference[round] ?? Number.NaN))),
  }));
}

/** A time in the unit that reads best, three digits. */
export function shown(nanoseconds: number): string {
  const [size, unit] =
    nanoseconds < 1e3 ? [1, "ns"] : nanoseconds < 1e6 ? [1e3, "µs"] : [1e6, "ms"];
  const value = nanoseconds / (size as number);
  return `${value < 100 ? Number(value.toPrecision(2)) : Math.round(value)} ${unit}`;
}

/** A ratio, two digits. */
export const times = (ratio: number): string => `${Number(ratio.toPrecision(2))} ×`;
