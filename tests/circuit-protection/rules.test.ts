// Figures of the rule sets that no circuit shows by itself, against what the standard or the name says.
import {
  breakerConnection,
  type CircuitRules,
  cec2024,
  circuitFromNameplate,
  iec60364,
  largestDeviceOnConductor,
  nec2020,
  nec2023,
  usableAmpacity,
} from "hvac-install-math/circuit-protection";
import { ampere, inch, volt } from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";

describe.each<[string, CircuitRules]>([
  ["NEC", nec2023],
  ["IEC", iec60364],
])("a voltage marking of the %s", (_, { voltageRatings }) => {
  it.each(voltageRatings.rows.map(([name, ...volts]) => [name, volts] as const))(
    "%s says its own limits: to ground before the slash, between conductors after it",
    (name, volts) => {
      const figures = [...name.matchAll(/\d+/g)].map(([figure]) => Number(figure));
      const [first = 0, last = first] = figures;
      expect(volts).toEqual([Math.min(first, last), Math.max(first, last)]);
    },
  );
});

describe("standard ratings", () => {
  it("of American fuses are those of breakers, and 1, 3, 6, 10 and 601 A: NFPA 70, 240.6(A)", () => {
    const { breaker, fuse } = nec2020.ratings;
    expect(fuse.filter((rating) => !breaker.includes(rating))).toEqual([1, 3, 6, 10, 601]);
    expect(fuse).toEqual([...fuse].sort((a, b) => a - b));
  });

  it("of miniature breakers are the preferred values of IEC 60898-1:2015, 5.3.2; of fuses from memory", () => {
    const breakers = [6, 8, 10, 13, 16, 20, 25, 32, 40, 50, 63, 80, 100, 125];
    expect(iec60364.ratings.breaker).toEqual(breakers);
    const fuses = [2, 4, 6, 8, 10, 16, 20, 25, 32, 40, 50, 63, 80, 100, 125, 160];
    expect(iec60364.ratings.fuse).toEqual(fuses);
  });
});

it("the next size up ends at 800 A: NFPA 70, 240.4(B)", () => {
  const usable = { rules: nec2023, size: "4 AWG", material: "copper" } as const;
  expect(nec2023.nextSizeUpTo).toBe(800);
  expect(String(largestDeviceOnConductor({ ...usable, usable: ampere(801) }))).toBe("800 A");
});

it("unmarked terminations go by 60 °C up to 100 A exactly: NFPA 70, 110.14(C)(1)", () => {
  const limit = (rating: number) =>
    usableAmpacity({
      rules: nec2023,
      size: "1 AWG",
      wiring: { material: "copper", insulation: "75 °C" },
      phases: 1,
      deviceRating: ampere(rating),
    }).usable.in(ampere);
  expect([limit(100), limit(100.1)]).toEqual([110, 130]);
});

it("a roof counts below 7/8 inch: NFPA 70 (2023), 310.15(B)(2), from memory", () => {
  expect(nec2023.rooftop).toEqual({ below: inch(0.875).si, adder: 33 });
});

it("the working space's depth is the table's: NFPA 70 (2023), 110.26(A)(1), above 150 V from memory", () => {
  const feet = nec2023.workingSpace?.depth.map(([upTo, depths]) => [
    upTo,
    ...depths.map((depth) => Number((depth / 0.3048).toFixed(9))),
  ]);
  expect(feet).toEqual([
    [150, 3, 3, 3],
    [600, 3, 3.5, 4],
  ]);
});

it("feeder and branch circuit together may lose 5 %: NFPA 70, 215.2, note; CSA C22.1, 8-102; annex G", () => {
  for (const { voltageDrop } of [nec2023, cec2024, iec60364]) expect(voltageDrop.total).toBe(0.05);
});

it("347 V is the line to neutral of 600 V: 600 V/√3", () => {
  const supply = { voltage: volt(600 / Math.sqrt(3)), phases: 1, system: "600Y/347 V" } as const;
  expect(breakerConnection({ rules: nec2023, supply })).toMatchObject({
    poles: 1,
    voltsToGround: 347,
    voltsBetween: 347,
  });
});

it("the smallest miniature breaker is 6 A, also for less: IEC 60898-1:2015, 5.3.2", () => {
  const { device } = circuitFromNameplate({
    rules: iec60364,
    minimumCircuitAmpacity: ampere(3),
    maximumOvercurrentProtection: ampere(10),
    supply: { voltage: volt(230), phases: 1 },
    wiring: { material: "copper", insulation: "70 °C", method: "C" },
  });
  expect(device.ratings.map(String)).toEqual(["6 A", "8 A", "10 A"]);
});
