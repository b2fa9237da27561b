// The whole of what each kind of verdict says. The figures are plain arithmetic on the input, shown with four digits; the
// limits are those of the codes (1/8 in per foot is 100/96 % = 1.042 %) or the input's own.
import {
  assessCondensatePump,
  assessDrainSlope,
  assessIndoorUnitPitch,
  type CondensatePumpInput,
  type DrainPlanInput,
  type DrainSlopeInput,
  drainCautions,
  type IndoorUnitPitchInput,
  planDrain,
  type SlopeReading,
} from "hvac-install-math/condensate";
import { cm, degC, degF, ft, inch, literPerHour, m, mL, percent } from "hvac-install-math/quantity";
import { describe, expect, test } from "vitest";
import { said, shown, told } from "../told.ts";

/** A level that shows percent; without limits of error it counts as exact. */
const level = (slope: number, accuracy?: number): SlopeReading => ({
  slope: percent(slope),
  ...(accuracy !== undefined && { accuracy: percent(accuracy) }),
});

const dangers = ["safety.line-voltage", "safety.work-at-height", "safety.others-govern"];
const anyRoute = ["discharge", "sweating", "sunlight", "freezing", "overflow", "pump-failure"];
const indoors = { outdoors: false, aboveFinishedSpace: false, pumped: false };
const plumbingCodes = ["imc-2021 307.2.1", "ipc-2021 314.2.1", "upc-2021 814.1"];
const decisionRule = "jcgm-106-2012 8.3";
const byCode = "code-slope, slope 1.042 %";

// Limits of error of ±0.1 % are 0.1 %/√3 = 0.05774 % standard and twice that, 0.1155 %, expanded.
describe("the whole verdict on a drain's slope", () => {
  const of = (input: DrainSlopeInput) => told(assessDrainSlope(input));
  const always = {
    cause: undefined,
    assumptions: ["straight", byCode],
    cautions: [...anyRoute, ...dangers],
    actions: [],
    sources: [...plumbingCodes, decisionRule],
  };

  test("that falls enough, by an exact reading", () => {
    // 5 in over 20 ft = 240 in are 2.083 %.
    const reading = { heightAtStart: inch(40), heightAtEnd: inch(35), run: ft(20) };
    expect(of({ reading, route: indoors })).toEqual({
      ...always,
      outcome: "pass",
      reasons: ["falls-enough, required 1.042 %, slope 2.083 %, uncertainty 0 %"],
      assumptions: ["straight", "exact-instrument", byCode],
      cautions: ["discharge", "sweating", ...dangers],
    });
  });

  test("that falls as much as was asked for", () => {
    expect(of({ reading: level(2.5, 0.1), required: percent(2) })).toEqual({
      ...always,
      outcome: "pass",
      reasons: ["falls-enough, required 2 %, slope 2.5 %, uncertainty 0.1155 %"],
      assumptions: ["straight"],
    });
  });

  test("that falls too little, over a run that is not known", () => {
    expect(of({ reading: level(0.5, 0.1) })).toEqual({
      ...always,
      outcome: "fail",
      cause: "too-flat",
      reasons: ["falls-too-little, required 1.042 %, slope 0.5 %, uncertainty 0.1155 %"],
      actions: ["increase-slope, required 1.042 %"],
    });
    expect(assessDrainSlope({ reading: level(0.5) })).not.toHaveProperty("missingFall");
  });

  test("that falls too little over a run", () => {
    // (1.5 − 0.5) % of 20 ft are 0.2 ft.
    expect(of({ reading: level(0.5, 0.1), required: percent(1.5), run: ft(20) })).toEqual({
      ...always,
      outcome: "fail",
      cause: "too-flat",
      reasons: ["falls-too-little, required 1.5 %, slope 0.5 %, uncertainty 0.1155 %"],
      assumptions: ["straight"],
      actions: ["increase-fall, fall 0.2 ft, run 20 ft"],
    });
  });

  test("that rises", () => {
    expect(of({ reading: level(-0.5, 0.1) })).toEqual({
      ...always,
      outcome: "fail",
      cause: "rises",
      reasons: ["rises, required 1.042 %, slope -0.5 %, uncertainty 0.1155 %"],
      actions: ["increase-slope, required 1.042 %"],
    });
  });

  test("that lies between the figures of the codes", () => {
    expect(of({ reading: level(1.02, 0.01) })).toEqual({
      ...always,
      outcome: "inconclusive",
      reasons: ["codes-differ, least 1 %, required 1.042 %, slope 1.02 %, uncertainty 0.01155 %"],
      actions: ["ask-code, required 1.042 %"],
    });
  });

  // The guard band is 1.645 times the standard uncertainty, for ±0.02 % that is 0.019 %: 1.04 % is more than 1 % for sure,
  // and 1 % is less than 1.042 % for sure, but each is too near to the other figure.
  test.each([
    [1.04, "1.042 %"],
    [1, "1 %"],
  ])("of %f ±0.02 %, which is too near to one of the figures", (slope, required) => {
    expect(of({ reading: level(slope, 0.02) })).toEqual({
      ...always,
      outcome: "inconclusive",
      reasons: [`slope-near, required ${required}, slope ${slope} %, uncertainty 0.02309 %`],
      actions: ["measure-better"],
    });
  });

  test("that is too near to what was asked for", () => {
    expect(of({ reading: level(1.02, 0.1), required: percent(1) })).toEqual({
      ...always,
      outcome: "inconclusive",
      reasons: ["slope-near, required 1 %, slope 1.02 %, uncertainty 0.1155 %"],
      assumptions: ["straight"],
      actions: ["measure-better"],
    });
  });

  test("that is steeper than a drain is hung, and flatter than the codes ask for", () => {
    expect(of({ reading: level(6, 0.1), required: percent(0.6) })).toEqual({
      ...always,
      outcome: "pass",
      reasons: ["falls-enough, required 0.6 %, slope 6 %, uncertainty 0.1155 %"],
      assumptions: ["straight"],
      cautions: [
        "steep, slope 6 %, usual 5 %",
        ...anyRoute,
        "flatter-than-code, least 1 %",
        ...dangers,
      ],
    });
    expect(of({ reading: level(5, 0.1), required: percent(1) }).cautions).toEqual(always.cautions);
  });

  // ±0.1 % at 80 %: 0.8416 · 0.05774 % = 0.049 %; at 95 %: 0.095 %.
  test("is as sure as was asked for", () => {
    const at = (confidence?: number) =>
      of({ reading: level(2.07, 0.1), required: percent(2), confidence }).outcome;
    expect([at(0.8), at(0.95), at()]).toEqual(["pass", "inconclusive", "inconclusive"]);
  });
});

