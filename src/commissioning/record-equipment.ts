// What was installed? Plates and manual, which an app keeps once per model and a record refers to. Types only.
// Follows the plates of the units and the inputs of the modules that judge them.
// Does not cover how the figures are judged: see the modules.
import type { ProtectionMarking } from "../circuit-protection/index.ts";
import type { ChargeRate, RunLimits, ShortLineRule } from "../line-set/index.ts";
import type { ChargedSystem, ExpansionPlace } from "../operating-check/index.ts";
import type { Quantity } from "../quantity/quantity.ts";
import type { Draft } from "../shapes/index.ts";
import type { VoltageRange } from "../supply-voltage/index.ts";
import type { PortSize } from "./port-size.ts";

/** A unit by its plate. */
export interface UnitPlate {
  /** Model designation as printed. */
  readonly model?: string | undefined;
  /** Serial number. */
  readonly serialNumber?: string | undefined;
  /** Sizes of its ports, flared or brazed; for an indoor unit those of its own. An outdoor unit whose pairs differ leaves them out: each indoor unit states its own. */
  readonly ports?:
    | { readonly liquid?: PortSize | undefined; readonly vapor?: PortSize | undefined }
    | undefined;
  /** Rated capacity of an indoor unit, for the combination of several. */
  readonly capacity?: Quantity<"power"> | undefined;
}

/**
 * How the refrigerant circuit is closed. `split`: lines are joined, tested, evacuated and charged on site.
 * `quick-connect`: lines come pre-charged with couplings, nothing is opened on site. `monobloc`: the circuit is sealed in
 * the outdoor unit.
 */
export type Construction = "split" | "quick-connect" | "monobloc";

/**
 * What the unit's manual says.
 *
 * Source: the manual of the unit.
 */
export interface Manual {
  /** Limits of the run. */
  readonly run?: Draft<RunLimits> | undefined;
  /** Length of line that the factory charge covers. */
  readonly preChargedLength?: Quantity<"length"> | undefined;
  /** Added charge per length. */
  readonly chargeRate?: Draft<ChargeRate> | undefined;
  /** Whether the pre-charged length counts for each run or for the sum of them; asked for where there are several. */
  readonly preChargedFor?: "each-run" | "sum" | undefined;
  /** What happens below the pre-charged length. */
  readonly shortLineRule?: ShortLineRule | undefined;
  /** Mass that the manual adds, or takes off (negative), for each pair of ports that stays unused. */
  readonly unusedPortAllowance?: Quantity<"mass"> | undefined;
  /**
   * Mass that the manual adds for the whole system, or takes off (negative), whatever the lengths: what the factory put
   * in for a line of its own, where the rate counts for the whole length.
   */
  readonly chargeAllowance?: Quantity<"mass"> | undefined;
  /** Least capacity of all indoor units together. */
  readonly leastConnected?: Quantity<"power"> | undefined;
  /** Largest capacity of all indoor units together. */
  readonly mostConnected?: Quantity<"power"> | undefined;
  /** Cable between the units, as the manual words it. */
  readonly linkCable?: string | undefined;
  /** Largest length of all runs together. */
  readonly maximumTotalLength?: Quantity<"length"> | undefined;
  /** Largest height difference between two indoor units. */
  readonly maximumIndoorLift?: Quantity<"length"> | undefined;
  /** Least pressure of the tightness test. */
  readonly testPressure?: Quantity<"gaugePressure"> | undefined;
  /** Shortest hold of the tightness test. */
  readonly testHold?: Quantity<"duration"> | undefined;
}

/**
 * The equipment as its plates describe it.
 *
 * Source: the plates of the units.
 */
export interface Equipment {
  /** How its circuit is closed; `split` when left out. */
  readonly construction?: Construction | undefined;
  /** Whether it cools, heats or both. */
  readonly duty?: "cooling" | "heating" | "both" | undefined;
  /** Rated capacity. */
  readonly capacity?: Quantity<"power"> | undefined;
  /** Outdoor unit. */
  readonly outdoorUnit?: UnitPlate | undefined;
  /** Pairs of ports of the outdoor unit; asked for where several indoor units can be joined to it. */
  readonly portPairs?: number | undefined;
  /** Refrigerant by its ASHRAE 34 designation, however it is written. */
  readonly refrigerant?: string | undefined;
  /** Charge that the unit came with. */
  readonly factoryCharge?: Quantity<"mass"> | undefined;
  /** Most that the unit may hold. */
  readonly maximumCharge?: Quantity<"mass"> | undefined;
  /** The lowest pressure marked on anything under test. */
  readonly lowestMarkedPressure?: Quantity<"gaugePressure"> | undefined;
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
  /** Locked-rotor current. */
  readonly lockedRotorCurrent?: Quantity<"current"> | undefined;
  /** Rated voltages: one, or both of a dual plate. */
  readonly ratedVoltages?: readonly Quantity<"voltage">[] | undefined;
  /** Range of voltage that the plate prints. */
  readonly voltageRange?: Draft<VoltageRange> | undefined;
  /** What sets the flow of refrigerant. */
  readonly meteringDevice?: ChargedSystem["meteringDevice"] | undefined;
  /** How the compressor runs. */
  readonly compressor?: ChargedSystem["compressor"] | undefined;
  /** Where the refrigerant expands. */
  readonly expansion?: ExpansionPlace | undefined;
  /** What the manual says. */
  readonly manual?: Manual | undefined;
}
