// Can the charge be as it is recorded? Factory charge against capacity, what was added against the rule and the factory.
// Follows usual charges per capacity; common practice, no source. A doubt leaves the charge open, it never fails it.
// Does not cover the rule of the manual: line-set decides it.
import { caution } from "../assessment/caution.ts";
import type { ChargeAssessment } from "../line-set/index.ts";
import type { Later } from "../quantity/later.ts";
import { isAtLeast } from "../quantity/limit.ts";
import { Quantity } from "../quantity/quantity.ts";
import { rounded } from "../quantity/rounded.ts";
import { askedBy } from "./charge-rule.ts";
import { doubt } from "./doubt.ts";
import type { Job } from "./job.ts";
import { oddFigure } from "./odd-figure.ts";
import type { Placed, PlacedCaution } from "./placed.ts";
import { type CommissioningStatement, say } from "./statements.ts";
import type { Trial } from "./step.ts";

/** kg of factory charge per kW of capacity: a hydrocarbon has the least, from memory 0.15 and more the others. */
const [least, leastOfOthers, most] = [0.04, 0.13, 0.6];

/** Largest charge per factory charge: even long lines of several heads do not hold that much. */
const largestMaximum = 4;

/** Share of the factory charge above which an addition is asked about. */
const largestShare = 0.6;

/** A factory charge that no unit of such a capacity has. */
function oddFactoryCharge({ record, refrigerant }: Job): CommissioningStatement[] {
  const { factoryCharge: charge, capacity } = record.equipment ?? {};
  if (!charge || !capacity) return [];
  const perKilowatt = (1000 * charge.si) / capacity.si;
  const low = (refrigerant?.safetyClass ?? "A3") === "A3" ? least : leastOfOthers;
  if (perKilowatt >= low && perKilowatt <= most) return [];
  const usual = (share: number) => rounded((share * capacity.si) / 1000, charge.unit, 2);
  const values = { charge, capacity, low: usual(low), high: usual(most) };
  return [say("commissioning.factory-charge-odd", values)];
}

/** The same as a finding, where the circuit is not opened on site and so the charge is no step of the work. */
export const sealedCharge = (job: Job): PlacedCaution[] =>
  job.construction === "split"
    ? []
    : oddFactoryCharge(job).map((said) => caution<Placed>("finding", said));

/** What cannot be right of the charge. */
export function doubtsOfCharge(job: Job, rule: Later<ChargeAssessment>): Trial[] {
  const { equipment = {}, charge } = job.record;
  const { factoryCharge, maximumCharge } = equipment;
  const added = charge?.added;
  const doubts: Trial[] = [];
  if (!factoryCharge) return doubts;
  doubts.push(...oddFactoryCharge(job).map((said) => doubt("equipment.factoryCharge", said)));
  if (maximumCharge && isAtLeast(factoryCharge.si, maximumCharge.si)) {
    const values = { charge: factoryCharge, most: maximumCharge };
    doubts.push(
      doubt("equipment.factoryCharge", say("commissioning.factory-charge-is-maximum", values)),
    );
  }
  if (factoryCharge.si <= 0) return doubts; // it is refused
  const isDoubted = doubts.some(({ path }) => path === "equipment.factoryCharge");
  if (maximumCharge && !isDoubted && maximumCharge.si / largestMaximum > factoryCharge.si) {
    const largest = new Quantity(largestMaximum * factoryCharge.si, factoryCharge.unit);
    doubts.push(...oddFigure("equipment.maximumCharge", maximumCharge, [factoryCharge, largest]));
  }
  if (!added || added.si <= 0) return doubts;
  const total = factoryCharge.si + (askedBy(job, rule) ?? Number.NaN);
  const tolerance = charge?.tolerance?.si ?? 0;
  if (Math.abs(added.si - total) <= tolerance) {
    doubts.push(doubt("charge.added", say("commissioning.total-as-added", { added })));
  } else if (added.si > largestShare * factoryCharge.si) {
    const values = { added, charge: factoryCharge };
    doubts.push(doubt("charge.added", say("commissioning.added-large", values)));
  }
  return doubts;
}
