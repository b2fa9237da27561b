// What does the verdict on a whole installation take, with logs in its record?
import type { InstallationRecord } from "hvac-install-math/commissioning";
import { assessInstallation } from "../commissioning/assess.ts";
import { complete } from "../commissioning/complete-record.ts";
import { pressureLog, vacuumLog } from "./invented-logs.ts";
import { measure, shown } from "./measure.ts";
import type { Section } from "./section.ts";

const withLogs = (test: number, vacuum: number): InstallationRecord => ({
  ...complete,
  pressureTests: [{ ...complete.pressureTests?.[0], readings: pressureLog(test).readings }],
  evacuations: [
    { ...complete.evacuations?.[0], readings: vacuumLog("outgassing", vacuum, 1800 / vacuum) },
  ],
});

export async function installation(): Promise<Section> {
  const figures = await measure(
    [
      {
        name: "2 readings of the test, 61 rows of vacuum",
        values: 1,
        run: () => assessInstallation(complete),
      },
      ...[600, 1800, 10_000].map((n) => {
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
  return {
    title: "A whole installation",
    text: "`assessInstallation` on the record of an invented installation.",
    columns: ["record", "median"],
    rows: figures.map(({ name, nanoseconds }) => [name, shown(nanoseconds)]),
  };
}
