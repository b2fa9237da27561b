// What was measured with? Instruments with accuracy and calibration, which an app keeps once and a record refers to.
// Follows data sheets and certificates, by the inputs of the modules. Types only.
// Does not cover how the figures are judged: see the modules.
import type { Instrument, Meter } from "../assessment/uncertainty.ts";
import type { TorqueWrench } from "../flare-joint/index.ts";
import type { GasThermometer, TestGauge } from "../pressure-test/index.ts";
import type { Draft, IsoTime } from "../shapes/index.ts";
import type { Voltmeter } from "../supply-voltage/index.ts";
import type { VacuumGauge } from "../vacuum-decay/index.ts";

/** Which instrument it is and how long its calibration holds. */
export interface InstrumentIdentity {
  /** What it is. */
  readonly name?: string | undefined;
  /** Serial number. */
  readonly serialNumber?: string | undefined;
  /** Date of its last calibration. */
  readonly calibratedOn?: IsoTime | undefined;
  /** Last day on which that calibration holds. */
  readonly calibrationDue?: IsoTime | undefined;
}

/**
 * The instruments with their accuracy and calibration.
 *
 * Source: their data sheets and certificates.
 */
export interface Instruments {
  /** Gauge of the pressure test. */
  readonly testGauge?: (InstrumentIdentity & TestGauge) | undefined;
  /** Thermometer of the pressure test. */
  readonly gasThermometer?: (InstrumentIdentity & GasThermometer) | undefined;
  /** Vacuum gauge. */
  readonly vacuumGauge?: (InstrumentIdentity & Draft<VacuumGauge>) | undefined;
  /** Charging scale. */
  readonly scale?: (InstrumentIdentity & Instrument<"mass">) | undefined;
  /** Tape or measuring wheel for the tubing. */
  readonly tape?: (InstrumentIdentity & Instrument<"length">) | undefined;
  /** Torque wrench. */
  readonly torqueWrench?: (InstrumentIdentity & TorqueWrench) | undefined;
  /** Voltmeter. */
  readonly voltmeter?: (InstrumentIdentity & Voltmeter) | undefined;
  /** Gauge on the running unit. */
  readonly serviceGauge?: (InstrumentIdentity & Instrument<"gaugePressure">) | undefined;
  /** Thermometer on the lines of the running unit. */
  readonly lineThermometer?: (InstrumentIdentity & Instrument<"temperature">) | undefined;
  /** Level or laser of the drain; its limits of error stand beside each reading. */
  readonly level?: InstrumentIdentity | undefined;
  /** Thermometer in the air of the running unit. */
  readonly airThermometer?: (InstrumentIdentity & Instrument<"temperature">) | undefined;
  /** Clamp meter on the running unit; "±(2 % + 5 counts)" as {@link Meter} shows. */
  readonly clampMeter?: (InstrumentIdentity & Meter<"current">) | undefined;
}
