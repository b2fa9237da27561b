// Which readings count, on logs whose scatter, spacing and steps are known.
import { describe, expect, it } from "vitest";
import { degC, micron, micronDifference, percent } from "../../src/quantity/index.ts";
import {
  binWeight,
  type Collector,
  collect,
  createCollector,
  resolution,
} from "../../src/vacuum-decay/collect.ts";
import type { VacuumGauge } from "../../src/vacuum-decay/gauge.ts";
import { acceptancePolicies } from "../../src/vacuum-decay/policies/acceptance-policies.ts";
import { settingsOf } from "../../src/vacuum-decay/settings.ts";
import { random } from "./random.ts";

/** Pressures in Pa at a spacing in s. */
function collected(
  pressures: readonly number[],
  {
    spacing = 10,
    gauge = {},
    from = 0,
    keep = 100,
  }: { spacing?: number; gauge?: VacuumGauge; from?: number; keep?: number } = {},
): Collector {
  const settings = settingsOf({
    ambient: degC(20),
    gauge,
    policy: acceptancePolicies.commonPractice500,
  });
  const log = createCollector(settings, keep);
  for (const [row, p] of pressures.entries()) collect(log, from + spacing * row, p, row);
  return log;
}
const course = (n: number, of: (i: number) => number) => Array.from({ length: n }, (_, i) => of(i));
const withRow = (list: readonly number[], row: number, p: number) =>
  list.map((one, i) => (i === row ? p : one));
const rng = random(9);
const quiet = course(60, () => 40 + 0.05 * rng.normal());

describe("the scatter", () => {
  it("is that of the readings about their course", () => {
    const one = random(3);
    for (const slope of [0, 0.5]) {
      const log = collected(course(400, (i) => 40 + slope * i + 0.2 * one.normal()));
      expect(Math.sqrt(log.noise)).toBeGreaterThan(0.2 / 1.4);
      expect(Math.sqrt(log.noise)).toBeLessThan(0.2 * 1.4);
    }
  });

  it("is nothing on an exact line", () => {
    const log = collected(course(50, (i) => 40 + i / 2));
    expect(log.noise).toBeLessThan(1e-12);
    expect(log.slope).toBeCloseTo(0.05, 9); // Pa/s
    expect(log.spacing).toBeCloseTo(10, 9);
    expect(log.segment?.level).toBeCloseTo(64.5, 6); // the course, where nothing scatters about it
  });

  it("does not count a gap of three spacings or more", () => {
    const across = (gap: number) => {
      const log = collected(course(8, () => 40));
      collect(log, 70 + gap, 41, 8);
      return log.noise;
    };
    expect(across(30)).toBe(0);
    expect(across(29.9)).toBeGreaterThan(0);
  });

  it("does not count the first change after a step, which has no course yet", () => {
    const log = collected(course(40, (i) => (i < 20 ? 40 : 80 + 5 * (i - 20))));
    expect(log.steps).toHaveLength(1);
    expect(log.noise).toBe(0);
    expect(log.slope).toBeCloseTo(0.5, 9);
  });

  it("counts one wild reading for no more than three times itself", () => {
    const log = collected(quiet);
    const before = log.noise;
    collect(log, 600, 40.4, 60); // 0.4 Pa off, eight times the scatter; 1.2 % would be a jump
    // a mean over 40 readings, in which one counts 9 times the variance
    expect(log.noise / before).toBeCloseTo(1 + (9 - 1) / 40, 6);
  });

  it("takes the first ten changes as they come", () => {
    const off = (row: number) =>
      collected(
        withRow(
          course(row + 1, () => 40),
          row,
          41,
        ),
      ).noise;
    // the third reading is the first with a course. Such a difference has 2.4 times the variance of a reading (2 of
    // the change, 0.4 with the slope); 1.5 of it is taken, on the safe side: common practice, no source
    expect(off(11)).toBeCloseTo(1 / 1.5 / 10, 9);
    expect(off(12)).toBeLessThan(1e-9);
  });

  it("has a spacing that is the mean of the last twenty", () => {
    const uneven = createCollector(collected([40]).settings, 9);
    for (const [row, t] of [0, 10, 30, 60].entries()) collect(uneven, t, 40, row);
    expect(uneven.spacing).toBeCloseTo(20, 9);
    const log = collected(course(51, () => 40));
    collect(log, 530, 40, 51);
    expect(log.spacing).toBeCloseTo(10 + (30 - 10) / 20, 9);
  });

  it("has a course that is the mean of the first five changes, then follows a fifth of each", () => {
    const squares = (n: number) => collected(course(n, (i) => 40 + i * i)).slope * 10;
    expect(squares(6)).toBeCloseTo((1 + 3 + 5 + 7 + 9) / 5, 9);
    expect(squares(7)).toBeCloseTo(5 + (11 - 5) / 5, 9);
  });
});

