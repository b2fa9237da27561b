// What a verdict says besides its outcome: every reason, action, assumption, caution and source, with its figures.
import type { Assessment, Statement } from "hvac-install-math/assessment";
import * as operating from "hvac-install-math/operating-check";
import {
  degC,
  deltaC,
  deltaF,
  deltaK,
  isInvalidInputError,
  kPa,
  kPag,
  psig,
  type Quantity,
  standardAtmosphere,
} from "hvac-install-math/quantity";
import { assessSubcooling, assessSuperheat, R410A, R717 } from "hvac-install-math/refrigerants";
import { describe, expect, test } from "vitest";

/** A statement in short: its code without the module, and its figures in their units. */
const short = ({ code, values }: Statement) =>
  [
    code.replace("operating-check.", ""),
    ...Object.entries(values).map(([name, value]) =>
      typeof value === "string"
        ? `${name}=${value}`
        : `${name}=${(value as Quantity<"gaugePressure">).toString(undefined, 2)}`,
    ),
  ].join(" ");

const told = (verdict: Assessment) => ({
  outcome: verdict.outcome,
  ...("cause" in verdict && { cause: verdict.cause }),
  reasons: verdict.reasons.map(short),
  actions: verdict.actions?.map(short),
  assumptions: verdict.assumptions.map(short),
  cautions: verdict.cautions.map(({ kind, ...said }) => `${kind}: ${short(said)}`),
  sources: verdict.sources.map(({ source, clause }) => `${source} ${clause}`.trim()),
});

// What every answer of this module carries, by its guide: the findings first, who governs last.
const finding = "finding: hoses-lose-refrigerant";
const dangers = [
  "danger: safety.refrigerant-contact",
  "danger: safety.running-unit",
  "danger: safety.work-at-height",
  "danger: mode-first",
];
const governing = "governing: safety.others-govern";
const saturation = R410A.sources.map(({ source, clause }) => `${source} ${clause}`.trim());

// Coils at −5 °C to 5 °C and 40 °C to 50 °C. R410A, computed with another implementation of Lemmon (2003), see
// tests/published/data/saturation.csv, less 101.325 kPa: dew 678.310 and 933.176 kPa, bubble 2425.642 and 3071.072 kPa.
const unit = {
  refrigerant: R410A,
  mode: "cooling",
  indoorTemperature: degC(25),
  outdoorTemperature: degC(35),
  evaporatorApproach: { low: deltaK(20), high: deltaK(30) },
  condenserApproach: { low: deltaK(5), high: deltaK(15) },
  atmosphere: standardAtmosphere,
} as const;
const lowSide = "from=576.99 kPag to=831.85 kPag";
const highSide = "from=2324.32 kPag to=2969.75 kPag";
// The same coils in heating: the indoor coil condenses.
const winter = {
  mode: "heating",
  indoorTemperature: degC(35),
  outdoorTemperature: degC(25),
} as const;

