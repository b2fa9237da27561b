// What the functions of this module share: lists that must not be short, readings without accuracy.
import {
  type Assumption,
  type Caution,
  type Citation,
  cite,
  type Estimate,
  type Outcome,
  statement,
} from "../assessment/assessment.ts";
import { conformity } from "../assessment/conformity.ts";
import { describe, listOf, siOf } from "../quantity/check.ts";
import { InvalidInputError } from "../quantity/errors.ts";
import { Quantity } from "../quantity/quantity.ts";

export function requireList(argument: string, list: readonly unknown[], least: number): void {
  if (listOf(argument, list).length >= least) return;
  const allowed = `a list of at least ${least}`;
  throw new InvalidInputError({ argument, value: describe(list), allowed });
}

/** No code or manual is known to ask for less fall than 0.5 % (EN 12056-2, from memory). */
const flattest = 0.005;

/** The slope that a drain is judged by, in SI. */
export const askedSlope = (argument: string, slope: Quantity<"ratio">): number =>
  siOf(argument, slope, "ratio", { min: flattest, below: 1 });

/** What to heed where less is asked for than the codes say: 1 % is the lowest figure of the three. */
export const flatterThanCode = (asked: number): Caution[] =>
  asked < 0.01 - 1e-12
    ? [
        statement(
          "flatter-than-code",
          "Plumbing codes ask for 1 % or more: ask which text binds here.",
        ),
      ]
    : [];

/** Assumptions on a slope: how exact it is and which slope is asked for. */
export function slopeAssumptions(exact: boolean, byCode: boolean): Assumption[] {
  const said = [statement("straight", "Straight between the points measured.")];
  if (exact) said.push(statement("exact-instrument", "The reading counts as exact."));
  if (byCode) said.push(statement("code-slope", "1/8 in per foot is asked for."));
  return said;
}

export const slopeCitations = (): Citation[] => [
  cite("imc-2021", "307.2.1"),
  cite("ipc-2021", "314.2.1"),
  cite("upc-2021", "814.1"),
];

/**
 * A slope against its limits by JCGM 106:2012, 8.3. The limits give by 1e-12: 3.75 in over 30 ft is
 * exactly 1/8 in per foot, whatever binary arithmetic makes of it.
 */
export function slopeOutcome(
  slope: Estimate<"ratio">,
  low: Quantity<"ratio">,
  high: Quantity<"ratio"> | undefined,
  confidence = 0.95,
): Outcome {
  const { value, standardUncertainty } = slope;
  const lowerLimit = new Quantity(low.si - 1e-12, low.unit);
  const upperLimit = high && new Quantity(high.si + 1e-12, high.unit);
  return conformity({
    value,
    standardUncertainty,
    lowerLimit,
    ...(upperLimit && { upperLimit }),
    confidence,
  }).outcome;
}

/** What would decide a slope that is too near its limit. */
export const tooNear = "too near to tell, measure over a longer base";
