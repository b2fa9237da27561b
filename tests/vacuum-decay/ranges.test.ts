// Where each argument ends: the last value that is taken, the first that is refused, by name.
import {
  degC,
  fraction,
  kelvin,
  liter,
  literPerSecond,
  m,
  m3,
  micron,
  micronDifference,
  micronPerMinute,
  minute,
  paM3PerS,
  pascalAbsolute,
  percent,
  type Quantity,
  second,
} from "hvac-install-math/quantity";
import {
  type AcceptancePolicy,
  acceptancePolicies,
  assessVacuumDecay,
  type DecayFit,
  decayCurve,
  effectivePumpingSpeed,
  pumpDownTime,
  residualGasFraction,
  tubeConductance,
  type VacuumDecayOptions,
  vacuumRiseOfLeak,
  waterSaturationPressure,
  waterSaturationTemperature,
  waterVaporMass,
} from "hvac-install-math/vacuum-decay";
import { describe, expect, it } from "vitest";

const readings = [{ elapsed: second(0), pressure: micron(300) }];
const decay = (more: object) => () =>
  assessVacuumDecay({
    ambient: degC(20),
    policy: acceptancePolicies.commonPractice500,
    readings,
    ...more,
  } as VacuumDecayOptions & { readings: typeof readings });
const policy = (more: Partial<AcceptancePolicy>) =>
  decay({ policy: { ...acceptancePolicies.splitManualA, ...more } });
const checkpoint = (more: object) =>
  policy({ checkpoints: [{ at: minute(5), limit: micron(500), ...more }] });
const hose = (length: Quantity<"length">) => decay({ hoses: { material: "rubber", length } });
const blank = (microns: number, volume: Quantity<"volume">) =>
  decay({ blankTest: { rate: micronPerMinute(microns), volume } });
const tube = { bore: m(0.01), length: m(1), meanPressure: micron(500), temperature: degC(20) };
const conductance = (more: object) => () => tubeConductance({ ...tube, ...more });
const pump = { volume: liter(5), pump: literPerSecond(2), from: micron(1000), to: micron(500) };
const down = (more: object) => () => pumpDownTime({ ...pump, ...more });
const piped = (more: object, temperature = degC(20)) =>
  down({ tubes: [{ bore: m(0.01), length: m(1), ...more }], temperature });
const cycle = { vacuum: micron(500), brokenTo: micron(760_000) };
const gas = (more: object) => () =>
  residualGasFraction({ cycles: [cycle], last: micron(300), start: micron(760_000), ...more });
const rise = (more: object) => () =>
  vacuumRiseOfLeak({
    leak: paM3PerS(1e-4),
    testPressure: pascalAbsolute(1e6),
    atmosphere: pascalAbsolute(1e5),
    volume: liter(2),
    ...more,
  });
const vapor = (more: object) => () =>
  waterVaporMass({ rise: micronDifference(1), volume: liter(1), temperature: degC(20), ...more });
const coefficients = {
  fast: -1,
  shape: -1,
  tau: 0,
  line: true,
  constant: 1,
  fast1: 0,
  fast2: 0,
  amplitude: 0,
  slope: 0.5,
  slopeU: 0,
  amplitudeU: 0,
  ahead: 0,
  aheadU: 0,
  aicc: 0,
  origin: 40,
};
const fit: DecayFit = {
  line: true,
  equalization: false,
  aicc: 0,
  from: second(10),
  to: second(110),
  coefficients,
};
const curve =
  (more: object, options: object = {}) =>
  () =>
    decayCurve({ ...fit, coefficients: { ...coefficients, ...more } }, { points: 3, ...options });
