import {
  compareTemperatureRules,
  expectedTestPressure,
  type HoldPlan,
  holdRules,
  holdTime,
  leakGas,
  massFlowOfThroughput,
  nitrogenNeeded,
  pressurizationPlan,
  refrigerantEquivalent,
  scaleLeak,
  testVolume,
  throughputOfDrop,
} from "hvac-install-math/pressure-test";
import {
  cuft,
  day,
  degC,
  degF,
  deltaF,
  g,
  gPerYear,
  hour,
  inch,
  kelvin,
  kPaa,
  liter,
  MPaa,
  m,
  minute,
  paM3PerS,
  psi,
  psia,
  psig,
  standardAtmosphere,
} from "hvac-install-math/quantity";
import { bibliography } from "hvac-install-math/sources";
import { describe, expect, it } from "vitest";
import { nitrogenDensity } from "../../src/property-model/nitrogen.ts";

const bad = (call: () => unknown, says: string, name = "InvalidInputError") => {
  expect(call).toThrow(says);
  expect(call).toThrow(expect.objectContaining({ name }));
};

describe("the pressurization plan", () => {
  const site = {
    limits: [
      { part: "low side", pressure: psig(450) },
      { part: "high side", pressure: psig(600) },
      { part: "relief device", pressure: psig(550) },
    ],
    temperature: degF(60),
    warmest: degF(110),
    atmosphere: standardAtmosphere,
  } as const;

  it("stops where the warmed gas reaches the lowest limit", () => {
    const plan = pressurizationPlan({ ...site, wanted: psig(600) });
    expect(plan.lowestLimit.part).toBe("low side");
    expect(plan.lowered).toBe(true);
    const warm = expectedTestPressure({
      pressure: plan.fillPressure,
      temperature: site.temperature,
      laterTemperature: site.warmest,
      atmosphere: site.atmosphere,
    });
    expect(warm.in(psig)).toBeCloseTo(450, 6);
    expect(plan.pressureWhenWarm.in(psig)).toBeCloseTo(450, 6);
  });

  it("keeps a wanted pressure that stays below", () => {
    const plan = pressurizationPlan({ ...site, wanted: psig(300) });
    expect([plan.lowered, plan.fillPressure.in(psig)]).toEqual([false, 300]);
    expect(plan.pressureWhenWarm.in(psig)).toBeGreaterThan(330);
    expect(plan.reasons[0]?.code).toBe("pressure-test.below-limit");
  });

  it("counts the fill itself as the warmest when the day only cools", () => {
    const plan = pressurizationPlan({ ...site, warmest: degF(40) });
    expect(plan.pressureWhenWarm.in(psig)).toBeCloseTo(450, 9);
  });

  it("raises in stages, none above the last", () => {
    for (const pattern of ["three stages", "ten percent"] as const) {
      const { stages } = pressurizationPlan({ ...site, pattern });
      const steps = stages.map(({ pressure }) => pressure.si);
      expect(steps).toEqual([...steps].sort((a, b) => a - b));
      expect(stages[0]?.check).toBe("bubble solution on every joint");
      expect(stages.at(-1)).toMatchObject({ check: "test" });
      expect(stages.at(-1)).not.toHaveProperty("hold");
    }
    const { stages } = pressurizationPlan({ ...site, wanted: psig(30) });
    expect(stages.map(({ pressure }) => pressure.in(psig))).toEqual([30]);
    const ten = pressurizationPlan({ ...site, wanted: psig(400), pattern: "ten percent" }).stages;
    expect(ten.map(({ pressure }) => Math.round(pressure.in(psig)))).toEqual([
      10, 100, 120, 160, 200, 240, 280, 320, 360, 400,
    ]);
  });

  it("refuses what is no limit", () => {
    bad(() => pressurizationPlan({ ...site, limits: [] }), "limits");
    bad(() => pressurizationPlan({ ...site, limits: undefined as never }), "limits");
    bad(() => pressurizationPlan({ ...site, wanted: psig(0) }), "wanted");
    bad(() => pressurizationPlan({ ...site, wanted: psia(100) as never }), "wanted");
    bad(() => pressurizationPlan({ ...site, pattern: "fast" as never }), "three stages");
    bad(
      () => pressurizationPlan({ ...site, limits: [{ part: "door", pressure: psig(9) } as never] }),
      "limits[0].part",
    );
    bad(() => pressurizationPlan({ ...site, warmest: degC(95) }), "warmest", "OutOfRangeError");
  });
});

it("rounds the figures of a plan's sentence down, and says that it leaves no margin", () => {
  const plan = pressurizationPlan({
    limits: [{ part: "relief device", pressure: psig(855) }],
    temperature: degF(60),
    warmest: degF(100),
    atmosphere: standardAtmosphere,
  });
  const said = (plan.reasons[0] as unknown as { values: { fill: typeof plan.fillPressure } }).values
    .fill;
  expect(said.si).toBeLessThanOrEqual(plan.fillPressure.si);
  expect(plan.cautions.map(({ code }) => code)).toContain("pressure-test.no-margin");
});

