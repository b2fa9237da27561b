import { explain } from "hvac-install-math/assessment";
import { english } from "hvac-install-math/language/en";
import { createLogReader, type LogFormat, readLog, type TimeFormat } from "hvac-install-math/logs";
import {
  degC,
  InvalidInputError,
  kPag,
  micron,
  minute,
  second,
  volt,
} from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";

const decay = {
  separator: ",",
  decimal: ".",
  header: 1,
  time: { written: "elapsed", column: "elapsed [s]", unit: second },
  columns: { pressure: { column: "pressure [micron]", unit: micron } },
} as const;
const header = "elapsed [s],pressure [micron]\n";

/** Elapsed seconds of a log of one column of times. */
function secondsOf(times: readonly string[], time: Omit<TimeFormat, "column">) {
  const log = readLog(times.map((one, i) => `${one};${i}`).join("\n"), {
    separator: ";",
    decimal: ".",
    time: { column: 1, ...time } as TimeFormat,
    columns: { pressure: { column: 2, unit: micron } },
  });
  const codes = [...log.refused, ...log.notes].map((one) => `${one.code} ${one.values.line}`);
  return [log.rows.map(({ elapsed }) => elapsed.in(second)), codes, log.started] as const;
}
const dated = (order: string, zone = "wall-clock") =>
  ({ written: "date-time", order, zone }) as const;

describe("rows", () => {
  it("are typed readings with their lines", () => {
    const log = readLog(`${header}0,275\n\n5,283\n`, decay);
    expect(log.rows.map(({ pressure }) => pressure.toString())).toEqual([
      "275 micron",
      "283 micron",
    ]);
    expect(log.rows[1]?.elapsed.toString()).toBe("5 s");
    expect(log.lines).toEqual([2, 4]);
    expect([...log.refused, ...log.notes]).toEqual([]);
    expect(log).not.toHaveProperty("started"); // the file has no dates
  });

  it("come from columns by title or number, in units themselves or by name, and from words", () => {
    const text = "no;min;p1 / kPa g;T;state\n1;0;3.400,5;12,5;idle\n2;5;3.398;12,4;run\n";
    const log = readLog(text, {
      separator: ";",
      decimal: ",",
      group: ".",
      header: 1,
      time: { written: "elapsed", column: "min", unit: "minutes" },
      columns: {
        pressure: { column: "p1 / kPa g", kind: "gaugePressure", unit: "kPa g" },
        temperature: { column: 4, unit: degC },
        state: { column: "state", words: { idle: "rest", run: "load" } },
      },
    });
    expect(log.refused).toEqual([]);
    const [first, next] = log.rows;
    expect(first?.pressure.in(kPag)).toBe(3400.5);
    expect(next?.pressure.in(kPag)).toBe(3398);
    expect(next?.temperature.in(degC)).toBe(12.4);
    expect(next?.elapsed.unit).toBe(minute);
    const state: "rest" | "load" | undefined = next?.state;
    expect(state).toBe("load");
  });

  it("may carry the unit in each cell", () => {
    const log = readLog("0,230.1 V\n1,229V\n2,3 A\n", {
      separator: ",",
      decimal: ".",
      time: { written: "elapsed", column: 1 },
      columns: { voltage: { column: 2, unit: volt } },
    });
    expect(log.rows.map(({ voltage }) => voltage.in(volt))).toEqual([230.1, 229]);
    expect(log.refused.map(({ code }) => code)).toEqual(["logs.not-a-number"]);
  });

  it("begin below a preamble and a line of units, and pass over remarks", () => {
    const text = "Unit,invented\n\nelapsed [s],pressure [micron]\ns,micron\n# note\n0,275\n";
    const log = readLog(text, { ...decay, header: 3, firstRow: 5, remark: "#" });
    expect(log.lines).toEqual([6]);
    expect(log.refused).toEqual([]);
  });

  it("are the same however the text is cut", () => {
    const text = `\ufeff${header}0,275\r\n5,"283"\r\n10,288`;
    const whole = readLog(text, decay);
    expect(readLog([...text], decay)).toEqual(whole);
    const reader = createLogReader(decay);
    const parts = [reader.add(text.slice(0, 40)), reader.add(text.slice(40)), reader.end()];
    expect(parts.flatMap(({ rows }) => rows)).toEqual(whole.rows);
    expect(whole.rows.length).toBe(3);
  });
});

