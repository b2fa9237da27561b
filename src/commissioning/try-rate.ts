// Can the rate of the manual be right for the liquid lines of this record? A doubt, never a charge.
// Follows line-set, which holds it against a line full of liquid; that a doubt leaves the charge open is common
// practice, no source. Does not cover a rate that nothing is counted by, or a tube or refrigerant that is not known.
import {
  type ChargeRate,
  type LiquidChargePlausibility,
  liquidChargePlausibility,
  type TubeSize,
} from "../line-set/index.ts";
import { frozen } from "../quantity/frozen.ts";
import { known } from "../quantity/known.ts";
import { degC } from "../quantity/units/temperature.ts";
import { whole } from "../shapes/index.ts";
import type { Job } from "./job.ts";
import { manualPath } from "./manual-path.ts";
import type { PlacedRun } from "./runs.ts";
import type { Trial } from "./step.ts";

// What leaves a condenser in summer, as in the tables that the rates are held against; common practice, no source.
const liquidTemperature = /* @__PURE__ */ degC(40);

/** The check of the rate, only where the rate cannot be right: a slip of unit or of the decimal point. */
export function doubtedRate(job: Job): Trial[] {
  return job.runs.flatMap((one): Trial[] => {
    const found = plausibility(job, one);
    if (found?.outcome !== "fail") return [];
    const run = () => frozen({ ...found, outcome: "inconclusive" as const });
    return [{ name: "charge-rate", path: manualPath(one, "chargeRate"), needs: {}, run }];
  });
}

function plausibility(
  { record, refrigerant, runs }: Job,
  { run }: PlacedRun,
): LiquidChargePlausibility | undefined {
  const { manual = {} } = record.equipment ?? {};
  const { chargeRate: rate, preChargedLength } = { ...manual, ...run.manual };
  const { liquid: tube, length } = run.tubing ?? {};
  if (!rate || !tube || !length || !preChargedLength || !refrigerant) return undefined;
  const covered = runs.length === 1 && length.si <= preChargedLength.si;
  if (covered && manual.shortLineRule !== "add-and-subtract") return undefined;
  return known(() =>
    liquidChargePlausibility({
      rate: whole<ChargeRate>(rate),
      tube: whole<TubeSize>(tube),
      refrigerant,
      temperature: liquidTemperature,
      expansionDevice: "not-known",
    }),
  );
}
