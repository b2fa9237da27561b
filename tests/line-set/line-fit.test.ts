import {
  assessLineFit,
  insulatedDiameter,
  jisH3300Tube,
  type LineFitInput,
  type RoundItem,
  smallestSleeve,
} from "hvac-install-math/line-set";
import { inch, m, mm } from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import { inEnglish, sentences } from "./in-english.ts";

const rounds = (...diameters: number[]): RoundItem[] =>
  diameters.map((d, i) => ({ label: `item ${i + 1}`, diameter: mm(d) }));
const sleeve = (...diameters: number[]) => smallestSleeve(rounds(...diameters)).in(mm);

describe("smallestSleeve", () => {
  it("is exact for one, two and three, and for those beside which the others slip in", () => {
    expect(sleeve(30)).toBeCloseTo(30, 9);
    expect(sleeve(30, 20)).toBeCloseTo(50, 9);
    // Three equal circles: 1 + 2/√3 diameters.
    expect(sleeve(10, 10, 10)).toBeCloseTo(10 * (1 + 2 / Math.sqrt(3)), 9);
    // The third slips into the gap beside two equal ones up to 2/3 of their radius.
    expect(sleeve(30, 30, 20)).toBeCloseTo(60, 9);
    expect(sleeve(30, 30, 20.1)).toBeGreaterThan(60);
    expect(sleeve(20, 30, 30)).toBeCloseTo(60, 9); // in any order
    // So does a fourth, on the other side, and the sleeve is found to be just that one.
    expect(sleeve(30, 30, 20, 20)).toBeCloseTo(60, 9);
  });

  it.each([
    [4, 1 + Math.SQRT2],
    [5, 1 + Math.sqrt(2 * (1 + 1 / Math.sqrt(5)))],
    [6, 3],
    [7, 3],
  ])("finds the known best packing of %i equal circles", (count, ratio) => {
    expect(sleeve(...Array(count).fill(10))).toBeCloseTo(10 * ratio, 4);
  });

  it("answers in the unit of the first item, whatever the order of the sizes", () => {
    const items = [
      { label: "drain", diameter: inch(0.75) },
      { label: "vapor line", diameter: mm(30) },
    ];
    expect(smallestSleeve(items).toString(undefined, 3)).toBe("1.931 in"); // 0.75 + 30/25.4
    expect(sleeve(12, 20, 26, 30)).toBeCloseTo(sleeve(30, 26, 20, 12), 3);
  });

  it("keeps the clearance between items and to the wall", () => {
    expect(smallestSleeve(rounds(30, 20), mm(4)).in(mm)).toBeCloseTo(30 + 20 + 3 * 4, 9);
  });
});

