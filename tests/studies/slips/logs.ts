// Slips of a logger's file, read and judged as a watch in vacuum.
import { type Slip, slipsOf } from "./slip.ts";

/** The sound file: seconds and microns, a row every 20 s. */
const figures = Array.from({ length: 61 }, (_, i) =>
  Math.round(260 + 40 * (1 - Math.exp(-i / 10)) + 1.5 * Math.sin(1.7 * i)),
);
const rows = figures.map((figure, i) => `${20 * i},${figure}`);
const file = (lines: readonly string[], head = "elapsed [s],pressure [micron]") => ({
  text: [head, ...lines, ""].join("\n"),
});
const put = (at: number, ...lines: string[]) => [
  ...rows.slice(0, at),
  ...lines,
  ...rows.slice(at + 1),
];

export const soundLog: string = file(rows).text;

export const logSlips: readonly Slip[] = slipsOf("logs", "log of a vacuum", [
  [
    "head-torr",
    "the head says torr for micron",
    file(rows, "elapsed [s],pressure [torr]"),
    "fail",
    "260 torr are a third of an atmosphere",
  ],
  [
    "head-pa",
    "the head says Pa for micron",
    file(rows, "elapsed [s],pressure [Pa]"),
    "fail",
    "2000 micron are above the target",
  ],
  [
    "head-no-unit",
    "the head without units",
    file(rows, "elapsed,pressure"),
    "refused",
    "260 of what?",
  ],
  ["head-left-out", "no head", { text: rows.join("\n") }, "refused", "which column is which?"],
  [
    "heads-swapped",
    "the two titles swapped",
    file(rows, "pressure [micron],elapsed [s]"),
    "inconclusive",
    "times that come back are no times",
  ],
  [
    "minutes",
    "the head says minutes for seconds",
    file(rows, "elapsed [min],pressure [micron]"),
    "unknowable",
    "a logger may well write a row every 20 minutes; in a record, the moments of the work show it",
  ],
  [
    "head-psi",
    "psi without gauge or absolute",
    file(
      rows.map((row) => row.replace(/,.*/, ",0.005")),
      "elapsed [s],pressure [psi]",
    ),
    "refused",
    "a vacuum is absolute",
  ],
  ["blank", "a blank cell", file(put(30, "600,")), "finding", "a row without its reading is named"],
  [
    "over-range",
    "OL in a cell",
    file(put(30, "600,OL")),
    "finding",
    "a row without its reading is named",
  ],
  [
    "digit-lost",
    "29 for 298 in one row",
    file(put(30, "600,29")),
    "inconclusive",
    "no pressure falls to a tenth and comes back in 20 s",
  ],
  [
    "digit-added",
    "2980 for 298 in one row",
    file(put(30, "600,2980")),
    "inconclusive",
    "no leak rises tenfold and comes back in 20 s",
  ],
  [
    "time-back",
    "a row pasted at the wrong place",
    file([...rows.slice(0, 40), rows[10] as string, ...rows.slice(40)]),
    "finding",
    "a time that goes back is named",
  ],
  [
    "row-copied",
    "a row pasted twice",
    file([...rows.slice(0, 30), rows[29] as string, ...rows.slice(30)]),
    "finding",
    "a time that stands still is named",
  ],
  [
    "cut",
    "only the first five rows",
    file(rows.slice(0, 5)),
    "refused",
    "shorter than the hold of the policy",
  ],
  [
    "gap",
    "ten minutes missing in the middle",
    file([...rows.slice(0, 15), ...rows.slice(45)]),
    "finding",
    "a gap in the log is named",
  ],
  [
    "comma-in-comma",
    "decimal commas between commas",
    file(rows.map((row) => `${row},5`)),
    "refused",
    "three cells under two titles",
  ],
  ["nothing", "an empty file", { text: "" }, "refused", "no readings"],
  [
    "other-file",
    "the file of the scale",
    { text: "time [s],mass [g]\n0,100\n5,120\n10,140\n" },
    "refused",
    "no pressure in it",
  ],
  [
    "units-in-cells-mixed",
    "one row in mbar",
    file(put(30, "600,0.397 mbar")),
    "finding",
    "a row in another unit is named",
  ],
]);
