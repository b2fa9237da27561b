// Where the words of a level stand: beside their level, inside the picture, on no other words, and on as few lines as can
// be. Common practice of map lettering, no source; the places follow from the figures by addition.
import { describe, expect, it } from "vitest";
import { levelWords } from "../../src/plots/label-place.ts";
import type { Level, Line, Panel } from "../../src/plots/shapes.ts";
import { widthOf } from "../../src/plots/svg-text.ts";

const height = 200;
/** One unit of the picture to one of the figures, heights counted from below. */
const x = { at: (value: number) => value, ends: [0, 400], ticks: [] } as const;
const y = { at: (value: number) => height - value, ends: [0, height], ticks: [] } as const;
const edges = { left: 40, right: 400 };
const wide = widthOf("limit", 13); // 5 characters

const level = (from: number, to: number, at: number, label = "limit"): Level => ({
  role: "limit",
  label,
  from,
  to,
  y: at,
});
const line = (...points: [number, number][]): Line => ({ role: "model", points });
const placed = (levels: readonly Level[], lines: readonly Line[] = [], within = edges) => {
  const panel: Panel = { name: "", height, bands: [], levels, lines, reach: [] };
  const found = levelWords(panel, x, y, within);
  return levels.map((one) => {
    const box = found.get(one);
    return box && [box.x, box.y];
  });
};

/** Places at the end, at the start and in the middle of a level from 40 to 400. */
const end = 400 - wide - 8;
const start = 40 + 6;
const middle = (40 + 400 - wide) / 2;
const last = 400 - wide - 4;
/** 18 above the level, which leaves 3 to words of 15; or 3 below it. */
const above = (at: number) => height - at - 18;
const below = (at: number) => height - at + 3;

describe("the words of a level", () => {
  it.each<[string, Level[], Line[], [number, number][]]>([
    [
      "stand above its end where nothing is in the way",
      [level(40, 400, 100)],
      [],
      [[end, above(100)]],
    ],
    [
      "stand below where a line runs above it",
      [level(40, 400, 100)],
      [line([40, 110], [400, 110])],
      [[end, below(100)]],
    ],
    [
      "stand above where a line runs below it",
      [level(40, 400, 100)],
      [line([40, 92], [400, 92])],
      [[end, above(100)]],
    ],
    [
      "stand at the start where lines fill its end",
      [level(40, 400, 100)],
      [line([300, 110], [400, 110]), line([300, 92], [400, 92])],
      [[start, above(100)]],
    ],
    [
      "stand in the middle where lines fill both ends",
      [level(40, 400, 100)],
      [
        line([300, 110], [400, 110]),
        line([300, 92], [400, 92]),
        line([40, 110], [140, 110]),
        line([40, 92], [140, 92]),
      ],
      [[middle, above(100)]],
    ],
    [
      "stand where a steep line is crossed least",
      [level(40, 400, 100)],
      // Through the words at the end, above and below; the start is free.
      [line([end + wide / 2, 0], [end + wide / 2, 200])],
      [[start, above(100)]],
    ],
    ["stand below a level at the top", [level(40, 400, 200)], [], [[end, below(200)]]],
    ["stand above one 14 units below the top", [level(40, 400, 186)], [], [[end, above(186)]]],
    ["stand below one 13 units below the top", [level(40, 400, 187)], [], [[end, below(187)]]],
    [
      "stand above one at the bottom, whatever is there",
      [level(40, 400, 0)],
      [line([40, 8], [400, 8])],
      [[end, above(0)]],
    ],
    [
      // 16 from the bottom: 3 below and 15 of words end 2 units lower than the panel.
      "stand below one 16 units above the bottom",
      [level(40, 400, 16)],
      [line([40, 26], [400, 26])],
      [[end, below(16)]],
    ],
    [
      "do not stand below one 15 units above the bottom",
      [level(40, 400, 15)],
      [line([40, 25], [400, 25])],
      [[end, above(15)]],
    ],
    ["stand by a short level", [level(100, 200, 100)], [], [[200 - wide - 8, above(100)]]],
    // Its end lies left of the panel's edge by more than the words are wide.
    ["stay inside on the left", [level(0, 50, 100)], [], [[44, above(100)]]],
    ["stay inside on the right", [level(390, 500, 100)], [], [[end, above(100)]]],
    [
      "stand apart from those of a level at the same height",
      [level(40, 400, 100), level(40, 400, 100)],
      [],
      [
        [end, above(100)],
        [end, below(100)],
      ],
    ],
    [
      // 20 higher: below its end, from 83 to 98, stand the words of the first, from 82 to 97; above it runs a line.
      "stand apart from those of a level just below",
      [level(40, 400, 100), level(40, 400, 120)],
      [line([40, 130], [400, 130])],
      [
        [end, above(100)],
        [start, below(120)],
      ],
    ],
  ])("%s", (_, levels, lines, expected) => {
    const found = placed(levels, lines);
    expect(found.length).toBe(expected.length);
    for (const [i, box] of found.entries()) {
      expect(box?.[0]).toBeCloseTo(expected[i]?.[0] as number, 6);
      expect(box?.[1]).toBeCloseTo(expected[i]?.[1] as number, 6);
    }
  });

  it("are left out where they find no room", () => {
    const narrow = (width: number) => ({ left: 40, right: 40 + width });
    // Four units on each side of them.
    expect(placed([level(40, 400, 100)], [], narrow(wide + 8))).toEqual([[44, above(100)]]);
    expect(placed([level(40, 400, 100)], [], narrow(wide + 7.9))).toEqual([undefined]);
    // Each place is taken by words that came first: two rows of four places.
    const many = Array.from({ length: 9 }, () => level(40, 400, 100));
    const found = placed(many);
    expect(found.filter(Boolean).length).toBeGreaterThanOrEqual(6);
    expect(found.at(-1)).toBeUndefined();
    const boxes = found.filter((one) => one !== undefined);
    for (const [i, [ax = 0, ay = 0] = []] of boxes.entries()) {
      for (const [bx = 0, by = 0] of boxes.slice(i + 1))
        expect(Math.abs(ax - bx) >= wide || Math.abs(ay - by) >= 15).toBe(true);
    }
    expect(last).toBeGreaterThan(end);
  });
});