describe("assessLineFit", () => {
  const judge = (items: RoundItem[], opening: LineFitInput["opening"], clearance?: number) =>
    assessLineFit({ items, opening, ...(clearance !== undefined && { clearance: mm(clearance) }) });

  it("passes only with a layout that can be checked", () => {
    const items = rounds(34, 30, 20, 12);
    for (const opening of [{ diameter: mm(69) }, { width: mm(75), height: mm(58) }]) {
      const { outcome, layout } = judge(items, opening, 1);
      expect(outcome).toBe("pass");
      layout.forEach(({ x, y }, i) => {
        const r = (items[i] as RoundItem).diameter.in(mm) / 2;
        if ("diameter" in opening) {
          expect(Math.hypot(x.in(mm), y.in(mm)) + r).toBeLessThanOrEqual(34.5 - 1 + 1e-6);
        } else {
          expect(Math.min(x.in(mm), y.in(mm))).toBeGreaterThanOrEqual(r + 1 - 1e-6);
          expect(75 - x.in(mm)).toBeGreaterThanOrEqual(r + 1 - 1e-6);
          expect(58 - y.in(mm)).toBeGreaterThanOrEqual(r + 1 - 1e-6);
        }
        for (const other of layout.slice(0, i)) {
          const r2 = (items[layout.indexOf(other)] as RoundItem).diameter.in(mm) / 2;
          const d = Math.hypot(x.in(mm) - other.x.in(mm), y.in(mm) - other.y.in(mm));
          expect(d).toBeGreaterThanOrEqual(r + r2 + 1 - 1e-6);
        }
      });
    }
  });

  it("fails where one, two, three or all together are too large, and names a sleeve that would do", () => {
    expect(judge(rounds(51), { diameter: mm(50) }).outcome).toBe("fail");
    expect(judge(rounds(30, 21), { diameter: mm(50) }).outcome).toBe("fail");
    expect(judge(rounds(30, 30, 30), { diameter: mm(64) }).outcome).toBe("fail");
    expect(judge(rounds(30, 30, 30), { diameter: mm(65) }).outcome).toBe("pass");
    expect(judge(rounds(51), { width: mm(50), height: mm(90) }).outcome).toBe("fail");
    expect(judge(rounds(20, 51), { width: mm(50), height: mm(90) }).outcome).toBe("fail");
    expect(judge(rounds(40, 40), { width: mm(60), height: mm(60) }).outcome).toBe("fail");
    expect(judge(rounds(10, 40, 40), { width: mm(60), height: mm(60) }).outcome).toBe("fail");
    expect(judge(rounds(50), { width: mm(50), height: mm(50) }).outcome).toBe("pass");
    expect(judge(rounds(...Array(8).fill(20)), { width: mm(50), height: mm(50) }).outcome).toBe(
      "fail",
    );
    const { reasons } = judge(rounds(30, 21), { diameter: mm(50) });
    expect(inEnglish(reasons[0])).toContain("A sleeve of 51 mm takes the items.");
  });

  it("lays two circles across the diagonal of a rectangle, to the last hair", () => {
    // Two circles of diameter d fit a square of side s when s = d(1 + 1/√2).
    const side = 40 * (1 + Math.SQRT1_2);
    const square = (s: number) => ({ width: mm(s), height: mm(s) });
    expect(judge(rounds(40, 40), square(side)).outcome).toBe("pass");
    expect(judge(rounds(40, 40), square(side * 0.999)).outcome).toBe("fail");
  });

  it("packs four equal circles in a square of two diameters, and five in the known best one", () => {
    const square = (s: number) => ({ width: mm(s), height: mm(s) });
    expect(judge(rounds(20, 20, 20, 20), square(40)).outcome).toBe("pass");
    expect(judge(rounds(20, 20, 20, 20, 20), square(20 * (1 + Math.SQRT2))).outcome).toBe("pass");
  });

  // Side over diameter of the best known packings of equal circles in a square: 1/(2·radius) with the radii of
  // Croft, Falconer & Guy, Unsolved Problems in Geometry (1991), D1, from memory.
  it.each([
    [3, 0.254333],
    [4, 0.25],
    [5, 0.207107],
    [6, 0.187681],
  ])("packs %i equal circles in the smallest known square", (count, radius) => {
    const side = 20 / (2 * radius);
    const square = (s: number) => ({ width: mm(s), height: mm(s) });
    const items = rounds(...Array(count).fill(20));
    expect(judge(items, square(side * 1.001)).outcome).toBe("pass");
    expect(judge(items, square(side * 0.999)).outcome).not.toBe("pass");
  });

  it("lies the first item against the wall, with its clearance, in the unit of the items", () => {
    const [inDuct] = judge(rounds(20), { width: mm(60), height: mm(50) }, 4).layout;
    expect([inDuct?.label, inDuct?.x.in(mm), inDuct?.y.in(mm)]).toEqual([
      "item 1",
      expect.closeTo(14, 9), // radius 10 and 4 to the wall
      expect.closeTo(14, 9),
    ]);
    const [inSleeve] = judge(rounds(20), { diameter: inch(2) }, 4).layout;
    expect(inSleeve?.y.unit).toBe(mm);
    // At the bottom of the sleeve: 25.4 − 4 − 10 below its center.
    expect(inSleeve?.x.in(mm)).toBeCloseTo(0, 9);
    expect(inSleeve?.y.in(mm)).toBeCloseTo(-11.4, 9);
  });

  it("says in words what it found", () => {
    const said = (...a: Parameters<typeof judge>) => sentences(judge(...a).reasons);
    expect(said(rounds(30), { diameter: mm(60) })).toEqual([
      "The items fit and fill 25 % of the opening.",
    ]);
    expect(said(rounds(30, 21), { diameter: mm(50) })).toEqual([
      "The opening is too small. A sleeve of 51 mm takes the items.",
    ]);
    // Four of 20 mm in a sleeve: 20 · (1 + √2).
    expect(said(rounds(20, 20, 20, 20), { width: mm(39.5), height: mm(40) })).toEqual([
      "No layout was found, and none is ruled out. A sleeve of 48.28 mm takes the items.",
    ]);
  });

  it("counts the fill by the items and the opening, not by the clearance", () => {
    const area = (d: number) => (Math.PI / 4) * d ** 2;
    const duct = judge(rounds(20, 10), { width: mm(60), height: mm(50) }, 4);
    expect(duct.fill).toBeCloseTo((area(20) + area(10)) / (60 * 50), 9);
    expect(judge(rounds(30), { diameter: mm(60) }, 4).fill).toBeCloseTo(0.25, 9);
  });

  it("fails where the items, with their clearance, need just more than the opening has", () => {
    // 20 + 20 mm and three clearances of 2 mm.
    expect(judge(rounds(20, 20), { diameter: mm(46) }, 2).outcome).toBe("pass");
    expect(judge(rounds(20, 20), { diameter: mm(45.9) }, 2).outcome).toBe("fail");
    expect(judge(rounds(20, 20), { width: mm(46), height: mm(24) }, 2).outcome).toBe("pass");
    expect(judge(rounds(20, 20), { width: mm(45.9), height: mm(24) }, 2).outcome).toBe("fail");
    expect(judge(rounds(20, 20), { width: mm(46), height: mm(23.9) }, 2).outcome).toBe("fail");
    expect(judge(rounds(20, 20), { width: mm(24), height: mm(46) }, 2).outcome).toBe("pass");
  });

  it("says that it cannot tell when it found no layout and cannot rule one out", () => {
    const open = judge(rounds(20, 20, 20, 20), { width: mm(39.5), height: mm(40) });
    expect([open.outcome, open.reasons[0]?.code]).toEqual([
      "inconclusive",
      "line-set.no-layout-found",
    ]);
    expect(open.layout).toEqual([]);
  });

  it("does not take the end of its search for a layout", () => {
    // Eight circles fill at most 0.733 of a round opening (8/3.3048², from memory); these would fill 0.82 of it.
    const items = rounds(20, 19, 18, 17, 16, 15, 14, 13);
    const { outcome, layout, fill } = judge(items, { diameter: mm(52) });
    expect(fill).toBeGreaterThan(0.8);
    expect([outcome, layout]).toEqual(["inconclusive", []]);
  });

  it("reports the fill and the cautions", () => {
    const result = judge(rounds(30), { diameter: mm(60) });
    expect(result.fill).toBeCloseTo(0.25, 9);
    expect(result.cautions.map(({ code }) => code)).toEqual([
      "line-set.drain-falls-outward",
      "line-set.drilling",
      "safety.work-at-height",
      "safety.others-govern",
    ]);
    expect(result.assumptions.map(({ code }) => code)).toEqual([
      "line-set.round-and-stiff",
      "line-set.no-clearance",
    ]);
    const spaced = judge(rounds(30), { diameter: mm(60) }, 1);
    expect(spaced.assumptions.map(({ code }) => code)).toEqual(["line-set.round-and-stiff"]);
    expect(result.sources.map(({ source }) => source)).toEqual(["common-practice"]);
  });

  it("adds insulation on both sides", () => {
    expect(insulatedDiameter(jisH3300Tube("9.52"), mm(10)).toString()).toBe("29.52 mm");
  });

  it("names what it cannot use", () => {
    const bad = (change: object) => () =>
      assessLineFit({
        items: rounds(20),
        opening: { diameter: mm(50) },
        ...change,
      } as LineFitInput);
    expect(bad({ items: [] })).toThrow(/^items\.length: 0/);
    expect(bad({ items: undefined })).toThrow(/^items: undefined/);
    expect(bad({ items: rounds(...Array(9).fill(5)) })).toThrow(/^items\.length: 9 /);
    expect(bad({ items: [{ label: "x", diameter: 20 }] })).toThrow(/^items\[0\]\.diameter: 20/);
    expect(bad({ opening: { diameter: m(50) } })).toThrow(/^opening\.diameter: 50 m/);
    expect(bad({ opening: { width: mm(50) } })).toThrow(/^opening\.height: undefined/);
    for (const opening of [undefined, null, "a hole", 50]) {
      expect(bad({ opening })).toThrow(/^opening: /);
    }
    expect(bad({ clearance: inch(-1) })).toThrow(/^clearance: -1 in/);
    expect(bad({ clearance: mm(101) })).toThrow(/^clearance: 101 mm/);
    expect(bad({ opening: { diameter: mm(4) }, clearance: mm(4) })).toThrow(
      /^opening\.diameter: 4 mm is not allowed; allowed: more than 4 mm/,
    );
    expect(bad({ opening: { width: m(11), height: m(1) } })).toThrow(/^opening\.width: 11 m/);
    expect(bad({ items: [{ label: 5, diameter: mm(20) }] })).toThrow(/^items\[0\]\.label: 5/);
    expect(bad({ items: [{ label: "x", diameter: mm(0) }] })).toThrow(/^items\[0\]\.diameter: 0/);
    expect(bad({ items: [{ label: "x", diameter: mm(1001) }] })).toThrow(
      /^items\[0\]\.diameter: 1001 mm/,
    );
    expect(() => insulatedDiameter(jisH3300Tube("9.52"), mm(101))).toThrow(/^thickness: 101 mm/);
    expect(() => insulatedDiameter(jisH3300Tube("9.52"), mm(-1))).toThrow(/^thickness: -1 mm/);
  });
});
