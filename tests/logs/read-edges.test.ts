// Lines that are just taken and just refused, with the values of what is said of them.

import { createLogReader, type LogFormat, readLog, type TimeFormat } from "hvac-install-math/logs";
import { degC, InvalidInputError, micron, psig, second } from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import { recordReader } from "../../src/logs/records.ts";

const format = {
  separator: ",",
  decimal: ".",
  time: { written: "elapsed", column: 1 },
  columns: { t: { column: 2, unit: degC } },
} as const;
const titled = { ...format, header: 1 } as const;

/** What is said of each line, with its values as words. */
const said = (log: ReturnType<typeof readLog>) =>
  [...log.refused, ...log.notes].map(({ code, values }) => {
    const words = Object.values(values).map((one) =>
      typeof one === "object" && "verbatim" in one ? `“${one.verbatim}”` : String(one),
    );
    return [code.slice(5), ...words].join(" ");
  });

describe("cells of a row", () => {
  it.each<[string, string, number[], string[]]>([
    ["a separator at its end", "s,t\n0,1,\n5,1,,\n", [2, 3], []],
    ["a separator at the end of the header", "s,t,,\n0,1\n5,1,\n", [2, 3], []],
    ["one more than titles", "s,t\n0,1,,x\n", [], ["cell-count 2 4 2"]],
    ["one less", "s,t,x\n0,1\n", [], ["cell-count 2 2 3"]],
    ["a blank one within", "s,x,t\n0,,\n", [], ["blank-cell 2 “2”"]],
  ])("with %s", (_, text, lines, refused) => {
    const log = readLog(text, titled);
    expect(log.lines).toEqual(lines);
    expect(said(log)).toEqual(refused);
  });

  it("as many as the first row has, where there is no header", () => {
    expect(said(readLog("0,1,x\n5,1\n6,1,x\n7,1,x,y\n", format))).toEqual([
      "cell-count 2 2 3",
      "cell-count 4 4 3",
    ]);
  });

  it("that are refused are shown, the first 40 characters of them", () => {
    const long = "9x".repeat(30);
    const log = readLog(`s,t\n0,${long}\n5,-300\n6,1\n${long},1\n4,1\n6,1\n6,2\n`, titled);
    expect(said(log)).toEqual([
      `not-a-number 2 “2” “${long.slice(0, 40)}”`,
      "not-possible 3 “2” “-300”",
      `not-a-time 5 “1” “${long}”`,
      "time-goes-back 6 2 s",
      "duplicate 7",
      "same-time 8",
    ]);
  });

  it("of words", () => {
    const words = { ...format, columns: { state: { column: 2, words: { run: "load" } } } } as const;
    const log = readLog("0,run\n5,idle\n6,constructor\n", words);
    expect(log.rows.map(({ state }) => state)).toEqual(["load"]);
    expect(said(log)).toEqual(["unknown-word 2 “2” “idle”", "unknown-word 3 “2” “constructor”"]);
  });
});