describe("the whole verdict on the pitch of an indoor unit", () => {
  const of = (input: IndoorUnitPitchInput) => told(assessIndoorUnitPitch(input));
  const always = {
    cause: undefined,
    assumptions: ["straight"],
    cautions: dangers,
    actions: [],
    sources: ["common-practice", decisionRule],
  };
  const minimum = percent(0.5);
  const maximum = percent(2);

  test("without limits of the manual, by an exact reading", () => {
    expect(of({ reading: level(0.5) })).toEqual({
      ...always,
      outcome: "pass",
      reasons: ["pitch-enough, minimum 0 %, pitch 0.5 %, uncertainty 0 %"],
      assumptions: ["straight", "exact-instrument", "level-is-enough", "maximum-pitch-not-checked"],
    });
  });

  test("above the manual's minimum", () => {
    expect(of({ reading: level(1, 0.1), minimum })).toEqual({
      ...always,
      outcome: "pass",
      reasons: ["pitch-enough, minimum 0.5 %, pitch 1 %, uncertainty 0.1155 %"],
      assumptions: ["straight", "maximum-pitch-not-checked"],
    });
  });

  test("between the manual's limits", () => {
    expect(of({ reading: level(1, 0.1), minimum, maximum })).toEqual({
      ...always,
      outcome: "pass",
      reasons: ["pitch-within, maximum 2 %, minimum 0.5 %, pitch 1 %, uncertainty 0.1155 %"],
    });
  });

  test("below the manual's minimum", () => {
    expect(of({ reading: level(0.2, 0.1), minimum, maximum })).toEqual({
      ...always,
      outcome: "fail",
      cause: "too-little",
      reasons: ["pitch-too-little, minimum 0.5 %, pitch 0.2 %, uncertainty 0.1155 %"],
      actions: ["raise-pitch, minimum 0.5 %"],
    });
  });

  test("away from the drain", () => {
    expect(of({ reading: level(-0.5, 0.1) })).toEqual({
      ...always,
      outcome: "fail",
      cause: "away-from-drain",
      reasons: ["pitch-away, minimum 0 %, pitch -0.5 %, uncertainty 0.1155 %"],
      assumptions: ["straight", "level-is-enough", "maximum-pitch-not-checked"],
      actions: ["raise-pitch, minimum 0 %"],
    });
  });

  // Away for sure is below −0.095 % at 95 %, below −0.049 % at 80 %.
  test("away from the drain only where the level tells so", () => {
    const at = (slope: number, accuracy: number, confidence?: number) =>
      of({ reading: level(slope, accuracy), minimum, confidence }).cause;
    expect([at(-0.09, 0.1), at(-0.1, 0.1)]).toEqual(["too-little", "away-from-drain"]);
    expect(at(-0.09, 0.1, 0.8)).toBe("away-from-drain");
    expect(at(0, 0)).toBe("too-little");
  });

  test("above the manual's maximum", () => {
    expect(of({ reading: level(3, 0.1), maximum })).toEqual({
      ...always,
      outcome: "fail",
      cause: "too-much",
      reasons: ["pitch-too-much, maximum 2 %, pitch 3 %, uncertainty 0.1155 %"],
      assumptions: ["straight", "level-is-enough"],
      actions: ["lower-pitch, maximum 2 %"],
    });
  });

  test("too near to a limit, and steeper than a unit is hung", () => {
    expect(of({ reading: level(5.05, 0.1), minimum: percent(5) })).toEqual({
      ...always,
      outcome: "inconclusive",
      reasons: ["pitch-near, pitch 5.05 %, uncertainty 0.1155 %"],
      assumptions: ["straight", "maximum-pitch-not-checked"],
      cautions: ["steep, slope 5.05 %, usual 5 %", ...dangers],
      actions: ["measure-better"],
    });
  });
});

