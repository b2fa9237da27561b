import { explain } from "hvac-install-math/assessment";
import { english } from "hvac-install-math/language/en";
import * as operating from "hvac-install-math/operating-check";
import {
  atmosphereAtAltitude,
  degC,
  degF,
  deltaC,
  deltaF,
  deltaK,
  ft,
  kPag,
  OutOfRangeError,
  psi,
  psia,
  psig,
  standardAtmosphere,
} from "hvac-install-math/quantity";
import { dewTemperature, R32, R407C, R410A } from "hvac-install-math/refrigerants";
import { describe, expect, test } from "vitest";
import { argumentOf } from "../argument-of.ts";

// biome-ignore lint/suspicious/noExplicitAny: what JavaScript could pass
type Anything = any;

const summer = {
  refrigerant: R410A,
  mode: "cooling",
  indoorTemperature: degF(75),
  outdoorTemperature: degF(95),
  evaporatorApproach: { low: deltaF(30), high: deltaF(40) },
  condenserApproach: { low: deltaF(15), high: deltaF(25) },
  atmosphere: standardAtmosphere,
} as const;
const winter = {
  ...summer,
  mode: "heating",
  indoorTemperature: degF(70),
  outdoorTemperature: degF(45),
  evaporatorApproach: { low: deltaF(10), high: deltaF(20) },
  condenserApproach: { low: deltaF(30), high: deltaF(42) },
} as const;

describe("service ports", () => {
  test("the larger port changes sides with the mode, the smaller one only where it expands outdoors", () => {
    const sides = (mode: "cooling" | "heating", expansion: operating.ExpansionPlace) => {
      const { vapor, liquid, commonSuction } = operating.servicePorts({ mode, expansion });
      return [vapor, liquid, commonSuction].map(({ side, shows }) => `${side} ${shows}`);
    };
    expect(sides("cooling", "outdoor-unit")).toEqual([
      "low suction",
      "low expanded",
      "low suction",
    ]);
    expect(sides("heating", "outdoor-unit")).toEqual([
      "high discharge",
      "high liquid",
      "low suction",
    ]);
    expect(sides("cooling", "evaporating-unit")).toEqual([
      "low suction",
      "high liquid",
      "low suction",
    ]);
    expect(sides("heating", "evaporating-unit")[0]).toBe("high discharge");
  });

  test("warn of the mode, pressure and mains", () => {
    const { cautions } = operating.servicePorts({ mode: "heating", expansion: "outdoor-unit" });
    expect(cautions.map(({ code }) => code)).toEqual([
      "operating-check.hoses-lose-refrigerant",
      "safety.refrigerant-contact",
      "safety.running-unit",
      "safety.work-at-height",
      "operating-check.mode-first",
      "safety.others-govern",
    ]);
  });

  test("name an unknown mode or place", () => {
    const port = (more: Anything) =>
      argumentOf(() =>
        operating.servicePorts({ mode: "cooling", expansion: "outdoor-unit", ...more }),
      );
    expect(port({ mode: "defrost" })).toBe("mode");
    expect(port({ expansion: "indoor" })).toBe("expansion");
  });
});

