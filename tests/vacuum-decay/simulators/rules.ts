// What do common rules of the trade say of a simulated log? Both are common practice, no source.
import type { SimulatedLog } from "./log.ts";

/** Whether each rule passes the log. */
export function rulesOf({ rows, policy }: SimulatedLog): { lastReading: boolean; halves: boolean } {
  const at = (part: number) => rows[Math.round(part * (rows.length - 1))]?.micron ?? 0;
  const [start, middle, end] = [at(0), at(0.5), at(1)];
  const ceiling = "limit" in policy ? policy.limit : start + policy.rise;
  // the needle within the limit; and besides, a second half that rises less than half as much as the first
  return {
    lastReading: end <= ceiling,
    halves: end <= ceiling && end - middle <= 0.5 * (middle - start),
  };
}