describe("a service reading", () => {
  const gauge = { accuracy: kPa(20) }; // guard 1.645 · 20 kPa / √3 = 19.0 kPa
  const exact = "exact-gauge";
  const stated = ["steady-full-speed", "approaches-as-stated"];
  const outdoors = "expands-outdoors";
  const cause = ["find-the-cause"];
  const mixedUp = ["check-mode-and-port", "find-the-cause"];

  test.each<
    [
      what: string,
      pressure: number,
      more: object,
      outcome: string,
      reason: string,
      actions: string[],
      assumed: string[],
    ]
  >([
    ["within", 700, {}, "pass", `within-window pressure=700.00 kPag ${lowSide}`, [], [exact]],
    [
      "within, gauge known",
      700,
      { gauge },
      "pass",
      `within-window pressure=700.00 kPag ${lowSide}`,
      [],
      [],
    ],
    [
      "below",
      500,
      {},
      "below-window",
      `below-window pressure=500.00 kPag ${lowSide}`,
      cause,
      [exact],
    ],
    [
      "above",
      900,
      {},
      "above-window",
      `above-window pressure=900.00 kPag ${lowSide}`,
      cause,
      [exact],
    ],
    [
      "above both",
      3000,
      {},
      "above-window",
      `above-window pressure=3000.00 kPag ${lowSide}`,
      cause,
      [exact],
    ],
    [
      "of the high side in cooling",
      2600,
      {},
      "other-side",
      `other-side pressure=2600.00 kPag ${lowSide} side=operating-check.side.high`,
      mixedUp,
      [exact],
    ],
    [
      "of the low side in heating",
      700,
      winter,
      "other-side",
      `other-side pressure=700.00 kPag ${highSide} side=operating-check.side.low`,
      mixedUp,
      [exact],
    ],
    [
      "in heating",
      2600,
      winter,
      "pass",
      `within-window pressure=2600.00 kPag ${highSide}`,
      [],
      [exact],
    ],
    [
      "below both",
      500,
      winter,
      "below-window",
      `below-window pressure=500.00 kPag ${highSide}`,
      cause,
      [exact],
    ],
    [
      "on the liquid port",
      700,
      { port: "liquid" },
      "pass",
      `within-window pressure=700.00 kPag ${lowSide}`,
      [],
      [outdoors, exact],
    ],
    [
      "on the liquid port, expansion known",
      2600,
      { port: "liquid", expansion: "evaporating-unit", gauge },
      "pass",
      `within-window pressure=2600.00 kPag ${highSide}`,
      [],
      [],
    ],
    // The gauge that decides errs by gap · √3 / z: JCGM 106:2012, 8.3, with the rectangle of JCGM 100:2008, 4.3.7,
    // z = 1.64485 at 95 % and 2.32635 at 99 %.
    [
      "close above the lower end", // 5.015 kPa · 1.73205 / 1.64485
      582,
      { gauge },
      "inconclusive",
      `too-close-to-call pressure=582.00 kPag ${lowSide}`,
      ["use-better-gauge needed=5.28 kPa"],
      [],
    ],
    [
      "close below the lower end", // 5.985 kPa · 1.73205 / 1.64485
      571,
      { gauge },
      "inconclusive",
      `too-close-to-call pressure=571.00 kPag ${lowSide}`,
      ["use-better-gauge needed=6.30 kPa"],
      [],
    ],
    [
      "close below the upper end", // 5.851 kPa · 1.73205 / 1.64485
      826,
      { gauge },
      "inconclusive",
      `too-close-to-call pressure=826.00 kPag ${lowSide}`,
      ["use-better-gauge needed=6.16 kPa"],
      [],
    ],
    [
      "close, and more surely", // 5.015 kPa · 1.73205 / 2.32635
      582,
      { gauge, confidence: 0.99 },
      "inconclusive",
      `too-close-to-call pressure=582.00 kPag ${lowSide}`,
      ["use-better-gauge needed=3.73 kPa"],
      [],
    ],
    // No gauge reads finer than 0.1 psi, 0.689 kPa: common practice, no source.
    [
      "as close as a gauge can tell", // 0.685 kPa · 1.73205 / 1.64485 = 0.721 kPa
      577.67,
      { gauge },
      "inconclusive",
      `too-close-to-call pressure=577.67 kPag ${lowSide}`,
      ["use-better-gauge needed=0.72 kPa"],
      [],
    ],
    [
      "closer than any gauge tells", // 0.615 kPa · 1.73205 / 1.64485 = 0.648 kPa
      577.6,
      { gauge },
      "inconclusive",
      `too-close-to-call pressure=577.60 kPag ${lowSide}`,
      ["read-again-later"],
      [],
    ],
    // At most 15 K, 27 °F, apart and at least 1 K, 1.8 °F: common practice, no source.
    [
      "by an approach that is too wide",
      700,
      { evaporatorApproach: { low: deltaF(20), high: deltaF(54) } },
      "inconclusive",
      "approach-range-wide low=20.00 Δ°F high=54.00 Δ°F widest=27.00 Δ°F",
      ["state-approach"],
      [exact],
    ],
    [
      "by an approach of a unit at rest", // 15 °C to 25 °C: 1144 to 1546 kPag, computed
      1300,
      { evaporatorApproach: { low: deltaF(0), high: deltaF(18) } },
      "inconclusive",
      "approach-at-rest low=0.00 Δ°F high=18.00 Δ°F least=1.80 Δ°F",
      ["state-approach"],
      [exact],
    ],
  ])("%s", (_, pressure, more, outcome, reason, actions, assumed) => {
    const reading = { ...unit, ...more, pressure: kPag(pressure) };
    const failed = outcome !== "pass" && outcome !== "inconclusive";
    expect(told(operating.assessServiceReading(reading))).toEqual({
      outcome: failed ? "fail" : outcome,
      ...(failed && { cause: outcome }),
      reasons: [reason],
      actions,
      assumptions: [...stated, ...assumed],
      cautions: [finding, "finding: not-the-charge", ...dangers, governing],
      sources: ["common-practice", ...saturation, "jcgm-106-2012 8.3"],
    });
  });

  test("at an end of the other window fits the other side", () => {
    const { low, high } = operating.expectedPressures(unit);
    const causeAt = (pressure: Quantity<"gaugePressure">, more = {}) =>
      operating.assessServiceReading({ ...unit, ...more, pressure }).cause;
    for (const end of [high.from, high.to]) expect(causeAt(end)).toBe("other-side");
    for (const end of [low.from, low.to]) expect(causeAt(end, winter)).toBe("other-side");
  });
});

