import { explain } from "hvac-install-math/assessment";
import { english } from "hvac-install-math/language/en";
import { guessLog, readLog } from "hvac-install-math/logs";
import { InvalidInputError, type Kind, micron, psig, second } from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";

const codes = (said: readonly { readonly code: string }[]) =>
  said.map(({ code }) => code.replace("logs.", ""));

const unitName = (unit: string | { readonly symbol: string }) =>
  typeof unit === "string" ? unit : unit.symbol;

/** What is offered for a text: a few words of the format, and the codes of its doubts. */
function offered(text: string, wanted?: Readonly<Record<string, Kind>>) {
  const { format, doubts } = wanted ? guessLog(text, wanted) : guessLog(text);
  const columns = Object.entries(format?.columns ?? {}).map(
    ([name, one]) => `${name}: ${String(one.column)} in ${"unit" in one ? unitName(one.unit) : ""}`,
  );
  return { format, columns, doubts: codes(doubts) };
}

describe("a plain log", () => {
  const text = "elapsed [s],pressure [micron]\n0,275\n5,283.5\n";

  it("is offered with its reasons and without a doubt", () => {
    const { format, reasons, doubts } = guessLog(text, { pressure: "absolutePressure" });
    expect(doubts).toEqual([]);
    expect(format).toStrictEqual({
      separator: ",",
      decimal: ".",
      header: 1,
      firstRow: 2,
      time: { written: "elapsed", column: "elapsed [s]", unit: second },
      columns: { pressure: { column: "pressure [micron]", unit: micron } },
    });
    expect(reasons.map((one) => explain(one, english))).toEqual([
      "Cells are separated by commas: 2 columns.",
      "Line 1 names the columns.",
      "The decimal mark is “.”, as in 283.5.",
      "Column elapsed [s] is the time: time since the start.",
      "Column pressure [micron] is in micron.",
    ]);
  });

  it("is not read until the offer is handed on", () => {
    const { format } = guessLog(text, { pressure: "absolutePressure" });
    expect(format && readLog(text, format).rows[1]?.pressure.in(micron)).toBe(283.5);
  });
});

describe("what a text cannot tell is a doubt", () => {
  it("the zero of a pressure: offered as the kind that is wanted", () => {
    const text = "min;p (psi)\n0;500,1\n5;499,9\n";
    const gauge = offered(text, { pressure: "gaugePressure" });
    expect(gauge.columns).toEqual(["pressure: p (psi) in psig"]);
    expect(gauge.doubts).toEqual(["zero-not-stated"]);
    expect(offered(text, { pressure: "absolutePressure" }).columns).toEqual([
      "pressure: p (psi) in psia",
    ]);
    expect(offered(text).columns).toEqual(["pressure: p (psi) in psig"]);
  });

  it("the order of day and month, unless a date tells it", () => {
    const dates = (d: string) => `Date,Time,P psig\n${d},22:00,500.1\n${d},22:05,500.2\n`;
    expect(offered(dates("03/04/2026")).doubts).toEqual(["date-order-unsure", "zone-unknown"]);
    const told = guessLog(dates("03/14/2026"));
    expect(told.format?.time).toMatchObject({ order: "month-day-year", timeColumn: "Time" });
    expect(codes(told.doubts)).toEqual(["zone-unknown"]);
  });

  it("the zone, unless each time states its offset", () => {
    const at = (end: string) =>
      `t,P psig\n2026-03-09T22:00:00${end},500.1\n2026-03-09T22:05:00${end},500\n`;
    expect(offered(at("")).doubts).toEqual(["zone-unknown"]);
    expect(offered(at("Z")).doubts).toEqual([]);
    expect(offered(`${at("Z")}${at("Z")}`).doubts).toEqual([]); // a second header among the rows
    expect(offered(at("")).format?.time).toMatchObject({ zone: "wall-clock" });
  });

  it("a mark before three digits, and a decimal mark that is never seen", () => {
    expect(offered("s;micron\n0;1.234\n5;1.240\n").doubts).toEqual(["thousands-or-decimal"]);
    expect(offered("s;micron\n0;275\n5;280\n").doubts).toEqual(["decimal-unsure"]);
    expect(offered("s;micron\n0;0.275\n5;0.280\n").doubts).toEqual([]);
  });

  it("a time of day that may be a time since the start", () => {
    expect(offered("t,P psig\n22:00:00,500.1\n22:05:00,500\n").format?.time.written).toBe("clock");
    expect(offered("t,P psig\n0:00:00,500.1\n0:05:00,500\n").format?.time.written).toBe("elapsed");
    expect(offered("t,P psig\n0:00:00,500.1\n0:05:00,500\n").doubts).toEqual(["elapsed-or-clock"]);
  });

  it("a time without a unit, and days of a spreadsheet", () => {
    const text = "n,P psig\n0,500.1\n5,500.2\n";
    expect(offered(text).doubts).toEqual(["time-unit-unknown"]);
    expect(offered("t,P psig\n46110.5625,500.1\n46110.566,500.2\n").doubts).toEqual([
      "serial-unsure",
    ]);
    expect(offered("t d,P psig\n46110.5625,500.1\n46110.566,500.2\n").format?.time.written).toBe(
      "serial",
    );
    expect(offered("t d,P psig\n0.5625,500.1\n0.566,500.2\n").format?.time.written).toBe("elapsed");
  });

  it("columns that are missing, unknown or more than one", () => {
    const text = "s,P1 psig,P2 psig,note\n0,1.5,2.5,3\n5,1.4,2.4,3\n";
    expect(offered(text, { pressure: "gaugePressure" })).toMatchObject({
      columns: ["pressure: P1 psig in psig"],
      doubts: ["two-columns"],
    });
    expect(offered(text, { pressure: "gaugePressure", temperature: "temperature" })).toMatchObject({
      format: undefined,
      doubts: ["two-columns", "column-missing"],
    });
    expect(offered(text)).toMatchObject({
      columns: ["pressure: P1 psig in psig", "pressure2: P2 psig in psig"],
      doubts: ["unit-unknown"],
    });
  });

  it("blank cells, no header, no separator, no time, nothing", () => {
    expect(offered("s,P psig\n0,1.5\n5,\n10,1.4\n").doubts).toEqual(["blank-cells"]);
    expect(offered("0,1.5\n5,1.6\n", { pressure: "gaugePressure" }).doubts).toEqual([
      "no-header",
      "time-unit-unknown",
      "column-missing",
    ]);
    expect(offered("hello\nworld\n").doubts).toContain("no-separator");
    expect(offered("P psig,T °F\n1.5,60.1\n1.5,60.1\n").doubts).toContain("no-time");
    expect(offered("").format).toBeUndefined();
    expect(offered("n,note\n0,3\n5,4\n")).toEqual({
      format: undefined,
      columns: [],
      doubts: ["time-unit-unknown", "unit-unknown"],
    });
  });
});

