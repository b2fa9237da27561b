// Where do a level's words stand without covering a line? Internal.
// Common practice of map lettering, no source: try a few places, take the one that covers least.

/** A box in the picture. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

const overlaps = (a: Box, b: Box) =>
  a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;

/** The place that covers the fewest points of the lines and none of the boxes, if there is one. */
export function leastCovering(
  places: readonly Box[],
  points: readonly (readonly [number, number])[],
  taken: readonly Box[],
): Box {
  let [best, least] = [places[0] as Box, Infinity];
  for (const place of places) {
    let cost = 1000 * taken.filter((box) => overlaps(place, box)).length;
    for (const [x, y] of points) {
      if (overlaps(place, { x, y, width: 0, height: 0 })) cost++;
    }
    if (cost < least) [best, least] = [place, cost];
  }
  return best;
}

/** Points along a line, a few units apart. */
export function along(line: readonly (readonly [number, number])[]): [number, number][] {
  return line.flatMap(([x, y], i) => {
    const [fromX, fromY] = line[i - 1] ?? [x, y];
    const steps = Math.max(1, Math.min(400, Math.ceil(Math.hypot(x - fromX, y - fromY) / 4)));
    return Array.from({ length: steps }, (_, k): [number, number] => {
      const part = (k + 1) / steps;
      return [fromX + (x - fromX) * part, fromY + (y - fromY) * part];
    });
  });
}
