// What feeds the units? Circuits and supply of a record. Types only.
// Follows the inputs of circuit-protection and supply-voltage; rule sets are named by a key.
// Does not cover how they are judged: see those modules.
import type {
  AwgWiring,
  CircuitInput,
  ClauseVerification,
  InstalledCircuit,
  MetricWiring,
  ProtectionMarking,
  SharedLoad,
  SupplySystemName,
} from "../circuit-protection/index.ts";
import type { Quantity } from "../quantity/quantity.ts";
import type { Draft, IsoTime } from "../shapes/index.ts";
import type { VoltageMeasuredAt, VoltageRange, VoltageReading } from "../supply-voltage/index.ts";
import type { CircuitRulesName, VoltageStandardName } from "./format/index.ts";

/**
 * The plate of a unit that is fed by a circuit of its own, such as an air handler with a heater.
 *
 * Source: the plate of the unit.
 */
export interface CircuitPlate {
  /** Minimum circuit ampacity. */
  readonly minimumCircuitAmpacity?: Quantity<"current"> | undefined;
  /** Largest overcurrent protection. */
  readonly maximumOvercurrentProtection?: Quantity<"current"> | undefined;
  /** Under metric rules, in place of the ampacity: the rated current. */
  readonly ratedCurrent?: Quantity<"current"> | undefined;
  /** Under metric rules, in place of the largest protection: the largest fuse that nameplate or manual allows. */
  readonly maximumFuse?: Quantity<"current"> | undefined;
  /** How the plate words it. */
  readonly protectionMarking?: ProtectionMarking | undefined;
  /** Sum of the rated-load currents that run together. */
  readonly ratedLoadCurrent?: Quantity<"current"> | undefined;
}

/** A branch circuit. */
export interface Circuit {
  /** What it feeds: `outdoor unit`, `air handler`. */
  readonly name?: string | undefined;
  /** The plate of what it feeds, where that is not the outdoor unit. */
  readonly plate?: CircuitPlate | undefined;
  /** Whether the plate was read a second time, so that figures that look wrong are taken as printed. */
  readonly nameplateReadAgain?: boolean | undefined;
  /** What kind of unit it feeds. */
  readonly feeds?: NonNullable<CircuitInput["equipment"]> | undefined;
  /** What else is on it; an empty list where it feeds nothing else. */
  readonly sharedWith?: readonly Draft<SharedLoad>[] | undefined;
  /** Earthing of the supply, under metric rules. */
  readonly earthing?: NonNullable<CircuitInput["earthing"]> | undefined;
  /** The adopted rules by the designation of their standard: `"nfpa-70-2023"` for `nec2023`, see {@link circuitRules}. */
  readonly rules?: CircuitRulesName | undefined;
  /** How the cable runs. */
  readonly wiring?: Draft<AwgWiring> | Draft<MetricWiring> | undefined;
  /** What is fitted. */
  readonly installed?: Draft<InstalledCircuit> | undefined;
  /** Power factor while running. */
  readonly powerFactor?: number | undefined;
  /** Where it stands. */
  readonly occupancy?: NonNullable<CircuitInput["occupancy"]> | undefined;
  /** Which text of the clause on ground-fault protection is adopted: "as printed", an amendment's name, or "not adopted". */
  readonly groundFaultText?: string | undefined;
  /** Who checked it by the text of clauses that the verdict asked for, and what they found. */
  readonly verifications?: readonly Draft<ClauseVerification>[] | undefined;
  /** When it was inspected. */
  readonly at?: IsoTime | undefined;
}

/** The readings of the supply. */
export interface SupplyPart {
  /** One reading or a log. */
  readonly readings?: readonly Draft<VoltageReading>[] | undefined;
  /** At the service entrance or at the unit. */
  readonly measuredAt?: VoltageMeasuredAt | undefined;
  /** The standard of the supply by name. */
  readonly standard?: VoltageStandardName | undefined;
  /** The range that the utility or the national code promises, such as 127 V ± 10 %; it goes before any standard. */
  readonly range?: Draft<VoltageRange> | undefined;
  /** Largest voltage unbalance that the maker allows. */
  readonly unbalanceLimit?: Quantity<"ratio"> | undefined;
  /** When the first reading was taken, the unit being off. */
  readonly at?: IsoTime | undefined;
}

/** Circuits, supply and the moment of power. */
export interface Power {
  /** Nominal voltage between the conductors that feed the unit. */
  readonly voltage?: Quantity<"voltage"> | undefined;
  /** Phases that feed the unit. */
  readonly phases?: 1 | 3 | undefined;
  /** The service, as its rules write it: `220Y/127 V` by American rules is `127/220 V` by metric ones. */
  readonly system?: SupplySystemName | undefined;
  /** The branch circuits: one, or one per unit with a supply of its own. */
  readonly circuits?: readonly Circuit[] | undefined;
  /** The readings of the supply. */
  readonly supply?: SupplyPart | undefined;
  /** When the unit was first switched on. */
  readonly energizedAt?: IsoTime | undefined;
}