describe("expected pressures", () => {
  test("say what they assume and where they stand", () => {
    const { assumptions, sources } = operating.expectedPressures(unit);
    expect(assumptions.map(short)).toEqual(["steady-full-speed", "approaches-as-stated"]);
    expect(sources.map(({ source }) => source)).toEqual([
      "common-practice",
      ...R410A.sources.map(({ source }) => source),
    ]);
  });

  // ANSI/ASHRAE Standard 34: ammonia is B2L, toxic and flammable.
  test("warn of a refrigerant that is toxic and burns", () => {
    const cautions = operating.expectedPressures({ ...unit, refrigerant: R717 }).cautions;
    expect(cautions.map(short)).toEqual([
      "hoses-lose-refrigerant",
      "safety.refrigerant-contact",
      "safety.running-unit",
      "safety.work-at-height",
      "mode-first",
      "safety.flammable-refrigerant",
      "safety.toxic-refrigerant",
      "safety.others-govern",
    ]);
  });

  test("name the limit of an approach that is upside down", () => {
    const evaporatorApproach = { low: deltaF(40), high: deltaK(20) };
    const error = (() => {
      try {
        return operating.expectedPressures({ ...unit, evaporatorApproach });
      } catch (thrown) {
        return thrown;
      }
    })();
    if (!isInvalidInputError(error) || !error.bound) throw new Error("no bound");
    const { value, is, limit } = error.bound;
    // 20 K are 36 °F.
    expect([`${value}`, is, `${limit}`]).toEqual(["40 Δ°F", "max", "36 Δ°F"]);
  });
});

