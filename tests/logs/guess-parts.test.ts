// What guessLog offers and says of each part of a text: separator, header, units, time. The rules are its own,
// common practice of loggers and spreadsheets, no source.

import { guessLog } from "hvac-install-math/logs";
import type { Kind, Unit } from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";

/** The statements of one code, their values as words. */
function said(text: string, code: string, wanted?: Readonly<Record<string, Kind>>) {
  const { reasons, doubts } = wanted ? guessLog(text, wanted) : guessLog(text);
  return [...reasons, ...doubts]
    .filter((one) => one.code === `logs.${code}`)
    .map(({ values }) => values);
}
const doubts = (text: string, wanted?: Readonly<Record<string, Kind>>) =>
  (wanted ? guessLog(text, wanted) : guessLog(text)).doubts.map((one) => one.code.slice(5));
/** The columns that are offered, with their units. */
const columns = (text: string, wanted?: Readonly<Record<string, Kind>>) =>
  Object.entries((wanted ? guessLog(text, wanted) : guessLog(text)).format?.columns ?? {}).map(
    ([name, one]) => `${name}: ${one.column} in ${(one as { unit: Unit<Kind> }).unit.symbol}`,
  );
const verbatim = (text: string) => ({ verbatim: text });

describe("cells", () => {
  it.each([
    [",", "comma"],
    [";", "semicolon"],
    ["\t", "tab"],
    ["|", "bar"],
  ])("between %j", (mark, word) => {
    const text = ["s,P psig", "0,1.5", "5,1.6", ""].join("\n").replaceAll(",", mark);
    expect(said(text, "separator")).toEqual([{ separator: `logs.separator.${word}`, columns: 2 }]);
    expect(guessLog(text).format?.separator).toBe(mark);
  });

  it("of as many lines above the rows as there are rows: the wider ones are the log", () => {
    const text = "Logger;none\nSerial;A1\ns;P psig;T °C\n0;1.5;20.5\n";
    expect(said(text, "separator")).toMatchObject([{ columns: 3 }]);
    expect(guessLog(text).format?.header).toBe(3);
  });

  it("of most lines, where fewer are wider", () => {
    const text = "a;b;c;d\ns;P psig\n0;1.5\n5;1.6\n";
    expect(said(text, "separator")).toMatchObject([{ columns: 2 }]);
  });

  it("of most lines, where the preamble has a mark of its own", () => {
    const text = "Logger; serial A1\ns,P psig\n0,1.5\n5,1.6\n";
    expect(said(text, "separator")).toEqual([{ separator: "logs.separator.comma", columns: 2 }]);
    expect(columns(text)).toEqual(["pressure: P psig in psig"]);
  });

  it("are none where the text has one column", () => {
    expect(doubts("hello\nworld\n")).toEqual(["no-separator", "no-header", "no-time"]);
    expect(said("hello\nworld\n", "separator")).toEqual([]);
    expect(doubts("")).toEqual(["no-separator", "no-header", "no-time"]);
    expect(doubts("x".repeat(30_000))).toContain("no-separator");
    // A separator behind the one column keeps nothing apart.
    const one = "P psig,\n1.5,\n1.4,\n";
    expect(doubts(one)).toEqual(["no-separator", "no-time"]);
    expect(said(one, "header")).toEqual([{ line: 1 }]);
  });

  it("of blank lines, and of lines of separators alone, are none", () => {
    const text = ";;\n;;\ns;P psig;T °C\n\n\n0;1.5;20\n;;\n\n5;1.4;20\n\n";
    expect(said(text, "separator")).toMatchObject([{ columns: 3 }]);
    expect(guessLog(text).format).toMatchObject({ header: 3, firstRow: 6 });
    expect(doubts(text)).toEqual([]);
  });

  it("of words alone are no rows", () => {
    expect(doubts("Serial,A1\nSite,yard\n")).toEqual(["no-header", "no-time"]);
  });

  it.each(["#", "%", "!"])("not of remarks that begin with %s", (mark) => {
    const text = `\ufeff ${mark} a;b;c\n${mark} d;e;f\n${mark} g;h;i\ns;P psig\n0;1.5\n${mark} j;k;l\n5;1.6\n`;
    expect(guessLog(text.replace(" ", "")).format).toMatchObject({ remark: mark, header: 4 });
    expect(said(text.replace(" ", ""), "separator")).toMatchObject([{ columns: 2 }]);
  });

  it("that the end of the part which is looked at cuts are no blank ones", () => {
    // A header of 12 characters and rows of 10: the 20 000th character is a comma.
    const rows = Array.from({ length: 3000 }, (_, i) => `${String(i).padStart(7, "0")},2\n`);
    const text = `s, P micron\n${rows.join("")}`;
    expect(text[19_999]).toBe(",");
    expect(doubts(text)).toEqual([]);
  });

  it("of a last line without an ending are looked at, up to 20 000 characters", () => {
    const mark = {
      code: "logs.decimal-mark",
      values: { mark: verbatim(","), cell: verbatim("1,5") },
    };
    const short = "s;T °C\n0;20\n5;1,5";
    const full = `sec; T °C\n${"0;20\n".repeat(3997)}5;1,5`;
    expect(full.length).toBe(20_000);
    for (const text of [short, full]) expect(guessLog(text).reasons).toContainEqual(mark);
  });
});