describe("every line that is not taken is named", () => {
  const text = [
    "elapsed [s],pressure [micron]",
    "0,275",
    "5",
    "10,280,3",
    "15,",
    "20,OL",
    "25,-3",
    "x,281",
    "30,282",
    "30,282",
    "30,283",
    "28,284",
    "elapsed [s],pressure [micron]",
    '40,"285',
    "45,286",
  ].join("\n");

  it("with its line and the reason", () => {
    const log = readLog(text, decay);
    expect(log.refused.map(({ code, values }) => `${values.line} ${code}`)).toEqual([
      "3 logs.cell-count",
      "4 logs.cell-count",
      "5 logs.blank-cell",
      "6 logs.not-a-number",
      "7 logs.not-possible",
      "8 logs.not-a-time",
      "10 logs.duplicate",
      "11 logs.same-time",
      "12 logs.time-goes-back",
      "13 logs.header-again",
      "14 logs.open-quote",
    ]);
    expect(log.lines).toEqual([2, 9, 15]);
  });

  it("in a sentence", () => {
    const sentences = readLog(text, decay).refused.map((one) => explain(one, english));
    expect(sentences[1]).toBe("Line 4 has 3 cells. Expected: 2.");
    expect(sentences[3]).toBe(
      "Line 6, pressure [micron]: “OL” is not a number in the stated notation.",
    );
    expect(sentences[5]).toBe("Line 8, elapsed [s]: “x” is not a time as stated.");
    expect(sentences[8]).toMatch(/^Line 12 is 2 s before the row above it\./);
  });

  it("a blank cell is left out without a word where the format says so", () => {
    const format = { ...decay, blank: "skip", blankCells: ["---", "NaN"] } as const;
    const skipped = readLog(`${header}0,275\n5,---\n10,NaN\n15,\n20,280\n`, format);
    expect(skipped.lines).toEqual([2, 6]);
    expect(skipped.refused).toEqual([]);
  });

  it("a decimal comma that reads as a separator is no row", () => {
    expect(readLog(`${header}0,275,5\n`, decay).refused[0]?.code).toBe("logs.cell-count");
  });

  it("a number in the other notation is no number", () => {
    const format = { ...decay, separator: ";", header: 1 } as const;
    const semicolons = "elapsed [s];pressure [micron]\n0;275,5\n1;1,234.5\n2;275.5\n";
    expect(readLog(semicolons, format).lines).toEqual([4]);
    const comma = readLog(semicolons, { ...format, decimal: "," });
    expect(comma.rows.map(({ pressure }) => pressure.in(micron))).toEqual([275.5]);
    const grouped = readLog(semicolons, { ...format, group: "," });
    expect(grouped.rows.map(({ pressure }) => pressure.in(micron))).toEqual([1234.5, 275.5]);
  });
});

