// From which time on, and from which figure on, a verdict is given: logs with next to no scatter on either side of
// each threshold. The thresholds are common practice, no source, as verdict.ts and tuning.ts state them.
import {
  degC,
  liter,
  m as meter,
  micron,
  micronDifference,
  micronPerMinute,
  minute,
  percent,
  type Quantity,
  second,
} from "hvac-install-math/quantity";
import {
  type AcceptancePolicy,
  acceptancePolicies,
  assessVacuumDecay,
  type DecayReading,
  type VacuumDecayAssessment,
  type VacuumDecayOptions,
} from "hvac-install-math/vacuum-decay";
import { describe, expect, it } from "vitest";

const { commonPractice500, provenEarly500, splitManualA } = acceptancePolicies;
const log = (pressure: (t: number) => number, until: number, step = 5): DecayReading[] =>
  Array.from({ length: Math.floor(until / step) + 1 }, (_, i) => ({
    elapsed: second(step * i),
    pressure: micron(pressure(step * i) + ((3 * i) % 7) / 10),
  }));
const exact = { accuracy: percent(0), resolution: micronDifference(0.1) };
const assess = (readings: DecayReading[], more: Partial<VacuumDecayOptions> = {}) =>
  assessVacuumDecay({
    ambient: degC(20),
    gauge: exact,
    policy: commonPractice500,
    isolation: "isolation-valve",
    ...more,
    readings,
  });
const codes = ({ reasons }: VacuumDecayAssessment) =>
  reasons.map(({ code }) => code.replace("vacuum-decay.", ""));
const held = (seconds: number, more: Partial<AcceptancePolicy> = {}): AcceptancePolicy => ({
  ...provenEarly500,
  checkpoints: [{ at: second(seconds), rise: micronDifference(500) }],
  ...more,
});
const both = (of: (t: number) => unknown, before: number, from: number) => [of(before), of(from)];

describe("before the hold is over", () => {
  it("an early pass takes a third of the hold, and two minutes", () => {
    const passed = (hold: number) => (until: number) =>
      assess(
        log(() => 300, until),
        { policy: held(hold) },
      ).outcome;
    expect(both(passed(600), 195, 200)).toEqual(["inconclusive", "pass"]);
    expect(both(passed(1800), 595, 600)).toEqual(["inconclusive", "pass"]);
    expect(both(passed(240), 115, 120)).toEqual(["inconclusive", "pass"]);
  });

  it("an early pass asks for a fifth of the risk: 99 % where 95 % are asked for at the end", () => {
    const passed = (limit: number, until: number) => {
      const policy = { ...provenEarly500, checkpoints: [{ at: minute(10), limit: micron(limit) }] };
      const gauge = { ...exact, accuracy: percent(10) };
      return assess(
        log(() => 300, until),
        { policy, gauge },
      ).outcome;
    };
    // 300 micron and 10 % / √3 of it 2.70 and 1.73 times, in the logistic stand-in: 346.8 and 330 micron
    expect([passed(344, 300), passed(350, 300)]).toEqual(["inconclusive", "pass"]);
    expect([passed(327, 600), passed(333, 600)]).toEqual(["inconclusive", "pass"]);
  });

  it("there is no pass where the policy does not allow it early", () => {
    const passed = (until: number) => assess(log(() => 300, until)).outcome;
    expect(both(passed, 595, 600)).toEqual(["inconclusive", "pass"]);
  });

  it("a fail takes a fifth of the hold, two minutes, and no more than ten", () => {
    const failed = (hold: number) => (until: number) =>
      codes(
        assess(
          log((t) => 300 + 20 * t, until),
          { policy: held(hold) },
        ),
      ).includes("rise-above-limit");
    expect(both(failed(1000), 195, 200)).toEqual([false, true]);
    expect(both(failed(500), 115, 120)).toEqual([false, true]);
    expect(both(failed(7200), 595, 600)).toEqual([false, true]);
  });

  it("a leak fails as soon as it is proven, although the policy's limit is kept", () => {
    // 400 micron in ten minutes: less than what is accepted, but a leak all the same
    const failed = (until: number) => {
      const result = assess(log((t) => 300 + t / 1.5, until));
      return [result.outcome, codes(result).includes("leak-proven")];
    };
    expect(failed(115)).toEqual(["inconclusive", false]);
    expect(failed(300)).toEqual(["fail", true]);
  });

  it("eight points are needed, however long the log", () => {
    const policy = provenEarly500;
    const passed = (rows: number) =>
      assess(
        log((t) => 300 + t / 200, 50 * (rows - 1), 50),
        { policy },
      ).outcome;
    expect([passed(7), passed(8)]).toEqual(["inconclusive", "pass"]);
  });
});

