// What does one live vacuum reading take, on dense and on sparse logs?
import { createDecayMonitor } from "hvac-install-math/vacuum-decay";
import { courseNames, vacuumLog, vacuumOptions } from "./invented-logs.ts";
import { median, shown } from "./measure.ts";
import type { Section } from "./section.ts";

const repeats = 15;

/** The median time of each reading over several runs of the same log, in ns, in ascending order. */
function perReading(readings: ReturnType<typeof vacuumLog>): number[] {
  const times = readings.map((): number[] => []);
  for (let i = 0; i < repeats; i++) {
    const monitor = createDecayMonitor(vacuumOptions);
    for (const [row, reading] of readings.entries()) {
      const start = performance.now();
      monitor.add(reading);
      times[row]?.push((performance.now() - start) * 1e6);
    }
  }
  return times.map(median).sort((a, b) => a - b);
}

export async function liveMonitor(): Promise<Section> {
  const rows: string[][] = [];
  for (const spacing of [1, 10, 30]) {
    for (const course of courseNames) {
      const sorted = perReading(vacuumLog(course, 1800 / spacing, spacing));
      const at = (share: number) => shown(sorted[Math.floor(share * (sorted.length - 1))] ?? 0);
      const mean = sorted.reduce((sum, t) => sum + t, 0) / sorted.length;
      rows.push([`${course}, every ${spacing} s`, shown(mean), at(0.5), at(0.99), at(1)]);
    }
  }
  return {
    title: "Vacuum decay, one live reading",
    text: "Half an hour. Most readings only join their bin; the fit is renewed when the evidence has grown by a tenth, so that a longer log costs no more per reading. Budget: 50 µs on average.",
    columns: ["log", "mean", "median", "99th percentile", "largest"],
    rows,
  };
}
