import type { Statement } from "hvac-install-math/assessment";
import {
  assessPressureTest,
  compareTemperatureRules,
  expectedTestPressure,
  type HoldPlan,
  holdTime,
  leakGas,
  nitrogenNeeded,
  pressurizationPlan,
  refrigerantEquivalent,
  scaleLeak,
  testVolume,
} from "hvac-install-math/pressure-test";
import {
  degC,
  deltaK,
  hour,
  inch,
  kelvin,
  kPa,
  kPaa,
  kPag,
  liter,
  MPaa,
  MPag,
  m,
  minute,
  paM3PerS,
  pascal,
  psi,
  psig,
  type Quantity,
  standardAtmosphere,
} from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import { nitrogenDensity, nitrogenPressure } from "../../src/property-model/nitrogen.ts";

const atmosphere = standardAtmosphere;
const air = 101_325;

describe("the range of a reading", () => {
  const at = (pressure: unknown, temperature: unknown = kelvin(300), more: object = {}) =>
    expectedTestPressure({
      pressure,
      temperature,
      laterTemperature: temperature,
      atmosphere,
      ...more,
    } as never) as Quantity<"gaugePressure"> | Quantity<"absolutePressure">;

  it("is 6 MPa absolute, of a gauge less the atmosphere", () => {
    expect(at(kPag(5898.6)).si).toBeCloseTo(5898.6e3, 3);
    expect(() => at(kPag(5898.7))).toThrow(expect.objectContaining({ name: "OutOfRangeError" }));
    expect(at(MPaa(6)).si).toBeCloseTo(6e6, 3);
    expect(() => at(MPaa(6.001))).toThrow(expect.objectContaining({ name: "OutOfRangeError" }));
  });

  it("is above vacuum", () => {
    expect(at(kPag(-101.3)).si).toBeCloseTo(-101.3e3, 3);
    expect(() => at(kPag(-101.325))).toThrow("pressure");
    expect(() => at(kPaa(0))).toThrow("pressure");
  });

  it("is a site's atmosphere, 20 kPa to 120 kPa, at both readings", () => {
    for (const kPaOfAir of [20, 120]) {
      const more = { atmosphere: kPaa(kPaOfAir), laterAtmosphere: kPaa(kPaOfAir) };
      expect(at(kPag(500), kelvin(300), more).si).toBeCloseTo(5e5, 3);
    }
    for (const kPaOfAir of [19.9, 120.1]) {
      for (const name of ["atmosphere", "laterAtmosphere"]) {
        expect(() => at(kPag(500), kelvin(300), { [name]: kPaa(kPaOfAir) })).toThrow(name);
      }
    }
    // An absolute sensor does not ask for it.
    expect(at(kPaa(500), kelvin(300), { atmosphere: undefined }).si).toBeCloseTo(5e5, 3);
  });

  it("is one temperature for each volume", () => {
    const zones = [kelvin(300), kelvin(290)];
    const volume = [liter(1), liter(2), liter(3)];
    expect(() => at(kPag(500), zones, { volume })).toThrow("2 temperatures");
    expect(() => at(kPag(500), zones, { volume: [] })).toThrow("volume");
    expect(() => at(kPag(500), [kelvin(300), 290], { volume })).toThrow("temperature[1]");
    expect(() => at(kPag(500), zones, { volume: [liter(1), liter(0)] })).toThrow("volume[1]");
  });

  it("follows walls of aluminum, 69.3e-6/K", () => {
    const later = (wall: "rigid" | "aluminum") =>
      at(kPaa(200), kelvin(300), { laterTemperature: kelvin(270), wall }).si;
    // From memory: three times the linear coefficient of 23.1e-6/K.
    expect(later("aluminum") / later("rigid")).toBeCloseTo(1 + 30 * 69.3e-6, 5);
  });
});

describe("a test by readings of two kinds of place", () => {
  const start = { pressure: kPag(500), temperature: kelvin(300) };
  const instruments = {
    pressure: { accuracy: pascal(100) },
    temperature: { accuracy: deltaK(0.1) },
  };

  it("expects the gauge by the atmosphere of its own reading", () => {
    const end = { ...start, atmosphere: kPaa(95), elapsed: hour(1) };
    const test = assessPressureTest({ start, end, instruments, atmosphere });
    // Same temperature: what was 601.325 kPa absolute is 506.325 kPa above 95 kPa.
    expect(test.expectedPressure.si).toBeCloseTo(506.325e3, 0);
    expect(test.correctedDrop.value.si).toBeCloseTo(6325, 0);
    const codes = test.assumptions.map(({ code }) => code);
    expect(codes).not.toContain("pressure-test.barometer-unchanged");
    const from = { ...start, atmosphere: kPaa(95) };
    const other = assessPressureTest({ start: from, end: start, instruments, atmosphere });
    expect(other.correctedDrop.value.si).toBeCloseTo(-6325, 0);
    expect(other.assumptions.map(({ code }) => code)).toContain(
      "pressure-test.barometer-unchanged",
    );
  });
});