describe("what matters", () => {
  const cause = (perMinute: number) => assess(log((t) => 300 + (perMinute * t) / 60, 900)).cause;

  it("is a leak above 5 micron a minute and what unknown hoses let in, 1 in the usual 3 L", () => {
    expect([cause(2), cause(5.5), cause(7)]).toEqual(["dry-and-tight", "not-determined", "leak"]);
  });

  it("is not what hoses that are stated let in", () => {
    const by = (hoses: VacuumDecayOptions["hoses"]) =>
      assess(
        log((t) => 300 + (5.7 * t) / 60, 900),
        { ...(hoses && { hoses }) },
      ).cause;
    expect(by({ material: "metal", length: meter(1) })).toBe("leak");
    expect(by({ material: "rubber", length: meter(1.5) })).toBe("not-determined");
  });

  it("is water above 300 micron and 5 % of the rise", () => {
    const water = (rise: number) =>
      assess(log((t) => 300 - rise * Math.expm1(-t / 183), 1800)).cause;
    expect([water(200), water(400)]).toEqual(["dry-and-tight", "moisture"]);
  });
});

describe("a stated leak limit", () => {
  const against = (limit: number, until = 900) =>
    codes(
      assess(
        log((t) => 300 + t / 20, until),
        { leakLimit: micronPerMinute(limit) },
      ),
    )[0];

  it("holds a leak of 3 micron a minute against less and more than gauge and walls leave open", () => {
    expect(against(2.4)).toBe("leak-proven");
    expect(against(3)).toBe("leak-not-excluded");
    expect(against(3.6)).toBe("rise-within-limit");
    expect(against(2.4, 115)).toBe("leak-not-excluded"); // nothing fails within two minutes
  });
});

describe("a start above the target", () => {
  const missed = (start: number, accuracy: number) => {
    const gauge = { ...exact, accuracy: percent(accuracy) };
    const result = assess(
      log(() => start, 900),
      { gauge },
    );
    return codes(result).includes("target-missed") && result.cause === "not-determined";
  };

  it("is one that the gauge's error does not explain: JCGM 106:2012, 8.3.3.2", () => {
    expect([missed(500, 0), missed(501, 0)]).toEqual([false, true]);
    // Φ⁻¹(0.95) = 1.645 times 10 % / √3: 500 / (1 − 0.095) = 552.5
    expect([missed(551.5, 10), missed(553.5, 10)]).toEqual([false, true]);
  });

  it("takes back the word dry and tight, and no other cause", () => {
    expect(assess(log((t) => 700 + t, 900)).cause).toBe("leak");
    // nor does ice, which stops at 285 micron at −30 °C
    const cold = { coldest: degC(-30) };
    expect(
      assess(
        log(() => 300, 900),
        cold,
      ).cause,
    ).toBe("not-determined");
    expect(
      assess(
        log((t) => 300 + t, 900),
        cold,
      ).cause,
    ).toBe("leak");
  });
});

