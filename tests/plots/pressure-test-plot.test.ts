import { pressureTestPlot } from "hvac-install-math/plots";
import {
  assessPressureLog,
  assessPressureTest,
  type PressureTestLog,
} from "hvac-install-math/pressure-test";
import { hour, kPa, minute, psi, psia, psig } from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import { pointsOf } from "./markup.ts";
import { metric, nightLog, reader, twoReadings } from "./samples.ts";

/** What the ring with its uncertainty at the end says against the explained pressure and the limit. */
function readOff(svg: string): "pass" | "leak" | "neither" {
  const ends = [
    ...svg.matchAll(/<path d="([^"]*)" fill="none" stroke="var\(--plot-(limit|model)[^>]*>/g),
  ]
    .map(([, d = "", role]) => ({ role, points: pointsOf(d) }))
    .filter(({ points }) => points.length > 1)
    .map(({ role, points }) => [role, points.at(-1)?.[1]] as const);
  const { model = Number.NaN, limit = Number.NaN } = Object.fromEntries(ends);
  const whisker = /<path d="M[\d.]+,([\d.]+)H[\d.]+M[\d.]+,[\d.]+V([\d.]+)/.exec(svg);
  const [top, bottom] = [Number(whisker?.[1]), Number(whisker?.[2])]; // y grows downwards
  if (top > model) return "leak";
  return bottom <= limit ? "pass" : "neither";
}

describe("the ring with its uncertainty", () => {
  it.each([
    [0, "pass", "pass"],
    [1.5, "fail", "leak"],
  ] as const)("for a leak of %s psi an hour says with the log: %s", (leak, outcome, said) => {
    const log = nightLog(leak);
    const verdict = assessPressureLog(log);
    expect(verdict.outcome).toBe(outcome);
    expect(readOff(pressureTestPlot(log, verdict, reader))).toBe(said);
  });

  it("agrees with the verdict on two readings, with a limit and without", () => {
    for (let end = 470; end <= 481; end += 0.5) {
      const test = { ...twoReadings, end: { ...twoReadings.end, pressure: psig(end) } };
      const verdict = assessPressureTest(test);
      if (verdict.cause === "unexplained-rise") continue;
      const said = readOff(pressureTestPlot(test, verdict, reader));
      expect(said === "pass", `${end} psig`).toBe(verdict.outcome === "pass");
      expect(said === "leak", `${end} psig`).toBe(verdict.cause === "leak");
      const { criterion: _, ...open } = test;
      const leak = assessPressureTest(open);
      const proven = readOff(pressureTestPlot(open, leak, reader)) === "leak";
      expect(proven, `${end} psig without a limit`).toBe(leak.outcome === "fail");
    }
  });
});

describe("the words", () => {
  it("say drop, uncertainty and the limit", () => {
    const test = { ...twoReadings, criterion: { maximumDrop: psi(3.75) } };
    const svg = pressureTestPlot(test, assessPressureTest(test), reader);
    expect(svg).toContain(">PASS</tspan>: drop 0.37 psi ± 1.2 psi, limit 3.8 psi<");
    expect(svg).toContain(
      "Result: PASS. The pressure drop, 0.37 psi ± 1.2 psi, is within the 3.8 psi limit.",
    );
    expect(svg).toContain("2 readings over 12 h, from 500 psig at 80 °F to 479 psig at 60 °F");
  });

  it("are in the reader's units", () => {
    const svg = pressureTestPlot(twoReadings, assessPressureTest(twoReadings), {
      ...metric,
      units: { duration: minute },
    });
    expect(svg).toMatch(/>Pressure, kPag<.*>Gas temperature, °C<.*>Time, min</);
    expect(svg).toContain("drop 2.5 kPa ± 8.0 kPa, limit 27.6 kPa");
  });

  it("leave out the temperature when asked, and say when no time was recorded", () => {
    const { elapsed: _, ...end } = twoReadings.end;
    const test = { ...twoReadings, end };
    const svg = pressureTestPlot(test, assessPressureTest(test), { ...reader, temperature: false });
    expect(svg).not.toContain("Gas temperature");
    expect(svg).toMatch(/>start<.*>end<.*>Time not recorded</);
  });
});

describe("the limit", () => {
  const limits = (svg: string) =>
    [...svg.matchAll(/<path d="([^"]*)" fill="none" stroke="var\(--plot-(limit|model)[^>]*>/g)]
      .map(([, d = "", role]) => ({ role, points: pointsOf(d) }))
      .filter(({ points }) => points.length > 1);

  it("grows from nothing when it is a rate, and keeps its distance when it is a drop", () => {
    const distance = (test: PressureTestLog) => {
      const lines = limits(pressureTestPlot(test, assessPressureLog(test), reader));
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
    expect(pressureTestPlot(mixed, verdict, reader)).toBe(pressureTestPlot(log, verdict, reader));
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
    expect(() => pressureTestPlot(change(twoReadings) as never, verdict, reader)).toThrow(
      expect.objectContaining({ name: "InvalidInputError", argument }),
    );
  });

  it.each<[string, object]>([
    ["assessment.correctedDrop", {}],
    ["assessment.correctedDrop.value", { correctedDrop: { value: 3 } }],
    ["assessment.limit", { correctedDrop: verdict.correctedDrop, limit: kPa(-1) }],
  ])("so is an assessment that is none: %s", (argument, wrong) => {
    expect(() => pressureTestPlot(twoReadings, wrong as never, reader)).toThrow(
      expect.objectContaining({ name: "InvalidInputError", argument }),
    );
  });

  it.each<[string, object]>([
    ["options.units.gaugePressure", { units: { gaugePressure: psia } }],
    ["options.units.duration", { units: { duration: psig } }],
    ["options.units.temperature", { units: { temperature: "°F" } }],
    ["temperature", { temperature: "no" }],
  ])("so is a unit or choice: %s", (argument, options) => {
    expect(() =>
      pressureTestPlot(twoReadings, verdict, { ...reader, ...options } as never),
    ).toThrow(expect.objectContaining({ name: "InvalidInputError", argument }));
  });
});
