// How many oil traps and how much extra oil does the manual ask for? Internal.
// Follows manufacturers' published manuals, brands withheld.
// Does not cover whether the oil comes back: vapor-line.ts.

import { objectOf, siOf } from "../quantity/check.ts";
import { isAtMost, stepsUpTo } from "../quantity/limit.ts";
import { Quantity } from "../quantity/quantity.ts";
import { mL } from "../quantity/units/geometry.ts";
import type { RunLimits } from "./run-limits.ts";
import { lengthOf } from "./tube.ts";

/** Oil traps in a riser of so many meters, by the manual's rule. */
export function trapsOf(limits: RunLimits, height: number): number {
  if (limits.oilTraps === undefined) return 0;
  const { above, spacing } = objectOf("limits.oilTraps", limits.oilTraps);
  const from = lengthOf("limits.oilTraps.above", above);
  const every = siOf("limits.oilTraps.spacing", spacing, "length", { above: 0 });
  return !isAtMost(height, from) ? stepsUpTo(height, every) - 1 : 0;
}

/** Oil to add for so many meters of run, by the manual's rule. */
export function oilOf(limits: RunLimits, run: number): Quantity<"volume"> {
  if (limits.extraOil === undefined) return mL(0);
  const { beyond, per, volume } = objectOf("limits.extraOil", limits.extraOil);
  const step = siOf("limits.extraOil.per", per, "length", { above: 0 });
  const excess = run - lengthOf("limits.extraOil.beyond", beyond);
  const oil = siOf("limits.extraOil.volume", volume, "volume", { min: 0 });
  return new Quantity(oil * Math.max(0, stepsUpTo(excess, step)), volume.unit);
}