describe("times", () => {
  it("of day go past midnight", () => {
    const [seconds, codes] = secondsOf(["23:59:30", "0:00:10", "12:00", "11:59"], {
      written: "clock",
    });
    expect(seconds).toEqual([0, 40, 43_230]);
    expect(codes).toEqual(["logs.time-goes-back 4", "logs.past-midnight 2"]);
  });

  it("since the start may be h:mm:ss beyond a day", () => {
    const [seconds] = secondsOf(["0:00:05", "25:00:00"], { written: "elapsed" });
    expect(seconds).toEqual([5, 90_000]);
  });

  it.each<[string, string, string]>([
    ["year-month-day", "2026-03-09 14:05:06.5", "2026-03-09T14:05:06"],
    ["year-month-day", "2026-03-09T14:05:06", "2026-03-09T14:05:06"],
    ["day-month-year", "9.3.26 14:05", "2026-03-09T14:05:00"],
    ["day-month-year", "09-Mar-2026, 14:05", "2026-03-09T14:05:00"],
    ["month-day-year", "3/9/2026 2:05 PM", "2026-03-09T14:05:00"],
    ["month-day-year", "3/9/2026 12:05 a.m.", "2026-03-09T00:05:00"],
    ["month-day-year", "09-Mar-2026", "2026-03-09T00:00:00"],
  ])("in the order %s: %s", (order, text, started) => {
    expect(secondsOf([text], dated(order))[2]).toBe(started);
  });

  it.each([
    ["year-month-day", "2026-02-29 10:00"],
    ["year-month-day", "2026-13-01 10:00"],
    ["day-month-year", "2026-03-09 10:00"],
    ["month-day-year", "13/01/2026 10:00"],
    ["year-month-day", "2026-03-09 24:00"],
    ["year-month-day", "2026-03-09 10:60"],
    ["year-month-day", "2026-03-09 13:00 PM"],
    ["year-month-day", "yesterday"],
    ["year-month-day", "2026-Foo-09 10:00"],
  ])("that are none in the order %s: %s", (order, text) => {
    expect(secondsOf([text], dated(order))[1]).toEqual(["logs.not-a-time 1"]);
  });

  it("state their own offset before the zone of the format", () => {
    const texts = ["2026-03-09T10:00:00Z", "2026-03-09T12:00:00+0100", "2026-03-09T06:30:00-05:30"];
    expect(secondsOf(texts, dated("year-month-day", "Asia/Tokyo"))[0]).toEqual([0, 3600, 7200]);
  });

  it("of a spreadsheet count days: 45123.5625 is 16 July 2023, 13:30 (ECMA-376 calendar from 1900)", () => {
    const from1900 = secondsOf(["45123.5625", "45123.5659722222"], {
      written: "serial",
      epoch: 1900,
    } as never);
    expect(from1900).toEqual([[0, 300], [], "2023-07-16T13:30:00"]);
    // The calendar from 1904 is 1462 days behind.
    const from1904 = secondsOf(["43661.5625"], { written: "serial", epoch: 1904 } as never);
    expect(from1904[2]).toBe("2023-07-16T13:30:00");
    expect(secondsOf(["12"], { written: "serial", epoch: 1900 } as never)[1]).toEqual([
      "logs.not-a-time 1",
    ]);
  });
});

describe("a clock that is set forward and back", () => {
  // Directive 2000/84/EC: last Sundays of March and October at 1:00 UTC; 29 March and 25 October 2026.
  it("in a zone, the skipped hour does not exist and no time is missing", () => {
    const times = ["29.03.2026 01:50", "29.03.2026 01:55", "29.03.2026 02:30", "29.03.2026 03:00"];
    const [seconds, codes] = secondsOf(times, dated("day-month-year", "Europe/Berlin"));
    expect(seconds).toEqual([0, 300, 600]);
    expect(codes).toEqual(["logs.skipped-hour 3"]);
  });

  it("in a zone, the doubled hour passes twice", () => {
    const times = ["02:00", "02:30", "02:59", "02:00", "02:30", "03:00"].map(
      (t) => `25.10.2026 ${t}`,
    );
    const [seconds, codes] = secondsOf(times, dated("day-month-year", "Europe/Berlin"));
    expect(seconds).toEqual([0, 1800, 3540, 3600, 5400, 7200]);
    expect(codes).toEqual(["logs.clock-set-back 4"]);
  });

  it("in a zone of half an hour (Lord Howe Island, 5 April 2026, 2:00 back to 1:30)", () => {
    const times = ["2026-04-05 01:45", "2026-04-05 01:30", "2026-04-05 02:00"];
    const [seconds] = secondsOf(times, dated("year-month-day", "Australia/Lord_Howe"));
    expect(seconds).toEqual([0, 900, 2700]);
  });

  it("on the wall clock, the doubled hour is refused by line and the skipped one is asked about", () => {
    const back = ["02:30", "02:59", "02:00", "02:30", "03:00"].map((t) => `25.10.2026 ${t}`);
    const [seconds, codes] = secondsOf(back, dated("day-month-year"));
    expect(seconds).toEqual([0, 1740, 1800]);
    expect(codes).toEqual(["logs.time-goes-back 3", "logs.time-goes-back 4"]);
    const on = [40, 45, 50, 55].map((m) => `29.03.2026 01:${m}`);
    const forward = secondsOf([...on, "29.03.2026 03:00"], dated("day-month-year"));
    expect(forward[1]).toEqual(["logs.clock-set-forward 5"]);
    const utc = ["01:40Z", "01:45Z", "01:50Z", "01:55Z", "03:00Z"].map((t) => `29.03.2026 ${t}`);
    expect(secondsOf(utc, dated("day-month-year"))[1]).toEqual(["logs.gap 5"]);
  });
});

