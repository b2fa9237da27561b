import { explain } from "hvac-install-math/assessment";
import { english } from "hvac-install-math/language/en";
import {
  assessPressureLog,
  assessPressureTest,
  expectedTestPressure,
  type LogReading,
  leakGas,
  type PressureTestAssessment,
  type PressureTestLog,
  refrigerantEquivalent,
} from "hvac-install-math/pressure-test";
import {
  degF,
  deltaF,
  hour,
  kPaa,
  liter,
  minute,
  percent,
  psi,
  psia,
  psig,
  type Quantity,
  standardAtmosphere,
} from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import { nitrogenDensity } from "../../src/property-model/nitrogen.ts";

/** A night: 80 °F down to 60 °F and back, with a steady loss per hour, read exactly. */
type GaugeRow = LogReading & { readonly pressure: Quantity<"gaugePressure"> };
const log = (lossPerHour: number, hours = 12, rows = 73): GaugeRow[] =>
  Array.from({ length: rows }, (_, i) => {
    const t = (hours * i) / (rows - 1);
    const temperature = degF(70 + 10 * Math.cos((2 * Math.PI * t) / hours));
    const sealed = expectedTestPressure({
      pressure: psig(500),
      temperature: degF(80),
      laterTemperature: temperature,
      atmosphere: standardAtmosphere,
    });
    return { elapsed: hour(t), temperature, pressure: sealed.minus(psi(lossPerHour * t)) };
  });
const test = (readings: readonly LogReading[], change: object = {}): PressureTestLog => ({
  readings,
  instruments: {
    pressure: { accuracy: psi(2), resolution: psi(0.1), drift: psi(0.3) },
    temperature: { accuracy: deltaF(1), resolution: deltaF(0.1), followsGasWithin: deltaF(0.5) },
  },
  volume: liter(3),
  atmosphere: standardAtmosphere,
  ...change,
});
const rowOf = (hours: number, pressure: number, temperatures: number[]): LogReading => ({
  elapsed: hour(hours),
  pressure: psig(pressure),
  temperature: temperatures.map((one) => degF(one)),
});
const limit = { criterion: { maximumDrop: psi(3) } };

