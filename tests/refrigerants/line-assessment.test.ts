import { explain as explainIn } from "hvac-install-math/assessment";
import { english } from "hvac-install-math/language/en";
import {
  standardAtmosphere as atmosphere,
  degF,
  deltaF,
  deltaK,
  inHg,
  kPaa,
  psi,
  psig,
} from "hvac-install-math/quantity";
import {
  assessSubcooling,
  assessSuperheat,
  R32,
  R410A,
  R717,
  superheat,
} from "hvac-install-math/refrigerants";
import { describe, expect, test } from "vitest";

// All readings are invented.
const explain = (said: never) => explainIn(said, english);
const reading = { pressure: psig(118), lineTemperature: degF(52), atmosphere };
const good = { pressure: { accuracy: psi(1) }, temperature: { accuracy: deltaF(1) } };
const coarse = { pressure: { accuracy: psi(10) }, temperature: { accuracy: deltaF(1) } };

describe("the verdict on superheat", () => {
  test("passes inside the guarded window and carries the value with its uncertainty", () => {
    const verdict = assessSuperheat(R410A, {
      ...reading,
      target: deltaF(12),
      tolerance: deltaF(5),
      instruments: good,
    });
    expect(verdict.outcome).toBe("pass");
    expect("cause" in verdict).toBe(false);
    expect(verdict.result.value.si).toBeCloseTo(superheat(R410A, reading).si, 9);
    expect(verdict.saturationTemperature.value.in(degF)).toBeCloseTo(39.8, 1);
    expect(verdict.conformanceProbability).toBeGreaterThan(0.99);
    expect(explain(verdict.reasons[0] as never)).toMatch(
      /^Superheat 12\.\d\d? Δ°F ± 1\.\d+ Δ°F: within 5 Δ°F of the target, 12 Δ°F\.$/,
    );
    expect(verdict.sources.map(({ source }) => source)).toEqual([
      "lemmon-2003",
      "jcgm-100-2008",
      "jcgm-106-2012",
    ]);
  });

  test("fails with the side on which the target is missed", () => {
    const input = { ...reading, tolerance: deltaF(3), instruments: good };
    const low = assessSuperheat(R410A, { ...input, target: deltaF(25) });
    expect([low.outcome, low.cause]).toEqual(["fail", "low"]);
    const high = assessSuperheat(R410A, { ...input, target: deltaF(4) });
    expect([high.outcome, high.cause]).toEqual(["fail", "high"]);
  });

  test("says that the probes cannot tell, which of them, and how good it would have to be", () => {
    const verdict = assessSuperheat(R410A, {
      ...reading,
      target: deltaF(12),
      tolerance: deltaF(3),
      instruments: coarse,
    });
    expect(verdict.outcome).toBe("inconclusive");
    expect(verdict.reasons.map(({ code }) => code)).toEqual([
      "refrigerants.too-close-to-call",
      "refrigerants.largest-uncertainty",
    ]);
    expect(verdict.reasons[1]?.values).toMatchObject({ probe: "refrigerants.probe.pressure" });
    expect(verdict.actions?.map(({ code }) => code)).toEqual([
      "refrigerants.use-better-probe",
      "refrigerants.adjust-to-target",
    ]);
    const thermometer = assessSuperheat(R410A, {
      ...reading,
      target: deltaF(12),
      tolerance: deltaF(3),
      instruments: { pressure: { accuracy: psi(1) }, temperature: { accuracy: deltaF(6) } },
    });
    expect(thermometer.reasons[1]?.values).toMatchObject({
      probe: "refrigerants.probe.temperature",
    });
  });

  test("says that no probe decides what lies on the limit itself", () => {
    const tolerance = superheat(R410A, reading).minus(deltaF(9));
    const verdict = assessSuperheat(R410A, {
      ...reading,
      target: deltaF(9),
      tolerance,
      instruments: good,
    });
    expect(verdict.outcome).toBe("inconclusive");
    expect(verdict.conformanceProbability).toBeCloseTo(0.5, 3);
    expect(verdict.reasons[1]?.code).toBe("refrigerants.closer-than-the-model");
  });

  test("counts the barometer when its instrument is given, and says when it does not", () => {
    const input = { ...reading, target: deltaF(12), tolerance: deltaF(5) };
    const exact = assessSuperheat(R410A, { ...input, instruments: good });
    const unsure = assessSuperheat(R410A, {
      ...input,
      instruments: { ...good, atmosphere: { accuracy: inHg(1) } },
    });
    expect(unsure.result.standardUncertainty > exact.result.standardUncertainty).toBe(true);
    expect(exact.assumptions.map(({ code }) => code)).toContain("refrigerants.exact-atmosphere");
    expect(unsure.assumptions.map(({ code }) => code)).not.toContain(
      "refrigerants.exact-atmosphere",
    );
  });

  test("warns of what can burn and of what is toxic", () => {
    const input = {
      pressure: kPaa(600),
      lineTemperature: degF(75),
      target: deltaF(10),
      tolerance: deltaF(5),
      instruments: good,
    };
    const codes = (refrigerant: typeof R32) =>
      assessSuperheat(refrigerant, input).cautions.map(({ code }) => code);
    const always = [
      "refrigerants.only-where-the-manual-charges-by-it",
      "safety.refrigerant-contact",
    ];
    expect(codes(R410A)).toEqual([...always, "safety.others-govern"]);
    expect(codes(R32)).toContain("safety.flammable-refrigerant");
    expect(codes(R717)).toEqual([
      ...always,
      "safety.flammable-refrigerant",
      "safety.toxic-refrigerant",
      "safety.others-govern",
    ]);
  });

  test("works up to the ends of the range", () => {
    for (const T of [R32.range.min, R32.range.max]) {
      const pressure = kPaa(T === R32.range.min ? 65 : 5739);
      const verdict = assessSubcooling(R32, {
        pressure,
        lineTemperature: T,
        target: deltaF(0),
        tolerance: deltaF(5),
        instruments: coarse,
      });
      expect(Number.isFinite(verdict.result.standardUncertainty.si)).toBe(true);
    }
  });

  test("asks for target, tolerance and both instruments", () => {
    const input = { ...reading, target: deltaF(12), tolerance: deltaF(5), instruments: good };
    const without = (name: string) => ({ ...input, [name]: undefined }) as never;
    expect(() => assessSuperheat(R410A, without("target"))).toThrow(/target/);
    expect(() => assessSuperheat(R410A, without("tolerance"))).toThrow(/tolerance/);
    expect(() => assessSuperheat(R410A, without("instruments"))).toThrow(/instrument/);
    expect(() => assessSuperheat(R410A, without("atmosphere"))).toThrow(/atmosphere/);
    expect(() => assessSuperheat(R410A, { ...input, tolerance: deltaF(0) })).toThrow(/tolerance/);
    expect(() => assessSuperheat(R410A, { ...input, confidence: 1 })).toThrow(/confidence/);
  });
});

