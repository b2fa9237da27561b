// Which unit may follow which in 12 ft 6 in? The pairs that the trade writes side by side.
// Follows common practice, no source; the ratios come from the unit catalogue.
// Does not cover other neighbours: 5 m 3 in is refused.
import {
  cm,
  day,
  ft,
  g,
  hour,
  inch,
  kg,
  lb,
  m,
  minute,
  mm,
  oz,
  second,
} from "../quantity/units/index.ts";
import type { AnyUnit } from "./unit-names.ts";

const pairs: readonly (readonly [large: AnyUnit, small: AnyUnit])[] = [
  [ft, inch],
  [lb, oz],
  [m, cm],
  [m, mm],
  [cm, mm],
  [kg, g],
  [day, hour],
  [hour, minute],
  [hour, second],
  [minute, second],
];

/** How many of the small unit make one of the large one; undefined when they do not go together. */
export function compoundRatio(
  large: readonly AnyUnit[],
  small: readonly AnyUnit[],
): number | undefined {
  const [a, b] = pairs.find(([x, y]) => large[0] === x && small[0] === y) ?? [];
  return a && b && Math.round(a.scale / b.scale);
}