describe("the header", () => {
  it.each<[string, string, number | undefined, number]>([
    ["the line above the rows", "s,P psig\n0,1.5\n", 1, 2],
    ["not a line above it", "Site A,North\nelapsed time [s],P psig\n0,1.5\n", 2, 3],
    ["above a line of units", "Time,Pressure\nmin,mbar abs\n0,1.5\n", 1, 3],
    ["below other lines too", "Site A,North\nRun time [min],Line p\nmin,psig\n0,1.5\n", 2, 4],
    ["not above a longer word than a unit", "A,North\ns,Pressures\n0,1.5\n", 2, 3],
    ["no line that begins a cell with a digit", "Logger,7,yard,none\n0,1,2,3\n", undefined, 2],
    ["none above rows at once", "0,1.5\n5,1.6\n", undefined, 1],
    ["above rows that are half words", "s,state,P psig,note\n0,idle,1.5,ok\n", 1, 2],
    ["above rows with blank cells", "s,P psig,T °C,state\n0,,,idle\n5,1.5,2.5,run\n", 1, 2],
    ["above signs and bare decimals", "s,T °C,x V\n+0,−1.5,.5\n1,-1.5,.5\n", 1, 2],
  ])("is %s", (_, text, header, firstRow) => {
    const given = guessLog(text, {}).reasons.filter(({ code }) => code === "logs.header");
    expect(given.map(({ values }) => values)).toEqual(header ? [{ line: header }] : []);
    expect(doubts(text).includes("no-header")).toBe(!header);
    const format = guessLog(text.replace(/\n$/, "\n9,9,9,9\n")).format;
    if (format) expect([format.header, format.firstRow]).toEqual([header, firstRow]);
  });
});

describe("rows", () => {
  it.each<[string, string]>([
    ["signs before all figures", "s,T °C\n+0,−1.5\n+5,-1.4\n"],
    ["units and months behind figures", "t,T °C\n9-Mar-26,20 °C\n10-Mar-26,21 °C\n"],
  ])("may have %s", (_, text) => {
    expect(columns(text)).toEqual(["temperature: T °C in °C"]);
    expect(guessLog(text).format).toMatchObject({ header: 1, firstRow: 2 });
  });

  it("without a header are named by the numbers of their columns", () => {
    const text = "0,1.5\n5,1.6\n";
    expect(said(text, "time-unit-unknown")).toEqual([{ column: verbatim("1") }]);
    expect(said(text, "unit-unknown")).toEqual([{ column: verbatim("2") }]);
  });
});

describe("the decimal mark", () => {
  it.each<[string, "." | ",", string | undefined]>([
    ["1,5", ",", "1,5"],
    ["0,275", ",", "0,275"],
    ["-0,275", ",", "-0,275"],
    ["−0,275", ",", "−0,275"],
    ["+0.275", ".", "+0.275"],
    ["1,2345", ",", "1,2345"],
    ["1.23", ".", "1.23"],
    ["1,234", ",", undefined],
    ["10,234", ",", undefined],
    ["1.234", ".", undefined],
  ])("of %s is %s", (cell, mark, sure) => {
    const text = `s;T °C\n0;20\n5;${cell}\n`;
    expect(guessLog(text).format?.decimal).toBe(mark);
    expect(said(text, "decimal-mark")).toEqual(
      sure ? [{ mark: verbatim(mark), cell: verbatim(sure) }] : [],
    );
    expect(said(text, "thousands-or-decimal")).toEqual(sure ? [] : [{ cell: verbatim(cell) }]);
  });

  it("is that of the cell that settles it, not of the first", () => {
    expect(said("s;T °C\n0;1,234\n5;1,5\n", "decimal-mark")).toMatchObject([
      { cell: verbatim("1,5") },
    ]);
  });

  it("is asked about where no cell has one, unless commas separate", () => {
    expect(doubts("s;T °C\n0;20\n5;21\n")).toEqual(["decimal-unsure"]);
    expect(doubts("s;v;T °C\n0;1.2.3;20\n5;1:2;21\n")).toContain("decimal-unsure");
    expect(doubts("s,T °C\n0,20\n5,21\n")).toEqual([]);
  });
});

