// What takes a pass back, on stretches of a log whose every figure is given. The thresholds are common practice, no
// source; the saturation of ice is IAPWS R14-08's.
import { describe, expect, it } from "vitest";
import { degC, micron, micronDifference, second } from "../../src/quantity/index.ts";
import type { Analysis } from "../../src/vacuum-decay/analysis.ts";
import type { Segment } from "../../src/vacuum-decay/collect.ts";
import type { Component } from "../../src/vacuum-decay/curve/component.ts";
import { emptyGram } from "../../src/vacuum-decay/curve/gram.ts";
import { doubtsOfCourse, doubtsOfReadings, stillness } from "../../src/vacuum-decay/doubts.ts";
import { acceptancePolicies } from "../../src/vacuum-decay/policies/acceptance-policies.ts";
import { settingsOf, type VacuumDecayOptions } from "../../src/vacuum-decay/settings.ts";

const pa = (microns: number) => micronDifference(microns).si;
const settings = (more: Partial<VacuumDecayOptions> = {}) =>
  settingsOf({
    ambient: degC(20),
    policy: acceptancePolicies.commonPractice500,
    isolation: "isolation-valve",
    ...more,
  });
const stated = (microns: number) => settings({ gauge: { resolution: micronDifference(microns) } });

/** A stretch of points a minute apart, in micron; the last is still open. */
function stretch(points: readonly number[], more: Partial<Segment> = {}): Segment {
  const origin = pa(points[0] as number);
  const p = points.map((one) => pa(one) - origin);
  const t = points.map((_, i) => 60 * i);
  const last = 60 * (points.length - 1);
  const open = { index: 99, n: 2, t: 2 * last, p: 2 * (p.at(-1) as number) };
  return {
    start: 0,
    origin,
    gram: emptyGram(),
    t: t.slice(0, -1),
    p: p.slice(0, -1),
    w: [],
    open,
    last,
    lastP: pa(points.at(-1) as number),
    level: pa(points.at(-1) as number),
    changed: last,
    rows: points.length,
    ...more,
  };
}
/** A model that lies at a rise in micron. */
const flat = (rise = 0, weight = 1) =>
  ({ weight, fast: -1, shape: -1, slope: 0, constant: pa(rise) }) as Component;
/** The hold is over, or a pass may come early. */
const over = { over: true, confidence: 0.95, mayFail: true, mayPass: true };
const early = { ...over, over: false };
/** Isolated by a valve at the system; an end rate that says nothing. What is material follows from 5 micron, 1 % and the step. */
const doubts = (
  segment: Segment,
  given = settings(),
  components = [flat()],
  k = 0,
  stage = segment.last >= given.hold ? over : { ...early, mayPass: false },
  fit: Partial<Analysis> = {},
  noise = 0,
) => {
  const analysis = {
    segment,
    components,
    T: segment.last,
    first: 0,
    step: 0,
    misfit: 1,
    residual: 0,
    odds: { bad: 1 }, // a rise that stops is looked for only in what would pass: standstill.test.ts
    endRate: { mean: 0, u: 0 },
    ...fit,
  };
  return [
    ...doubtsOfReadings(segment, given, k),
    ...doubtsOfCourse(analysis as unknown as Analysis, given, noise, stage),
  ].map(({ reason, action }) => ({
    ...reason,
    code: reason.code.replace("vacuum-decay.", ""),
    action,
  }));
};
const figure = (one: ReturnType<typeof doubts>[number] | undefined, name: string) =>
  (one?.values as Record<string, { si: number }> | undefined)?.[name]?.si;
const codes = (...args: Parameters<typeof doubts>) => doubts(...args).map(({ code }) => code);
const steady = (p: number, n = 11) => stretch(Array.from({ length: n }, () => p));

