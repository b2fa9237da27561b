// What does the building hold, and how does the unit run in it? Drain, room and operation. Types only.
// Follows the inputs of condensate, charge-limit and operating-check.
// Does not cover how they are judged: see those modules.
import type { IndoorUnitPlace, RoomUnit } from "../charge-limit/index.ts";
import type { CondensatePumpInput, DrainRoute, SlopeReading } from "../condensate/index.ts";
import type { ApproachRange, RunningMode, ServiceReading } from "../operating-check/index.ts";
import type { Quantity } from "../quantity/quantity.ts";
import type { Draft, IsoTime } from "../shapes/index.ts";

/** The condensate drain: `slope` where it runs off by itself, `pump` where it is lifted. Source: none; the library's own type. */
export interface Drain {
  /** Measured slope of the pipe. */
  readonly slope?: Draft<SlopeReading>;
  /** The slope asked for; that of the codes when left out. */
  readonly requiredSlope?: Quantity<"ratio">;
  /** Horizontal length. */
  readonly run?: Quantity<"length">;
  /** Where it runs. */
  readonly route?: Draft<DrainRoute>;
  /** Measured pitch of the indoor unit towards its drain. */
  readonly unitPitch?: Draft<SlopeReading>;
  /** The pump and what it has to do. */
  readonly pump?: Draft<CondensatePumpInput>;
  /** Whether water that was poured into the pan came out where it should. */
  readonly waterRanOff?: boolean;
  /** When it was measured. */
  readonly at?: IsoTime;
}

/** The smallest room into which the charge can leak. Source: none; the library's own type. */
export interface Room {
  /** Floor area, for flammable refrigerants. */
  readonly floorArea?: Quantity<"area">;
  /** Volume, for the concentration limit. */
  readonly volume?: Quantity<"volume">;
  /** Where the indoor unit is. */
  readonly place?: IndoorUnitPlace;
  /** Height of its underside, in place of the reference height. */
  readonly installationHeight?: Quantity<"length">;
  /** Edition of the rule. */
  readonly edition?: NonNullable<RoomUnit["edition"]>;
  /** Limits of error of the floor area, ±. */
  readonly floorAreaAccuracy?: Quantity<"area">;
  /** Limits of error of the volume, ±. */
  readonly volumeAccuracy?: Quantity<"volume">;
}

/** Superheat or subcooling of a unit that can be checked by it. Source: none; the library's own type. */
export interface ChargeReading {
  /** Gauge reading. */
  readonly pressure?: Quantity<"gaugePressure">;
  /** Line temperature. */
  readonly lineTemperature?: Quantity<"temperature">;
  /** Pressure lost between gauge and thermometer. */
  readonly pressureDrop?: Quantity<"pressureDifference">;
  /** What it should be. */
  readonly target?: Quantity<"temperatureDifference">;
  /** How far from it is still right. */
  readonly tolerance?: Quantity<"temperatureDifference">;
}

/** A set of readings on the running unit. Source: none; the library's own type. */
export interface OperatingReading {
  /** What the unit did. */
  readonly mode?: RunningMode;
  /** Air that enters the indoor coil. */
  readonly indoorTemperature?: Quantity<"temperature">;
  /** Air that enters the outdoor coil. */
  readonly outdoorTemperature?: Quantity<"temperature">;
  /** How far the evaporating temperature may lie below its air. */
  readonly evaporatorApproach?: Draft<ApproachRange>;
  /** How far the condensing temperature may lie above its air. */
  readonly condenserApproach?: Draft<ApproachRange>;
  /** What the gauge shows. */
  readonly pressure?: Quantity<"gaugePressure">;
  /** The port that it is on. */
  readonly port?: NonNullable<ServiceReading["port"]>;
  /** Superheat or subcooling. */
  readonly charge?: ChargeReading;
  /** When. */
  readonly at?: IsoTime;
}
