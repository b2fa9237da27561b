// What else it takes to hear all that the module says.
import type * as logs from "hvac-install-math/logs";
import { micron, minute, psig, second } from "hvac-install-math/quantity";
import type { Inputs } from "../../faults/catalogue.ts";

const vacuum = (...pressures: number[]) =>
  pressures.map((p, i) => ({ elapsed: second(5 * i), pressure: micron(p) }));
const nitrogen = (...pressures: number[]) =>
  pressures.map((p, i) => ({ elapsed: minute(5 * i), pressure: psig(p) }));
const columns = { pressure: { column: 2, unit: micron } };
const marks = { separator: ",", decimal: "." };
const elapsed = { ...marks, header: 1, time: { written: "elapsed", column: 1 }, columns };
const dated = (zone: string) => ({
  ...marks,
  time: { written: "date-time", column: 1, order: "year-month-day", zone },
  columns,
});
const words = { ...elapsed, columns: { state: { column: 2, words: { rest: "rest" } } } };
const lines = (...all: string[]) => all.map((line) => `${line}\n`).join("");
const march = ["01:40", "01:45", "01:50", "01:55"].map((t) => `2026-03-29 ${t},270`);
const october = ["02:30", "02:59", "02:00"].map((t) => `2026-10-25 ${t},270`);
const row = (a: string, b: string) => lines("t,P psig", `${a},500.1`, `${b},500.2`);

export const inputs: Partial<Inputs<typeof logs>> = {
  readLog: [
    [
      lines("t,p", "0,270", "5", "6,", "7,OL", "8,-1", "x,1", "9,1", "9,1", "9,2", "3,1", "t,p"),
      elapsed,
    ],
    [lines("t,p", '0,"270', "5,1"), elapsed],
    [lines("t,p", "9".repeat(20_000)), elapsed],
    [lines("t,state", "0,asleep"), words],
    [lines(...march, "2026-03-29 02:30,270", "2026-03-29 03:00,270"), dated("Europe/Berlin")],
    [lines(...march, "2026-03-29 03:00,270"), dated("wall-clock")],
    [lines(...october), dated("Europe/Berlin")],
    [lines("23:59,270", "0:04,270"), { ...marks, time: { written: "clock", column: 1 }, columns }],
    [lines("t,p", ...[0, 5, 10, 15, 20, 60].map((t) => `${t},270`)), elapsed],
    [
      lines("t,p", "0,270"),
      { ...elapsed, columns: { pressure: { column: 2, kind: "gaugePressure", unit: "psi" } } },
    ],
  ] as never,
  guessLog: [
    [lines("s;P psig", "0;500,1", "5;500,2")],
    [lines("s\tP psi", "0\t1.234", "5\t1.235")],
    [lines("s|P psig|note", "0|5|7", "5||7", "9|5|7")],
    [lines("0,5", "5,6"), { pressure: "gaugePressure" }],
    [lines("s,P1 psig,P2 psig", "0,5.5,6.5", "5,5.5,6.5"), { pressure: "gaugePressure" }],
    [lines("P psig,T °F", "1.5,60.1", "1.5,60.1")],
    ["nothing"],
    [row("2026-03-29 02:30", "2026-03-29 02:35")],
    [row("03/14/2026 02:30", "03/14/2026 02:35")],
    [row("14.03.2026 02:30", "14.03.2026 02:35")],
    [row("3/4/2026 02:30", "3/4/2026 02:35")],
    [row("22:30", "22:35")],
    [row("46110.5", "46110.6")],
  ] as never,
  findIsolation: [
    [vacuum(270, 300, 340)],
    [vacuum(5000, 270, 900, 250, 300, 340, 100, 80)],
    [vacuum(5000, 270)],
  ] as never,
  findFill: [[nitrogen(500, 499)], [nitrogen(0, 500, 100, 450, 449, 2)], [nitrogen(0)]] as never,
};
