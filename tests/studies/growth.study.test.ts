// No cost grows faster than its input: what one row, one value or one character takes on a long input against a
// short one. Sorting adds a tenth or so; something quadratic would take twenty times as long per row and fail.
import { type InstallationRecord, recordRevision } from "hvac-install-math/commissioning";
import { planDrain } from "hvac-install-math/condensate";
import { chooseStockLength } from "hvac-install-math/line-set";
import { planInstallation } from "hvac-install-math/planning";
import { assessPressureLog } from "hvac-install-math/pressure-test";
import { degC, deltaC, ft, m, minute, volt } from "hvac-install-math/quantity";
import {
  pressureTemperatureTable,
  R448A,
  saturationArray,
  tableAsMarkdown,
} from "hvac-install-math/refrigerants";
import { assessSupplyWeek, voltageLogStatistics } from "hvac-install-math/supply-voltage";
import { assessVacuumDecay, createDecayMonitor } from "hvac-install-math/vacuum-decay";
import { recordCodec } from "hvac-install-math/wire";
import { expect, it } from "vitest";
import { courseNames, pressureLog, vacuumLog, vacuumOptions } from "../bench/invented-logs.ts";
import { assessInstallation } from "../commissioning/assess.ts";
import { complete } from "../commissioning/complete-record.ts";

/** Makes an input of n parts and returns the work on it. */
type Work = (n: number) => () => unknown;

const voltages = (n: number) =>
  Array.from({ length: n }, (_, i) => ({
    elapsed: minute((10_080 * i) / n),
    voltage: volt(231 + 4 * Math.sin(i)),
  }));

const recordOf = (n: number) => ({
  ...complete,
  pressureTests: [{ ...complete.pressureTests?.[0], readings: pressureLog(n).readings }],
  evacuations: [{ ...complete.evacuations?.[0], readings: vacuumLog("outgassing", n, 1800 / n) }],
});

/** A record of many runs, each with a pressure test and an evacuation of its own. */
const manyRuns = (runs: number, rows: number): InstallationRecord => {
  const [run] = complete.runs ?? [];
  const names = Array.from({ length: runs }, (_, i) => `run ${i}`);
  return {
    ...complete,
    runs: names.map((name) => ({ ...run, name })),
    pressureTests: names.map((name) => ({
      ...complete.pressureTests?.[0],
      covers: [name],
      readings: pressureLog(rows).readings,
    })),
    evacuations: names.map((name) => ({
      ...complete.evacuations?.[0],
      covers: [name],
      readings: vacuumLog("outgassing", rows, 1800 / rows),
    })),
  };
};

const works: Record<string, Work> = {
  ...Object.fromEntries(
    courseNames.flatMap((course): [string, Work][] => [
      [
        `assessVacuumDecay, ${course}`,
        (n) => {
          const readings = vacuumLog(course, n, 1800 / n);
          return () => assessVacuumDecay({ ...vacuumOptions, readings });
        },
      ],
      [
        `createDecayMonitor, ${course}, ever longer`,
        (n) => {
          const readings = vacuumLog(course, n, 1);
          return () => {
            const monitor = createDecayMonitor(vacuumOptions);
            for (const one of readings) monitor.add(one);
            return monitor;
          };
        },
      ],
    ]),
  ),
  "assessVacuumDecay, every second row out of place": (n) => {
    const readings = vacuumLog("leak", n, 1800 / n);
    const mixed = readings.filter((_, i) => i % 2).concat(readings.filter((_, i) => i % 2 === 0));
    return () => assessVacuumDecay({ ...vacuumOptions, readings: mixed });
  },
  assessPressureLog: (n) => {
    const test = pressureLog(n);
    return () => assessPressureLog(test);
  },
  voltageLogStatistics: (n) => {
    const readings = voltages(n);
    const range = { minimum: volt(207), maximum: volt(253) };
    return () => voltageLogStatistics({ readings, range });
  },
  assessSupplyWeek: (n) => {
    const readings = voltages(n);
    return () => assessSupplyWeek({ nominal: volt(230), readings });
  },
  saturationArray: (n) => {
    const kelvins = Float64Array.from({ length: n }, (_, i) => 230 + (100 * i) / n);
    return () => saturationArray(R448A, "dewPressure", kelvins);
  },
  "pressureTemperatureTable, tableAsMarkdown": (n) => () =>
    tableAsMarkdown(
      pressureTemperatureTable(R448A, { from: degC(-40), to: degC(60), step: deltaC(2000 / n) }),
    ),
  chooseStockLength: (n) => {
    const stock = Array.from({ length: n }, (_, i) => ft(10 + (((i * 7919) % n) / n) * 90));
    const input = { run: ft(21), slack: ft(1), serviceLoop: ft(2), stock, cuttable: true };
    return () => chooseStockLength(input);
  },
  planDrain: (n) => {
    const points = Array.from({ length: n }, (_, i) => ({
      distance: m(0.001),
      height: m(1 - i * 1e-5),
    }));
    return () => planDrain({ outletHeight: m(2), points });
  },
  assessInstallation: (n) => {
    const record = recordOf(n);
    return () => assessInstallation(record);
  },
  "assessInstallation, 60 runs with a log each": (n) => {
    const record = manyRuns(60, Math.ceil(n / 60));
    return () => assessInstallation(record);
  },
  "planInstallation, beside the logs of 60 runs": (n) => {
    const record = manyRuns(60, Math.ceil(n / 60));
    return () => planInstallation(record, { rules: [] });
  },
  "recordRevision, one amendment of each reading": (n) => {
    const record = recordOf(n);
    const history = (record.pressureTests[0]?.readings ?? []).map(({ pressure }, i) => ({
      path: `pressureTests[0].readings[${i}].pressure`,
      previous: pressure,
      by: "N. N.",
      at: "2026-05-06",
      reason: "corrected",
    }));
    return () => recordRevision({ ...record, history }, 0);
  },
  "recordRevision, one field amended again and again": (n) => {
    const entry = {
      path: "runs[0].tubing.bends",
      previous: 4,
      by: "N. N.",
      at: "2026-05-06",
      reason: "x",
    };
    return () => recordRevision({ ...complete, history: Array(n).fill(entry) }, 0);
  },
  "recordCodec, there and back": (n) => {
    const record = recordOf(n);
    return () => recordCodec.parse(recordCodec.stringify(record));
  },
};

/** The least processor time of several runs, in ms: what others do on the machine does not count. */
function least(run: () => unknown): number {
  let best = Number.POSITIVE_INFINITY;
  const end = performance.now() + 500;
  for (let i = 0; i < 3 || (i < 40 && performance.now() < end); i++) {
    const start = process.cpuUsage();
    run();
    const { user, system } = process.cpuUsage(start);
    best = Math.min(best, (user + system) / 1e3);
  }
  return best;
}

it.each(Object.entries(works))(
  "%s takes no more per row when there are many",
  { retry: 2 },
  (_, work) => {
    const [few, many] = [1000, 20_000];
    const [short, long] = [work(few), work(many)];
    expect(least(long) / many / (least(short) / few)).toBeLessThan(4);
  },
);

it("keeps no more of a long vacuum log than of a short one", () => {
  const [short, long] = [1000, 50_000].map((n) => {
    const monitor = createDecayMonitor(vacuumOptions);
    for (const one of vacuumLog("leak and moisture", n, 1800 / n)) monitor.add(one);
    return monitor.points().length;
  });
  expect(long).toBeLessThanOrEqual(1.5 * (short ?? 0));
});