describe("the unit of a title", () => {
  it.each<[string, string]>([
    ["P [psig]", "pressure: P [psig] in psig"],
    ["P (psig)", "pressure: P (psig) in psig"],
    ["P {psig}", "pressure: P {psig} in psig"],
    ["P (1) [kPa g]", "pressure: P (1) [kPa g] in kPag"],
    ["T (°F) [°C]", "temperature: T (°F) [°C] in °C"],
    ["T [°C] at V", "temperature: T [°C] at V in °C"],
    ["P / psig", "pressure: P / psig in psig"],
    ["P_psig", "pressure: P_psig in psig"],
    ["P:psig", "pressure: P:psig in psig"],
    ["°F/°C", "temperature: °F/°C in °C"],
    ["P bar g", "pressure: P bar g in barg"],
    ["P bar  g", "pressure: P bar  g in barg"],
    ["P psig", "pressure: P psig in psig"],
    ["Suction line P psig", "pressure: Suction line P psig in psig"],
    ["T, °F, °C", "temperature: T, °F, °C in °C"],
    ["psig", "pressure: psig in psig"],
    ["P1 microns", "pressure: P1 microns in micron"],
    ["U V", "voltage: U V in V"],
    ["I A", "current: I A in A"],
    ["P kW", "power: P kW in kW"],
    ["RH %", "ratio: RH % in %"],
  ])("%s", (title, offered) => {
    const text = `s;${title}\n0;1.5\n5;1.6\n`;
    expect(columns(text)).toEqual([offered]);
    const [, unit = ""] = offered.split(" in ");
    expect(said(text, "unit")).toEqual([{ column: verbatim(title), unit: verbatim(unit) }]);
    expect(doubts(text)).toEqual([]);
  });

  it.each<[string, string, string]>([
    ["P (psi)", "pressure: P (psi) in psig", "psig"],
    ["P bar", "pressure: P bar in barg", "barg"],
    ["P hPa", "pressure: P hPa in mbara", "mbara"],
  ])("%s does not state its zero", (title, offered, unit) => {
    const text = `s;${title}\n0;1.5\n5;1.6\n`;
    expect(columns(text)).toEqual([offered]);
    expect(said(text, "zero-not-stated")).toEqual([
      { column: verbatim(title), unit: verbatim(unit) },
    ]);
    expect(said(text, "unit")).toEqual([]);
  });

  it("does not stand before a mark: V_out names a voltage, in whatever unit", () => {
    expect(said("s;V_out\n0;1.5\n5;1.6\n", "unit-unknown")).toEqual([
      { column: verbatim("V_out") },
    ]);
  });

  it("of a stated zero is not offered for the other", () => {
    const text = "s,P psig\n0,1.5\n5,1.6\n";
    expect(doubts(text, { p: "absolutePressure" })).toEqual(["column-missing"]);
    expect(said(text, "column-missing", { p: "absolutePressure" })).toEqual([
      { name: verbatim("p") },
    ]);
  });
});

