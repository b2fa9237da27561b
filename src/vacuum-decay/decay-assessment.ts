// What does a verdict on a vacuum hold? The types of readings and results.
// The shape is the library's own verdict. Does not cover how it is made: assessment.ts.
import type { Assessment, Estimate } from "../assessment/assessment.ts";
import type { Quantity } from "../quantity/quantity.ts";
import type { DecayCause } from "./cause.ts";
import type { DecayFit } from "./curve/index.ts";
import type { DecayReading } from "./decay-reading.ts";
import type { ExclusionReason } from "./exclusion-reason.ts";
import type { Plateau } from "./plateau.ts";
import type { VacuumDecayStatement } from "./statements.ts";

/**
 * A reading that is not part of the evidence, and why.
 */
export interface Exclusion extends DecayReading {
  /** Position in the caller's log, from 0. */
  readonly row: number;
  /** Why. */
  readonly reason: ExclusionReason;
}

/**
 * A sudden change that no leak makes: a valve was opened or a hose moved.
 */
export interface DecayStep {
  /** When. */
  readonly elapsed: Quantity<"duration">;
  /** How far the pressure left its course. */
  readonly change: Quantity<"pressureDifference">;
}

/**
 * The share of the evidence for what matters to a system, each from 0 to 1.
 *
 * Source: JCGM 106:2012, 7, over a mixture weighed by Akaike's criterion (Burnham & Anderson, 2002, from memory).
 */
export interface EvidenceShares {
  /** A leak above what hoses may let in and 5 micron/min: the one that fails. */
  readonly leak: number;
  /** Water above 300 micron and 5 % of the rise. */
  readonly moisture: number;
  /** Either, or a rise that goes on: a pass needs this below 0.1. */
  readonly either: number;
}

/**
 * The verdict on a vacuum decay. What the readings can't tell is absent.
 *
 * Source: JCGM 106:2012 for the decision; the shape is the library's own.
 */
export interface VacuumDecayAssessment extends Assessment<DecayCause, VacuumDecayStatement> {
  /** What is behind the decay. */
  readonly cause: DecayCause;
  /** What to do next, in order; empty on a clean pass. */
  readonly actions: readonly VacuumDecayStatement[];
  /** Length of the evidence: since isolation, or since the last step. */
  readonly evidence: Quantity<"duration">;
  /** Pressure at the end of the policy's hold: measured when it is over, forecast before. With the gauge's accuracy. */
  readonly atHoldEnd?: Estimate<"absolutePressure"> | undefined;
  /** Rate of the steady rise, the leak, over all models, less what a blank test showed. */
  readonly leak?: Estimate<"pressureRate"> | undefined;
  /** 95 % two-sided interval of the leak; not symmetric when moisture could hide it. */
  readonly leakInterval?: readonly [Quantity<"pressureRate">, Quantity<"pressureRate">] | undefined;
  /** The leak as a throughput at the ambient temperature; missing without the volume. */
  readonly leakThroughput?: Estimate<"throughput"> | undefined;
  /** The smallest leak that these readings could have shown; a pass says nothing of smaller ones. */
  readonly smallestLeak?: Quantity<"pressureRate"> | undefined;
  /** The same as a throughput; missing without the volume. */
  readonly smallestLeakThroughput?: Quantity<"throughput"> | undefined;
  /** The largest leak that may pass: the policy's, in less than 3 L as much less, or the caller's smaller one. */
  readonly leakLimit: Quantity<"throughput">;
  /** What a leak of that size loses at operating pressure, least and most: R-410A at 20 °C, order of magnitude. */
  readonly lossAtLimit: readonly [Quantity<"massFlow">, Quantity<"massFlow">];
  /** Where the water levels off; missing when there is no sign of water. */
  readonly plateau?: Plateau | undefined;
  /** How likely a leak and water are that matter; missing with fewer than eight points. */
  readonly shares?: EvidenceShares | undefined;
  /** The best single model, for plotting with {@link decayCurve}; missing with fewer than four points. */
  readonly fit?: DecayFit | undefined;
  /** Readings that were set aside; the monitor keeps the first 100. */
  readonly excluded: readonly Exclusion[];
  /** How many were set aside for which reason. */
  readonly excludedCount: Readonly<Partial<Record<ExclusionReason, number>>>;
  /** Steps in the log. */
  readonly steps: readonly DecayStep[];
}