describe("a log", () => {
  it("of a tight system passes a stated limit", () => {
    const verdict = assessPressureLog(test(log(0), limit));
    expect(verdict.outcome).toBe("pass");
    expect(Math.abs(verdict.correctedDrop.value.in(psi))).toBeLessThan(0.01);
    expect(verdict.misfit).toBeLessThan(1);
  });

  it("of a leaking system fails, with the drop and the rate", () => {
    const verdict = assessPressureLog(test(log(0.5), limit));
    expect([verdict.outcome, verdict.cause]).toEqual(["fail", "leak"]);
    expect(verdict.correctedDrop.value.in(psi)).toBeCloseTo(6, 0);
    const { leakRate } = verdict;
    expect(leakRate?.value.si).toBeCloseTo((6 * 6894.757 * 3e-3) / 43_200, 4);
  });

  it("gives the drop of a fast leak, whose course is bent", () => {
    const leak = log(0).map((row, i, all) => ({
      ...row,
      // Hyperbolic: 1/p grows linearly to a loss of 30 %.
      pressure: psia((row.pressure.in(psig) + 14.696) / (1 + (0.3 / 0.7) * (i / (all.length - 1)))),
    }));
    const verdict = assessPressureLog(test(leak));
    expect(verdict.correctedDrop.value.in(psi) / (0.3 * 514.696)).toBeCloseTo(1, 2);
    expect(verdict.misfit).toBeLessThan(1.5);
  });

  it("agrees with two readings when it only has two", () => {
    const rows = log(0.2, 12, 73);
    const [start, end] = [rows[0] as LogReading, rows[40] as LogReading];
    const two = assessPressureTest({ ...test([]), start, end });
    const both = assessPressureLog(test([start, end]));
    expect(both.correctedDrop.value.si).toBeCloseTo(two.correctedDrop.value.si, 0);
    const ratio =
      both.correctedDrop.standardUncertainty.si / two.correctedDrop.standardUncertainty.si;
    expect(ratio).toBeGreaterThan(0.8);
    expect(ratio).toBeLessThan(2);
  });

  it.each([1, 5, 20])("counts the distance from the gas once in two readings, %d K apart", (K) => {
    // Nothing stated but instruments: within ±1 K in each reading, and a part of the swing (uncertainty-budget.test.ts).
    const [start] = log(0) as [LogReading];
    const temperature = { accuracy: deltaF(1), resolution: deltaF(0.1) };
    const { instruments, ...rest } = test([]);
    const setup = { ...rest, instruments: { ...instruments, temperature } };
    const end = {
      ...start,
      elapsed: hour(2),
      temperature: degF(80 - 1.8 * K),
    };
    const of = ({ uncertaintyBudget }: PressureTestAssessment) =>
      uncertaintyBudget.find(({ part }) => part === "gas-temperature")?.standardUncertainty.si ?? 0;
    const two = of(assessPressureTest({ ...setup, start, end }));
    const both = of(assessPressureLog({ ...setup, readings: [start, end] }));
    expect(both / two).toBeCloseTo(1, 1);
  });

  it("does not mind the order of its rows, repeated times, gaps, or ten thousand rows", () => {
    const rows = log(0.5);
    const whole = assessPressureLog(test(rows)).correctedDrop.value.in(psi);
    const shuffled = [...rows].sort((a, b) => (a.pressure.si % 7) - (b.pressure.si % 7));
    expect(assessPressureLog(test(shuffled)).correctedDrop.value.in(psi)).toBeCloseTo(whole, 9);
    const twice = assessPressureLog(test([...rows, ...rows.slice(3, 9)]));
    expect(twice.correctedDrop.value.in(psi)).toBeCloseTo(whole, 1);
    const gap = rows.filter((_, i) => i < 20 || i > 45);
    expect(assessPressureLog(test(gap)).correctedDrop.value.in(psi)).toBeCloseTo(whole, 1);
    const long = assessPressureLog(test(log(0.5, 12, 10_001)));
    expect(long.corrected).toHaveLength(100);
    expect(long.correctedDrop.value.in(psi)).toBeCloseTo(whole, 1);
  });

  it("corrects its course to the last temperature, in the unit of the gauge", () => {
    const { corrected } = assessPressureLog(test(log(0)));
    for (const { pressure } of corrected) {
      expect(pressure.unit.symbol).toBe("psig");
      expect(pressure.si).toBeCloseTo(psig(500).si, -2);
    }
  });

  it("says so when it scatters more than one log in a thousand would by chance", () => {
    // ±1.5 psi in waves of 4 h beside a thermometer that is stated to follow within 0.5 °F, 0.5 psi.
    const rough = log(0).map((row, i) => ({
      ...row,
      pressure: row.pressure.plus(psi(1.5 * Math.sin((2 * Math.PI * i) / 24))),
    }));
    const verdict = assessPressureLog(test(rough, limit));
    expect(verdict.misfit).toBeGreaterThan(1.3);
    const said = verdict.reasons.find(({ code }) => code === "pressure-test.log-misfit");
    const { misfit = 0 } = (said?.values ?? {}) as { misfit?: number };
    expect(misfit / (verdict.misfit as number)).toBeCloseTo(1, 2);
    expect(verdict.outcome).not.toBe("pass");
    const still = assessPressureLog(test(log(0), limit)).reasons;
    expect(still.map(({ code }) => code)).not.toContain("pressure-test.log-misfit");
  });

  it("passes no gauge that stands still while the temperature moves", () => {
    // By the gas law 500 psig + 14.7 psi move by 0.95 psi per °F at 80 °F (540 °R), real nitrogen by a little
    // more: 10 °F and 20 °F of swing are no less than 9.5 psi and 19 psi. That the gauge then proves nothing:
    // common practice, no source.
    const held = (swing: number, change: object = {}, shown = (_: number) => 500) =>
      assessPressureLog(
        test(
          Array.from({ length: 73 }, (_, i) => ({
            elapsed: hour(i / 6),
            pressure: psig(shown(i)),
            temperature: degF(75 + swing * Math.cos((2 * Math.PI * i) / 72)),
          })),
          { ...limit, ...change },
        ),
      );
    const { pressure, temperature } = test([]).instruments;
    for (const swing of [5, 10]) {
      // 0.5 K from the gas: all of it fits into one leak and one temperature.
      const follows = { accuracy: deltaF(1), followsGasWithin: deltaF(0.9) };
      const instruments = { pressure, temperature: follows };
      const verdict = held(swing, { instruments });
      expect(verdict.misfit).toBeLessThan(2);
      expect([verdict.outcome, verdict.reasons[0]?.code]).toEqual([
        "inconclusive",
        "pressure-test.pressure-still",
      ]);
      const [first] = verdict.reasons as unknown as {
        values: { moved: Quantity<"pressureDifference"> };
      }[];
      const moved = first?.values.moved as Quantity<"pressureDifference">;
      expect(moved.in(psi) / (1.9 * swing)).toBeGreaterThan(1);
      expect(moved.in(psi) / (1.9 * swing)).toBeLessThan(1.15);
    }
    const codes = (verdict: ReturnType<typeof held>) => verdict.reasons.map(({ code }) => code);
    // A last digit that flickers is still, up to a fifth of those 9.5 psi.
    expect(codes(held(5, {}, (i) => 500 + 0.2 * (i % 2)))).toContain(
      "pressure-test.pressure-still",
    );
    expect(codes(held(5, {}, (i) => 500 + 3.5 * (i % 2)))).not.toContain(
      "pressure-test.pressure-still",
    );
    // Where no step is stated, any change counts.
    const stepless = { instruments: { pressure: { accuracy: psi(2) }, temperature } };
    expect(codes(held(5, stepless))).toContain("pressure-test.pressure-still");
    expect(codes(held(5, stepless, (i) => 500 + 3.5 * (i % 2)))).not.toContain(
      "pressure-test.pressure-still",
    );
    // Two clamps of which it isn't known how well they follow the gas, hourly: 0.95 psi per °F on 9 °F of the two
    // fifths outdoors and 3.3 °F indoors are 5.3 psi. That cannot hide in the gas, whatever hides there.
    const zoned = (follows: number) => {
      const rows = Array.from({ length: 25 }, (_, i) => {
        const wave = (1 - Math.cos((2 * Math.PI * i) / 24)) / 2;
        const gas = 500 - follows * 0.95 * (0.4 * 9 + 0.6 * 3.3) * wave;
        return rowOf(i, Math.round(10 * gas + (i % 2)) / 10, [47 - 9 * wave, 68 - 3.3 * wave]);
      });
      const shares = { zoneShares: [percent(40), percent(60)], sinceFill: minute(45) };
      const clamps = { pressure, temperature: { accuracy: deltaF(1), resolution: deltaF(0.1) } };
      return assessPressureLog(test(rows, { ...shares, instruments: clamps, ...limit }));
    };
    expect(codes(zoned(0))).toContain("pressure-test.pressure-still");
    expect(zoned(0).outcome).toBe("inconclusive");
    expect(codes(zoned(1))).not.toContain("pressure-test.pressure-still");
    // Rows that scatter by chance have no course: ±1 °F by turns, and the gas stood still.
    const scattered = Array.from({ length: 25 }, (_, i) => rowOf(i, 500, [70 + ((i * 7) % 5) / 2]));
    const rough = { pressure, temperature: { accuracy: deltaF(1), resolution: deltaF(0.1) } };
    expect(
      codes(assessPressureLog(test(scattered, { instruments: rough, ...limit }))),
    ).not.toContain("pressure-test.pressure-still");
    // Nothing to be seen: a swing within the thermometer's distance from the gas, or within a wide step.
    const calm = held(0.5, { criterion: { maximumDrop: psi(5) } });
    expect(calm.outcome).toBe("pass");
    expect(codes(calm)).not.toContain("pressure-test.pressure-still");
    const wide = { pressure: { accuracy: psi(2), resolution: psi(10) }, temperature };
    expect(codes(held(5, { instruments: wide }))).not.toContain("pressure-test.pressure-still");
    // What broke its limit stays failed.
    const falling = assessPressureLog(test([rowOf(0, 500, [60]), rowOf(12, 500, [80])], limit));
    expect(falling.outcome).toBe("fail");
    expect(falling.reasons.map(({ code }) => code)).toContain("pressure-test.pressure-still");
  });

  it("asks about two thermometers that changed places at one reading", () => {
    // A house of 68 °F and a night of 47 °F don't trade their temperatures within an hour: common practice, no source.
    const zoned = (last: number[], shares: object = { zoneShares: [percent(40), percent(60)] }) =>
      assessPressureLog(
        test([rowOf(0, 500, [47, 68]), rowOf(23, 500, [47, 67.6]), rowOf(24, 500, last)], {
          ...shares,
          volume: liter(3),
          sinceFill: hour(1),
          ...limit,
        }),
      );
    const swapped = zoned([67.4, 46.3]);
    expect(swapped.outcome).toBe("inconclusive");
    expect(swapped.reasons.map((one) => explain(one, english))).toContain(
      "In the reading at 24 h the temperatures changed places: 47 °F to 67.4 °F, and back on the other thermometer.",
    );
    expect(zoned([46.3, 67.4]).outcome).toBe("pass");
    // Only one changed, both changed alike, or too little to tell.
    for (const last of [
      [67.4, 67.4],
      [60, 80],
      [50, 65],
    ]) {
      const codes = zoned(last).reasons.map(({ code }) => code);
      expect(codes, String(last)).not.toContain("pressure-test.zones-swapped");
    }
    const two = assessPressureTest({
      ...test([]),
      ...limit,
      zoneShares: [percent(40), percent(60)],
      start: rowOf(0, 500, [47, 68]),
      end: rowOf(24, 500, [67.4, 46.3]),
    });
    expect(two.reasons.map((one) => explain(one, english))).toContain(
      "At the end the temperatures had changed places: 47 °F to 67.4 °F, and back on the other thermometer.",
    );
  });

  it("weighs zones by their shares where their volumes are not known", () => {
    const rows = [rowOf(0, 500, [47, 68]), rowOf(24, 497, [40, 66])];
    const by = (change: object) =>
      assessPressureLog(test(rows, { ...limit, sinceFill: hour(1), ...change }));
    const shares = { zoneShares: [percent(40), percent(60)] };
    const [one, other] = [
      by({ ...shares, volume: liter(3) }),
      by({ volume: [liter(1.2), liter(1.8)] }),
    ];
    expect(one.correctedDrop.value.si).toBeCloseTo(other.correctedDrop.value.si, 6);
    // Shares are estimates: they leave more open than volumes that count as exact.
    expect(one.correctedDrop.expandedUncertainty.si).toBeGreaterThan(
      other.correctedDrop.expandedUncertainty.si,
    );
    const none = by({ ...shares, volume: undefined });
    expect(none.correctedDrop.value.si).toBeCloseTo(other.correctedDrop.value.si, 6);
    const refused = (change: object) => () => by({ volume: liter(3), ...change });
    expect(refused({ zoneShares: [percent(40), percent(70)] })).toThrow(/zoneShares/);
    expect(refused({ ...shares, volume: [liter(1.2), liter(1.8)] })).toThrow(/zoneShares/);
    expect(refused({ zoneShares: [percent(100)] })).toThrow(/temperature/);
  });

  it("takes a barometer for weather that a gauge has to show, and an absolute sensor has not", () => {
    // The barometer falls by 3 kPa: a vented gauge on a tight system rises by as much.
    const rows = (of: (air: number) => object) =>
      Array.from({ length: 73 }, (_, i) => {
        const air = 101.325 - 1.5 * (1 - Math.cos((2 * Math.PI * i) / 72));
        return { ...rowOf(i / 6, 50, [70]), atmosphere: kPaa(air), ...of(air) } as LogReading;
      });
    const fine = {
      pressure: { accuracy: psi(0.1), resolution: psi(0.01), drift: psi(0.01) },
      temperature: { accuracy: deltaF(1), followsGasWithin: deltaF(0.1) },
    };
    const codes = (readings: LogReading[]) =>
      assessPressureLog(test(readings, { instruments: fine })).reasons.map(({ code }) => code);
    expect(codes(rows(() => ({})))).toContain("pressure-test.pressure-still");
    expect(codes(rows(() => ({ pressure: psia(64.7) })))).not.toContain(
      "pressure-test.pressure-still",
    );
    const honest = rows((air) => ({ pressure: psig(50 + (101.325 - air) / 6.894757) }));
    expect(codes(honest)).not.toContain("pressure-test.pressure-still");
  });

  it("is less sure when the temperature only falls than when it comes back", () => {
    const there = log(0, 12, 145).slice(0, 73);
    const back = log(0, 6, 73);
    const u = (rows: LogReading[]) =>
      assessPressureLog(test(rows)).correctedDrop.standardUncertainty.in(psi);
    expect(u(there)).toBeGreaterThan(1.1 * u(back));
  });

  it("takes zones, absolute sensors and a barometer for every row", () => {
    const zones = log(0).map((row) => ({
      ...row,
      temperature: [row.temperature, row.temperature] as never,
    }));
    const split = { volume: [liter(1), liter(2)] };
    expect(assessPressureLog(test(zones, split)).outcome).toBe("inconclusive");
    const absolute = log(0).map((row) => ({
      ...row,
      pressure: psia(row.pressure.in(psig) + 14.69595),
    }));
    const verdict = assessPressureLog(test(absolute));
    expect(verdict.assumptions.map(({ code }) => code)).not.toContain(
      "pressure-test.barometer-unchanged",
    );
    const read = log(0).map((row) => ({ ...row, atmosphere: standardAtmosphere }));
    expect(assessPressureLog(test(read)).uncertaintyBudget.map(({ part }) => part)).not.toContain(
      "barometer",
    );
    const falling = log(0).map((row, i) => ({ ...row, atmosphere: kPaa(101.325 - i / 72) }));
    expect(assessPressureLog(test(falling)).correctedDrop.value.si).toBeCloseTo(1000, -2);
  });

  it("assumes what two readings assume, the barometer as long as one row lacks it", () => {
    const rows = log(0);
    const of = (readings: LogReading[]) => assessPressureLog(test(readings, limit));
    const codes = (readings: LogReading[]) => of(readings).assumptions.map(({ code }) => code);
    expect(codes(rows)).toEqual([
      "pressure-test.rigid-walls",
      "pressure-test.volume-exact",
      "pressure-test.fill-unchecked",
      "pressure-test.gas-settled",
      "pressure-test.barometer-unchanged",
    ]);
    const read = rows.map((row) => ({ ...row, atmosphere: standardAtmosphere }));
    expect(codes(read)).toEqual([
      "pressure-test.rigid-walls",
      "pressure-test.volume-exact",
      "pressure-test.fill-unchecked",
      "pressure-test.gas-settled",
    ]);
    const mixed = [rows[0] as LogReading, ...read.slice(1)];
    expect(codes(mixed)).toContain("pressure-test.barometer-unchanged");
    // 150 Pa·√h over 12 h, from memory; the fit believes the ends less than a walk alone would ask for.
    const budget = (readings: LogReading[]) =>
      of(readings).uncertaintyBudget.find(({ part }) => part === "barometer")?.standardUncertainty;
    expect((budget(rows)?.si ?? 0) / (150 * Math.sqrt(12))).toBeCloseTo(1, 0);
    expect(budget(read)).toBeUndefined();
  });

  it("may start at any time of its own clock", () => {
    const rows = log(0.5);
    const later = rows.map((row) => ({ ...row, elapsed: row.elapsed.plus(hour(5)) }));
    const [now, then] = [assessPressureLog(test(rows)), assessPressureLog(test(later))];
    expect((then.leakRate?.value.si ?? 0) / (now.leakRate?.value.si ?? 1)).toBeCloseTo(1, 9);
    expect(then.corrected[0]?.elapsed.in(hour)).toBeCloseTo(5, 9);
    expect(then.corrected.at(-1)?.elapsed.in(hour)).toBeCloseTo(17, 9);
  });

  it("gives the mass by the density of the real gas at the last temperature, and the refrigerant", () => {
    const refrigerant = { gas: leakGas.R32, pressure: kPaa(1474) };
    const rows = log(12); // 144 psi in 12 h, back at 80 °F
    const found = assessPressureLog(test(rows, { refrigerant }));
    const [p, T, atmosphere] = [(356 + 14.696) * 6894.757, 299.817, 101_325];
    // dρ/dp by the reference equation of Span et al. (2000).
    const slope = (nitrogenDensity(p + 1e3, T) - nitrogenDensity(p - 1e3, T)) / 2e3;
    const perThroughput = (found.nitrogenLoss?.value.si ?? 0) / (found.leakRate?.value.si ?? 1);
    expect(perThroughput / slope).toBeCloseTo(1, 3);
    const alone = refrigerantEquivalent({
      nitrogenLeak: found.leakRate?.value as Quantity<"throughput">,
      testPressure: kPaa(((500 + 356) / 2) * 6.894757 + atmosphere / 1e3), // the mean of the ends
      refrigerant: leakGas.R32,
      refrigerantPressure: kPaa(1474),
      outside: standardAtmosphere,
      temperature: degF(80),
    });
    expect((found.refrigerantLoss?.viscous.si ?? 0) / alone.viscous.si).toBeCloseTo(1, 3);
  });

  it("takes a single temperature of any row for all of its zones", () => {
    const zoned = (last: object) => {
      const [first, second] = [rowOf(0, 500, [80, 60]), rowOf(12, 500, [70, 70])];
      const split = { volume: [liter(1), liter(2)] };
      return assessPressureLog(test([first, { ...second, ...last }], split)).correctedDrop.value;
    };
    expect(zoned({ temperature: degF(70) }).in(psi)).toBeCloseTo(zoned({}).in(psi), 6);
  });

  it("judges by 1 % of the fill pressure where more was stated", () => {
    // 1 % of 500 psig (common practice, no source) is 5 psi.
    const at = (criterion: object) => assessPressureLog(test(log(0), { criterion }));
    const loose = at({ maximumDrop: psi(400) });
    expect([loose.outcome, loose.limit?.in(psi)]).toEqual(["pass", expect.closeTo(5, 9)]);
    expect(loose.reasons.map(({ code }) => code)).toContain("pressure-test.limit-lowered");
    expect(at({ maximumDrop: psi(2.2), per: hour(1) }).limit?.in(psi)).toBeCloseTo(5, 9);
  });

  it("does not pass while the last reading is above the limit", () => {
    // Tight for 12 h, then 6 psi are missing in the last row: whether a joint let go, the next reading tells.
    const rows = log(0);
    const broken = [...rows.slice(0, -1), { ...(rows.at(-1) as GaugeRow), pressure: psig(494) }];
    const verdict = assessPressureLog(test(broken, { criterion: { maximumDrop: psi(5) } }));
    expect(verdict.outcome).not.toBe("pass");
    expect(verdict.reasons.map(({ code }) => code)).toContain(
      "pressure-test.last-reading-above-limit",
    );
    expect(verdict.actions.map(({ code }) => code)).toContain("pressure-test.read-again");
  });

  it("says what temperature alone changes between its ends", () => {
    // 500 psig at 80 °F is 479.37 psig at 60 °F (published row TV13-real-expected).
    const { reasons } = assessPressureLog(test(log(0.5).slice(0, 37)));
    expect(reasons.at(-1)?.code).toBe("pressure-test.weather-alone");
    const values = reasons.at(-1)?.values as Record<string, Quantity<"pressureDifference">>;
    expect(values.temperature?.in(psi)).toBeCloseTo(479.37 - 500, 2);
    expect(values.change?.in(psi)).toBeCloseTo(479.37 - 500 - 6 * 0.5, 2);
  });

  it("prints every sentence whole and leaves its input as it was", () => {
    const input = test(log(0.1), limit);
    const before = JSON.stringify(input);
    const { reasons, assumptions, cautions, actions } = assessPressureLog(input);
    for (const said of [...reasons, ...assumptions, ...cautions, ...actions]) {
      expect(explain(said, english)).not.toMatch(/[{}]|undefined|NaN/);
    }
    expect(JSON.stringify(input)).toBe(before);
  });
});