describe("a display that stands still", () => {
  const of = (changed: number, last: number, given = stated(1)) =>
    stillness(stretch([300, 300], { changed, last }), given);

  it("has not changed in the last half of the evidence", () => {
    expect([of(300, 600), of(301, 600)]).toEqual(["unexplained", "follows"]);
  });

  it("may be quiet for two minutes, or for less where the hold is shorter", () => {
    expect([of(0, 120), of(0, 119)]).toEqual(["unexplained", "follows"]);
    const checkpoints = [{ at: second(60), limit: micron(500) }];
    const short = settings({ policy: { ...acceptancePolicies.splitManualA, checkpoints } });
    expect([of(0, 60, short), of(0, 59, short)]).toEqual(["unexplained", "follows"]);
  });

  it("is explained by stated steps above 1 micron", () => {
    for (const step of [0, 0.1, 1]) expect(of(0, 600, stated(step))).toBe("unexplained");
    for (const step of [2, 5, 25]) expect(of(0, 600, stated(step))).toBe("wide-steps");
    expect(of(0, 600, settings())).toBe("unexplained");
  });

  it("is said with the reading and since when, in the log's own time", () => {
    const held = stretch([300, 302, 302, 302], { changed: 60, start: 240 });
    const [one] = doubts(held, stated(1));
    expect(one?.code).toBe("display-still");
    expect(one?.values).toMatchObject({ since: { si: 300 } });
    expect(figure(one, "pressure")).toBeCloseTo(pa(302), 9);
  });
});

describe("a course that no model explains", () => {
  const found = (p: number, misfit: number, off: number) =>
    doubts(steady(p), settings(), [flat()], 0, over, { misfit, residual: pa(off) });

  it("misses twelve times what scatter makes, by more than 2 micron or 1 %", () => {
    expect(found(300, 13, 3.1).map(({ code }) => code)).toEqual(["course-unexplained"]);
    expect(found(300, 11, 3.1)).toEqual([]);
    expect(found(300, 13, 2.9)).toEqual([]);
    expect(found(100, 13, 2.1).map(({ code }) => code)).toEqual(["course-unexplained"]);
    expect(found(100, 13, 1.9)).toEqual([]);
  });

  it("misses it by more than noise and half a step besides", () => {
    // 2 micron, a noise of 1, half of a step of 4: 5 micron
    const found = (off: number) => {
      const fit = { misfit: 13, residual: pa(off), step: pa(4) };
      return codes(steady(50), settings(), [flat()], 0, over, fit, pa(1));
    };
    expect([found(4.9), found(5.1)]).toEqual([[], ["course-unexplained"]]);
  });

  it("is said with how far it lies off", () => {
    expect(figure(found(300, 20, 8)[0], "off")).toBeCloseTo(pa(8), 9);
  });
});

describe("readings below what gauge and pump reach", () => {
  it("are those below 5 micron, at either end", () => {
    expect(codes(steady(5))).toEqual([]);
    expect(codes(steady(4.9))).toEqual(["below-gauge"]);
    expect(codes(stretch([4.9, 9, 9, 9, 9]), settings(), [flat(4)])).toEqual(["below-gauge"]);
    expect(codes(stretch([9, 9, 9, 4.9, 4.9]), settings())).toEqual(["below-gauge"]);
  });

  it("are those below one step of the stated display", () => {
    expect(codes(steady(25), stated(25))).toEqual([]);
    const [one] = doubts(steady(24), stated(25));
    expect(one?.code).toBe("below-gauge");
    expect(figure(one, "lowest")).toBeCloseTo(pa(24), 9);
    expect(figure(one, "believed")).toBeCloseTo(pa(25), 9);
  });
});

describe("ice", () => {
  // 38.01 Pa, 285.1 micron, over ice at −30 °C: IAPWS R14-08(2011), equation 6
  const cold = settings({ coldest: degC(-30) });

  it("is not excluded from its saturation pressure on", () => {
    expect(codes(steady(284), cold)).toEqual([]);
    const [one] = doubts(steady(287), cold);
    expect(one?.code).toBe("ice-not-excluded");
    expect(figure(one, "saturation")).toBeCloseTo(38.01, 1);
    expect(figure(one, "coldest")).toBeCloseTo(243.15, 9);
  });

  it("is compared with the last reading, not with the first", () => {
    expect(codes(stretch([270, 280, 290, 290]), cold, [flat(20)])).toEqual(["ice-not-excluded"]);
    expect(codes(stretch([290, 288, 282, 282]), cold, [flat(-8)])).toEqual([]);
  });

  it("is guarded by the gauge's limits of error", () => {
    const guarded = (p: number) => codes(steady(p), cold, [flat()], 0.1);
    expect(guarded(256)).toEqual([]); // 285.1 less a tenth is 256.6
    expect(guarded(258)).toEqual(["ice-not-excluded"]);
  });
});

