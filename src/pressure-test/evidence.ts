// What has been found of a hold before it is judged?
// Follows no standard. Does not cover the verdict: judge.ts.

import type { Limit } from "./criterion.ts";
import type { Decision } from "./decide.ts";
import type { Gas, ReadingUnits, State } from "./setup.ts";
import type { PressureTestStatement } from "./statements.ts";
import type { Share } from "./uncertainty-part.ts";

/** What was decided, with U of the drop, the seconds that would decide or prove less, and the leak where it is known; SI. */
export interface Found extends Decision {
  readonly U: number;
  /** No tight system would pass a hold of this length. */
  readonly inVain: boolean;
  readonly further: number;
  /** The hold that would prove about half of what this one does. */
  readonly longer: number;
  readonly leak: number | undefined;
  readonly smallestLeak: number | undefined;
}

/** Why a test cannot pass, and what to do about it. */
export interface Doubt {
  readonly reason: PressureTestStatement;
  readonly action: PressureTestStatement;
}

/** What makes a leak of a drop, in SI; volume and seconds 0 when unknown. */
export interface LeakFactors {
  readonly seconds: number;
  readonly volume: number;
  /** Relative standard uncertainty of the volume. */
  readonly volumeError: number;
  /** kg/m³ lost per Pa of drop. */
  readonly densityPerPascal: number;
}

/** What the judge needs, in SI. */
export interface Evidence extends LeakFactors, ReadingUnits {
  readonly drop: number;
  readonly shares: readonly Share[];
  readonly gas: Gas;
  readonly limit: Limit | undefined;
  /** First and last reading, and whether they are gauge readings. */
  readonly first: State;
  readonly last: State;
  readonly isGauge: boolean;
  /** Absolute pressure of the first reading at the temperature of the last, Pa. */
  readonly expected: number;
  readonly confidence: number | undefined;
  readonly doubts: readonly Doubt[];
  /** Reasons that decide nothing: where a log jumped before the hold. */
  readonly notes?: readonly PressureTestStatement[];
  readonly assumptions: readonly PressureTestStatement[];
}
