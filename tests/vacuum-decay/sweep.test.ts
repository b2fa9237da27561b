// Which sums the sweep keeps: none of a shape that the readings can't tell from an equalization.
import { expect, it } from "vitest";
import {
  addPoint,
  createScratch,
  createWorkspace,
  fastTaus,
  hyperbolic,
  slowColumns,
  slowCount,
  slowTau,
} from "../../src/vacuum-decay/curve/index.ts";
import { sweep } from "../../src/vacuum-decay/sweep.ts";

it.each([1, 10, 100, 1e3, 1e4, 1e5, 1e6, 1e7])(
  "keeps no sum of a shape that the equalization already makes, weight %d",
  (w) => {
    // At 0 s, 10 s and from 40 min on everything of a minute is 0, something, 1, 1, 1 (e^(−2400/67) is 3e−16): a
    // constant and two exponentials of 16 and 32 s take any three values, so that one of 67 s adds nothing.
    const work = createWorkspace();
    const scratch = createScratch();
    for (const [t, p] of [
      [0, 0],
      [10, 9],
      [2400, 31],
      [3000, 31.5],
      [3600, 31.9],
      [4200, 32.1],
    ] as const)
      addPoint(work.gram, scratch, t, p, w);
    sweep(work, { water: 300, outgassing: 260, waterTau: 1800, outgassingTau: 600 }, 0);
    const pair = 1 + fastTaus.indexOf(16);
    const sums = (column: number) => {
      const at = 2 * (pair * slowColumns + column);
      return [...work.profiles.subarray(at, at + 2)];
    };
    expect(slowTau(1)).toBeCloseTo(67, 0);
    expect(sums(1)).toEqual([Infinity, Infinity]);
    // the hyperbolic rise of 67 s goes on: 2400/2467 of it is 0.973 at 40 min, 4200/4267 is 0.984 at 70 min
    expect(sums(hyperbolic * slowCount + 1)[0]).toBeGreaterThan(0);
    expect(sums(hyperbolic * slowCount + 1)[0]).toBeLessThan(1000 * w);
  },
);
