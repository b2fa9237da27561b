import fc from "fast-check";
import { assessLineFit, smallestSleeve } from "hvac-install-math/line-set";
import { mm } from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";

const bundles = fc.array(fc.double({ min: 5, max: 60, noNaN: true }), {
  minLength: 1,
  maxLength: 4,
});
const items = (diameters: number[]) => diameters.map((d) => ({ label: "", diameter: mm(d) }));

describe("the sleeve that is found", () => {
  it("takes the bundle, and a slightly smaller one does not", () => {
    fc.assert(
      fc.property(bundles, (diameters) => {
        const sleeve = smallestSleeve(items(diameters)).in(mm);
        const fits = (diameter: number) =>
          assessLineFit({ items: items(diameters), opening: { diameter: mm(diameter) } }).outcome;
        expect(fits(sleeve * (1 + 1e-6))).toBe("pass");
        expect(fits(sleeve * 0.999)).not.toBe("pass");
      }),
      { numRuns: 60 },
    );
  });

  it("never shrinks when something is added", () => {
    fc.assert(
      fc.property(bundles, fc.double({ min: 5, max: 60, noNaN: true }), (diameters, more) => {
        const before = smallestSleeve(items(diameters)).in(mm);
        const after = smallestSleeve(items([...diameters, more])).in(mm);
        expect(after).toBeGreaterThanOrEqual(before * (1 - 1e-6));
      }),
      { numRuns: 40 },
    );
  });

  it("is never refused to a bundle that is known to fit, in a duct or in a sleeve", () => {
    const discs = fc.array(
      fc.record({ x: fc.integer(), y: fc.integer(), r: fc.integer({ min: 2, max: 30 }) }),
      { minLength: 1, maxLength: 5 },
    );
    fc.assert(
      fc.property(discs, (thrown) => {
        // Throw discs into a 100 × 60 duct and a sleeve of 80, keep those that lie apart.
        const duct: { x: number; y: number; r: number }[] = [];
        const sleeve: typeof duct = [];
        for (const { x, y, r } of thrown) {
          const apart = (laid: typeof duct, disc: { x: number; y: number }) =>
            laid.every((o) => Math.hypot(disc.x - o.x, disc.y - o.y) >= r + o.r);
          const unit = (n: number) => (Math.abs(n) % 1009) / 1009;
          const inDuct = { x: r + unit(x) * (100 - 2 * r), y: r + unit(y) * (60 - 2 * r), r };
          if (apart(duct, inDuct)) duct.push(inDuct);
          const far = unit(x) * (40 - r);
          const turn = 2 * Math.PI * unit(y);
          const inSleeve = { x: far * Math.cos(turn), y: far * Math.sin(turn), r };
          if (apart(sleeve, inSleeve)) sleeve.push(inSleeve);
        }
        const diameters = (laid: typeof duct) => items(laid.map(({ r }) => 2 * r));
        const opening = { width: mm(100), height: mm(60) };
        expect(assessLineFit({ items: diameters(duct), opening }).outcome).toBe("pass");
        const round = { diameter: mm(80) };
        expect(assessLineFit({ items: diameters(sleeve), opening: round }).outcome).toBe("pass");
      }),
      { numRuns: 400 },
    );
  });
});
