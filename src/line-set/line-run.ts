// Is this run allowed? Length, lift, bends, oil traps and extra oil against the manual's limits.
// Follows manufacturers' published manuals, brands withheld; limits with uncertainty by JCGM 106:2012, 8.2 and 8.3.
// Does not cover limits that the manual does not state: none is assumed.
import { cite, verdict } from "../assessment/assessment.ts";
import { danger } from "../assessment/safety.ts";
import { askOneOf, objectOf, oneOf, siOf, wholeNumberOf } from "../quantity/check.ts";
import { InvalidInputError } from "../quantity/errors.ts";
import { Quantity } from "../quantity/quantity.ts";
import { decide, type Finding, heldTo } from "./decide.ts";
import { manuals } from "./line-cautions.ts";
import { oilOf, trapsOf } from "./line-oil.ts";
import type { RunLimits } from "./run-limits.ts";
import { say, type Verdict } from "./statements.ts";
import { lengthOf } from "./tube.ts";

/**
 * The run as it is or will be.
 */
export interface LineRunInput {
  /** Length of tube one way, coils included, 0 to 1000 m. */
  readonly length: Quantity<"length">;
  /**
   * Whether the length was measured, or is the nominal length of a factory-made line set that was not cut; `measured`
   * when left out. A manual's limits are of nominal lengths, so a nominal length has no uncertainty before them, even
   * where it equals the longest. Source: common practice, no source.
   */
  readonly lengthIs?: "measured" | "nominal" | undefined;
  /** Height difference of the units, 0 or more. */
  readonly lift: Quantity<"length">;
  /** Where the outdoor unit stands. */
  readonly outdoorUnit: "above" | "below" | "level";
  /** Number of bends, a whole number from 0 to 1000. */
  readonly bends?: number | undefined;
  /** Standard uncertainty (k = 1) of what was measured of length and lift, 0 when left out. */
  readonly standardUncertainty?: Quantity<"length"> | undefined;
  /** What the manual allows. */
  readonly limits: RunLimits;
}

/**
 * The verdict on a run.
 */
export interface LineRunAssessment extends Verdict {
  /** Length plus what the bends count for. */
  readonly equivalentLength: Quantity<"length">;
  /** Oil traps in the vapor riser by the manual's rule, without the one at its foot. */
  readonly oilTraps: number;
  /** Oil to add by the manual's rule. */
  readonly extraOil: Quantity<"volume">;
}

/**
 * Holds length, lift and bends of a run against the manual's limits, and counts oil traps and extra oil
 * by the manual's rule.
 *
 * Assumes one vapor and one liquid line of the same length. Traps are counted only where the vapor
 * rises in cooling, that is, where the outdoor unit is above; the top of the riser needs none.
 *
 * A manual's limits of length and height are limits of design, with their margin in them: what is measured as within
 * one passes as measured where the expanded uncertainty (k = 2) is at most 5 % of the limit (simple acceptance), and
 * with guard bands where it is more. What is measured beyond one fails where the uncertainty excludes that it is kept.
 *
 * @param input - The run and the limits; at least one limit.
 * @returns The verdict with equivalent length, traps and oil. `inconclusive` where the length is measured beyond a
 * limit by less than its uncertainty, or bends that count were not counted.
 * @throws {@link InvalidInputError} when no limit is given, the lift is more than the length, or an
 * argument is missing, of another kind or impossible.
 * Cautions: work at height; the manual decides.
 *
 * Source: manufacturers' published manuals, brands withheld; JCGM 106:2012, 8.2 (simple acceptance) and 8.3; the 5 %
 * are common practice, no source.
 *
 * @example
 * ```ts
 * import { assessLineRun } from "hvac-install-math/line-set";
 * import { m, mL } from "hvac-install-math/quantity";
 *
 * const run = assessLineRun({
 *   length: m(18),
 *   lift: m(14),
 *   outdoorUnit: "above",
 *   limits: {
 *     maximumLength: m(25),
 *     maximumLift: m(15),
 *     oilTraps: { above: m(10), spacing: m(6) },
 *     extraOil: { beyond: m(10), per: m(5), volume: mL(5) },
 *   },
 * });
 * run.outcome; // => pass
 * run.oilTraps; // => 2
 * run.extraOil.toString(); // => 10 mL
 * ```
 */
