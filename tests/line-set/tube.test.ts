import {
  type AstmB280Choice,
  astmB280,
  astmB280Tube,
  boreArea,
  type En12735Size,
  en12735Tube,
  fullLineMass,
  fullLineRate,
  insideDiameter,
  type JisH3300Size,
  jisH3300,
  jisH3300Tube,
  type Tube,
  type TubeSize,
  tubeVolume,
} from "hvac-install-math/line-set";
import { ft, g, gPerM, inch, kgPerM3, m, mL, mm, oz } from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";

describe("the tube tables", () => {
  it("asks which wall where ASTM B280 has two, and takes the one that is named", () => {
    expect(() => astmB280Tube({ size: "3/4", temper: "annealed" })).toThrow(
      "wall: undefined is not allowed; allowed: one of 0.035, 0.042 in",
    );
    const heavy = astmB280Tube({ size: "3/4", temper: "annealed", wall: inch(0.042) });
    expect(insideDiameter(heavy).toString()).toBe("0.666 in");
  });

  it("does not invent a drawn tube that is not made", () => {
    expect(() => astmB280Tube({ size: "1/4", temper: "drawn" })).toThrow(/no drawn 1\/4 in/);
  });

  it("takes a thinner wall than the standard's", () => {
    const thin = astmB280Tube({ size: "1/4", temper: "annealed", wall: mm(0.7) });
    expect(insideDiameter(thin).toString(mm, 2)).toBe("4.95 mm");
  });

  it("knows that 5/16 in tube is 0.312 in", () => {
    expect(astmB280["5/16"].outside).toBe(0.312);
  });

  it("lists the metric and Japanese sizes", () => {
    expect(insideDiameter(en12735Tube(10, mm(1))).toString()).toBe("8 mm");
    for (const size of Object.keys(jisH3300) as JisH3300Size[]) {
      expect(insideDiameter(jisH3300Tube(size)).si).toBeGreaterThan(0);
    }
    expect(jisH3300Tube("15.88", mm(0.8)).wall.toString()).toBe("0.8 mm");
  });

  it("names the standard that a tube follows", () => {
    const sources = (tube: Tube) => tube.sources.map(({ source }) => source);
    expect(sources(astmB280Tube({ size: "3/8", temper: "drawn" }))).toEqual(["astm-b280-2020"]);
    expect(sources(en12735Tube(10, mm(1)))).toEqual(["en-12735-1"]);
    expect(sources(jisH3300Tube("9.52"))).toEqual(["jis-h-3300", "manufacturer-manuals"]);
  });

  it("refuses sizes that the tables do not have", () => {
    expect(() => astmB280Tube({ size: "7/16" as "1/4", temper: "annealed" })).toThrow(/^size:/);
    expect(() => astmB280Tube({ size: "1/4", temper: "soft" as "drawn" })).toThrow(/^temper:/);
    expect(() => astmB280Tube(undefined as unknown as AstmB280Choice)).toThrow(/^size: undefined/);
    expect(() => en12735Tube(6, undefined as never)).toThrow(/^wall: undefined/);
    expect(() => jisH3300Tube("6.35", mm(4))).toThrow(/^wall: 4 mm/);
    expect(() => astmB280Tube({ size: "1/4", temper: "drawn", wall: inch(0) })).toThrow(/^wall: 0/);
    expect(() => en12735Tube(9 as En12735Size, mm(1))).toThrow(/^size: 9/);
    expect(() => jisH3300Tube("9" as JisH3300Size)).toThrow(/^size:/);
    expect(() => jisH3300Tube("toString" as JisH3300Size)).toThrow(/^size:/);
  });
});

describe("tube geometry", () => {
  const tube: TubeSize = { outsideDiameter: mm(9.52), wall: mm(0.8) };

  it("gives area in the tube's system of units and volume in milliliters", () => {
    expect(boreArea(tube).unit.symbol).toBe("mm²");
    expect(boreArea({ outsideDiameter: inch(0.375), wall: inch(0.03) }).unit.symbol).toBe("in²");
    expect(tubeVolume(tube, m(1)).toString(mL, 2)).toBe("49.27 mL");
    expect(tubeVolume(tube, m(0)).si).toBe(0);
  });

  it("fills a length in the unit of mass that goes with it", () => {
    const filled = { tube, density: kgPerM3(1000) };
    expect(fullLineMass({ ...filled, length: m(2) }).toString(g, 1)).toBe("98.5 g");
    expect(fullLineMass({ ...filled, length: ft(2) }).unit).toBe(oz);
    expect(fullLineRate(filled).toString(gPerM, 1)).toBe("49.3 g/m");
  });

  it("names an impossible dimension", () => {
    const volume =
      (size: object, length = m(1)) =>
      () =>
        tubeVolume(size as TubeSize, length);
    expect(volume({ ...tube, wall: mm(4.76) })).toThrow(
      "tube.wall: 4.76 mm is not allowed; allowed: more than 0 mm and less than 4.76 mm",
    );
    expect(volume({ ...tube, wall: mm(0) })).toThrow(/^tube\.wall: 0 mm/);
    expect(volume({ ...tube, outsideDiameter: m(9.52) })).toThrow(/^tube\.outsideDiameter: 9.52 m/);
    expect(volume({ ...tube, outsideDiameter: 9.52 })).toThrow(/^tube\.outsideDiameter: 9.52/);
    expect(volume(undefined as unknown as object)).toThrow(/^tube\.outsideDiameter: undefined/);
    expect(volume(tube, m(-1))).toThrow(/^length: -1 m/);
    expect(() => fullLineRate({ tube, density: kgPerM3(0) })).toThrow(/^density: 0 kg/);
    expect(() => fullLineRate(null as never)).toThrow(/^filled: null/);
  });
});
