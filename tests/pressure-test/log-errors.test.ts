// The covariance of the errors of a log, part by part: what each stated error means for two points of the log
// (JCGM 100:2008, 5.2 and F.1.2). Memory times and the least lag and share of the swing are common practice, no source.
import { deltaK } from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import { gasErrorsOf } from "../../src/pressure-test/gas-errors.ts";
import type { ReadingErrors } from "../../src/pressure-test/instruments.ts";
import { errorSources } from "../../src/pressure-test/log-errors.ts";
import type { LogPoint } from "../../src/pressure-test/log-points.ts";
import type { UncertaintyPart } from "../../src/pressure-test/uncertainty-part.ts";

const none: ReadingErrors = { each: 0, step: 0, random: 0, common: 0 };

interface Given {
  readonly pressure?: Partial<ReadingErrors & { between: number }>;
  readonly temperature?: Partial<ReadingErrors & { between: number }>;
  readonly volume?: number;
  readonly expansion?: number;
  readonly barometer?: number;
  readonly variance?: number;
  /** One temperature a point, or one for each of two zones. */
  readonly T?: readonly (readonly number[])[];
  readonly t?: readonly number[];
  readonly raw?: readonly number[];
  readonly count?: readonly number[];
}

/** The covariance of two points in a part, where only the given errors are not 0. */
function covariance(given: Given) {
  const { T = [[290], [290], [290]], t = T.map((_, i) => 600 * i) } = given;
  const points = T.map(
    (temperatures, i): LogPoint => ({
      t: t[i] as number,
      level: 1e6,
      raw: given.raw?.[i] ?? 1e6,
      T: temperatures,
      perPascal: 1 + i / 10,
      perKelvin: temperatures.map((_, z) => -3000 + 1000 * z),
      perBeta: 5e6 + i,
      perVolume: temperatures.length > 1 ? temperatures.map((_, z) => 100 + 50 * z + i) : [],
      count: given.count?.[i] ?? 1,
    }),
  );
  const errors = {
    pressure: { ...none, between: 0, perKelvin: 0, ...given.pressure },
    temperature: { ...none, ...given.temperature },
    volume: given.volume ?? 0,
    isGaugeExact: false,
    isThermometerExact: false,
    assumptions: [],
  };
  const { between = 0 } = given.temperature ?? {};
  const gas = {
    ...gasErrorsOf({
      probe: { followsGasWithin: deltaK(between * Math.sqrt(3)) },
      elsewhere: undefined,
      sinceFill: undefined,
      isZoned: T[0]?.length !== 1,
      volume: 0,
      fill: 1e6,
    }),
    states: [],
    volumes: [],
    zoneError: given.volume ?? 0,
  };
  const { variance = 0, expansion = 0, barometer = 0 } = given;
  const sources = errorSources(
    { points, variance },
    { errors, gas, seconds: 0, barometer, expansion },
  );
  return (part: UncertaintyPart, i: number, j: number) =>
    sources.filter((one) => one.part === part).reduce((sum, one) => sum + one.covariance(i, j), 0);
}

describe("errors of single rows", () => {
  it("are independent from point to point, and average out within a point", () => {
    const of = covariance({
      pressure: { random: 30 },
      temperature: { random: 0.1 },
      count: [1, 4, 9],
    });
    expect([of("gauge-reading", 0, 0), of("gauge-reading", 1, 1)]).toEqual([900, 225]);
    expect(of("gauge-reading", 0, 1)).toBe(0);
    // 3000 Pa/K × 0.1 K
    expect(of("thermometer-reading", 0, 0)).toBeCloseTo(300 ** 2, 6);
    expect(of("thermometer-reading", 2, 2)).toBeCloseTo(300 ** 2 / 9, 6);
    expect(of("thermometer-reading", 2, 1)).toBe(0);
  });

  it("of several thermometers add as squares", () => {
    const T = [
      [290, 295],
      [290, 295],
    ];
    const of = covariance({ temperature: { random: 0.1 }, T });
    expect(of("thermometer-reading", 1, 1)).toBeCloseTo(300 ** 2 + 200 ** 2, 6);
  });

  it("count as scatter as far as the stated ones do not explain it", () => {
    const given = { pressure: { random: 30 }, temperature: { random: 0.1 }, count: [1, 2, 1] };
    const of = covariance({ ...given, variance: 1e5 });
    expect(of("scatter", 0, 0)).toBeCloseTo(1e5 - 900 - 9e4, 6);
    expect(of("scatter", 1, 1)).toBeCloseTo((1e5 - 900 - 9e4) / 2, 6);
    expect(covariance({ ...given, variance: 9e4 })("scatter", 0, 0)).toBe(0);
  });
});