describe("a gauge set", () => {
  const { low, high } = operating.publishedR410AGaugeSet;
  const old = { fullScale: psig(500), hoseWorkingPressure: psig(500) };
  const hose = { ...high, hoseWorkingPressure: psig(350) };

  test.each<
    [
      what: string,
      set: operating.GaugeSetSide,
      pressure: number,
      cause: string | undefined,
      reasons: string[],
      actions: string[],
    ]
  >([
    ["that suits", high, 450, undefined, ["gauge-set-suits pressure=450.00 psig"], []],
    [
      "with a weak hose",
      hose,
      450,
      "hose-rating",
      ["above-hose-rating pressure=450.00 psig limit=350.00 psig"],
      ["use-rated-hose pressure=450.00 psig"],
    ],
    [
      "read beyond its scale",
      low,
      400,
      "retard-only",
      ["beyond-scale pressure=400.00 psig limit=250.00 psig"],
      ["use-larger-gauge pressure=400.00 psig"],
    ],
    [
      "destroyed beyond its retard",
      low,
      520,
      "gauge-scale",
      ["destroys-gauge pressure=520.00 psig limit=500.00 psig"],
      ["use-larger-gauge pressure=520.00 psig"],
    ],
    [
      "for R22",
      old,
      550,
      "hose-rating",
      [
        "above-hose-rating pressure=550.00 psig limit=500.00 psig",
        "destroys-gauge pressure=550.00 psig limit=500.00 psig",
      ],
      ["use-rated-hose pressure=550.00 psig", "use-larger-gauge pressure=550.00 psig"],
    ],
  ])("%s", (_, set, pressure, cause, reasons, actions) => {
    const verdict = operating.assessGaugeSet({ ...set, highestPressure: psig(pressure) });
    expect(told(verdict)).toEqual({
      outcome: cause ? "fail" : "pass",
      ...(cause && { cause }),
      reasons,
      actions,
      assumptions: ["as-printed"],
      cautions: [finding, ...dangers, governing],
      sources: ["manufacturer-manuals gauge set", "common-practice"],
    });
  });
});