export function assessLineRun(input: LineRunInput): LineRunAssessment {
  const { length, lift, limits, bends } = objectOf("input", input);
  const run = lengthOf("length", length);
  const height = siOf("lift", lift, "length", { min: 0 });
  const above = oneOf("outdoorUnit", input.outdoorUnit, ["above", "below", "level"]) === "above";
  const count = bends === undefined ? 0 : wholeNumberOf("bends", bends, { min: 0, max: 1000 });
  const { standardUncertainty: u = new Quantity(0, length.unit) } = input;
  siOf("standardUncertainty", u, "length", { min: 0 });
  const { lengthIs = "measured" } = input;
  const isNominal = oneOf("lengthIs", lengthIs, ["measured", "nominal"]) === "nominal";
  if (height > run) {
    throw new InvalidInputError({
      argument: "lift",
      value: String(lift),
      allowed: `at most the length ${length}`,
      bound: { value: lift, is: "max", limit: new Quantity(run, lift.unit) },
    });
  }
  const bend = limits?.bendEquivalentLength;
  const equivalentLength = new Quantity(
    run + (bend === undefined ? 0 : count * lengthOf("limits.bendEquivalentLength", bend)),
    length.unit,
  );
  const findings = [
    ...lengthFindings(input, equivalentLength, isNominal ? 0 : u.si),
    ...liftFindings(input, u.si),
    ...bendFindings(input),
  ];
  if (findings.length === 0) {
    askOneOf("limits", "nothing", ["maximumLength", "maximumLift", "maximumBends"]);
  }
  return verdict({
    ...decide(findings),
    assumptions: [say("line-set.limits-of-the-manual")],
    cautions: [danger("safety.work-at-height")],
    sources: [manuals, cite("jcgm-106-2012", "8.2 and 8.3")],
    equivalentLength,
    oilTraps: above ? trapsOf(limits, height) : trapsOf(limits, 0),
    extraOil: oilOf(limits, run),
  });
}

/** Length against the longest and the shortest run; a bend that counts as length must be counted. */
function lengthFindings(
  { length, limits, bends }: LineRunInput,
  equivalentLength: Quantity<"length">,
  uncertainty: number,
): Finding[] {
  const { maximumLength, minimumLength, bendEquivalentLength: bend } = limits ?? {};
  const found: Finding[] = [];
  if (maximumLength !== undefined) {
    lengthOf("limits.maximumLength", maximumLength);
    const figure = bend === undefined ? "length" : "equivalent-length";
    const remedy = say("line-set.shorten-line", { limit: maximumLength });
    const side = "maximum";
    const value = equivalentLength;
    found.push(heldTo({ figure, value, uncertainty, side, limit: maximumLength, remedy }));
    if (bend && bends === undefined) {
      found.push({
        outcome: "inconclusive",
        said: say("line-set.bend-length-not-counted", { bend }),
        actions: [say("line-set.count-bends")],
      });
    }
  }
  if (minimumLength !== undefined) {
    lengthOf("limits.minimumLength", minimumLength);
    const remedy = say("line-set.lengthen-line", { limit: minimumLength });
    const held = { figure: "length", value: length, uncertainty, side: "minimum" } as const;
    found.push(heldTo({ ...held, limit: minimumLength, remedy }));
  }
  return found;
}

/** Height difference against the limit that belongs to the place of the outdoor unit. */
function liftFindings({ lift, outdoorUnit, limits }: LineRunInput, uncertainty: number): Finding[] {
  const { maximumLift, maximumLiftOutdoorAbove } = limits ?? {};
  for (const [name, limit] of Object.entries({ maximumLift, maximumLiftOutdoorAbove })) {
    if (limit !== undefined) lengthOf(`limits.${name}`, limit);
  }
  const overhead = outdoorUnit === "above" && maximumLiftOutdoorAbove !== undefined;
  const limit = overhead ? maximumLiftOutdoorAbove : maximumLift;
  if (limit === undefined) return [];
  return [
    heldTo({
      figure: overhead ? "height-difference-outdoor-above" : "height-difference",
      value: lift,
      uncertainty,
      side: "maximum",
      limit,
      remedy: say("line-set.reduce-height", { limit }),
    }),
  ];
}

/** Bends against the most that are allowed. */
function bendFindings({ bends, limits }: LineRunInput): Finding[] {
  if (limits?.maximumBends === undefined) return [];
  const most = wholeNumberOf("limits.maximumBends", limits.maximumBends, { min: 0 });
  if (bends === undefined) {
    return [
      {
        outcome: "inconclusive",
        said: say("line-set.bends-not-counted", { most }),
        actions: [say("line-set.count-bends")],
      },
    ];
  }
  const said = { count: bends, most };
  return bends > most
    ? [
        {
          outcome: "fail",
          said: say("line-set.bends-above-maximum", said),
          actions: [say("line-set.fewer-bends", { most })],
        },
      ]
    : [{ outcome: "pass", said: say("line-set.bends-within-maximum", said) }];
}