describe("expected pressures", () => {
  test("of R410A lie within what people usually see on the larger port", () => {
    for (const unit of [summer, winter]) {
      const expected = operating.expectedPressures(unit);
      const usual = operating.usualPressures({ refrigerant: "R410A", mode: unit.mode });
      const { from, to } = expected[expected.vaporPort];
      expect(from >= usual.from, `${from}`).toBe(true);
      expect(to <= usual.to, `${to}`).toBe(true);
    }
  });

  test("take dew on the low side and bubble on the high side, which matters for a blend with glide", () => {
    const { low, high } = operating.expectedPressures({
      ...summer,
      refrigerant: R407C,
      indoorTemperature: degC(20),
      outdoorTemperature: degC(-20),
      evaporatorApproach: { low: deltaC(20), high: deltaC(20) },
      condenserApproach: { low: deltaC(20), high: deltaC(20) },
    });
    // R407C at 0 °C: 461 kPa dew, 568 kPa bubble, absolute.
    expect(low.to.in(kPag) + 101.325).toBeCloseTo(461, 0);
    expect(high.to.in(kPag) + 101.325).toBeCloseTo(568, 0);
    expect(low.to.unit.symbol).toBe("kPag");
    expect(low.toTemperature.toString(degC, 3)).toBe("0.000 °C");
  });

  test("rise on the gauge at altitude, although the refrigerant's pressure is the same", () => {
    const high = { ...summer, atmosphere: atmosphereAtAltitude(ft(5000)) };
    const rise =
      operating.expectedPressures(high).low.to.in(psig) -
      operating.expectedPressures(summer).low.to.in(psig);
    expect(rise).toBeCloseTo(2.468, 2);
  });

  test("carry a caution for what burns", () => {
    const { cautions } = operating.expectedPressures({ ...summer, refrigerant: R32 });
    expect(cautions.map(({ code }) => code)).toContain("safety.flammable-refrigerant");
  });

  test("name the bad argument", () => {
    const expected = (more: Anything) =>
      argumentOf(() => operating.expectedPressures({ ...summer, ...more }));
    expect(expected({ evaporatorApproach: { low: deltaF(40), high: deltaF(30) } })).toBe(
      "evaporatorApproach.low",
    );
    expect(expected({ condenserApproach: undefined })).toBe("condenserApproach.low");
    expect(expected({ condenserApproach: { low: deltaF(-1), high: deltaF(30) } })).toBe(
      "condenserApproach.low",
    );
    expect(expected({ condenserApproach: { low: deltaF(1), high: degF(30) } })).toBe(
      "condenserApproach.high",
    );
    expect(expected({ atmosphere: undefined })).toBe("atmosphere");
    expect(expected({ mode: "dry" })).toBe("mode");
    expect(expected({ indoorTemperature: 75 })).toBe("indoorTemperature");
    expect(expected({ refrigerant: "R410A" })).toBe("refrigerant");
    const hot = { ...summer, outdoorTemperature: degF(150) };
    expect(() => operating.expectedPressures(hot)).toThrow(OutOfRangeError);
    expect(() => operating.expectedPressures(hot)).toThrow(/refrigerants\.range-of/);
    const R22: Anything = { refrigerant: "R22", mode: "cooling" };
    expect(argumentOf(() => operating.usualPressures(R22))).toBe("refrigerant");
  });
});

