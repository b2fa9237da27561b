// Is this run allowed? Length, lift, bends, oil traps and extra oil against the manual's limits.
// Follows manufacturers' published manuals, brands withheld; limits with uncertainty by JCGM 106:2012, 8.3.
// Does not cover limits that the manual does not state: none is assumed.
import { type Assessment, cite, overallOutcome, statement } from "../assessment/assessment.ts";
import { conformity } from "../assessment/conformity.ts";
import { objectOf, oneOf, siOf, wholeNumberOf } from "../quantity/check.ts";
import { InvalidInputError } from "../quantity/errors.ts";
import { Quantity } from "../quantity/quantity.ts";
import { mL } from "../quantity/units/geometry.ts";
import { manualDecides, manuals, workAtHeight } from "./line-cautions.ts";
import { lengthOf } from "./tube.ts";

/**
 * What the manual allows. Only what is given is checked.
 *
 * Source: manufacturers' published manuals, brands withheld.
 */
export interface RunLimits {
  /** Longest run, one way. */
  readonly maximumLength?: Quantity<"length">;
  /** Shortest run: below it come noise, vibration and liquid return. */
  readonly minimumLength?: Quantity<"length">;
  /** Largest height difference of the two units. */
  readonly maximumLift?: Quantity<"length">;
  /** Largest height difference where the outdoor unit is the higher one, if the manual tells the two apart. */
  readonly maximumLiftOutdoorAbove?: Quantity<"length">;
  /** Most bends, a whole number. */
  readonly maximumBends?: number;
  /** Length of straight tube that a bend counts for; `maximumLength` then holds the equivalent length. */
  readonly bendEquivalentLength?: Quantity<"length">;
  /** Oil traps in the vapour riser: one for every `spacing` where the lift is more than `above`. */
  readonly oilTraps?: {
    /** Lift that still needs none. */
    readonly above: Quantity<"length">;
    /** Height between traps. */
    readonly spacing: Quantity<"length">;
  };
  /** Oil to add: `volume` for every started `per` beyond `beyond`. */
  readonly extraOil?: {
    /** Length that the factory's oil covers. */
    readonly beyond: Quantity<"length">;
    /** Step of length. */
    readonly per: Quantity<"length">;
    /** Oil for a step. */
    readonly volume: Quantity<"volume">;
  };
}

/**
 * The run as it is or will be.
 *
 * Source: none; the library's own type.
 */
export interface LineRunInput {
  /** Length of tube one way, coils included, 0 to 1000 m. */
  readonly length: Quantity<"length">;
  /** Height difference of the units, 0 or more. */
  readonly lift: Quantity<"length">;
  /** Where the outdoor unit stands. */
  readonly outdoorUnit: "above" | "below" | "level";
  /** Number of bends, a whole number from 0 to 1000. */
  readonly bends?: number;
  /** Standard uncertainty (k = 1) of length and lift, 0 when left out. */
  readonly standardUncertainty?: Quantity<"length">;
  /** What the manual allows. */
  readonly limits: RunLimits;
}

/**
 * The verdict on a run.
 *
 * Source: none; the library's own type.
 */
export interface LineRunAssessment extends Assessment {
  /** Length plus what the bends count for. */
  readonly equivalentLength: Quantity<"length">;
  /** Oil traps in the vapour riser by the manual's rule, without the one at its foot. */
  readonly oilTraps: number;
  /** Oil to add by the manual's rule. */
  readonly extraOil: Quantity<"volume">;
}

/** Code and words of each limit. */
const limitNames = {
  maximumLength: ["maximum-length", "longest run"],
  minimumLength: ["minimum-length", "shortest run"],
  maximumLift: ["maximum-lift", "largest lift"],
  maximumLiftOutdoorAbove: [
    "maximum-lift-outdoor-above",
    "largest lift with the outdoor unit above",
  ],
} as const;

