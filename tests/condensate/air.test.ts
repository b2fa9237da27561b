import * as condensate from "hvac-install-math/condensate";
import * as q from "hvac-install-math/quantity";
import { describe, expect, test } from "vitest";
import { waterVaporPressure } from "../../src/condensate/moist-air.ts";
import { water } from "../../src/property-model/fluids/water.ts";
import { pureSaturation } from "../../src/property-model/pure-saturation.ts";
import { argumentOf } from "../argument-of.ts";

// biome-ignore lint/suspicious/noExplicitAny: what JavaScript could pass
type Anything = any;
const atmosphere = q.standardAtmosphere;
const room = { dryBulb: q.degF(80), relativeHumidity: q.percent(50) };
const coil = {
  entering: room,
  leaving: { dryBulb: q.degF(55), relativeHumidity: q.percent(95) },
  airFlow: q.cfm(400),
  atmosphere,
};

describe("moist air", () => {
  test("has the saturation pressure of IAPWS-95 within 0.03 % from 0.01 to 60 °C", () => {
    for (let t = 0.01; t <= 60; t += 2.5) {
      const reference = pureSaturation(water, t + 273.15);
      const ratio = waterVaporPressure(t + 273.15) / (reference?.pressure ?? 0);
      expect(Math.abs(ratio - 1)).toBeLessThan(3e-4);
    }
  });

  test("is the same air by relative humidity, dew point or wet bulb", () => {
    const byHumidity = condensate.humidityRatio(room, atmosphere).si;
    // The dew point of 80 °F, 50 % is 59.7 °F and its wet bulb 66.7 °F on a psychrometric chart.
    const dewPoint = { dryBulb: q.degF(80), dewPoint: q.degF(59.7) };
    const wetBulb = { dryBulb: q.degF(80), wetBulb: q.degF(66.7) };
    expect(condensate.humidityRatio(dewPoint, atmosphere).si / byHumidity).toBeCloseTo(1, 2);
    expect(condensate.humidityRatio(wetBulb, atmosphere).si / byHumidity).toBeCloseTo(1, 2);
  });

  test("is saturated where wet bulb, dew point and dry bulb are one", () => {
    const dryBulb = q.degC(15);
    const ratio = (moisture: object) =>
      condensate.humidityRatio({ dryBulb, ...moisture }, atmosphere).si;
    const saturated = ratio({ relativeHumidity: q.percent(100) });
    expect(ratio({ wetBulb: dryBulb })).toBeCloseTo(saturated, 12);
    expect(ratio({ dewPoint: dryBulb })).toBeCloseTo(saturated, 12);
  });

  test("holds more water per kilogram at altitude", () => {
    const denver = q.atmosphereAtAltitude(q.ft(5280));
    const ratio = condensate.humidityRatio(room, denver).si;
    expect(ratio / condensate.humidityRatio(room, atmosphere).si).toBeGreaterThan(1.2);
  });
});