describe("a service reading", () => {
  const cause = (unit: Anything, p: number, more: object = {}) => {
    const verdict = operating.assessServiceReading({ ...unit, pressure: psig(p), ...more });
    return verdict.cause ?? verdict.outcome;
  };

  test("passes in its window, fails outside, and is recognised when it fits the other side", () => {
    expect(cause(summer, 118)).toBe("pass");
    expect(cause(summer, 90)).toBe("below-window");
    expect(cause(summer, 180)).toBe("above-window");
    expect(cause(summer, 380)).toBe("other-side");
    expect(cause(winter, 118)).not.toBe("pass");
    expect(cause(winter, 350)).toBe("pass");
  });

  test("is judged by what its port shows", () => {
    expect(cause(summer, 380, { port: "liquid", expansion: "evaporating-unit" })).toBe("pass");
    expect(cause(summer, 118, { port: "liquid", expansion: "outdoor-unit" })).toBe("pass");
    expect(cause(winter, 95, { port: "commonSuction" })).toBe("pass");
    const assumed = (more: object) =>
      operating
        .assessServiceReading({ ...summer, pressure: psig(118), ...more })
        .assumptions.map(({ code }) => code);
    expect(assumed({ port: "liquid" })).toContain("operating-check.expands-outdoors");
    expect(assumed({ port: "liquid", expansion: "outdoor-unit" })).not.toContain(
      "operating-check.expands-outdoors",
    );
    expect(assumed({})).not.toContain("operating-check.expands-outdoors");
  });

  test("is open within the guard band of the gauge", () => {
    expect(cause(summer, 129.5)).toBe("pass");
    expect(cause(summer, 129.5, { gauge: { accuracy: psi(3) } })).toBe("inconclusive");
  });

  // Common practice, no source: one unit in one weather spreads less than all of them (12 K, below).
  test("does not pass by an approach so wide that it decides nothing", () => {
    const wide = { low: deltaF(0), high: deltaF(100) };
    const wideHigh = { low: deltaF(0), high: deltaF(60) }; // more is beyond the curve of R410A
    const reasons = (unit: Anything, p: number) =>
      operating
        .assessServiceReading({ ...unit, pressure: psig(p) })
        .reasons.map(({ code }) => code);
    for (const p of [50, 118, 200]) {
      expect(cause({ ...summer, evaporatorApproach: wide }, p)).toBe("inconclusive");
      expect(reasons({ ...summer, evaporatorApproach: wide }, p)).toEqual([
        "operating-check.approach-range-wide",
      ]);
    }
    expect(reasons({ ...winter, condenserApproach: wideHigh }, 350)).toEqual([
      "operating-check.approach-range-wide",
    ]);
    // The side that is not read may be as wide as it will, but then it names no mistaken mode.
    expect(cause({ ...summer, condenserApproach: wideHigh }, 118)).toBe("pass");
    expect(cause({ ...summer, condenserApproach: wideHigh }, 380)).toBe("above-window");
    // What lies beyond even the widest window is wrong.
    expect(cause({ ...summer, evaporatorApproach: wide }, 300)).toBe("above-window");
    const ends = (high: number) => ({
      ...summer,
      evaporatorApproach: { low: deltaK(10), high: deltaK(high) },
    });
    expect(cause(ends(25), 118)).toBe("pass");
    expect(cause(ends(25.1), 118)).toBe("inconclusive");
    expect(
      explain(
        operating.assessServiceReading({ ...ends(40), pressure: psig(118) }).reasons[0] as Anything,
        english,
      ),
    ).toMatch(/from 10 K to 40 K .* At most 15 K apart is usable/);
  });

  test("takes every usual pressure of R410A for narrower than the widest approach", () => {
    for (const mode of ["cooling", "heating"] as const) {
      const { from, to } = operating.usualPressures({ refrigerant: "R410A", mode });
      const dew = (p: typeof from) => dewTemperature(R410A, p, standardAtmosphere);
      expect(dew(to).minus(dew(from)) < deltaK(15)).toBe(true);
    }
  });

  test("does not pass by an approach at which a unit at rest would pass", () => {
    // R410A at rest at 75 °F everywhere: 218 psig, computed; an approach of 0 to 5 °F has it in its window.
    const rest = { ...summer, evaporatorApproach: { low: deltaF(0), high: deltaF(5) } };
    const verdict = operating.assessServiceReading({ ...rest, pressure: psig(217) });
    expect(verdict.outcome).toBe("inconclusive");
    expect(verdict.reasons.map(({ code }) => code)).toEqual(["operating-check.approach-at-rest"]);
    expect(cause({ ...summer, evaporatorApproach: { low: deltaK(1), high: deltaK(3) } }, 205)).toBe(
      "pass",
    );
  });

  test("says that it does not prove the charge", () => {
    const verdict = operating.assessServiceReading({ ...summer, pressure: psig(118) });
    expect(verdict.cautions.map(({ code }) => code)).toContain("operating-check.not-the-charge");
    expect(verdict.side).toBe("low");
    expect(explain(verdict.reasons[0] as Anything, english)).toMatch(/^Pressure 118 psig: within /);
  });

  test("names the bad argument", () => {
    expect(argumentOf(() => cause(summer, 118, { port: "gas" }))).toBe("port");
    expect(argumentOf(() => cause(summer, 118, { pressure: psia(118) }))).toBe("pressure");
  });
});

