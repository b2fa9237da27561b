// What one cell holds, in the notation that the format states: numbers, times of day and dates.

import { describe, expect, it } from "vitest";
import { momentOf, secondsOf } from "../../src/logs/moment.ts";
import { type CellMarks, numberIn } from "../../src/logs/number-cell.ts";

// ISO 80000-1:2022, 7.3: one decimal mark, digits in groups of three from it. Marks other than the space: common
// practice, no source.
const notations: readonly (readonly [CellMarks, Readonly<Record<string, number>>])[] = [
  [
    { decimal: "." },
    { "1234.5": 1234.5, "1,234.5": Number.NaN, "1 234": Number.NaN, "1,5": Number.NaN },
  ],
  // A minus sign may be the one of typography (ISO 80000-1:2022, 7.3.2, from memory), in an exponent too.
  [{ decimal: "." }, { "−1.5": -1.5, "–1.5e−3": -0.0015, "1.5e-3": 0.0015, "12–15": Number.NaN }],
  [
    { decimal: "," },
    { "1234,5": 1234.5, "1234.5": Number.NaN, "1.234,5": Number.NaN, "1,2,3": Number.NaN },
  ],
  [
    { decimal: ".", group: "," },
    {
      "1,234.5": 1234.5,
      "-12,345,678": -12_345_678,
      "+123,456": 123_456,
      "1234.5": 1234.5,
      "12,34": Number.NaN,
      "1,2345": Number.NaN,
      "1,234,56": Number.NaN,
      "1,23,456": Number.NaN,
      "1234,567": Number.NaN,
      ",567": Number.NaN,
      "1.234,567": Number.NaN,
      "1,234.5.6": Number.NaN,
      "x1,234": Number.NaN,
      "1x,234": Number.NaN,
    },
  ],
  [
    { decimal: ",", group: "." },
    { "1.234,5": 1234.5, "1.234": 1234, "1.5": Number.NaN, "1,234.5": Number.NaN },
  ],
  [
    { decimal: ",", group: " " },
    {
      "1 234,5": 1234.5,
      "1\u00a0234": 1234,
      "1\u2009234": 1234,
      "1\u202f234,5": 1234.5,
      "1\u00a023": Number.NaN,
    },
  ],
  [
    { decimal: ".", group: "'" },
    { "1'234.5": 1234.5, "1\u00a0234": Number.NaN },
  ],
];

it.each(
  notations.flatMap(([marks, cells]) =>
    Object.entries(cells).map(
      ([cell, number]) => [cell, marks.decimal, marks.group, number] as const,
    ),
  ),
)("number %j with decimal %s and group %s is %s", (cell, decimal, group, number) => {
  expect(numberIn(cell, { decimal, group })).toBe(number);
});

it.each<[string, number]>([
  ["5", 5],
  ["+5", 5],
  ["-5", -5],
  ["−5.5", -5.5], // minus sign
  ["–5", -5], // en dash
  ["5.", 5],
  [".25", 0.25],
  ["1.5e3", 1500],
  ["1.5E-03", 0.0015],
  ["1e+2", 100],
  ["", Number.NaN],
  [".", Number.NaN],
  ["e5", Number.NaN],
  ["1e1234", Number.NaN],
  ["1e", Number.NaN],
  ["0x10", Number.NaN],
  ["x5", Number.NaN],
  ["5x", Number.NaN],
  ["5 -", Number.NaN],
  ["--5", Number.NaN],
])("number %j is %s", (cell, number) => expect(numberIn(cell, { decimal: "." })).toBe(number));

it.each<[string, number]>([
  ["230.1 V", 230.1],
  ["230.1V", 230.1],
  ["V", Number.NaN],
  ["230.1 A", Number.NaN],
  ["V 230.1", Number.NaN],
])("with its unit V behind it %j is %s", (cell, number) =>
  expect(numberIn(cell, { decimal: "." }, "V")).toBe(number),
);

