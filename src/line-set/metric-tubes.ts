// What are the dimensions of metric refrigeration tube? Nominal sizes of the European and Japanese rows.
// Follows EN 12735-1 (sizes from memory) and the JIS H 3300 class of tube as manufacturers' manuals name it.
// Does not cover tolerances and the pressure rating of a wall: the manual states the least wall.

import { oneOf } from "../quantity/check.ts";
import { frozen, frozenInPlace } from "../quantity/frozen.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { mm } from "../quantity/units/geometry.ts";
import { type Tube, tubeOf } from "./tube.ts";

/**
 * Outside diameters in millimeters of EN 12735-1: metric sizes, then inch sizes.
 *
 * Source: EN 12735-1, from memory.
 */
export type En12735Size =
  | 6
  | 8
  | 10
  | 12
  | 15
  | 16
  | 18
  | 22
  | 28
  | 6.35
  | 7.94
  | 9.52
  | 12.7
  | 15.87
  | 19.06
  | 22.2
  | 28.57;

const en12735Sizes: readonly En12735Size[] = [
  6, 8, 10, 12, 15, 16, 18, 22, 28, 6.35, 7.94, 9.52, 12.7, 15.87, 19.06, 22.2, 28.57,
];

/**
 * A tube of EN 12735-1. The usual wall is 1 mm for metric sizes and 0.8 mm to 1.0 mm for inch sizes
 * (from memory), so that the wall has to be named.
 *
 * @param size - Outside diameter in millimeters as the standard lists it.
 * @param wall - Wall thickness as marked or measured.
 * @returns The tube.
 * @throws {@link InvalidInputError} when the size is not in the list or the wall is missing or impossible.
 *
 * Source: EN 12735-1, nominal sizes from memory.
 *
 * @example
 * ```ts
 * import { en12735Tube, insideDiameter } from "hvac-install-math/line-set";
 * import { mm } from "hvac-install-math/quantity";
 *
 * insideDiameter(en12735Tube(9.52, mm(0.8))).toString(); // => 7.92 mm
 * ```
 */
export function en12735Tube(size: En12735Size, wall: Quantity<"length">): Tube {
  oneOf("size", size, en12735Sizes);
  return frozen(tubeOf(`${size} mm`, mm(size), wall, "en-12735-1"));
}

/** Outside diameter in millimeters of JIS H 3300 class tube for small splits. Source: manufacturers' manuals. */
export type JisH3300Size = "6.35" | "9.52" | "12.70" | "15.88" | "19.05";

/**
 * Outside diameter × wall in millimeters of annealed JIS H 3300 class tube as manuals ask for with R410A.
 *
 * Source: manufacturers' published manuals, brands withheld; the standard itself was not read.
 *
 * @example
 * ```ts
 * import { jisH3300 } from "hvac-install-math/line-set";
 *
 * jisH3300["15.88"]; // => 1
 * ```
 */
export const jisH3300: Readonly<Record<JisH3300Size, number>> = /* @__PURE__ */ frozenInPlace({
  "6.35": 0.8,
  "9.52": 0.8,
  "12.70": 0.8,
  "15.88": 1.0,
  "19.05": 1.2,
});

/**
 * A tube of the JIS H 3300 class.
 *
 * @param size - Outside diameter in millimeters as text.
 * @param wall - Wall thickness where it differs from the manuals' row.
 * @returns The tube.
 * @throws {@link InvalidInputError} when the size is not in the table or the wall is impossible.
 *
 * Source: manufacturers' published manuals, brands withheld; the standard itself was not read.
 *
 * @example
 * ```ts
 * import { jisH3300Tube } from "hvac-install-math/line-set";
 *
 * jisH3300Tube("6.35").wall.toString(); // => 0.8 mm
 * ```
 */
export function jisH3300Tube(size: JisH3300Size, wall?: Quantity<"length">): Tube {
  oneOf("size", size, Object.keys(jisH3300) as JisH3300Size[]);
  const thickness = wall === undefined ? mm(jisH3300[size]) : wall;
  return frozen(
    tubeOf(`${size} mm`, mm(Number(size)), thickness, "jis-h-3300", "manufacturer-manuals"),
  );
}
