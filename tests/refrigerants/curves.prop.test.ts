import fc from "fast-check";
import { kelvin, pascalAbsolute } from "hvac-install-math/quantity";
import {
  bubblePressure,
  bubbleTemperature,
  dewPressure,
  dewTemperature,
  type Refrigerant,
  refrigerants,
  saturatedLiquidDensity,
  saturatedVaporDensity,
} from "hvac-install-math/refrigerants";
import { describe, expect, test } from "vitest";

describe.each(refrigerants.map((one): [string, Refrigerant] => [one.designation, one]))(
  "%s at every temperature of its range",
  (_, refrigerant) => {
    const { min, max } = refrigerant.range;
    const anywhere = fc.double({ min: min.si, max: max.si, noNaN: true });
    const at = (T: number) => ({
      bubble: bubblePressure(refrigerant, kelvin(T)).si,
      dew: dewPressure(refrigerant, kelvin(T)).si,
      liquid: saturatedLiquidDensity(refrigerant, kelvin(T)).si,
      vapor: saturatedVaporDensity(refrigerant, kelvin(T)).si,
    });

    test("bubble is not below dew, and liquid is denser than vapor", () => {
      fc.assert(
        fc.property(anywhere, (T) => {
          const { bubble, dew, liquid, vapor } = at(T);
          expect(bubble).toBeGreaterThanOrEqual(dew);
          expect(liquid).toBeGreaterThan(vapor);
        }),
      );
    });

    test("pressures and vapor density rise, liquid density falls, with temperature", () => {
      fc.assert(
        fc.property(anywhere, (T) => {
          fc.pre(T + 0.001 <= max.si);
          const [cold, warm] = [at(T), at(T + 0.001)];
          expect(warm.bubble).toBeGreaterThan(cold.bubble);
          expect(warm.dew).toBeGreaterThan(cold.dew);
          expect(warm.liquid).toBeLessThan(cold.liquid);
          expect(warm.vapor).toBeGreaterThan(cold.vapor);
        }),
      );
    });

    test("the temperature of its own pressure is itself within 1e-6 K", () => {
      fc.assert(
        fc.property(anywhere, (T) => {
          const { bubble, dew } = at(T);
          const [b, d] = [
            bubbleTemperature(refrigerant, pascalAbsolute(bubble)).si,
            dewTemperature(refrigerant, pascalAbsolute(dew)).si,
          ];
          expect(Math.abs(b - T)).toBeLessThan(1e-6);
          expect(Math.abs(d - T)).toBeLessThan(1e-6);
        }),
      );
    });
  },
);
