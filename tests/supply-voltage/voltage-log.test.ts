import { day, hour, minute, percent, second, volt } from "hvac-install-math/quantity";
import { assessSupplyWeek, voltageLogStatistics } from "hvac-install-math/supply-voltage";
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

  it("counts a reading on the limit as inside", () => {
    const readings = log([
      [0, 207],
      [1, 253],
    ]);
    expect(voltageLogStatistics({ range, readings }).shareOutside.si).toBe(0);
  });

  it.each<[string, unknown, string]>([
    [
      "one reading",
      log([[0, 230]]),
      "readings: 1 readings is not allowed; allowed: at least two readings",
    ],
    ["no list", undefined, "readings: no readings"],
    [
      "times that stand still",
      log([
        [0, 230],
        [0, 231],
      ]),
      "readings[1].elapsed: 0 min is not allowed; allowed: more than 0 min",
    ],
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

describe("assessSupplyWeek", () => {
  /** A reading each minute; the voltage by minute. */
  const minutes = (count: number, at: (i: number) => number) => ({
    nominal: volt(230),
    readings: log(Array.from({ length: count + 1 }, (_, i) => [i, at(i)])),
  });
  const week = 7 * 24 * 60;

  it("passes a good week, and says how much of it lay within ±10 %", () => {
    const result = assessSupplyWeek(minutes(week, (i) => (i < 100 ? 200 : 230)));
    expect(result).toMatchObject({ outcome: "pass", means: 1008, outside10: 10, outside15: 0 });
    expect(result.shareWithin10.in(percent)).toBeCloseTo((100 * 998) / 1008, 9);
  });

  it("takes root mean squares: 1 min at 330 V in 10 does more than its arithmetic mean", () => {
    const spike = (i: number) => (i % 10 === 0 ? 330 : 243);
    // arithmetic 251.7 V, root mean square 253.05 V
    expect(assessSupplyWeek(minutes(week, spike)).outcome).toBe("fail");
  });

  it("does not pass less than a week, and says what is missing", () => {
    const result = assessSupplyWeek(minutes(3 * 24 * 60, () => 230));
    expect(result.outcome).toBe("inconclusive");
    expect(result.reasons[0]?.code).toBe("week-incomplete");
    expect(String(result.reasons[0]?.values.missing)).toBe(String(day(4)));
  });

  it("fails less than a week when the rest cannot make up for it", () => {
    expect(assessSupplyWeek(minutes(60, (i) => (i < 10 ? 190 : 230))).outcome).toBe("fail");
    expect(assessSupplyWeek(minutes(510, () => 200)).outcome).toBe("fail"); // 51 means
    expect(assessSupplyWeek(minutes(500, () => 200)).outcome).toBe("inconclusive"); // 50 means
  });

  it("looks at each week of a longer log", () => {
    const good = 2 * week + 500;
    expect(assessSupplyWeek(minutes(good, () => 231))).toMatchObject({
      outcome: "pass",
      means: 1008,
    });
    const second = assessSupplyWeek(
      minutes(2 * week, (i) => (i > week && i < week + 600 ? 200 : 231)),
    );
    expect(second).toMatchObject({ outcome: "fail", outside10: 60 });
  });

  it("leaves out intervals with an interruption or a gap", () => {
    const interrupted = assessSupplyWeek(minutes(week, (i) => (i >= 10 && i < 30 ? 0 : 230)));
    expect(interrupted).toMatchObject({ outcome: "pass", means: 1006, outside15: 0 });
    const sparse = {
      nominal: volt(230),
      readings: Array.from({ length: 200 }, (_, i) => ({ elapsed: hour(i), voltage: volt(230) })),
    };
    expect(assessSupplyWeek(sparse)).toMatchObject({ outcome: "inconclusive", means: 0 });
  });

  it("reads a log every 5 s as one every minute", () => {
    const fine = Array.from({ length: 721 }, (_, i) => ({
      elapsed: second(5 * i),
      voltage: volt(200),
    }));
    expect(assessSupplyWeek({ nominal: volt(230), readings: fine })).toMatchObject({
      means: 6,
      outside10: 6,
    });
  });

  it("refuses a nominal voltage of 0", () => {
    expect(() => assessSupplyWeek({ ...minutes(2, () => 1), nominal: volt(0) })).toThrow(
      "nominal: 0 V",
    );
  });
});
