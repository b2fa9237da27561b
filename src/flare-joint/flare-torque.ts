// How tight does a flare nut go? The published torque windows, where they conflict, what they share.
// Follows manufacturers' manuals (JIS-type flare nuts) and EN 378-2:2016 (from memory).
// Does not cover general 45° flare fittings of oiled brass or steel, whose tables are lower: do not mix.

import { type Citation, cite } from "../assessment/assessment.ts";
import type { Caution } from "../assessment/caution.ts";
import { heed, type SafetyStatement } from "../assessment/safety.ts";
import { frozen } from "../quantity/frozen.ts";
import { degreeAngle } from "../quantity/units/geometry.ts";
import { newtonMeter } from "../quantity/units/mechanics.ts";
import type { FlareLimits } from "./flare-limits.ts";
import type { FlareTorqueSource } from "./flare-torque-source.ts";
import { type FlareTube, figureOf } from "./flare-tube.ts";
import { flareCautions } from "./judge.ts";
import type { FlareJointStatement } from "./statements.ts";

type Range = readonly [low: number, high: number];

// Torque in N·m, by outside diameter of the tube.
const torqueTable: Record<FlareTube, Partial<Record<FlareTorqueSource, Range>>> = {
  //        JIS-type, two manuals             EN 378-2 (from memory)  range in a manual
  "1/4": { "jis-type-manuals": [14, 18], "en-378-2": [14, 18], "manual-range": [14.2, 17.2] },
  "5/16": { "en-378-2": [33, 42] },
  "3/8": { "jis-type-manuals": [34, 42], "en-378-2": [33, 42], "manual-range": [32.7, 39.9] },
  "1/2": { "jis-type-manuals": [49, 61], "en-378-2": [50, 62], "manual-range": [49.5, 60.3] },
  "5/8": { "jis-type-manuals": [68, 82], "en-378-2": [63, 77], "manual-range": [61.8, 75.4] },
  // 100–120 N·m for 3/4 in is from memory.
  "3/4": { "jis-type-manuals": [100, 120], "en-378-2": [90, 110], "manual-range": [97.2, 118.6] },
  "6 mm": { "en-378-2": [14, 18] },
  "8 mm": { "en-378-2": [33, 42] },
  "10 mm": { "en-378-2": [33, 42] },
  "12 mm": { "en-378-2": [50, 62] },
  "15 mm": { "en-378-2": [63, 77] },
  "18 mm": { "en-378-2": [90, 110] },
};

// From the point where the torque rises, in degrees. Manufacturers' manuals; none for 5/16 and metric tube.
const turnTable: Partial<Record<FlareTube, Range>> = {
  "1/4": [60, 90],
  "3/8": [60, 90],
  "1/2": [30, 60],
  "5/8": [30, 60],
  "3/4": [20, 35],
};

const citations: Record<FlareTorqueSource, Citation> = {
  "jis-type-manuals": /* @__PURE__ */ cite("manufacturer-manuals", "flare nut torque, JIS-type"),
  "en-378-2": /* @__PURE__ */ cite("en-378-2", "flare nut torque, from memory"),
  "manual-range": /* @__PURE__ */ cite("manufacturer-manuals", "flare nut torque, range"),
};

// The 3/4 in row of the JIS-type nuts was not read in the manuals.
const remembered: Citation = /* @__PURE__ */ cite(
  "from-memory",
  "flare nut torque, JIS-type, 3/4 in",
);
const isRemembered = (source: FlareTorqueSource, tube: FlareTube) =>
  source === "jis-type-manuals" && tube === "3/4";

/**
 * The torque window of one source.
 *
 * Source: see {@link flareTorque}.
 */
export interface FlareTorqueWindow extends FlareLimits<"torque"> {
  /** Who prints it. */
  readonly source: FlareTorqueSource;
  /** Where it stands. */
  readonly citation: Citation;
}

/**
 * Two sources whose windows share less than three quarters of the narrower one.
 *
 * Source: the three quarters are the library's own line.
 */
export interface FlareTorqueConflict {
  /** The two sources. */
  readonly between: readonly [FlareTorqueSource, FlareTorqueSource];
  /** How much of the narrower window both allow, 0 to 1. */
  readonly sharedFraction: number;
}

