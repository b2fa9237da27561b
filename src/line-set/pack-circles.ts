// Can these circles lie side by side in that circle or rectangle? A search for a layout. Internal.
// Follows the corner-placing method: each circle is laid where it touches two of wall and circles already
// laid, all orders and places tried; after Huang et al., J. Oper. Res. Soc. 56, 539 (2005),
// from memory. Does not cover proofs that none exists for four and more circles: see leastRadius.
import { isAtMost } from "../quantity/limit.ts";

/** A circle or a rectangle from (0, 0) to (width, height); the circle's center is (0, 0). */
export type Opening =
  | { readonly radius: number }
  | { readonly width: number; readonly height: number };

/** Center of a circle. */
export type Place = readonly [x: number, y: number];

type Disc = readonly [x: number, y: number, r: number];

/** Points where two circles cross; a hair apart counts as touching. */
function crossings([x1, y1, r1]: Disc, [x2, y2, r2]: Disc): Place[] {
  const dx = x2 - x1;
  const dy = y2 - y1;
  const d = Math.hypot(dx, dy);
  if (d === 0) return [];
  const a = (d * d + r1 * r1 - r2 * r2) / (2 * d);
  const square = r1 * r1 - a * a;
  if (square < -1e-9 * r1 * r1) return [];
  const h = Math.sqrt(Math.max(0, square));
  const px = x1 + (a * dx) / d;
  const py = y1 + (a * dy) / d;
  return [
    [px - (h * dy) / d, py + (h * dx) / d],
    [px + (h * dy) / d, py - (h * dx) / d],
  ];
}

/** Points on a circle with the given coordinate (axis 0: x, 1: y). */
function onLine([x, y, r]: Disc, axis: 0 | 1, at: number): Place[] {
  const offset = at - (axis ? y : x);
  const square = r * r - offset * offset;
  if (square < -1e-9 * r * r) return [];
  const h = Math.sqrt(Math.max(0, square));
  return [h, -h].map((step) => (axis ? [x + step, at] : [at, y + step]));
}

/** Where a circle of radius r touches two of the walls and the circles already laid. */
function corners(r: number, laid: readonly Disc[], opening: Opening): Place[] {
  const around = laid.map(([x, y, other]): Disc => [x, y, other + r]);
  const found: Place[] = [];
  if ("radius" in opening) {
    if (laid.length === 0) return [[0, r - opening.radius]];
    around.push([0, 0, opening.radius - r]);
  } else {
    const xs = [r, opening.width - r];
    const ys = [r, opening.height - r];
    if (laid.length === 0) return [[r, r]];
    for (const x of xs) for (const y of ys) found.push([x, y]);
    for (const disc of around) {
      for (const x of xs) found.push(...onLine(disc, 0, x));
      for (const y of ys) found.push(...onLine(disc, 1, y));
    }
  }
  around.forEach((disc, i) => {
    for (const other of around.slice(i + 1)) found.push(...crossings(disc, other));
  });
  return found;
}

/** Whether the circle lies inside and apart from the others. */
function lies([x, y, r]: Disc, laid: readonly Disc[], opening: Opening): boolean {
  const hair = 1e-9 * r;
  const inside =
    "radius" in opening
      ? Math.hypot(x, y) + r <= opening.radius + hair
      : Math.min(x, y, opening.width - x, opening.height - y) >= r - hair;
  return inside && laid.every(([x2, y2, r2]) => Math.hypot(x - x2, y - y2) >= r + r2 - hair);
}

/**
 * Centers of the circles in the order of `radii`, or undefined when no layout was found within 20 000
 * tries.
 */
export function packCircles(radii: readonly number[], opening: Opening): Place[] | undefined {
  const order = radii.map((_, i) => i).sort((a, b) => (radii[b] ?? 0) - (radii[a] ?? 0));
  const places: Place[] = [];
  let tries = 20_000;
  const lay = (rest: readonly number[], laid: readonly Disc[]): boolean => {
    if (rest.length === 0) return true;
    const seen = new Set<number>();
    for (const i of rest) {
      const r = radii[i] ?? 0;
      if (seen.has(r)) continue;
      seen.add(r);
      const others = rest.filter((one) => one !== i);
      for (const [x, y] of corners(r, laid, opening)) {
        if (tries-- < 0) return false;
        const disc: Disc = [x, y, r];
        if (!lies(disc, laid, opening)) continue;
        places[i] = [x, y];
        if (lay(others, [...laid, disc])) return true;
      }
    }
    return false;
  };
  return lay(order, []) ? places : undefined;
}

/**
 * Radius that a round opening needs at least: exact for up to three circles, a lower bound for more. Two
 * side by side need r1 + r2; a third that does not fit the gap beside them needs the outer circle of
 * Descartes' theorem.
 */
export function leastRadius(radii: readonly number[]): number {
  const [a = 0, b = 0, c = 0] = [...radii].sort((x, y) => y - x);
  const area = Math.sqrt(radii.reduce((sum, r) => sum + r * r, 0));
  const gap = (a * b * (a + b)) / (a * a + a * b + b * b);
  const three =
    c <= gap
      ? a + b
      : (a * b * c) / (2 * Math.sqrt(a * b * c * (a + b + c)) - (a * b + b * c + c * a));
  return Math.max(area, three);
}

/** Whether one, two or all of the circles are too large for the rectangle, whatever the layout. */
export function tooLargeForRectangle(
  radii: readonly number[],
  width: number,
  height: number,
): boolean {
  const [a = 0, b = 0] = [...radii].sort((x, y) => y - x);
  const across = Math.hypot(Math.max(0, width - a - b), Math.max(0, height - a - b));
  const area = radii.reduce((sum, r) => sum + Math.PI * r * r, 0);
  return (
    !isAtMost(2 * a, Math.min(width, height)) ||
    !isAtMost(a + b, across) ||
    !isAtMost(area, width * height)
  );
}