describe("the refrigerant that would leave", () => {
  const leak = {
    nitrogenLeak: paM3PerS(1e-5),
    testPressure: kPaa(1000),
    refrigerant: { gramsPerMole: 50, viscosity: 12 },
    refrigerantPressure: kPaa(1000),
    outside: kPaa(100),
    temperature: kelvin(300),
  };

  it("is the smaller of the two laws at the low end, whichever that is", () => {
    // At equal pressures: laminar 17.57/12 = 1.464 (by viscosity), molecular √(28.01/50) = 0.749, by molar mass.
    const heavy = refrigerantEquivalent(leak);
    expect(heavy.low.si / heavy.high.si).toBeCloseTo(Math.sqrt(28.0134 / 50) / (17.57 / 12), 6);
    expect(heavy.low).toEqual(heavy.molecular);
    // A light, thick gas the other way round: 17.57/40 = 0.44, √(28.01/4) = 2.65.
    const light = refrigerantEquivalent({
      ...leak,
      refrigerant: { gramsPerMole: 4, viscosity: 40 },
    });
    expect(light.low).toEqual(light.viscous);
    expect(light.high).toEqual(light.molecular);
  });

  it("is none through no leak, and is not asked of a pressure that is not above the one outside", () => {
    expect(refrigerantEquivalent({ ...leak, nitrogenLeak: paM3PerS(0) }).high.si).toBe(0);
    for (const [name, value] of [
      ["testPressure", kPaa(100)],
      ["refrigerantPressure", kPaa(100)],
      ["nitrogenLeak", paM3PerS(-1e-9)],
      ["outside", kPag(0)],
      ["refrigerant", { gramsPerMole: 0.9, viscosity: 12 }],
    ] as const) {
      expect(() => refrigerantEquivalent({ ...leak, [name]: value } as never)).toThrow(name);
    }
  });

  it("refers to the mean temperature of the zones in a verdict", () => {
    const reading = (kPaOfGas: number, hours: number) => ({
      pressure: kPaa(kPaOfGas),
      temperature: [kelvin(280), kelvin(300)],
      elapsed: hour(hours),
    });
    const { refrigerantLoss } = assessPressureTest({
      start: reading(1000, 0),
      end: reading(900, 12),
      volume: [liter(1), liter(3)],
      instruments: { pressure: { accuracy: kPa(1) }, temperature: { accuracy: deltaK(1) } },
      refrigerant: { gas: leakGas.R32, pressure: MPaa(1.474) },
      atmosphere,
    });
    expect(refrigerantLoss?.referenceTemperature.in(kelvin)).toBe(290);
  });
});

describe("a scaled leak", () => {
  it("takes gases of 1 g/mol to 1000 g/mol and 1 µPa·s to 1000 µPa·s", () => {
    const gas = { pressure: kPaa(1000), outside: kPaa(100), gramsPerMole: 28, viscosity: 18 };
    const scaled = (change: object) =>
      scaleLeak({ throughput: paM3PerS(1e-6), from: gas, to: { ...gas, ...change } });
    // Q ∝ 1/η and 1/√M at equal pressures.
    expect(scaled({ viscosity: 1 }).viscous.si).toBeCloseTo(1.8e-5, 12);
    expect(scaled({ viscosity: 1000 }).viscous.si).toBeCloseTo(1.8e-8, 15);
    expect(scaled({ gramsPerMole: 1 }).molecular.si / 1e-6).toBeCloseTo(Math.sqrt(28), 9);
    expect(scaled({ gramsPerMole: 1000 }).molecular.si / 1e-6).toBeCloseTo(Math.sqrt(0.028), 9);
    for (const change of [
      { viscosity: 0.99 },
      { viscosity: 1001 },
      { gramsPerMole: 0.99 },
      { gramsPerMole: 1001 },
      { pressure: kPaa(100) },
    ]) {
      expect(() => scaled(change)).toThrow(`to.${Object.keys(change)[0]}`);
    }
    // (p₁² − p₂²)/η: (4 − 0.01)/(1 − 0.01) of the flow; (p₁ − p₂)/√M: 1.9/0.9.
    const twice = scaled({ pressure: kPaa(2000) });
    expect(twice.viscous.si / 1e-6).toBeCloseTo(3.99 / 0.99, 9);
    expect(twice.molecular.si / 1e-6).toBeCloseTo(1.9 / 0.9, 9);
  });
});