/**
 * Holds length, lift and bends of a run against the manual's limits, and counts oil traps and extra oil
 * by the manual's rule.
 *
 * Assumes one vapour and one liquid line of the same length. Traps are counted only where the vapour
 * rises in cooling, that is, where the outdoor unit is above; the top of the riser needs none.
 *
 * @param input - The run and the limits; at least one limit.
 * @returns The verdict with equivalent length, traps and oil. `inconclusive` where the measured length
 * is too close to a limit for its uncertainty, or bends that count were not counted.
 * @throws {@link InvalidInputError} when no limit is given, the lift is more than the length, or an
 * argument is missing, of another kind or impossible.
 * Cautions: work at height; the manual decides.
 *
 * Source: manufacturers' published manuals, brands withheld; JCGM 106:2012, 8.3.
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
  if (height > run) {
    throw new InvalidInputError({
      argument: "lift",
      value: String(lift),
      allowed: `at most the length ${length}`,
    });
  }
  const bend = limits?.bendEquivalentLength;
  const equivalentLength = new Quantity(
    run + (bend === undefined ? 0 : count * lengthOf("limits.bendEquivalentLength", bend)),
    length.unit,
  );

  const reasons: { said: ReturnType<typeof statement>; outcome: Assessment["outcome"] }[] = [];
  const check = (
    name: keyof typeof limitNames,
    value: Quantity<"length">,
    limit: Quantity<"length"> | undefined,
    side: "upperLimit" | "lowerLimit",
  ) => {
    if (limit === undefined) return;
    lengthOf(`limits.${name}`, limit);
    // A hair of binary arithmetic breaks no limit.
    const hair = side === "lowerLimit" ? 1 - 1e-12 : 1 + 1e-12;
    const held = new Quantity(limit.si * hair, limit.unit);
    const { outcome } = conformity({ value, standardUncertainty: u, [side]: held });
    const verb = { pass: "keeps", fail: "breaks", inconclusive: "is too close to" }[outcome];
    const [code, words] = limitNames[name];
    reasons.push({
      outcome,
      said: statement(code, `{value} ${verb} the ${words} of {limit}.`, {
        value: value,
        limit,
      }),
    });
  };
  check("maximumLength", equivalentLength, limits?.maximumLength, "upperLimit");
  if (bend && bends === undefined && limits.maximumLength) {
    reasons.push({
      outcome: "inconclusive",
      said: statement("bends-not-counted", "Count the bends: each counts for {bend}.", { bend }),
    });
  }
  check("minimumLength", length, limits?.minimumLength, "lowerLimit");
  const { maximumLift, maximumLiftOutdoorAbove } = limits ?? {};
  for (const [name, limit] of Object.entries({ maximumLift, maximumLiftOutdoorAbove })) {
    if (limit !== undefined) lengthOf(`limits.${name}`, limit);
  }
  const overhead = above && maximumLiftOutdoorAbove !== undefined;
  if (overhead) check("maximumLiftOutdoorAbove", lift, maximumLiftOutdoorAbove, "upperLimit");
  else check("maximumLift", lift, maximumLift, "upperLimit");
  if (limits?.maximumBends !== undefined) {
    const most = wholeNumberOf("limits.maximumBends", limits.maximumBends, { min: 0 });
    reasons.push({
      outcome: bends === undefined ? "inconclusive" : count > most ? "fail" : "pass",
      said: statement("maximum-bends", "{count} bends; at most {most} allowed.", {
        count: bends ?? "Unknown number of",
        most,
      }),
    });
  }
  if (reasons.length === 0) {
    throw new InvalidInputError({
      argument: "limits",
      value: "nothing",
      allowed: "at least one limit of the manual",
    });
  }

  let oilTraps = 0;
  if (limits.oilTraps !== undefined) {
    const { above: least, spacing } = objectOf("limits.oilTraps", limits.oilTraps);
    const from = lengthOf("limits.oilTraps.above", least);
    const every = siOf("limits.oilTraps.spacing", spacing, "length", { above: 0 });
    if (above && height > from) oilTraps = Math.ceil(height / every - 1e-9) - 1;
  }
  let oil = 0;
  if (limits.extraOil !== undefined) {
    const { beyond, per, volume } = objectOf("limits.extraOil", limits.extraOil);
    const step = siOf("limits.extraOil.per", per, "length", { above: 0 });
    const excess = run - lengthOf("limits.extraOil.beyond", beyond);
    oil =
      siOf("limits.extraOil.volume", volume, "volume", { min: 0 }) *
      Math.max(0, Math.ceil(excess / step - 1e-9));
  }
  const order = ["fail", "inconclusive", "pass"];
  reasons.sort((a, b) => order.indexOf(a.outcome) - order.indexOf(b.outcome));
  return {
    outcome: overallOutcome(reasons.map(({ outcome }) => outcome)),
    reasons: reasons.map(({ said }) => said),
    assumptions: [
      statement(
        "limits-of-the-manual",
        "The limits are those of this unit's manual; others were not checked.",
      ),
    ],
    cautions: [manualDecides, workAtHeight],
    sources: [manuals, cite("jcgm-106-2012", "8.3")],
    equivalentLength,
    oilTraps,
    extraOil: new Quantity(oil, limits.extraOil ? limits.extraOil.volume.unit : mL),
  };
}
