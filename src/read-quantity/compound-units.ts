// Which unit may follow which in 12 ft 6 in? The pairs that the trade writes side by side.
// Follows common practice, no source; the ratios are the definitions of the units.
// Does not cover other neighbors: 5 m 3 in is refused.
import type { NamedUnit } from "./find-unit.ts";

/** How many of the small unit make one of the large one, by their symbols. */
const pairs: Readonly<Record<string, number>> = {
  "ft in": 12,
  "lb oz": 16,
  "m cm": 100,
  "m mm": 1000,
  "cm mm": 10,
  "kg g": 1000,
  "d h": 24,
  "h min": 60,
  "h s": 3600,
  "min s": 60,
};

/** The ratio of two units; undefined when they do not go together. */
export function compoundRatio(
  large: readonly NamedUnit[],
  small: readonly NamedUnit[],
): number | undefined {
  const pair = `${large[0]?.symbol} ${small[0]?.symbol}`;
  return Object.hasOwn(pairs, pair) ? pairs[pair] : undefined;
}

/** The symbols of the units that may follow one. */
export function smallerThan(symbol: string): string[] {
  return Object.keys(pairs).flatMap((pair) => {
    const [large, small = ""] = pair.split(" ");
    return large === symbol ? [small] : [];
  });
}
