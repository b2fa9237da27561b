// Conductors at the edges of each rule. By hand from NFPA 70 (2023), 110.14(C), 240.4(B) and (D), tables 250.122, 310.16,
// 310.15(B)(1) and 310.15(C)(1), 334.80; IEC 60364-4-43:2008, 433.1; IEC 60364-5-52:2009, annex B.
import {
  type AwgSize,
  type AwgWiring,
  compareSupplies,
  equipmentGrounding,
  iec60364,
  largestDeviceOnConductor,
  minimumConductor,
  nec2023,
  type UsableAmpacity,
  usableAmpacity,
} from "hvac-install-math/circuit-protection";
import {
  ampere,
  degC,
  degF,
  ft,
  inch,
  m,
  mm,
  percent,
  volt,
  watt,
} from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";

const copper: AwgWiring = { material: "copper", insulation: "90 °C", terminations: "75 °C" };
const runs = (wiring: Partial<AwgWiring>, size: AwgSize = "10 AWG", rating?: number) =>
  usableAmpacity({
    rules: nec2023,
    size,
    wiring: { ...copper, ...wiring },
    phases: 1,
    ...(rating && { deviceRating: ampere(rating) }),
  });
const amperes = ({ usable }: UsableAmpacity) => usable.in(ampere);

describe("the ampacity as it runs", () => {
  it("is the table's own column times both factors, capped by the terminations", () => {
    expect(runs({})).toMatchObject({
      size: "10 AWG",
      column: "Cu 90 °C",
      ambientFactor: 1,
      adjustmentFactor: 1,
    });
    expect(String(runs({}).ambient)).toBe("30 °C");
    expect([runs({}).tableAmpacity, runs({}).derated].map(String)).toEqual(["40 A", "40 A"]);
    expect(String(runs({}).terminationLimit)).toBe("35 A");
    const hot = runs({ ambient: degC(45), currentCarryingConductors: 6 });
    expect(String(hot.derated)).toBe("27.84 A"); // 40 × 0.87 × 0.8
    expect(amperes(hot)).toBe(27.84);
  });

  it("of an insulation cooler than the terminations is capped by the insulation", () => {
    const cool = runs({ insulation: "60 °C", ambient: degC(10) });
    expect(String(cool.derated)).toBe("38.7 A"); // 30 × 1.29
    expect(amperes(cool)).toBe(30);
  });

  it("goes by 60 °C terminations up to 100 A where they are not marked, and by 75 °C above", () => {
    const { terminations: _, ...unmarked } = copper;
    const on = (rating?: number) =>
      amperes(
        usableAmpacity({
          rules: nec2023,
          size: "1 AWG",
          wiring: unmarked,
          phases: 1,
          ...(rating && { deviceRating: ampere(rating) }),
        }),
      );
    expect([on(), on(100), on(110)]).toEqual([110, 110, 130]);
    expect(amperes(runs({ terminations: "60 °C" }, "1 AWG", 110))).toBe(110);
  });

  it("of non-metallic cable never exceeds the 60 °C column, 334.80", () => {
    expect(amperes(runs({ cable: "NM" }))).toBe(30);
    expect(amperes(runs({ cable: "other" }))).toBe(35);
    expect(amperes(runs({ cable: "NM", ambient: degC(45) }))).toBe(30); // 34.8 A before the cap
  });

  it("reads the band that ends at the temperature, and the next one above", () => {
    const factor = (celsius: number) => runs({ ambient: degC(celsius) }).ambientFactor;
    expect([30, 30.1, 35, 35.1].map(factor)).toEqual([1, 0.96, 0.96, 0.91]);
    expect(runs({ ambient: degF(95) }).ambientFactor).toBe(0.96); // 35 °C
    expect(factor(-20)).toBe(1.15);
    expect(factor(85)).toBe(0.29);
    expect(() => factor(85.1)).toThrow(
      "wiring.ambient: 85.1 °C is not allowed; allowed: at most 85 °C for 90 °C",
    );
    expect(() => runs({ insulation: "75 °C", ambient: degC(71) })).toThrow(
      "at most 70 °C for 75 °C",
    );
  });

  it("is 33 K hotter closer than 7/8 inch above a roof, and only there", () => {
    const above = (height: Partial<AwgWiring>) => runs({ ambient: degC(25), ...height });
    expect(String(above({ aboveRoof: inch(0) }).ambient)).toBe("58 °C");
    expect(above({ aboveRoof: inch(0.8) }).ambientFactor).toBe(0.71);
    expect(String(above({ aboveRoof: inch(7 / 8) }).ambient)).toBe("25 °C");
    expect(String(above({}).ambient)).toBe("25 °C");
  });

  it("counts the conductors that run together by the table's steps", () => {
    const factor = (n: number) => runs({ currentCarryingConductors: n }).adjustmentFactor;
    expect([1, 3, 4, 6, 7, 9, 10, 20, 21, 30, 31, 40, 41].map(factor)).toEqual([
      1, 1, 0.8, 0.8, 0.7, 0.7, 0.5, 0.5, 0.45, 0.45, 0.4, 0.4, 0.35,
    ]);
  });

  it("of a metric cable goes by method, loaded conductors and circuits together, without a termination", () => {
    const metric = (phases: 1 | 3, groupedCircuits?: number) =>
      usableAmpacity({
        rules: iec60364,
        size: "2.5 mm²",
        wiring: {
          material: "copper",
          insulation: "70 °C",
          method: "B1",
          ...(groupedCircuits && { groupedCircuits }),
        },
        phases,
      });
    expect(metric(1)).toMatchObject({ column: "Cu 70 °C B1 2", adjustmentFactor: 1 });
    expect(metric(1).terminationLimit).toBeUndefined();
    expect(String(metric(1).usable)).toBe("24 A");
    expect(metric(3).column).toBe("Cu 70 °C B1 3");
    expect(String(metric(3, 2).usable)).toBe("16.8 A"); // 21 × 0.8
    expect(String(metric(3, 10).usable)).toBe("9.45 A"); // 21 × 0.45: the printed row of 12
    expect(() => metric(1, 21)).toThrow(
      "wiring.groupedCircuits: 21 is not allowed; allowed: at most 20",
    );
  });

  it("refuses a size that the column does not have, by name", () => {
    expect(() => runs({ material: "aluminum" }, "14 AWG")).toThrow(
      'size: the text "14 AWG" is not allowed; allowed: 12 AWG, 10 AWG, 8 AWG, ',
    );
  });

  it.each<[string, Partial<Record<keyof AwgWiring, unknown>>]>([
    ["wiring.length", { length: ft(0) }],
    ["wiring.stranding", { stranding: "braided" }],
    ["wiring.conduit", { conduit: "brass" }],
    ["wiring.cable", { cable: "UF" }],
    ["wiring.aboveRoof", { aboveRoof: ft(-1) }],
    ["wiring.ambient", { ambient: ft(1) }],
  ])("names %s where it is not what it should be", (argument, wiring) => {
    expect(() => runs(wiring as Partial<AwgWiring>)).toThrow(`${argument}: `);
  });
});

