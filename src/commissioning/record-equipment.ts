// Where, what and with what? Site, plates, manual and instruments of a record. Types only.
// Follows the inputs of the modules that judge them.
// Does not cover how the figures are judged: see the modules.
import type { Instrument } from "../assessment/uncertainty.ts";
import type { ProtectionMarking } from "../circuit-protection/index.ts";
import type { TorqueWrench } from "../flare-joint/index.ts";
import type { ChargeRate, RunLimits, ShortLineRule } from "../line-set/index.ts";
import type { ChargedSystem, ExpansionPlace } from "../operating-check/index.ts";
import type { GasThermometer, TestGauge } from "../pressure-test/index.ts";
import type { Quantity } from "../quantity/quantity.ts";
import type { Draft, IsoTime } from "../shapes/index.ts";
import type { VoltageRange, Voltmeter } from "../supply-voltage/index.ts";
import type { VacuumGauge } from "../vacuum-decay/index.ts";

/** Where the installation is. Source: none; the library's own type. */
export interface Site {
  /** How the site is called. */
  readonly name?: string;
  /** Altitude above sea level: gives the average atmosphere where none was measured. */
  readonly altitude?: Quantity<"length">;
  /** Station pressure by a barometer; goes before the altitude. */
  readonly atmosphere?: Quantity<"absolutePressure">;
}

/** A unit by its plate. Source: none; the library's own type. */
export interface UnitPlate {
  /** Model designation as printed. */
  readonly model?: string;
  /** Serial number. */
  readonly serialNumber?: string;
}

/**
 * What the unit's manual lays down.
 *
 * Source: the manual of the unit.
 */
export interface Manual {
  /** Limits of the run. */
  readonly run?: Draft<RunLimits>;
  /** Length of line that the factory charge covers. */
  readonly preChargedLength?: Quantity<"length">;
  /** Added charge per length. */
  readonly chargeRate?: Draft<ChargeRate>;
  /** What happens below the pre-charged length. */
  readonly shortLineRule?: ShortLineRule;
  /** Least pressure of the tightness test. */
  readonly testPressure?: Quantity<"gaugePressure">;
  /** Shortest hold of the tightness test. */
  readonly testHold?: Quantity<"duration">;
}

/**
 * The equipment as its plates describe it.
 *
 * Source: the plates of the units.
 */
export interface Equipment {
  /** Outdoor unit. */
  readonly outdoorUnit?: UnitPlate;
  /** Indoor units. */
  readonly indoorUnits?: readonly UnitPlate[];
  /** Refrigerant by its ASHRAE 34 designation, however it is written. */
  readonly refrigerant?: string;
  /** Charge that the unit came with. */
  readonly factoryCharge?: Quantity<"mass">;
  /** Most that the unit may hold. */
  readonly maximumCharge?: Quantity<"mass">;
  /** The lowest pressure marked on anything under test. */
  readonly lowestMarkedPressure?: Quantity<"gaugePressure">;
  /** Minimum circuit ampacity. */
  readonly minimumCircuitAmpacity?: Quantity<"current">;
  /** Largest overcurrent protection. */
  readonly maximumOvercurrentProtection?: Quantity<"current">;
  /** How the plate words it. */
  readonly protectionMarking?: ProtectionMarking;
  /** Sum of the rated-load currents that run together. */
  readonly ratedLoadCurrent?: Quantity<"current">;
  /** Locked-rotor current. */
  readonly lockedRotorCurrent?: Quantity<"current">;
  /** Rated voltages: one, or both of a dual plate. */
  readonly ratedVoltages?: readonly Quantity<"voltage">[];
  /** Range of voltage that the plate prints. */
  readonly voltageRange?: Draft<VoltageRange>;
  /** What sets the flow of refrigerant. */
  readonly meteringDevice?: ChargedSystem["meteringDevice"];
  /** How the compressor runs. */
  readonly compressor?: ChargedSystem["compressor"];
  /** Where the refrigerant expands. */
  readonly expansion?: ExpansionPlace;
  /** What the manual adds. */
  readonly manual?: Manual;
}

/** Which instrument it is and how long its calibration holds. Source: none; the library's own type. */
export interface InstrumentIdentity {
  /** What it is. */
  readonly name?: string;
  /** Serial number. */
  readonly serialNumber?: string;
  /** Date of its last calibration. */
  readonly calibratedOn?: IsoTime;
  /** Last day on which that calibration holds. */
  readonly calibrationDue?: IsoTime;
}

/**
 * The instruments with their accuracy and calibration.
 *
 * Source: their data sheets and certificates.
 */
export interface Instruments {
  /** Gauge of the pressure test. */
  readonly testGauge?: InstrumentIdentity & TestGauge;
  /** Thermometer of the pressure test. */
  readonly gasThermometer?: InstrumentIdentity & GasThermometer;
  /** Vacuum gauge. */
  readonly vacuumGauge?: InstrumentIdentity & Draft<VacuumGauge>;
  /** Charging scale. */
  readonly scale?: InstrumentIdentity & Instrument<"mass">;
  /** Tape or measuring wheel for the tubing. */
  readonly tape?: InstrumentIdentity & Instrument<"length">;
  /** Torque wrench. */
  readonly torqueWrench?: InstrumentIdentity & TorqueWrench;
  /** Voltmeter. */
  readonly voltmeter?: InstrumentIdentity & Voltmeter;
  /** Gauge on the running unit. */
  readonly serviceGauge?: InstrumentIdentity & Instrument<"gaugePressure">;
  /** Thermometer on the lines of the running unit. */
  readonly lineThermometer?: InstrumentIdentity & Instrument<"temperature">;
  /** Level or laser of the drain; its limits of error stand beside each reading. */
  readonly level?: InstrumentIdentity;
}
