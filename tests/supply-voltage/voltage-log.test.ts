import { minute, volt } from "hvac-install-math/quantity";
import { voltageLogStatistics } from "hvac-install-math/supply-voltage";
import { describe, expect, it } from "vitest";

const range = { minimum: volt(207), maximum: volt(253) };
const log = (rows: [minutes: number, volts: number][]) =>
  rows.map(([t, v]) => ({ elapsed: minute(t), voltage: volt(v) }));

describe("voltageLogStatistics", () => {
  it("weights each reading by half the time to its neighbours", () => {
    const seen = voltageLogStatistics({
      range,
      readings: log([
        [0, 230],
        [10, 260],
        [30, 230],
        [40, 200],
        [50, 230],
      ]),
    });
    expect(seen.duration.toString(minute)).toBe("50 min");
    expect(seen.timeAbove.toString(minute)).toBe("15 min");
    expect(seen.timeBelow.toString(minute)).toBe("10 min");
    expect(seen.shareOutside.toString()).toBe("50 %");
    // 230 for 25 of 50 min, 260 for 15, 200 for 10
    expect(seen.mean.toString()).toBe("233 V");
    expect(seen.median.toString()).toBe("230 V");
    expect([seen.minimum, seen.maximum, seen.percentile5, seen.percentile95].map(String)).toEqual([
      "200 V",
      "260 V",
      "200 V",
      "260 V",
    ]);
  });

  it("gives percentiles by nearest rank on an even log", () => {
    const readings = log(Array.from({ length: 102 }, (_, i) => [i, 200 + i]));
    const seen = voltageLogStatistics({ range, readings });
    expect(seen.median.toString()).toBe("250 V");
    expect(seen.percentile5.in(volt)).toBeCloseTo(205, 0);
    expect(seen.percentile95.in(volt)).toBeCloseTo(296, 0);
    expect(seen.count).toBe(102);
  });

  it("does not mind where the clock of the logger began", () => {
    const rows = [230, 260, 230, 200, 230].map((v, i): [number, number] => [i, v]);
    const from = (start: number) =>
      voltageLogStatistics({ range, readings: log(rows.map(([t, v]) => [t + start, v])) });
    expect(from(30)).toEqual(from(0));
  });

  it("counts a reading on the limit as inside", () => {
    const readings = log([
      [0, 207],
      [1, 253],
    ]);
    expect(voltageLogStatistics({ range, readings }).shareOutside.si).toBe(0);
  });

  it.each<[string, unknown, string]>([
    ["one reading", log([[0, 230]]), "readings.length: 1 is not allowed; allowed: at least 2"],
    ["no list", undefined, "readings: undefined is not allowed; allowed: an array"],
    [
      "times that stand still",
      log([
        [0, 230],
        [0, 231],
      ]),
      "readings[1].elapsed: 0 min is not allowed; allowed: more than 0 min",
    ],
    [
      "times that go back",
      log([
        [5, 230],
        [4, 231],
      ]),
      "readings[1].elapsed: 4 min is not allowed; allowed: more than 5 min",
    ],
    ["a hole in the log", [undefined, undefined], "readings[0].elapsed: undefined"],
    [
      "a missing time",
      [{ voltage: volt(230) }, { voltage: volt(230) }],
      "readings[0].elapsed: undefined",
    ],
    [
      "a negative voltage",
      log([
        [0, 230],
        [1, -1],
      ]),
      "readings[1].voltage: -1 V",
    ],
  ])("refuses %s", (_, readings, message) => {
    expect(() => voltageLogStatistics({ range, readings: readings as never })).toThrow(message);
  });

  it("refuses no range", () => {
    const readings = log([
      [0, 230],
      [1, 230],
    ]);
    expect(() => voltageLogStatistics({ readings, range: undefined as never })).toThrow(
      "range.minimum: undefined is not allowed; allowed: the kind voltage",
    );
  });

  it("refuses a range upside down", () => {
    const upsideDown = { minimum: volt(253), maximum: volt(207) };
    expect(() =>
      voltageLogStatistics({
        range: upsideDown,
        readings: log([
          [0, 1],
          [1, 1],
        ]),
      }),
    ).toThrow("range.maximum: 207 V is not allowed; allowed: at least 253 V");
  });
});
