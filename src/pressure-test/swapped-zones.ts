// Did two thermometers change places? A row that fits the one before it better crosswise.
// Common practice, no source. Does not cover thermometers that were swapped from the first reading on.
import { Quantity, type Unit } from "../quantity/quantity.ts";
import type { Doubt } from "./evidence.ts";
import { asTime } from "./figures.ts";
import type { State } from "./setup.ts";
import { say } from "./statements.ts";

/** By so much, K, each of the two has to change: houses and days hardly do it, in opposite directions and alike. */
const LEAST = 5;
/** Crosswise the two have to lie this much nearer. */
const NEARER = 4;

/** The doubt about the first row in which two zones' temperatures changed places. */
export function swappedZones(
  rows: readonly State[],
  thermometer: Unit<"temperature">,
): readonly Doubt[] {
  for (const [i, { temperatures: T, elapsed }] of rows.entries()) {
    const before = rows[i - 1]?.temperatures;
    if (before?.length !== T.length) continue;
    const pair = crossed(before, T);
    if (!pair) continue;
    const [from, to] = pair.map((K) => new Quantity(K, thermometer)) as [
      Quantity<"temperature">,
      Quantity<"temperature">,
    ];
    // Of two readings, the second needs no time to be told by, and may have none.
    const seconds = elapsed - (rows[0] as State).elapsed;
    const reason =
      rows.length === 2
        ? say("pressure-test.zones-swapped-at-end", { from, to })
        : say("pressure-test.zones-swapped", { elapsed: asTime(seconds), from, to });
    return [
      {
        reason,
        action: say("pressure-test.check-thermometers"),
      },
    ];
  }
  return [];
}

/** What the first of two crossed thermometers showed before and after, K. */
function crossed(before: readonly number[], after: readonly number[]): number[] | undefined {
  for (const [a, Ta] of after.entries()) {
    for (const [b, Tb] of after.entries()) {
      const [pa, pb] = [before[a] as number, before[b] as number];
      const changes = [Math.abs(Ta - pa), Math.abs(Tb - pb)];
      const crosswise = Math.abs(Ta - pb) + Math.abs(Tb - pa);
      if (a >= b || Math.min(...changes) < LEAST) continue;
      if (NEARER * crosswise <= (changes[0] as number) + (changes[1] as number)) return [pa, Ta];
    }
  }
  return undefined;
}
