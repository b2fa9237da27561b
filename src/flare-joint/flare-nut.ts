// Which wrench, which thread? Flare nuts by tube and refrigerant.
// Follows manufacturers' manuals for the nuts, SAE J513 for the threads; nuts of metric tube are from memory.
// Does not cover nuts of another make on a unit's valve: use those that come with the unit.

import { type Citation, cite } from "../assessment/assessment.ts";
import { objectOf, refuse } from "../quantity/check.ts";
import { frozen } from "../quantity/frozen.ts";
import { choose } from "../quantity/hints.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { inch, mm } from "../quantity/units/geometry.ts";
import {
  type FlareRefrigerant,
  type FlareTube,
  figureOf,
  isHighPressure,
  isMetric,
} from "./flare-tube.ts";

// Width across flats in mm.                R410A, R32   R22
const acrossFlats: Partial<Record<FlareTube, readonly [number, number]>> = {
  "1/4": [17, 17],
  "3/8": [22, 22],
  "1/2": [26, 24],
  "5/8": [29, 27],
  "3/4": [36, 36],
};

// SAE J513: major diameter in sixteenths of an inch, threads per inch. From memory: a nut for metric tube is bored for
// it and has the thread of the inch size that lies next to it.
const threads: Record<FlareTube, readonly [name: string, sixteenths: number, perInch: number]> = {
  "1/4": ["7/16-20", 7, 20],
  "5/16": ["1/2-20", 8, 20],
  "3/8": ["5/8-18", 10, 18],
  "1/2": ["3/4-16", 12, 16],
  "5/8": ["7/8-14", 14, 14],
  "3/4": ["1-1/16-14", 17, 14],
  "6 mm": ["7/16-20", 7, 20],
  "8 mm": ["1/2-20", 8, 20],
  "10 mm": ["5/8-18", 10, 18],
  "12 mm": ["3/4-16", 12, 16],
  "15 mm": ["7/8-14", 14, 14],
  "18 mm": ["1-1/16-14", 17, 14],
};

/**
 * Width across flats of a flare nut: the size of the wrench.
 *
 * @param joint - Tube and refrigerant.
 * @returns The width, in mm.
 * @throws {@link OutOfRangeError} for 5/16 and for metric tube, for which nothing is published here.
 * @throws {@link InvalidInputError} when the tube or the refrigerant is not in the table.
 *
 * Source: manufacturers' published manuals.
 *
 * @example
 * ```ts
 * import { flareNutSize } from "hvac-install-math/flare-joint";
 *
 * flareNutSize({ tube: "1/2", refrigerant: "R32" }).toString(); // => 26 mm
 * ```
 */
export function flareNutSize(joint: {
  /** Outside diameter of the tube. */
  readonly tube: FlareTube;
  /** Refrigerant of the unit. */
  readonly refrigerant: FlareRefrigerant;
}): Quantity<"length"> {
  objectOf("joint", joint);
  const row = figureOf(acrossFlats, joint.tube);
  return mm(row[isHighPressure(joint.refrigerant) ? 0 : 1]);
}

/**
 * The thread of a flare fitting.
 *
 * Source: SAE J513.
 */
export interface FlareThread {
  /** As the trade writes it: `7/16-20`. */
  readonly name: string;
  /** Major diameter. */
  readonly majorDiameter: Quantity<"length">;
  /** Threads per inch. */
  readonly threadsPerInch: number;
  /** Where it stands. */
  readonly citation: Citation;
}

/**
 * The thread of an SAE 45° flare fitting for a tube.
 *
 * @param tube - Outside diameter, in inches or metric.
 * @returns The thread.
 * @throws {@link InvalidInputError} when the tube is not a size of the table.
 *
 * Source: SAE J513; the nuts of metric tube from memory.
 *
 * @example
 * ```ts
 * import { flareThread } from "hvac-install-math/flare-joint";
 *
 * flareThread("3/8").name; // => 5/8-18
 * ```
 */
export function flareThread(tube: FlareTube): FlareThread {
  const [name, sixteenths, threadsPerInch] = figureOf(threads, tube);
  const citation = isMetric(tube)
    ? cite("from-memory", "flare nuts of metric tube")
    : cite("sae-j513", "flare threads");
  return frozen({ name, majorDiameter: inch(sixteenths / 16), threadsPerInch, citation });
}

/**
 * The inch tube whose SAE flare nut has a thread.
 *
 * @param name - The thread as the trade writes it, `1/2-20`; ` UNF` may follow.
 * @returns The tube, in inches; the nut of the metric size next to it has the same thread.
 * @throws {@link InvalidInputError} when no flare nut has that thread.
 *
 * Source: SAE J513.
 *
 * @example
 * ```ts
 * import { flareTubeOfThread } from "hvac-install-math/flare-joint";
 *
 * flareTubeOfThread("1/2-20 UNF"); // => 5/16
 * ```
 */
export function flareTubeOfThread(name: string): FlareTube {
  // A thread's name is short; the pattern would look long for its end in a long row of spaces.
  const short = typeof name === "string" && name.length <= 40;
  const wanted = short ? name.replace(/\s*UN[FS]?$/i, "").trim() : "";
  const found = Object.entries(threads).find(([, [thread]]) => thread === wanted);
  if (found) return found[0] as FlareTube;
  const names = [...new Set(Object.values(threads).map(([thread]) => thread))];
  return refuse("name", name, names.join(", "), choose(names));
}
