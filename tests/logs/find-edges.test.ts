// Where a watch starts, just within and just beyond the stated thresholds, which are common practice, no source.

import { findFill, findIsolation } from "hvac-install-math/logs";
import { kPag, micron, minute, pascalAbsolute, second, volt } from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import { turningPoints } from "../../src/logs/turning-points.ts";

const found = (watch: ReturnType<typeof findFill> | ReturnType<typeof findIsolation>) => ({
  start: watch.start,
  rows: watch.rows.length,
  said: [...watch.reasons, ...watch.doubts].map(({ code, values }) => {
    const words = Object.values(values).map(String);
    return [code.slice(5), ...words].join(" ");
  }),
});
const nitrogen = (rows: readonly (readonly [min: number, kPa: number])[]) =>
  found(findFill(rows.map(([t, p]) => ({ elapsed: minute(t), pressure: kPag(p) }))));
const vacuum = (pressures: readonly number[]) =>
  found(findIsolation(pressures.map((p, i) => ({ elapsed: second(5 * i), pressure: micron(p) }))));

describe("a filling", () => {
  it("is none below 1 kPa", () => {
    expect(
      nitrogen([
        [0, 0],
        [5, 0.999],
      ]),
    ).toEqual({ start: undefined, rows: 0, said: ["no-fill"] });
    expect(
      nitrogen([
        [0, 0],
        [5, 1],
      ]).start,
    ).toBe(1);
  });

  it.each<[string, [number, number][], number]>([
    [
      "more than a fiftieth within ten minutes",
      [
        [0, 97.9],
        [5, 99],
        [10, 100],
      ],
      2,
    ],
    [
      "a fiftieth",
      [
        [0, 98],
        [5, 99],
        [10, 100],
      ],
      0,
    ],
    [
      "more, but over more than ten minutes",
      [
        [0, 97.9],
        [5, 99],
        [10.1, 100],
      ],
      0,
    ],
    [
      "more from row to row, however far apart",
      [
        [0, 97.9],
        [60, 100],
      ],
      1,
    ],
  ])("is a rise by %s", (_, rows, start) => {
    const { start: at, said } = nitrogen(rows);
    expect(at).toBe(start);
    expect(said.includes("starts-filled")).toBe(start === 0);
  });

  it("ends at the first of the highest rows, in rows an hour apart too", () => {
    expect(
      nitrogen([
        [0, 0],
        [60, 500],
        [120, 500],
        [180, 499],
      ]),
    ).toEqual({
      start: 1,
      rows: 3,
      said: ["highest 60 min 500 kPag", "gas-settles", "between-rows 60 min"],
    });
    expect(
      nitrogen([
        [0, 0],
        [2, 300],
        [4, 500],
        [6, 490],
        [8, 495],
      ]).start,
    ).toBe(2);
  });

  it("has no row behind it where it is the last", () => {
    expect(
      nitrogen([
        [0, 0],
        [5, 500],
      ]),
    ).toEqual({
      start: 1,
      rows: 1,
      said: ["highest 5 min 500 kPag", "gas-settles"],
    });
  });

  it("is counted", () => {
    const steps = [0, 100, 100, 100, 300, 300, 300, 500, 500, 500];
    const { start, said } = nitrogen(steps.map((p, i) => [6 * i, p]));
    expect(start).toBe(7);
    expect(said).toContain("several-fills 3");
    expect(
      nitrogen([
        [0, 0],
        [5, 500],
        [10, 500],
      ]).said.join(),
    ).not.toMatch(/several|filled/);
  });

  it("is let off with a step down by more than a twentieth of the highest row", () => {
    const off = (p: number) =>
      nitrogen([
        [0, 0],
        [5, 100],
        [10, 100],
        [15, p],
        [20, p],
      ]);
    expect(off(95)).toMatchObject({ start: 1, rows: 4 });
    expect(off(94.9)).toMatchObject({ start: 1, rows: 2 });
    expect(off(94.9).said).toContain("ends-before 10 min");
    expect(off(95).said.join()).not.toMatch(/ends-before/);
  });
});

it("a pressure that is none is asked for as either kind", () => {
  const rows = [{ elapsed: minute(0), pressure: volt(1) }];
  expect(() => findFill(rows as never)).toThrow(/a gauge pressure or an absolute pressure/);
});

describe("an isolation", () => {
  it.each<[string, number[], number | undefined]>([
    ["more than a tenth", [1000, 270, 297.1, 297.1], 1],
    ["less than a tenth", [1000, 270, 296.9, 296.9], undefined],
    ["more than 5 micron where a tenth is less", [1000, 20, 25.1, 25.1], 1],
    ["less than 5 micron where a tenth is less", [1000, 20, 24.9, 24.9], undefined],
  ])("is followed by a rise of %s", (_, pressures, start) => {
    expect(vacuum(pressures).start).toBe(start);
  });

  it("is followed by a rise of a tenth: 1000 Pa and 100 Pa", () => {
    const rows = [9000, 1000, 1100].map((p, i) => ({
      elapsed: second(5 * i),
      pressure: pascalAbsolute(p),
    }));
    expect(findIsolation(rows).start).toBe(1);
  });

  it.each<[string, number[], ReturnType<typeof found>]>([
    [
      "at the last of the lowest rows",
      [1000, 270, 270, 400, 420],
      { start: 2, rows: 3, said: ["lowest 10 s 270 micron", "between-rows 5 s"] },
    ],
    [
      "at the first row",
      [270, 400, 420],
      { start: 0, rows: 3, said: ["lowest 0 s 270 micron", "starts-isolated", "between-rows 5 s"] },
    ],
    [
      "at the last of several lows",
      [1000, 270, 400, 260, 400, 250, 400],
      {
        start: 5,
        rows: 2,
        said: ["lowest 25 s 250 micron", "several-rises 3", "between-rows 5 s"],
      },
    ],
    [
      "up to the first of the highest rows before the pump is on again",
      [1000, 270, 400, 420, 420, 300, 200],
      {
        start: 1,
        rows: 3,
        said: ["lowest 5 s 270 micron", "between-rows 5 s", "ends-before 15 s"],
      },
    ],
    [
      "up to the last row where nothing falls by a tenth behind the highest",
      [1000, 270, 400, 420, 415],
      { start: 1, rows: 4, said: ["lowest 5 s 270 micron", "between-rows 5 s"] },
    ],
    ["nowhere in a pump-down", [1000, 400, 270], { start: undefined, rows: 0, said: ["no-rise"] }],
  ])("is found %s", (_, pressures, expected) => expect(vacuum(pressures)).toEqual(expected));
});

describe("turning points", () => {
  it.each<[number[], string]>([
    [[], ""],
    [[5], ""],
    [[0, 10, 0], ""], // not further apart than the noise
    [[0, 11], "low 0, high 1"],
    [[11, 0], "high 0, low 1"],
    [[0, 20, 0], "low 0, high 1, low 2"],
    [[20, 0, 20], "high 0, low 1, high 2"],
    [[0, 20, 12, 30, 21, 25], "low 0, high 3"],
    [[0, 0, 20, 20, 5, 5], "low 1, high 2, low 5"],
    [[5, 8, 2, 20, 15, 9, 30], "low 2, high 3, low 5, high 6"],
  ])("of %j: %s", (values, turns) => {
    const points = turningPoints(values, (low, high) => high - low > 10);
    expect(points.map(({ at, isHigh }) => `${isHigh ? "high" : "low"} ${at}`).join(", ")).toBe(
      turns,
    );
  });
});
