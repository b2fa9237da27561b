import {
  assessLiquidVelocity,
  assessVaporLine,
  astmB280Tube,
  type FrictionLossInput,
  frictionFactor,
  frictionLoss,
  guideLosses,
  identifyLines,
  type LiquidSubcoolingInput,
  lineVelocity,
  liquidLineSubcooling,
  oilEntrainmentVelocity,
  refrigerantMassFlow,
  staticHead,
  type VaporLineInput,
} from "hvac-install-math/line-set";
import {
  btuPerHour,
  btuPerLb,
  degC,
  deltaK,
  ft,
  ftPerMinute,
  kgPerHour,
  kgPerM3,
  kgPerSecond,
  kJPerKg,
  kPa,
  kW,
  lbPerHour,
  MPaa,
  m,
  mPerSecond,
  psi,
} from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import { inEnglish, sentences } from "./in-english.ts";

const quarter = astmB280Tube({ size: "1/4", temper: "annealed" });
const threeEighths = astmB280Tube({ size: "3/8", temper: "annealed" });

describe("identifyLines", () => {
  it("calls the smaller tube the liquid line, whatever the order", () => {
    expect(identifyLines(threeEighths, quarter)).toEqual({ liquid: quarter, vapor: threeEighths });
    expect(identifyLines(quarter, threeEighths)).toEqual({ liquid: quarter, vapor: threeEighths });
  });
  it("does not guess between two tubes of one size", () => {
    expect(() => identifyLines(quarter, quarter)).toThrow(/^b\.outsideDiameter: length 0.25 in/);
  });
});

describe("staticHead", () => {
  it("is a gain where the liquid falls", () => {
    expect(staticHead({ density: kgPerM3(1000), lift: m(-10) }).toString(kPa, 2)).toBe(
      "-98.07 kPa",
    );
  });
  it("names what it cannot use", () => {
    expect(() => staticHead({ density: kgPerM3(0), lift: m(1) })).toThrow(/^density: 0 kg/);
    expect(() => staticHead({ density: kgPerM3(1000), lift: m(1e4) })).toThrow(/^lift: 10000 m/);
  });
});

describe("frictionFactor", () => {
  it("solves Colebrook's equation to the last digits", () => {
    for (const reynolds of [2300, 4e3, 1e4, 1e5, 1e6, 1e8]) {
      for (const relativeRoughness of [0, 1e-6, 1e-4, 1e-2, 0.05]) {
        const x = 1 / Math.sqrt(frictionFactor({ reynolds, relativeRoughness }));
        const right = -2 * Math.log10(relativeRoughness / 3.7 + (2.51 * x) / reynolds);
        expect(Math.abs(x - right)).toBeLessThan(1e-12 * x);
      }
    }
  });
  it("is 64/Re for laminar flow", () => {
    expect(frictionFactor({ reynolds: 1600, relativeRoughness: 0.01 })).toBe(0.04);
  });
  it("names what it cannot use", () => {
    expect(() => frictionFactor({ reynolds: 0, relativeRoughness: 0 })).toThrow(/^reynolds: 0/);
    expect(() => frictionFactor({ reynolds: 1e5, relativeRoughness: 0.2 })).toThrow(
      /^relativeRoughness: 0.2/,
    );
  });
});