describe("the hold", () => {
  const plan: HoldPlan = {
    leakRate: paM3PerS(1e-3),
    volume: [liter(1), liter(2)],
    pressure: kPag(1000),
    temperature: kelvin(300),
    laterTemperature: kelvin(300),
    instruments: {
      pressure: { accuracy: pascal(0), drift: pascal(500 * Math.sqrt(3)) },
      temperature: { accuracy: deltaK(0), followsGasWithin: deltaK(0) },
    },
    atmosphere,
    confidence: 0.977249868051821, // k = 2
    wall: "rigid",
  };

  it("of an absolute sensor is V·k·u/Q", () => {
    const { shortest, provableDrop, uncertaintyBudget } = holdTime({
      ...plan,
      pressure: kPaa(1000),
    });
    expect(provableDrop.si).toBeCloseTo(1000, 6);
    expect(shortest.si).toBeCloseTo((3e-3 * 1000) / 1e-3, 6);
    expect(uncertaintyBudget.map(({ part }) => part)).toEqual(["gauge-drift"]);
  });

  it("of a gauge has the barometer's wander of just that time in it", () => {
    // 150 Pa·√h, from memory.
    for (const leakRate of [1e-3, 1e-4]) {
      const { shortest, uncertaintyBudget } = holdTime({ ...plan, leakRate: paM3PerS(leakRate) });
      const barometer = uncertaintyBudget.find(({ part }) => part === "barometer");
      const hours = shortest.in(hour);
      const wander = Math.min(800, 150 * Math.sqrt(hours));
      expect((barometer?.standardUncertainty.si ?? 0) / wander).toBeCloseTo(1, 4);
      const u = Math.hypot(500, wander);
      expect(shortest.si / ((3e-3 * 2 * u) / leakRate)).toBeCloseTo(1, 4);
    }
  });

  it("lets the thermometer's own error in where the temperature is to change, and needs instruments that real ones are", () => {
    const temperature = { accuracy: deltaK(1), followsGasWithin: deltaK(0) };
    const instruments = { ...plan.instruments, temperature };
    const colder = { ...plan, instruments, laterTemperature: kelvin(280) };
    expect(holdTime(colder).shortest.si).toBeGreaterThan(
      holdTime({ ...plan, instruments }).shortest.si,
    );
    const perfect = { ...plan.instruments, pressure: { accuracy: pascal(0), drift: pascal(0) } };
    expect(() => holdTime({ ...plan, pressure: kPaa(1000), instruments: perfect })).toThrow(
      expect.objectContaining({ name: "OutOfRangeError", argument: "instruments" }),
    );
  });
});