describe("near and below saturation", () => {
  // The dew temperature at 118 psig is 39.8 °F; the window of 2 ± 5 reaches below it.
  const input = { ...reading, target: deltaF(2), tolerance: deltaF(5), instruments: good };
  const at = (line: number) => assessSuperheat(R410A, { ...input, lineTemperature: degF(line) });

  test("no superheat never passes, however wide the tolerance", () => {
    const below = at(38);
    expect([below.outcome, below.cause]).toEqual(["fail", "low"]);
    expect(explain(below.reasons[0] as never)).toMatch(
      /below zero\. The readings contradict each other, or liquid is in the line\.$/,
    );
    for (const line of [40, 42]) {
      const near = at(line);
      expect(near.outcome).toBe("inconclusive");
      expect(near.reasons.map(({ code }) => code)).toEqual([
        "refrigerants.tolerance-reaches-saturation",
      ]);
    }
    expect(() => assessSuperheat(R410A, { ...input, target: deltaF(-1) })).toThrow(/^target: /);
  });

  test("no subcooling never passes either", () => {
    const flash = { pressure: psig(355), lineTemperature: degF(109), atmosphere };
    const verdict = assessSubcooling(R410A, { ...input, ...flash });
    expect([verdict.outcome, verdict.cause]).toEqual(["fail", "low"]);
    expect(explain(verdict.reasons[0] as never)).toMatch(/or vapor is in the line\.$/);
  });
});

describe("a target or a tolerance that decides nothing (common practice, no source)", () => {
  // Superheat is 80 − 39.8 °F, subcooling 108 − 68 °F: both hit their absurd targets.
  const input = { ...reading, lineTemperature: degF(80), instruments: good };
  const codes = (verdict: ReturnType<typeof assessSuperheat>) => [
    verdict.outcome,
    verdict.cause,
    ...verdict.reasons.map(({ code }) => code),
  ];

  test("passes nothing, met or not", () => {
    const superheat = (target: number, tolerance: number) =>
      codes(
        assessSuperheat(R410A, { ...input, target: deltaF(target), tolerance: deltaF(tolerance) }),
      );
    expect(superheat(40, 8.9)[0]).toBe("pass"); // 5 K are 9 °F
    expect(superheat(40, 9.1)).toEqual(["inconclusive", undefined, "refrigerants.tolerance-wide"]);
    expect(superheat(20, 9.1)).toEqual(["fail", "high", "refrigerants.above-tolerance"]);
    expect(superheat(46, 8)).toEqual([
      "inconclusive",
      undefined,
      "refrigerants.target-out-of-reach",
    ]);
    expect(superheat(90, 8)).toEqual([
      "inconclusive",
      undefined,
      "refrigerants.target-out-of-reach",
    ]);
    // 5 K and 25 K themselves are taken, a tolerance as large as the target is not.
    const inKelvin = (target: number, tolerance: number) =>
      codes(
        assessSuperheat(R410A, { ...input, target: deltaK(target), tolerance: deltaK(tolerance) }),
      );
    expect(inKelvin(22, 5)[0]).toBe("pass");
    expect(inKelvin(25, 5)[2]).toBe("refrigerants.within-tolerance");
    expect(
      codes(
        assessSuperheat(R410A, {
          ...input,
          lineTemperature: degF(44),
          target: deltaF(4),
          tolerance: deltaF(4),
        }),
      )[2],
    ).toBe("refrigerants.tolerance-reaches-saturation");
    const liquid = { pressure: psig(355), lineTemperature: degF(68), atmosphere };
    const target = { target: deltaF(40), tolerance: deltaF(3) };
    expect(codes(assessSubcooling(R410A, { ...input, ...liquid, ...target }))).toEqual([
      "inconclusive",
      undefined,
      "refrigerants.target-out-of-reach",
    ]);
  });
});

