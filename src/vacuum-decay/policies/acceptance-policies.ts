// When is a vacuum good enough? Acceptance policies as guide specifications and manuals print them.
// Follows the source named at each policy; where a figure is from memory or common practice, it says so.
// Does not rank them: the thresholds differ by a factor of ten, so the caller chooses and names one.

import { type Citation, cite } from "../../assessment/assessment.ts";
import { frozenInPlace } from "../../quantity/frozen.ts";
import type { Quantity } from "../../quantity/quantity.ts";
import { paM3PerS } from "../../quantity/units/flow.ts";
import { micron, micronDifference, micronPerMinute, torr } from "../../quantity/units/pressure.ts";
import { hour, minute } from "../../quantity/units/time.ts";

/**
 * How sure the figures of a policy are: `published` in a source that was read, `memory`, or `practice`
 * of the trade without a source.
 */
export type PolicyStanding = "published" | "memory" | "practice";

/**
 * What has to hold at a time after isolation: a ceiling, or a rise above the pressure at isolation.
 */
export interface Checkpoint {
  /** Time after isolation. */
  readonly at: Quantity<"duration">;
  /** Largest pressure that is accepted then. */
  readonly limit?: Quantity<"absolutePressure"> | undefined;
  /** Largest rise since isolation that is accepted then; zero means none that the gauge could show. */
  readonly rise?: Quantity<"pressureDifference"> | undefined;
  /** From here on the source calls it wet or leaking; between the limit and here it is doubtful. */
  readonly failAbove?: Quantity<"absolutePressure"> | undefined;
}

/**
 * An acceptance policy: evacuate to the target, isolate, watch for the hold.
 */
export interface AcceptancePolicy {
  /** Name in kebab case. */
  readonly name: string;
  /** Pressure to reach before isolation. */
  readonly target: Quantity<"absolutePressure">;
  /** What has to hold, in order of time; the last one ends the hold. */
  readonly checkpoints: readonly Checkpoint[];
  /** Largest leak that is accepted in 3 L and more, where the source states one; in less as much less; {@link commonLeakLimit} when left out. */
  readonly leakLimit?: Quantity<"throughput"> | undefined;
  /** Whether a pass may be given before the hold is over, once the readings prove it. */
  readonly earlyPass: boolean;
  /** How sure the figures are. */
  readonly standing: PolicyStanding;
  /** Where it comes from. */
  readonly source: Citation;
}

/**
 * The largest leak that a vacuum may pass with where its policy names none: 10 micron a minute in 3 L. In more it is the
 * same throughput, the same hole; in less the same 10 micron a minute, the same part of the charge. What such a
 * leak loses under pressure is in the verdict; only the pressure test finds it.
 *
 * Source: common practice, no source; a fifth to a tenth of what the usual rises in ten minutes allow in that volume.
 */
export const commonLeakLimit: Quantity<"throughput"> = /* @__PURE__ */ paM3PerS(
  // to the twelve digits that travel as JSON
  /* @__PURE__ */ (() => Number((10 * micronPerMinute.scale * 3e-3).toPrecision(12)))(),
);

/** Names of the {@link acceptancePolicies}. */
export type PolicyName =
  | "guideSpec15182"
  | "guideSpec15741N"
  | "splitManualA"
  | "splitManualB"
  | "closeControlManual"
  | "multiSplitManualC"
  | "multiSplitManualD"
  | "distributorAdvice"
  | "ashrae15Memory"
  | "commonPractice500"
  | "provenEarly500";

/**
 * The policies by name. None of them is "the" right one: the nameplate, the manufacturer's instructions
 * and the local code say which applies.
 *
 * Source: each names its own.
 *
 * @example
 * ```ts
 * import { acceptancePolicies } from "hvac-install-math/vacuum-decay";
 *
 * acceptancePolicies.guideSpec15182.checkpoints[0]?.limit?.toString(); // => 500 micron
 * ```
 */
