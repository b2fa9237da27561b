// No text and no rows make the module fail with anything but a typed error.

import fc from "fast-check";
import { explain } from "hvac-install-math/assessment";
import { english } from "hvac-install-math/language/en";
import { findFill, findIsolation, guessLog, type LogFormat, readLog } from "hvac-install-math/logs";
import { degC, isInvalidInputError, micron, psig, second } from "hvac-install-math/quantity";
import { expect, it } from "vitest";

function typedErrorsOnly(act: () => void): void {
  try {
    act();
  } catch (error) {
    if (!isInvalidInputError(error)) throw error;
    expect(error.message.length).toBeLessThan(2000);
  }
}

const cell = fc.oneof(
  fc.constantFrom(
    ..."0 5 10 275 1.5 1,5 -3 1e400 1e-400 NaN Infinity 0x10 --- OL 1.234.567 2026-03-29 29.03.2026".split(
      " ",
    ),
    ..."02:30 25:00 24:00 2026-10-25T02:30:00+02:00 46110.5 elapsed[s] micron psig (psi) °F [bar] __proto__".split(
      " ",
    ),
    ...[
      "",
      '"',
      '""',
      '"a',
      "# x",
      "constructor",
      "29-Mar-26 2:30 PM",
      "9".repeat(400),
      "\u0000",
      "\ud800",
    ],
  ),
  fc.string({ unit: "binary", maxLength: 12 }),
);
const separator = fc.constantFrom(",", ";", "\t", "|", " ");
const ending = fc.constantFrom("\n", "\r\n", "\r", "\n\n");
const table = fc
  .tuple(fc.array(fc.array(cell, { maxLength: 5 }), { maxLength: 12 }), separator, ending)
  .map(([rows, mark, end]) => rows.map((row) => row.join(mark)).join(end));
const text = fc.oneof(table, fc.string({ unit: "binary", maxLength: 400 }));

const time = fc.constantFrom<LogFormat["time"]>(
  { written: "elapsed", column: 1, unit: second },
  { written: "clock", column: 1 },
  { written: "serial", column: 1, epoch: 1900 },
  {
    written: "date-time",
    column: 1,
    timeColumn: 2,
    order: "day-month-year",
    zone: "Europe/Berlin",
  },
  { written: "date-time", column: 1, order: "year-month-day", zone: "wall-clock" },
);
const format = fc.record({
  separator,
  decimal: fc.constantFrom(".", ",") as fc.Arbitrary<"." | ",">,
  time,
  columns: fc.constantFrom(
    { pressure: { column: 2, unit: micron } },
    { pressure: { column: 2, unit: psig }, temperature: { column: 3, unit: degC } },
    { state: { column: 2, words: { "0": "rest" } } },
  ) as fc.Arbitrary<LogFormat["columns"]>,
  blank: fc.constantFrom("refuse", "skip") as fc.Arbitrary<"refuse" | "skip">,
});

it("reading any text", () => {
  fc.assert(
    fc.property(
      text,
      format,
      fc.constantFrom({}, { header: 1 }, { header: 2, remark: "#" }),
      (any, one, more) => {
        typedErrorsOnly(() => {
          const log = readLog(any, { ...one, ...more });
          expect(log.rows.length).toBe(log.lines.length);
          let before = Number.NEGATIVE_INFINITY;
          for (const { elapsed } of log.rows) {
            expect(Number.isFinite(elapsed.si)).toBe(true);
            expect(elapsed.si).toBeGreaterThan(before);
            before = elapsed.si;
          }
          for (const said of [...log.refused, ...log.notes]) {
            expect(explain(said, english)).not.toMatch(/\{\w+\}|undefined/);
          }
        });
      },
    ),
    { numRuns: 3000 },
  );
});

it("guessing any text, and reading it as it was guessed", () => {
  fc.assert(
    fc.property(text, (any) => {
      typedErrorsOnly(() => {
        const { format: guessed, reasons, doubts } = guessLog(any);
        for (const said of [...reasons, ...doubts]) explain(said, english);
        if (guessed) readLog(any, guessed);
      });
    }),
    { numRuns: 2000 },
  );
});

it("finding a start in any rows", () => {
  const rows = fc.array(fc.double({ min: 0, max: 1e9, noNaN: true }), { maxLength: 60 });
  fc.assert(
    fc.property(rows, (pressures) => {
      const vacuum = pressures.map((p, i) => ({ elapsed: second(i), pressure: micron(p) }));
      const fill = pressures.map((p, i) => ({ elapsed: second(i), pressure: psig(p) }));
      for (const { start, rows: found } of [findIsolation(vacuum), findFill(fill)]) {
        expect(start === undefined).toBe(found.length === 0);
        if (start !== undefined) expect(found[0]?.elapsed.si).toBe(0);
      }
    }),
    { numRuns: 2000 },
  );
});