describe("the step of the display", () => {
  it("is as stated, or the smallest change that was seen", () => {
    const rounded = quiet.map((_, i) => 40 + (i % 3) / 8);
    expect(resolution(collected(rounded), 40)).toBeCloseTo(0.125, 2);
    const gauge = { resolution: micronDifference(1) };
    expect(resolution(collected(rounded, { gauge }), 40)).toBeCloseTo(micronDifference(1).si, 9);
    expect(resolution(collected(course(9, () => 40)), 40)).toBe(0);
    // what binary arithmetic leaves of the same figure is no change
    expect(resolution(collected(course(9, (i) => 40 + 1e-7 * (i % 2))), 40)).toBe(0);
  });

  it("is that of rounding by hand where it is coarser, and that of the display where not", () => {
    const rounded = course(10, (i) => micron(300 + 25 * i).si);
    const seen = (stated: number) => {
      const gauge = { resolution: micronDifference(stated) };
      return resolution(collected(rounded, { gauge, spacing: 60 }), 40) / micronDifference(1).si;
    };
    expect([seen(1), seen(50)]).toEqual([expect.closeTo(25, 6), expect.closeTo(50, 6)]);
  });

  it("of a time that was written by hand is 8 s: common practice, no source", () => {
    const variance = (spacing: number, n: number) => {
      const log = collected(
        course(10, (i) => micron(300 + 10 * i).si),
        { spacing },
      );
      return 1 / binWeight(log, log.segment as never, { index: 0, n, t: 0, p: 0 });
    };
    // 10 micron a minute; a bin of two is no single time, and nobody writes every 50 s
    expect(variance(60, 1) - variance(60, 2)).toBeCloseTo(((8 / 60) * micron(10).si) ** 2, 6);
    expect(variance(50, 1) - variance(50, 2)).toBeCloseTo(0, 6);
  });

  it("weighs by its square over 12 however many readings a bin has", () => {
    // JCGM 100:2008, F.2.2.1; no scatter, no rise
    const gauge = { resolution: micronDifference(10) };
    const log = collected(
      course(50, () => 40),
      { gauge },
    );
    const r = micronDifference(10).si;
    const { segment } = log;
    for (const n of [1, 40]) {
      const weight = binWeight(log, segment as never, { index: 0, n, t: 0, p: 0 });
      expect(1 / weight).toBeCloseTo(r ** 2 / 12, 4);
    }
  });

  it("weighs by the step of the range in which its readings lie", () => {
    // 300 micron at the start, steps of 1 micron up to 400 and of 25 above; a gauge without error
    const fine = { upTo: micron(400), resolution: micronDifference(1) };
    const coarse = { upTo: micron(5000), resolution: micronDifference(25) };
    const gauge = { accuracy: percent(0), resolution: [fine, coarse] };
    const log = collected(
      course(50, () => micron(300).si),
      { gauge },
    );
    const at = (rise: number) => {
      const bin = { index: 0, n: 1, t: 0, p: micronDifference(rise).si };
      return 1 / binWeight(log, log.segment as never, bin);
    };
    expect(at(99)).toBeCloseTo(micronDifference(1).si ** 2 / 12, 4);
    expect(at(101)).toBeCloseTo(micronDifference(25).si ** 2 / 12, 4);
  });

  it("weighs scatter less the more readings a bin has, as far as neighbours differ", () => {
    const log = collected(quiet, { spacing: 10, gauge: { resolution: micronDifference(0) } });
    const of = (n: number, rise = 0) =>
      1 / binWeight(log, log.segment as never, { index: 0, n, t: 0, p: n * rise }) - 1e-6;
    expect(of(1)).toBeCloseTo(log.scatter.variance, 9);
    // a memory of 20 s at 10 s: 20/(20 + 4·10) of the variance after five
    expect(of(5)).toBeCloseTo(log.scatter.variance / 3, 9);
    // a tenth of the limits of error of what has risen, ±10 % of 100 Pa: 0.02 · 10 Pa
    expect(of(1, 100)).toBeCloseTo(log.scatter.variance + 0.2 ** 2, 6);
  });
});

