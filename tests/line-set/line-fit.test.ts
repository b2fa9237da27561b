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

const rounds = (...diameters: number[]): RoundItem[] =>
  diameters.map((d, i) => ({ label: `item ${i + 1}`, diameter: mm(d) }));
const sleeve = (...diameters: number[]) => smallestSleeve(rounds(...diameters)).in(mm);

describe("smallestSleeve", () => {
  it("is exact for one, two and three", () => {
    expect(sleeve(30)).toBeCloseTo(30, 9);
    expect(sleeve(30, 20)).toBeCloseTo(50, 9);
    // Three equal circles: 1 + 2/√3 diameters.
    expect(sleeve(10, 10, 10)).toBeCloseTo(10 * (1 + 2 / Math.sqrt(3)), 9);
    // The third slips into the gap beside two equal ones up to 2/3 of their radius.
    expect(sleeve(30, 30, 20)).toBeCloseTo(60, 9);
    expect(sleeve(30, 30, 20.1)).toBeGreaterThan(60);
  });

  it.each([
    [4, 1 + Math.SQRT2],
    [5, 1 + Math.sqrt(2 * (1 + 1 / Math.sqrt(5)))],
    [6, 3],
    [7, 3],
  ])("finds the known best packing of %i equal circles", (count, ratio) => {
    expect(sleeve(...Array(count).fill(10))).toBeCloseTo(10 * ratio, 4);
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
    expect(judge(rounds(40, 40), { width: mm(60), height: mm(60) }).outcome).toBe("fail");
    expect(judge(rounds(...Array(8).fill(20)), { width: mm(50), height: mm(50) }).outcome).toBe(
      "fail",
    );
    const { reasons } = judge(rounds(30, 21), { diameter: mm(50) });
    expect(`${reasons[0]?.values.sleeve}`).toBe("51 mm");
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

  it("says that it cannot tell when it found no layout and cannot rule one out", () => {
    const open = judge(rounds(20, 20, 20, 20), { width: mm(39.5), height: mm(40) });
    expect([open.outcome, open.reasons[0]?.code]).toEqual(["inconclusive", "no-layout-found"]);
    expect(open.layout).toEqual([]);
  });

  it("reports the fill and the cautions", () => {
    const result = judge(rounds(30), { diameter: mm(60) });
    expect(result.fill).toBeCloseTo(0.25, 9);
    expect(result.cautions.map(({ code }) => code)).toEqual(["drilling", "drain-falls", "height"]);
    expect(result.assumptions.map(({ code }) => code)).toContain("no-clearance");
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
    expect(bad({ items: [] })).toThrow(/^items: 0 items/);
    expect(bad({ items: undefined })).toThrow(/^items: undefined/);
    expect(bad({ items: rounds(...Array(9).fill(5)) })).toThrow(/^items: 9 items/);
    expect(bad({ items: [{ label: "x", diameter: 20 }] })).toThrow(/^items\[0\]\.diameter: 20/);
    expect(bad({ opening: { diameter: m(50) } })).toThrow(/^opening\.diameter: 50 m/);
    expect(bad({ opening: { width: mm(50) } })).toThrow(/^opening\.height: undefined/);
    for (const opening of [undefined, null, "a hole", 50]) {
      expect(bad({ opening })).toThrow(/^opening: /);
    }
    expect(bad({ clearance: inch(-1) })).toThrow(/^clearance: -1 in/);
  });
});