describe("frictionLoss", () => {
  const flow: FrictionLossInput = {
    tube: quarter,
    length: m(10),
    massFlow: kgPerHour(60),
    density: kgPerM3(980),
    viscosityMicropascalSecond: 100,
  };
  it("grows with the length in proportion", () => {
    const one = frictionLoss(flow).pressureLoss.si;
    expect(frictionLoss({ ...flow, length: m(20) }).pressureLoss.si).toBeCloseTo(2 * one, 6);
  });
  it("is Hagen and Poiseuille's for laminar flow: Δp = 128·μ·L·V̇/(π·d⁴)", () => {
    const slow = frictionLoss({ ...flow, massFlow: kgPerHour(1) });
    const d = 0.19 * 0.0254;
    const expected = (128 * 100e-6 * 10 * (1 / 3600 / 980)) / (Math.PI * d ** 4);
    expect(slow.pressureLoss.si).toBeCloseTo(expected, 9);
  });
  it("takes drawn copper to be as rough as 0.000 005 ft, Moody (1944)", () => {
    const fast = { ...flow, massFlow: kgPerHour(200) };
    const given = frictionLoss({ ...fast, roughness: ft(0.000005) });
    expect(frictionLoss(fast).pressureLoss.si).toBeCloseTo(given.pressureLoss.si, 9);
    const smooth = frictionLoss({ ...fast, roughness: m(0) });
    expect(smooth.pressureLoss < given.pressureLoss).toBe(true);
  });
  it("is nothing where nothing flows", () => {
    const still = frictionLoss({ ...flow, massFlow: kgPerHour(0) });
    expect([
      still.pressureLoss.si,
      still.velocity.si,
      still.reynolds,
      still.frictionFactor,
    ]).toEqual([0, 0, 0, 0]);
  });
  it("answers in psi and ft/min for a length in feet", () => {
    const { pressureLoss, velocity } = frictionLoss({ ...flow, length: ft(30) });
    expect([pressureLoss.unit, velocity.unit]).toEqual([psi, ftPerMinute]);
  });
  it("names a viscosity in the wrong unit and other slips", () => {
    const bad = (change: object) => () => frictionLoss({ ...flow, ...change });
    expect(bad({ viscosityMicropascalSecond: 1e-4 })).toThrow(/line-set\.viscosity-unit/);
    expect(bad({ massFlow: kgPerSecond(300) })).toThrow(/^massFlow: 300 kg\/s/);
    expect(bad({ roughness: m(0.1) })).toThrow(/^roughness: 0.1 m/);
    expect(bad({ density: kgPerM3(0) })).toThrow(/^density: 0 kg/);
    expect(bad({ density: kgPerM3(3001) })).toThrow(/^density: 3001 kg/);
    expect(bad({ tube: {} })).toThrow(/^tube\.outsideDiameter/);
  });
});

describe("liquidLineSubcooling", () => {
  const line: LiquidSubcoolingInput = {
    liquidPressure: MPaa(2.6),
    bubbleTemperature: (p) => degC(42).plus(deltaK(20 * (p.in(MPaa) - 2.6))),
    losses: [kPa(60), kPa(40)],
    margin: deltaK(2),
  };
  it("turns the losses into degrees on the bubble curve and adds the margin", () => {
    const result = liquidLineSubcooling(line);
    expect(result.pressureLoss.toString()).toBe("100 kPa");
    expect(result.temperatureLoss.toString(deltaK, 3)).toBe("2.000 K");
    expect(result.neededSubcooling.toString(deltaK, 3)).toBe("4.000 K");
    expect(result.outcome).toBe("inconclusive");
  });
  it("judges what is there, with its uncertainty", () => {
    const outcome = (k: number, u = 0) =>
      liquidLineSubcooling({ ...line, available: deltaK(k), standardUncertainty: deltaK(u) })
        .outcome;
    expect([outcome(5), outcome(3), outcome(4.5, 0.5), outcome(5.5, 0.5)]).toEqual([
      "pass",
      "fail",
      "inconclusive",
      "pass",
    ]);
    const { reasons } = liquidLineSubcooling({ ...line, available: deltaK(3) });
    expect(inEnglish(reasons[0])).toBe(
      "Subcooling 3 K: below the 4 K required for a loss of 100 kPa. The liquid flashes.",
    );
  });
  it("keeps the margin where the liquid falls", () => {
    const result = liquidLineSubcooling({ ...line, losses: [kPa(-50)] });
    expect(result.neededSubcooling.toString()).toBe("2 K");
    expect(result.temperatureLoss < deltaK(0)).toBe(true);
  });
  it("says what it rests on", () => {
    const { assumptions, cautions, sources, reasons } = liquidLineSubcooling(line);
    expect(sentences(reasons)).toEqual([
      "The subcooling is not known; 4 K required for a loss of 100 kPa.",
    ]);
    expect(assumptions.map(({ code }) => code)).toEqual([
      "line-set.no-heat-gain",
      "line-set.expansion-indoors",
    ]);
    expect(cautions.map(({ code }) => code)).toEqual([
      "safety.open-under-pressure",
      "safety.refrigerant-contact",
      "safety.others-govern",
    ]);
    expect(sources.map(({ source }) => source)).toEqual(["manufacturer-manuals", "jcgm-106-2012"]);
  });
  it("names what it cannot use", () => {
    const bad = (change: object) => () => liquidLineSubcooling({ ...line, ...change });
    expect(bad({ liquidPressure: MPaa(0) })).toThrow(/^liquidPressure: 0 MPa/);
    expect(bad({ losses: [] })).toThrow(/^losses\.length: 0/);
    expect(bad({ losses: [kPa(2600)] })).toThrow(/^losses: pressureDifference 2600 kPa/);
    expect(bad({ losses: [kPa(1), m(1)] })).toThrow(/^losses\[1\]: length 1 m/);
    expect(bad({ margin: deltaK(-1) })).toThrow(/^margin: -1 K/);
    expect(bad({ bubbleTemperature: () => 42 })).toThrow(/^bubbleTemperature: 42/);
    expect(bad({ bubbleTemperature: undefined })).toThrow(/^bubbleTemperature: undefined/);
  });
});

