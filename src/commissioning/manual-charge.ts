// How much refrigerant does the manual ask for by a record, and what does the record lack to say it?
// Follows line-set by the manual's own rule. Does not cover what was weighed in: assessInstallation judges that.
import type { ChargeAssessment } from "../line-set/index.ts";
import { frozen } from "../quantity/frozen.ts";
import { ruleNeeds, ruleOf } from "./charge-rule.ts";
import { checkRecord } from "./check-record.ts";
import { jobOf } from "./job.ts";
import type { InstallationRecord } from "./record.ts";

/** The charge by the rule of the manual. */
export interface ManualCharge {
  /** Paths of the fields without which the rule cannot be followed. */
  readonly missing: readonly string[];
  /** The rule followed for the runs of the record; left out where something is missing. */
  readonly assessment?: ChargeAssessment;
}

/**
 * The refrigerant to add by the manual's rule for the runs of a record, with the total for the label: each run or their
 * sum against the pre-charged length, unused ports, what the manual counts whatever the lengths.
 *
 * @param record - A record of one refrigerant system, in whatever state of filling.
 * @returns What is missing, or the verdict of the rule.
 * @throws {@link InvalidInputError} when it is not a record, or a figure of the rule is impossible.
 *
 * Cautions: weigh the charge into a tested and evacuated system; nameplate and manual govern.
 *
 * Source: manufacturers' published manuals, brands withheld.
 *
 * @example
 * ```ts
 * import { manualCharge } from "hvac-install-math/commissioning";
 * import { ft, oz, ozPerFt } from "hvac-install-math/quantity";
 *
 * const manual = { preChargedLength: ft(25), chargeRate: ozPerFt(0.16), shortLineRule: "add-only" } as const;
 * const equipment = { factoryCharge: oz(44), manual };
 * manualCharge({ version: 2, equipment }).missing.join(); // => runs[0].tubing.length
 * const runs = [{ tubing: { length: ft(61) } }];
 * manualCharge({ version: 2, equipment, runs }).assessment?.additionalCharge.toString(); // => 5.76 oz
 * ```
 */
export function manualCharge(record: InstallationRecord): ManualCharge {
  const job = jobOf(checkRecord(record), []);
  const missing = Object.entries(ruleNeeds(job)).flatMap(([path, value]) =>
    value === undefined ? [path] : [],
  );
  return frozen(missing.length > 0 ? { missing } : { missing, assessment: ruleOf(job) });
}