describe("a jump", () => {
  it("is a spike when the next reading is back, and a step when it is not", () => {
    const spike = collected(withRow(quiet, 30, 80));
    expect(spike.excluded).toMatchObject([{ row: 30, t: 300, p: 80, reason: "spike" }]);
    expect(spike.steps).toEqual([]);
    // halfway back is not back
    const half = withRow(
      withRow(
        course(40, () => 40),
        30,
        80,
      ),
      31,
      60,
    ).slice(0, 32);
    expect(collected(half).steps).toHaveLength(1);
    // the reading after it stays off the course: it lies nearer to the one, or to the other
    const followedBy = (p: number) => collected(withRow(withRow(quiet, 30, 80), 31, p));
    expect(followedBy(55).excluded[0]).toMatchObject({ row: 30, reason: "spike" });
    expect(followedBy(65).steps[0]?.t).toBe(300);
    const step = collected([...quiet.slice(0, 30), ...quiet.map((p) => p + 40)]);
    expect(step.excluded).toEqual([]);
    expect(step.steps).toHaveLength(1);
    expect(step.steps[0]?.t).toBe(300);
    expect(step.steps[0]?.change).toBeCloseTo(40, 0);
    expect(step.earlier?.last).toBe(290);
    expect(step.segment).toMatchObject({ start: 300, last: 590, rows: 60 });
  });

  it("is measured from the course, not from the last reading", () => {
    // rising 1 Pa per reading: 10 Pa above the course, then on from there
    const rising = course(80, (i) => 40 + i + (i < 40 ? 0 : 30));
    const log = collected(rising);
    expect(log.steps).toHaveLength(1);
    expect(log.steps[0]?.change).toBeCloseTo(30, 6);
    // and so is the next one, in a stretch that does not begin at isolation
    const twice = collected(course(120, (i) => 40 + i + 30 * Math.floor(i / 40)));
    expect(twice.steps.map(({ t }) => t)).toEqual([400, 800]);
    expect(twice.steps[1]?.change).toBeCloseTo(30, 6);
    // down again to the course after one reading: that one is a spike
    const back = collected(
      withRow(
        course(80, (i) => 40 + i),
        40,
        120,
      ),
    );
    expect(back.excluded).toMatchObject([{ row: 40, reason: "spike" }]);
    expect(back.steps).toEqual([]);
  });

  it("is not seen in the first two minutes, when equalization moves fast too", () => {
    const early = collected(course(60, (i) => (i < 12 ? 40 : 60)));
    expect(early.steps).toEqual([]);
    const later = collected(course(60, (i) => (i < 13 ? 40 : 60)));
    expect(later.steps).toHaveLength(1);
    // nor among the first four readings
    const few = collected(
      course(60, (i) => (i < 3 ? 40 : 60)),
      { spacing: 60 },
    );
    expect(few.steps).toEqual([]);
    const more = collected(
      course(60, (i) => (i < 4 ? 40 : 60)),
      { spacing: 60 },
    );
    expect(more.steps).toHaveLength(1);
  });

  it("is more than 1.2 % of the reading, four display steps and five times the scatter", () => {
    const jump = (by: number, gauge: VacuumGauge = { resolution: micronDifference(0) }) =>
      collected(
        course(60, (i) => 100 + (i < 30 ? 0 : by)),
        { gauge },
      ).steps.length;
    expect([jump(1.1), jump(1.3)]).toEqual([0, 1]);
    const wide = { resolution: micronDifference(100) }; // 13.3 Pa
    expect([jump(53, wide), jump(54, wide)]).toEqual([0, 1]);
    const shaky = (by: number) => {
      const one = random(8);
      const list = course(200, (i) => 100 + one.normal() + (i < 100 ? 0 : by));
      return collected(list, { gauge: { resolution: micronDifference(0) } }).steps.length;
    };
    expect([shaky(4), shaky(12)]).toEqual([0, 1]);
  });

  it("is confirmed by the next reading on the same course, and changes nothing by then", () => {
    const down = collected(
      course(60, (i) => 300 + 10 * i - (i < 30 ? 0 : 25)),
      {
        gauge: { resolution: micronDifference(0) },
      },
    );
    expect(down.steps).toMatchObject([{ t: 300, change: expect.closeTo(-25, 6) }]);
    const flat = collected(course(60, (i) => (i < 30 ? 40 : 60)));
    expect(flat.segment).toMatchObject({ start: 300, changed: 0, last: 290 });
  });

  it("is twice what the course makes between two readings", () => {
    const quickens = (by: number) =>
      collected(
        course(60, (i) => 100 + 60 * i + (i < 30 ? 0 : by)),
        { gauge: { resolution: micronDifference(0) } },
      ).steps.length;
    // twice the 60 Pa of the course; 6 % of the 1840 Pa before are 110 Pa
    expect([quickens(119), quickens(121)]).toEqual([0, 1]);
  });

  it("is not made of single readings that scatter far", () => {
    // Laplace's distribution, 2 micron: beyond 5 of them lies one reading in 1200, of 3600 three
    const stepsOf = (seed: number) => {
      const one = random(seed);
      const heavy = () => {
        const x = one() - 0.5;
        return -Math.sign(x) * Math.log(1 - 1.999998 * Math.abs(x)) * Math.SQRT2;
      };
      const list = Array.from(
        { length: 3600 },
        (_, i) => micron(300 + 8 * Math.log1p(i / 60) + heavy()).si,
      );
      return collected(list, { spacing: 1 }).steps.length;
    };
    // one log in fourteen has one where any next reading confirms, one in eighty where the next lies as far off
    const steps = Array.from({ length: 100 }, (_, i) => stepsOf(i + 1));
    expect(steps.filter((n) => n > 0).length).toBeLessThan(4);
  });

  it("is allowed more after a gap", () => {
    const settings = settingsOf({
      ambient: degC(20),
      policy: acceptancePolicies.commonPractice500,
    });
    const stepsAcross = (gap: number) => {
      const log = createCollector(settings, 9);
      for (let row = 0; row < 60; row++) {
        const late = row >= 30;
        collect(log, 10 * row + (late ? gap : 0), late ? 102 : 100, row);
      }
      return log.steps.length;
    };
    expect([stepsAcross(0), stepsAcross(30)]).toEqual([1, 0]); // 2 % against 1.2 %, against four times that
  });

  it("judges the last stretch and keeps the longest before it", () => {
    const three = collected([
      ...quiet.slice(0, 20),
      ...quiet.map((p) => p + 40),
      ...quiet.slice(0, 20),
    ]);
    expect(three.steps).toHaveLength(2);
    expect(three.earlier).toMatchObject({ start: 200, last: 590 });
    expect(three.segment).toMatchObject({ start: 800, last: 190 });
    const first = collected([
      ...quiet,
      ...quiet.slice(0, 20).map((p) => p + 40),
      ...quiet.slice(0, 20),
    ]);
    expect(first.earlier).toMatchObject({ start: 0, last: 590 });
  });
});