describe("assessLiquidVelocity", () => {
  const line = {
    tube: quarter,
    massFlow: kgPerHour(78),
    density: kgPerM3(980),
    solenoidValve: false,
  };
  it("keeps the guides' window, tighter with a solenoid valve", () => {
    const outcome = (kgh: number, solenoidValve = false) =>
      assessLiquidVelocity({ ...line, massFlow: kgPerHour(kgh), solenoidValve }).outcome;
    expect([outcome(78), outcome(20), outcome(140), outcome(120)]).toEqual([
      "pass",
      "inconclusive",
      "fail",
      "pass",
    ]);
    expect(outcome(120, true)).toBe("fail");
  });
  it("holds the loss against a limit, and asks for it where it is missing", () => {
    const maximumLoss = psi(guideLosses.R410A.liquid);
    const outcome = (loss?: number) =>
      assessLiquidVelocity({
        ...line,
        maximumLoss,
        ...(loss !== undefined && { pressureLoss: psi(loss) }),
      }).outcome;
    expect([outcome(59), outcome(61), outcome()]).toEqual(["pass", "fail", "inconclusive"]);
    expect(outcome(60)).toBe("pass");
  });
  it("says in words what it found, and what it rests on", () => {
    const judge = (change: object = {}) => assessLiquidVelocity({ ...line, ...change });
    const said = (change: object) => sentences(judge(change).reasons);
    // 78 kg/h through 0.190 in: 78/3600/980/(π/4·0.004826²) m/s is 237.9 ft/min.
    expect(said({})).toEqual([
      "Liquid velocity 237.9 ft/min: within the 100 ft/min to 400 ft/min of piping guides.",
    ]);
    expect(said({ massFlow: kgPerHour(156) })).toEqual([
      "Liquid velocity 475.8 ft/min: above the 400 ft/min maximum of piping guides.",
    ]);
    expect(said({ massFlow: kgPerHour(7.8) })).toEqual([
      "Liquid velocity 23.79 ft/min: below the 100 ft/min minimum of piping guides. A wide line holds more charge.",
    ]);
    expect(said({ maximumLoss: psi(60), pressureLoss: psi(20) })[1]).toBe(
      "Pressure loss 20 psi: within the 60 psi maximum.",
    );
    // What decides comes first.
    expect(said({ maximumLoss: psi(60) })[0]).toBe(
      "The pressure loss is not known; at most 60 psi allowed.",
    );
    expect(sentences(judge({ maximumLoss: psi(60), pressureLoss: psi(61) }).actions)).toEqual([
      "Install a wider liquid line, as the manual allows.",
    ]);
    const codes = (list: readonly { readonly code: string }[]) => list.map(({ code }) => code);
    expect(codes(judge().assumptions)).toEqual([
      "line-set.liquid-only",
      "line-set.loss-not-checked",
    ]);
    expect(codes(judge({ maximumLoss: psi(60) }).assumptions)).toEqual(["line-set.liquid-only"]);
    expect(codes(judge().cautions)).toEqual(["safety.others-govern"]);
    expect(judge().sources.map(({ source }) => source)).toEqual(["manufacturer-manuals"]);
  });
  it("names what it cannot use", () => {
    const bad = (change: object) => () => assessLiquidVelocity({ ...line, ...change });
    expect(bad({ tube: undefined })).toThrow(/^tube\.outsideDiameter: undefined/);
    expect(bad({ maximumLoss: psi(0) })).toThrow(/^maximumLoss: 0 psi/);
  });
});

