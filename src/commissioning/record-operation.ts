// How does the system run? Readings on gauges, in the air and on the supply of a running unit. Types only.
// Follows the inputs of operating-check.
// Does not cover how they are judged: see that module.
import type { ApproachRange, RunningMode, ServiceReading } from "../operating-check/index.ts";
import type { Quantity } from "../quantity/quantity.ts";
import type { Draft, IsoTime } from "../shapes/index.ts";

/** Superheat or subcooling of a unit that can be checked by it. */
export interface ChargeReading {
  /** Gauge reading. */
  readonly pressure?: Quantity<"gaugePressure"> | undefined;
  /** Line temperature. */
  readonly lineTemperature?: Quantity<"temperature"> | undefined;
  /** Pressure lost between gauge and thermometer. */
  readonly pressureDrop?: Quantity<"pressureDifference"> | undefined;
  /** What it should be. */
  readonly target?: Quantity<"temperatureDifference"> | undefined;
  /** How far from it is still right. */
  readonly tolerance?: Quantity<"temperatureDifference"> | undefined;
}

/**
 * Readings in the air and on the supply, for a unit on which no gauge belongs.
 */
export interface AirSideReading {
  /** Air that leaves the indoor coil; what enters it is `indoorTemperature`. */
  readonly supplyAir?: Quantity<"temperature"> | undefined;
  /** Least difference of the two that the manual asks for. */
  readonly least?: Quantity<"temperatureDifference"> | undefined;
  /** Largest difference of the two that the manual allows. */
  readonly largest?: Quantity<"temperatureDifference"> | undefined;
  /** Current of the outdoor unit. */
  readonly current?: Quantity<"current"> | undefined;
  /** Whether the compressor ran at its full speed, or in the test mode of the manual. */
  readonly fullSpeed?: boolean | undefined;
}

/** A set of readings on the running system. */
export interface OperatingReading {
  /** Names of the runs whose indoor units were read; all of them when left out. Heads that ran together and were each read have an entry each, of the same time. */
  readonly covers?: readonly string[] | undefined;
  /** What the unit did. */
  readonly mode?: RunningMode | undefined;
  /** Air that enters the indoor coil. */
  readonly indoorTemperature?: Quantity<"temperature"> | undefined;
  /** Air that enters the outdoor coil. */
  readonly outdoorTemperature?: Quantity<"temperature"> | undefined;
  /** How far the evaporating temperature may lie below its air. */
  readonly evaporatorApproach?: Draft<ApproachRange> | undefined;
  /** How far the condensing temperature may lie above its air. */
  readonly condenserApproach?: Draft<ApproachRange> | undefined;
  /** What the gauge shows. */
  readonly pressure?: Quantity<"gaugePressure"> | undefined;
  /** The port that it is on. */
  readonly port?: NonNullable<ServiceReading["port"]> | undefined;
  /** Superheat or subcooling. */
  readonly charge?: ChargeReading | undefined;
  /** Air and current, in place of a gauge. */
  readonly airSide?: AirSideReading | undefined;
  /** When. */
  readonly at?: IsoTime | undefined;
}