describe("the whole plan of a drain", () => {
  const plan = (input: DrainPlanInput) => planDrain(input);
  const figuresOf = ({ method, worstPoint, ...found }: ReturnType<typeof plan>) =>
    [
      method,
      worstPoint,
      ...[found.availableFall, found.neededFall, found.shortfall, found.lift].map(shown),
    ] as const;

  test("that runs off by itself", () => {
    // 8 m at 1/8 in per foot need 8.333 cm; 10 cm are there.
    const points = [
      { distance: m(4), height: cm(195) },
      { distance: m(8), height: cm(190) },
    ];
    const found = plan({ outletHeight: cm(200), points });
    expect(told(found)).toEqual({
      outcome: "pass",
      cause: undefined,
      reasons: ["gravity, available 10 cm, needed 8.333 cm"],
      assumptions: ["straight", byCode],
      cautions: [...anyRoute.filter((code) => code !== "pump-failure"), ...dangers],
      actions: [],
      sources: plumbingCodes,
    });
    expect(figuresOf(found)).toEqual(["gravity", undefined, "10 cm", "8.333 cm", "0 cm", "0 cm"]);
    expect(found).not.toHaveProperty("worstPoint");
    expect(found).not.toHaveProperty("cause");
  });

  test("that needs a pump", () => {
    // At 0.6 % the first 5 m fall 10 cm of 3 cm; the next 5 m rise 30 cm and are 33 cm short; the last falls enough.
    const points = [
      { distance: m(5), height: cm(190) },
      { distance: m(10), height: cm(220) },
      { distance: m(10), height: cm(20) },
    ];
    const route = { ...indoors, outdoors: true, lowestOutdoorTemperature: degC(5) };
    const found = plan({ outletHeight: cm(200), points, slope: percent(0.6), route });
    expect(told(found)).toEqual({
      outcome: "fail",
      cause: "needs-pump",
      reasons: ["fall-short, point 2, shortfall 33 cm"],
      assumptions: ["straight"],
      cautions: [
        "discharge",
        "sweating",
        "sunlight",
        "pump-failure",
        "flatter-than-code, least 1 %",
        ...dangers,
      ],
      actions: ["lower-point, lift 20 cm, point 2, shortfall 33 cm"],
      sources: plumbingCodes,
    });
    expect(figuresOf(found)).toEqual(["pump", 1, "180 cm", "6 cm", "33 cm", "20 cm"]);
  });
});