describe("a time of day", () => {
  it.each<[string, number]>([
    ["0:00", 0],
    ["9:05", 32_700],
    ["09:05:06", 32_706],
    ["09:05:06.5", 32_706.5],
    ["09:05:06,25", 32_706.25],
    ["00:00:00.123456789", 0.123456789], // nanoseconds
    ["23:59:59", 86_399],
    ["12:05 AM", 300],
    ["12:05 pm", 43_500],
    ["1:05 PM", 47_100],
    ["1:05PM", 47_100],
    ["1:05  pm", 47_100],
    ["1:05 p.m.", 47_100],
    ["1:05 p. m.", 47_100],
    ["1:05 p m", 47_100],
    ["11:59 a.m.", 43_140],
  ])("%j", (text, seconds) => expect(secondsOf(text, 24)).toBeCloseTo(seconds, 9));

  it.each([
    ..."24:00 9:60 9:5 9:05:60 9:05:6 x9:05 9:05x 9:05:06. 9:05: :05 9 9.05".split(" "),
    ...["0:30 PM", "13:05 pm", "x 9:05", "9:05 x", "9:05 m", "9:05 pxm", "9:05 xm", "9:05 pm x"],
    ...["", "9:05 p", "9:05:06.1234567890", "12345:00"],
  ])("not %j", (text) => expect(secondsOf(text, 24)).toBeUndefined());

  it("counts beyond a day where the hours may", () => {
    expect(secondsOf("25:00", 10_000)).toBe(90_000);
    expect(secondsOf("9999:59:59", 10_000)).toBe(35_999_999);
  });
});

describe("a date with a time of day", () => {
  /** As ISO 8601 writes it, with the offset in minutes. */
  const written = (text: string, order: Parameters<typeof momentOf>[1]) => {
    const { wall, offset } = momentOf(text, order) ?? {};
    if (wall === undefined) return undefined;
    const iso = new Date(wall * 1000).toISOString().slice(0, 19);
    return offset === undefined ? iso : `${iso} ${offset / 60}`;
  };
  const [ymd, dmy, mdy] = ["year-month-day", "day-month-year", "month-day-year"] as const;

  it.each([
    [ymd, "2026-03-09T14:05:06", "2026-03-09T14:05:06"],
    [ymd, "2026/03/09 14:05", "2026-03-09T14:05:00"],
    [ymd, "26-3-9 14:05", "2026-03-09T14:05:00"],
    [ymd, "2026-Mar-09 2:05 PM", "2026-03-09T14:05:00"],
    [ymd, "2028-02-29", "2028-02-29T00:00:00"],
    [dmy, "9 mar 2026, 14:05", "2026-03-09T14:05:00"],
    [dmy, "09.03.2026", "2026-03-09T00:00:00"],
    [mdy, "12/31/26 23:59", "2026-12-31T23:59:00"],
    [mdy, "09-MAR-26 14:05", "2026-03-09T14:05:00"],
    // Offsets, ISO 8601-1:2019, 5.3.4.1.
    [ymd, "2026-03-09T14:05Z", "2026-03-09T14:05:00 0"],
    [ymd, "2026-03-09 14:05 utc", "2026-03-09T14:05:00 0"],
    [ymd, "2026-03-09T14:05:00+05:45", "2026-03-09T14:05:00 345"],
    [ymd, "2026-03-09T14:05:00 -0330", "2026-03-09T14:05:00 -210"],
    [dmy, "9.3.2026 2:05 pm +01:00", "2026-03-09T14:05:00 60"],
  ] as const)("in the order %s: %s", (order, text, iso) => {
    expect(written(text, order)).toBe(iso);
  });

  it.each([
    [ymd, "x 2026-03-09"],
    [ymd, "x2026-03-09 14:05"],
    [ymd, "2026-03-09 x"],
    [ymd, "2026-03-09x14:05"],
    [ymd, "2026-03-09 14:05 x"],
    [ymd, "2026-03-09 x 14:05"],
    [ymd, "2026-03-09T14:05 CET"],
    [ymd, "2026-03-09T14:05Z x"],
    [ymd, "2026-03-09T14:05+1"],
    [ymd, "2026-03-09T14:05+1:00"],
    [ymd, "2027-02-29"],
    [ymd, "2026-04-31"],
    [ymd, "2026-00-09"],
    [ymd, "2026-03-396"], // a year behind 31 March
    [dmy, "396.3.2026"],
    [ymd, "2026-03-00"],
    [ymd, "2026-March-09"],
    [ymd, "2026-anf-09"],
    [ymd, "226-03-09"],
    [ymd, "6-03-09"],
    [ymd, "09-03-2026"],
    [dmy, "9.3.226"],
    [dmy, "9.3.6"],
    [dmy, "3/14/2026"],
    [mdy, "14/3/2026"],
    [mdy, "2026-03-09"],
    [dmy, "20260309"],
    [dmy, "9_3_2026"],
  ] as const)("not in the order %s: %s", (order, text) => {
    expect(momentOf(text, order)).toBeUndefined();
  });

  it("knows each month by its name", () => {
    const names = "Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec".split(" ");
    const months = names.map((name) => written(`1 ${name} 2026`, dmy)?.slice(5, 7));
    expect(months.map(Number)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]);
  });
});
