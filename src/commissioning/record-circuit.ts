// How was the refrigerant circuit made tight, dry and full? Tests, evacuations and charge of a record. Types only.
// Follows the inputs of pressure-test, vacuum-decay and line-set.
// Does not cover how they are judged: see those modules.
import type {
  GasElsewhere,
  PressureTestCriterion,
  TestReading,
  Wall,
} from "../pressure-test/index.ts";
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
 */
export interface TestRequirement {
  /** Least pressure of the test. */
  readonly pressure?: Quantity<"gaugePressure"> | undefined;
  /** Shortest hold. */
  readonly hold?: Quantity<"duration"> | undefined;
  /** Where these figures come from. */
  readonly standing?: "adopted-code" | "manufacturer" | "common-practice" | undefined;
}

/** A nitrogen test. */
export interface PressureTestPart {
  /** Names of the runs that it covers; all of them when left out. */
  readonly covers?: readonly string[] | undefined;
  /** Two readings or more, in order. Three or more need `elapsed`. */
  readonly readings?: readonly Draft<TestReading>[] | undefined;
  /** The limit that was stated; without one nothing passes. */
  readonly criterion?: Draft<PressureTestCriterion> | undefined;
  /** Pressure and hold where the manual says nothing. */
  readonly requirement?: TestRequirement | undefined;
  /** What the walls are made of. */
  readonly wall?: Wall | undefined;
  /** Time from the end of the fill to the first reading; without it the gas counts as warm from the fill. */
  readonly sinceFill?: Quantity<"duration"> | undefined;
  /** What part of the gas lies where no thermometer is. */
  readonly elsewhere?: Draft<GasElsewhere> | undefined;
  /** Share of the volume at each thermometer, in the order of the temperatures of a reading, 100 % together; needed where readings have several. */
  readonly zoneShares?: readonly Quantity<"ratio">[] | undefined;
  /** When the last reading was taken. */
  readonly at?: IsoTime | undefined;
}

/** The watch after an evacuation. */
export interface Evacuation {
  /** Names of the runs that it covers; all of them when left out. */
  readonly covers?: readonly string[] | undefined;
  /** The log since the pump was valved off. */
  readonly readings?: readonly Draft<DecayReading>[] | undefined;
  /** Name of the acceptance policy, a key of `acceptancePolicies`. */
  readonly policy?: PolicyName | undefined;
  /** Temperature of the warmest part. */
  readonly ambient?: Quantity<"temperature"> | undefined;
  /** Temperature of the coldest part. */
  readonly coldest?: Quantity<"temperature"> | undefined;
  /** Largest leak that is accepted. */
  readonly leakLimit?: NonNullable<VacuumDecayOptions["leakLimit"]> | undefined;
  /** How the pump was shut off; a pressure that falls or stays flat is believed only where it is known. */
  readonly isolation?: PumpIsolation | undefined;
  /** Hoses within the isolated part. */
  readonly hoses?: Draft<VacuumHoses> | undefined;
  /** What hoses and gauge did by themselves. */
  readonly blankTest?: Draft<BlankTest> | undefined;
  /** When the last reading was taken. */
  readonly at?: IsoTime | undefined;
}

/** What was weighed in. */
export interface Charge {
  /** Added to the factory charge; negative when taken out. */
  readonly added?: Quantity<"mass"> | undefined;
  /** How far from the manual's figure is still right. */
  readonly tolerance?: Quantity<"mass"> | undefined;
  /** How it was fed: a blend is charged as liquid, or its make-up shifts. */
  readonly fedAs?: "liquid" | "vapor" | undefined;
  /** When. */
  readonly at?: IsoTime | undefined;
}
