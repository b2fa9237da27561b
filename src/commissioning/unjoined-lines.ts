// Does each line have a joint of its size? A doubt that an entry was copied, never a limit.
// Follows the sizes of flare-joint; that a line without a flare of its size is asked about is common practice, no source.
// Does not cover brazed and pressed joints, whose tube is not recorded, or joints that are still missing.
import { type FlareTube, flareTube } from "../flare-joint/index.ts";
import { isInvalidInputError } from "../quantity/errors.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { stated } from "./job.ts";
import type { InstallationRecord } from "./record.ts";
import type { Trial } from "./step.ts";

/** The lines of which no flare is recorded, where every joint is a flare. */
export function unjoinedLines({ joints = [], tubing }: InstallationRecord): Trial[] {
  // A joint that is still missing may be the one.
  if (joints.length === 0 || joints.length < (tubing?.jointCount ?? Infinity)) return [];
  if (joints.some(({ kind, tube }) => kind !== "flare" || tube === undefined)) return [];
  return (["liquid", "vapor"] as const).flatMap((line): Trial[] => {
    const diameter = tubing?.[line]?.outsideDiameter;
    if (!diameter || joints.some(({ tube }) => tube === sizeOf(diameter))) return [];
    const text =
      "No joint of the {line} line, {diameter}, is recorded, only flares of {tubes} in: adapters or a copied entry?";
    const tubes = [...new Set(joints.map(({ tube }) => tube))].join(", ");
    const values = { line: line === "vapor" ? "vapour" : line, diameter, tubes };
    const run = () => stated("inconclusive", "joint-sizes", text, values);
    return [{ name: "joint-sizes", path: `tubing.${line}.outsideDiameter`, needs: {}, run }];
  });
}

/** The size of flare for a tube, where there is one. */
function sizeOf(diameter: Quantity<"length">): FlareTube | undefined {
  try {
    return flareTube(diameter);
  } catch (error) {
    if (!isInvalidInputError(error)) throw error;
    return undefined;
  }
}
