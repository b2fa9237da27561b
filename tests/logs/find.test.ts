import fc from "fast-check";
import { findFill, findIsolation, readLog } from "hvac-install-math/logs";
import { assessPressureLog } from "hvac-install-math/pressure-test";
import {
  degF,
  deltaF,
  InvalidInputError,
  inHgAbsolute,
  micron,
  minute,
  psi,
  psig,
  second,
  standardAtmosphere,
  volt,
} from "hvac-install-math/quantity";
import { voltageLogStatistics } from "hvac-install-math/supply-voltage";
import { acceptancePolicies, assessVacuumDecay } from "hvac-install-math/vacuum-decay";
import { describe, expect, it } from "vitest";

const vacuum = (pressures: readonly number[], step = 5) =>
  pressures.map((p, i) => ({ elapsed: second(step * i), pressure: micron(p) }));
const nitrogen = (pressures: readonly number[]) =>
  pressures.map((p, i) => ({ elapsed: minute(5 * i), pressure: psig(p) }));
const codes = (said: readonly { readonly code: string }[]) =>
  said.map(({ code }) => code.replace("logs.", ""));

describe("the moment of isolation", () => {
  it("is the last of the lowest rows before the rise", () => {
    const watch = findIsolation(vacuum([5000, 900, 400, 290, 270, 270, 270, 310, 325, 330]));
    expect(watch.start).toBe(6);
    expect(codes(watch.reasons)).toEqual(["lowest"]);
    expect(codes(watch.doubts)).toEqual(["between-rows"]);
    expect(watch.rows.map(({ elapsed }) => elapsed.in(second))).toEqual([0, 5, 10, 15]);
  });

  it("is that of the last watch where the pump ran in between", () => {
    const watch = findIsolation(vacuum([5000, 400, 270, 500, 900, 500, 300, 250, 280, 300, 310]));
    expect(watch.start).toBe(7);
    expect(codes(watch.doubts)).toEqual(["several-rises", "between-rows"]);
  });

  it("leaves out what comes after the pump is on again", () => {
    const watch = findIsolation(vacuum([5000, 400, 270, 300, 340, 350, 200, 100, 80]));
    expect(watch.start).toBe(2);
    expect(watch.rows.length).toBe(4);
    expect(codes(watch.doubts)).toEqual(["between-rows", "ends-before"]);
  });

  it("is the first row, with a doubt, where the log begins isolated", () => {
    const watch = findIsolation(vacuum([270, 300, 340, 350]));
    expect(watch.start).toBe(0);
    expect(codes(watch.doubts)).toContain("starts-isolated");
  });

  it("is not found where the pressure never rises, or there are no rows", () => {
    for (const rows of [[5000, 900, 400, 290, 270], [270, 270, 271], [270], []]) {
      const watch = findIsolation(vacuum(rows));
      expect(watch.start).toBeUndefined();
      expect(watch.rows).toEqual([]);
      expect(codes(watch.doubts)).toEqual(["no-rise"]);
    }
  });

  // A pump-down to its end pressure and a rise, with the noise of a gauge: common practice, no source.
  it("is found to the row in noise", () => {
    const course = fc.record({
      pumpRows: fc.integer({ min: 20, max: 200 }),
      watchRows: fc.integer({ min: 20, max: 200 }),
      end: fc.integer({ min: 100, max: 400 }),
      jump: fc.integer({ min: 60, max: 300 }),
      noise: fc.array(fc.double({ min: -1, max: 1, noNaN: true }), {
        minLength: 400,
        maxLength: 400,
      }),
    });
    fc.assert(
      fc.property(course, ({ pumpRows, watchRows, end, jump, noise }) => {
        const down = Array.from(
          { length: pumpRows },
          (_, i) => end + 20_000 * Math.exp((-8 * i) / pumpRows),
        );
        const last = down.at(-1) ?? 0;
        const up = Array.from(
          { length: watchRows },
          (_, i) => last + jump * (1 - Math.exp(-(i + 1) / 4)),
        );
        const rows = vacuum([...down, ...up].map((p, i) => p * (1 + 0.002 * (noise[i] ?? 0))));
        const { start = -99 } = findIsolation(rows);
        expect(Math.abs(start - (pumpRows - 1))).toBeLessThanOrEqual(Math.ceil(pumpRows / 10));
        expect(start).toBeLessThanOrEqual(pumpRows - 1);
      }),
    );
  });
});

