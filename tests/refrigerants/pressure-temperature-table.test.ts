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

  test("refuses a bad span, a bad step, a unit of the wrong kind and too many rows", () => {
    const table = (options: object) => () =>
      pressureTemperatureTable(R410A, { ...span, ...options } as never);
    expect(table({ to: degF(200) })).toThrow(/to: 200 °F .*157\.316 °F/);
    expect(table({ from: degF(-200) })).toThrow(/from/);
    expect(table({ to: degF(30) })).toThrow(/number of rows/);
    expect(table({ step: deltaF(0) })).toThrow(/step/);
    expect(table({ step: deltaF(1e-5) })).toThrow(/number of rows/);
    expect(table({ pressureUnit: psig })).toThrow(/pressureUnit.*absolutePressure/);
    expect(() => tableAsCsv(pressureTemperatureTable(R410A, span), -1)).toThrow(/decimals/);
  });
});
