// Is the added charge within what the unit and the room allow? The part that one line and many share.
// Follows manufacturers' published manuals: length limits, rounding on the scale, total on the label; limits
// with uncertainty by JCGM 106:2012, 8.3.
// Does not cover the room limit itself: charge-limit computes it.
import {
  type Assessment,
  cite,
  type Outcome,
  type Statement,
  statement,
} from "../assessment/assessment.ts";
import { conformity } from "../assessment/conformity.ts";
import { siOf } from "../quantity/check.ts";
import { InvalidInputError } from "../quantity/errors.ts";
import { Quantity, type Unit } from "../quantity/quantity.ts";
import { manuals, refrigerantCautions, type SafetyClass } from "./line-cautions.ts";

/**
 * What bounds the added charge. All from the nameplate or manual; each that is missing shows among the
 * assumptions.
 *
 * Source: manufacturers' published manuals, brands withheld.
 */
export interface ChargeBounds {
  /** Charge that the unit came with, for the total on the label. */
  readonly factoryCharge?: Quantity<"mass">;
  /** Longest run (all lines together) that the manual allows. */
  readonly maximumLength?: Quantity<"length">;
  /** Shortest run that the manual allows. */
  readonly minimumLength?: Quantity<"length">;
  /** Most that the unit or the room may hold, from the manual or from the room limit for flammables. */
  readonly maximumCharge?: Quantity<"mass">;
  /** Smallest step of the scale; the answer is rounded to it. */
  readonly scaleResolution?: Quantity<"mass">;
  /** Standard uncertainty (k = 1) of each length; taken as exact when left out. */
  readonly lengthUncertainty?: Quantity<"length">;
  /** Safety class of the refrigerant, for the cautions. */
  readonly safetyClass?: SafetyClass;
}

/**
 * The verdict on the added charge: `pass` when it follows from the rule and breaks no stated limit.
 *
 * Source: none; the library's own type.
 */
export interface ChargeAssessment extends Assessment {
  /** What to add, negative to take out; rounded to the scale's step where that was given. */
  readonly additionalCharge: Quantity<"mass">;
  /** The same before rounding. */
  readonly unroundedCharge: Quantity<"mass">;
  /** Factory charge plus `additionalCharge`, for the label; only where the factory charge was given. */
  readonly totalCharge?: Quantity<"mass">;
  /**
   * Expanded uncertainty (k = 2) of the charge from the lengths and the scale's step (JCGM 100:2008, 5.1.2
   * and F.2.2.1); only where one of them was given.
   */
  readonly expandedUncertainty?: Quantity<"mass">;
}

/** Holds a value against limits; a hair of binary arithmetic breaks none. */
function holds<K extends "length" | "mass">(
  value: Quantity<K>,
  uncertainty: number,
  side: "lowerLimit" | "upperLimit",
  limit: Quantity<K>,
): Outcome {
  const hair = side === "lowerLimit" ? 1 - 1e-12 : 1 + 1e-12;
  return conformity<K>({
    value,
    standardUncertainty: new Quantity(uncertainty, value.unit) as never,
    [side]: new Quantity(limit.si * hair, limit.unit),
  }).outcome;
}

/**
 * Judges an added charge of `exact` kilograms for `run` of line, of which a metre more would add `slope`
 * kilograms; the run is the sum of so many `lines`, each measured on its own. Internal.
 */
