import { explain } from "hvac-install-math/assessment";
import { english } from "hvac-install-math/language/en";
import {
  standardAtmosphere as atmosphere,
  degC,
  degF,
  deltaC,
  deltaF,
  inHg,
  kPa,
  kPaa,
  psi,
  psia,
  psig,
} from "hvac-install-math/quantity";
import {
  assessSubcooling,
  assessSuperheat,
  bubbleTemperature,
  dewTemperature,
  type LineAssessment,
  type LineAssessmentInput,
  R32,
  R407C,
  R410A,
  type Refrigerant,
} from "hvac-install-math/refrigerants";
import { describe, expect, test } from "vitest";

// All readings are invented.
const k95 = 1.6448536269514722; // one-sided 95 %
const instruments = { pressure: { accuracy: psi(2) }, temperature: { accuracy: deltaF(1) } };
const input = {
  pressure: psig(80),
  lineTemperature: degF(60),
  atmosphere,
  target: deltaF(9),
  tolerance: deltaF(5),
  instruments,
};
const sentence = ({ reasons }: LineAssessment, position: number) =>
  explain(reasons[position] as never, english);

/** K per Pa of a saturation curve, by a central difference of the public function. */
const slope = (
  curve: typeof dewTemperature | typeof bubbleTemperature,
  refrigerant: Refrigerant,
  absolute: number,
) => {
  const at = (factor: number) => curve(refrigerant, kPaa((absolute * factor) / 1e3)).si;
  return (at(1.0005) - at(0.9995)) / (0.001 * absolute);
};

describe("the uncertainty of superheat and subcooling (JCGM 100:2008, eq. 10)", () => {
  const absolute = psia(80 + 14.695948775).si;
  const probe = psi(2).si / Math.sqrt(3);
  const thermometer = deltaF(1).si / Math.sqrt(3);

  test("adds as squares what gauge, thermometer and equation of state leave open", () => {
    const dew = slope(dewTemperature, R407C, absolute);
    const { result, saturationTemperature } = assessSuperheat(R407C, input);
    const saturation = Math.hypot(probe * dew, 0.0025 * absolute * dew);
    const ofSaturation = saturationTemperature.standardUncertainty.si;
    expect(Math.abs(ofSaturation / saturation - 1)).toBeLessThan(1e-3);
    const all = Math.hypot(saturation, thermometer);
    expect(Math.abs(result.standardUncertainty.si / all - 1)).toBeLessThan(1e-3);
    expect(result.expandedUncertainty.si).toBeCloseTo(2 * result.standardUncertainty.si, 12);
  });

  test("goes by the bubble curve for subcooling, and trusts a pure substance more", () => {
    const bubble = slope(bubbleTemperature, R32, absolute);
    const { saturationTemperature } = assessSubcooling(R32, input);
    const saturation = Math.hypot(probe * bubble, 0.0005 * absolute * bubble);
    const ofSaturation = saturationTemperature.standardUncertainty.si;
    expect(Math.abs(ofSaturation / saturation - 1)).toBeLessThan(1e-3);
  });

  test("counts the barometer with a gauge, and not with an absolute transducer", () => {
    const dew = slope(dewTemperature, R407C, absolute);
    const barometer = { accuracy: inHg(1) };
    const u = (change: Partial<LineAssessmentInput>) =>
      assessSuperheat(R407C, {
        ...input,
        instruments: { ...instruments, atmosphere: barometer },
        ...change,
      } as LineAssessmentInput).saturationTemperature.standardUncertainty.si;
    const air = (3386.389 / Math.sqrt(3)) * dew; // 1 inHg
    const gauge = Math.hypot(probe * dew, 0.0025 * absolute * dew, air);
    expect(Math.abs(u({}) / gauge - 1)).toBeLessThan(1e-3);
    expect(Math.abs(u({ pressure: psia(94.695948775) }) / (probe * dew))).toBeLessThan(1.2);
  });

  test("is found at either end of the range, where there is no room on one side", () => {
    for (const T of [R32.range.min, R32.range.max]) {
      const p = T === R32.range.min ? 64_960 : 5_730_000;
      const { saturationTemperature } = assessSuperheat(R32, {
        ...input,
        pressure: kPaa(p / 1e3),
        lineTemperature: T,
        target: deltaC(0),
      });
      // The slope is taken 0.1 % of the pressure further in, where it differs by 0.1 % to 0.2 %.
      const inside = T === R32.range.min ? 1.001 : 0.999;
      const dew = slope(dewTemperature, R32, p * inside);
      const expected = Math.hypot(probe * dew, 0.0005 * p * dew);
      const ours = saturationTemperature.standardUncertainty.si;
      expect(Math.abs(ours / expected - 1)).toBeLessThan(3e-3);
    }
  });
});

