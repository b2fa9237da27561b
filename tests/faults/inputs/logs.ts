import type * as logs from "hvac-install-math/logs";
import { degF, micron, minute, psig, second } from "hvac-install-math/quantity";
import type { Inputs } from "../catalogue.ts";

const text = "elapsed [s],pressure [micron]\n0,275\n5,283\n10,288\n";
const format = {
  separator: ",",
  decimal: ".",
  header: 1,
  time: { written: "elapsed", column: "elapsed [s]", unit: second },
  columns: { pressure: { column: "pressure [micron]", unit: micron } },
} as const;
const dated = {
  separator: ";",
  decimal: ",",
  group: ".",
  firstRow: 2,
  remark: "#",
  time: {
    written: "date-time",
    column: 1,
    timeColumn: 2,
    order: "day-month-year",
    zone: "Europe/Berlin",
  },
  columns: {
    pressure: { column: 3, kind: "gaugePressure", unit: "psig" },
    temperature: { column: 4, unit: degF },
    state: { column: 5, words: { Ruhe: "rest" } },
  },
  blank: "skip",
  blankCells: ["---"],
} as const;

export const inputs: Inputs<typeof logs> = {
  createLogReader: [[format], [dated]] as never,
  findFill: [
    [[0, 300, 500, 499, 499, 2].map((p, i) => ({ elapsed: minute(i), pressure: psig(p) }))],
  ] as never,
  findIsolation: [
    [[5000, 400, 270, 330, 345].map((p, i) => ({ elapsed: second(i), pressure: micron(p) }))],
  ] as never,
  guessLog: [[text], [text, { pressure: "absolutePressure" }]] as never,
  readLog: [
    [text, format],
    [["x\n29.03.2026;01:55;1.234,5;60;Ruhe\n", "29.03.2026;03:00;1.234,0;60;Ruhe\n"], dated],
  ] as never,
};