describe("refrigerantMassFlow and lineVelocity", () => {
  it("follow the units that they are given", () => {
    const metric = refrigerantMassFlow({ capacity: kW(3.6), enthalpyDifference: kJPerKg(160) });
    expect(metric.toString(kgPerHour, 1)).toBe("81.0 kg/h");
    const us = refrigerantMassFlow({
      capacity: btuPerHour(12_000),
      enthalpyDifference: btuPerLb(70),
    });
    expect(us.unit).toBe(lbPerHour);
    const tube = { outsideDiameter: m(0.012), wall: m(0.001) };
    const flow = { tube, massFlow: kgPerSecond(0.025 * Math.PI * 1e-2), density: kgPerM3(10) };
    expect(lineVelocity(flow).toString(mPerSecond, 6)).toBe("1.000000 m/s");
  });
  it("name what they cannot use", () => {
    expect(() =>
      refrigerantMassFlow({ capacity: kW(-3), enthalpyDifference: kJPerKg(160) }),
    ).toThrow(/^capacity: -3 kW/);
    expect(() => refrigerantMassFlow({ capacity: kW(3), enthalpyDifference: kJPerKg(1) })).toThrow(
      /^enthalpyDifference: 1 kJ\/kg is not allowed; allowed: at least 10 kJ\/kg/,
    );
  });
});

