// Can the rate of the manual be right for the liquid line of this record? A doubt, never a charge.
// Follows line-set, which holds it against a line full of liquid; that a doubt leaves the charge open is common
// practice, no source. Does not cover a rate that nothing is counted by, or a tube or refrigerant that is not known.
import {
  type ChargeRate,
  type LiquidChargePlausibility,
  liquidChargePlausibility,
  type TubeSize,
} from "../line-set/index.ts";
import { isInvalidInputError } from "../quantity/errors.ts";
import { degC } from "../quantity/units/temperature.ts";
import { whole } from "../shapes/index.ts";
import { refrigerantOf } from "./job.ts";
import type { InstallationRecord } from "./record.ts";
import type { Trial } from "./step.ts";

// What leaves a condenser in summer, as in the tables that the rates are held against; common practice, no source.
const liquidTemperature = /* @__PURE__ */ degC(40);

/** The check of the rate, only where the rate cannot be right: a slip of unit or of the decimal point. */
export function doubtedRate(record: InstallationRecord): Trial[] {
  const found = plausibility(record);
  if (found?.outcome !== "fail") return [];
  const run = () => ({ ...found, outcome: "inconclusive" as const });
  return [{ name: "charge-rate", path: "equipment.manual.chargeRate", needs: {}, run }];
}

function plausibility(record: InstallationRecord): LiquidChargePlausibility | undefined {
  const { chargeRate: rate, preChargedLength, shortLineRule } = record.equipment?.manual ?? {};
  const { liquid: tube, length } = record.tubing ?? {};
  if (!rate || !tube || !length || !preChargedLength) return undefined;
  if (length.si <= preChargedLength.si && shortLineRule !== "add-and-subtract") return undefined;
  try {
    return liquidChargePlausibility({
      rate: whole<ChargeRate>(rate),
      tube: whole<TubeSize>(tube),
      refrigerant: refrigerantOf(record),
      temperature: liquidTemperature,
      expansionDevice: "not-known",
    });
  } catch (error) {
    if (!isInvalidInputError(error)) throw error;
    return undefined;
  }
}