describe("what is set aside", () => {
  it("is listed up to the limit, and counted beyond it", () => {
    const log = collected(
      course(20, (i) => (i % 2 ? 0 : 40)),
      { keep: 3 },
    );
    expect(log.excluded).toHaveLength(3);
    expect(log.excludedCount).toEqual({ zero: 10 });
    expect(log.rows).toBe(20);
  });

  it("is what lies at the range or above, before isolation, or not later than the last reading", () => {
    const range = micron(1000);
    const log = collected([40, range.si * 0.999, range.si, range.si * 2, 40], { gauge: { range } });
    expect(log.excludedCount).toEqual({ "over-range": 2 });
    expect(log.overRangeRun).toBe(0);
    expect(collected([40, range.si, range.si], { gauge: { range } }).overRangeRun).toBe(2);
    expect(collected([40, 40, 40], { from: -10 }).excludedCount).toEqual({ "before-isolation": 1 });
    expect(collected([40, 40, 40], { from: 0 }).excludedCount).toEqual({});
    expect(collected([40, 40, 40], { spacing: 0 }).excludedCount).toEqual({ "repeated-time": 2 });
    expect(collected([40, 40, 40], { spacing: -1, from: 10 }).excludedCount).toEqual({
      "out-of-order": 2,
    });
  });

  it("is compared with a reading that waits for its confirmation too", () => {
    const log = collected(withRow(quiet.slice(0, 31), 30, 90));
    expect(log.suspect).toEqual({ t: 300, p: 90, row: 30 });
    collect(log, 295, 40, 31);
    expect(log.excludedCount).toEqual({ "out-of-order": 1 });
  });
});