export const acceptancePolicies: Readonly<Record<PolicyName, AcceptancePolicy>> =
  /* @__PURE__ */ frozenInPlace({
    /** 300 micron; isolated 1 h, not above 500 micron. Source: UFGS 15182. */
    guideSpec15182: {
      name: "guide-spec-15182",
      target: /* @__PURE__ */ micron(300),
      checkpoints: [{ at: /* @__PURE__ */ hour(1), limit: /* @__PURE__ */ micron(500) }],
      leakLimit: commonLeakLimit,
      earlyPass: false,
      standing: "published",
      source: /* @__PURE__ */ cite("ufgs-15182"),
    },
    /** 300 micron by triple evacuation, held for 2 h. Source: UFGS 15741N. */
    guideSpec15741N: {
      name: "guide-spec-15741n",
      target: /* @__PURE__ */ micron(300),
      checkpoints: [{ at: /* @__PURE__ */ hour(2), limit: /* @__PURE__ */ micron(300) }],
      leakLimit: commonLeakLimit,
      earlyPass: false,
      standing: "published",
      source: /* @__PURE__ */ cite("ufgs-15741n"),
    },
    /** 500 micron; after 15 min below 700 micron, from 800 micron on wet or leaking. Source: a split manual. */
    splitManualA: {
      name: "split-manual-a",
      target: /* @__PURE__ */ micron(500),
      checkpoints: [
        {
          at: /* @__PURE__ */ minute(15),
          limit: /* @__PURE__ */ micron(700),
          failAbove: /* @__PURE__ */ micron(800),
        },
      ],
      leakLimit: commonLeakLimit,
      earlyPass: false,
      standing: "published",
      source: /* @__PURE__ */ cite("manufacturer-manuals", "split A"),
    },
    /** 500 micron; not above it after 20 min. Source: a split manual. */
    splitManualB: {
      name: "split-manual-b",
      target: /* @__PURE__ */ micron(500),
      checkpoints: [{ at: /* @__PURE__ */ minute(20), limit: /* @__PURE__ */ micron(500) }],
      leakLimit: commonLeakLimit,
      earlyPass: false,
      standing: "published",
      source: /* @__PURE__ */ cite("manufacturer-manuals", "split B"),
    },
    /** 500 micron; 30 min not above 500, another 30 min not above 750 micron. Source: a close-control unit's manual. */
    closeControlManual: {
      name: "close-control-manual",
      target: /* @__PURE__ */ micron(500),
      checkpoints: [
        { at: /* @__PURE__ */ minute(30), limit: /* @__PURE__ */ micron(500) },
        { at: /* @__PURE__ */ hour(1), limit: /* @__PURE__ */ micron(750) },
      ],
      leakLimit: commonLeakLimit,
      earlyPass: false,
      standing: "published",
      source: /* @__PURE__ */ cite("manufacturer-manuals", "close-control unit"),
    },
    /** 500 micron for 2 h; isolated 1 h without increase. Source: a multi-split manual. */
    multiSplitManualC: {
      name: "multi-split-manual-c",
      target: /* @__PURE__ */ micron(500),
      checkpoints: [{ at: /* @__PURE__ */ hour(1), rise: /* @__PURE__ */ micronDifference(0) }],
      leakLimit: commonLeakLimit,
      earlyPass: false,
      standing: "published",
      source: /* @__PURE__ */ cite("manufacturer-manuals", "multi-split C"),
    },
    /** 5 torr (−755 mmHg at sea level) for 1 to 2 h; isolated 1 h, no rise on the gauge; ten times weaker than 500 micron. Source: multi-split manuals. */
    multiSplitManualD: {
      name: "multi-split-manual-d",
      target: /* @__PURE__ */ torr(5),
      checkpoints: [{ at: /* @__PURE__ */ hour(1), rise: /* @__PURE__ */ micronDifference(0) }],
      leakLimit: commonLeakLimit,
      earlyPass: false,
      standing: "published",
      source: /* @__PURE__ */ cite("manufacturer-manuals", "multi-split D, E"),
    },
    /** 250 micron; after 10 min steady at 1000 micron or less, above 2000 micron a leak. Source: advice of a parts distributor. */
    distributorAdvice: {
      name: "distributor-advice",
      target: /* @__PURE__ */ micron(250),
      checkpoints: [
        {
          at: /* @__PURE__ */ minute(10),
          limit: /* @__PURE__ */ micron(1000),
          failAbove: /* @__PURE__ */ micron(2000),
        },
      ],
      leakLimit: commonLeakLimit,
      earlyPass: false,
      standing: "published",
      source: /* @__PURE__ */ cite("manufacturer-manuals", "distributor's advice"),
    },
    /** 500 micron, isolated rise to no more than 1500 micron in 10 min. Source: ASHRAE 15-2022, from memory with low confidence: verify before use. */
    ashrae15Memory: {
      name: "ashrae-15-2022-from-memory",
      target: /* @__PURE__ */ micron(500),
      checkpoints: [{ at: /* @__PURE__ */ minute(10), limit: /* @__PURE__ */ micron(1500) }],
      leakLimit: commonLeakLimit,
      earlyPass: false,
      standing: "memory",
      source: /* @__PURE__ */ cite("ashrae-15-2022"),
    },
    /** 500 micron, a rise of less than 500 micron in 10 min; the hold has to be kept to the end. Source: common practice, no source. */
    commonPractice500: {
      name: "common-practice-500",
      target: /* @__PURE__ */ micron(500),
      checkpoints: [
        { at: /* @__PURE__ */ minute(10), rise: /* @__PURE__ */ micronDifference(500) },
      ],
      leakLimit: commonLeakLimit,
      earlyPass: false,
      standing: "practice",
      source: /* @__PURE__ */ cite("common-practice"),
    },
    /** 500 micron, a rise of less than 500 micron in 10 min, decided as soon as the readings prove it. Source: the figures are common practice, no source; the early decision is the library's own. */
    provenEarly500: {
      name: "proven-early-500",
      target: /* @__PURE__ */ micron(500),
      checkpoints: [
        { at: /* @__PURE__ */ minute(10), rise: /* @__PURE__ */ micronDifference(500) },
      ],
      leakLimit: commonLeakLimit,
      earlyPass: true,
      standing: "practice",
      source: /* @__PURE__ */ cite("common-practice"),
    },
  });
