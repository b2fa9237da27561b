import fc from "fast-check";
import { expect, it } from "vitest";
import { inOrder, thinned } from "../../src/plots/thin.ts";

/** Rising times with gaps, and values with spikes. */
const logs = fc
  .array(
    fc.tuple(
      fc.oneof(fc.constant(0), fc.double({ min: 1e-3, max: 10, noNaN: true }), fc.constant(5000)),
      fc.oneof(fc.double({ min: -1, max: 1, noNaN: true }), fc.constant(1000), fc.constant(-1000)),
    ),
    { minLength: 1, maxLength: 400 },
  )
  .map((rows) => {
    let now = 0;
    return { x: rows.map(([step]) => (now += step)), y: rows.map(([, value]) => value) };
  });

it("keeps a log that is short enough as it is", () => {
  fc.assert(
    fc.property(logs, ({ x, y }) => {
      expect(thinned(x, y, 401)).toEqual(x.map((_, i) => i));
    }),
  );
});

it("keeps first, last, lowest and highest, in order, and no more than asked for", () => {
  fc.assert(
    fc.property(logs, fc.integer({ min: 6, max: 60 }), ({ x, y }, most) => {
      const kept = thinned(x, y, most);
      expect(kept.length).toBeLessThanOrEqual(Math.max(most, 1));
      expect(kept[0]).toBe(0);
      expect(kept.at(-1)).toBe(x.length - 1);
      expect(kept).toEqual([...new Set(kept)].sort((a, b) => a - b));
      const values = kept.map((i) => y[i] as number);
      expect(Math.max(...values)).toBe(Math.max(...y));
      expect(Math.min(...values)).toBe(Math.min(...y));
    }),
  );
});

it("keeps the lowest and the highest of every stretch of time", () => {
  fc.assert(
    fc.property(logs, ({ x, y }) => {
      const [most, span] = [22, (x.at(-1) as number) - (x[0] as number)];
      fc.pre(span > 0);
      const kept = new Set(thinned(x, y, most).map((i) => y[i]));
      for (let k = 0; k < 10; k++) {
        const inside = y.filter((_, i) => {
          const at = Math.floor((((x[i] as number) - (x[0] as number)) / span) * 10);
          return i > 0 && i < x.length - 1 && Math.min(9, at) === k;
        });
        if (inside.length === 0) continue;
        expect(kept).toContain(Math.max(...inside));
        expect(kept).toContain(Math.min(...inside));
      }
    }),
  );
});

it("sorts rows by time and leaves those of one time in their order", () => {
  expect(inOrder(["c", "a", "b"], [3, 1, 1])).toEqual([
    ["a", "b", "c"],
    [1, 1, 3],
  ]);
});