describe("arguments that are not there", () => {
  it.each([
    ["change", expectedTestPressure],
    ["plan", holdTime],
    ["fill", nitrogenNeeded],
    ["plan", pressurizationPlan],
    ["leak", refrigerantEquivalent],
    ["leak", scaleLeak],
    ["change", compareTemperatureRules],
    ["loss", throughputOfDrop],
    ["leak", massFlowOfThroughput],
  ])("are named: %s", (argument, call) => {
    for (const nothing of [null, undefined, "text"]) {
      bad(() => (call as (given: unknown) => unknown)(nothing), argument);
    }
  });

  it("are named within lists", () => {
    bad(() => testVolume({ tubes: [null as never] }), "tubes[0]");
    bad(() => testVolume({ vessels: liter(1) as never }), "vessels");
    const site = { temperature: degF(60), warmest: degF(60), atmosphere: standardAtmosphere };
    bad(() => pressurizationPlan({ ...site, limits: [null as never] }), "limits[0]");
  });
});

describe("the nitrogen that is needed", () => {
  const fill = {
    volume: liter(3),
    pressure: psig(500),
    temperature: degC(20),
    atmosphere: standardAtmosphere,
    cylinder: { waterVolume: liter(8), pressure: psig(2000) },
  };

  it("agrees with the reference equation of state", () => {
    const mass = 3e-3 * (nitrogenDensity(3548.7e3, 293.15) - nitrogenDensity(101.325e3, 293.15));
    expect(nitrogenNeeded(fill).mass.in(g)).toBeCloseTo(mass * 1e3, 1);
  });

  it("balances what leaves the cylinder", () => {
    const { cylinderPressureAfter } = nitrogenNeeded(fill);
    const held = (p: number) => 8e-3 * nitrogenDensity(p, 293.15);
    const before = held(psig(2000).si + 101_325);
    const after = held((cylinderPressureAfter?.si ?? 0) + 101_325);
    expect((before - after) * 1e3).toBeCloseTo(nitrogenNeeded(fill).mass.in(g), -0.5);
  });

  it("says when the cylinder cannot reach the pressure, or not often enough", () => {
    const low = { waterVolume: liter(8), pressure: psig(510) };
    expect(nitrogenNeeded({ ...fill, cylinder: low })).toMatchObject({ enough: false, fills: 0 });
    const often = nitrogenNeeded({ ...fill, fills: 20 });
    expect(often.enough).toBe(false);
    expect(often).not.toHaveProperty("cylinderPressureAfter");
  });

  it("needs none when the system is already there", () => {
    const full = nitrogenNeeded({ ...fill, startPressure: psig(500) });
    expect(full.mass.in(g)).toBe(0);
    expect(full.enough).toBe(true);
    bad(() => nitrogenNeeded({ ...fill, startPressure: psig(501) }), "startPressure");
    bad(() => nitrogenNeeded({ ...fill, startPressure: 0 as never }), "startPressure");
  });

  it("refuses an impossible cylinder", () => {
    const with_ = (cylinder: object) => () =>
      nitrogenNeeded({ ...fill, cylinder: { ...fill.cylinder, ...cylinder } });
    bad(with_({ pressure: psig(6000) }), "cylinder.pressure", "OutOfRangeError");
    bad(with_({ waterVolume: liter(0) }), "cylinder.waterVolume");
    // 40 ft³ of gas is the trade size of a cylinder of 8 L.
    bad(with_({ waterVolume: cuft(40) }), "cylinder.waterVolume");
    expect(with_({ waterVolume: cuft(40) })).toThrow(/water-volume/);
    bad(() => nitrogenNeeded({ ...fill, fills: 0 }), "fills");
    bad(() => nitrogenNeeded({ ...fill, cylinder: undefined as never }), "cylinder");
  });
});

describe("the hold time", () => {
  const plan: HoldPlan = {
    leakRate: paM3PerS(1e-4),
    volume: liter(3),
    pressure: psig(500),
    temperature: degF(80),
    laterTemperature: degF(75),
    instruments: {
      pressure: { accuracy: psi(2), resolution: psi(0.1) },
      temperature: { accuracy: deltaF(1), followsGasWithin: deltaF(0.5) },
    },
    atmosphere: standardAtmosphere,
  };

  it("is V·U/Q, and twice that to be sure", () => {
    const { shortest, recommended, provableDrop } = holdTime(plan);
    expect(shortest.si).toBeCloseTo((3e-3 * provableDrop.si) / 1e-4, 3);
    expect(recommended.si).toBeCloseTo(2 * shortest.si, 6);
  });

  it("grows with the volume and shrinks with a better thermometer", () => {
    const base = holdTime(plan).shortest.si;
    expect(holdTime({ ...plan, volume: liter(6) }).shortest.si).toBeGreaterThan(1.9 * base);
    const { pressure } = plan.instruments;
    const temperature = { accuracy: deltaF(1), followsGasWithin: deltaF(0.1) };
    const better = { ...plan, instruments: { pressure, temperature } };
    expect(holdTime(better).shortest.si).toBeLessThan(base);
  });

  it("needs a volume and a leak", () => {
    const { volume: _, ...without } = plan;
    bad(() => holdTime(without), "volume");
    bad(() => holdTime({ ...plan, leakRate: paM3PerS(0) }), "leakRate");
  });
});

