import { pressureTestPlot } from "hvac-install-math/plots";
import {
  assessPressureLog,
  assessPressureTest,
  type PressureTestLog,
} from "hvac-install-math/pressure-test";
import { degC, hour, kPa, kPag, minute, psi, psia, psig } from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import { attributeOf, pointsOf } from "./markup.ts";
import { nightLog, twoReadings } from "./samples.ts";

/** Where the ring lies against the guard band at the end: y grows downwards. */
function ringAgainstBand(svg: string): "above" | "inside" | "below" {
  const band = pointsOf(attributeOf(svg, /<path d="[^"]*" fill="var[^>]*fill-opacity[^>]*>/, "d"));
  const end = Math.max(...band.map(([x]) => x));
  const edges = band.filter(([x]) => x === end).map(([, y]) => y);
  const rings = [...svg.matchAll(/<circle [^>]*>/g)].map(([circle]) => circle);
  const y = Number(attributeOf(rings.at(-1) ?? "", /.*/, "cy"));
  if (y < Math.min(...edges)) return "above";
  return y > Math.max(...edges) ? "below" : "inside";
}

describe("the ring against the guard band", () => {
  it.each([
    [0, "pass", "above"],
    [0.4, "inconclusive", "inside"],
    [1.5, "fail", "below"],
  ] as const)(
    "for a leak of %s psi an hour the log says %s and the ring lies %s",
    (leak, outcome, where) => {
      const log = nightLog(leak);
      const verdict = assessPressureLog(log);
      expect(verdict.outcome).toBe(outcome);
      expect(ringAgainstBand(pressureTestPlot(log, verdict))).toBe(where);
    },
  );

  it("agrees with the verdict on two readings, with a limit and without", () => {
    for (let end = 470; end <= 484; end += 0.5) {
      const test = { ...twoReadings, end: { ...twoReadings.end, pressure: psig(end) } };
      const verdict = assessPressureTest(test);
      const where = ringAgainstBand(pressureTestPlot(test, verdict));
      const expected = { pass: "above", inconclusive: "inside", fail: "below" }[verdict.outcome];
      if (verdict.cause !== "unexplained-rise") expect(where, `${end} psig`).toBe(expected);
      const { criterion: _, ...open } = test;
      const leak = assessPressureTest(open);
      const below = ringAgainstBand(pressureTestPlot(open, leak)) === "below";
      expect(below, `${end} psig without a limit`).toBe(leak.outcome === "fail");
    }
  });
});

describe("the words", () => {
  it("say drop, uncertainty and the limit as it was stated", () => {
    const test = { ...twoReadings, criterion: { maximumDrop: psi(3.75) } };
    const svg = pressureTestPlot(test, assessPressureTest(test));
    expect(svg).toContain(">pass</tspan>: corrected drop 0.4 psi ± 1.6 psi, limit 3.75 psi<");
    expect(svg).toContain("Result: pass. Drop 0.3694 psi + 1.637 psi stays within");
    expect(svg).toContain("2 readings over 12 h, from 500 psig at 80 °F to 479 psig at 60 °F");
  });

  it("are in the reader's units", () => {
    const svg = pressureTestPlot(twoReadings, assessPressureTest(twoReadings), {
      pressureUnit: kPag,
      temperatureUnit: degC,
      timeUnit: minute,
    });
    expect(svg).toMatch(/>pressure, kPag<.*>gas temperature, °C<.*>time, min</);
    expect(svg).toContain("corrected drop 3 kPa ± 11 kPa, limit 27.579 kPa");
  });

  it("leave out the temperature when asked, and say when no time was recorded", () => {
    const { elapsed: _, ...end } = twoReadings.end;
    const test = { ...twoReadings, end };
    const svg = pressureTestPlot(test, assessPressureTest(test), { temperature: false });
    expect(svg).not.toContain("gas-temperature");
    expect(svg).toMatch(/>start<.*>end<.*>time not recorded</);
  });
});

describe("the limit", () => {
  const limits = (svg: string) =>
    [...svg.matchAll(/<path d="([^"]*)" fill="none" stroke="var\(--plot-(limit|model)[^>]*>/g)]
      .map(([, d = "", role]) => ({ role, points: pointsOf(d) }))
      .filter(({ points }) => points.length > 1);

  it("grows from nothing when it is a rate, and keeps its distance when it is a drop", () => {
    const distance = (test: PressureTestLog) => {
      const lines = limits(pressureTestPlot(test, assessPressureLog(test)));
      const [limit, model] = ["limit", "model"].map(
        (role) => lines.find((line) => line.role === role)?.points ?? [],
      );
      const at = (i: number) => (limit?.at(i)?.[1] ?? 0) - (model?.at(i)?.[1] ?? 0);
      return [at(0), at(-1)] as const;
    };
    const rate = distance(nightLog(0));
    expect(rate[0]).toBeCloseTo(0, 1);
    expect(rate[1]).toBeGreaterThan(20);
    const drop = distance({ ...nightLog(0), criterion: { maximumDrop: psi(6) } });
    expect(drop[0]).toBeCloseTo(drop[1], 1);
  });
});

describe("input", () => {
  it("is not modified, whatever its order", () => {
    const log = nightLog(0.4, 30);
    const mixed = { ...log, readings: Object.freeze([...log.readings].reverse()) };
    const verdict = assessPressureLog(log);
    expect(pressureTestPlot(mixed, verdict)).toBe(pressureTestPlot(log, verdict));
  });

  const verdict = assessPressureTest(twoReadings);
  it.each<[string, (test: typeof twoReadings) => unknown]>([
    ["end.pressure", (test) => ({ ...test, end: { ...test.end, pressure: psia(500) } })],
    ["end.temperature", (test) => ({ ...test, end: { ...test.end, temperature: 60 } })],
    ["end.elapsed", (test) => ({ ...test, end: { ...test.end, elapsed: hour(0) } })],
    ["end.elapsed", (test) => ({ ...test, end: { ...test.end, elapsed: psi(1) } })],
    ["start", ({ end }) => ({ end })],
    ["readings", () => ({ readings: [] })],
    ["readings", () => ({ readings: "many" })],
    ["readings[1]", () => ({ readings: [{ ...twoReadings.start }, null] })],
    [
      "readings[0].elapsed",
      () => ({
        readings: [twoReadings.start, { ...twoReadings.end }].map(({ elapsed: _, ...one }) => one),
      }),
    ],
  ])("that cannot be drawn is refused by name: %s", (argument, change) => {
    expect(() => pressureTestPlot(change(twoReadings) as never, verdict)).toThrow(
      expect.objectContaining({ name: "InvalidInputError", argument }),
    );
  });

  it.each<[string, object]>([
    ["assessment.correctedDrop", {}],
    ["assessment.correctedDrop.value", { correctedDrop: { value: 3 } }],
    ["assessment.limit", { correctedDrop: verdict.correctedDrop, limit: kPa(-1) }],
  ])("so is an assessment that is none: %s", (argument, wrong) => {
    expect(() => pressureTestPlot(twoReadings, wrong as never)).toThrow(
      expect.objectContaining({ name: "InvalidInputError", argument }),
    );
  });

  it.each<[string, object]>([
    ["pressureUnit", { pressureUnit: psia }],
    ["timeUnit", { timeUnit: psig }],
    ["temperatureUnit", { temperatureUnit: "°F" }],
    ["temperature", { temperature: "no" }],
  ])("so is a unit or choice: %s", (argument, options) => {
    expect(() => pressureTestPlot(twoReadings, verdict, options as never)).toThrow(
      expect.objectContaining({ name: "InvalidInputError", argument }),
    );
  });
});