describe("times", () => {
  const timed = (time: object, times: readonly string[]) => {
    const log = readLog(times.map((one) => `${one};1\n`).join(""), {
      ...format,
      separator: ";",
      time: { column: 1, ...time } as TimeFormat,
    });
    return [log.rows.map(({ elapsed }) => elapsed.in(second)), said(log), log.started];
  };

  it("that count themselves begin where they begin, in their unit", () => {
    const log = readLog("30,1\n0:40:00,1\n41 min,1\n", {
      ...format,
      time: { written: "elapsed", column: 1, unit: "min" },
    });
    expect(log.rows.map(({ elapsed }) => elapsed.toString())).toEqual([
      "30 min",
      "40 min",
      "41 min",
    ]);
    expect(log.started).toBeUndefined();
  });

  it("of day are past midnight where they fall back by more than twelve hours", () => {
    const clock = { written: "clock" };
    expect(timed(clock, ["20:00:00", "08:00:00"])).toEqual([
      [0],
      ["time-goes-back 2 43200 s"],
      undefined,
    ]);
    expect(timed(clock, ["20:00:00", "07:59:59"])[0]).toEqual([0, 43_199]);
    expect(timed(clock, ["20:00", "02:00", "20:00", "02:00"])).toEqual([
      [0, 21_600, 86_400, 108_000],
      ["past-midnight 2", "past-midnight 4"],
      undefined,
    ]);
    expect(timed(clock, ["24:00"])[1]).toEqual(["not-a-time 1 “1” “24:00”"]);
  });

  it("of day may have been set forward, times since the start not", () => {
    const times = ["1:40", "1:45", "1:50", "1:55", "3:00"];
    expect(timed({ written: "clock" }, times)[1]).toEqual(["clock-set-forward 5"]);
    expect(timed({ written: "elapsed" }, times)[1]).toEqual(["gap 5 3900 s 300 s"]);
  });

  // ECMA-376 calendars: day 61 is 1 March 1900, day 0 is 1 January 1904, day 2 958 465 is 31 December 9999.
  it.each<[1900 | 1904, string, string | undefined]>([
    [1900, "61", "1900-03-01T00:00:00"],
    [1900, "60.9", undefined],
    [1900, "2958465.5", "9999-12-31T12:00:00"],
    [1900, "2958466", undefined],
    [1904, "0", "1904-01-01T00:00:00"],
    [1904, "-1", undefined],
    [1904, "x", undefined],
  ])("of a spreadsheet from %d: %s", (epoch, cell, started) => {
    const [seconds, refused, at] = timed({ written: "serial", epoch }, [cell]);
    expect(at).toBe(started);
    expect(seconds).toEqual(started ? [0] : []);
    expect(refused).toEqual(started ? [] : [`not-a-time 1 “1” “${cell}”`]);
  });

  it("of a spreadsheet are whole milliseconds", () => {
    const serial = { written: "serial", epoch: 1900 };
    expect(timed(serial, ["45123", "45123.0000578704"])[0]).toEqual([0, 5]);
  });

  it("of a date in two columns, skipped by a clock that is set forward", () => {
    // Directive 2000/84/EC: 29 March 2026, 1:00 UTC.
    const log = readLog("29.03.2026,02:30,1\n29.03.2026,03:30,1\n", {
      ...format,
      time: {
        written: "date-time",
        column: 1,
        timeColumn: 2,
        order: "day-month-year",
        zone: "Europe/Berlin",
      },
      columns: { t: { column: 3, unit: degC } },
    });
    expect(said(log)).toEqual(["skipped-hour 1 “1” “29.03.2026 02:30”"]);
    expect(log.started).toBe("2026-03-29T03:30:00");
  });

  it("of day do not move on where a row is refused", () => {
    // The logger started anew in between and its first row holds no figure.
    const log = readLog("22:00,1\n22:05,1\n0:00,x\n22:10,1\n0:00,x\n0:05,1\n", {
      ...format,
      time: { written: "clock", column: 1 },
    });
    expect(log.rows.map(({ elapsed }) => elapsed.in(second))).toEqual([0, 300, 600, 7500]);
    expect(said(log).slice(2)).toEqual(["past-midnight 6"]);
  });

  it("of a column for the time of day belong to dates only", () => {
    expect(timed({ written: "elapsed", timeColumn: 2 }, ["0", "5"])[0]).toEqual([0, 5]);
  });

  it("of every hour go on through the hour that comes twice", () => {
    // Directive 2000/84/EC: 25 October 2026, 1:00 UTC.
    const times = ["01:00", "02:00", "02:00", "03:00"].map((t) => `25.10.2026 ${t}`);
    const zoned = { written: "date-time", order: "day-month-year", zone: "Europe/Berlin" };
    expect(timed(zoned, times).slice(0, 2)).toEqual([
      [0, 3600, 7200, 10_800],
      ["clock-set-back 3"],
    ]);
  });

  it("of a known zone miss an hour where one is missing: no clock was set", () => {
    const times = ["10:40", "10:45", "10:50", "10:55", "12:00"].map((t) => `26.10.2026 ${t}`);
    const dated = { written: "date-time", order: "day-month-year" };
    expect(timed({ ...dated, zone: "Europe/Berlin" }, times)[1]).toEqual(["gap 5 3900 s 300 s"]);
    expect(timed({ ...dated, zone: "wall-clock" }, times)[1]).toEqual(["clock-set-forward 5"]);
  });

  it("of a clock that is set back say so once", () => {
    // Directive 2000/84/EC: 25 October 2026, 1:00 UTC.
    const times = ["02:50", "02:10", "02:20", "03:10", "03:20"].map((t) => `25.10.2026 ${t}`);
    const zoned = { written: "date-time", order: "day-month-year", zone: "Europe/Berlin" };
    expect(timed(zoned, times)).toEqual([
      [0, 1200, 1800, 4800, 5400],
      ["clock-set-back 2"],
      "2026-10-25T02:50:00",
    ]);
    const refused = ["02:50,1", "02:10,x", "02:20,1", "02:25,x", "02:30,1"];
    const log = readLog(refused.map((row) => `25.10.2026 ${row}\n`).join(""), {
      ...format,
      time: { ...zoned, column: 1 } as TimeFormat,
    });
    expect(log.notes.map(({ code, values }) => `${code} ${values.line}`)).toEqual([
      "logs.clock-set-back 3",
    ]);
  });
});