describe("what would decide", () => {
  const fine = { pressure: { accuracy: psi(1) }, temperature: { accuracy: deltaF(1) } };
  const near = { ...input, tolerance: deltaF(2), instruments: fine };

  test("is a standard uncertainty of the room to the nearer limit over 1.645", () => {
    for (const target of [8, 10.6]) {
      const verdict = assessSuperheat(R407C, { ...near, target: deltaF(target) });
      const value = verdict.result.value.in(deltaF);
      const needed = (2 - Math.abs(value - target)) / k95;
      const now = verdict.result.standardUncertainty.in(deltaF);
      expect(verdict.outcome).toBe("inconclusive");
      expect(sentence(verdict, 1)).toBe(
        `Most of the standard uncertainty of ${Number(now.toPrecision(4))} Δ°F comes from the temperature probe.`,
      );
      expect(explain(verdict.actions?.[0] as never, english)).toBe(
        `Read again with a better temperature probe: a standard uncertainty of ${Number(needed.toPrecision(4))} Δ°F would decide.`,
      );
    }
  });

  test("is asked for also where the reading is out, but not provably", () => {
    const verdict = assessSuperheat(R407C, { ...near, target: deltaF(6.5) });
    const value = verdict.result.value.in(deltaF);
    expect(value).toBeGreaterThan(8.5);
    expect(verdict.outcome).toBe("inconclusive");
    expect(explain(verdict.actions?.[0] as never, english)).toContain(
      `uncertainty of ${Number(((value - 8.5) / k95).toPrecision(4))}`,
    );
  });

  test("asks more of the probes at a higher confidence", () => {
    const at = (confidence: number) =>
      assessSuperheat(R407C, { ...input, tolerance: deltaF(2.6), confidence }).outcome;
    expect(at(0.95)).toBe("pass");
    expect(at(0.9999)).toBe("inconclusive");
  });

  test("names the gauge together with the barometer where both outweigh the thermometer", () => {
    const verdict = assessSuperheat(R407C, {
      ...near,
      tolerance: deltaF(1.5),
      instruments: { ...fine, atmosphere: { accuracy: inHg(3) } },
    });
    expect(verdict.reasons[1]?.values).toMatchObject({ probe: "refrigerants.probe.pressure" });
    const alone = assessSuperheat(R407C, { ...near, tolerance: deltaF(1.2) });
    expect(alone.reasons[1]?.values).toMatchObject({ probe: "refrigerants.probe.temperature" });
  });
});

describe("the sentences", () => {
  test("say by how much and on which side the target is missed", () => {
    const fail = (target: number) =>
      sentence(
        assessSuperheat(R407C, { ...input, target: deltaF(target), tolerance: deltaF(3) }),
        0,
      );
    expect(fail(2)).toMatch(/: more than 3 Δ°F above the target, 2 Δ°F\.$/);
    expect(fail(20)).toMatch(/: more than 3 Δ°F below the target, 20 Δ°F\.$/);
  });

  test("tell what was assumed: steady, nominal, the equation's share and an exact atmosphere", () => {
    const told = (refrigerant: Refrigerant, change: Partial<LineAssessmentInput> = {}) =>
      assessSuperheat(refrigerant, { ...input, ...change } as LineAssessmentInput).assumptions.map(
        (one) => explain(one, english),
      );
    expect(told(R407C)).toEqual([
      "The system runs steadily. The probe is clean, tight and insulated.",
      "The refrigerant is pure or has its nominal composition.",
      "The saturation pressure itself has a standard uncertainty of 0.25 %.",
      "No accuracy was given for the atmosphere, so it is taken as exact.",
    ]);
    expect(told(R32)[2]).toContain("uncertainty of 0.05 %");
    expect(told(R407C, { pressure: psia(94.7) })).toHaveLength(3);
  });

  test("of a pass are one", () => {
    const verdict = assessSuperheat(R407C, input);
    expect(verdict.outcome).toBe("pass");
    expect(verdict.reasons).toHaveLength(1);
  });

  test("call no superheat low, and less than none a contradiction", () => {
    const dew = dewTemperature(R407C, input.pressure, atmosphere);
    const none = assessSuperheat(R407C, { ...input, lineTemperature: dew });
    expect(none.result.value.si).toBe(0);
    expect(sentence(none, 0)).toMatch(/: more than 5 Δ°F below the target, 9 Δ°F\.$/);
  });

  test("warn of what is toxic, whether it burns or not", () => {
    const told = (safetyClass: Refrigerant["safetyClass"]) =>
      assessSuperheat({ ...R32, safetyClass }, input)
        .cautions.filter(({ kind }) => kind === "danger")
        .map(({ code }) => code);
    expect(told("B1")).toEqual(["safety.refrigerant-contact", "safety.toxic-refrigerant"]); // invented class
    expect(told("A1")).toEqual(["safety.refrigerant-contact"]);
  });

  test("warn of what is flammable", () => {
    const { cautions } = assessSuperheat(R32, input);
    expect(cautions.map((one) => explain(one, english)).join("\n")).toMatch(
      /^With a flammable refrigerant: remove ignition sources, ventilate/m,
    );
  });

  test("speak in the unit of the line's thermometer", () => {
    const { result, saturationTemperature } = assessSuperheat(R410A, {
      ...input,
      pressure: kPaa(900),
      lineTemperature: degC(10),
      instruments: { pressure: { accuracy: kPa(5) }, temperature: { accuracy: deltaC(0.5) } },
    });
    expect(result.value.unit.symbol).toBe("Δ°C");
    expect(saturationTemperature.value.unit.symbol).toBe("°C");
  });
});

test("an absolute pressure may come with an atmosphere, which has to be one", () => {
  const absolute = { ...input, pressure: psia(94.7) };
  expect(assessSuperheat(R407C, absolute).outcome).toBe("pass");
  expect(assessSuperheat(R407C, { ...absolute, atmosphere: undefined } as never).outcome).toBe(
    "pass",
  );
  expect(() => assessSuperheat(R407C, { ...absolute, atmosphere: psig(0) } as never)).toThrow(
    /^atmosphere: gaugePressure 0 psig/,
  );
  expect(() => assessSuperheat(R407C, { ...absolute, atmosphere: psia(0) })).toThrow(
    "atmosphere: 0 psia is not allowed; allowed: more than 0 psia",
  );
});
