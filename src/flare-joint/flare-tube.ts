// Which tube is it? The nominal sizes of flared refrigeration tube, by outside diameter.
// Follows ASTM B280 (inch sizes, named by actual outside diameter) and EN 12735-1 (metric sizes, from memory).
// Does not cover plumbing tube (ASTM B88), whose name is 1/8 in less than its outside diameter.

import { oneOf, refuse, siOf, textOf } from "../quantity/check.ts";
import { OutOfRangeError } from "../quantity/errors.ts";
import { choose } from "../quantity/hints.ts";
import { isAtMost } from "../quantity/limit.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { type FlareJointStatement, say } from "./statements.ts";

/**
 * Outside diameter of the tube as the trade writes it: in inches (6.35, 7.94, 9.52, 12.70, 15.88 and 19.05 mm), or
 * metric with its unit. A metric tube takes a nut bored for it: 10 mm does not enter the nut of 3/8 in.
 *
 * Source: ASTM B280; metric sizes of EN 12735-1 and EN 378-2, from memory.
 */
export type FlareTube =
  | "1/4"
  | "5/16"
  | "3/8"
  | "1/2"
  | "5/8"
  | "3/4"
  | "6 mm"
  | "8 mm"
  | "10 mm"
  | "12 mm"
  | "15 mm"
  | "18 mm";

/**
 * The refrigerants for which flare dimensions are held here. R410A and R32 share the wider flare. R454B takes it too:
 * its pressure is 5 % lower. No manual that says so was read. Any other refrigerant takes the unit's manual.
 *
 * Source: manufacturers' published manuals; R454B is common practice, no source.
 */
export type FlareRefrigerant = "R410A" | "R32" | "R454B" | "R22";

const refrigerants: readonly FlareRefrigerant[] = ["R410A", "R32", "R454B", "R22"];

const outsideDiameters: Record<FlareTube, number> = {
  "1/4": 6.35,
  "5/16": 7.9375,
  "3/8": 9.525,
  "1/2": 12.7,
  "5/8": 15.875,
  "3/4": 19.05,
  "6 mm": 6,
  "8 mm": 8,
  "10 mm": 10,
  "12 mm": 12,
  "15 mm": 15,
  "18 mm": 18,
};

/** The outside diameter of a size, mm. */
export const diameterOf = (tube: FlareTube): number => outsideDiameters[tube];

const flareTubes: readonly FlareTube[] = /* @__PURE__ */ Object.keys(
  outsideDiameters,
) as FlareTube[];

/**
 * The nominal size of a tube from its outside diameter: the nearest one. Inch sizes printed in millimeters (6.35, 9.52,
 * 15.88 mm) and the 0.312 in of ASTM B280 for 5/16 fall in with their inch size. 8 mm and 5/16 in are 0.06 mm apart,
 * and 16 mm counts as 5/8 in: a caliper on the tube hardly tells these, the print on it does.
 *
 * @param outsideDiameter - `length`, within 0.2 mm of a size.
 * @returns The nominal size.
 * @throws {@link OutOfRangeError} when no size is that near.
 * @throws {@link InvalidInputError} when it is not a positive length.
 *
 * Source: ASTM B280, sizes; the 0.2 mm are common practice, no source.
 *
 * @example
 * ```ts
 * import { flareTube } from "hvac-install-math/flare-joint";
 * import { mm } from "hvac-install-math/quantity";
 *
 * flareTube(mm(9.52)); // => 3/8
 * ```
 */
export function flareTube(outsideDiameter: Quantity<"length">): FlareTube {
  const od = siOf("outsideDiameter", outsideDiameter, "length", { above: 0 }) * 1000;
  const away = (tube: FlareTube) => Math.abs(outsideDiameters[tube] - od);
  const found = flareTubes.reduce((best, tube) => (away(tube) < away(best) ? tube : best));
  if (isAtMost(away(found), 0.2, 1)) return found;
  const allowed = "within 0.2 mm of 1/4, 5/16, 3/8, 1/2, 5/8, 3/4 in, 6, 8, 10, 12, 15 or 18 mm";
  return refuse("outsideDiameter", outsideDiameter, allowed, choose(flareTubes), OutOfRangeError);
}

/** Whether a tube is named in millimeters. */
export const isMetric = (tube: FlareTube): boolean => tube.endsWith("mm");

/** A tube with its unit, for a sentence. */
export const named = (tube: FlareTube): { readonly verbatim: string } => ({
  verbatim: isMetric(tube) ? tube : `${tube} in`,
});

export function requireTube(tube: FlareTube): FlareTube {
  return oneOf("tube", tube, flareTubes);
}

/** The figures of one tube in a table; a size that the table leaves out is out of range. */
export function figureOf<T>(table: Partial<Record<FlareTube, T>>, tube: FlareTube): T {
  const found = table[requireTube(tube)];
  if (found !== undefined) return found;
  throw new OutOfRangeError({
    argument: "tube",
    value: tube,
    allowed: Object.keys(table).join(", "),
    hint: say("flare-joint.figure-from-manual"),
  });
}

/** Whether the joint takes the wider flare of the high-pressure refrigerants. */
export function isHighPressure(refrigerant: string): boolean {
  const hint = say("flare-joint.figure-from-manual");
  return oneOf("refrigerant", refrigerant as FlareRefrigerant, refrigerants, hint) !== "R22";
}

/** Whether figures are held for this refrigerant; with the manual's own, any name will do. */
export function isHeld(refrigerant: string): boolean {
  textOf("refrigerant", refrigerant);
  return refrigerants.includes(refrigerant as FlareRefrigerant);
}

/** What to say where the figures of R410A stand for another refrigerant. */
export const borrowed = (refrigerant: string): readonly FlareJointStatement[] =>
  refrigerant === "R454B" ? [say("flare-joint.wider-flare-assumed")] : [];
