// What lies between two units? One run of line with its joints, and the room and drain at its end. Types only.
// Follows the inputs of line-set, flare-joint, condensate and charge-limit.
// Does not cover how they are judged: see those modules.
import type { IndoorUnitPlace, RoomUnit } from "../charge-limit/index.ts";
import type { CondensatePumpInput, DrainRoute, SlopeReading } from "../condensate/index.ts";
import type { FlareLimits, FlareTube } from "../flare-joint/index.ts";
import type { ChargeRate, LineRunInput, RunLimits, TubeSize } from "../line-set/index.ts";
import type { Quantity } from "../quantity/quantity.ts";
import type { Draft, IsoTime } from "../shapes/index.ts";
import type { UnitPlate } from "./record-equipment.ts";

/**
 * One run: a liquid and a vapor line between the outdoor unit, or a branch box, and what stands at their other end.
 */
export interface Run {
  /** Its own name, by which tests and readings refer to it: `living room`, `A`. */
  readonly name?: string | undefined;
  /** Port of the outdoor unit or branch box, as it is marked. */
  readonly port?: string | undefined;
  /** What stands at its end; an indoor unit when left out. A run to a branch box has no room and drain to ask for. */
  readonly serves?: "indoor-unit" | "branch-box" | undefined;
  /** The indoor unit; several where branches of this run serve them together. */
  readonly indoorUnits?: readonly UnitPlate[] | undefined;
  /** The lines. */
  readonly tubing?: Tubing | undefined;
  /** Every joint of the lines. */
  readonly joints?: readonly Joint[] | undefined;
  /** What the manual says of this run in place of what it says of all. */
  readonly manual?: RunManual | undefined;
  /** The condensate drain of its indoor unit. */
  readonly drain?: Drain | undefined;
  /** The smallest room into which refrigerant can leak at its indoor unit; of a monobloc the room that it stands in. */
  readonly room?: Room | undefined;
}

/** Limits and charge rule of one run, where they differ from those of all. Source: the manual of the unit. */
export interface RunManual {
  /** Limits of the run. */
  readonly run?: Draft<RunLimits> | undefined;
  /** Length of line that the factory charge covers on this run. */
  readonly preChargedLength?: Quantity<"length"> | undefined;
  /** Added charge per length. */
  readonly chargeRate?: Draft<ChargeRate> | undefined;
  /** Mass that the manual adds for this indoor unit, or takes off (negative), whatever the length. */
  readonly chargeAllowance?: Quantity<"mass"> | undefined;
}

/** The lines as they run. */
export interface Tubing {
  /** Liquid line. */
  readonly liquid?: Draft<TubeSize> | undefined;
  /** Vapor line. */
  readonly vapor?: Draft<TubeSize> | undefined;
  /** The way along the wall, bends followed, as it was paced off before the tube was cut. */
  readonly way?: Quantity<"length"> | undefined;
  /** Length one way, with what is coiled up. */
  readonly length?: Quantity<"length"> | undefined;
  /**
   * Whether the length was measured, or is the nominal length of a factory-made line set that was not cut: then no tape
   * stands behind it. When left out, `nominal` for pre-charged lines with couplings, otherwise `measured`.
   */
  readonly lengthIs?: LineRunInput["lengthIs"];
  /** Height difference of the units. */
  readonly lift?: Quantity<"length"> | undefined;
  /** Where the outdoor unit stands. */
  readonly outdoorUnit?: LineRunInput["outdoorUnit"] | undefined;
  /** Number of bends. */
  readonly bends?: number | undefined;
  /** How many joints there are, where they are more than one at each end of each line: adapters, couplings. */
  readonly jointCount?: number | undefined;
  /** Inner volume of all else on this run that is tested together with the tubes: coils, manifold. */
  readonly otherVolume?: Quantity<"volume"> | undefined;
  /** When it was measured. */
  readonly at?: IsoTime | undefined;
}

/**
 * One joint. A flare needs `torque` or `turn`, and its `tube` or its `line`; a brazed joint `nitrogenFlowed`; a pressed joint and a
 * pre-charged coupling `inspected`.
 */
