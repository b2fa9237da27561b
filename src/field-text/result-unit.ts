// In which unit does a product come? One of the factor's system: inch-pound factors give inch-pound.
// Follows no standard; the units are the usual ones of display.
// Does not cover sums: they keep the unit of their first term.
import { usualUnit } from "../display/index.ts";
import type { Kind } from "../quantity/kinds.ts";
import { type AnyUnit, inchPoundNames } from "./unit-names.ts";

/** The unit for a result of the kind that was worked out from a value in `unit`. */
export function resultUnit(kind: Kind, unit: AnyUnit): AnyUnit {
  const isInchPound = inchPoundNames.some(([units]) => units.includes(unit));
  return usualUnit(kind, isInchPound ? "inch-pound" : "SI") as AnyUnit;
}
