import { astmB280Tube, jisH3300Tube, rateForLiquidLine } from "hvac-install-math/line-set";
import { ft, gPerM, inch, mm, oz, ozPerFt } from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";

const metric = [
  { outsideDiameter: mm(6.35), rate: gPerM(12) },
  { outsideDiameter: mm(9.52), rate: gPerM(24) },
  { outsideDiameter: mm(12.7), rate: gPerM(40) },
];
const annealed = (size: "1/4" | "5/16" | "3/8" | "1/2") =>
  astmB280Tube({ size, temper: "annealed" });

describe("rateForLiquidLine", () => {
  it("finds the row of an inch tube in a metric table and the reverse", () => {
    expect(rateForLiquidLine(metric, annealed("3/8")).toString()).toBe("24 g/m");
    const inches = [
      { outsideDiameter: inch(0.25), rate: { mass: oz(3), per: ft(5) } },
      { outsideDiameter: inch(0.375), rate: ozPerFt(0.32) },
    ];
    expect(rateForLiquidLine(inches, jisH3300Tube("9.52")).toString()).toBe("0.32 oz/ft");
    expect(rateForLiquidLine(inches, jisH3300Tube("6.35")).toString()).toBe("0.6 oz/ft");
  });

  it("invents no rate for a size that is not listed, and does not choose between two", () => {
    expect(() => rateForLiquidLine(metric, annealed("5/16"))).toThrow(
      "tube.outsideDiameter: length 0.312 in is not allowed; allowed: one of these, listed once: 6.35 mm, 9.52 mm, 12.7 mm",
    );
    expect(() => rateForLiquidLine([...metric, ...metric], annealed("1/4"))).toThrow(/listed once/);
    expect(() => rateForLiquidLine([], annealed("1/4"))).toThrow(/^rows\.length: 0 /);
  });

  it("names the row that it cannot use", () => {
    const rows = [...metric, { outsideDiameter: mm(15.88), rate: 60 as never }];
    expect(() => rateForLiquidLine(rows, annealed("1/4"))).toThrow(/^rows\[3\]\.rate: 60/);
    expect(() => rateForLiquidLine([null as never], annealed("1/4"))).toThrow(/^rows\[0\]\.rate/);
  });

  it("takes a size 0.1 mm away as the same, and no other", () => {
    const tube = (od: number) => ({ outsideDiameter: mm(od), wall: mm(0.8) });
    expect(rateForLiquidLine(metric, tube(9.62)).toString()).toBe("24 g/m");
    expect(rateForLiquidLine(metric, tube(9.42)).toString()).toBe("24 g/m");
    expect(() => rateForLiquidLine(metric, tube(9.63))).toThrow(/9.63 mm is not allowed/);
  });
});