describe("the condensate of a coil", () => {
  test("closes its balance: sensible and latent heat make up the total", () => {
    const rate = condensate.condensateRate(coil);
    const latent = rate.totalCooling.si * (1 - rate.sensibleHeatRatio.si);
    // Water condensed between 26.7 and 12.8 °C gives up about 2500 kJ/kg less the liquid's own heat.
    expect(latent / rate.massFlow.si / 1000).toBeGreaterThan(2430);
    expect(latent / rate.massFlow.si / 1000).toBeLessThan(2510);
  });

  test("agrees with the figure from load and sensible heat ratio within 3 %", () => {
    const rate = condensate.condensateRate(coil);
    const byLoad = condensate.condensateFromLoad(rate);
    expect(byLoad.massFlow.si / rate.massFlow.si).toBeCloseTo(1, 1);
    expect(Math.abs(byLoad.massFlow.si / rate.massFlow.si - 1)).toBeLessThan(0.03);
  });

  test("is nothing for a dry coil", () => {
    const dewPoint = q.degC(8);
    const rate = condensate.condensateRate({
      ...coil,
      entering: { dryBulb: q.degC(25), dewPoint },
      leaving: { dryBulb: q.degC(14), dewPoint },
    });
    expect(rate.massFlow.si).toBe(0);
    expect(rate.sensibleHeatRatio.si).toBeCloseTo(1, 3);
    expect(rate.isDry).toBe(true);
  });

  test("is nothing, and no cooling, where the fan runs alone", () => {
    const rate = condensate.condensateRate({ ...coil, leaving: coil.entering });
    expect([rate.massFlow.si, rate.totalCooling.si]).toEqual([0, 0]);
    expect([rate.sensibleHeatRatio.si, rate.isDry]).toEqual([1, true]);
  });

  test("is all of the cooling where the air leaves as warm as it came", () => {
    const leaving = { ...room, relativeHumidity: q.percent(40) };
    const rate = condensate.condensateRate({ ...coil, leaving });
    expect(rate.sensibleHeatRatio.si).toBe(0);
    expect(rate.massFlow.si).toBeGreaterThan(0);
  });

  test("refuses leaving air that is warmer or wetter, which swapped sensors show", () => {
    const swapped = { ...coil, entering: coil.leaving, leaving: coil.entering };
    expect(argumentOf(() => condensate.condensateRate(swapped))).toBe("leaving");
    const wetter = { ...coil, leaving: { dryBulb: q.degF(75), relativeHumidity: q.percent(90) } };
    expect(argumentOf(() => condensate.condensateRate(wetter))).toBe("leaving");
  });

  // Two hygrometers of ±3 points behind and before a dry coil: 80 °F, 20 % holds 0.004335 kg/kg, and 60 °F, 40 % 0.004386.
  test("takes a dry coil for dry where its hygrometers read a little wetter behind it", () => {
    const dry = {
      ...coil,
      entering: { dryBulb: q.degF(80), relativeHumidity: q.percent(20) },
      leaving: { dryBulb: q.degF(60), relativeHumidity: q.percent(41) },
    };
    const found = condensate.condensateRate(dry);
    expect(found.leavingHumidityRatio.si).toBeGreaterThan(found.enteringHumidityRatio.si);
    expect(found.isDry).toBe(true);
    expect(found.massFlow.si).toBe(0);
    expect(found.sensibleHeatRatio.si).toBe(1);
    // ṁ (1.006 + 1.86 W) Δt, by hand
    const each = (1.006 + 1.86 * found.enteringHumidityRatio.si) * (20 / 1.8);
    expect(found.totalCooling.in(q.kW)).toBeCloseTo(found.dryAirFlow.si * each, 6);
    expect(condensate.condensateRate(coil).isDry).toBe(false);

    // Saturated air holds 0.0223 kg/kg at 80 °F and 0.0111 at 60 °F (psychrometric tables, from memory): 3 points of both
    // are 0.0010, so that 0.0053 is just as wet, which is 48 % at 60 °F.
    const behind = (humidity: number) => () =>
      condensate.condensateRate({
        ...dry,
        leaving: { dryBulb: q.degF(60), relativeHumidity: q.percent(humidity) },
      });
    expect(behind(47)().isDry).toBe(true);
    expect(argumentOf(behind(49.5))).toBe("leaving");
  });

  test("names the bad argument", () => {
    const rate = (more: Anything) => () => condensate.condensateRate({ ...coil, ...more });
    expect(argumentOf(rate({ entering: { dryBulb: q.degC(25) } }))).toBe("entering");
    expect(argumentOf(rate({ entering: undefined }))).toBe("entering.dryBulb");
    expect(argumentOf(rate({ entering: { ...room, dewPoint: q.degC(10) } }))).toBe("entering");
    expect(argumentOf(rate({ entering: { ...room, relativeHumidity: q.percent(101) } }))).toBe(
      "entering.relativeHumidity",
    );
    expect(argumentOf(rate({ entering: { ...room, relativeHumidity: 50 } }))).toBe(
      "entering.relativeHumidity",
    );
    const tooDry = { dryBulb: q.degC(50), wetBulb: q.degC(5) };
    expect(argumentOf(rate({ entering: tooDry }))).toBe("entering.wetBulb");
    const wetAbove = { dryBulb: q.degC(20), wetBulb: q.degC(21) };
    expect(argumentOf(rate({ entering: wetAbove }))).toBe("entering.wetBulb");
    expect(argumentOf(rate({ airFlow: q.cfm(0) }))).toBe("airFlow");
    expect(argumentOf(rate({ atmosphere: q.psia(1.47) }))).toBe("atmosphere");
    expect(argumentOf(rate({ atmosphere: undefined }))).toBe("atmosphere");
    const frost = { ...coil, leaving: { dryBulb: q.degC(-2), relativeHumidity: q.percent(95) } };
    expect(() => condensate.condensateRate(frost)).toThrow(q.OutOfRangeError);
    const load = { totalCooling: q.kW(3), sensibleHeatRatio: q.percent(120) };
    expect(argumentOf(() => condensate.condensateFromLoad(load))).toBe("sensibleHeatRatio");
    expect(argumentOf(() => condensate.condensateRuleOfThumb(q.kW(-1)))).toBe("totalCooling");
  });
});
