// Which tube is it? The nominal sizes of flared refrigeration tube, by outside diameter.
// Follows ASTM B280, which names tube by its actual outside diameter.
// Does not cover plumbing tube (ASTM B88), whose name is 1/8 in less than its outside diameter.

import { oneOf, siOf } from "../quantity/check.ts";
import { OutOfRangeError } from "../quantity/errors.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { say } from "./statements.ts";

/**
 * Outside diameter of the tube in inches, as the trade writes it: 6.35, 7.94, 9.52, 12.70, 15.88 and
 * 19.05 mm.
 *
 * Source: ASTM B280.
 */
export type FlareTube = "1/4" | "5/16" | "3/8" | "1/2" | "5/8" | "3/4";

/**
 * The refrigerants for which flare dimensions are published here. R410A and R32 share the wider flare.
 *
 * Source: manufacturers' published manuals.
 */
export type FlareRefrigerant = "R410A" | "R32" | "R22";

const inches: Record<FlareTube, number> = {
  "1/4": 1 / 4,
  "5/16": 5 / 16,
  "3/8": 3 / 8,
  "1/2": 1 / 2,
  "5/8": 5 / 8,
  "3/4": 3 / 4,
};

export const flareTubes: readonly FlareTube[] = /* @__PURE__ */ Object.keys(inches) as FlareTube[];

/**
 * The nominal size of a tube from its measured outside diameter. Metric names (6.35, 9.52, 15.88 mm)
 * and the 0.312 in of ASTM B280 for 5/16 fall in with their inch size.
 *
 * @param outsideDiameter - `length`, within 0.2 mm of a size from 1/4 to 3/4 in.
 * @returns The nominal size.
 * @throws {@link OutOfRangeError} when no size is that near; metric tube (6, 8, 10, 12 mm) does not fit
 * an inch flare nut.
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
  const od = siOf("outsideDiameter", outsideDiameter, "length", { above: 0 });
  const found = flareTubes.find((tube) => Math.abs(inches[tube] * 0.0254 - od) <= 0.2e-3);
  if (found) return found;
  throw new OutOfRangeError({
    argument: "outsideDiameter",
    value: String(outsideDiameter),
    allowed: "within 0.2 mm of 1/4, 5/16, 3/8, 1/2, 5/8 or 3/4 in",
    hint: say("flare-joint.metric-tube"),
  });
}

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
export function isHighPressure(refrigerant: FlareRefrigerant): boolean {
  const hint = say("flare-joint.figure-from-manual");
  return oneOf("refrigerant", refrigerant, ["R410A", "R32", "R22"], hint) !== "R22";
}