describe("the smallest conductor", () => {
  const smallest = (
    needed: number,
    rating?: number,
    equipment?: "motor-compressor" | "other",
    wiring: AwgWiring = { ...copper, insulation: "75 °C" },
  ) =>
    minimumConductor({
      rules: nec2023,
      wiring,
      phases: 1,
      ampacity: ampere(needed),
      ...(rating && { deviceRating: ampere(rating) }),
      ...(equipment && { equipment }),
    }).size;

  it("carries the ampacity, to the last bit", () => {
    expect([smallest(20), smallest(20.1), smallest(25), smallest(25.1)]).toEqual([
      "14 AWG",
      "12 AWG",
      "12 AWG",
      "10 AWG",
    ]);
    // 40 A × 0.87 × 0.8 = 27.84 A of 10 AWG
    const hot = { ...copper, ambient: degC(45), currentCarryingConductors: 6 };
    expect(smallest(27.84, undefined, undefined, hot)).toBe("10 AWG");
    expect(smallest(27.85, undefined, undefined, hot)).toBe("8 AWG");
  });

  it("is protected by its device where it feeds no compressor", () => {
    expect(smallest(25, 60)).toBe("12 AWG");
    expect(smallest(25, 60, "motor-compressor")).toBe("12 AWG");
    expect(smallest(25, 60, "other")).toBe("6 AWG"); // 65 A; 8 AWG at 50 A ends at 50 A
    expect(smallest(25, undefined, "other")).toBe("12 AWG");
    expect(smallest(18, 20, "other")).toBe("12 AWG"); // 240.4(D): 14 AWG ends at 15 A
    expect(smallest(18, 15, "other")).toBe("14 AWG");
  });

  it("ends with the table, and says behind which device", () => {
    expect(smallest(255, 300)).toBe("250 kcmil");
    expect(() => smallest(256, 300)).toThrow(
      "ampacity: 256 A behind 300 A is not allowed; allowed: what 250 kcmil carries under these conditions",
    );
    expect(() => smallest(256)).toThrow("ampacity: 256 A is not allowed");
  });

  it("names equipment and device where they are not what they should be", () => {
    expect(() => smallest(20, 30, "heater" as never)).toThrow("equipment: ");
    const wrong = { rules: nec2023, wiring: copper, phases: 1, ampacity: ampere(20) } as const;
    expect(() => minimumConductor({ ...wrong, device: "relay" as never })).toThrow("device: ");
    expect(() => minimumConductor({ ...wrong, phases: 2 as never })).toThrow("phases: ");
    expect(() => minimumConductor({ ...wrong, deviceRating: ampere(0) })).toThrow("deviceRating: ");
  });

  it("of the international rules carries its breaker, and its fuse with a margin", () => {
    const metric = (rating: number, device?: "breaker" | "fuse") =>
      minimumConductor({
        rules: iec60364,
        wiring: { material: "copper", insulation: "70 °C", method: "B1" },
        phases: 1,
        ampacity: ampere(10),
        deviceRating: ampere(rating),
        ...(device && { device }),
      }).size;
    expect([metric(16), metric(16, "breaker"), metric(16, "fuse")]).toEqual([
      "1.5 mm²", // 17.5 A
      "1.5 mm²",
      "2.5 mm²", // 1.1 × 16 = 17.6 A
    ]);
    expect(metric(13, "fuse")).toBe("1.5 mm²"); // 1.31 × 13 = 17.03 A
    expect(metric(20)).toBe("2.5 mm²");
    // 433.1 asks In ≤ Iz of whatever rating is fitted, also of one that is no standard size: 17 A on 17.5 A
    expect([metric(17), metric(18)]).toEqual(["1.5 mm²", "2.5 mm²"]);
  });
});

