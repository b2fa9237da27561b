// Which rate of the nameplate's table belongs to this liquid line? The row of its outside diameter.
// Follows manufacturers' published manuals, brands withheld, which print one rate per liquid size.
// Does not cover sizes between rows: no rate is interpolated.

import { listOf, refuse } from "../quantity/check.ts";
import { choose } from "../quantity/hints.ts";
import { isAtMost } from "../quantity/limit.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { type ChargeRate, rateOf } from "./charge-rate.ts";
import { diametersOf, lengthOf, type TubeSize } from "./tube.ts";

/**
 * A row of the nameplate's table of rates.
 *
 * Source: manufacturers' published manuals, brands withheld.
 */
export interface RateRow {
  /** Outside diameter of the liquid line, metric or in inches. */
  readonly outsideDiameter: Quantity<"length">;
  /** Rate for this size. */
  readonly rate: ChargeRate;
}

/**
 * The rate for a liquid line, from the nameplate's table with one rate per size.
 *
 * Sizes match within 0.1 mm, so that 9.52 mm is 3/8 in and 15.88 mm is 5/8 in.
 *
 * @param rows - The nameplate's table, one or more rows.
 * @param tube - The liquid line, which is the smaller tube of the set.
 * @returns The rate of the row, per length.
 * @throws {@link InvalidInputError} when no row has this size, two rows have it, or an argument is
 * missing, of another kind or impossible.
 * Caution: a size that the nameplate does not list is not allowed for the unit; ask the manual.
 *
 * Source: manufacturers' published manuals, brands withheld; 0.1 mm is common practice, no source.
 *
 * @example
 * ```ts
 * import { astmB280Tube, rateForLiquidLine } from "hvac-install-math/line-set";
 * import { gPerM, mm } from "hvac-install-math/quantity";
 *
 * const nameplate = [
 *   { outsideDiameter: mm(6.35), rate: gPerM(12) },
 *   { outsideDiameter: mm(9.52), rate: gPerM(24) },
 * ];
 * const liquid = astmB280Tube({ size: "3/8", temper: "annealed" });
 * rateForLiquidLine(nameplate, liquid).toString(); // => 24 g/m
 * ```
 */
export function rateForLiquidLine(
  rows: readonly RateRow[],
  tube: TubeSize,
): Quantity<"massPerLength"> {
  const { outside } = diametersOf("tube", tube);
  const table = listOf("rows", rows, 1000, 1).map((row, i) => ({
    rate: rateOf(`rows[${i}].rate`, row?.rate),
    diameter: row.outsideDiameter,
    away: Math.abs(lengthOf(`rows[${i}].outsideDiameter`, row.outsideDiameter) - outside),
  }));
  const [match, second] = table.filter(({ away }) => isAtMost(away, 1e-4, 1e-3));
  if (match && !second) return match.rate;
  const sizes = table.map(({ diameter }) => String(diameter));
  const allowed = `one of these, listed once: ${sizes.join(", ")}`;
  return refuse("tube.outsideDiameter", tube.outsideDiameter, allowed, choose(sizes));
}
