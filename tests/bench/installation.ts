// What does the verdict on a whole installation take, with logs in its record?
import type { InstallationRecord } from "hvac-install-math/commissioning";
import { assessPressureLog } from "hvac-install-math/pressure-test";
import { assessVacuumDecay } from "hvac-install-math/vacuum-decay";
import { assessInstallation } from "../commissioning/assess.ts";
import { complete } from "../commissioning/complete-record.ts";
import { pressureLog, vacuumLog, vacuumOptions } from "./invented-logs.ts";
import { measure, shown } from "./measure.ts";
import type { Section } from "./section.ts";

const withLogs = (test: number, vacuum: number): InstallationRecord => ({
  ...complete,
  pressureTests: [{ ...complete.pressureTests?.[0], readings: pressureLog(test).readings }],
  evacuations: [
    { ...complete.evacuations?.[0], readings: vacuumLog("outgassing", vacuum, 1800 / vacuum) },
  ],
});

/** Rows of each log where the whole is compared with its parts. */
const rows = 1800;
const test = pressureLog(rows);
const vacuum = { ...vacuumOptions, readings: vacuumLog("outgassing", rows, 1800 / rows) };
const parts = {
  "assessPressureLog, 1800 rows": () => assessPressureLog(test),
  "assessVacuumDecay, 1800 rows": () => assessVacuumDecay(vacuum),
};

export async function installation(): Promise<Section> {
  const figures = await measure(
    [
      {
        name: "2 readings of the test, 61 rows of vacuum",
        values: 1,
        run: () => assessInstallation(complete),
      },
      ...Object.entries(parts).map(([name, run]) => ({ name, values: 1, run })),
      ...[600, rows, 10_000].map((n) => {
        const record = withLogs(n, n);
        return {
          name: `${n} rows of the test, ${n} rows of vacuum`,
          values: 1,
          run: () => assessInstallation(record),
        };
      }),
    ],
    5,
    60,
  );
  const [short, ofTest, ofVacuum, , whole] = figures.map(({ nanoseconds }) => nanoseconds) as [
    number,
    number,
    number,
    number,
    number,
  ];
  const ratio = (whole / (short + ofTest + ofVacuum)).toFixed(2);
  return {
    title: "A whole installation",
    text: `\`assessInstallation\` on the record of an invented installation. With 1800 rows of each log it takes ${ratio} times the sum of the short record and the two logs judged alone (budget: 1.3).`,
    columns: ["record", "median"],
    rows: figures.map(({ name, nanoseconds }) => [name, shown(nanoseconds)]),
  };
}