it("missing rows are named", () => {
  const at = [0, 5, 10, 15, 20, 40, 45, 50];
  const { notes } = readLog(`${header}${at.map((t) => `${t},275`).join("\n")}`, decay);
  expect(notes.map((one) => explain(one, english))).toEqual([
    "Rows are missing before line 7: 20 s without one, 5 s is usual.",
  ]);
  // A logger that slows down misses nothing once the new step is the usual one.
  const slower = [...at.slice(0, 5), ...Array.from({ length: 30 }, (_, i) => 80 + 60 * i)];
  const { notes: slow } = readLog(`${header}${slower.map((t) => `${t},275`).join("\n")}`, decay);
  expect(slow.length).toBeLessThanOrEqual(5);
});

describe("a format that is none", () => {
  const wrong: readonly (readonly [string, object, RegExp])[] = [
    ["separator", { separator: "" }, /^format\.separator/],
    ["quotation mark as separator", { separator: '"' }, /^format\.separator/],
    ["decimal", { decimal: ";" }, /^format\.decimal/],
    ["same mark twice", { group: "." }, /^format\.group/],
    ["header", { header: 0 }, /^format\.header/],
    ["header beyond the text", { header: 9 }, /^format\.header/],
    ["first row above the header", { firstRow: 1 }, /^format\.firstRow/],
    ["remark", { remark: "" }, /^format\.remark/],
    ["blank", { blank: "zero" }, /^format\.blank/],
    ["time", { time: { written: "sundial", column: 1 } }, /^format\.time\.written/],
    [
      "zone",
      { time: { ...dated("year-month-day"), column: 1, zone: "Nowhere/At_All" } },
      /^format\.time\.zone/,
    ],
    [
      "no zone",
      { time: { written: "date-time", column: 1, order: "year-month-day" } },
      /^format\.time\.zone/,
    ],
    ["order", { time: { ...dated("year-day-month"), column: 1 } }, /^format\.time\.order/],
    ["epoch", { time: { written: "serial", column: 1, epoch: 1970 } }, /^format\.time\.epoch/],
    [
      "no such title",
      { columns: { pressure: { column: "P", unit: micron } } },
      /elapsed \[s\], pressure/,
    ],
    [
      "no such number",
      { columns: { pressure: { column: 3, unit: micron } } },
      /columns\.pressure\.column/,
    ],
    ["no unit", { columns: { pressure: { column: 2 } } }, /columns\.pressure\.unit/],
    [
      "a unit without its zero",
      { columns: { p: { column: 2, kind: "gaugePressure", unit: "psi" } } },
      /logs.which-zero/,
    ],
    [
      "an unknown unit",
      { columns: { p: { column: 2, kind: "voltage", unit: "furlong" } } },
      /columns\.p\.unit.*V/,
    ],
    [
      "a kind of no log",
      { columns: { p: { column: 2, kind: "torque", unit: "Nm" } } },
      /columns\.p\.kind/,
    ],
    ["no words", { columns: { state: { column: 2, words: null } } }, /columns\.state\.words/],
  ];
  it.each(wrong)("%s", (_, change, says) => {
    const act = () => readLog(`${header}0,275\n`, { ...decay, ...change } as LogFormat);
    expect(act).toThrow(InvalidInputError);
    expect(act).toThrow(says);
  });

  it("a title that stands twice, and a title where there is no header", () => {
    const twice = { ...decay, columns: { pressure: { column: "p", unit: micron } } } as const;
    expect(() => readLog("elapsed [s],p,p\n0,1,2\n", twice)).toThrow(/has once/);
    const { header: _, ...without } = decay;
    expect(() => readLog("0,1\n", without)).toThrow(/names no header/);
  });

  it("a text that is none", () => {
    for (const text of [undefined, null, 3, {}, [3]]) {
      expect(() => readLog(text as never, decay)).toThrow(InvalidInputError);
    }
  });
});

it("is not changed by reading, and shares nothing with its result", () => {
  const format = Object.freeze({ ...decay, columns: Object.freeze({ ...decay.columns }) });
  const text = `${header}0,275\n`;
  const [one, other] = [readLog(text, format), readLog(text, format)];
  expect(one).toEqual(other);
  expect(one.rows).not.toBe(other.rows);
});
