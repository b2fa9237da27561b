// How was the refrigerant circuit made tight, dry and full? Tests, evacuations and charge of a record. Types only.
// Follows the inputs of pressure-test, vacuum-decay and line-set.
// Does not cover how they are judged: see those modules.
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

/**
 * What a test has to reach where the manual does not say, and on whose word.
 *
 * Source: none; the library's own type.
 */
export interface TestRequirement {
  /** Least pressure of the test. */
  readonly pressure?: Quantity<"gaugePressure">;
  /** Shortest hold. */
  readonly hold?: Quantity<"duration">;
  /** Where these figures come from. */
  readonly standing?: "adopted-code" | "manufacturer" | "common-practice";
}

/** A nitrogen test. Source: none; the library's own type. */
export interface PressureTestPart {
  /** Names of the runs that it covers; all of them when left out. */
  readonly covers?: readonly string[];
  /** Two readings or more, in order. Three or more need `elapsed`. */
  readonly readings?: readonly Draft<TestReading>[];
  /** The limit that was stated; without one nothing passes. */
  readonly criterion?: Draft<PressureTestCriterion>;
  /** Pressure and hold where the manual says nothing. */
  readonly requirement?: TestRequirement;
  /** What the walls are made of. */
  readonly wall?: Wall;
  /** When the last reading was taken. */
  readonly at?: IsoTime;
}

/** The watch after an evacuation. Source: none; the library's own type. */
export interface Evacuation {
  /** Names of the runs that it covers; all of them when left out. */
  readonly covers?: readonly string[];
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
  /** How it was fed: a blend is charged as liquid, or its make-up shifts. */
  readonly fedAs?: "liquid" | "vapor";
  /** When. */
  readonly at?: IsoTime;
}
