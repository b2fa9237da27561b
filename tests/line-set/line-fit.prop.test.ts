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
});