describe("what is doubted is said with its figures", () => {
  const said = (target: number, tolerance: number) => {
    const limits = { target: deltaF(target), tolerance: deltaF(tolerance) };
    const input = { ...reading, lineTemperature: degF(target + 40), instruments: good, ...limits };
    return explain(assessSuperheat(R410A, input).reasons[0] as never);
  };

  test("in the unit of the reader", () => {
    expect(said(46, 8)).toBe("Superheat: 46 Δ°F is no target. Targets stay below 45 Δ°F.");
    expect(said(40, 10)).toBe(
      "A tolerance of 10 Δ°F around 40 Δ°F lets a wrong charge pass. At most 9 Δ°F is usable.",
    );
    expect(said(8, 8)).toBe(
      "A tolerance of 8 Δ°F around 8 Δ°F reaches saturation, where the figure says nothing about the charge.",
    );
  });
});

describe("a reading of the other side (common practice, no source)", () => {
  const input = { ...reading, target: deltaF(10), tolerance: deltaF(5), instruments: good };
  const first = ({ cautions }: ReturnType<typeof assessSuperheat>) => cautions[0];

  test("is asked for: superheat of a condenser, subcooling of an evaporator", () => {
    const high = { pressure: psig(390), lineTemperature: degF(127) };
    expect(explain(first(assessSuperheat(R410A, { ...input, ...high })) as never)).toMatch(
      /^Saturated at 114\.\d+ °F, this looks like the high side\. Superheat is read on the low side/,
    );
    const low = { pressure: psig(100), lineTemperature: degF(22) };
    expect(first(assessSubcooling(R410A, { ...input, ...low }))?.code).toBe(
      "refrigerants.looks-like-other-side",
    );
    expect(first(assessSuperheat(R410A, input))?.code).toBe(
      "refrigerants.only-where-the-manual-charges-by-it",
    );
    const liquid = { pressure: psig(355), lineTemperature: degF(98) };
    expect(first(assessSubcooling(R410A, { ...input, ...liquid }))?.code).toBe(
      "refrigerants.only-where-the-manual-charges-by-it",
    );
  });
});

describe("from JavaScript", () => {
  test("what is missing is named", () => {
    const input = { ...reading, target: deltaF(12), tolerance: deltaF(5), instruments: good };
    expect(() => assessSuperheat(R410A, undefined as never)).toThrow(/^input: /);
    expect(() => superheat(R410A, null as never)).toThrow(/^reading: /);
    const unitless = { kind: "gaugePressure", si: 8e5 };
    expect(() => superheat(R410A, { ...reading, pressure: unitless } as never)).toThrow(
      /^pressure: /,
    );
    const without = (instruments: unknown) => () =>
      assessSuperheat(R410A, { ...input, instruments } as never);
    expect(without(undefined)).toThrow(/^instruments: /);
    expect(without({ temperature: good.temperature })).toThrow(/^instruments\.pressure: /);
    expect(without({ pressure: {}, temperature: good.temperature })).toThrow(
      /^instruments\.pressure: nothing/,
    );
    expect(without({ ...good, atmosphere: null })).toThrow(/^instruments\.atmosphere: /);
  });

  test("a pressure as parsed JSON is no quantity", () => {
    const pressure = JSON.parse(JSON.stringify(psig(118)));
    expect(() => superheat(R410A, { ...reading, pressure })).toThrow(
      /^pressure: gaugePressure .* allowed: the kind gaugePressure$/,
    );
  });
});

test("subcooling is judged the same way", () => {
  const verdict = assessSubcooling(R410A, {
    pressure: psig(355),
    lineTemperature: degF(95),
    atmosphere,
    target: deltaF(12),
    tolerance: deltaF(4),
    instruments: good,
  });
  expect(verdict.outcome).toBe("pass");
  expect(verdict.result.value.in(deltaF)).toBeCloseTo(12.7, 1);
  expect(verdict.reasons[0]?.code).toBe("refrigerants.within-tolerance");
});
