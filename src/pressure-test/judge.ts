// From a drop and its uncertainty to the verdict: decides (decide.ts), computes (figures.ts), says (reasons.ts, actions.ts).
// Follows JCGM 106:2012, 8.3.2 and 8.3.3 (guarded acceptance and rejection).
// Does not cover where the leak is: bubbles, tracer gas, sections do.
import { type Citation, cite, verdict } from "../assessment/assessment.ts";
import { caution } from "../assessment/caution.ts";
import { Quantity, type Unit } from "../quantity/quantity.ts";
import { hour } from "../quantity/units/time.ts";
import { actionsFor } from "./actions.ts";
import { dangers } from "./cautions.ts";
import type { Limit } from "./criterion.ts";
import { coverage, type Decision, decide } from "./decide.ts";
import { combined, type Share } from "./drop.ts";
import { estimate, holdToDecide, type LeakFactors, leakFigures } from "./figures.ts";
import type { Doubt } from "./plausible.ts";
import { reasonsFor, smallestFinding } from "./reasons.ts";
import type { State } from "./setup.ts";
import type { PressureTestStatement } from "./statements.ts";
import type { PressureTestAssessment } from "./verdict.ts";

/** What the judge needs, in SI. */
export interface Evidence extends LeakFactors {
  readonly drop: number;
  readonly shares: readonly Share[];
  readonly limit: Limit | undefined;
  /** First and last reading, and whether they are gauge readings. */
  readonly first: State;
  readonly last: State;
  readonly isGauge: boolean;
  /** Absolute pressure of the first reading at the temperature of the last, Pa. */
  readonly expected: number;
  readonly confidence: number | undefined;
  readonly doubts: readonly Doubt[];
  /** Whether part of the gas lies elsewhere was not stated and may decide. */
  readonly asksElsewhere: boolean;
  readonly assumptions: readonly PressureTestStatement[];
  readonly unit: Unit<"pressureDifference">;
}

/** What was decided, with U of the drop, the seconds more that would decide, and the leak where it is known; SI. */
export interface Found extends Decision {
  readonly U: number;
  readonly further: number;
  readonly leak: number | undefined;
  readonly smallestLeak: number | undefined;
}

const sources: readonly Citation[] = /* @__PURE__ */ (() => [
  cite("span-2000"),
  cite("jcgm-100-2008", "5.1, 5.2"),
  cite("jcgm-106-2012", "8.3"),
  cite("ashrae-15-2022", "field leak test"),
  cite("umc"),
])();

/** The verdict, with what its caller adds. */
export function judge(evidence: Evidence): PressureTestAssessment {
  const { drop, shares, limit, seconds, volumeError, unit, confidence, doubts } = evidence;
  const { k } = coverage(confidence);
  const u = combined(shares);
  // A limit on the leak rate hangs on the volume too.
  const uLimit = limit?.isLeak ? Math.hypot(u, drop * volumeError) : u;
  const isDoubted = doubts.length > 0;
  const decision = decide({ drop, u, uLimit, confidence, limit, isDoubted });
  const { outcome, cause, ruling, probability } = decision;
  const isOpen = outcome === "inconclusive" && cause === undefined && ruling !== "within";
  const further = isOpen ? holdToDecide(drop, limit, seconds, k * uLimit) : 0;
  const leak = leakFigures(drop, u, k, evidence);
  const found: Found = {
    ...decision,
    U: k * u,
    further,
    leak: leak.leakRate?.value.si,
    smallestLeak: leak.smallestProvableLeak?.si,
  };
  return verdict({
    outcome,
    ...(cause && { cause }),
    correctedDrop: estimate(drop, u, k, unit),
    uncertaintyBudget: shares.map((share) => ({
      part: share.part,
      standardUncertainty: new Quantity(share.u, unit),
    })),
    ...(limit && { limit: new Quantity(limit.drop, unit), conformanceProbability: probability }),
    smallestProvableDrop: new Quantity(k * u, unit),
    noLeakAbove: new Quantity(Math.max(drop, 0) + k * u, unit),
    ...leak,
    ...(further > 0 && { furtherHold: new Quantity(further, hour) }),
    reasons: reasonsFor(evidence, found),
    assumptions: evidence.assumptions,
    cautions: [caution("finding", smallestFinding(evidence, found)), ...dangers],
    actions: actionsFor(evidence, found),
    sources,
  });
}