describe("a gauge that goes over its range", () => {
  const over = (range: number, times: number, until = 300, policy = splitManualA) => {
    const readings = log(() => 300, until);
    for (let i = 1; i <= times; i++) {
      readings.push({ elapsed: second(until + 5 * i), pressure: micron(20_000) });
    }
    const result = assess(readings, { gauge: { ...exact, range: micron(range) }, policy });
    return [result.outcome, codes(result).some((code) => code.startsWith("over-range"))];
  };

  it("fails where the range reaches above every limit of the policy", () => {
    // 700 micron, from 800 micron on wet or leaking
    expect(over(801, 2)).toEqual(["fail", true]);
    expect(over(800, 2)).toEqual(["inconclusive", true]);
    expect(over(750, 2)).toEqual(["inconclusive", true]);
    const two = { ...splitManualA, checkpoints: acceptancePolicies.closeControlManual.checkpoints };
    expect(over(751, 2, 300, two)).toEqual(["fail", true]);
    expect(over(749, 2, 300, two)).toEqual(["inconclusive", true]);
  });

  it("does so with two readings in a row, before the hold is over", () => {
    expect(over(801, 1)).toEqual(["inconclusive", false]);
    expect(over(801, 2, 895)).toEqual(["fail", true]);
    expect(over(801, 2, 900)).toEqual(["pass", false]);
  });

  it("does so too before there is anything to fit", () => {
    expect(over(801, 2, 5)).toEqual(["fail", true]);
    expect(over(801, 1, 5)).toEqual(["inconclusive", false]);
    expect(over(750, 2, 5)).toEqual(["inconclusive", true]);
    const pair = [300, 20_000, 20_000].map((p, i) => ({ elapsed: second(i), pressure: micron(p) }));
    expect(codes(assess(pair, { gauge: { ...exact, range: micron(1000) } }))).toEqual([
      "over-range",
      "too-few-readings",
    ]);
  });
});

describe("a hold of a few readings by hand", () => {
  const by5min = (...list: number[]) =>
    assess(
      list.map((p, i) => ({ elapsed: second(300 * i), pressure: micron(p) })),
      { policy: acceptancePolicies.commonPractice500 },
    );

  it.each([[[320]], [[320, 410]], [[320, 410, 455]], [[320, 321, 322]], [[320, 4100, 455]]])(
    "of %j micron says that they are too few, and nothing of a course",
    (list) => {
      const { outcome, actions, fit, leak, atHoldEnd } = by5min(...list);
      expect(codes(by5min(...list))).toEqual(["too-few-readings"]);
      expect(outcome).toBe("inconclusive");
      expect(actions.map(({ code }) => code)).toEqual(["vacuum-decay.watch-longer"]);
      const [wait] = actions.map(
        ({ values }) => (values as { duration?: Quantity<"duration"> }).duration,
      );
      expect(Number.isInteger(wait?.in(minute))).toBe(true); // nobody sets 7 min 30 s
      expect([fit, leak, atHoldEnd]).toEqual([undefined, undefined, undefined]);
    },
  );

  it("still says that the last one is above the limit", () => {
    const result = by5min(320, 2000, 4000);
    expect(codes(result)).toEqual(["last-reading-above-limit", "too-few-readings"]);
    // The policy wants 500 micron: who is told no figure stops where the pump stood before.
    const { code, values } = result.actions[0] as (typeof result.actions)[number];
    expect(code).toBe("vacuum-decay.evacuate-deeper");
    expect((values as { target: Quantity<"absolutePressure"> }).target.in(micron)).toBeCloseTo(500);
  });

  it("of four to seven names no water that was not estimated", () => {
    for (const list of [
      [320, 410, 455, 480],
      [300, 500, 640, 740, 810],
    ]) {
      expect(codes(by5min(...list))).toContain("too-few-readings");
      expect(codes(by5min(...list))).not.toContain("moisture-not-excluded");
    }
  });
});

describe("too few readings", () => {
  it("are three: what they can not tell is absent", () => {
    const result = assess(log((t) => 300 + t, 10));
    expect([result.outcome, result.cause]).toEqual(["inconclusive", "not-determined"]);
    for (const name of ["atHoldEnd", "leak", "leakInterval", "smallestLeak", "shares"] as const) {
      expect(result[name], name).toBeUndefined();
    }
    expect(result.actions.map(({ code }) => code)).toContain("vacuum-decay.watch-longer");
    expect(assess(log((t) => 300 + t, 15)).leakInterval).toBeDefined();
  });

  it("below eight tell no shares of the evidence", () => {
    const shares = (points: number) => assess(log(() => 300, 60 * (points - 1), 60)).shares;
    expect(shares(7)).toBeUndefined();
    expect(shares(8)).toMatchObject({ leak: expect.closeTo(0, 1), either: expect.closeTo(0, 1) });
  });

  it("below eight leave the leak as wide as the rise of their second half", () => {
    const by = (...list: number[]) =>
      assess(list.map((p, i) => ({ elapsed: minute(2 * i), pressure: micron(p) })));
    const result = by(300, 330, 350, 362, 370, 376);
    const most = result.leakInterval?.[1].in(micronPerMinute) ?? 0;
    expect(most).toBeGreaterThanOrEqual((376 - 350) / 6);
    expect(result.leakInterval?.[0].si).toBe(0);
    expect(result.shares).toBeUndefined();
  });
});

