import {
  standardAtmosphere as atmosphere,
  degC,
  degF,
  InvalidInputError,
  kelvin,
  kPaa,
  kPag,
  OutOfRangeError,
  pascalAbsolute,
  psia,
  psig,
  type Quantity,
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
  refrigerants,
  saturatedLiquidDensity,
  saturatedVaporDensity,
  temperatureGlide,
} from "hvac-install-math/refrigerants";
import { describe, expect, test } from "vitest";

const parsed = <T>(value: T) => JSON.parse(JSON.stringify(value)) as never;

describe("the ends of a range", () => {
  test("are missed by rounding, a millionth of a kelvin, and no more", () => {
    const { min, max } = R32.range;
    expect(bubblePressure(R32, kelvin(min.si - 5e-7)).si).toBeGreaterThan(0);
    expect(bubblePressure(R32, kelvin(max.si + 5e-7)).si).toBeGreaterThan(0);
    expect(() => bubblePressure(R32, kelvin(min.si - 5e-6))).toThrow(OutOfRangeError);
    expect(() => bubblePressure(R32, kelvin(max.si + 5e-6))).toThrow(OutOfRangeError);
  });

  test("are told for the side that was asked, as a gauge would show them", () => {
    const told = (call: () => unknown) => {
      try {
        return String(call());
      } catch (error) {
        return (error as Error).message;
      }
    };
    const ends = (
      curve: typeof bubblePressure,
      unit: (p: Quantity<"absolutePressure">) => number,
    ) =>
      [R407C.range.min, R407C.range.max]
        .map((T) => `${Number(unit(curve(R407C, T)).toPrecision(6))}`)
        .map((text, i) => (i === 0 ? `at least ${text}` : `at most ${text}`));
    const inKPag = (p: Quantity<"absolutePressure">) => (p.si - atmosphere.si) / 1e3;
    const [low, high] = ends(bubblePressure, inKPag);
    const gauge = told(() => bubbleTemperature(R407C, kPag(9000), atmosphere));
    expect(gauge).toBe(
      `pressure: 9000 kPag is not allowed; allowed: ${low} kPag and ${high} kPag (refrigerants.range-of)`,
    );
    const [lowest, highest] = ends(dewPressure, (p) => p.in(kPaa));
    expect(told(() => dewTemperature(R407C, kPaa(9000)))).toContain(
      `pressure: 9000 kPaa is not allowed; allowed: ${lowest} kPaa and ${highest} kPaa (refrigerants.range-of)`,
    );
  });
});

describe("a pressure beyond the range", () => {
  test("is refused however near it is", () => {
    const { min, max } = R32.range;
    const at = (p: number) => () => dewTemperature(R32, pascalAbsolute(p));
    // near the ends a kelvin is 5 % and 2 % of the pressure: less than a thousandth of a kelvin
    expect(at(dewPressure(R32, min).si * (1 - 2e-5))).toThrow(OutOfRangeError);
    expect(at(dewPressure(R32, max).si * (1 + 5e-6))).toThrow(OutOfRangeError);
  });

  test("is refused however far it is: in a vacuum and up to the critical point and beyond", () => {
    for (const one of refrigerants) {
      const refused = (from: number, to: number) => {
        for (let share = 0; share <= 1; share += 0.002) {
          const p = pascalAbsolute(from * (to / from) ** share);
          expect(() => dewTemperature(one, p)).toThrow(OutOfRangeError);
          expect(() => bubbleTemperature(one, p)).toThrow(OutOfRangeError);
        }
      };
      refused(1e-3, 0.999 * dewPressure(one, one.range.min).si);
      refused(1.001 * bubblePressure(one, one.range.max).si, 1e9);
    }
  });
});

