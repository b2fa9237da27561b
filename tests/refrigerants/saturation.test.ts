import {
  atmosphereAtAltitude,
  degC,
  degF,
  deltaF,
  ft,
  InvalidInputError,
  kelvin,
  kPaa,
  kPag,
  OutOfRangeError,
  psi,
  psia,
  psig,
  standardAtmosphere,
} from "hvac-install-math/quantity";
import {
  bubblePressure,
  bubbleTemperature,
  dewPressure,
  dewTemperature,
  meanCoilTemperature,
  R32,
  R407C,
  R410A,
  R744,
  type Refrigerant,
  refrigerants,
  saturatedLiquidDensity,
  saturatedVaporDensity,
  saturationArray,
  subcooling,
  superheat,
  temperatureGlide,
} from "hvac-install-math/refrigerants";
import { describe, expect, test } from "vitest";
import { readCsv } from "../property-model/csv.ts";

const atmosphere = standardAtmosphere;
const named = refrigerants.map((one): [string, Refrigerant] => [one.designation, one]);

describe("the curves against the check values of the equations of state", () => {
  const rows = readCsv("saturation.csv");
  test.each(named)("%s: 1e-9 in pressure, 1e-8 in density, 1e-6 K", (designation, refrigerant) => {
    const id = designation.replace(/[-()]/g, "");
    const mine = rows.filter((row) => row.fluid === id);
    expect(mine.length).toBeGreaterThan(10);
    for (const row of mine) {
      const T = kelvin(Number(row.T_K));
      if (T > refrigerant.range.max) continue;
      const [bubble, dew] = [Number(row.p_bubble_Pa), Number(row.p_dew_Pa)];
      const off = (ours: number, theirs: number) => Math.abs(ours / theirs - 1);
      expect(off(bubblePressure(refrigerant, T).si, bubble)).toBeLessThan(1e-9);
      expect(off(dewPressure(refrigerant, T).si, dew)).toBeLessThan(1e-9);
      const liquid = Number(row.rho_liquid_kg_m3);
      const vapor = Number(row.rho_vapor_kg_m3);
      expect(off(saturatedLiquidDensity(refrigerant, T).si, liquid)).toBeLessThan(1e-8);
      expect(off(saturatedVaporDensity(refrigerant, T).si, vapor)).toBeLessThan(1e-8);
      const boils = bubbleTemperature(refrigerant, kPaa(bubble / 1e3));
      const condenses = dewTemperature(refrigerant, kPaa(dew / 1e3));
      expect(Math.abs(boils.si - T.si)).toBeLessThan(1e-6);
      expect(Math.abs(condenses.si - T.si)).toBeLessThan(1e-6);
    }
  });
});

describe("units of the answers", () => {
  test("follow the caller: psi for °F, kPa otherwise, and back", () => {
    expect(bubblePressure(R410A, degF(40)).unit.symbol).toBe("psia");
    expect(bubblePressure(R410A, degC(5)).unit.symbol).toBe("kPaa");
    expect(dewTemperature(R410A, psig(118), atmosphere).unit.symbol).toBe("°F");
    expect(dewTemperature(R410A, kPag(800), atmosphere).unit.symbol).toBe("°C");
    expect(dewTemperature(R410A, psia(132)).unit.symbol).toBe("°F");
    expect(saturatedLiquidDensity(R410A, degF(77)).unit.symbol).toBe("lb/ft³");
  });
});

describe("gauge and absolute pressure", () => {
  test("of the same state give the same temperature, at altitude too", () => {
    const high = atmosphereAtAltitude(ft(5000));
    const absolute = kPaa(900);
    const gauge = kPag(900 - high.in(kPaa));
    expect(dewTemperature(R407C, gauge, high).si).toBeCloseTo(
      dewTemperature(R407C, absolute).si,
      9,
    );
  });

  test("a gauge pressure without the atmosphere is refused and told what to give", () => {
    const call = () => dewTemperature(R410A, psig(118) as never);
    expect(call).toThrow(InvalidInputError);
    expect(call).toThrow(/atmosphere: undefined.*refrigerants\.gauge-needs-atmosphere/);
    const reading = { pressure: psig(118), lineTemperature: degF(50) } as never;
    expect(() => superheat(R410A, reading)).toThrow(/atmosphere/);
    expect(() => dewTemperature(R410A, psig(118), psig(0) as never)).toThrow(/absolutePressure/);
  });
});