describe("columns", () => {
  const two = "s,P1 psig,P2 psig,P3 psia\n0,1.5,2.5,16\n5,1.4,2.4,16\n";

  it("of a kind more than once: the first, or all with a number", () => {
    expect(said(two, "two-columns", { p: "gaugePressure" })).toEqual([
      { name: verbatim("p"), columns: [verbatim("P1 psig"), verbatim("P2 psig")] },
    ]);
    expect(columns(two)).toEqual([
      "pressure: P1 psig in psig",
      "pressure2: P2 psig in psig",
      "pressure3: P3 psia in psia",
    ]);
  });

  it("whose titles stand twice, or not at all, are named by number", () => {
    expect(columns("s,psig,psig\n0,1.5,2.5\n5,1.4,2.4\n")).toEqual([
      "pressure: 2 in psig",
      "pressure2: 3 in psig",
    ]);
    expect(columns("Time,,T\nmin,psig,degF\n0,1.5,60.5\n5,1.4,60.5\n")).toEqual([
      "pressure: 2 in psig",
      "temperature: T in °F",
    ]);
    const untitled = "s,P psig,,note\n0,1.5,2.5,3\n5,1.4,2.4,3\n";
    expect(said(untitled, "unit-unknown")).toEqual([
      { column: verbatim("3") },
      { column: verbatim("note") },
    ]);
  });

  it("beyond the titles are there too, but none behind a separator at the end of a row", () => {
    expect(said("s,P psig\n0,1.5,7\n5,1.4\n9,1.4\n", "unit-unknown")).toEqual([
      { column: verbatim("3") },
    ]);
    for (const text of ["s,P psig\n0,1.5,\n5,1.4,\n", "s,P psig,\n0,1.5,,\n5,1.4,,\n"]) {
      expect(doubts(text)).toEqual([]);
      expect(said(text, "separator")).toMatchObject([{ columns: 2 }]);
      expect(guessLog(text).format?.header).toBe(1);
    }
  });

  it("with a known unit that rows have no name for are left out without a word", () => {
    const text = "s,run min,P psig\n0,7,1.5\n5,7,1.4\n";
    expect(doubts(text)).toEqual([]);
    expect(columns(text)).toEqual(["pressure: P psig in psig"]);
  });

  it("with blank cells: how many rows, of those columns only", () => {
    const text = "s,P psig,T °C\n0,1.5,20\n5,,20\n10,1.4,\n15,,\n20,1.4,20\n";
    expect(said(text, "blank-cells")).toEqual([{ count: 3 }]);
    expect(said(text, "blank-cells", { t: "temperature" })).toEqual([{ count: 2 }]);
  });

  it("that hold the time are not offered for something else", () => {
    expect(doubts("s,P psig\n0,1.5\n5,1.4\n", { run: "duration" })).toEqual(["column-missing"]);
  });
});

