// Can a plate be as it is recorded? Its currents against each other, its power against its capacity.
// Follows the arithmetic of NFPA 70, 440.32 and 440.22, for currents; efficiencies are common practice, no source.
// Does not cover the circuit: circuit-protection decides it.
import { isAtMost, isEqual } from "../quantity/limit.ts";
import { doubt } from "./doubt.ts";
import type { Job } from "./job.ts";
import { say } from "./statements.ts";
import type { Trial } from "./step.ts";

/** Largest protection of a motor-compressor is 225 % of it (440.22(A)); ampacity has 125 % of it (440.32). */
const largestProtection = 225 / 125;

/** Smallest standard rating of protection, A (240.6(A)). */
const smallestProtection = 15;

/** Protection above which one of the two is a slip, A. */
const mostFor = (ampacity: number) =>
  Math.max(smallestProtection, largestProtection * ampacity + 10);

/** Capacity per electrical power at rated load: less is no heat pump, more is a slip; common practice, no source. */
const [worst, best] = [0.8, 9];

/** What cannot be right of a plate. */
export function doubtsOfPlate({ record }: Job): Trial[] {
  const { equipment = {}, power } = record;
  const { minimumCircuitAmpacity: ampacity, maximumOvercurrentProtection: protection } = equipment;
  const { ratedLoadCurrent: rated, capacity, ratedVoltages = [] } = equipment;
  const doubts: Trial[] = [];
  if (ampacity && rated && !isAtMost(rated.si, ampacity.si)) {
    const reason = say("commissioning.rated-above-ampacity", { rated, ampacity });
    doubts.push(doubt("equipment.ratedLoadCurrent", reason));
  }
  // 440.33: an ampacity has a quarter of the largest motor on top of the sum; metric plates print one current for both.
  const byAwg = power?.circuits?.some(({ rules }) => /^(nfpa|csa)/.test(rules ?? ""));
  if (byAwg && ampacity && rated && isEqual(ampacity.si, rated.si)) {
    const reason = say("commissioning.rated-as-ampacity", { rated });
    doubts.push(doubt("equipment.minimumCircuitAmpacity", reason));
  }
  if (ampacity && protection && !isAtMost(protection.si, mostFor(ampacity.si))) {
    const reason = say("commissioning.protection-far-above-ampacity", { protection, ampacity });
    doubts.push(doubt("equipment.maximumOvercurrentProtection", reason));
  }
  const voltage = power?.voltage ?? ratedVoltages[0];
  if (capacity && rated && voltage) {
    const input = voltage.si * rated.si * (power?.phases === 3 ? Math.sqrt(3) : 1);
    const ratio = capacity.si / input;
    if (ratio < worst || ratio > best) {
      const reason = say("commissioning.capacity-odd", { capacity, rated, voltage });
      doubts.push(doubt("equipment.capacity", reason));
    }
  }
  return doubts;
}