export interface Joint {
  /** Where it is; by line and end where left out. */
  readonly name?: string | undefined;
  /** The line on which it is. */
  readonly line?: "liquid" | "vapor" | undefined;
  /** The end of the line at which it is. */
  readonly end?: "indoor" | "outdoor" | "between" | undefined;
  /** How it was made; a flare where a torque or a turn is stated. */
  readonly kind?: "flare" | "brazed" | "pressed" | "coupling" | undefined;
  /** Size of a flared tube; that of its line where left out. */
  readonly tube?: FlareTube | undefined;
  /** Torque at which the wrench clicked. */
  readonly torque?: Quantity<"torque"> | undefined;
  /** The manual's window of torque. */
  readonly torqueWindow?: Draft<FlareLimits<"torque">> | undefined;
  /** Whether the manual was read again and says so: then its window decides, whatever else is published. */
  readonly manualReadAgain?: boolean | undefined;
  /** Turn from the point where the torque rises, where there was no wrench. */
  readonly turn?: Quantity<"angle"> | undefined;
  /** Outside diameter of the flare. */
  readonly flareDiameter?: Quantity<"length"> | undefined;
  /** Whether nitrogen flowed through the tube while it was brazed. */
  readonly nitrogenFlowed?: boolean | undefined;
  /** Whether it was looked at, or leak-tested once it held refrigerant, and found right. */
  readonly inspected?: boolean | undefined;
  /** When it was made. */
  readonly at?: IsoTime | undefined;
}

/** The condensate drain: `slope` where it runs off by itself, `pump` where it is lifted. */
export interface Drain {
  /** Measured slope of the pipe; beside a pump, of the part that still drains by gravity, if any. */
  readonly slope?: Draft<SlopeReading> | undefined;
  /** Whether the pipe falls straight down from the unit, so that it has no slope to measure. */
  readonly vertical?: boolean | undefined;
  /** The slope asked for; that of the codes when left out. */
  readonly requiredSlope?: Quantity<"ratio"> | undefined;
  /** Horizontal length. */
  readonly run?: Quantity<"length"> | undefined;
  /** Height from the outlet of the pan, or of its trap, down to the discharge; negative where that lies higher. Not judged beside a pump. */
  readonly fall?: Quantity<"length"> | undefined;
  /** Static pressure at the pan against the room, with dirty filters; 0 for most wall units. */
  readonly panPressure?: Quantity<"pressureDifference"> | undefined;
  /** Where it runs. */
  readonly route?: Draft<DrainRoute> | undefined;
  /** Measured pitch of the indoor unit towards its drain. */
  readonly unitPitch?: Draft<SlopeReading> | undefined;
  /** The pump and what it has to do. */
  readonly pump?: Draft<CondensatePumpInput> | undefined;
  /** Whether water that was poured into the pan came out where it should. */
  readonly waterRanOff?: boolean | undefined;
  /** When it was measured. */
  readonly at?: IsoTime | undefined;
}

/** The smallest room into which the charge can leak. */
export interface Room {
  /** Floor area, for flammable refrigerants. */
  readonly floorArea?: Quantity<"area"> | undefined;
  /** Volume, for the concentration limit. */
  readonly volume?: Quantity<"volume"> | undefined;
  /** Height of the ceiling: holds area and volume against each other. */
  readonly ceilingHeight?: Quantity<"length"> | undefined;
  /** Where the indoor unit is; one of this and `installationHeight`. */
  readonly place?: IndoorUnitPlace | undefined;
  /** Height of its underside, where the manual states one; one of this and `place`. */
  readonly installationHeight?: Quantity<"length"> | undefined;
  /** Edition of the rule. */
  readonly edition?: NonNullable<RoomUnit["edition"]> | undefined;
  /** Limits of error of the floor area, ±. */
  readonly floorAreaAccuracy?: Quantity<"area"> | undefined;
  /** Limits of error of the volume, ±. */
  readonly volumeAccuracy?: Quantity<"volume"> | undefined;
}