describe("a pressure or a temperature", () => {
  test("from parsed JSON is no quantity, and is named", () => {
    expect(() => bubblePressure(R410A, parsed(degF(40)))).toThrow(/^temperature: temperature /);
    expect(() => dewTemperature(R410A, parsed(psia(132)))).toThrow(/^pressure: absolutePressure /);
    expect(() => dewTemperature(R410A, parsed(psig(118)), atmosphere)).toThrow(
      /^pressure: gaugePressure .* allowed: the kind gaugePressure$/,
    );
    expect(() => dewTemperature(R410A, psig(118), parsed(atmosphere))).toThrow(
      /^atmosphere: absolutePressure /,
    );
    expect(() => dewTemperature(R410A, undefined as never)).toThrow(/^pressure: undefined/);
    expect(() => bubblePressure(R410A, { kind: "temperature", si: "300" } as never)).toThrow(
      /^temperature: /,
    );
    expect(() => bubblePressure(R410A, psig(40) as never)).toThrow(/^temperature: gaugePressure/);
  });

  test("needs an atmosphere that people live in", () => {
    expect(() => dewTemperature(R410A, psig(118), psia(0))).toThrow(
      /^atmosphere: 0 psia is not allowed; allowed: at least 2\.9/,
    );
    expect(() => dewTemperature(R410A, psig(118), null as never)).toThrow(/^atmosphere: null/);
    const text = { kind: "absolutePressure", si: "101325" } as never;
    expect(() => dewTemperature(R410A, psig(118), text)).toThrow(/^atmosphere: absolutePressure /);
  });

  test("needs a refrigerant of the module", () => {
    for (const nothing of [undefined, null, {}, { saturation: {} }]) {
      expect(() => bubblePressure(nothing as never, degF(40))).toThrow(InvalidInputError);
      expect(() => dewTemperature(nothing as never, psia(132))).toThrow(/^refrigerant: /);
    }
  });
});

describe("glide and mean coil temperature", () => {
  const inPsi = { pressure: psig(80), atmosphere };
  const inKPa = { pressure: kPaa(600) };

  test("speak °F to one who thinks in psi, and °C otherwise", () => {
    expect(temperatureGlide(R407C, inPsi).unit.symbol).toBe("Δ°F");
    expect(temperatureGlide(R407C, inKPa).unit.symbol).toBe("Δ°C");
    expect(meanCoilTemperature(R407C, inPsi).unit.symbol).toBe("°F");
    expect(meanCoilTemperature(R407C, inKPa).unit.symbol).toBe("°C");
  });

  test("lie between bubble and dew, in the middle unless said otherwise", () => {
    const [bubble, dew] = [bubbleTemperature(R407C, kPaa(600)), dewTemperature(R407C, kPaa(600))];
    const mean = (dewWeight?: number) =>
      meanCoilTemperature(R407C, { ...inKPa, ...(dewWeight !== undefined && { dewWeight }) }).si;
    expect(mean(0)).toBeCloseTo(bubble.si, 9);
    expect(mean(1)).toBeCloseTo(dew.si, 9);
    expect(mean()).toBeCloseTo((bubble.si + dew.si) / 2, 9);
    expect(temperatureGlide(R407C, inKPa).si).toBeCloseTo(dew.si - bubble.si, 9);
    expect(() => mean(-0.1)).toThrow(
      "dewWeight: -0.1 is not allowed; allowed: at least 0 and at most 1",
    );
    expect(() => mean(1.1)).toThrow(/^dewWeight: /);
    expect(() => temperatureGlide(R407C, undefined as never)).toThrow(/^reading: /);
  });
});

test("a temperature in °C is answered in kPaa and kg/m³, one in °F in psia and lb/ft³", () => {
  const density = [saturatedLiquidDensity, saturatedVaporDensity];
  for (const of of density) {
    expect(of(R32, degC(0)).unit.symbol).toBe("kg/m³");
    expect(of(R32, degF(32)).unit.symbol).toBe("lb/ft³");
  }
  expect(dewPressure(R32, degC(0)).toString(undefined, 0)).toBe("813 kPaa");
  expect(dewPressure(R32, degF(32)).toString(undefined, 0)).toBe("118 psia");
});
