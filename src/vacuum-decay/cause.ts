// What is behind the rise? Shares of the evidence by what is material, and the word for them.
// Follows the decay picture of installation manuals: a leak keeps rising, water rises and levels off, a dry
// and tight system stays. Does not cover the policy's limits: policy-verdict.ts.
import { type Component, componentAt } from "./component.ts";
import { levelling, slowBend, slowShape } from "./shapes.ts";
import { notExcluded, outgassingNamed, smallestBend, sure } from "./tuning.ts";

/**
 * What is behind the decay. `moisture-leak-not-excluded`: moisture is proven, and a leak could hide
 * behind it; that is not the finding `leak-and-moisture`, where both are proven.
 *
 * Source: manufacturers' manuals for leak, moisture, dry and tight; the other words are the library's own.
 */
export type DecayCause =
  | "dry-and-tight"
  | "leak"
  | "moisture"
  | "leak-and-moisture"
  | "moisture-leak-not-excluded"
  | "outgassing"
  | "undecided";

/**
 * How the evidence is shared between the explanations, together 1: nothing material, a leak alone,
 * water alone (a rise that levels off), outgassing alone (a rise that slows down), a leak with one of these.
 *
 * Source: Akaike weights, Burnham & Anderson (2002), from memory.
 */
export interface EvidenceShares {
  /** Nothing material. */
  steady: number;
  /** A leak alone. */
  leak: number;
  /** A rise that levels off, alone. */
  moisture: number;
  /** A rise that slows down without levelling off, alone. */
  outgassing: number;
  /** A leak together with one of the two. */
  both: number;
}

/** Sorts the models by what they say is material over the hold. */
export function sharesOf(
  components: readonly Component[],
  { material, hold, first, T }: Readonly<Record<"material" | "hold" | "first" | "T", number>>,
): EvidenceShares {
  const shares = { steady: 0, leak: 0, moisture: 0, outgassing: 0, both: 0 };
  for (const one of components) {
    const { shape, tau, amplitude, weight } = one;
    const slow = shape < 0 ? 0 : amplitude * slowShape(shape, hold, tau);
    const bend = shape < 0 ? 0 : amplitude * slowBend(shape, T, tau);
    const rise = componentAt(one, T) - componentAt(one, first);
    if (one.slope * hold > material) {
      shares[bend > Math.max(material, smallestBend * rise) ? "both" : "leak"] += weight;
    } else if (slow < material) shares.steady += weight;
    else shares[shape < levelling ? "moisture" : "outgassing"] += weight;
  }
  return shares;
}

/**
 * Names the cause. Moisture needs a levelling that is seen: laws that never level off have to be excluded;
 * where one of them explains the readings alone, it is outgassing.
 */
export function causeOf(
  { steady, leak, moisture, outgassing, both }: EvidenceShares,
  leakProven: boolean,
  leakExcluded: boolean,
): DecayCause {
  if (steady > sure) return "dry-and-tight";
  if (leak > sure) return "leak";
  if (moisture + outgassing + both < sure) return "undecided";
  if (outgassing > notExcluded) {
    return outgassing > Math.max(outgassingNamed, moisture) ? "outgassing" : "undecided";
  }
  if (leakProven) return "leak-and-moisture";
  return leakExcluded ? "moisture" : "moisture-leak-not-excluded";
}