describe("the whole verdict on a condensate pump", () => {
  const curve = [
    { lift: m(0), flow: literPerHour(15) },
    { lift: m(10), flow: literPerHour(5) },
  ]; // invented
  const pump = (lift: number, more: Partial<CondensatePumpInput> = {}) =>
    assessCondensatePump({ condensate: literPerHour(4), lift: m(lift), curve, ...more });
  const always = {
    cautions: [...anyRoute, ...dangers],
    sources: ["common-practice"],
  };

  test("that keeps up", () => {
    // 15 − 6 of the 10 L/h that it loses over 10 m: 9 L/h; twice 4 L/h are 8 L/h.
    expect(told(pump(6))).toEqual({
      ...always,
      outcome: "pass",
      cause: undefined,
      reasons: ["pump-keeps-up, flow 9 L/h, lift 6 m, required 8 L/h"],
      assumptions: ["pump-margin, margin 2", "pump-curve-straight"],
      actions: [],
    });
    expect(pump(6)).not.toHaveProperty("startInterval");
  });

  test("that is too slow", () => {
    // Three times 4 L/h are 12 L/h.
    expect(told(pump(6, { margin: 3 }))).toEqual({
      ...always,
      outcome: "fail",
      cause: "too-slow",
      reasons: ["pump-too-slow, flow 9 L/h, lift 6 m, required 12 L/h"],
      assumptions: ["pump-margin, margin 3", "pump-curve-straight"],
      actions: ["other-pump, lift 6 m, required 12 L/h"],
    });
  });

  test("that does not lift so high", () => {
    expect(told(pump(11))).toEqual({
      ...always,
      outcome: "fail",
      cause: "lift-too-high",
      reasons: ["pump-lift-too-high, highest 10 m, lift 11 m"],
      assumptions: ["pump-margin, margin 2", "pump-curve-straight"],
      actions: ["other-pump, lift 11 m, required 8 L/h"],
    });
  });

  test("has no duty cycle and no starts where no more leaves than comes", () => {
    for (const condensate of [5, 6]) {
      const found = pump(10, {
        condensate: literPerHour(condensate),
        margin: 1,
        reservoir: mL(30),
      });
      expect(found.outcome).toBe(condensate === 5 ? "pass" : "fail");
      expect(found).not.toHaveProperty("dutyCycle");
      expect(found).not.toHaveProperty("startInterval");
    }
  });

  // 230 cm are a trifle more than 2.3 m in binary.
  test("is at the end of its curve also where that is written in another unit", () => {
    const short = [curve[0], { lift: m(2.3), flow: literPerHour(8) }] as typeof curve;
    const found = pump(0, { lift: cm(230), curve: short });
    expect([found.outcome, found.flowAtLift.toString()]).toEqual(["pass", "8 L/h"]);
    const spent = [curve[0], { lift: m(2.3), flow: literPerHour(0) }] as typeof curve;
    expect(pump(0, { lift: cm(230), curve: spent }).flowAtLift.si).toBe(0);
  });
});

describe("the cautions of a route", () => {
  test.each([
    ["that is not known", {}, anyRoute],
    ["that is ruled out wholly", indoors, []],
    [
      "that has all",
      {
        outdoors: true,
        aboveFinishedSpace: true,
        pumped: true,
        lowestOutdoorTemperature: degC(-5),
      },
      ["sunlight", "freezing", "overflow", "pump-failure"],
    ],
    ["indoors", { outdoors: false }, ["overflow", "pump-failure"]],
    ["outdoors", { ...indoors, outdoors: true }, ["sunlight", "freezing"]],
    ["above finished space", { ...indoors, aboveFinishedSpace: true }, ["overflow"]],
    ["with a pump", { ...indoors, pumped: true }, ["pump-failure"]],
    [
      "that freezes at 0 °C",
      { ...indoors, outdoors: true, lowestOutdoorTemperature: degC(0) },
      ["sunlight", "freezing"],
    ],
    [
      "that freezes at 32 °F",
      { ...indoors, outdoors: true, lowestOutdoorTemperature: degF(32) },
      ["sunlight", "freezing"],
    ],
    [
      "that does not freeze",
      { ...indoors, outdoors: true, lowestOutdoorTemperature: degC(0.1) },
      ["sunlight"],
    ],
  ])("%s", (_, route, found) => {
    const expected = [...new Set(["discharge", "sweating", ...found]), ...dangers];
    expect(drainCautions(route).map(said)).toEqual(expected);
  });
});