export function judgeCharge(
  exact: number,
  slope: number,
  run: Quantity<"length">,
  why: readonly Statement[],
  undecided: boolean,
  bounds: ChargeBounds,
  rateUnit: Unit<"mass">,
  lines = 1,
): ChargeAssessment {
  const { factoryCharge, maximumLength, minimumLength, maximumCharge, scaleResolution } = bounds;
  const { lengthUncertainty, safetyClass } = bounds;
  const uLength =
    lengthUncertainty === undefined
      ? 0
      : siOf("lengthUncertainty", lengthUncertainty, "length", { min: 0 });
  const said: Record<Outcome, Statement[]> = {
    fail: [],
    inconclusive: undecided ? [...why] : [],
    pass: undecided ? [] : [...why],
  };
  const assumptions: Statement[] = [];
  const assume = (code: string, what: string) =>
    assumptions.push(statement(code, `${what} was not given and not checked.`));
  const limitLength = (
    code: string,
    side: "lowerLimit" | "upperLimit",
    limit: Quantity<"length">,
    text: string,
  ) => {
    const outcome = holds(run, uLength * Math.sqrt(lines), side, limit); // JCGM 100:2008, eq. 10
    if (outcome === "pass") return;
    const verb = outcome === "fail" ? "is" : "may be";
    said[outcome].push(statement(code, `{length} ${verb} ${text}`, { length: run, limit }));
  };

  if (maximumLength !== undefined) {
    siOf("maximumLength", maximumLength, "length", { above: 0 });
    limitLength(
      "too-long",
      "upperLimit",
      maximumLength,
      "longer than the {limit} allowed: no charge makes up for it.",
    );
  } else assume("maximum-length-not-given", "The manual's longest run");
  if (minimumLength !== undefined) {
    siOf("minimumLength", minimumLength, "length", { min: 0 });
    limitLength(
      "too-short",
      "lowerLimit",
      minimumLength,
      "shorter than the {limit} needed: noise, vibration, liquid return.",
    );
  } else assume("minimum-length-not-given", "The manual's shortest run");

  const unit = scaleResolution?.unit ?? factoryCharge?.unit ?? rateUnit;
  const step =
    scaleResolution === undefined
      ? 0
      : siOf("scaleResolution", scaleResolution, "mass", { above: 0, max: 10 });
  const charge = step ? Math.round(exact / step) * step : exact;
  const u = Math.hypot(slope * uLength, step / Math.sqrt(12));
  const additionalCharge = new Quantity(charge, unit);
  let total: Quantity<"mass"> | undefined;
  if (factoryCharge !== undefined) {
    const factory = siOf("factoryCharge", factoryCharge, "mass", { above: 0 });
    if (factory + charge <= 0) {
      throw new InvalidInputError({
        argument: "factoryCharge",
        value: String(factoryCharge),
        allowed: `more than the ${new Quantity(-charge, unit)} that the rule takes out`,
      });
    }
    total = new Quantity(factory + charge, unit);
  }
  if (maximumCharge !== undefined) {
    siOf("maximumCharge", maximumCharge, "mass", { above: 0 });
    const value = total ?? additionalCharge;
    const outcome = holds(value, u, "upperLimit", maximumCharge);
    const values = { limit: maximumCharge, charge: value };
    if (outcome !== "pass") {
      const verb = outcome === "fail" ? "is" : "may be";
      said[outcome].push(
        statement("over-limit", `{charge} ${verb} more than the {limit} allowed.`, values),
      );
    } else if (!total) {
      said.inconclusive.push(
        statement(
          "total-unknown",
          "State the factory charge to hold the total to {limit}.",
          values,
        ),
      );
    }
  } else if (!safetyClass?.endsWith("1")) {
    assume("room-limit-not-given", "The charge limit of the room");
  }

  return {
    outcome: said.fail.length ? "fail" : said.inconclusive.length ? "inconclusive" : "pass",
    reasons: [...said.fail, ...said.inconclusive, ...said.pass],
    assumptions,
    cautions: [
      statement(
        "weigh",
        "Weigh the charge; only into a system that has passed its pressure test and evacuation.",
      ),
      ...refrigerantCautions(safetyClass),
    ],
    sources: [manuals, ...(safetyClass ? [cite("ashrae-34-2022", "6.1")] : [])],
    additionalCharge,
    unroundedCharge: new Quantity(exact, unit),
    ...(total && { totalCharge: total }),
    ...(u > 0 && { expandedUncertainty: new Quantity(2 * u, unit) }),
  };
}