describe("lines of any length", () => {
  const records = (...chunks: string[]) => {
    const reader = recordReader(",");
    return [...chunks.flatMap((chunk) => reader.add(chunk)), ...reader.end()].map(
      ({ line, cells, wrong }) => `${line} ${wrong?.slice(5) ?? cells.length}`,
    );
  };
  const full = "x".repeat(10_000);

  it.each(["\n", "\r\n", "\r"])(
    "10 000 characters are a row, one more is none, before %j",
    (end) => {
      for (const chunks of [[full + end], [full, end], [full]]) {
        expect(records(...chunks)).toEqual(["1 1"]);
      }
      expect(records(`${full}x${end}a,b`)).toEqual(["1 long-line", "2 2"]);
      for (const chunks of [
        [`${full}x`, `${end}a,b`],
        [`${full}x${end}`, "a,b"],
        [`\r${full}`, `x${end}a,b`].map((chunk) => chunk.replace(/^\r/, "")),
        [full, `xx${end[0]}`, `${end.slice(1)}a,b`],
        [full, "x", `${end}a,b`],
      ]) {
        expect(records(...chunks)).toEqual(["1 long-line", "2 2"]);
      }
      expect(records(`${full}x`)).toEqual(["1 long-line"]);
      expect(records(`${full}x`, "x".repeat(10))).toEqual(["1 long-line"]);
    },
  );

  it("a quoted cell goes over 20 lines, or 10 000 characters, and no further", () => {
    const quoted = (lines: number) => `"${"x\n".repeat(lines - 1)}x",b\nc,d\n`;
    expect(records(quoted(20))).toEqual(["1 2", "21 2"]);
    expect(records(quoted(21))[0]).toBe("1 open-quote");
    const long = (most: number) => `"${"x".repeat(most - 5001)}\n${"x".repeat(4999)}\n",b\n`;
    expect(records(long(10_000))).toEqual(["1 2"]);
    expect(records(long(10_001))[0]).toBe("1 open-quote");
  });

  it("a byte-order mark is one at the beginning only", () => {
    const reader = recordReader(",");
    const chunks = ["", '\ufeff"a,b",c\n', '\ufeff"a,b",c\n'];
    const found = chunks.flatMap((chunk) => reader.add(chunk));
    expect(found[0]?.cells).toEqual(["a,b", "c"]);
    expect(found[1]?.cells).not.toEqual(["a,b", "c"]);
    expect(found).toEqual(recordReader(",").add(chunks.join("")));
  });
});

