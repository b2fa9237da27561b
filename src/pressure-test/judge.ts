// From a drop and its uncertainty to the verdict: decides (decide.ts), computes (figures.ts), says (reasons.ts, actions.ts).
// Follows JCGM 106:2012, 8.3.2 and 8.3.3 (guarded acceptance and rejection).
// Does not cover where the leak is: bubbles, tracer gas, sections do.
import { type Citation, cite, verdict } from "../assessment/assessment.ts";
import { caution } from "../assessment/caution.ts";
import { Quantity } from "../quantity/quantity.ts";
import { hour } from "../quantity/units/time.ts";
import { actionsFor } from "./actions.ts";
import { dangers } from "./cautions.ts";
import { coverage, decide } from "./decide.ts";
import { combined } from "./drop.ts";
import type { Evidence, Found } from "./evidence.ts";
import { estimate, growthOf, holdToDecide, holdToHalve, leakFigures } from "./figures.ts";
import { reasonsFor, smallestFinding } from "./reasons.ts";
import type { PressureTestAssessment } from "./verdict.ts";

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
  const growth = growthOf(evidence, u);
  // Where no tight system would pass, no wait helps: the uncertainty grows with the hold.
  const inVain = limit !== undefined && !limit.isRate && drop < limit.drop && k * u > limit.drop;
  const further = isOpen && !inVain ? holdToDecide(drop, limit, seconds, k * uLimit, growth) : 0;
  const leak = leakFigures(drop, u, k, evidence);
  const found: Found = {
    ...decision,
    U: k * u,
    inVain,
    further,
    longer: holdToHalve(seconds, growth),
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
