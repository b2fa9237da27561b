// What the functions of this module share: lists that must not be short, readings without accuracy.
import { type Citation, cite, type Estimate, type Outcome } from "../assessment/assessment.ts";
import { caution } from "../assessment/caution.ts";
import { conformity } from "../assessment/conformity.ts";
import { listOf, siOf } from "../quantity/check.ts";
import { isAtLeast, isAtMost } from "../quantity/limit.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { percent } from "../quantity/units/ratio.ts";
import { codeDrainSlope, steepest } from "./drain-slope.ts";
import { type CondensateCaution, type CondensateStatement, say } from "./statements.ts";

export function requireList(argument: string, list: readonly unknown[], least: number): void {
  listOf(argument, list, Infinity, least);
}

/** No code or manual is known to ask for less fall than 0.5 % (EN 12056-2, from memory). */
const flattest = 0.005;

/** The slope that a drain is judged by, in SI. */
export const askedSlope = (argument: string, slope: Quantity<"ratio">): number =>
  siOf(argument, slope, "ratio", { min: flattest, below: 1 });

/** What to heed where less is asked for than the codes say: 1 % is the lowest figure of the three. */
export const flatterThanCode = (asked: number): readonly CondensateCaution[] =>
  isAtLeast(asked, 0.01)
    ? []
    : [caution("finding", say("condensate.flatter-than-code", { least: percent(1) }))];

/** What is steeper than a drain or a unit is hung. */
export const steeperThanUsual = ({ value }: Estimate<"ratio">): readonly CondensateCaution[] =>
  isAtMost(value.si, steepest.si)
    ? []
    : [caution("finding", say("condensate.steep", { slope: value, usual: steepest }))];

/** Assumptions on a slope: how exact it is and which slope is asked for. */
export const slopeAssumptions = (exact: boolean, byCode: boolean): CondensateStatement[] => [
  say("condensate.straight"),
  ...(exact ? [say("condensate.exact-instrument")] : []),
  ...(byCode ? [say("condensate.code-slope", { slope: codeDrainSlope })] : []),
];

export const slopeCitations = (): Citation[] => [
  cite("imc-2021", "307.2.1"),
  cite("ipc-2021", "314.2.1"),
  cite("upc-2021", "814.1"),
];

/** A slope against its limits by JCGM 106:2012, 8.3. */
export function slopeOutcome(
  { value, standardUncertainty }: Estimate<"ratio">,
  lowerLimit: Quantity<"ratio">,
  upperLimit: Quantity<"ratio"> | undefined,
  confidence = 0.95,
): Outcome {
  const limits = { lowerLimit, ...(upperLimit && { upperLimit }) };
  return conformity({ value, standardUncertainty, ...limits, confidence }).outcome;
}