describe("a format", () => {
  const wrong: readonly (readonly [object, RegExp])[] = [
    [{ separator: ";;" }, /^format\.separator/],
    [{ separator: "\n" }, /^format\.separator/],
    [{ separator: "\r" }, /^format\.separator/],
    [{ decimal: ",", group: "," }, /^format\.group/],
    [{ group: ";" }, /^format\.group/],
    [{ header: undefined, firstRow: 0 }, /^format\.firstRow/],
    [{ header: 0 }, /^format\.header/],
    [{ header: 1.5 }, /^format\.header/],
    [{ remark: 3 }, /^format\.remark/],
    [{ blankCells: "-" }, /^format\.blankCells/],
    [{ blankCells: [3] }, /^format\.blankCells\[0\]/],
    [{ blankCells: Array.from({ length: 101 }, () => "-") }, /^format\.blankCells/],
    [{ time: null }, /^format\.time/],
    [{ columns: null }, /^format\.columns/],
    [{ columns: { t: null } }, /^format\.columns\.t/],
    [{ columns: { t: { column: 0, unit: degC } } }, /^format\.columns\.t\.column/],
    [{ columns: { t: { column: 1001, unit: degC } } }, /^format\.columns\.t\.column/],
    [{ columns: { t: { column: {}, unit: degC } } }, /^format\.columns\.t\.column/],
    [{ columns: { t: { column: 2, unit: "°C" } } }, /^format\.columns\.t\.unit/],
    [{ columns: { t: { column: 2, kind: "voltage", unit: degC } } }, /^format\.columns\.t\.unit/],
    [{ columns: { s: { column: 2, words: { run: 3 } } } }, /^format\.columns\.s\.words\.run/],
    [{ time: { written: "elapsed", column: 0 } }, /^format\.time\.column/],
    [{ time: { written: "elapsed", column: "t", unit: "V" } }, /^format\.time\.unit/],
    [
      { columns: { unit: { column: 2, kind: "torque", unit: "Nm" } } },
      /^format\.columns\.unit\.kind/,
    ],
    [{ columns: { u: { column: 2, kind: "voltage", unit: "furlong" } } }, /allowed: V$/],
  ];
  it.each(wrong)("%j is none, before there is any text", (change, says) => {
    const act = () => createLogReader({ ...titled, ...change } as LogFormat);
    expect(act).toThrow(InvalidInputError);
    expect(act).toThrow(says);
  });

  it("asks for columns that the header does not have", () => {
    const dated = { written: "date-time", order: "day-month-year", zone: "wall-clock" };
    const act = (time: object) => readLog("s,t\n0,1\n", { ...titled, time } as LogFormat);
    expect(() => act({ written: "elapsed", column: 3 })).toThrow(/^format\.time\.column/);
    expect(() => act({ ...dated, column: 1, timeColumn: "x" })).toThrow(
      /^format\.time\.timeColumn/,
    );
  });

  it("that is nothing", () => {
    expect(() => readLog("", undefined as never)).toThrow(/^format/);
    expect(() => createLogReader(format).add(3 as never)).toThrow(/^chunk/);
    expect(() => readLog(["0,1\n", 3 as never], format)).toThrow(/^text\[1\]/);
  });

  it("names what the header has in short", () => {
    const titles = Array.from({ length: 200 }, (_, i) => `title ${i}`).join(",");
    const act = () =>
      readLog(`${titles}\n`, { ...titled, columns: { p: { column: "P", unit: psig } } });
    expect(act).toThrow(/title 1, title 2/);
    try {
      act();
    } catch (error) {
      expect(String(error).length).toBeLessThan(400);
    }
  });

  it("with a header that the text does not have, or that a quoted cell goes over", () => {
    const third = { ...format, header: 2 } as const;
    expect(() => readLog("a,b", third)).toThrow(/^format\.header/);
    expect(() => readLog('"a\nb\nc",b\n0,1\n', third)).toThrow(/^format\.header/);
    // In a log that still arrives, with the first row and not at the end.
    const reader = createLogReader(third);
    expect(() => reader.add('"a\nb\nc",b\n0,1\n')).toThrow(/^format\.header/);
    expect(() => readLog('"a\nb\nc",b\n', third)).toThrow(/^format\.header/);
  });

  it("with marks: remarks, blank cells and rows above the first", () => {
    const text = "s,t\n# 0,1\n5,---\n6,1\n7 #,1\n8,2\n";
    const log = readLog(text, { ...titled, remark: "#", blankCells: ["---"], firstRow: 3 });
    expect(log.lines).toEqual([4, 6]);
    expect(said(log)).toEqual(["blank-cell 3 “2”", "not-a-time 5 “1” “7 #”"]);
    // Without a mark no row is a remark.
    expect(said(readLog("0,1\nundefined,1\n", format))).toEqual(["not-a-time 2 “1” “undefined”"]);
    const below = readLog("Logger,7\ns,t\n0,1\n", { ...titled, header: 2 });
    expect([below.lines, below.refused]).toEqual([[3], []]);
    expect(readLog("s,t\n1,1\n2,1\n", { ...titled, firstRow: 2 }).lines).toEqual([2, 3]);
  });
});

it("a log by chunks gives each thing once", () => {
  const reader = createLogReader({
    ...titled,
    time: { written: "date-time", column: 1, order: "year-month-day", zone: "wall-clock" },
    columns: { p: { column: "p", unit: micron } },
  });
  const parts = ["t,p\n2026-03-09 1", "0:00,5\n2026-03-09 10:05,x\n", "t,p\n2026-03-09 10:10,7"];
  const logs = [...parts.map((part) => reader.add(part)), reader.end()];
  expect(logs.map(({ rows }) => rows.length)).toEqual([0, 1, 0, 1]);
  expect(logs.map(({ started }) => started)).toEqual([
    undefined,
    "2026-03-09T10:00:00",
    undefined,
    undefined,
  ]);
  expect(logs.map(({ lines }) => lines)).toEqual([[], [2], [], [5]]);
  expect(logs.map(({ refused }) => refused.map(({ code }) => code))).toEqual([
    [],
    ["logs.not-a-number"],
    ["logs.header-again"],
    [],
  ]);
});
