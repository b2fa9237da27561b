import { kelvin, OutOfRangeError, pascalAbsolute, type Quantity } from "hvac-install-math/quantity";
import {
  bubblePressure,
  bubbleTemperature,
  dewPressure,
  dewTemperature,
  R32,
  R407C,
  type Refrigerant,
  refrigerants,
  type SaturationCurve,
  saturatedLiquidDensity,
  saturatedVaporDensity,
  saturationArray,
} from "hvac-install-math/refrigerants";
import { describe, expect, test } from "vitest";
import { chebyshev } from "../../src/refrigerants/saturation/chebyshev.ts";

const typed: Record<SaturationCurve, (one: Refrigerant, value: number) => Quantity<never>> = {
  bubblePressure: (one, T) => bubblePressure(one, kelvin(T)) as never,
  dewPressure: (one, T) => dewPressure(one, kelvin(T)) as never,
  bubbleTemperature: (one, p) => bubbleTemperature(one, pascalAbsolute(p)) as never,
  dewTemperature: (one, p) => dewTemperature(one, pascalAbsolute(p)) as never,
  saturatedLiquidDensity: (one, T) => saturatedLiquidDensity(one, kelvin(T)) as never,
  saturatedVaporDensity: (one, T) => saturatedVaporDensity(one, kelvin(T)) as never,
};
const curves = Object.keys(typed) as SaturationCurve[];

test.each(curves)(
  "the bulk form of %s gives what the typed one gives, whoever is asked",
  (curve) => {
    for (const one of refrigerants) {
      const { min, max } = one.range;
      const temperatures = [0, 0.3, 0.7, 1].map((share) => min.si + share * (max.si - min.si));
      const side = curve === "bubbleTemperature" ? bubblePressure : dewPressure;
      const values = curve.endsWith("Temperature")
        ? temperatures.map((T) => side(one, kelvin(T)).si)
        : temperatures;
      const bulk = saturationArray(one, curve, Float64Array.from(values));
      for (const [i, value] of values.entries()) {
        const expected = typed[curve](one, value).si;
        expect(Math.abs((bulk[i] as number) / expected - 1)).toBeLessThan(1e-12);
      }
    }
  },
);

describe("the series", () => {
  test("is the sum of its terms times cos(k arccos y), however many they are (DLMF 3.11.6)", () => {
    const terms = [3, -2, 1.5, 0.7, -0.4, 0.25, -0.125, 0.0625];
    for (let count = 2; count <= terms.length; count++) {
      for (const y of [-1, -0.6, 0, 0.35, 1]) {
        const some = terms.slice(0, count);
        const expected = some.reduce((sum, c, k) => sum + c * Math.cos(k * Math.acos(y)), 0);
        expect(chebyshev(some, [2, 6], 4 + 2 * y)).toBeCloseTo(expected, 12);
      }
    }
  });
});

describe("what the bulk form says", () => {
  const thrown = (call: () => unknown) => {
    try {
      return `no error, but ${call()}`;
    } catch (error) {
      return `${(error as Error).name}: ${(error as Error).message}`;
    }
  };

  test("of a value outside names its position, the range and the refrigerant", () => {
    const bad = Float64Array.of(300, 200);
    const [min, max] = [R32.range.min.si, R32.range.max.si].map((T) => Number(T.toFixed(3)));
    expect(thrown(() => saturationArray(R32, "dewPressure", bad))).toBe(
      `OutOfRangeError: values[1]: 200 K is not allowed; allowed: at least ${min} K and at most ${max} K (refrigerants.range-of)`,
    );
    const pascals = Float64Array.of(1);
    expect(thrown(() => saturationArray(R32, "dewTemperature", pascals))).toMatch(
      /^OutOfRangeError: values\[0\]: 1 Pa is not allowed; allowed: at least 649\d\d(\.\d+)? Pa and at most 57\d+(\.\d+)? Pa \(refrigerants\.range-of\)$/,
    );
  });

  test("of a curve or an array that is none names what is allowed", () => {
    const some = Float64Array.of(300);
    expect(thrown(() => saturationArray(R32, "enthalpy" as never, some))).toBe(
      'InvalidInputError: curve: the text "enthalpy" is not allowed; allowed: bubblePressure, dewPressure, bubbleTemperature, dewTemperature, saturatedLiquidDensity, saturatedVaporDensity',
    );
    expect(thrown(() => saturationArray(R32, ["dewPressure"] as never, some))).toContain(
      "curve: an array",
    );
    const wrong = (values: unknown, target?: unknown) =>
      thrown(() => saturationArray(R32, "dewPressure", values as never, target as never));
    expect(wrong([300])).toBe(
      "InvalidInputError: values, target: an array, an object is not allowed; allowed: two Float64Array of one length",
    );
    expect(wrong(undefined)).toContain("values, target: undefined, an object");
    expect(wrong(some, [0])).toContain("values, target: an object, an array");
    expect(wrong(some, new Float32Array(1))).toContain("values, target: an object, an object");
    expect(wrong(some, new Float64Array(2))).toContain("values, target: lengths 1, 2");
    expect(thrown(() => saturationArray({} as never, "dewPressure", some))).toContain(
      "refrigerant:",
    );
  });
});

describe("the range of the bulk form", () => {
  test("holds its ends and what rounding makes of them, not more", () => {
    const { min, max } = R32.range;
    const at = (T: number) => saturationArray(R32, "dewPressure", Float64Array.of(T));
    for (const T of [min.si, max.si, min.si * (1 - 5e-9), max.si * (1 + 5e-9)]) {
      expect(at(T)).toHaveLength(1);
    }
    expect(() => at(min.si * (1 - 5e-8))).toThrow(OutOfRangeError);
    expect(() => at(max.si * (1 + 5e-8))).toThrow(OutOfRangeError);
    expect(() => at(Number.POSITIVE_INFINITY)).toThrow(OutOfRangeError);
  });

  test("of a blend is its own for bubble and for dew", () => {
    const { min, max } = R407C.range;
    const lowest = dewPressure(R407C, min).si;
    expect(saturationArray(R407C, "dewTemperature", Float64Array.of(lowest))[0]).toBeCloseTo(
      min.si,
      5,
    );
    const below = Float64Array.of(lowest);
    expect(() => saturationArray(R407C, "bubbleTemperature", below)).toThrow(OutOfRangeError);
    const highest = bubblePressure(R407C, max).si;
    expect(saturationArray(R407C, "bubbleTemperature", Float64Array.of(highest))[0]).toBeCloseTo(
      max.si,
      5,
    );
    const above = Float64Array.of(highest);
    expect(() => saturationArray(R407C, "dewTemperature", above)).toThrow(OutOfRangeError);
  });

  test("is filled up to the first value outside, which may be the array itself", () => {
    const values = Float64Array.of(300, 1000, 310);
    const target = new Float64Array(3);
    expect(() => saturationArray(R32, "dewPressure", values, target)).toThrow("values[1]: 1000 K");
    expect(target[0]).toBeCloseTo(dewPressure(R32, kelvin(300)).si, 4);
    expect([target[1], target[2]]).toEqual([0, 0]);
    expect([...values]).toEqual([300, 1000, 310]);
    const same = Float64Array.of(300);
    expect(saturationArray(R32, "dewPressure", same, same)).toBe(same);
    expect(same[0]).toBeCloseTo(dewPressure(R32, kelvin(300)).si, 4);
  });
});
