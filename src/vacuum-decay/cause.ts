// What is behind the rise? The word for the shares of the evidence beyond the amounts that matter.
// Follows the decay picture of installation manuals: a leak keeps rising, water rises and levels off, a dry
// and tight system stays. Does not cover the outcome: verdict.ts.
import type { Odds } from "./odds.ts";
import { excluded, named, namedBeside, passShare, sureOutgassing } from "./tuning.ts";

/**
 * What is behind the decay, by amounts that matter to a system: a leak above 5 micron/min and what hoses may
 * let in, water above 300 micron and 5 % of the rise. `moisture-leak-not-excluded`: moisture is proven, and a
 * leak could hide behind it; that is not the finding `leak-and-moisture`, where both are proven.
 *
 * Source: manufacturers' manuals for leak, moisture, dry and tight; the amounts are common practice, no
 * source; the other words are the library's own.
 */
export type DecayCause =
  | "dry-and-tight"
  | "leak"
  | "moisture"
  | "leak-and-moisture"
  | "moisture-leak-not-excluded"
  | "outgassing"
  | "not-determined";

/** Names the cause. */
export function causeOf({ provenLeak, hiddenLeak, water, bad, outgassing }: Odds): DecayCause {
  if (bad < passShare) return "dry-and-tight";
  if (water > named) {
    const alone = hiddenLeak < excluded;
    if (outgassing > sureOutgassing * water) return alone ? "outgassing" : "not-determined";
    if (hiddenLeak > namedBeside) return "leak-and-moisture";
    return alone ? "moisture" : "moisture-leak-not-excluded";
  }
  return provenLeak > named && water < excluded ? "leak" : "not-determined";
}
