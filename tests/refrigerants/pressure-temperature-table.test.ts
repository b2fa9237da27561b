import {
  standardAtmosphere as atmosphere,
  atmosphereAtAltitude,
  degC,
  degF,
  deltaC,
  deltaF,
  ft,
  psia,
  psig,
} from "hvac-install-math/quantity";
import {
  pressureTemperatureTable,
  R32,
  R407C,
  R410A,
  tableAsCsv,
  tableAsMarkdown,
} from "hvac-install-math/refrigerants";
import { describe, expect, test } from "vitest";

describe("a pressure-temperature table", () => {
  const span = { from: degF(40), to: degF(44.5), step: deltaF(0.5) };

  test("has a row for every step and does not pass its end", () => {
    const { rows } = pressureTemperatureTable(R410A, { ...span, atmosphere });
    expect(rows.length).toBe(10);
    expect(rows.at(-1)?.temperature.in(degF)).toBe(44.5);
    const short = pressureTemperatureTable(R410A, { ...span, step: deltaF(4), atmosphere });
    expect(short.rows.map(({ temperature }) => temperature.in(degF))).toEqual([40, 44]);
  });

  test("is gauge for the stated air, so a table for altitude reads higher", () => {
    const sea = pressureTemperatureTable(R410A, { ...span, atmosphere });
    const high = pressureTemperatureTable(R410A, {
      ...span,
      atmosphere: atmosphereAtAltitude(ft(5000)),
    });
    expect(sea.pressureUnit.symbol).toBe("psig");
    expect((high.rows[0]?.dew.in(psig) ?? 0) - (sea.rows[0]?.dew.in(psig) ?? 0)).toBeCloseTo(
      2.47,
      2,
    );
  });

  test("is absolute without an atmosphere, in the unit asked for", () => {
    const table = pressureTemperatureTable(R32, {
      from: degC(-60),
      to: degC(60),
      step: deltaC(1),
      pressureUnit: psia,
    });
    expect(table.rows.length).toBe(121);
    expect(table.rows[0]?.bubble.unit.symbol).toBe("psia");
  });

  test("has bubble above dew in every row of a blend", () => {
    const { rows } = pressureTemperatureTable(R407C, {
      from: degC(-40),
      to: degC(60),
      step: deltaC(5),
      atmosphere,
    });
    for (const { bubble, dew } of rows) expect(bubble > dew).toBe(true);
  });

  test("prints as Markdown and as CSV", () => {
    const table = pressureTemperatureTable(R407C, {
      from: degC(0),
      to: degC(0.3),
      step: deltaC(0.1),
    });
    expect(tableAsMarkdown(table, 0)).toBe(
      "| R-407C °C | bubble kPaa | dew kPaa |\n| ---: | ---: | ---: |\n| 0 | 568 | 461 |\n| 0.1 | 570 | 462 |\n| 0.2 | 572 | 464 |\n| 0.3 | 573 | 466 |\n",
    );
    expect(tableAsCsv(table, 0).split("\n")[0]).toBe("R-407C °C,bubble kPaa,dew kPaa");
  });

  test("speaks the units of the place: psi for °F, kPa otherwise, gauge where the air is given", () => {
    const unit = (options: object) =>
      pressureTemperatureTable(R410A, { ...span, ...options } as never).pressureUnit.symbol;
    const metric = { from: degC(0), to: degC(5), step: deltaC(5) };
    expect([unit({ atmosphere }), unit({}), unit({ ...metric, atmosphere }), unit(metric)]).toEqual(
      ["psig", "psia", "kPag", "kPaa"],
    );
    expect(unit({ ...metric, atmosphere, pressureUnit: psig })).toBe("psig");
  });

  test("has one row where it ends as it starts, and as many as the library allows", () => {
    const rows = (to: number, step: number) =>
      pressureTemperatureTable(R410A, { ...span, to: degF(to), step: deltaF(step) }).rows.length;
    expect(rows(40, 1)).toBe(1);
    expect(rows(40 + 9.999, 0.001)).toBe(10_000);
    expect(() => rows(50, 0.001)).toThrow(
      "step: 10001 is not allowed; allowed: at least 1 and at most 10000 (refrigerants.number-of-rows)",
    );
    expect(() => rows(30, 1)).toThrow("step: -9 is not allowed");
  });

  test("prints what a table is made of and refuses what is none, by name", () => {
    const table = pressureTemperatureTable(R410A, { ...span, atmosphere });
    const [row] = table.rows;
    const printed = (change: object) => () => tableAsCsv({ ...table, ...change } as never);
    expect(() => tableAsMarkdown(undefined as never)).toThrow(/^table: undefined/);
    expect(printed({ designation: 410 })).toThrow(/^table\.designation: 410/);
    expect(printed({ temperatureUnit: psia })).toThrow(/^table\.temperatureUnit: /);
    expect(printed({ pressureUnit: undefined })).toThrow(/^table\.pressureUnit: undefined/);
    expect(printed({ pressureUnit: psia })).toThrow(/^table\.rows\[0\]\.bubble: /);
    expect(printed({ rows: undefined })).toThrow(/^table\.rows: undefined/);
    expect(printed({ rows: [null] })).toThrow(/^table\.rows\[0\]: null/);
    expect(printed({ rows: [{ ...row, temperature: 40 }] })).toThrow(
      /^table\.rows\[0\]\.temperature: 40/,
    );
    expect(printed({ rows: [row, { ...row, bubble: 1 }] })).toThrow(/^table\.rows\[1\]\.bubble: 1/);
    expect(printed({ rows: [{ ...row, dew: undefined }] })).toThrow(
      /^table\.rows\[0\]\.dew: undefined/,
    );
    expect(() => tableAsCsv(table, 13)).toThrow(
      "decimals: 13 is not allowed; allowed: at least 0 and at most 12",
    );
    expect(tableAsCsv(table, 12).split("\n")[1]).toMatch(/^40,\d+\.\d{12},\d+\.\d{12}$/);
    expect(tableAsCsv(table).split("\n")[1]).toMatch(/^40,\d+\.\d,\d+\.\d$/);
    expect(tableAsMarkdown(table).split("\n")[2]).toMatch(/^\| 40 \| \d+\.\d \| \d+\.\d \|$/);
  });

  test("refuses a bad span, a bad step, a unit of the wrong kind and too many rows", () => {
    const table = (options: object) => () =>
      pressureTemperatureTable(R410A, { ...span, ...options } as never);
    expect(table({ to: degF(200) })).toThrow(/to: 200 °F .*157\.316 °F/);
    expect(table({ from: degF(-200) })).toThrow(/from/);
    expect(table({ to: degF(30) })).toThrow(/number-of-rows/);
    expect(table({ step: deltaF(0) })).toThrow(
      "step: 0 Δ°F is not allowed; allowed: more than 0 Δ°F",
    );
    expect(table({ step: deltaF(1e-5) })).toThrow(/number-of-rows/);
    expect(table({ pressureUnit: psig })).toThrow(
      "allowed: a unit of absolutePressure (refrigerants.table-needs-atmosphere)",
    );
    expect(table({ pressureUnit: null })).toThrow(/^pressureUnit: null/);
    expect(table({ atmosphere, pressureUnit: psia })).toThrow("allowed: a unit of gaugePressure");
    expect(table({ atmosphere: psia(0) })).toThrow("atmosphere: 0 psia is not allowed");
    expect(() => pressureTemperatureTable(R410A, undefined as never)).toThrow(/^options: /);
    expect(() => tableAsCsv(pressureTemperatureTable(R410A, span), -1)).toThrow(/decimals/);
  });
});