describe("the plateau", () => {
  it("is where the water alone levels off, a leak left out", () => {
    const water = (t: number) => 300 - 1500 * Math.expm1(-t / (60 * 1.25 ** 4));
    const dry = assess(log(water, 2700)).plateau;
    const leaking = assess(log((t) => water(t) + t, 2700)).plateau;
    const late = assess(log(water, 2700).slice(24)).plateau; // from two minutes on
    for (const plateau of [dry, leaking, late]) {
      expect((plateau?.pressure.value.in(micron) ?? 0) / 1800).toBeCloseTo(1, 1);
    }
  });
});

describe("the rise of a log that begins late", () => {
  it("counts an equalization from the first point on", () => {
    const readings = log((t) => 400 - 100 * Math.exp(-t / 20), 900, 10).slice(1);
    const [said] = assess(readings).reasons.filter(
      ({ code }) => code === "vacuum-decay.rise-within-limit",
    );
    const { value: rise } = (said?.values ?? {}) as unknown as Record<
      string,
      Quantity<"pressureDifference">
    >;
    // 100 micron at 0 s, 61 from 10 s on
    expect((rise?.si ?? 0) / micronDifference(1).si).toBeCloseTo(100 * Math.exp(-0.5), -1);
  });
});

describe("the smallest leak that could have been seen", () => {
  it("is one step of the display over the evidence where nothing else is wider", () => {
    const gauge = { accuracy: percent(0), resolution: micronDifference(200) };
    const readings = log(() => 300, 900).map((one) => ({ ...one, pressure: micron(400) }));
    const { smallestLeak } = assess(readings, { gauge, policy: held(900) });
    expect(smallestLeak?.in(micronPerMinute)).toBeCloseTo(200 / 15, 6);
  });

  it("lets the display's step at both ends into the leak's interval: step²/6, JCGM 100:2008, F.2.2.1", () => {
    const gauge = { accuracy: percent(0), resolution: micronDifference(25) };
    const readings = log(() => 300, 900).map((one) => ({ ...one, pressure: micron(250) }));
    const [low, high] = assess(readings, { gauge }).leakInterval ?? [];
    // 97.5 % in the logistic stand-in for the normal distribution; the fit adds a little
    const reach = (Math.log(39) / 1.702) * (25 / Math.sqrt(6) / 15);
    expect(low?.si).toBe(0);
    expect((high?.in(micronPerMinute) ?? 0) / reach).toBeGreaterThan(0.95);
    expect((high?.in(micronPerMinute) ?? 0) / reach).toBeLessThan(1.2);
  });
});

// The log itself: 20 micron a minute, without a curve and with next to no scatter.
it("names the leak of a straight rise by its rate", () => {
  const result = assess(log((t) => 300 + t / 3, 900));
  const proven = result.reasons.find(({ code }) => code === "vacuum-decay.leak-proven");
  const { low, high } = (proven?.values ?? {}) as Record<"low" | "high", Quantity<"pressureRate">>;
  expect(low.in(micronPerMinute)).toBeGreaterThan(15);
  expect(low.in(micronPerMinute)).toBeLessThanOrEqual(20.1);
  expect(high.in(micronPerMinute)).toBeGreaterThanOrEqual(19.9);
  expect(high.in(micronPerMinute)).toBeLessThan(25);
});

