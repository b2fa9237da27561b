// A valve between gauge and system that is shut in mid-watch: what the gauge then shows proves nothing. Sums of decays are
// log-convex (Widder, 1941, chapter IV, from memory), so that none of them stops at once; the courses are made by formula.
import fc from "fast-check";
import { degC, liter, micron, minute, percent, second } from "hvac-install-math/quantity";
import { acceptancePolicies, assessVacuumDecay } from "hvac-install-math/vacuum-decay";
import { describe, expect, it } from "vitest";
import { standstill } from "../../src/vacuum-decay/standstill.ts";
import { random } from "./random.ts";

/** A course in micron by minute, with a row each 5 s and the noise of a gauge. */
function watched(course: (minutes: number) => number, minutes = 10, seed = 1) {
  const noise = random(seed);
  const readings = Array.from({ length: 12 * minutes + 1 }, (_, i) => ({
    elapsed: second(5 * i),
    pressure: micron(Math.round(course(i / 12) + noise.normal())),
  }));
  return assessVacuumDecay({
    readings,
    ambient: degC(20),
    volume: liter(3),
    policy: acceptancePolicies.commonPractice500,
    gauge: { accuracy: percent(10), resolution: micron(1).minus(micron(0)) },
  });
}

const saysStop = ({ reasons }: ReturnType<typeof watched>) =>
  reasons.find((one) => one.code === "vacuum-decay.rise-stops");

describe("a gauge that is shut off from the system", () => {
  const leak = (t: number) => 216 + 35 * (1 - Math.exp(-t / 0.2)) + 39 * t;
  const water = (t: number) => 231 + 900 * (1 - Math.exp(-t / 6));

  it.each([
    ["a leak of 39 micron/min", leak, 2.2],
    ["a leak of 39 micron/min", leak, 1.5],
    ["water with a plateau of 1131 micron", water, 1.7],
  ] as const)("with %s behind it passes nothing: %#", (_, course, shut) => {
    const open = watched(course);
    expect(open.outcome).toBe("fail");
    expect(saysStop(open)).toBeUndefined();
    const closed = watched((t) => course(Math.min(t, shut)));
    expect(closed.outcome).toBe("inconclusive");
    expect(saysStop(closed)?.values.elapsed.in(minute)).toBeCloseTo(shut, -0.3);
    expect(closed.actions.map(({ code }) => code)).toContain("vacuum-decay.keep-gauge-open");
  });

  it("is not seen in the watch of a sound system, fast or slow to equalize", () => {
    for (const [seed, tau] of [0.1, 0.4, 1, 2].entries()) {
      const sound = watched(
        (t) => 240 + 60 * (1 - Math.exp(-t / tau)) + 9 * Math.log1p(t),
        15,
        seed,
      );
      expect(saysStop(sound)).toBeUndefined();
    }
  });
});

it("no sum of decays and a leak stops, however it is made", () => {
  const decay = fc.tuple(
    fc.double({ min: 1, max: 500, noNaN: true }),
    fc.double({ min: 0.5, max: 60, noNaN: true }),
  );
  fc.assert(
    fc.property(
      fc.array(decay, { maxLength: 4 }),
      fc.double({ min: 0, max: 50, noNaN: true }),
      // minutes between the readings, as the watch goes on; where the decays take less, nothing can be told
      fc.array(fc.constantFrom(1 / 60, 1 / 4, 1, 2), { minLength: 1, maxLength: 6 }),
      (decays, leak, spacings) => {
        const sparse = [0];
        for (const spacing of spacings)
          for (let i = 0; i < 10; i++) sparse.push((sparse.at(-1) as number) + spacing);
        const rise = (time: number) =>
          decays.reduce(
            (sum, [size, tau]) => sum + size * (1 - Math.exp(-time / tau)),
            leak * time,
          );
        expect(standstill(sparse, sparse.map(rise), 0.5)).toBeUndefined();
        const t = Array.from({ length: 121 }, (_, i) => i / 4);
        const p = t.map(rise);
        const stopped = t.map((_, i) => p[Math.min(i, 40)] as number);
        const late = (p[40] as number) - (p[36] as number);
        if (late > 2)
          expect(standstill(t, stopped, 0.5)).toMatchObject({ at: expect.closeTo(10, -0.5) });
      },
    ),
    { numRuns: 1000 },
  );
});

it("a stop is seen in nine rows, of which two lie in each span", () => {
  // plain arithmetic: 10 micron/min for 4 min, then nothing, where the two minutes before rose by 20
  const t = [0, 1, 2, 3, 4, 5, 6, 7, 8];
  expect(standstill(t, [0, 10, 20, 30, 40, 40, 40, 40, 40], 0.5)).toEqual({ at: 4, missing: 20 });
});

it("one reading that is far off is no stop", () => {
  // 10 micron/min throughout, but for one reading at 4 min
  const t = [0, 1, 2, 3, 4, 5, 6, 7, 8];
  for (const off of [80, 0])
    expect(standstill(t, [0, 10, 20, 30, off, 50, 60, 70, 80], 0.5)).toBeUndefined();
});

it("a pressure that falls is no stop, and stops none later than it rose", () => {
  const t = Array.from({ length: 17 }, (_, i) => i);
  const fall = (i: number) => 10 * Math.max(0, i - 8);
  const swing = t.map((i) => (i < 4 ? 100 - 5 * i : Math.min(90, 70 + 2.5 * i)) - fall(i));
  expect(standstill(t, swing, 0.5)).toBeUndefined();
  const bump = t.map((i) => Math.min(40, 10 * i) - fall(i) / 2); // rises for 4 min, falls from the eighth on
  expect(standstill(t, bump, 0.5)?.at).toBeLessThan(8);
});

it("no single decay stops where a logger paused", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 8, max: 40 }),
      fc.nat(40),
      fc.integer({ min: 2, max: 20 }),
      fc.constantFrom(0.5, 1, 2, 3, 5, 8),
      (rows, before, pause, tau) => {
        const t = Array.from({ length: rows }, (_, i) => (i > before ? i - 1 + pause : i));
        const rise = t.map((time) => 100 * (1 - Math.exp(-time / tau)));
        expect(standstill(t, rise, 0.5)).toBeUndefined();
      },
    ),
    { numRuns: 2000 },
  );
});

describe("no stop", () => {
  const minutes = Array.from({ length: 25 }, (_, i) => i);

  it("is a pause after which the rise goes on at half its rate", () => {
    const spaced = Array.from({ length: 121 }, (_, i) => i / 5);
    const paused = spaced.map((t) => 10 * Math.min(t, 12) + 5 * Math.max(0, t - 14.5));
    expect(standstill(spaced, paused, 1)).toBeUndefined();
    const stopped = spaced.map((t) => 10 * Math.min(t, 12));
    expect(standstill(spaced, stopped, 1)?.at).toBeCloseTo(12, -0.3);
  });

  it("is a last reading that repeats the one before: nothing is read after the end", () => {
    expect(standstill(minutes, [...minutes.slice(0, -1), 23], 0.01)).toBeUndefined();
  });
});

it("a stop is found at the same place wherever the clock begins", () => {
  const minutes = Array.from({ length: 25 }, (_, i) => i);
  const at = (first: number) => {
    const times = minutes.map((t) => t + first);
    return (
      (standstill(
        times,
        minutes.map((t) => 3 * Math.min(t, 18)),
        1,
      )?.at ?? 0) - first
    );
  };
  expect(at(0)).toBeCloseTo(18, -0.3);
  expect(at(100)).toBeCloseTo(at(0), 6);
});