describe("a pressure that falls", () => {
  it("is one that fell by more than is material after the first quarter", () => {
    // eight minutes: a quarter is two minutes
    const of = (...points: number[]) =>
      codes(
        stretch(points),
        settings(),
        [flat(-100)].map((one) => ({
          ...one,
          constant: pa((points.at(-1) as number) - (points[0] as number)),
        })),
      );
    // 5 micron and 1 % of the last reading: 7.9 micron
    expect(of(400, 380, 300, 300, 300, 300, 295, 291, 291)).toEqual(["pressure-falls"]);
    expect(of(400, 380, 300, 300, 300, 300, 295, 293, 293)).toEqual([]);
    // from two minutes on, not from three
    expect(of(400, 380, 300, 291, 291, 291, 291, 291, 291)).toEqual(["pressure-falls"]);
    const [one] = doubts(stretch([400, 380, 300, 300, 300, 300, 295, 280, 280]), settings(), [
      flat(-120),
    ]);
    expect(figure(one, "fall")).toBeCloseTo(pa(20), 9);
  });

  it("is none where a gap leaves only the last readings to look at", () => {
    const late = { index: 99, n: 1, t: 3000, p: pa(100) };
    const gap = stretch([300, 301, 302, 400], { last: 3000, changed: 3000, open: late });
    expect(codes(gap, settings(), [flat(51)])).toEqual([]);
  });

  it("is what rose and came down again, where it came down by twice what is material", () => {
    // 5 micron and 1 % of the last reading: 8.1 micron. Less is a gauge far from the pump that follows late.
    const hump = (down: number) => [300, 305 + down, 305, 305, 305, 305, 305, 305, 305];
    expect(codes(stretch(hump(15)), settings(), [flat(5)])).toEqual([]);
    expect(codes(stretch(hump(17)), settings(), [flat(5)])).toEqual(["pressure-falls"]);
  });

  it("is none by the mean of the last two readings alone", () => {
    const late = { index: 99, n: 1, t: 3000, p: pa(-70) };
    const gap = stretch([420, 410, 405, 400, 350], { last: 3000, changed: 3000, open: late });
    expect(codes(gap, settings(), [flat(-45)])).toEqual([]);
  });

  it("is what the models fall by to their end, even at twice its uncertainty, from eight readings on", () => {
    // 5 micron and 1 % of the last reading: 8 micron
    const falls = (down: number, u: number, n = 11) => {
      const T = 60 * (n - 1);
      const endRate = { mean: -pa(down) / T, u: pa(u) / T };
      return doubts(steady(300, n), settings(), [flat()], 0, over, { endRate });
    };
    const [one] = falls(20, 5);
    expect(one?.code).toBe("pressure-falls");
    expect(figure(one, "fall")).toBeCloseTo(pa(10), 9);
    expect(falls(20, 6.5)).toEqual([]);
    expect(falls(20, 5, 8).map(({ code }) => code)).toEqual(["pressure-falls"]);
    expect(falls(20, 5, 7)).toEqual([]);
  });

  it("is looked for after three minutes in a long log", () => {
    const long = (third: number) => [
      400,
      390,
      380,
      third,
      ...Array.from({ length: 27 }, () => 300),
    ];
    expect(codes(stretch(long(305)), settings(), [flat(-100)])).toEqual([]);
    expect(codes(stretch(long(315)), settings(), [flat(-100)])).toEqual(["pressure-falls"]);
  });
});