describe("a small system", () => {
  const rising = (perMinute: number) => log((t) => 300 + (perMinute * t) / 60, 900);

  it("is allowed no larger part of its charge: 10 micron/min, not 30 micron·L/min", () => {
    const leaking = assess(rising(20), { volume: liter(1) });
    expect([leaking.outcome, leaking.reasons[0]?.code]).toEqual([
      "fail",
      "vacuum-decay.leak-proven",
    ]);
    // 10 micron/min of 133.322 mPa in 1 L, 60 s a minute
    expect(leaking.leakLimit.si).toBeCloseTo((10 * 0.1333224 * 1e-3) / 60, 9);
    const large = assess(rising(0.5), { volume: liter(6) });
    expect(large.leakLimit.si).toBeCloseTo((30 * 0.1333224 * 1e-3) / 60, 9);
    // what a caller states is not made smaller
    const stated = assess(rising(20), { volume: liter(1), leakLimit: micronPerMinute(30) });
    expect(stated.reasons[0]?.code).toBe("vacuum-decay.leak-within-limit");
  });

  it("passes with what hoses usually let in, where it has hoses that let in anything", () => {
    // 5 + 3/0.4/3 = 7.5 micron/min may be there besides walls; 5 where hoses are of metal
    const small = { volume: liter(0.4) };
    const metal = { material: "metal", length: meter(3) } as const;
    expect(assess(rising(5.8), small).outcome).toBe("pass");
    expect(assess(rising(5.8), { ...small, hoses: metal }).outcome).toBe("inconclusive");
    expect(assess(rising(9), small).outcome).toBe("inconclusive");
  });
});

describe("five readings, one a minute", () => {
  const five = (course: (minutes: number) => number) => assess(log((t) => course(t / 60), 240, 60));

  it("fail where the second half rises by more than anything harmless", () => {
    // 150 micron of equalization and 8 micron/min are 166 in 2 min
    const proven = five((t) => 300 + 90 * t);
    expect([proven.outcome, proven.reasons[0]?.code, proven.cause]).toEqual([
      "fail",
      "vacuum-decay.leak-or-moisture",
      "not-determined",
    ]);
    expect(proven.actions.length).toBeGreaterThan(1);
    expect(five((t) => 300 + 80 * t).outcome).toBe("inconclusive");
  });

  it("fail nothing that slows down as a valve opened late does", () => {
    // half as much as in the first half: e^(−2/τ) = 0.5 at τ = 2.89 min
    expect(five((t) => 300 + 900 * (1 - Math.exp(-t / 2.4))).outcome).toBe("inconclusive");
    expect(five((t) => 300 + 900 * (1 - Math.exp(-t / 3.4))).outcome).toBe("fail");
  });
});

it("a checkpoint that fails says by itself that the last reading is above its limit", () => {
  // 500 micron in ten minutes are allowed
  const above = (rate: number, until: number) => codes(assess(log((t) => 300 + rate * t, until)));
  expect(above(0.4, 1800)).toEqual(
    expect.arrayContaining(["last-reading-above-limit", "rise-within-limit"]),
  );
  expect(above(1, 600)).toContain("rise-above-limit");
  expect(above(1, 600)).not.toContain("last-reading-above-limit");
});

