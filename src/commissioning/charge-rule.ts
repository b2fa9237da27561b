// How much refrigerant does the manual ask for? Its rule for one run or for several.
// Follows line-set, which computes it. Does not cover what was weighed in: see try-charge.ts.
import {
  additionalCharge,
  type ChargeAssessment,
  type IndoorUnitLine,
  multiSplitCharge,
} from "../line-set/index.ts";
import { wholeNumberOf } from "../quantity/check.ts";
import { known } from "../quantity/known.ts";
import type { Later } from "../quantity/later.ts";
import { Quantity } from "../quantity/quantity.ts";
import type { Job } from "./job.ts";
import { manualPath } from "./manual-path.ts";
import type { InstallationRecord } from "./record.ts";
import { type PlacedRun, servesIndoorUnit } from "./runs.ts";
import { present } from "./step.ts";

/** What the manual's rule needs. */
export function ruleNeeds({ record, runs }: Job): Record<string, unknown> {
  const { factoryCharge, portPairs, manual = {} } = record.equipment ?? {};
  const needs: Record<string, unknown> = {};
  for (const one of runs) {
    const { preChargedLength, chargeRate } = { ...manual, ...one.run.manual };
    needs[`${one.path}.tubing.length`] = one.run.tubing?.length;
    needs[manualPath(one, "preChargedLength")] = preChargedLength;
    needs[manualPath(one, "chargeRate")] = chargeRate;
  }
  needs["equipment.manual.shortLineRule"] = manual.shortLineRule;
  const spare = sparePorts(record, runs);
  // A port that stays unused can take charge off: silence is asked about, zero is an answer.
  if (spare !== 0) needs["equipment.manual.unusedPortAllowance"] = manual.unusedPortAllowance;
  if (manual.unusedPortAllowance) needs["equipment.portPairs"] = portPairs;
  needs["equipment.factoryCharge"] = factoryCharge;
  if (runs.length > 1) needs["equipment.manual.preChargedFor"] = manual.preChargedFor;
  return needs;
}

/** Pairs of ports that runs take: a run to a branch box takes the one of the outdoor unit, and the box has its own. */
const portsTaken = (runs: readonly PlacedRun[]) => (runs.every(servesIndoorUnit) ? runs.length : 1);

/** How many pairs of ports stay unused; none as long as their number is not stated. */
const sparePorts = ({ equipment }: InstallationRecord, runs: readonly PlacedRun[]) =>
  Math.max(0, (equipment?.portPairs ?? 0) - portsTaken(runs));

/** Whether the rule can be followed. */
export const hasRule = (job: Job): boolean =>
  Object.values(ruleNeeds(job)).every((value) => value !== undefined);

/** What the rule asks for, kg; nothing where it cannot be followed, which the charge step says. */
export function askedBy(job: Job, rule: Later<ChargeAssessment>): number | undefined {
  return hasRule(job) ? known(() => rule().unroundedCharge.si) : undefined;
}

/** Where the arguments of the rule stand in the record. */
export const rulePaths = ({ runs }: Job): Readonly<Record<string, string>> => ({
  ...linePaths(runs[0] as PlacedRun, ""),
  ...Object.assign({}, ...runs.map((one, i) => linePaths(one, `lines[${i}].`))),
  preChargedTotal: "equipment.manual.preChargedLength",
  shortLineRule: "equipment.manual.shortLineRule",
  factoryCharge: "equipment.factoryCharge",
  maximumCharge: "equipment.maximumCharge",
  portPairs: "equipment.portPairs",
  allowance: "equipment.manual.chargeAllowance",
  scaleResolution: "instruments.scale.resolution",
  designation: "equipment.refrigerant",
  refrigerant: "equipment.refrigerant",
  instrument: "instruments.scale",
});

/** Where the arguments of the rule for one run stand, which begin alike. */
const linePaths = (one: PlacedRun, prefix: string): Readonly<Record<string, string>> => ({
  [`${prefix}length`]: `${one.path}.tubing.length`,
  [`${prefix}preChargedLength`]: manualPath(one, "preChargedLength"),
  [`${prefix}rate`]: manualPath(one, "chargeRate"),
  [`${prefix}maximumLength`]: manualPath(one, "run", "maximumLength"),
  [`${prefix}minimumLength`]: manualPath(one, "run", "minimumLength"),
  [`${prefix}allowance`]: `${one.path}.manual.chargeAllowance`,
});

/** The manual's rule for the runs. */
export function ruleOf(job: Job): ChargeAssessment {
  const [only, ...others] = job.runs;
  const { portPairs } = job.record.equipment ?? {};
  if (portPairs !== undefined) {
    wholeNumberOf("portPairs", portPairs, { min: portsTaken(job.runs), max: 100 });
  }
  const fixed = fixedMass(job);
  const isPlain = only && others.length === 0 && fixed === undefined;
  return isPlain && !only.run.manual?.chargeAllowance ? ruleOfOne(job, only) : ruleOfSeveral(job);
}

/** What the manual counts whatever the lengths: for unused ports, and for the system. */
function fixedMass({ record, runs }: Job): Quantity<"mass"> | undefined {
  const { unusedPortAllowance: each, chargeAllowance: whole } = record.equipment?.manual ?? {};
  if (!each) return whole;
  const own = new Quantity(sparePorts(record, runs) * each.si, each.unit);
  return whole ? own.plus(whole) : own;
}

function boundsOf({ record, refrigerant }: Job) {
  const { factoryCharge, maximumCharge, manual } = record.equipment ?? {};
  return {
    safetyClass: refrigerant?.safetyClass,
    shortLineRule: manual?.shortLineRule,
    factoryCharge,
    maximumCharge,
    scaleResolution: record.instruments?.scale?.resolution,
  };
}

function ruleOfOne(job: Job, { run }: PlacedRun): ChargeAssessment {
  const { manual = {} } = job.record.equipment ?? {};
  const { preChargedLength, chargeRate } = { ...manual, ...run.manual };
  const limits = { ...manual.run, ...run.manual?.run };
  return additionalCharge(
    present({
      ...boundsOf(job),
      length: run.tubing?.length,
      preChargedLength,
      rate: chargeRate,
      // A stated limit with bends is one of equivalent length: the run is judged by it, not this.
      maximumLength: limits.bendEquivalentLength ? undefined : limits.maximumLength,
      minimumLength: limits.minimumLength,
    }),
  );
}

function ruleOfSeveral(job: Job): ChargeAssessment {
  const { manual = {} } = job.record.equipment ?? {};
  const isSum = manual.preChargedFor === "sum";
  const lines = job.runs.map(({ run }) => {
    const { preChargedLength, chargeRate } = { ...manual, ...run.manual };
    return present<IndoorUnitLine>({
      length: run.tubing?.length,
      rate: chargeRate,
      preChargedLength: isSum ? undefined : preChargedLength,
      allowance: run.manual?.chargeAllowance,
    });
  });
  return multiSplitCharge(
    present({
      ...boundsOf(job),
      lines,
      preChargedTotal: isSum ? manual.preChargedLength : undefined,
      allowance: fixedMass(job),
    }),
  );
}