describe("the end of a filling", () => {
  it("is the highest row of the last step, and the hold ends before the pressure is let off", () => {
    const hold = findFill(nitrogen([0, 150, 150, 300, 300, 500, 499.5, 499, 499, 498.5, 60, 2]));
    expect(hold.start).toBe(5);
    expect(hold.rows.length).toBe(5);
    expect(hold.rows[1]?.elapsed.in(minute)).toBe(5);
    expect(codes(hold.reasons)).toEqual(["highest"]);
    expect(codes(hold.doubts)).toEqual(["gas-settles", "between-rows", "ends-before"]);
  });

  it("is not the morning sun, which warms the gas beyond what it was filled to", () => {
    const night = Array.from(
      { length: 150 },
      (_, i) => 500 - 12 * Math.sin(i / 40) + (i > 130 ? i - 130 : 0),
    );
    const hold = findFill(nitrogen([0, 0, 150, 150, 150, 300, 300, 300, ...night]));
    expect(hold.start).toBe(8);
    expect(hold.rows.length).toBe(150);
    expect(codes(hold.doubts)).toContain("several-fills");
  });

  it("is found in rows of a second as in rows of five minutes", () => {
    const fill = Array.from({ length: 180 }, (_, i) => (500 * i) / 179);
    const rows = [
      ...fill,
      ...Array.from({ length: 900 }, (_, i) => 500 - 3 * (1 - Math.exp(-i / 300))),
    ];
    const seconds = rows.map((p, i) => ({ elapsed: second(i), pressure: psig(p) }));
    expect(Math.abs((findFill(seconds).start ?? 0) - 179)).toBeLessThanOrEqual(1);
  });

  it("is that of the last filling where pressure was let off in between", () => {
    const hold = findFill(nitrogen([0, 500, 498, 100, 100, 450, 449, 449]));
    expect(hold.start).toBe(5);
    expect(codes(hold.doubts)).toContain("several-fills");
  });

  it("is the first row, with a doubt, where the log begins filled", () => {
    const hold = findFill(nitrogen([500, 499.9, 499.5, 499.7]));
    expect(hold.start).toBe(0);
    expect(codes(hold.doubts)).toContain("starts-filled");
  });

  it("is not found without pressure", () => {
    for (const rows of [[0, 0, 0.01], []]) {
      const hold = findFill(nitrogen(rows));
      expect(hold.start).toBeUndefined();
      expect(codes(hold.doubts)).toEqual(["no-fill"]);
    }
  });

  it("follows absolute readings too", () => {
    const rows = [30, 300, 900, 899].map((p, i) => ({
      elapsed: minute(i),
      pressure: inHgAbsolute(p),
    }));
    expect(findFill(rows).start).toBe(2);
  });
});

it("rows that are none are refused by their place", () => {
  for (const find of [findIsolation, findFill] as ((rows: never) => unknown)[]) {
    expect(() => find(undefined as never)).toThrow(/^rows/);
    expect(() => find([undefined] as never)).toThrow(/^rows\[0\]/);
    expect(() => find([{ elapsed: second(1), pressure: volt(1) }] as never)).toThrow(
      /^rows\[0\]\.pressure/,
    );
    expect(() => find([{ elapsed: volt(1), pressure: psig(1) }] as never)).toThrow(
      InvalidInputError,
    );
  }
});

describe("rows go straight into", () => {
  it("assessPressureLog", () => {
    const course = [0, 250, 500, 499.9, 499.9, 499.8, 499.8, 499.8];
    const text = course.map((p, i) => `${10 * i};${p.toFixed(1)};60.0`).join("\n");
    const { rows } = readLog(text, {
      separator: ";",
      decimal: ".",
      time: { written: "elapsed", column: 1, unit: minute },
      columns: { pressure: { column: 2, unit: psig }, temperature: { column: 3, unit: degF } },
    });
    const verdict = assessPressureLog({
      readings: findFill(rows).rows,
      atmosphere: standardAtmosphere,
      instruments: { pressure: { accuracy: psi(1) }, temperature: { accuracy: deltaF(1) } },
      criterion: { maximumDrop: psi(5) },
    });
    expect(["pass", "fail", "inconclusive"]).toContain(verdict.outcome);
  });

  it("assessVacuumDecay", () => {
    const course = [9000, 700, 300, 280, ...Array.from({ length: 400 }, (_, i) => 320 + i * 0.01)];
    const text = course.map((p, i) => `${5 * i},${p.toFixed(1)}`).join("\n");
    const { rows } = readLog(text, {
      separator: ",",
      decimal: ".",
      time: { written: "elapsed", column: 1 },
      columns: { pressure: { column: 2, unit: micron } },
    });
    const { rows: readings, start } = findIsolation(rows);
    expect(start).toBe(3);
    const policy = acceptancePolicies.splitManualA;
    expect(assessVacuumDecay({ readings, policy, ambient: degF(72) }).outcome).toBe("pass");
  });

  it("voltageLogStatistics", () => {
    const { rows: readings } = readLog("0,230\n60,229\n120,231\n", {
      separator: ",",
      decimal: ".",
      time: { written: "elapsed", column: 1, unit: "s" },
      columns: { voltage: { column: 2, unit: volt } },
    });
    const range = { minimum: volt(207), maximum: volt(253) };
    expect(voltageLogStatistics({ readings, range }).minimum.in(volt)).toBe(229);
  });
});
