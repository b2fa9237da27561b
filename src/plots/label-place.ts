// Where do a level's words stand without covering a line? Internal.
// Common practice of map lettering, no source: try a few places, take the one that covers least.
// Does not cover the words of axes and legends, which have rows of their own.
import type { Axis } from "./axis.ts";
import type { Level, Panel } from "./shapes.ts";
import { textSize, widthOf } from "./svg-text.ts";

/** A box in the picture. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

const overlaps = (a: Box, b: Box) =>
  a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;

/** The place that covers the fewest points of the lines; none where each would cover a box. */
function leastCovering(
  places: readonly Box[],
  points: readonly (readonly [number, number])[],
  taken: readonly Box[],
): Box | undefined {
  let best: Box | undefined;
  let least = Infinity;
  for (const place of places) {
    if (taken.some((box) => overlaps(place, box))) continue;
    let cost = 0;
    for (const [x, y] of points) {
      if (overlaps(place, { x, y, width: 0, height: 0 })) cost++;
    }
    if (cost < least) [best, least] = [place, cost];
  }
  return best;
}

/** Where the words of each level stand; a level that finds no room is left out, and belongs into the legend. */
export function levelWords(
  { levels, lines, height }: Panel,
  x: Axis,
  axis: Axis,
  { left, right }: { readonly left: number; readonly right: number },
): ReadonlyMap<Level, Box> {
  const points = [
    ...lines.flatMap((one) =>
      along(one.points.map(([at, y]): [number, number] => [x.at(at), axis.at(y)])),
    ),
    ...levels.flatMap(({ from, to, y }) =>
      along([
        [x.at(from), axis.at(y)],
        [x.at(to), axis.at(y)],
      ]),
    ),
  ];
  const found = new Map<Level, Box>();
  for (const level of levels) {
    const size = { width: widthOf(level.label, textSize), height: 15 };
    const last = right - size.width - 4;
    if (last < left + 4) continue;
    const at = axis.at(level.y);
    const [start, end] = [Math.max(left, x.at(level.from)), Math.min(right, x.at(level.to))];
    const places = [end - size.width - 8, start + 6, (start + end - size.width) / 2, last]
      .map((one) => Math.min(last, Math.max(left + 4, one)))
      .flatMap((one) => [
        { x: one, y: at - 18, ...size },
        { x: one, y: at + 3, ...size },
      ])
      .filter((one) => one.y >= -4 && one.y + one.height <= height + 2);
    const spot = leastCovering(places, points, [...found.values()]);
    if (spot) found.set(level, spot);
  }
  return found;
}

/** Points along a line, a few units apart. */
function along(line: readonly (readonly [number, number])[]): [number, number][] {
  return line.flatMap(([x, y], i) => {
    const [fromX, fromY] = line[i - 1] ?? [x, y];
    const steps = Math.max(1, Math.min(400, Math.ceil(Math.hypot(x - fromX, y - fromY) / 4)));
    return Array.from({ length: steps }, (_, k): [number, number] => {
      const part = (k + 1) / steps;
      return [fromX + (x - fromX) * part, fromY + (y - fromY) * part];
    });
  });
}