describe("a gauge set", () => {
  const { low, high } = operating.publishedR410AGaugeSet;
  const causes = (set: operating.GaugeSetSide, p: number) =>
    operating
      .assessGaugeSet({ ...set, highestPressure: psig(p) })
      .reasons.map(({ code }) => code.slice("operating-check.".length))
      .join();

  test("of R410A takes heating on its high side only", () => {
    expect(causes(low, 150)).toBe("gauge-set-suits");
    expect(causes(low, 400)).toBe("beyond-scale");
    expect(causes(low, 520)).toBe("destroys-gauge");
    expect(causes(high, 450)).toBe("gauge-set-suits");
  });

  test("for R22 fails twice on R410A: hose and gauge", () => {
    const old = { fullScale: psig(500), hoseWorkingPressure: psig(500) };
    expect(causes(old, 550)).toBe("above-hose-rating,destroys-gauge");
  });

  test("names the bad argument", () => {
    const assess = (more: Anything) =>
      argumentOf(() => operating.assessGaugeSet({ ...low, highestPressure: psig(1), ...more }));
    expect(assess({ retardTo: psig(200) })).toBe("retardTo");
    expect(assess({ fullScale: psig(0) })).toBe("fullScale");
    expect(assess({ hoseWorkingPressure: undefined })).toBe("hoseWorkingPressure");
    expect(assess({ hoseWorkingPressure: psig(0) })).toBe("hoseWorkingPressure");
    expect(assess({ highestPressure: psig(-5) })).toBe("highestPressure");
    expect(assess({ highestPressure: psia(400) })).toBe("highestPressure");
  });
});

