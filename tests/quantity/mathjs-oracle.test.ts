// mathjs as an independent witness of the conversion factors. It is no standard itself: where its own
// factor is rounded, its error is stated here and is the tolerance. Where it lacks a unit, the unit is
// built from ones that it has, or listed as not covered.

import * as q from "hvac-install-math/quantity";
import { evaluate } from "mathjs";
import { describe, expect, it } from "vitest";

/** What mathjs calls the coherent SI unit of each kind, as q.Kinds states it. */
const coherent: Partial<Record<q.Kind, string>> = {
  temperatureDifference: "K",
  pressureDifference: "Pa",
  length: "m",
  area: "m^2",
  volume: "m^3",
  mass: "kg",
  massPerLength: "kg/m",
  density: "kg/m^3",
  duration: "s",
  speed: "m/s",
  angle: "rad",
  massFlow: "kg/s",
  volumeFlow: "m^3/s",
  throughput: "Pa m^3/s",
  pressureRate: "Pa/s",
  voltage: "V",
  current: "A",
  resistance: "ohm",
  resistancePerLength: "ohm/m",
  power: "W",
  torque: "N m",
  specificEnergy: "J/kg",
  specificHeat: "J/(kg K)",
};

const exact = 4e-16; // two roundings of a double
const psiError = 6e-11; // mathjs has 6894.757 292 764 59 Pa; exact is 6894.757 293 168 36…
const torrError = 3e-6; // mathjs has 133.322 Pa; exact is 133.322 368 42…; its mmHg is the same

/** The unit in mathjs's language, and mathjs's own relative error. */
const rows: [name: string, mathjs: string, error: number][] = [
  ["pascal", "1 Pa", exact],
  ["kPa", "1 kPa", exact],
  ["MPa", "1 MPa", exact],
  ["mbar", "1 mbar", exact],
  ["bar", "1 bar", exact],
  ["psi", "1 psi", psiError],
  ["torrDifference", "1 torr", torrError],
  ["micronDifference", "1 atm / 760000", exact],
  ["inHg", "13.5951 * 25.4 mmH2O", exact],
  ["inchWater", "25.4 mmH2O", exact],
  ["pascalPerSecond", "1 Pa/s", exact],
  ["micronPerMinute", "1 atm/minute / 760000", exact],
  ["psiPerHour", "1 psi/hour", psiError],
  ["kPaPerHour", "1 kPa/hour", exact],
  ["volt", "1 V", exact],
  ["ampere", "1 A", exact],
  ["milliampere", "1 mA", exact],
  ["ohm", "1 ohm", exact],
  ["ohmPerKm", "1 ohm/km", exact],
  ["ohmPerKft", "0.001 ohm/ft", exact],
  ["watt", "1 W", exact],
  ["kW", "1 kW", exact],
  ["btuPerHour", "1 BTU/hour", exact],
  ["tonRefrigeration", "12000 BTU/hour", exact],
  ["kJPerKg", "1 kJ/kg", exact],
  ["btuPerLb", "1 BTU/lbm", exact],
  ["kJPerKgK", "1 kJ/(kg K)", exact],
  ["btuPerLbF", "1 BTU/(lbm degR)", exact],
  ["m3PerSecond", "1 m^3/s", exact],
  ["m3PerHour", "1 m^3/hour", exact],
  ["literPerSecond", "1 L/s", exact],
  ["literPerHour", "1 L/hour", exact],
  ["gallonPerHour", "1 gallon/hour", exact],
  ["cfm", "1 cuft/minute", exact],
  ["paM3PerS", "1 Pa m^3/s", exact],
  ["mbarLiterPerSecond", "1 mbar L/s", exact],
  ["atmCm3PerSecond", "1 atm cm^3/s", exact],
  ["micronLiterPerSecond", "1 atm L/s / 760000", exact],
  ["m", "1 m", exact],
  ["mm", "1 mm", exact],
  ["cm", "1 cm", exact],
  ["inch", "1 inch", exact],
  ["ft", "1 ft", exact],
  ["m2", "1 m^2", exact],
  ["mm2", "1 mm^2", exact],
  ["sqft", "1 sqft", exact],
  ["sqin", "1 sqin", exact],
  ["m3", "1 m^3", exact],
  ["liter", "1 L", exact],
  ["mL", "1 mL", exact],
  ["cuft", "1 cuft", exact],
  ["cuin", "1 cuin", exact],
  ["gallon", "1 gallon", exact],
  ["radian", "1 rad", exact],
  ["degreeAngle", "1 deg", exact],
  ["kg", "1 kg", exact],
  ["g", "1 g", exact],
  ["mg", "1 mg", exact],
  ["lb", "1 lbm", exact],
  ["oz", "1 oz", exact],
  ["kgPerM", "1 kg/m", exact],
  ["gPerM", "1 g/m", exact],
  ["lbPerFt", "1 lbm/ft", exact],
  ["ozPerFt", "1 oz/ft", exact],
  ["kgPerM3", "1 kg/m^3", exact],
  ["gPerM3", "1 g/m^3", exact],
  ["lbPerCuft", "1 lbm/cuft", exact],
  ["lbPer1000Cuft", "0.001 lbm/cuft", exact],
  ["kgPerSecond", "1 kg/s", exact],
  ["kgPerHour", "1 kg/hour", exact],
  ["lbPerHour", "1 lbm/hour", exact],
  ["gPerYear", "1 g/day / 365.25", exact],
  ["ozPerYear", "1 oz/day / 365.25", exact],
  ["newtonMeter", "1 N m", exact],
  ["ftLb", "1 ft lbf", exact],
  ["second", "1 s", exact],
  ["minute", "1 minute", exact],
  ["hour", "1 hour", exact],
  ["day", "1 day", exact],
  ["mPerSecond", "1 m/s", exact],
  ["ftPerMinute", "1 ft/minute", exact],
  ["deltaK", "1 K", exact],
  ["deltaF", "1 degR", exact],
];