/**
 * What the published sources say on the torque of one flare nut.
 *
 * Source: see {@link flareTorque}.
 */
export interface FlareTorque {
  /** The window of each source. */
  readonly windows: readonly FlareTorqueWindow[];
  /** What every source allows. */
  readonly overlap: FlareLimits<"torque">;
  /** Pairs of sources that conflict; empty where they agree well. */
  readonly conflicts: readonly FlareTorqueConflict[];
  /** What overrides the figures and what can hurt someone. */
  readonly cautions: readonly Caution<FlareJointStatement | SafetyStatement>[];
}

/**
 * The torque windows of a flare nut from every source, what they share, and which of them conflict.
 * The unit's own manual comes first; the overlap is for the case that it says nothing.
 *
 * Assumes the unit's own nuts, a clean copper flare, and a little refrigerant oil between the flare
 * faces but not on the thread. Torque depends on where the oil is: follow the manual.
 *
 * @param tube - Outside diameter, in inches or metric. For 5/16 and metric tube there is one source only, from memory.
 * @returns Windows, overlap and conflicts, in N·m.
 * @throws {@link InvalidInputError} when the tube is not a size of the table.
 *
 * Cautions: over-tightening thins the flare, which cracks later. Never loosen a nut under pressure.
 *
 * Source: manufacturers' published manuals; EN 378-2:2016 and the 3/4 in row of the JIS-type nuts from
 * memory.
 *
 * @example
 * ```ts
 * import { flareTorque } from "hvac-install-math/flare-joint";
 * import { ftLb } from "hvac-install-math/quantity";
 *
 * const { overlap, conflicts } = flareTorque("5/8");
 * overlap.low.toString(); // => 68 N·m
 * overlap.high.toString(ftLb, 1); // => 55.6 ft·lb
 * conflicts.map(({ between }) => between.join(" / ")).join(", "); // => jis-type-manuals / en-378-2, jis-type-manuals / manual-range
 * ```
 */
export function flareTorque(tube: FlareTube): FlareTorque {
  const row = Object.entries(figureOf(torqueTable, tube)) as [FlareTorqueSource, Range][];
  const conflicts: FlareTorqueConflict[] = [];
  row.forEach(([first, a], i) => {
    for (const [second, b] of row.slice(i + 1)) {
      const shared = Math.max(0, Math.min(a[1], b[1]) - Math.max(a[0], b[0]));
      const sharedFraction = shared / Math.min(a[1] - a[0], b[1] - b[0]);
      if (sharedFraction < 0.75) conflicts.push({ between: [first, second], sharedFraction });
    }
  });
  return frozen({
    windows: row.map(([source, [low, high]]) => ({
      source,
      citation: isRemembered(source, tube) ? remembered : citations[source],
      low: newtonMeter(low),
      high: newtonMeter(high),
    })),
    overlap: {
      low: newtonMeter(Math.max(...row.map(([, [low]]) => low))),
      high: newtonMeter(Math.min(...row.map(([, [, high]]) => high))),
    },
    conflicts,
    cautions: heed(flareCautions),
  });
}

/**
 * How far to turn a flare nut without a torque wrench, from the point where the torque rises. A torque
 * wrench is the better way; this is what manuals print for the case that there is none.
 *
 * @param tube - Outside diameter in inches; not 5/16 nor metric tube, for which nothing is published.
 * @returns Smallest and largest turn.
 * @throws {@link OutOfRangeError} for 5/16 and metric tube.
 * @throws {@link InvalidInputError} when the tube is not a size of the table.
 *
 * Cautions: as for {@link flareTorque}. Hold the body with a second wrench.
 *
 * Source: manufacturers' published manuals.
 *
 * @example
 * ```ts
 * import { flareTurn } from "hvac-install-math/flare-joint";
 *
 * const { low, high } = flareTurn("1/2");
 * `${low} to ${high}`; // => 30 ° to 60 °
 * ```
 */
export function flareTurn(tube: FlareTube): FlareLimits<"angle"> {
  const [low, high] = figureOf(turnTable, tube);
  return frozen({ low: degreeAngle(low), high: degreeAngle(high) });
}