describe("outside the range", () => {
  test.each(named)("%s: the ends are answered, a little beyond them is refused", (_, one) => {
    for (const T of [one.range.min, one.range.max]) {
      for (const p of [bubblePressure(one, T)])
        expect(bubbleTemperature(one, p).si).toBeCloseTo(T.si, 5);
      for (const p of [dewPressure(one, T)]) expect(dewTemperature(one, p).si).toBeCloseTo(T.si, 5);
    }
    expect(() => bubblePressure(one, kelvin(one.range.min.si - 0.01))).toThrow(OutOfRangeError);
    expect(() => bubblePressure(one, kelvin(one.range.max.si + 0.01))).toThrow(OutOfRangeError);
    const most = dewPressure(one, one.range.max).in(kPaa);
    const least = dewPressure(one, one.range.min).in(kPaa);
    expect(() => dewTemperature(one, kPaa(most * 1.001))).toThrow(OutOfRangeError);
    expect(() => dewTemperature(one, kPaa(least * 0.999))).toThrow(OutOfRangeError);
    expect(() => dewTemperature(one, kPaa(0))).toThrow(OutOfRangeError);
  });

  test("-60 °C and -76 °F are inside although they round to just below 213.15 K", () => {
    expect(bubblePressure(R32, degC(-60)).in(kPaa)).toBeCloseTo(64.96, 2);
    expect(bubblePressure(R32, degF(-76)).in(kPaa)).toBeCloseTo(64.96, 2);
  });

  test("the message states the range in the caller's own unit", () => {
    expect(() => bubblePressure(R410A, degF(200))).toThrow(
      "temperature: 200 °F is not allowed; allowed: at least -76 °F and at most 157.316 °F (refrigerants.range-of)",
    );
    expect(() => dewTemperature(R744, psig(1500), atmosphere)).toThrow(
      /pressure: 1500 psig is not allowed; allowed: at least 60\.\d+ psig and at most 10\d\d\.?\d* psig/,
    );
  });

  test("what is no number, no quantity or no refrigerant is named", () => {
    expect(() => bubblePressure(R410A, 40 as never)).toThrow(/temperature: 40 is not allowed/);
    expect(() => bubblePressure(R410A, degF(Number.NaN))).toThrow(/NaN/);
    expect(() => bubblePressure(R410A, undefined as never)).toThrow(/temperature: undefined/);
    expect(() => bubblePressure("R410A" as never, degF(40))).toThrow(
      /refrigerant: the text "R410A"/,
    );
    expect(() => dewTemperature(R410A, deltaF(3) as never, atmosphere)).toThrow(/absolutePressure/);
    expect(() => psia(-3)).toThrow(InvalidInputError);
  });
});

describe("superheat and subcooling", () => {
  test("of a blend with glide are measured from dew and from bubble", () => {
    const reading = { pressure: psig(80), lineTemperature: degF(60), atmosphere };
    expect(superheat(R407C, reading).in(deltaF)).toBeCloseTo(9.3, 1);
    expect(subcooling(R407C, reading).in(deltaF)).toBeCloseTo(-20.1, 1);
  });

  test("leave the caller's reading as it was", () => {
    const reading = Object.freeze({ pressure: psig(80), lineTemperature: degF(60), atmosphere });
    superheat(R407C, reading);
    expect(reading.pressure.toString()).toBe("80 psig");
  });

  test("at altitude differ from those at sea level for the same gauge reading", () => {
    const reading = { pressure: psig(118), lineTemperature: degF(52) };
    const sea = superheat(R410A, { ...reading, atmosphere });
    const high = superheat(R410A, { ...reading, atmosphere: atmosphereAtAltitude(ft(5000)) });
    expect(high.minus(sea).in(deltaF)).toBeCloseTo(1.05, 1);
  });

  test("a line temperature beyond the saturation range is fine", () => {
    const reading = { pressure: psig(400), lineTemperature: degF(220), atmosphere };
    expect(superheat(R410A, reading).in(deltaF)).toBeGreaterThan(100);
  });
});

test("glide and mean coil temperature use both ends", () => {
  const reading = { pressure: psig(80), atmosphere };
  expect(temperatureGlide(R32, reading).si).toBe(0);
  const [bubble, dew] = [
    bubbleTemperature(R407C, psig(80), atmosphere).si,
    dewTemperature(R407C, psig(80), atmosphere).si,
  ];
  expect(meanCoilTemperature(R407C, { ...reading, dewWeight: 0.6 }).si).toBeCloseTo(
    0.4 * bubble + 0.6 * dew,
    9,
  );
  expect(() => meanCoilTemperature(R407C, { ...reading, dewWeight: 2 })).toThrow(/dewWeight/);
});

describe("the bulk form", () => {
  test("gives what the typed functions give", () => {
    const kelvins = Float64Array.of(220, 273.15, 330);
    const pascals = saturationArray(R407C, "dewPressure", kelvins);
    for (const [i, p] of pascals.entries()) {
      expect(p / dewPressure(R407C, kelvin(kelvins[i] as number)).si).toBeCloseTo(1, 13);
    }
    const back = saturationArray(R407C, "dewTemperature", pascals);
    for (const [i, T] of back.entries()) expect(T).toBeCloseTo(kelvins[i] as number, 6);
    const liquid = saturationArray(R407C, "saturatedLiquidDensity", kelvins);
    expect(liquid[1]).toBeCloseTo(saturatedLiquidDensity(R407C, kelvin(273.15)).si, 9);
    const vapor = saturationArray(R407C, "saturatedVaporDensity", kelvins);
    expect(vapor[1]).toBeCloseTo(saturatedVaporDensity(R407C, kelvin(273.15)).si, 9);
    expect(saturationArray(R407C, "bubblePressure", kelvins, new Float64Array(3)).length).toBe(3);
  });

  test("names the position of a bad value, and the curve and lengths it knows", () => {
    const bad = Float64Array.of(273, Number.NaN);
    expect(() => saturationArray(R32, "bubblePressure", bad)).toThrow(/values\[1\]: NaN K/);
    expect(() => saturationArray(R32, "enthalpy" as never, bad)).toThrow(/dewTemperature/);
    expect(() => saturationArray(R32, "toString" as never, bad)).toThrow(/dewTemperature/);
    expect(() => saturationArray(R32, "dewPressure", bad, new Float64Array(1))).toThrow(
      /lengths 2, 1/,
    );
    expect(() => saturationArray(R32, "dewPressure", [1, 2] as never)).toThrow(InvalidInputError);
  });

  test("works on an empty array", () => {
    expect(saturationArray(R32, "dewPressure", new Float64Array(0)).length).toBe(0);
  });
});

test("a gauge reads lower at the same temperature when the air is denser", () => {
  const p = bubblePressure(R410A, degF(100));
  expect(p.minus(psia(14.7)).in(psi)).toBeCloseTo(318.5, 1);
});
