// How was the refrigerant circuit made tight, dry and full? The parts of a record up to the charge. Types only.
// Follows the inputs of line-set, flare-joint, pressure-test and vacuum-decay.
// Does not cover how they are judged: see those modules.
import type { FlareLimits, FlareTube } from "../flare-joint/index.ts";
import type { LineRunInput, TubeSize } from "../line-set/index.ts";
import type { PressureTestCriterion, TestReading, Wall } from "../pressure-test/index.ts";
import type { Quantity } from "../quantity/quantity.ts";
import type { Draft, IsoTime } from "../shapes/index.ts";
import type {
  BlankTest,
  DecayReading,
  PolicyName,
  PumpIsolation,
  VacuumDecayOptions,
  VacuumHoses,
} from "../vacuum-decay/index.ts";

/** The line set as it runs. Source: none; the library's own type. */
export interface Tubing {
  /** Liquid line. */
  readonly liquid?: Draft<TubeSize>;
  /** Vapour line. */
  readonly vapor?: Draft<TubeSize>;
  /** Length one way, with what is coiled up. */
  readonly length?: Quantity<"length">;
  /** Height difference of the units. */
  readonly lift?: Quantity<"length">;
  /** Where the outdoor unit stands. */
  readonly outdoorUnit?: LineRunInput["outdoorUnit"];
  /** Number of bends. */
  readonly bends?: number;
  /** How many joints there are, so that a joint without an entry shows. */
  readonly jointCount?: number;
  /** Inner volume of all else that is tested together with the tubes: coils, manifold. */
  readonly otherVolume?: Quantity<"volume">;
  /** When it was measured. */
  readonly at?: IsoTime;
}

/**
 * One joint. A flare needs `tube` and `torque` or `turn`; a brazed joint `nitrogenFlowed`; a pressed one
 * `inspected`.
 *
 * Source: none; the library's own type.
 */
export interface Joint {
  /** Where it is. */
  readonly name?: string;
  /** How it was made. */
  readonly kind?: "flare" | "brazed" | "pressed";
  /** Outside diameter of a flared tube in inches. */
  readonly tube?: FlareTube;
  /** Torque at which the wrench clicked. */
  readonly torque?: Quantity<"torque">;
  /** The manual's window of torque. */
  readonly torqueWindow?: Draft<FlareLimits<"torque">>;
  /** Turn from the point where the torque rises, where there was no wrench. */
  readonly turn?: Quantity<"angle">;
  /** Outside diameter of the flare. */
  readonly flareDiameter?: Quantity<"length">;
  /** Whether nitrogen flowed through the tube while it was brazed. */
  readonly nitrogenFlowed?: boolean;
  /** Whether it was looked at and found right. */
  readonly inspected?: boolean;
  /** When it was made. */
  readonly at?: IsoTime;
}

/** The nitrogen test. Source: none; the library's own type. */
export interface PressureTestPart {
  /** Two readings or more, in order. Three or more need `elapsed`. */
  readonly readings?: readonly Draft<TestReading>[];
  /** The limit that was stated; without one nothing passes. */
  readonly criterion?: Draft<PressureTestCriterion>;
  /** What the walls are made of. */
  readonly wall?: Wall;
  /** When the last reading was taken. */
  readonly at?: IsoTime;
}

/** The watch after the evacuation. Source: none; the library's own type. */
export interface Evacuation {
  /** The log since the pump was valved off. */
  readonly readings?: readonly Draft<DecayReading>[];
  /** Name of the acceptance policy, a key of `acceptancePolicies`. */
  readonly policy?: PolicyName;
  /** Temperature of the warmest part. */
  readonly ambient?: Quantity<"temperature">;
  /** Temperature of the coldest part. */
  readonly coldest?: Quantity<"temperature">;
  /** Largest leak that is accepted. */
  readonly leakLimit?: NonNullable<VacuumDecayOptions["leakLimit"]>;
  /** How the pump was shut off; a pressure that falls or stays flat is believed only where it is known. */
  readonly isolation?: PumpIsolation;
  /** Hoses within the isolated part. */
  readonly hoses?: Draft<VacuumHoses>;
  /** What hoses and gauge did by themselves. */
  readonly blankTest?: Draft<BlankTest>;
  /** When the last reading was taken. */
  readonly at?: IsoTime;
}

/** What was weighed in. Source: none; the library's own type. */
export interface Charge {
  /** Added to the factory charge; negative when taken out. */
  readonly added?: Quantity<"mass">;
  /** How far from the manual's figure is still right. */
  readonly tolerance?: Quantity<"mass">;
  /** When. */
  readonly at?: IsoTime;
}
