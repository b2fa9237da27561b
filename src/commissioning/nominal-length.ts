// Is the length of a run nominal, or did somebody measure it? As it is stated, or as pre-charged lines come.
// Follows common practice, no source. Does not cover what a limit makes of it: see line-set.
import { wholeNumberOf } from "../quantity/check.ts";
import { checkRecord } from "./check-record.ts";
import type { InstallationRecord } from "./record.ts";
import type { Run } from "./record-run.ts";

/**
 * Whether the length of a run is the nominal length of a factory-made line set, behind which no tape stands: where the
 * record says so by `lengthIs`, and where it does not, for pre-charged lines with couplings.
 *
 * @param record - The record.
 * @param run - Which of its runs, from 0.
 * @returns Whether it is.
 * @throws {@link InvalidInputError} when it is no record or has no such run.
 *
 * Source: common practice, no source.
 *
 * @example
 * ```ts
 * import { hasNominalLength } from "hvac-install-math/commissioning";
 * import { ft } from "hvac-install-math/quantity";
 *
 * const runs = [{ tubing: { length: ft(25) } }];
 * hasNominalLength({ version: 2, equipment: { construction: "quick-connect" }, runs }, 0); // => true
 * hasNominalLength({ version: 2, equipment: { construction: "split" }, runs }, 0); // => false
 * ```
 */
export function hasNominalLength(record: InstallationRecord, run: number): boolean {
  const checked = checkRecord(record);
  const { runs = [] } = checked;
  wholeNumberOf("run", run, { min: 0, below: runs.length });
  return isNominal(checked, runs[run] as Run);
}

/** The same for a run of a record that was checked. */
export const isNominal = ({ equipment }: InstallationRecord, { tubing }: Run): boolean =>
  tubing?.lengthIs ? tubing.lengthIs === "nominal" : equipment?.construction === "quick-connect";
