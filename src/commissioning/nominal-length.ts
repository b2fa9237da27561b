// Is the length of a run nominal, or did somebody measure it? As it is stated, or as pre-charged lines come.
// Follows common practice, no source. Does not cover what a limit makes of it: see line-set.
import { objectOf } from "../quantity/check.ts";
import type { InstallationRecord } from "./record.ts";
import type { Run } from "./record-run.ts";

/**
 * Whether the length of a run is the nominal length of a factory-made line set, behind which no tape stands: where the
 * record says so by `lengthIs`, and where it does not, for pre-charged lines with couplings.
 *
 * @param record - The record of the run, of which the equipment counts.
 * @param run - The run.
 * @returns Whether it is.
 * @throws {@link InvalidInputError} when one of them is no object.
 *
 * Source: common practice, no source.
 *
 * @example
 * ```ts
 * import { hasNominalLength } from "hvac-install-math/commissioning";
 * import { ft } from "hvac-install-math/quantity";
 *
 * const run = { tubing: { length: ft(25) } };
 * hasNominalLength({ equipment: { construction: "quick-connect" } }, run); // => true
 * hasNominalLength({ equipment: { construction: "split" } }, run); // => false
 * ```
 */
export function hasNominalLength(
  record: Pick<InstallationRecord, "equipment">,
  run: Pick<Run, "tubing">,
): boolean {
  const { equipment } = objectOf("record", record);
  const { tubing } = objectOf("run", run);
  return tubing?.lengthIs
    ? tubing.lengthIs === "nominal"
    : equipment?.construction === "quick-connect";
}