describe("the plan of the fill", () => {
  const site = {
    limits: [{ part: "high side", pressure: MPag(4.15) }],
    temperature: kelvin(293.15),
    warmest: kelvin(293.15),
    atmosphere,
  } as const;

  it("raises as makers' manuals say: 0.3 MPa for 3 min, 1.5 MPa for 5 min, then the test", () => {
    const { stages, sources, lowered } = pressurizationPlan({ ...site, wanted: MPag(4) });
    expect(
      stages.map(({ pressure, hold }) => [
        Number(pressure.in(MPag).toPrecision(12)),
        hold?.in(minute),
      ]),
    ).toEqual([
      [0.3, 3],
      [1.5, 5],
      [4, undefined],
    ]);
    expect(stages.map(({ check }) => check)).toEqual([
      "bubble solution on every joint",
      "watch and listen",
      "test",
    ]);
    expect(stages[0]?.pressure.unit.symbol).toBe("MPag");
    expect(sources.map(({ source }) => source)).toEqual([
      "ashrae-15-2022",
      "manufacturer-manuals",
      "span-2000",
    ]);
    expect(lowered).toBe(false);
  });

  it("says that it believes the limits to be all of them, and what can hurt someone", () => {
    const { assumptions, cautions } = pressurizationPlan(site);
    expect(assumptions.map(({ code }) => code)).toEqual(["pressure-test.all-limits-given"]);
    expect(cautions.map(({ code }) => code)).toEqual(
      expect.arrayContaining([
        "safety.dry-nitrogen-only",
        "safety.regulator-and-relief",
        "pressure-test.no-margin",
      ]),
    );
  });

  it("raises as UFGS 15182 says: 10 psig, 100 psig, then tenths above it", () => {
    const ten = { ...site, pattern: "ten percent", wanted: psig(500) } as const;
    const { stages, sources } = pressurizationPlan(ten);
    expect(
      stages.map(({ pressure, hold, check }) => [
        Math.round(pressure.in(psig)),
        hold?.in(minute),
        check,
      ]),
    ).toEqual([
      [10, 10, "bubble solution on every joint"],
      [100, 3, "watch and listen"],
      ...[150, 200, 250, 300, 350, 400, 450].map((stage) => [stage, 3, "watch and listen"]),
      [500, undefined, "test"],
    ]);
    expect(sources.map(({ source }) => source)).toContain("ufgs-15182");
    const { stages: low } = pressurizationPlan({ ...ten, wanted: psig(100) });
    expect(low.map(({ pressure }) => Math.round(pressure.in(psig)))).toEqual([10, 100]);
  });

  it("says how far, in figures that are never above the limit", () => {
    const warm = { ...site, warmest: kelvin(313.15) };
    const { reasons, fillPressure, pressureWhenWarm, lowered } = pressurizationPlan(warm);
    expect(lowered).toBe(true);
    const values = reasons[0]?.values as Record<string, Quantity<"gaugePressure">>;
    expect(reasons[0]?.code).toBe("pressure-test.lowered-to-limit");
    // Constant density by the reference equation of Span et al. (2000).
    const density = nitrogenDensity(4.15e6 + air, 313.15);
    const fill = nitrogenPressure(density, 293.15) - air;
    expect(fillPressure.si / fill).toBeCloseTo(1, 5);
    expect(pressureWhenWarm.in(MPag)).toBeCloseTo(4.15, 6);
    // Four digits, rounded down.
    expect(values.fill?.in(MPag)).toBe(Math.floor(fill / 1e3) / 1e3);
    expect(values.warm?.in(MPag)).toBe(4.15);
    expect(values.limit?.in(MPag)).toBe(4.15);
    const [said] = pressurizationPlan({ ...site, wanted: psig(512.37) }).reasons as [Statement];
    expect((said.values.fill as Quantity<"gaugePressure">).in(psig)).toBe(512.3);
  });

  it("takes limits and wanted pressures of 1 Pa or more, and the lowest limit governs", () => {
    const limits = [
      { part: "component", pressure: kPag(900) },
      { part: "relief device", pressure: kPag(700) },
      { part: "low side", pressure: kPag(800) },
    ] as const;
    const plan = pressurizationPlan({ ...site, limits });
    expect(plan.lowestLimit.part).toBe("relief device");
    expect(plan.fillPressure.in(kPag)).toBeCloseTo(700, 6);
    expect(plan.fillPressure.unit.symbol).toBe("kPag");
    const tiny = { ...site, wanted: kPag(0.001) };
    expect(pressurizationPlan(tiny).fillPressure.si).toBeCloseTo(1, 6);
    for (const kPaOfGas of [0.0009, 0, -10]) {
      const limit = [{ part: "component", pressure: kPag(kPaOfGas) }] as const;
      expect(() => pressurizationPlan({ ...site, limits: limit })).toThrow("limits[0].pressure");
      expect(() => pressurizationPlan({ ...site, wanted: kPag(kPaOfGas) })).toThrow("wanted");
    }
  });
});