describe("the charge by gauge", () => {
  const probes = { pressure: { accuracy: psi(1) }, temperature: { accuracy: deltaF(1) } };
  const orifice = {
    refrigerant: R410A,
    meteringDevice: "orifice",
    compressor: "single-speed",
    mode: "cooling",
    pressure: psig(118),
    lineTemperature: degF(58),
    atmosphere: standardAtmosphere,
    target: deltaF(18),
    tolerance: deltaF(5),
    instruments: probes,
  } as const;
  const check = (more: object = {}) => operating.assessChargeByGauge({ ...orifice, ...more });

  test("is weighed for inverters, electronic valves and heating, and the answer says so", () => {
    const codes = (more: object) => check(more).reasons.map(({ code }) => code);
    expect(codes({ compressor: "inverter" })).toEqual(["operating-check.no-target"]);
    expect(codes({ meteringDevice: "electronic-valve" })).toEqual(["operating-check.no-target"]);
    expect(codes({ mode: "heating" })).toEqual(["operating-check.no-target-in-heating"]);
    const weighed = check({ compressor: "inverter", target: undefined });
    expect(weighed.outcome).toBe("inconclusive");
    expect(weighed.result).toBeUndefined();
  });

  test("of an orifice is judged by superheat", () => {
    expect(check().outcome).toBe("pass");
    expect(check().method).toBe("superheat");
    expect(check({ lineTemperature: degF(70) }).cause).toBe("high");
    expect(check({ lineTemperature: degF(48) }).cause).toBe("low");
    const blunt = { pressure: { accuracy: psi(5) }, temperature: { accuracy: deltaF(4) } };
    expect(check({ lineTemperature: degF(62), instruments: blunt }).outcome).toBe("inconclusive");
  });

  test("fails below 5 °F of superheat, whatever the target, and never passes too near to it", () => {
    const flooded = check({ lineTemperature: degF(42), target: deltaF(6) });
    expect(flooded.outcome).toBe("fail");
    expect(flooded.cause).toBe("liquid-to-compressor");
    const near = check({ lineTemperature: degF(45), target: deltaF(6) });
    expect(near.outcome).toBe("inconclusive");
    expect(near.cause).toBeUndefined();
    expect(near.reasons[0]?.code).toBe("operating-check.superheat-near-floor");
    expect(flooded.reasons[0]?.code).toBe("operating-check.superheat-below-floor");
    expect(flooded.actions?.[0]?.code).toBe("operating-check.stop-liquid");
  });

  test("is not told by a target or a tolerance that lets everything pass", () => {
    const codes = (more: object) => check(more).reasons.map(({ code }) => code);
    // Superheat is 18.2 °F, see the guide.
    expect(check({ tolerance: deltaF(50) }).outcome).toBe("inconclusive");
    expect(codes({ tolerance: deltaF(50) })).toEqual([
      "refrigerants.tolerance-wide",
      "operating-check.by-superheat",
    ]);
    expect(check({ tolerance: deltaK(5) }).outcome).toBe("pass");
    expect(check({ tolerance: deltaK(5.01) }).outcome).toBe("inconclusive");
    // What even a wide tolerance does not allow is wrong.
    expect(check({ tolerance: deltaF(20), lineTemperature: degF(90) }).cause).toBe("high");
    // 8 ± 8 °F reaches 0 °F, a mixture of liquid and vapor.
    const saturated = { lineTemperature: degF(48), target: deltaF(8), tolerance: deltaF(8) };
    expect(check(saturated).outcome).toBe("inconclusive");
    expect(codes(saturated)).toEqual([
      "refrigerants.tolerance-reaches-saturation",
      "operating-check.by-superheat",
    ]);
    expect(check({ ...saturated, tolerance: deltaF(7.9) }).outcome).toBe("pass");
    // 100 °F is no target, whether it was met or not; the 5 °F floor holds whatever the target.
    const absurd = { target: deltaF(100), lineTemperature: degF(139) };
    expect(check(absurd).outcome).toBe("inconclusive");
    expect(codes(absurd)).toEqual([
      "refrigerants.target-out-of-reach",
      "operating-check.by-superheat",
    ]);
    expect(check({ target: deltaF(100) }).outcome).toBe("inconclusive");
    expect(check({ target: deltaF(100), lineTemperature: degF(40) }).cause).toBe(
      "liquid-to-compressor",
    );
    expect(codes({ target: deltaK(25) })).not.toContain("refrigerants.target-out-of-reach");
    const valve = { meteringDevice: "thermostatic-valve", pressure: psig(355) };
    expect(codes({ ...valve, target: deltaK(16) })).toContain("refrigerants.target-out-of-reach");
    expect(codes({ ...valve, target: deltaK(15) })).not.toContain(
      "refrigerants.target-out-of-reach",
    );
  });

  test("takes no pressure drop for superheat, where it would hide liquid at the compressor", () => {
    const argument = argumentOf(() => check({ pressureDrop: psi(10) }));
    expect(argument).toBe("pressureDrop");
    expect(check({ pressureDrop: psi(0) }).method).toBe("superheat");
  });

  test("of a thermostatic valve is judged by subcooling, less the coil's pressure drop", () => {
    const valve = {
      meteringDevice: "thermostatic-valve",
      pressure: psig(388),
      lineTemperature: degF(95),
      target: deltaF(13),
      tolerance: deltaF(3),
    };
    const with33 = check({ ...valve, pressureDrop: psi(33) });
    expect(with33.method).toBe("subcooling");
    expect(with33.outcome).toBe("pass");
    const without = check(valve);
    expect(without.cause).toBe("high");
    const difference =
      (without.result?.value.in(deltaF) ?? 0) - (with33.result?.value.in(deltaF) ?? 0);
    expect(difference).toBeCloseTo(6.5, 0);
  });

  test("names the bad argument", () => {
    const named = (more: Anything) => argumentOf(() => check(more));
    expect(named({ target: undefined })).toBe("target");
    expect(named({ tolerance: undefined })).toBe("tolerance");
    expect(named({ pressureDrop: psi(-1) })).toBe("pressureDrop");
    expect(named({ pressure: psia(118) })).toBe("pressure");
    expect(named({ atmosphere: undefined })).toBe("atmosphere");
    expect(named({ meteringDevice: "valve" })).toBe("meteringDevice");
    expect(named({ compressor: "two-speed" })).toBe("compressor");
    // What is weighed is warned of too: a name alone does not say whether it burns.
    expect(named({ compressor: "inverter", refrigerant: "R32" })).toBe("refrigerant");
    expect(named({ compressor: "inverter", refrigerant: {} })).toBe("refrigerant.safetyClass");
    expect(named({ mode: "auto" })).toBe("mode");
    expect(named({ lineTemperature: Number.NaN })).toBe("lineTemperature");
  });
});