describe("the largest device on a conductor", () => {
  const limit = (size: AwgSize, usable: number, material: "copper" | "aluminum" = "copper") =>
    largestDeviceOnConductor({ rules: nec2023, size, material, usable: ampere(usable) }).in(ampere);

  it("is the next standard size up to 800 A, and the one below from there", () => {
    expect([limit("4 AWG", 90), limit("4 AWG", 90.1), limit("4 AWG", 700.1)]).toEqual([
      90, 100, 800,
    ]);
    expect([limit("4 AWG", 800), limit("4 AWG", 801), limit("4 AWG", 999)]).toEqual([
      800, 800, 800,
    ]);
    expect(limit("4 AWG", 7000)).toBe(6000); // beyond the list
  });

  it("ends at the limits of small conductors, 240.4(D)", () => {
    expect([limit("14 AWG", 25), limit("12 AWG", 30), limit("10 AWG", 40)]).toEqual([15, 20, 30]);
    expect([limit("12 AWG", 25, "aluminum"), limit("10 AWG", 35, "aluminum")]).toEqual([15, 25]);
    expect(limit("8 AWG", 50)).toBe(50);
    expect(limit("12 AWG", 14)).toBe(15);
  });

  it("under the international rules does not exceed the ampacity, with a margin for fuses", () => {
    const metric = (usable: number, device?: "breaker" | "fuse") =>
      largestDeviceOnConductor({
        rules: iec60364,
        size: "2.5 mm²",
        material: "copper",
        usable: ampere(usable),
        ...(device && { device }),
      }).in(ampere);
    expect([metric(16), metric(15.9), metric(24), metric(5)]).toEqual([16, 13, 20, 0]);
    expect([metric(17.7, "fuse"), metric(17.6, "fuse")]).toEqual([16, 10]); // 16 × 1.6/1.45 = 17.66 A
    expect(() => metric(16, "relay" as never)).toThrow("device: ");
  });
});

describe("the grounding conductor", () => {
  const grounding = (rating: number, minimum: AwgSize, conductor?: AwgSize) =>
    equipmentGrounding({
      rules: nec2023,
      material: "copper",
      deviceRating: ampere(rating),
      minimumConductor: minimum,
      ...(conductor && { conductor }),
    });

  it("grows with the circuit conductors in proportion, and never beyond them", () => {
    expect(grounding(40, "10 AWG")).toEqual({ size: "10 AWG", tableSize: "10 AWG", areaFactor: 1 });
    // 10 380 × 26 240/10 380 = 26 240 circular mils
    const larger = grounding(40, "10 AWG", "6 AWG");
    expect(larger).toMatchObject({ size: "6 AWG", tableSize: "10 AWG" });
    expect(larger.areaFactor).toBeCloseTo(26_240 / 10_380, 12);
    // Smaller than needed by the table of conductors does not shrink it: 60 A on 12 AWG is 12 AWG by (A)
    expect(grounding(60, "10 AWG", "12 AWG")).toMatchObject({ size: "12 AWG", areaFactor: 1 });
    // 16 510 × 105 600/83 690 = 20 832 circular mils, the next size is 6 AWG
    expect(grounding(100, "1 AWG", "1/0 AWG").size).toBe("6 AWG");
  });

  it("names what is not of the rules", () => {
    expect(() => grounding(40, "4 mm²" as never)).toThrow("minimumConductor: ");
    expect(() => grounding(40, "10 AWG", "4 mm²" as never)).toThrow("conductor: ");
    expect(() => grounding(801, "10 AWG")).toThrow("deviceRating: 801 is not allowed");
  });
});

