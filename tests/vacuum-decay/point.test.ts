// How much longer is a vacuum to be watched? To the end of the hold, or half as long again, in whole minutes.
// Common practice, no source.
import { minute } from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import { watchOn } from "../../src/vacuum-decay/point.ts";
import type { Settings } from "../../src/vacuum-decay/settings.ts";

/** What is asked after so many seconds and points of a hold of ten minutes. */
const asked = (T: number, points: number, hold = 600) =>
  watchOn({ T, points }, { hold } as Settings).values as { duration: unknown; rows: number };

describe("a vacuum that needs more time is watched", () => {
  it.each([
    ["to the end of the hold", 120, 600, 8],
    ["to the end of the hold, begun minutes counted whole", 150, 600, 8],
    ["half as long again, where that is more", 500, 600, 5],
    ["half as long again after the hold", 900, 600, 8],
    ["a minute, where nothing was watched and nothing is to be held", 0, 0, 1],
  ])("%s", (_, T, hold, minutes) => {
    expect(asked(T, 9, hold).duration).toEqual(minute(minutes));
  });

  it("with the rows that are missing, one at least", () => {
    // Eight points are enough.
    expect(asked(60, 3).rows).toBe(5);
    expect(asked(60, 7).rows).toBe(1);
    expect(asked(60, 100).rows).toBe(1);
  });
});