describe("errors of all rows", () => {
  it("of the gauge are one common error, seen at the last temperature", () => {
    const of = covariance({ pressure: { common: 1000 } });
    expect(of("gauge-error", 0, 2)).toBeCloseTo(1000 * 1200, 6);
    expect(of("gauge-error", 2, 2)).toBeCloseTo(1200 ** 2, 6);
  });

  it("of the gauge's zero grow from nothing to the stated drift", () => {
    const of = covariance({ pressure: { between: 500 } });
    expect([of("gauge-drift", 0, 2), of("gauge-drift", 1, 2), of("gauge-drift", 2, 2)]).toEqual([
      0,
      250 * 500,
      500 ** 2,
    ]);
  });

  it("of the gauge's zero grow by the stated drift from the first point to the last, whenever that is", () => {
    const of = covariance({ pressure: { between: 500 }, T: [[290], [290]], t: [100, 1100] });
    const size = (i: number) => Math.sqrt(of("gauge-drift", i, i));
    expect(size(1) - size(0)).toBeCloseTo(500, 9);
  });

  it("of the thermometer move all zones together", () => {
    const T = [
      [290, 295],
      [291, 296],
    ];
    const of = covariance({ temperature: { common: 0.5 }, T });
    // (3000 + 2000) Pa/K × 0.5 K
    expect(of("thermometer-error", 0, 1)).toBeCloseTo(2500 ** 2, 6);
  });

  it("of the walls and of each zone's volume are one unknown factor", () => {
    const walls = covariance({ expansion: 1e-5 });
    expect(walls("wall-expansion", 0, 2)).toBeCloseTo(50 * 50.00002, 9);
    const T = [
      [290, 295],
      [291, 296],
    ];
    const of = covariance({ volume: 0.1, T });
    expect(of("zone-volumes", 0, 1)).toBeCloseTo(10 * 10.1 + 15 * 15.1, 9);
    expect(covariance({ volume: 0.1 })("zone-volumes", 0, 1)).toBe(0);
  });

  it("of the barometer are a random walk: the earlier point's part is in the later one's", () => {
    const of = covariance({ barometer: 300 });
    expect([of("barometer", 0, 2), of("barometer", 1, 2), of("barometer", 2, 2)]).toEqual([
      0,
      300 ** 2 / 2,
      300 ** 2,
    ]);
  });
});

describe("a display step", () => {
  const t = [0, 100, 200, 1000];
  const T = t.map(() => [290]);

  it("holds for as long as the reading takes to move on by one", () => {
    // 1000 s for 10 steps of 500 Pa, up and down: one lasts 100 s.
    const raw = [1e6, 1.002e6, 1.001e6, 0.999e6];
    const of = covariance({ pressure: { step: 500 }, t, T, raw });
    expect(of("gauge-reading", 1, 1)).toBe(500 ** 2);
    expect(of("gauge-reading", 1, 2)).toBeCloseTo(500 ** 2 * Math.exp(-1), 3);
    expect(of("gauge-reading", 3, 2)).toBeCloseTo(500 ** 2 * Math.exp(-8), 3);
  });

  it("holds for the whole test where the reading does not move, and a second at least", () => {
    const of = covariance({ pressure: { step: 500 }, t, T });
    expect(of("gauge-reading", 0, 3)).toBeCloseTo(500 ** 2 * Math.exp(-1), 3);
    const wild = covariance({ pressure: { step: 1 }, t, T, raw: [1e6, 1.1e6, 1e6, 1.1e6] });
    expect(wild("gauge-reading", 0, 1)).toBeCloseTo(Math.exp(-100), 20);
  });

  it("of a thermometer counts for each zone by itself", () => {
    const T = [
      [290, 295],
      [290, 296],
    ];
    const of = covariance({ temperature: { step: 0.1 }, T, t: [0, 1000] });
    // Zone 1 stands still: 1000 s. Zone 2 moves by ten steps: 100 s.
    const expected = 300 ** 2 * Math.exp(-1) + 200 ** 2 * Math.exp(-10);
    expect(of("thermometer-reading", 0, 1)).toBeCloseTo(expected, 3);
  });
});