describe("supplies side by side", () => {
  const input = {
    rules: nec2023,
    power: watt(1920),
    supplies: [{ voltage: volt(240), phases: 1 }],
    wiring: { ...copper, length: ft(100) },
  } as const;

  it("take 125 % of the current and the next breaker, 15 A at least", () => {
    const [small] = compareSupplies(input);
    expect(String(small?.current)).toBe("8 A");
    expect(String(small?.ampacity)).toBe("10 A");
    expect(small?.conductor?.size).toBe("14 AWG");
    // Without a length there is no drop.
    const [short] = compareSupplies({ ...input, wiring: copper });
    expect(short).not.toHaveProperty("drop");
    expect(short).not.toHaveProperty("dropWithSameConductor");
    expect(small?.supply).toEqual(input.supplies[0]);
    expect(small?.connection).toMatchObject({ poles: 2, voltageRating: "120/240 V" });
    expect(small?.dropWithSameConductor).toBeUndefined();
    // 2 × 8 A × 3.14 Ω/kft × 100 ft = 5.024 V
    expect(small?.drop?.drop.in(volt)).toBeCloseTo(5.024, 9);
    const [solid] = compareSupplies({ ...input, wiring: { ...input.wiring, stranding: "solid" } });
    expect(solid?.drop?.drop.in(volt)).toBeCloseTo(4.912, 9); // 3.07 Ω/kft
    const [same] = compareSupplies({ ...input, conductor: "12 AWG" });
    expect(same?.dropWithSameConductor?.ratio.in(percent)).toBeCloseTo(1.32, 9); // 1.98 Ω/kft
  });

  it("take the termination column of the breaker above 100 A", () => {
    const { terminations: _, ...unmarked } = copper;
    // 90 A × 1.25 = 112.5 A behind 125 A: 2 AWG carries 115 A by the 75 °C column
    const [large] = compareSupplies({ ...input, power: watt(21_600), wiring: unmarked });
    expect(large?.conductor?.size).toBe("2 AWG");
    // 80 A × 1.25 = 100 A behind 100 A: 60 °C column, 1 AWG with 110 A
    const [less] = compareSupplies({ ...input, power: watt(19_200), wiring: unmarked });
    expect(less?.conductor?.size).toBe("1 AWG");
  });

  it("take a cable that the next breaker does not overload under the international rules", () => {
    const [metric] = compareSupplies({
      rules: iec60364,
      power: watt(3910),
      supplies: [{ voltage: volt(230), phases: 1 }],
      wiring: { material: "copper", insulation: "70 °C", method: "B1" },
    });
    expect(String(metric?.current)).toBe("17 A");
    expect(metric?.conductor?.size).toBe("2.5 mm²"); // 20 A breaker; 1.5 mm² carries 17.5 A
  });

  it("name what is not what it should be, with its place in the list", () => {
    const call = (changes: object) => () => compareSupplies({ ...input, ...changes } as never);
    expect(call({ powerFactor: 0 })).toThrow("powerFactor: ");
    expect(call({ powerFactor: 1.1 })).toThrow("powerFactor: ");
    expect(call({ powerFactor: 1 })).not.toThrow();
    expect(call({ power: watt(0) })).toThrow("power: ");
    expect(call({ conductor: "4 mm²" })).toThrow("conductor: ");
    const wrong = { voltage: volt(160), phases: 1 };
    expect(call({ supplies: [input.supplies[0], wrong] })).toThrow("supplies[1].voltage: ");
    expect(call({ supplies: [undefined] })).toThrow("supplies[0].voltage: ");
    expect(call({ supplies: undefined })).toThrow("supplies: undefined");
  });

  it("may be far apart: the length is one way, in any unit", () => {
    const drop = (length: typeof input.wiring.length) =>
      compareSupplies({ ...input, wiring: { ...copper, length } })[0]?.drop?.drop.in(volt);
    expect(drop(m(30.48))).toBeCloseTo(5.024, 9);
    expect(drop(mm(30_480))).toBeCloseTo(5.024, 9);
  });
});
