// What does the verdict on a log take as the log grows? Cost per row, and what stays in memory.

import { setFlagsFromString } from "node:v8";
import { runInNewContext } from "node:vm";
import { assessPressureLog } from "hvac-install-math/pressure-test";
import { minute, volt } from "hvac-install-math/quantity";
import { assessSupplyWeek } from "hvac-install-math/supply-voltage";
import { assessVacuumDecay, createDecayMonitor } from "hvac-install-math/vacuum-decay";
import { pressureLog, vacuumLog, vacuumOptions } from "./invented-logs.ts";
import { measure, median, shown } from "./measure.ts";
import type { Section } from "./section.ts";

const sizes = [60, 600, 1800, 10_000, 100_000];

setFlagsFromString("--expose_gc");
const collectGarbage = runInNewContext("gc") as () => void;

/** Bytes in use after a garbage collection. */
export function heapAfterCollection(): number {
  collectGarbage();
  const { heapUsed, arrayBuffers } = process.memoryUsage();
  return heapUsed + arrayBuffers;
}

/** kB that are still there after a garbage collection because of what `make` returns: the median of five. */
function keptBy(make: () => unknown): string {
  const sizes = Array.from({ length: 5 }, () => {
    const before = heapAfterCollection();
    const kept = [make()];
    const after = heapAfterCollection();
    return kept.length ? after - before : 0;
  });
  return `${Math.max(0, Math.round(median(sizes) / 1e3))} kB`;
}

const rowsOf = (
  figures: readonly { readonly name: string; readonly nanoseconds: number }[],
  more: (i: number) => readonly string[] = () => [],
) =>
  figures.map(({ name, nanoseconds }, i) => [
    name,
    shown(nanoseconds * (sizes[i] ?? 1)),
    shown(nanoseconds),
    ...more(i),
  ]);

export async function vacuumLogs(): Promise<Section> {
  const logs = sizes.map((n) => vacuumLog("leak and moisture", n, 1800 / n));
  const figures = await measure(
    logs.map((readings) => ({
      name: `${readings.length} rows`,
      values: readings.length,
      run: () => assessVacuumDecay({ ...vacuumOptions, readings }),
    })),
    5,
    60,
  );
  return {
    title: "Vacuum decay, a whole log",
    text: "Half an hour at ever closer spacing. Budget: 5 ms for 1 800 rows. Memory: what the verdict, and what a live monitor that took all rows, still hold after a garbage collection.",
    columns: ["log", "median", "per row", "held by the verdict", "held by the monitor"],
    rows: rowsOf(figures, (i) => [
      keptBy(() => assessVacuumDecay({ ...vacuumOptions, readings: logs[i] ?? [] })),
      keptBy(() => {
        const monitor = createDecayMonitor(vacuumOptions);
        for (const one of logs[i] ?? []) monitor.add(one);
        return monitor;
      }),
    ]),
  };
}

export async function pressureLogs(): Promise<Section> {
  const figures = await measure(
    sizes.map((n) => {
      const test = pressureLog(n);
      return { name: `${n} rows`, values: n, run: () => assessPressureLog(test) };
    }),
    5,
    60,
  );
  return {
    title: "Pressure test, a whole log",
    text: "A night under nitrogen at ever closer spacing.",
    columns: ["log", "median", "per row"],
    rows: rowsOf(figures),
  };
}

export async function voltageLogs(): Promise<Section> {
  const figures = await measure(
    sizes.map((n) => {
      const readings = Array.from({ length: n }, (_, i) => ({
        elapsed: minute((10_080 * i) / n),
        voltage: volt(231 + 4 * Math.sin(i)),
      }));
      return {
        name: `${n} rows`,
        values: n,
        run: () => assessSupplyWeek({ nominal: volt(230), readings }),
      };
    }),
    5,
    60,
  );
  return {
    title: "Supply voltage, a week",
    text: "Seven days at ever closer spacing.",
    columns: ["log", "median", "per row"],
    rows: rowsOf(figures),
  };
}