describe("the distance of the thermometer from the gas", () => {
  it("wanders within 20 min and within 2 h, together by the stated distance", () => {
    const of = covariance({ temperature: { between: 0.5 } });
    const each = (3000 * 0.5) ** 2;
    expect(of("gas-temperature", 0, 0)).toBeCloseTo(each, 3); // the bound of one reading, JCGM 100:2008, 4.3.7
    const later = Math.exp(-600 / 1200) + Math.exp(-600 / 7200);
    expect(of("gas-temperature", 0, 1)).toBeCloseTo((each * later) / 2, 3);
  });

  it("is 3 % of the swing at the least, and up to ten times that as far as the stated distance allows", () => {
    const T = [[288], [292], [292], [288]];
    const t = [0, 1e7, 2e7, 3e7]; // so slow that the lag does not count
    const swing = (between: number) => {
      const of = covariance({ temperature: { between }, T, t });
      // Far apart the wander is forgotten: what is left is the swing's, of opposite sign at its two sides.
      return [of("gas-temperature", 0, 1), of("gas-temperature", 0, 3)];
    };
    const share = (part: number) => (3000 * 2 * part) ** 2;
    for (const [between, part] of [
      [0, 0.03],
      [0.2, 0.1],
      [5, 0.3],
    ] as const) {
      const [across, along] = swing(between) as [number, number];
      expect(across / -share(part)).toBeCloseTo(1, 3);
      expect(along / share(part)).toBeCloseTo(1, 3);
    }
  });

  it("is 2 min of lag at the least, by the speed over ± 5 min", () => {
    // 1 mK/s throughout: 0.12 K behind, the same at every point. The swing of ± 0.6 K misses 3 %.
    const T = [[290], [290.6], [291.2]];
    const of = covariance({ T });
    expect(of("gas-temperature", 0, 2)).toBeCloseTo((3000 * 0.12) ** 2 - (3000 * 0.018) ** 2, 3);
    expect(of("gas-temperature", 1, 1)).toBeCloseTo((3000 * 0.12) ** 2, 3);
  });

  it("takes the speed over ± 5 min between the points, and to the ends of the log", () => {
    // A step of 6 K in 100 s. Within 300 s of it on both sides, half of them before it: 6 K/600 s; at the
    // ends the window is cut to 300 s, and is over before the step comes.
    const t = [0, 1000, 1300, 1400, 1700, 3000];
    const T = [[284], [284], [284], [290], [290], [290]];
    const of = covariance({ T, t });
    const swing = (i: number, j: number) =>
      3000 ** 2 * 0.03 ** 2 * (i < 3 ? -3 : 3) * (j < 3 ? -3 : 3);
    const lag = (i: number, j: number) => of("gas-temperature", i, j) - swing(i, j);
    expect(lag(2, 2)).toBeCloseTo((3000 * 120 * 0.01) ** 2, 3);
    expect(lag(3, 3)).toBeCloseTo((3000 * 120 * 0.01) ** 2, 3);
    // At 1000 s and 1700 s the window ends where the step begins.
    for (const i of [0, 1, 4, 5]) expect(lag(i, i)).toBeCloseTo(0, 6);
  });

  it("bears two rows at one time", () => {
    // From the second row on 1 mK/s: 0.12 K behind, less what 3 % of the swing make.
    const of = covariance({ T: [[290], [290], [290.6]], t: [0, 0, 600] });
    for (const i of [0, 1]) {
      const swing = (3000 * 0.03 * 0.2) ** 2;
      expect(of("gas-temperature", i, i) - swing).toBeCloseTo((3000 * 0.12) ** 2, 3);
    }
  });

  it("reads the temperature between two points, where the window ends there", () => {
    // 4 K in 1000 s from 1000 s on, 2 K in 1000 s before: at 1000 s, (300 s × 4 + 300 s × 2) mK/s over 600 s.
    const of = covariance({ T: [[290], [292], [296]], t: [0, 1000, 2000] });
    const mean = (290 + 292 + 296) / 3;
    const swing = (3000 * 0.03 * (292 - mean)) ** 2;
    expect(of("gas-temperature", 1, 1) - swing).toBeCloseTo((3000 * 120 * 3e-3) ** 2, 3);
  });
});