describe("the nitrogen of a fill", () => {
  const fill = {
    volume: liter(3),
    pressure: kPag(3000),
    temperature: kelvin(293.15),
    atmosphere,
    cylinder: { waterVolume: liter(8), pressure: MPag(10) },
  };
  const density = (pascals: number, K = 293.15) => nitrogenDensity(pascals, K);

  it("is counted for every fill, and from the pressure that is there", () => {
    // Reference equation of Span et al. (2000).
    const once = 3e-3 * (density(3.101325e6) - density(air));
    expect(nitrogenNeeded(fill).mass.si / once).toBeCloseTo(1, 4);
    expect(nitrogenNeeded({ ...fill, fills: 2 }).mass.si / once).toBeCloseTo(2, 4);
    const from = 3e-3 * (density(3.101325e6) - density(1.101325e6));
    const topped = nitrogenNeeded({ ...fill, startPressure: kPag(1000) });
    expect(topped.mass.si / from).toBeCloseTo(1, 4);
  });

  it("leaves the cylinder above the test pressure at each fill that counts", () => {
    const once = 3e-3 * (density(3.101325e6) - density(air));
    const fills = Math.floor((8e-3 * (density(10.101325e6) - density(3.101325e6))) / once);
    expect(nitrogenNeeded(fill).fills).toBe(fills);
    const last = nitrogenNeeded({ ...fill, fills });
    expect(last.enough).toBe(true);
    expect(last.cylinderPressureAfter?.si).toBeGreaterThan(3e6);
    expect(last.cylinderPressureAfter?.unit.symbol).toBe("MPag");
    expect(nitrogenNeeded({ ...fill, fills: fills + 1 }).enough).toBe(false);
    const after = nitrogenPressure(density(10.101325e6) - (fills * once) / 8e-3, 293.15);
    // 1 % in a cylinder up to 20 MPa.
    expect(((last.cylinderPressureAfter?.si ?? 0) + air) / after).toBeCloseTo(1, 2);
  });

  it("knows a cylinder that is warmer or colder than the system", () => {
    const cold = { ...fill.cylinder, temperature: kelvin(263.15) };
    const once = 3e-3 * (density(3.101325e6) - density(air));
    const { cylinderPressureAfter } = nitrogenNeeded({ ...fill, cylinder: cold });
    const after = nitrogenPressure(density(10.101325e6, 263.15) - once / 8e-3, 263.15) - air;
    expect((cylinderPressureAfter?.si ?? 0) / after).toBeCloseTo(1, 2);
    expect(() => nitrogenNeeded({ ...fill, cylinder: { ...cold, temperature: degC(90) } })).toThrow(
      "cylinder.temperature",
    );
  });

  it("carries the cautions, and that an emptying cylinder is cold", () => {
    expect(nitrogenNeeded(fill).cautions.map(({ code }) => code)).toEqual(
      expect.arrayContaining([
        "safety.dry-nitrogen-only",
        "safety.regulator-and-relief",
        "pressure-test.cylinder-cools",
      ]),
    );
  });

  it("needs none where it is there already, however often", () => {
    const full = nitrogenNeeded({ ...fill, startPressure: kPag(3000), fills: 5 });
    expect([full.mass.si, full.enough, full.fills]).toEqual([0, true, 5]);
  });

  it("takes a cylinder above vacuum up to 31 MPa, and 1 to 1000 fills", () => {
    const of = (pressure: Quantity<"gaugePressure">) =>
      nitrogenNeeded({ ...fill, cylinder: { ...fill.cylinder, pressure } });
    expect(of(MPag(30.898)).enough).toBe(true);
    expect(() => of(MPag(30.9))).toThrow(expect.objectContaining({ name: "OutOfRangeError" }));
    expect(of(kPag(-101)).fills).toBe(0);
    expect(() => of(kPag(-102))).toThrow("cylinder.pressure");
    for (const fills of [0.5, 1001]) {
      expect(() => nitrogenNeeded({ ...fill, fills })).toThrow("fills");
    }
    expect(nitrogenNeeded({ ...fill, fills: 1000 }).enough).toBe(false);
    const none = { ...fill, volume: liter(0) };
    expect(() => nitrogenNeeded(none)).toThrow("volume");
  });
});

describe("what is not above 0", () => {
  it("is no tube", () => {
    const tube = { insideDiameter: inch(0.3), length: m(5) };
    for (const change of [{ length: m(0) }, { insideDiameter: m(-1) }]) {
      const name = Object.keys(change)[0];
      expect(() => testVolume({ tubes: [{ ...tube, ...change }] })).toThrow(`tubes[0].${name}`);
    }
    expect(() => testVolume({ tubes: 3 as never })).toThrow("tubes");
    // π/4 d² L, twice.
    const two = testVolume({ tubes: [tube, tube] });
    expect(two.si).toBeCloseTo((2 * Math.PI * 0.00762 ** 2 * 5) / 4, 12);
    expect(two.unit.symbol).toBe("L");
  });

  it("is compared with the rules as a figure below it, in the gauge's own unit", () => {
    const rows = compareTemperatureRules({
      pressure: psig(10),
      temperature: kelvin(330),
      laterTemperature: kelvin(250),
      atmosphere,
    });
    const none = rows.find(({ rule }) => rule === "no correction");
    expect(none?.expected.in(psig)).toBeCloseTo(10, 9);
    // Constant density by the reference equation of Span et al. (2000).
    const later = nitrogenPressure(nitrogenDensity(psig(10).si + air, 330), 250) - air;
    expect(none?.error.in(psi)).toBeCloseTo((psig(10).si - later) / psi(1).si, 3);
    expect(none?.error.unit.symbol).toBe("psi");
  });
});
