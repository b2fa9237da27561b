// Poles and voltage marking at the edges of each service: NFPA 70 (2023), 240.15(B), 240.85 (from memory); a supply
// counts as a service's within 10 % of its nominal voltage (common practice, no source).
import {
  breakerConnection,
  iec60364,
  nec2023,
  type SupplySystemName,
} from "hvac-install-math/circuit-protection";
import { volt } from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";

const connect = (volts: number, phases: 1 | 3, system?: SupplySystemName) =>
  breakerConnection({
    rules: nec2023,
    supply: { voltage: volt(volts), phases, ...(system && { system }) },
  });

describe("an unnamed service", () => {
  it.each<[number, 1 | 3, SupplySystemName, number]>([
    [108, 1, "120/240 V", 1], // 120 V − 10 %
    [132, 1, "120/240 V", 1],
    [216, 1, "120/240 V", 2], // 240 V − 10 %
    [264, 1, "120/240 V", 2],
    [215.9, 1, "208Y/120 V", 2],
    [187.2, 1, "208Y/120 V", 2],
    [215.9, 3, "208Y/120 V", 3],
    [216, 3, "208Y/120 V", 3], // 208 V + 3.8 %, the first that fits
    [228.9, 3, "240 V delta", 3],
    [264.1, 1, "480Y/277 V", 1], // 277 V − 4.7 %
    [304.7, 1, "480Y/277 V", 1],
    [432, 3, "480 V delta", 3],
    [528, 3, "480 V delta", 3],
    [540, 3, "600 V delta", 3],
    [660, 3, "600 V delta", 3],
    [347, 1, "600Y/347 V", 1],
  ])("of %d V and %d phases is taken as %s", (volts, phases, system, poles) => {
    expect(connect(volts, phases)).toMatchObject({ system, poles });
  });

  it.each<[number, 1 | 3]>([
    [107.9, 1],
    [132.1, 1],
    [187.1, 1],
    [187.1, 3],
    [264.1, 3],
    [120, 3], // line to neutral has one phase
    [531, 3],
    [660.1, 3],
  ])("of %d V and %d phases is none that the rules know", (volts, phases) => {
    expect(() => connect(volts, phases)).toThrow(
      `supply.voltage: ${volts} V, ${phases}-phase is not allowed; allowed: within 10 % of what 120/240 V, 208Y/120 V, 240 V delta, 240/120 V high-leg delta, 480 V delta, 480Y/277 V, 600 V delta, 600Y/347 V, 220Y/127 V, 440Y/254 V gives`,
    );
  });
});

it("of no voltage is none, not a line to a neutral that is not there", () => {
  expect(() => connect(0, 1)).toThrow("supply.voltage: 0 V is not allowed; allowed: more than 0 V");
});

// 240.85: a slash marking only where no line is further from ground than its lower figure, so not 120/240 V on 127 V.
describe("a service of another country that is named", () => {
  it.each<[number, 1 | 3, SupplySystemName, number, number, number, string]>([
    [127, 1, "220Y/127 V", 1, 127, 127, "240 V"],
    [220, 1, "220Y/127 V", 2, 127, 220, "240 V"],
    [220, 3, "220Y/127 V", 3, 127, 220, "240 V"],
    [440, 3, "440Y/254 V", 3, 254, 440, "480Y/277 V"],
    [254, 1, "440Y/254 V", 1, 254, 254, "277 V"],
  ])("%d V, %d phases, %s", (volts, phases, system, poles, ground, between, voltageRating) => {
    expect(connect(volts, phases, system)).toEqual({
      system,
      poles,
      voltsToGround: ground,
      voltsBetween: between,
      voltageRating,
    });
  });

  it("is never assumed: 220 V without a name is of the services of the rules", () => {
    expect(connect(220, 1).system).toBe("120/240 V");
    expect(connect(127, 1).system).toBe("120/240 V");
    expect(connect(440, 3).system).toBe("480 V delta");
  });

  it("by IEC: 220 V between lines has two poles, from line to neutral one", () => {
    const by = (system: SupplySystemName) =>
      breakerConnection({ rules: iec60364, supply: { voltage: volt(220), phases: 1, system } });
    expect(by("127/220 V")).toMatchObject({ poles: 2, voltsToGround: 127 });
    expect(by("220/380 V")).toMatchObject({ poles: 1, voltsToGround: 220 });
  });
});

describe("a named service", () => {
  it("is taken at its word", () => {
    expect(connect(240, 3, "240/120 V high-leg delta")).toEqual({
      system: "240/120 V high-leg delta",
      poles: 3,
      voltsToGround: 208, // 120 V × √3 from the high leg
      voltsBetween: 240,
      voltageRating: "240 V",
    });
    expect(connect(120, 1, "240/120 V high-leg delta")).toEqual({
      system: "240/120 V high-leg delta",
      poles: 1,
      voltsToGround: 120,
      voltsBetween: 120,
      voltageRating: "120 V",
    });
    expect(connect(480, 1, "480Y/277 V")).toEqual({
      system: "480Y/277 V",
      poles: 2,
      voltsToGround: 277,
      voltsBetween: 480,
      voltageRating: "480Y/277 V",
    });
    expect(connect(600, 3, "600Y/347 V").voltageRating).toBe("600Y/347 V");
  });

  it("has no more phases and no other voltage than its own", () => {
    expect(() => connect(240, 3, "120/240 V")).toThrow("within 10 % of what 120/240 V gives");
    expect(() => connect(120, 3, "208Y/120 V")).toThrow("within 10 % of what 208Y/120 V gives");
    expect(() => connect(120, 1, "240 V delta")).toThrow("within 10 % of what 240 V delta gives");
  });
});

it("marks line to neutral, and three phases, by the international markings", () => {
  const metric = (volts: number, phases: 1 | 3) =>
    breakerConnection({ rules: iec60364, supply: { voltage: volt(volts), phases } });
  expect(metric(230, 1)).toEqual({
    system: "230/400 V",
    poles: 1,
    voltsToGround: 230,
    voltsBetween: 230,
    voltageRating: "230 V",
  });
  expect(metric(400, 1)).toMatchObject({ poles: 2, voltsToGround: 230, voltsBetween: 400 });
  expect(metric(400, 3)).toMatchObject({ poles: 3, voltageRating: "230/400 V" });
  expect(() => metric(230, 3)).toThrow("230/400 V, 220/380 V, 127/220 V gives");
});