describe("the target superheat of an orifice", () => {
  // An invented chart with the cells that are known in two of its corners.
  const chart = {
    outdoorDryBulbs: [degF(75), degF(85), degF(95)],
    indoorWetBulbs: [degF(62), degF(66), degF(70)],
    targets: [
      [deltaF(13), deltaF(21), deltaF(28)],
      [deltaF(6), deltaF(15), deltaF(23)],
      ["-", deltaF(8), deltaF(18)],
    ],
  } satisfies operating.SuperheatChart;
  const at = (outdoor: number, wetBulb: number, more: object = { chart }) => {
    const answer = operating.targetSuperheat({
      outdoorDryBulb: degF(outdoor),
      indoorWetBulb: degF(wetBulb),
      ...more,
    });
    return answer.instruction === "charge-to-target"
      ? answer.target.in(deltaF)
      : answer.instruction;
  };

  test("knows four printed cells, to half a degree, and makes none up", () => {
    expect(at(95, 70, {})).toBe(18);
    expect(at(95.4, 69.6, {})).toBe(18);
    expect(() => at(95, 66, {})).toThrow(OutOfRangeError);
    expect(() => at(96, 70, {})).toThrow(/75\/66 °F, 80\/70 °F, 85\/66 °F, 95\/70 °F/);
  });

  test("is read from the manual's chart, in proportion between its cells", () => {
    expect(at(85, 66)).toBeCloseTo(15, 9);
    expect(at(80, 66)).toBeCloseTo(18, 9);
    expect(at(85, 68)).toBeCloseTo(19, 9);
    expect(at(80, 68)).toBeCloseTo((21 + 28 + 15 + 23) / 4, 9);
  });

  test("forbids charging where a dash takes part, and only there", () => {
    expect(at(95, 62)).toBe("do-not-charge-by-superheat");
    expect(at(90, 64)).toBe("do-not-charge-by-superheat");
    expect(at(95, 64)).toBe("do-not-charge-by-superheat");
    expect(at(85, 62)).toBeCloseTo(6, 9);
    expect(at(95, 66)).toBeCloseTo(8, 9);
    const dashBelow = { ...chart, targets: [chart.targets[0], ["-", "-", "-"], chart.targets[2]] };
    expect(at(75, 62, { chart: dashBelow })).toBeCloseTo(13, 9);
    expect(at(76, 62, { chart: dashBelow })).toBe("do-not-charge-by-superheat");
  });

  test("ends where the chart ends", () => {
    expect(() => at(96, 66)).toThrow(OutOfRangeError);
    expect(() => at(85, 61)).toThrow(/at least 62 °F and at most 70 °F/);
  });

  test("names what is wrong with a chart", () => {
    const named = (more: Anything) =>
      argumentOf(() => at(80, 66, { chart: { ...chart, ...more } }));
    expect(named({ outdoorDryBulbs: [degF(75)] })).toBe("chart.outdoorDryBulbs.length");
    expect(named({ indoorWetBulbs: [degF(66), degF(62)] })).toBe("chart.indoorWetBulbs[1]");
    expect(named({ targets: [[]] })).toBe("chart.targets[0][1]");
    expect(named({ targets: undefined })).toBe("chart.targets[0][1]");
    expect(named({ targets: [] })).toBe("chart.targets[0][1]");
    const negative = [chart.targets[0], [deltaF(6), deltaF(-1), deltaF(23)], chart.targets[2]];
    expect(named({ targets: negative })).toBe("chart.targets[1][1]");
    const bad = [["x", "x"], ["x", "x"], []];
    expect(named({ targets: bad })).toBe("chart.targets[0][1]");
    expect(argumentOf(() => at(80, 66, { chart, indoorWetBulb: deltaK(66) }))).toBe(
      "indoorWetBulb",
    );
  });
});