describe("the time", () => {
  /** The time of a log with these cells, under a title, beside a pressure that falls. */
  const timed = (title: string, cells: readonly string[]) =>
    `${title};P psig\n${cells.map((cell, i) => `${cell};${(90 - i / 10).toFixed(1)}`).join("\n")}\n`;
  const time = (title: string, cells: readonly string[]) =>
    guessLog(timed(title, cells)).format?.time;

  it.each<[string, string[], object, string[]]>([
    ["min", ["0", "5"], { written: "elapsed", column: "min" }, []],
    ["t", ["0:00", "0:05"], { written: "elapsed", column: "t" }, ["elapsed-or-clock"]],
    ["t", ["22:00", "22:05"], { written: "clock", column: "t" }, ["elapsed-or-clock"]],
    ["t", ["0:01", "0:05"], { written: "clock", column: "t" }, ["elapsed-or-clock"]],
    ["t", ["25:00", "25:05"], { written: "clock", column: "t" }, ["elapsed-or-clock"]],
    ["n", ["7", "8"], { written: "elapsed", column: "n" }, ["time-unit-unknown"]],
    ["n", ["45123.5", "45124"], { written: "serial", column: "n" }, ["serial-unsure"]],
    ["n", ["45123", "45124"], { written: "elapsed", column: "n" }, ["time-unit-unknown"]],
    ["n", ["45123,5", "45124,5"], { written: "serial", column: "n" }, ["serial-unsure"]],
    ["n", ["0,5", "1,5"], { written: "elapsed", column: "n" }, ["time-unit-unknown"]],
    // Days of a spreadsheet from 4 October 1954 to 9 January 2119, ECMA-376 calendar from 1900.
    ["t d", ["20000", "20002"], { written: "elapsed", column: "t d" }, []],
    ["t d", ["20001", "20002"], { written: "serial", column: "t d" }, ["serial-unsure"]],
    ["t d", ["79999", "80000"], { written: "serial", column: "t d" }, ["serial-unsure"]],
    ["t d", ["80000", "80001"], { written: "elapsed", column: "t d" }, []],
    ["t h", ["45123", "45124"], { written: "elapsed", column: "t h" }, []],
  ])("%s: %j", (title, cells, format, unsure) => {
    const { reasons, doubts: found, format: offered } = guessLog(timed(title, cells));
    expect(offered?.time).toMatchObject(format);
    expect(found.map(({ code }) => code.slice(5))).toEqual(unsure);
    const { written } = format as { written: string };
    expect(reasons).toContainEqual({
      code: "logs.time",
      values: { column: verbatim(title), written: `logs.written.${written}` },
    });
    for (const one of found) expect(one.values).toEqual({ column: verbatim(title) });
  });

  it("without a unit is a column of numbers that grow from row to row", () => {
    expect(doubts("n;P psig\n0;1.5\n")).toContain("no-time");
    expect(doubts("n;P psig\n1;1.5\n1;1.5\n2;1.5\n")).toContain("no-time");
    expect(doubts("n;P psig\n1;1.5\nx;1.5\n2;1.4\n")).toContain("no-time");
    expect(guessLog("P psig;n\n1.5;1\n1.4;2\n").format?.time.column).toBe("n");
  });

  it("is a date where nine cells of ten are one", () => {
    const day = (bad: number) =>
      Array.from({ length: 10 }, (_, i) => (i < bad ? "off" : `2026-03-09 22:0${i}`));
    expect(time("t", day(1))).toMatchObject({ written: "date-time" });
    expect(time("t", day(2))).toBeUndefined();
    // A blank cell is none, and a cell that is no date does not hide the zone of those that are.
    const blank = ["2026-03-09 22:00", "", "2026-03-09 22:10"];
    expect(time("t", blank)).toMatchObject({ written: "date-time" });
    const zoned = day(1).map((cell) => (cell === "off" ? cell : `${cell}Z`));
    expect(doubts(timed("t", zoned))).toEqual([]);
  });

  it("is not in a column that is blank from top to bottom", () => {
    const text = "x;t;P psig\n;22:00;1.5\n;22:05;1.4\n";
    expect(guessLog(text).format?.time).toMatchObject({ written: "clock", column: "t" });
  });

  it("counted in a unit goes before a date", () => {
    const text = "Date,min,P psig\n2026-03-09,0,1.5\n2026-03-09,5,1.4\n";
    expect(guessLog(text).format?.time).toMatchObject({ written: "elapsed", column: "min" });
  });

  it("of day is in a column of its own only where the date has none", () => {
    // A spreadsheet leaves out the time of midnight.
    const both =
      "Date;Run time;P psig\n2026-03-09 23:55;0:00;1.5\n2026-03-10;0:05;1.4\n2026-03-10 0:05;0:10;1.4\n";
    expect(guessLog(both).format?.time).toMatchObject({ column: "Date" });
    expect(guessLog(both).format?.time).not.toHaveProperty("timeColumn");
    expect(said(both, "unit-unknown")).toEqual([{ column: verbatim("Run time") }]);
    const apart = "Time;Date;P psig\n23:55;2026-03-09;1.5\n0:05;2026-03-10;1.4\n";
    expect(guessLog(apart).format?.time).toMatchObject({ column: "Date", timeColumn: "Time" });
    expect(doubts(apart)).toEqual(["zone-unknown"]);
    // One reading a day, no time of day anywhere: a column for it would be one that the file does not have.
    const daily = "Date;P psig\n2026-03-09;1.5\n2026-03-10;1.4\n";
    expect(guessLog(daily).format?.time).toMatchObject({ written: "date-time", column: "Date" });
    expect(guessLog(daily).format?.time).not.toHaveProperty("timeColumn");
  });

  it("states its zone only where every row does", () => {
    expect(doubts(timed("t", ["2026-03-09 22:00Z", "2026-03-09 22:05"]))).toEqual(["zone-unknown"]);
  });

  it.each<[string, string[], string, string | undefined]>([
    [
      "ISO 8601-1:2019",
      ["2026-03-04 10:00", "2026-03-05 10:00"],
      "year-month-day",
      "2026-03-04 10:00",
    ],
    ["a day above 12", ["03/04/2026", "14/03/2026", "15/03/2026"], "day-month-year", "14/03/2026"],
    ["a day above 12 behind", ["03/04/2026", "03/14/2026"], "month-day-year", "03/14/2026"],
    [
      "a month by its name",
      ["9-Mar-2026 10:00", "9-Mar-2026 10:05"],
      "day-month-year",
      "9-Mar-2026 10:00",
    ],
    [
      "most rows, where one is a misprint",
      ["13/12/2026", ...Array.from({ length: 12 }, (_, i) => `12/${i + 13}/2026`)],
      "month-day-year",
      "12/13/2026",
    ],
    ["nothing", ["03/04/2026 10:00 UTC", "03/05/2026 10:00 UTC"], "day-month-year", undefined],
    [
      "nothing: a letter is no month",
      ["3/4/26T10:00", "3/4/26T10:05"],
      "day-month-year",
      undefined,
    ],
    ["nothing: one name of a month", ["10/03/2026", "10-Mar-2026"], "day-month-year", undefined],
  ])("has the order of its date settled by %s", (_, cells, order, cell) => {
    const text = timed("t", cells);
    const settled = { order: `logs.order.${order}`, cell: verbatim(cell ?? cells[0] ?? "") };
    expect(time("t", cells)).toMatchObject({ written: "date-time", order });
    expect(said(text, "date-order")).toEqual(cell ? [settled] : []);
    expect(said(text, "date-order-unsure")).toEqual(cell ? [] : [settled]);
  });
});