describe("what a cause claims", () => {
  it("says of a leak which water it takes to be absent, and of nothing else", () => {
    const slow = ({ assumptions }: VacuumDecayAssessment) =>
      assumptions.find(({ code }) => code === "vacuum-decay.no-slow-water")?.values;
    // three times the quarter of an hour that was watched
    expect(slow(assess(log((t) => 300 + 0.5 * t, 900)))).toEqual({ duration: minute(45) });
    expect(slow(assess(log((t) => 300 + 0.13 * t, 900)))).toEqual({ duration: minute(45) });
    expect(slow(assess(log((t) => 300 + 4 * Math.log1p(t / 60), 900)))).toBeUndefined();
    expect(slow(assess(log((t) => 300 - 2000 * Math.expm1(-t / 200), 900)))).toBeUndefined();
  });

  // 6 and 9 micron a minute beside 400 micron of water: one above a limit of 3, the other below the usual 10
  it("says it of a steady rise too that is told beside moisture alone", () => {
    const beside = (perSecond: number) => (t: number) =>
      300 + perSecond * t - 400 * Math.expm1(-t / 200);
    const [proven, within] = [
      assess(log(beside(0.1), 600), { leakLimit: micronPerMinute(3) }),
      assess(log(beside(0.15), 900)),
    ];
    expect([proven.cause, within.cause]).toEqual(["moisture", "moisture"]);
    expect(codes(proven)).toContain("leak-proven");
    expect(codes(within)).toContain("leak-within-limit");
    for (const { assumptions } of [proven, within]) {
      expect(assumptions.map(({ code }) => code)).toContain("vacuum-decay.no-slow-water");
    }
  });

  it("says of moisture how much rose by it, without the equalization before", () => {
    // 250 micron within seconds, then 900 micron of water
    const course = (t: number) => 300 - 250 * Math.expm1(-t / 6) - 900 * Math.expm1(-t / 200);
    const { reasons } = assess(log(course, 1200));
    const water = reasons.flatMap(({ values }) =>
      "water" in values
        ? [Math.round((values.water as { si: number }).si / micron.scale / 50)]
        : [],
    );
    expect(water).toEqual([18, 18]); // 900 micron, by the proof and by the cause
  });

  it("says of a leak what it is, and between which rates it lies", () => {
    const { reasons } = assess(log((t) => 300 + (20 * t) / 60, 900));
    const said = reasons.find(({ code }) => code === "vacuum-decay.leak")?.values;
    const { leak, low, high } = said as Record<string, Quantity<"pressureRate">>;
    const rates = [low, leak, high].map((one) => one?.in(micronPerMinute) ?? Number.NaN);
    // The log rises by 20 micron a minute; a quarter either way is the most that a steady line leaves open.
    expect(rates[1]).toBeCloseTo(20, 0);
    expect(rates[0]).toBeGreaterThan(15);
    expect(rates[0]).toBeLessThan(20);
    expect(rates[2]).toBeGreaterThan(20);
    expect(rates[2]).toBeLessThan(25);
  });

  it("is nothing where neither leak nor water makes such a curve", () => {
    // shut for 4 min, then 40 micron/min
    const late = assess(log((t) => 300 + (40 / 60) * Math.max(0, t - 240), 600));
    expect(codes(late)).toContain("course-unexplained");
    expect([late.outcome, late.cause]).toEqual(["inconclusive", "not-determined"]);
  });

  it.each([
    ["course-unexplained", (t: number) => 300 + (40 * t) / 60 + 20 * Math.sin(t / 20)],
    ["rise-quickens", (t: number) => 300 + (t / 60) ** 2],
    ["pressure-falls", (t: number) => 300 + Math.min(t, 1110 - t)],
  ])("is nothing beside %s, and what is open stays open", (code, course) => {
    const judged = assess(log(course, 600));
    expect(judged.shares?.either).toBeGreaterThan(0.1);
    expect(judged.cause).toBe("not-determined");
    const doubts = ["course-unexplained", "rise-quickens", "pressure-falls"];
    expect(codes(judged).filter((one) => doubts.includes(one))).toEqual([code]);
    expect(["leak-not-excluded", "still-rising"]).toContain(
      codes(judged).find((one) => one === "leak-not-excluded" || one === "still-rising"),
    );
  });

  it("is dry and tight where only time is lacking", () => {
    const sound = assess(log((t) => 300 + 3 * Math.log1p(t / 60), 300));
    expect([sound.outcome, sound.cause]).toEqual(["inconclusive", "dry-and-tight"]);
    expect(codes(sound)).toEqual(["rise-forecast", "dry-and-tight"]);
  });

  it("weighs water against an equalization of more than 300 micron, which is unlikely", () => {
    // a gauge that scatters by 5 micron does not tell the two apart by their course; common practice, no source
    const noisy = (size: number, tau: number) =>
      assess(
        Array.from({ length: 91 }, (_, i) => ({
          elapsed: second(10 * i),
          pressure: micron(
            Math.round(100 - size * Math.expm1((-10 * i) / tau) + (5 * (((3 * i) % 7) - 3)) / 3),
          ),
        })),
        { gauge: { accuracy: percent(5), resolution: micronDifference(1) } },
      ).outcome;
    expect([noisy(350, 60), noisy(450, 70)]).toEqual(["pass", "inconclusive"]);
  });
});

it("what came before a step is said of what is open, not of what fails by itself", () => {
  const stepped = (rate: number) =>
    codes(assess(log((t) => (t < 300 ? 300 + 0.7 * t : 700 + rate * (t - 300)), 1200)));
  expect(stepped(0.02)).toContain("found-before-step");
  expect(stepped(1)).toContain("leak-proven");
  expect(stepped(1)).not.toContain("found-before-step");
});

it("three readings ask for the rest of the hold", () => {
  const { actions } = assess(log(() => 300, 120, 60));
  const longer = { code: "vacuum-decay.watch-longer", values: { duration: minute(8), rows: 5 } };
  expect(actions).toEqual([longer]);
});
