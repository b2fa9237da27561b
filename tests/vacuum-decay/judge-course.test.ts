// What the course says beside the figures: a step in the hold, and what came before it. Common practice, no source.
import { describe, expect, it } from "vitest";
import { degC, liter, micron, minute, percent, second } from "../../src/quantity/index.ts";
import { analyze } from "../../src/vacuum-decay/analysis.ts";
import {
  type Collector,
  collect,
  createCollector,
  type Segment,
} from "../../src/vacuum-decay/collect.ts";
import { createWorkspace } from "../../src/vacuum-decay/curve/workspace.ts";
import { judgeBefore, judgeCourse } from "../../src/vacuum-decay/judge-course.ts";
import { acceptancePolicies } from "../../src/vacuum-decay/policies/index.ts";
import { settingsOf } from "../../src/vacuum-decay/settings.ts";

const settings = settingsOf({
  ambient: degC(20),
  coldest: degC(-30),
  volume: liter(3),
  policy: acceptancePolicies.commonPractice500, // ten minutes
  isolation: "isolation-valve",
  gauge: { accuracy: percent(10) },
});
/** A log in micron by second, a reading each 10 s or another spacing. */
function logOf(pressure: (t: number) => number, until: number, spacing = 10): Collector {
  const log = createCollector(settings, 100);
  for (let t = 0, row = 0; t <= until; t += spacing) {
    collect(log, t, (pressure(t) + ((3 * t) % 7) / 10) * micron.scale, row++);
  }
  return log;
}
const flat = () => 200;
const stage = { over: true, confidence: 0.95, mayFail: true, mayPass: true };

describe("the course", () => {
  const judged = (log: Collector, confidence = 0.95) => {
    const analysis = analyze(log, log.segment as Segment, createWorkspace());
    if (!analysis) throw new Error("too few readings");
    return judgeCourse(log, analysis, { ...stage, confidence });
  };
  const codes = (log: Collector, confidence?: number) =>
    judged(log, confidence).map(({ reason }) => reason.code.replace("vacuum-decay.", ""));

  it("of a steady vacuum leaves nothing to say", () => {
    expect(codes(logOf(flat, 900))).toEqual([]);
  });

  it("with a step is to be held again, until the hold is over after it", () => {
    const stepped = (until: number) => logOf((t) => (t < 300 ? 150 : 210), until);
    const [point] = judged(stepped(600));
    expect(point?.reason).toEqual({
      code: "vacuum-decay.step-before",
      values: { elapsed: second(300) },
    });
    expect(point?.outcome).toBe("inconclusive");
    expect(point?.actions).toEqual([
      { code: "vacuum-decay.hold-again", values: { hold: minute(10) } },
    ]);
    expect([codes(stepped(890)), codes(stepped(900))]).toEqual([["step-before"], []]);
  });

  it("with a jump that nothing has confirmed yet is to be held again, however long the hold", () => {
    const [point] = judged(logOf((t) => (t < 1200 ? 150 : 210), 1200));
    expect(point?.reason).toMatchObject({ values: { elapsed: second(1200) } });
  });

  it("that falls has to fall by more than it scatters, and no gauge scatters by more than 2 %", () => {
    // 5 micron, 1 % of the reading and three times the scatter have to be exceeded after the first three minutes
    const falls = (by: number, scatter: number) =>
      codes(logOf((t) => 200 - (by * t) / 600 + (((t / 10) % 2) - 0.5) * 2 * scatter, 600));
    expect([falls(20, 0), falls(20, 6)]).toEqual([["pressure-falls"], []]);
    expect(falls(60, 30)).toContain("pressure-falls");
  });

  it("guards what ice would hold by the gauge's error at the confidence of the verdict", () => {
    // 285.1 micron over ice at −30 °C, IAPWS R14-08; less 1.645 · 10 %/√3 are 258.0, less 2.326 · 10 %/√3 are 246.8
    const at = (p: number, confidence: number) =>
      codes(
        logOf(() => p, 900),
        confidence,
      );
    expect([at(256, 0.95), at(260, 0.95)]).toEqual([[], ["ice-not-excluded"]]);
    expect([at(244, 0.99), at(248, 0.99)]).toEqual([[], ["ice-not-excluded"]]);
  });
});

describe("what came before a step", () => {
  const found = (rate: number, until: number, spacing?: number) => {
    const log = logOf((t) => 200 + (rate * t) / 60, until, spacing);
    return judgeBefore(log, log.segment as Segment, createWorkspace());
  };

  it("is evidence against where it proved a leak: with 99 %, in two minutes at least", () => {
    const [point, ...more] = found(40, 300);
    expect(more).toEqual([]);
    expect(point?.outcome).toBe("inconclusive");
    expect(point?.reason.code).toBe("vacuum-decay.found-before-step");
    const { low, high } = (point?.reason.values ?? {}) as Record<"low" | "high", { si: number }>;
    const rateOf = ({ si }: { si: number }) => (60 * si) / micron.scale;
    expect(rateOf(low)).toBeLessThan(40);
    expect(rateOf(low)).toBeGreaterThan(20);
    expect(rateOf(high)).toBeGreaterThan(40);
    expect(rateOf(high)).toBeLessThan(60);
    expect(point?.actions).toEqual([
      { code: "vacuum-decay.hold-again", values: { hold: minute(10) } },
    ]);
    expect([found(90, 110), found(90, 120).length]).toEqual([[], 1]);
  });

  it("is none for a system that was sound then, or where nothing was proven", () => {
    expect([found(0, 600), found(6, 600)]).toEqual([[], []]);
  });

  it("is none by fewer than eight readings, which prove no leak, nor by three, to which nothing is fitted", () => {
    expect([found(200, 420, 60).length, found(200, 360, 60), found(200, 240, 120)]).toEqual([
      1,
      [],
      [],
    ]);
  });
});