describe("a rise that quickens", () => {
  it("ends with its last two points above the mean of the curves by more than is material", () => {
    const points = [300, 300, 300, 300, 310, 312]; // mean of the last two: 311
    // 5 micron and 1 % of the last reading: 8.1 micron
    expect(codes(stretch(points), settings(), [flat(2.8)])).toEqual(["rise-quickens"]);
    expect(codes(stretch(points), settings(), [flat(3)])).toEqual([]);
    const [one] = doubts(stretch(points));
    expect(figure(one, "late")).toBeCloseTo(pa(11), 9);
    const hold = second(600);
    expect(one?.action).toMatchObject({ code: "vacuum-decay.hold-again", values: { hold } });
  });

  it("rises by more in a sixth of the time than in an earlier one, and slows down again", () => {
    // 36 minutes: 12 micron in each sixth, and more in the fourth; 5 micron and 1 % of the last reading: 8.9 micron.
    const course = (more: number) =>
      stretch(
        Array.from(
          { length: 37 },
          (_, i) => 300 + 2 * i + (more * Math.min(6, Math.max(0, i - 18))) / 6,
        ),
      );
    const quickens = (more: number) => codes(course(more), settings(), [flat(71 + more)]);
    expect(quickens(20)).toEqual(["rise-quickens"]);
    expect(quickens(10)).toEqual([]);
  });

  it("does so in its last sixth too, whose last points are averaged into one before its end", () => {
    const rise = (i: number) => 2 * i + 4 * Math.max(0, i - 30);
    const points = Array.from({ length: 37 }, (_, i) => 300 + rise(i));
    const course = stretch(points, { last: 60 * 36 + 30, changed: 2190 });
    expect(codes(course, settings(), [flat(rise(35.5))])).toEqual(["rise-quickens"]);
  });

  it("does so in sixths of two readings, and not in those of one", () => {
    const of = (rows: number) => {
      const middle = (2 * (rows - 1)) / 3; // as much before it, then twenty times as much for a sixth
      const rise = (i: number) =>
        i / rows + (Math.min(1, Math.max(0, (i - middle) / ((rows - 1) / 6))) || 0) * 40;
      const points = Array.from({ length: rows }, (_, i) => 300 + rise(i));
      return codes(stretch(points), settings(), [flat(rise(rows - 1))]);
    };
    expect([of(13), of(7)]).toEqual([["rise-quickens"], []]);
  });
});

describe("a rise that stops at once", () => {
  // 6 micron a minute for six minutes of twelve, then nothing: a valve before the gauge was shut
  const shut = stretch(Array.from({ length: 25 }, (_, i) => 300 + 3 * Math.min(i, 12)));
  const found = (bad: number, stage = over) =>
    codes(shut, settings(), [flat(36)], 0, stage, { odds: { bad } as Analysis["odds"] });

  it("is told where the verdict would pass", () => {
    expect(found(0.09)).toEqual(["rise-stops"]);
    expect(found(0.11)).toEqual([]);
    expect(found(0.09, { ...over, mayPass: false })).toEqual([]);
  });
});

describe("a pressure that stays", () => {
  const of = (more: Partial<VacuumDecayOptions>) => codes(steady(300), settings(more));

  it("is believed only where the pump is known to be shut off", () => {
    expect(of({ isolation: "isolation-valve" })).toEqual([]);
    expect(of({ isolation: "hose-removed" })).toEqual([]);
    expect(of({ isolation: "pump-valve" })).toEqual(["too-flat"]);
    const unsaid = settingsOf({ ambient: degC(20), policy: acceptancePolicies.commonPractice500 });
    expect(codes(steady(300), unsaid)).toEqual(["too-flat"]);
    expect(codes(steady(300, 9), unsaid)).toEqual([]); // the hold of ten minutes is not over
  });

  it("after it rose is believed no more: walls and oil keep giving off gas, a pump holds what it pulls at", () => {
    // 40 micron of 1 − e^(−t/τ): what is left for the second half of ten minutes is 40 (e^(−300/τ) − e^(−600/τ)),
    // 0.27 micron of τ = 60 s and 1.4 of 90 s.
    const weeps = (tau: number) => [{ ...flat(), shape: 0, amplitude: pa(40), tau } as Component];
    const unsaid = settings({ isolation: "pump-valve" });
    const [one] = doubts(steady(300), unsaid, weeps(60));
    expect(one?.code).toBe("too-flat");
    expect(figure(one, "change")).toBeCloseTo(pa(0.27), 3);
    const sinks = [{ ...flat(), line: true, slope: pa(-1) / 600 } as Component];
    expect(figure(doubts(steady(300), unsaid, sinks)[0], "change")).toBe(0);
    expect(codes(steady(300), unsaid, weeps(90))).toEqual([]);
    expect(codes(steady(300), settings({ isolation: "isolation-valve" }), weeps(60))).toEqual([]);
  });

  it("has to rise by 5 micron before it passes early: a valve may still be shut", () => {
    const unsaid = settingsOf({ ambient: degC(20), policy: acceptancePolicies.provenEarly500 });
    const line = (rise: number) => [{ ...flat(), line: true, slope: pa(rise) / 480 } as Component];
    expect(codes(steady(300, 9), unsaid, line(4.9), 0, early)).toEqual(["too-flat"]);
    expect(codes(steady(300, 9), unsaid, line(5.1), 0, early)).toEqual([]);
    // from its first point on: a minute after the valve was shut, of eight
    expect(codes(steady(300, 9), unsaid, line(5.5), 0, early, { first: 60 })).toEqual(["too-flat"]);
  });
});