/**
 * Not covered: mathjs has no unit for a ratio, and Δ°C is the kelvin. A point has the scale of its
 * difference, which edge-values.test.ts holds; the offsets of °F and °C are below.
 */
const notCovered = ["fraction", "percent", "ppm", "deltaC"];

const catalogue = q as unknown as Record<string, q.Unit<"length">>;
const toSi = (expression: string, si: string): number => evaluate(`number(${expression}, ${si})`);

describe("mathjs agrees with the size of", () => {
  it.each(rows)("%s = %s, within %d", (name, expression, error) => {
    const unit = catalogue[name];
    if (!unit) throw new Error(`no unit ${name}`);
    const theirs = toSi(expression, coherent[unit.kind] ?? "");
    expect(Math.abs(unit.scale / theirs - 1)).toBeLessThanOrEqual(error);
  });

  it("every unit of the catalogue but those that it lacks", () => {
    const points = ["temperature", "gaugePressure", "absolutePressure"];
    const names = Object.entries(catalogue)
      .filter(([, unit]) => typeof unit === "function" && unit.kind && !points.includes(unit.kind))
      .map(([name]) => name);
    expect([...rows.map(([name]) => name), ...notCovered].sort()).toEqual(names.sort());
  });
});

describe("mathjs agrees with the zero of", () => {
  it.each<[string, q.Unit<"temperature">]>([
    ["degC", q.degC],
    ["degF", q.degF],
    ["K", q.kelvin],
  ])("%s", (theirs, ours) => {
    for (const value of [-40, 0, 25, 72.5, 212]) {
      if (theirs === "K" && value < 0) continue;
      expect(ours(value).si).toBeCloseTo(evaluate(`number(${value} ${theirs}, K)`), 10);
    }
  });
});

describe("the error that mathjs has itself", () => {
  it("is as stated, so that the tolerances above are no wider than they must be", () => {
    const off = (unit: q.Unit<"pressureDifference">, expression: string) =>
      Math.abs(unit.scale / toSi(expression, "Pa") - 1);
    expect(off(q.psi, "1 psi")).toBeGreaterThan(5e-11);
    expect(off(q.torrDifference, "1 torr")).toBeGreaterThan(2e-6);
  });
});