describe("the arguments of vacuum decay", () => {
  it.each([
    ["ambient", decay({ ambient: kelvin(233.15) }), decay({ ambient: kelvin(233.1) })],
    ["ambient", decay({ ambient: kelvin(333.15) }), decay({ ambient: kelvin(333.2) })],
    ["coldest", decay({ coldest: kelvin(173.15) }), decay({ coldest: kelvin(173.1) })],
    ["coldest", decay({ coldest: degC(20) }), decay({ coldest: degC(20.1) })],
    ["volume", decay({ volume: m3(1e-6) }), decay({ volume: m3(0.9e-6) })],
    ["volume", decay({ volume: m3(1) }), decay({ volume: m3(1.1) })],
    ["confidence", decay({ confidence: 0.8 }), decay({ confidence: 0.79 })],
    ["confidence", decay({ confidence: 0.999 }), decay({ confidence: 0.9991 })],
    [
      "gauge.accuracy",
      decay({ gauge: { accuracy: percent(0) } }),
      decay({ gauge: { accuracy: percent(-1) } }),
    ],
    [
      "gauge.accuracy",
      decay({ gauge: { accuracy: fraction(1) } }),
      decay({ gauge: { accuracy: fraction(1.1) } }),
    ],
    ["gauge.range", decay({ gauge: { range: micron(1) } }), decay({ gauge: { range: micron(0) } })],
    [
      "gauge.resolution",
      decay({ gauge: { resolution: micronDifference(0) } }),
      decay({ gauge: { resolution: micronDifference(-1) } }),
    ],
    [
      "gauge.resolution.length",
      decay({ gauge: { resolution: [{ upTo: micron(1), resolution: micronDifference(0) }] } }),
      decay({ gauge: { resolution: [] } }),
    ],
    [
      "gauge.resolution[0].upTo",
      decay({ gauge: {} }),
      decay({ gauge: { resolution: [{ upTo: micron(0), resolution: micronDifference(1) }] } }),
    ],
    [
      "gauge.resolution[0].resolution",
      decay({ gauge: {} }),
      decay({ gauge: { resolution: [{ upTo: micron(1), resolution: micronDifference(-1) }] } }),
    ],
    [
      "leakLimit",
      decay({ leakLimit: micronPerMinute(1) }),
      decay({ leakLimit: micronPerMinute(0) }),
    ],
    [
      "leakLimit",
      decay({ leakLimit: paM3PerS(6e-5), volume: liter(1) }),
      decay({ leakLimit: paM3PerS(0), volume: liter(1) }),
    ],
    ["hoses.length", hose(m(0)), hose(m(-0.1))],
    ["hoses.length", hose(m(30)), hose(m(30.1))],
    ["blankTest.rate", blank(0, liter(1)), blank(-0.1, liter(1))],
    ["blankTest.volume", blank(1, m3(1e-6)), blank(1, m3(0))],
    ["blankTest.volume", blank(1, m3(1)), blank(1, m3(1.1))],
    ["policy.checkpoints.length", policy({}), policy({ checkpoints: [] })],
    ["policy.target", policy({ target: micron(1) }), policy({ target: micron(0) })],
    ["policy.checkpoints[0].at", checkpoint({ at: second(1) }), checkpoint({ at: second(0) })],
    [
      "policy.checkpoints[0].at",
      checkpoint({ at: minute(7 * 1440) }),
      checkpoint({ at: minute(7 * 1440 + 1) }),
    ],
    [
      "policy.checkpoints[1].at",
      policy({
        checkpoints: [
          { at: minute(5), limit: micron(1) },
          { at: minute(6), limit: micron(1) },
        ],
      }),
      policy({
        checkpoints: [
          { at: minute(5), limit: micron(1) },
          { at: minute(5), limit: micron(1) },
        ],
      }),
    ],
    [
      "policy.checkpoints[0].limit",
      checkpoint({ limit: micron(1) }),
      checkpoint({ limit: micron(0) }),
    ],
    [
      "policy.checkpoints[0]",
      checkpoint({ limit: undefined, rise: micronDifference(0) }),
      checkpoint({ rise: micronDifference(1) }),
    ],
    [
      "policy.checkpoints[0].rise",
      checkpoint({}),
      checkpoint({ limit: undefined, rise: micronDifference(-1) }),
    ],
    [
      "policy.checkpoints[0].failAbove",
      checkpoint({ failAbove: micron(500) }),
      checkpoint({ failAbove: micron(499) }),
    ],
    [
      "policy.checkpoints[0].failAbove",
      checkpoint({ limit: undefined, rise: micronDifference(1), failAbove: micron(1) }),
      checkpoint({ limit: undefined, rise: micronDifference(1), failAbove: micron(0) }),
    ],
    ["bore", conductance({ bore: m(1e-4) }), conductance({ bore: m(0.9e-4) })],
    ["bore", conductance({ bore: m(1) }), conductance({ bore: m(1.01) })],
    ["length", conductance({ length: m(1e-4) }), conductance({ length: m(0.9e-4) })],
    ["length", conductance({ length: m(1000) }), conductance({ length: m(1001) })],
    [
      "meanPressure",
      conductance({ meanPressure: pascalAbsolute(1e-9) }),
      conductance({ meanPressure: pascalAbsolute(0) }),
    ],
    [
      "meanPressure",
      conductance({ meanPressure: pascalAbsolute(1.2e5) }),
      conductance({ meanPressure: pascalAbsolute(1.21e5) }),
    ],
    [
      "temperature",
      conductance({ temperature: kelvin(200) }),
      conductance({ temperature: kelvin(199) }),
    ],
    [
      "temperature",
      conductance({ temperature: kelvin(400) }),
      conductance({ temperature: kelvin(401) }),
    ],
    [
      "pump",
      () => effectivePumpingSpeed({ pump: literPerSecond(1), conductances: [] }),
      () => effectivePumpingSpeed({ pump: literPerSecond(0), conductances: [] }),
    ],
    [
      "conductances[0]",
      () => effectivePumpingSpeed({ pump: literPerSecond(1), conductances: [literPerSecond(1)] }),
      () => effectivePumpingSpeed({ pump: literPerSecond(1), conductances: [literPerSecond(0)] }),
    ],
    ["volume", down({}), down({ volume: liter(0) })],
    ["pump", down({}), down({ pump: literPerSecond(0) })],
    ["to", down({ ultimate: micron(499) }), down({ ultimate: micron(500) })],
    ["from", down({ from: micron(500) }), down({ from: micron(499) })],
    ["temperature", piped({}), down({ tubes: [{ bore: m(0.01), length: m(1) }] })],
    ["temperature", piped({}, kelvin(200)), piped({}, kelvin(199))],
    ["temperature", piped({}, kelvin(400)), piped({}, kelvin(401))],
    ["tubes[0].bore", piped({ bore: m(1e-4) }), piped({ bore: m(0.9e-4) })],
    ["tubes[0].bore", piped({ bore: m(1) }), piped({ bore: m(1.01) })],
    ["tubes[0].length", piped({ length: m(1e-4) }), piped({ length: m(0.9e-4) })],
    ["tubes[0].length", piped({ length: m(1000) }), piped({ length: m(1001) })],
    [
      "tubes.length",
      down({ tubes: [] }),
      down({ tubes: Array(101).fill({ bore: m(1), length: m(1) }) }),
    ],
    ["start", gas({}), gas({ start: micron(0) })],
    ["cycles[0].vacuum", gas({}), gas({ cycles: [{ ...cycle, vacuum: micron(760_000) }] })],
    ["cycles[0].vacuum", gas({}), gas({ cycles: [{ ...cycle, vacuum: micron(0) }] })],
    ["cycles[0].brokenTo", gas({}), gas({ cycles: [{ ...cycle, brokenTo: micron(500) }] })],
    ["cycles", gas({ cycles: Array(100).fill(cycle) }), gas({ cycles: Array(101).fill(cycle) })],
    ["last", gas({}), gas({ last: micron(760_000) })],
    ["last", gas({}), gas({ last: micron(0) })],
    ["atmosphere", rise({}), rise({ atmosphere: pascalAbsolute(0) })],
    ["testPressure", rise({}), rise({ testPressure: pascalAbsolute(1e5) })],
    ["leak", rise({}), rise({ leak: paM3PerS(0) })],
    ["volume", rise({}), rise({ volume: liter(0) })],
    ["rise", vapor({ rise: micronDifference(0) }), vapor({ rise: micronDifference(-1) })],
    ["volume", vapor({}), vapor({ volume: liter(0) })],
    ["temperature", vapor({ temperature: kelvin(200) }), vapor({ temperature: kelvin(199) })],
    ["temperature", vapor({ temperature: kelvin(400) }), vapor({ temperature: kelvin(401) })],
    [
      "temperature",
      () => waterSaturationPressure(kelvin(173.15)),
      () => waterSaturationPressure(kelvin(173.1)),
    ],
    [
      "temperature",
      () => waterSaturationPressure(kelvin(647.096)),
      () => waterSaturationPressure(kelvin(647.1)),
    ],
    [
      "pressure",
      () => waterSaturationTemperature(pascalAbsolute(0.0015)),
      () => waterSaturationTemperature(pascalAbsolute(0.0013)),
    ],
    [
      "pressure",
      () => waterSaturationTemperature(pascalAbsolute(22.064e6)),
      () => waterSaturationTemperature(pascalAbsolute(22.065e6)),
    ],
    ["points", curve({}, { points: 2 }), curve({}, { points: 1 })],
    ["points", curve({}, { points: 10_000 }), curve({}, { points: 10_001 })],
    ["until", curve({}, { until: second(11) }), curve({}, { until: second(10) })],
    ["fit.coefficients.fast", curve({ fast: 3 }), curve({ fast: 4 })],
    ["fit.coefficients.fast", curve({ fast: 0 }), curve({ fast: -2 })],
    ["fit.coefficients.shape", curve({ shape: 6, tau: 100 }), curve({ shape: 7, tau: 100 })],
    ["fit.coefficients.tau", curve({ tau: 0 }), curve({ tau: -1 })],
    ["fit.coefficients.tau", curve({ shape: 0, tau: 1 }), curve({ shape: 0, tau: 0 })],
    ["fit.coefficients.tau", curve({ tau: 1e30 }), curve({ tau: 1e31 })],
    ["fit.coefficients.slope", curve({}), curve({ slope: 1e31 })],
    ["fit.coefficients.slope", curve({}), curve({ slope: -1e31 })],
    ["fit.coefficients.constant", curve({}), curve({ constant: Number.NaN })],
    ["fit.coefficients.fast1", curve({}), curve({ fast1: undefined })],
    ["fit.coefficients.fast2", curve({}), curve({ fast2: undefined })],
    ["fit.coefficients.line", curve({ line: false }), curve({ line: 1 })],
  ] as const)(
    "%s: the last value that is taken, the first that is refused (%#)",
    (argument, taken, refused) => {
      expect(taken).not.toThrow();
      expect(refused).toThrow(expect.objectContaining({ argument }));
    },
  );
});

describe("a curve", () => {
  it("is constant, equalization, line and slow shape at evenly spaced times", () => {
    const more = { fast: 1, fast1: 3, fast2: 2, shape: 0, tau: 50, amplitude: 7 };
    const points = curve(more, { points: 5 })();
    expect(points.map(({ elapsed }) => elapsed.in(second))).toEqual([10, 35, 60, 85, 110]);
    for (const [i, { pressure }] of points.entries()) {
      const t = 25 * i;
      const rise = (tau: number) => 1 - Math.exp(-t / tau);
      // 40 Pa at the start of the stretch; the equalization's neighbours are 8 s and 16 s
      const expected = 40 + 1 + 3 * rise(8) + 2 * rise(16) + 0.5 * t + 7 * rise(50);
      expect(pressure.in(pascalAbsolute)).toBeCloseTo(expected, 9);
    }
  });

  it("never shows less than no pressure", () => {
    const points = curve({ slope: -10 }, { points: 3 })();
    expect(points.map(({ pressure }) => pressure.si)).toEqual([41, 0, 0]);
  });
});
