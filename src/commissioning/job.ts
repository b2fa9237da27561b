// What do several steps need? The record as it was checked at the door, its runs, the rule sets, what they share.
// Follows the modules quantity and refrigerants.
// Does not cover a guess: what is not recorded is undefined.
import type { CircuitRules } from "../circuit-protection/index.ts";
import { atmosphereAtAltitude } from "../quantity/atmosphere.ts";
import { known } from "../quantity/known.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { type Refrigerant, refrigerantByDesignation } from "../refrigerants/index.ts";
import type { InstallationRecord } from "./record.ts";
import type { Construction } from "./record-equipment.ts";
import { type PlacedRun, runsOf } from "./runs.ts";

/** A record that is being judged. */
export interface Job {
  /** The record, checked. */
  readonly record: InstallationRecord;
  /** The rule sets for circuits that were passed. */
  readonly rules: readonly CircuitRules[];
  /** Its runs, at least one. */
  readonly runs: readonly PlacedRun[];
  /** How the refrigerant circuit is closed. */
  readonly construction: Construction;
  /** The refrigerant, where the library knows it. */
  readonly refrigerant: Refrigerant | undefined;
}

/** The job of a checked record. */
export function jobOf(record: InstallationRecord, rules: readonly CircuitRules[]): Job {
  const { construction = "split", refrigerant } = record.equipment ?? {};
  return {
    record,
    rules,
    runs: runsOf(record),
    construction,
    refrigerant:
      refrigerant === undefined ? undefined : known(() => refrigerantByDesignation(refrigerant)),
  };
}

/** The refrigerant of the plate; throws where it is none that the library knows. */
export const refrigerantOf = ({ record, refrigerant }: Job): Refrigerant =>
  refrigerant ?? refrigerantByDesignation(record.equipment?.refrigerant as string);

/** The atmosphere at the site: measured, or the average at its altitude. */
export const atmosphereOf = ({ record: { site } }: Job): Quantity<"absolutePressure"> =>
  site?.atmosphere ?? atmosphereAtAltitude(site?.altitude as Quantity<"length">);

/** What has to be known for it. */
export const atmosphereNeed = ({ record: { site } }: Job): Record<string, unknown> => ({
  "site.atmosphere": site?.atmosphere ?? site?.altitude,
});