describe("what files have besides their rows", () => {
  it("a preamble, a remark, a byte-order mark, other line endings", () => {
    const text =
      "\ufeff# invented\r\nDevice;none\r\n\r\nZeit;p [bar g];t [°C]\r\n29.03.2026 01:50;41,37;12,4\r\n29.03.2026 01:55;41,31;12,1\r\n";
    const wanted = { pressure: "gaugePressure", temperature: "temperature" } as const;
    const { format, doubts } = wanted ? guessLog(text, wanted) : guessLog(text);
    expect(codes(doubts)).toEqual(["zone-unknown"]);
    expect(format).toMatchObject({
      header: 4,
      firstRow: 5,
      remark: "#",
      separator: ";",
      decimal: ",",
    });
    expect(format && readLog(text, format).rows.length).toBe(2);
  });

  it("a line of units under the titles", () => {
    const text = "Time\tPressure\tGas temp\nmin\tpsig\tdegF\n0\t500.1\t60.2\n5\t500.0\t60.1\n";
    const { columns, doubts, format } = offered(text);
    expect(doubts).toEqual([]);
    expect(columns).toEqual(["pressure: Pressure in psig", "temperature: Gas temp in °F"]);
    expect(format && readLog(text, format).rows[1]?.elapsed.in(second)).toBe(300);
  });

  it("decimal commas between semicolons do not make columns", () => {
    const text = "s;P psig;T °C\n0;500,1;12,5\n5;500,2;12,6\n";
    expect(offered(text).format).toMatchObject({ separator: ";", decimal: "," });
  });

  it("words beside the figures", () => {
    const text = "# invented\nelapsed [s],state,voltage [V]\n0,rest,243.6\n2,load,241.0\n";
    expect(offered(text, { voltage: "voltage" })).toMatchObject({
      columns: ["voltage: voltage [V] in V"],
      doubts: [],
    });
  });

  it("quoted cells", () => {
    const text = '"s","P psig"\n"0","500,1"\n"5","500,2"\n';
    const { format } = guessLog(text, { pressure: "gaugePressure" });
    expect(format).toMatchObject({ separator: ",", decimal: "," });
    expect(format && readLog(text, format).rows[0]?.pressure.in(psig)).toBe(500.1);
  });
});

it("looks at the beginning only", () => {
  const start = `s,micron\n${Array.from({ length: 4000 }, (_, i) => `${i},2.5`).join("\n")}`;
  expect(guessLog(`${start}\n${"x;y;z\n".repeat(9000)}`)).toEqual(guessLog(start));
});

it("refuses what is no text and no wish", () => {
  expect(() => guessLog(undefined as never)).toThrow(InvalidInputError);
  expect(() => guessLog("", { pressure: "torque" })).toThrow(/^wanted\.pressure/);
  expect(() => guessLog("", { pressure: 3 } as never)).toThrow(/^wanted\.pressure/);
  expect(() => guessLog("", 3 as never)).toThrow(/^wanted/);
});