describe("leaks", () => {
  it("scale to themselves", () => {
    const gas = { ...leakGas.nitrogen, pressure: psia(500), outside: standardAtmosphere };
    const same = scaleLeak({ throughput: paM3PerS(1e-5), from: gas, to: gas });
    expect([same.viscous.si, same.molecular.si]).toEqual([1e-5, 1e-5]);
  });

  it("become a range of refrigerant with its reference temperature and a caution", () => {
    const loss = refrigerantEquivalent({
      nitrogenLeak: paM3PerS(1e-5),
      testPressure: psia(300),
      refrigerant: { gramsPerMole: 52.02, viscosity: 13.1 },
      refrigerantPressure: MPaa(1.47),
      outside: standardAtmosphere,
      temperature: degC(20),
    });
    expect(loss.low.in(gPerYear)).toBeLessThan(loss.high.in(gPerYear));
    expect([loss.viscous, loss.molecular]).toContainEqual(loss.low);
    expect(loss.referenceTemperature.in(degC)).toBe(20);
    expect(loss.cautions.map(({ code }) => code)).toContain("pressure-test.order-of-magnitude");
  });

  it("refuse what is no leak", () => {
    const gas = { ...leakGas.nitrogen, pressure: psia(500), outside: standardAtmosphere };
    const call = (change: object) => () =>
      scaleLeak({ throughput: paM3PerS(1e-5), from: gas, to: { ...gas, ...change } });
    bad(call({ pressure: kPaa(50) }), "to.pressure");
    bad(call({ viscosity: 0 }), "to.viscosity");
    bad(call({ gramsPerMole: Number.NaN }), "to.gramsPerMole");
    bad(() => scaleLeak({ throughput: paM3PerS(-1), from: gas, to: gas }), "throughput");
    bad(() => scaleLeak({ throughput: paM3PerS(1), from: null as never, to: gas }), "from");
    const drop = { volume: liter(2), drop: psi(1), elapsed: day(0) };
    bad(() => throughputOfDrop(drop), "elapsed");
    bad(() => throughputOfDrop({ ...drop, elapsed: day(1), volume: liter(0) }), "volume");
    const mass = { throughput: paM3PerS(1), temperature: degC(20), gramsPerMole: 0 };
    bad(() => massFlowOfThroughput(mass), "gramsPerMole");
    const frozen = { ...mass, gramsPerMole: 28, temperature: kelvin(0) };
    bad(() => massFlowOfThroughput(frozen), "temperature");
  });
});

describe("the volume", () => {
  it("adds tubes and vessels", () => {
    const tubes = [{ insideDiameter: inch(1), length: m(1) }];
    expect(testVolume({ tubes }).si).toBeCloseTo((Math.PI / 4) * 0.0254 ** 2, 12);
    expect(testVolume({ tubes, vessels: [liter(1)] }).si).toBeCloseTo(1e-3 + 5.067e-4, 6);
  });

  it("refuses nothing and zero", () => {
    bad(() => testVolume({}), "one of tubes, vessels");
    bad(() => testVolume(undefined as never), "one of tubes, vessels");
    bad(() => testVolume({ vessels: [liter(0)] }), "vessels[0]");
    bad(
      () => testVolume({ tubes: [{ insideDiameter: inch(0), length: m(1) }] }),
      "tubes[0].insideDiameter",
    );
  });
});

describe("rules in print", () => {
  const at = (later: number) =>
    compareTemperatureRules({
      pressure: psig(500),
      temperature: degF(80),
      laterTemperature: degF(later),
      atmosphere: standardAtmosphere,
    });

  it("make a tight system look leaking when it cools, and hide a leak when it warms", () => {
    for (const { error } of at(60)) expect(error.si).toBeGreaterThan(0);
    for (const { error } of at(100)) expect(error.si).toBeLessThan(0);
  });

  it("disagree between the two printed forms of one rule", () => {
    const of = (name: string) =>
      at(60)
        .find(({ rule }) => rule === name)
        ?.expected.in(psig) ?? 0;
    // 0.3 psi/°F is 3.72 kPa/K, not 2.
    expect((500 - of("0.3 psi per °F")) / (500 - of("2 kPa per °C"))).toBeCloseTo(1.86, 2);
  });

  it("refuse an absolute pressure", () => {
    const call = () =>
      compareTemperatureRules({
        pressure: psia(500) as never,
        temperature: degF(80),
        laterTemperature: degF(60),
        atmosphere: standardAtmosphere,
      });
    bad(call, "pressure");
  });

  it("name their source and standing, once each", () => {
    expect(new Set(holdRules.map(({ name }) => name)).size).toBe(holdRules.length);
    for (const { source, standing, hold } of holdRules) {
      expect(bibliography).toHaveProperty([source.source]);
      expect(["published", "from-memory", "common-practice"]).toContain(standing);
      if (hold) expect(hold > minute(5) && hold <= hour(24)).toBe(true);
    }
  });
});