describe("the charge by gauge", () => {
  // Dew at 5 °C, 933.176 kPa, and bubble at 40 °C, 2425.642 kPa, less 101.325 kPa: see above. Dew at 40 °C: 2418.609 kPa.
  const orifice = {
    refrigerant: R410A,
    meteringDevice: "orifice",
    compressor: "single-speed",
    mode: "cooling",
    pressure: kPag(831.851),
    lineTemperature: degC(15),
    atmosphere: standardAtmosphere,
    target: deltaC(10),
    tolerance: deltaC(3),
    instruments: { pressure: { accuracy: kPa(5) }, temperature: { accuracy: deltaC(0.5) } },
  } as const;
  const valve = {
    meteringDevice: "thermostatic-valve",
    pressure: kPag(2324.317),
    lineTemperature: degC(32),
    target: deltaC(8),
  } as const;
  const manual = "manufacturer-manuals checking the charge";

  test.each([
    ["an inverter", { compressor: "inverter" }, "no-target"],
    ["an electronic valve", { meteringDevice: "electronic-valve" }, "no-target"],
    ["heating", { mode: "heating" }, "no-target-in-heating"],
  ] as const)("is weighed: %s", (_, more, reason) => {
    expect(told(operating.assessChargeByGauge({ ...orifice, ...more }))).toEqual({
      outcome: "inconclusive",
      reasons: [reason],
      actions: ["weigh-the-charge"],
      assumptions: [],
      cautions: [finding, ...dangers, governing],
      sources: [manual, "common-practice"],
    });
  });

  // What is said of the line is what `refrigerants` says of the same reading; its own tests hold that. The floor is
  // 5 °F, 2.78 K, by manufacturers' manuals.
  const below = (superheat: string) => ({
    reason: `superheat-below-floor superheat=${superheat} Δ°C least=2.78 Δ°C`,
    action: "stop-liquid",
  });
  const near = (superheat: string) => ({
    reason: `superheat-near-floor superheat=${superheat} Δ°C least=2.78 Δ°C`,
    action: "read-near-floor-again least=2.78 Δ°C",
  });
  test.each<
    [
      what: string,
      more: object,
      outcome: string,
      line: string,
      floor?: { reason: string; action: string },
    ]
  >([
    ["superheat on target", {}, "pass", "pass"],
    ["superheat too high", { lineTemperature: degC(20) }, "high", "fail"],
    ["superheat too low", { lineTemperature: degC(10) }, "low", "fail"],
    [
      "superheat of the high side",
      { pressure: kPag(2317.284) },
      "liquid-to-compressor",
      "fail",
      below("-25.00"),
    ],
    ["superheat too close to call", { lineTemperature: degC(18) }, "inconclusive", "inconclusive"],
    // 0.4 K inside the tolerance; u is about 0.33 K, from 0.5 K/√3 and the saturation pressure: 1.645 u = 0.5 K, and
    // 0.25 u = 0.1 K at 60 %.
    [
      "superheat that needs to be less sure",
      { lineTemperature: degC(17.6), confidence: 0.6 },
      "pass",
      "pass",
    ],
    [
      "superheat that needs to be more sure",
      { lineTemperature: degC(17.6) },
      "inconclusive",
      "inconclusive",
    ],
    ["a tolerance that is too wide", { tolerance: deltaC(8) }, "inconclusive", "inconclusive"],
    [
      "below the floor, on target",
      { lineTemperature: degC(6.5), target: deltaC(3), tolerance: deltaC(2.5) },
      "liquid-to-compressor",
      "pass",
      below("1.50"),
    ],
    [
      "below the floor and the target",
      { lineTemperature: degC(6) },
      "liquid-to-compressor",
      "fail",
      below("1.00"),
    ],
    [
      "near the floor, on target",
      { lineTemperature: degC(8), target: deltaC(3), tolerance: deltaC(2) },
      "inconclusive",
      "pass",
      near("3.00"),
    ],
    [
      "near the floor, where less sure is enough",
      { lineTemperature: degC(8), target: deltaC(3), tolerance: deltaC(2), confidence: 0.6 },
      "pass",
      "pass",
    ],
    ["subcooling on target", valve, "pass", "pass"],
    ["subcooling too high", { ...valve, lineTemperature: degC(27) }, "high", "fail"],
    ["subcooling too low", { ...valve, lineTemperature: degC(38) }, "low", "fail"],
    [
      "subcooling below the floor of superheat",
      { ...valve, lineTemperature: degC(38), target: deltaC(2) },
      "inconclusive",
      "inconclusive",
    ],
    ["subcooling of the low side", { ...valve, pressure: kPag(600) }, "low", "fail"],
  ])("is told by gauge: %s", (_, more, outcome, lineOutcome, floor) => {
    const input = { ...orifice, ...more };
    const bySuperheat = input.meteringDevice === "orifice";
    const line = (bySuperheat ? assessSuperheat : assessSubcooling)(R410A, input);
    expect(line.outcome).toBe(lineOutcome);
    const said = told(line);
    const failed = outcome !== "pass" && outcome !== "inconclusive";
    expect(told(operating.assessChargeByGauge(input))).toEqual({
      outcome: failed ? "fail" : outcome,
      ...(failed && { cause: outcome }),
      reasons: [
        ...(floor ? [floor.reason] : []),
        ...said.reasons,
        bySuperheat ? "by-superheat" : "by-subcooling",
      ],
      actions: [...(floor ? [floor.action] : []), ...(said.actions ?? [])],
      assumptions: said.assumptions,
      cautions: [
        finding,
        ...said.cautions.filter((one) => one.startsWith("finding")),
        ...dangers,
        governing,
      ],
      sources: [...said.sources, manual],
    });
  });

  // "Why, the deciding reason first": `Assessment.reasons`.
  test("that is too low near the floor says first that it is too low", () => {
    const low = { ...orifice, lineTemperature: degC(8) };
    const verdict = told(operating.assessChargeByGauge(low));
    const line = told(assessSuperheat(R410A, low));
    expect(verdict.outcome).toBe("fail");
    expect(verdict.cause).toBe("low");
    expect(verdict.reasons).toEqual([...line.reasons, near("3.00").reason, "by-superheat"]);
    expect(verdict.actions).toEqual([...(line.actions ?? []), near("3.00").action]);
  });

  test("asks for a target where it can be read", () => {
    for (const missing of ["target", "tolerance"]) {
      expect(() => operating.assessChargeByGauge({ ...orifice, [missing]: undefined })).toThrow(
        /nameplate, manual or targetSuperheat/,
      );
    }
  });
});
