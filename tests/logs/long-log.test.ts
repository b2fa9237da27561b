// A hundred thousand rows: time that grows with the rows, and memory that does not when they come in chunks.

import { setFlagsFromString } from "node:v8";
import { runInNewContext } from "node:vm";
import { createLogReader, findIsolation, readLog } from "hvac-install-math/logs";
import { degF, psig } from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";

const format = {
  separator: ";",
  decimal: ",",
  header: 1,
  time: {
    written: "date-time",
    column: "Zeit",
    order: "day-month-year",
    zone: "Europe/Berlin",
  },
  columns: { pressure: { column: "p", unit: psig }, temperature: { column: "t", unit: degF } },
} as const;
const header = "Zeit;p;t\n";
const start = Date.UTC(2026, 2, 1);

/** One row a second, in March 2026 before clocks change. */
function row(i: number): string {
  const [day = "", time = ""] = new Date(start + 1000 * i).toISOString().split("T");
  const [y, m, d] = day.split("-");
  return `${d}.${m}.${y} ${time.slice(0, 8)};${(500 + (i % 7) / 10).toFixed(1).replace(".", ",")};60,5\n`;
}
const textOf = (rows: number) => header + Array.from({ length: rows }, (_, i) => row(i)).join("");

describe("a hundred thousand rows", () => {
  it("are read whole, in time that grows with them", () => {
    const time = (rows: number) => {
      const text = textOf(rows);
      const before = performance.now();
      expect(readLog(text, format).rows.length).toBe(rows);
      return performance.now() - before;
    };
    time(10_000); // warm
    const tenth = Math.min(time(10_000), time(10_000), time(10_000));
    const whole = Math.min(time(100_000), time(100_000));
    expect(whole / tenth).toBeLessThan(25);
    expect(whole).toBeLessThan(10_000);
  });

  it("come by chunks without filling the memory", () => {
    setFlagsFromString("--expose_gc");
    const collect = runInNewContext("gc") as () => void;
    const reader = createLogReader(format);
    const held = () => {
      collect();
      return process.memoryUsage().heapUsed;
    };
    let taken = reader.add(header).rows.length;
    let before = 0;
    let most = 0;
    for (let chunk = 0; chunk < 100; chunk++) {
      const text = Array.from({ length: 1000 }, (_, i) => row(1000 * chunk + i)).join("");
      taken += reader.add(text).rows.length;
      if (chunk === 9) before = held();
      if (chunk > 9 && chunk % 10 === 9) most = Math.max(most, held() - before);
    }
    taken += reader.end().rows.length;
    expect(taken).toBe(100_000);
    expect(most).toBeLessThan(2e6); // 90 000 rows kept would be 20 MB and more
  });

  it("have their start found in time that grows with them", () => {
    const rows = Array.from({ length: 100_000 }, (_, i) => ({
      elapsed: readings[i % 2]?.elapsed ?? never(),
      pressure: readings[i % 2]?.pressure ?? never(),
    }));
    const before = performance.now();
    findIsolation(rows);
    expect(performance.now() - before).toBeLessThan(5000);
  });
});

const never = (): never => {
  throw new Error("no row");
};
const readings = readLog("0,270\n1,900\n", {
  separator: ",",
  decimal: ".",
  time: { written: "elapsed", column: 1 },
  columns: { pressure: { column: 2, kind: "absolutePressure", unit: "micron" } },
}).rows;