describe("bad input", () => {
  const rows = log(0);
  const [first, second] = [rows[0] as LogReading, rows[1] as LogReading];
  it.each([
    ["no log", undefined, "readings"],
    ["an empty log", [], "two different times"],
    ["one time only", [first, first], "two different times"],
    ["a row without a time", [first, { ...second, elapsed: undefined }], "readings[1].elapsed"],
    [
      "a row without a pressure",
      [first, { ...second, pressure: undefined }],
      "readings[1].pressure",
    ],
    ["a row of another kind", [first, { ...second, pressure: psia(500) }], "readings[1].pressure"],
    ["a time before the start", [first, { ...second, elapsed: minute(-1) }], "readings[1].elapsed"],
    ["a row of nothing", [first, null], "readings[1]"],
  ])("refuses %s", (_, readings, says) => {
    const call = () => assessPressureLog(test(readings as never));
    expect(call).toThrow(says);
    expect(call).toThrow(expect.objectContaining({ name: "InvalidInputError" }));
  });
});

// Looks in between are the same course: nitrogen by the gas law through a day that cools and warms again; common practice, no source.
describe("looks in between", () => {
  const setup = {
    atmosphere: standardAtmosphere,
    instruments: {
      pressure: { accuracy: psi(2), resolution: psi(0.1), drift: psi(0.5) },
      temperature: { accuracy: deltaF(1), resolution: deltaF(0.1) },
    },
    criterion: { maximumDrop: psi(5) },
    sinceFill: minute(30),
    elsewhere: { share: percent(0) },
    required: {},
  } as const;
  const day = (hours: readonly number[]) =>
    hours.map((h) => {
      const laterTemperature = degF(75 - 10 * Math.sin((h / 24) * Math.PI));
      const pressure = expectedTestPressure({
        pressure: psig(500),
        temperature: degF(75),
        laterTemperature,
        atmosphere: standardAtmosphere,
      });
      return {
        elapsed: hour(h),
        pressure: psig(Math.round(pressure.in(psig) * 10) / 10),
        temperature: laterTemperature,
      };
    });
  it.each([[[0, 1, 24]], [[0, 2, 5, 12, 20, 24]], [Array.from({ length: 25 }, (_, i) => i)]])(
    "at %j h prove no less than the two ends alone",
    (hours) => {
      const rows = day(hours);
      const [start, end] = [rows[0], rows.at(-1)] as [(typeof rows)[0], (typeof rows)[0]];
      expect(assessPressureTest({ ...setup, start, end }).outcome).toBe("pass");
      const log = assessPressureLog({ ...setup, readings: rows });
      expect(log.outcome).toBe("pass");
      // A leak that the ends show, the log shows too.
      const lost = rows.map((row, i) => ({
        ...row,
        pressure: psig(row.pressure.in(psig) - (14 * (hours[i] ?? 0)) / 24),
      }));
      expect(assessPressureLog({ ...setup, readings: lost }).outcome).toBe("fail");
    },
  );
});