describe("assessVaporLine", () => {
  const line: VaporLineInput = {
    tube: threeEighths,
    direction: "riser",
    fullMassFlow: kgPerHour(78),
    minimumMassFlow: kgPerHour(40),
    vaporDensity: kgPerM3(33),
    oilDensity: kgPerM3(980),
  };
  const judge = (change: Partial<VaporLineInput>) => assessVaporLine({ ...line, ...change });

  it("passes a riser that keeps the guide's velocity at least capacity", () => {
    expect(judge({}).outcome).toBe("pass");
  });
  it("leaves it to the manual between the oil's limit and the guide's", () => {
    expect(judge({ minimumMassFlow: kgPerHour(20) }).outcome).toBe("inconclusive");
  });
  it("fails a riser in which oil stays behind, but not a level line", () => {
    expect(judge({ minimumMassFlow: kgPerHour(5) }).outcome).toBe("fail");
    expect(judge({ minimumMassFlow: kgPerHour(5), direction: "horizontal" }).outcome).toBe(
      "inconclusive",
    );
  });
  it("fails what is loud, and says so first", () => {
    const loud = judge({ fullMassFlow: kgPerHour(200) });
    expect([loud.outcome, loud.reasons[0]?.code]).toEqual(["fail", "line-set.vapor-noise"]);
    expect(judge({}).reasons.map(({ code }) => code)).toEqual(["line-set.oil-returns"]);
  });
  it("keeps a limit that is just reached", () => {
    const { fullVelocity, minimumCapacityVelocity } = judge({});
    const reached = judge({
      minimumVelocity: minimumCapacityVelocity,
      maximumVelocity: fullVelocity,
    });
    expect(reached.outcome).toBe("pass");
    expect(judge({ minimumMassFlow: line.fullMassFlow }).outcome).toBe("pass"); // a single speed
  });
  it("says in words what it found, and what it rests on", () => {
    const said = (change: Partial<VaporLineInput>) => sentences(judge(change).reasons);
    // 40 kg/h through 0.311 in at 33 kg/m³: 40/3600/33/(π/4·0.0078994²) m/s is 1352 ft/min; 1 kg/h is 33.81 ft/min.
    expect(said({})).toEqual([
      "Vapor velocity at minimum capacity 1352 ft/min: at least 1000 ft/min, as required for oil return.",
    ]);
    // 0.85²·√(9.80665·0.0078994·(980 − 33)/33) m/s is 212.1 ft/min.
    expect(said({ minimumMassFlow: kgPerHour(20) })).toEqual([
      "Vapor velocity at minimum capacity 676.2 ft/min: below the 1000 ft/min required, although oil rises from 212.1 ft/min.",
    ]);
    expect(said({ minimumMassFlow: kgPerHour(5) })).toEqual([
      "Vapor velocity at minimum capacity 169 ft/min: too low to lift oil, which needs 212.1 ft/min.",
    ]);
    expect(said({ fullMassFlow: kgPerHour(100) })[0]).toBe(
      "Vapor velocity at full capacity 3381 ft/min: above the 3000 ft/min maximum. It is noisy.",
    );
    const { assumptions, cautions, sources } = judge({});
    expect(sentences(assumptions)).toEqual([
      "Vapor density is the same at both capacities.",
      "Minimum vapor velocity of piping guides: 1000 ft/min.",
      "Maximum vapor velocity of piping guides: 3000 ft/min.",
    ]);
    const partly = judge({ minimumVelocity: ftPerMinute(900) });
    expect(partly.assumptions.map(({ code }) => code)).toEqual([
      "line-set.same-density",
      "line-set.guide-maximum-velocity",
    ]);
    expect(cautions.map(({ code }) => code)).toEqual(["safety.others-govern"]);
    expect(sources.map(({ source }) => source)).toEqual(["manufacturer-manuals", "jacobs-1976"]);
  });
  it("prefers the manual's velocities", () => {
    const own = judge({ minimumVelocity: mPerSecond(8), maximumVelocity: mPerSecond(9) });
    expect(own.outcome).not.toBe("pass");
    expect(own.assumptions.map(({ code }) => code)).toEqual(["line-set.same-density"]);
  });
  it("lifts oil more easily in a smaller riser", () => {
    const least = (tube: VaporLineInput["tube"]) => oilEntrainmentVelocity({ ...line, tube }).si;
    expect(least(quarter)).toBeLessThan(least(threeEighths));
  });
  it("names what it cannot use", () => {
    expect(() => judge({ minimumMassFlow: kgPerHour(90) })).toThrow(/^minimumMassFlow: 90 kg\/h/);
    expect(() => judge({ minimumMassFlow: kgPerHour(0) })).toThrow(/^minimumMassFlow: 0 kg/);
    expect(() => judge({ fullMassFlow: kgPerHour(0) })).toThrow(/^fullMassFlow: 0 kg/);
    expect(() => judge({ vaporDensity: kgPerM3(501) })).toThrow(/^vaporDensity: 501/);
    expect(() => judge({ vaporDensity: kgPerM3(0) })).toThrow(/^vaporDensity: 0/);
    expect(() => judge({ minimumVelocity: mPerSecond(-1) })).toThrow(/^minimumVelocity: -1/);
    expect(() => judge({ oilDensity: kgPerM3(20) })).toThrow(/^oilDensity: 20/);
    expect(() => judge({ direction: "up" as "riser" })).toThrow(/^direction:/);
    expect(() => judge({ maximumVelocity: mPerSecond(1) })).toThrow(/^maximumVelocity: 1 m\/s/);
  });
});
