// Is the added charge within what the unit and the room allow? The part that one line and many share.
// Follows manufacturers' published manuals: length limits, rounding on the scale, total on the label.
// Does not cover the room limit itself: charge-limit computes it.
import { type Assessment, cite, type Statement, statement } from "../assessment/assessment.ts";
import { siOf } from "../quantity/check.ts";
import { InvalidInputError } from "../quantity/errors.ts";
import { Quantity, type Unit } from "../quantity/quantity.ts";
import { manuals, refrigerantCautions, type SafetyClass } from "./line-cautions.ts";
import { rounded } from "./rounded.ts";

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
}

/** Judges an added charge of `exact` kilograms for `run` of line. Internal. */
export function judgeCharge(
  exact: number,
  run: Quantity<"length">,
  why: readonly Statement[],
  undecided: boolean,
  bounds: ChargeBounds,
  rateUnit: Unit<"mass">,
): ChargeAssessment {
  const { factoryCharge, maximumLength, minimumLength, maximumCharge, scaleResolution } = bounds;
  const failures: Statement[] = [];
  const open: Statement[] = undecided ? [...why] : [];
  const assumptions: Statement[] = [];
  const assume = (code: string, what: string) =>
    assumptions.push(statement(code, `${what} was not given and not checked.`));

  if (!maximumLength) assume("maximum-length-not-given", "The manual's longest run");
  else if (run.si > siOf("maximumLength", maximumLength, "length", { above: 0 })) {
    failures.push(
      statement(
        "too-long",
        "{length} is longer than the {limit} allowed: no charge makes up for it.",
        {
          length: run,
          limit: maximumLength,
        },
      ),
    );
  }
  if (!minimumLength) assume("minimum-length-not-given", "The manual's shortest run");
  else if (run.si < siOf("minimumLength", minimumLength, "length", { min: 0 })) {
    failures.push(
      statement(
        "too-short",
        "{length} is shorter than the {limit} needed: noise, vibration, liquid return.",
        { length: run, limit: minimumLength },
      ),
    );
  }

  const unit = scaleResolution?.unit ?? factoryCharge?.unit ?? rateUnit;
  let charge = exact;
  if (scaleResolution) {
    const step = siOf("scaleResolution", scaleResolution, "mass", { above: 0, max: 10 });
    charge = Math.round(exact / step) * step;
  }
  const additionalCharge = new Quantity(charge, unit);
  let total: Quantity<"mass"> | undefined;
  if (factoryCharge) {
    total = new Quantity(siOf("factoryCharge", factoryCharge, "mass", { above: 0 }) + charge, unit);
    if (total.si <= 0) {
      throw new InvalidInputError({
        argument: "factoryCharge",
        value: String(factoryCharge),
        allowed: `more than the ${rounded(new Quantity(-charge, unit))} that the rule takes out`,
      });
    }
  }
  if (maximumCharge) {
    const most = siOf("maximumCharge", maximumCharge, "mass", { above: 0 });
    const values = { limit: maximumCharge, charge: rounded(total ?? additionalCharge) };
    if ((total ?? additionalCharge).si > most) {
      failures.push(statement("over-limit", "{charge} is more than the {limit} allowed.", values));
    } else if (!total) {
      open.push(
        statement(
          "total-unknown",
          "State the factory charge to hold the total to {limit}.",
          values,
        ),
      );
    }
  } else if (bounds.safetyClass && !bounds.safetyClass.endsWith("1")) {
    assume("room-limit-not-given", "The charge limit of the room");
  }

  return {
    outcome: failures.length ? "fail" : open.length ? "inconclusive" : "pass",
    reasons: [...failures, ...open, ...(undecided ? [] : why)],
    assumptions,
    cautions: [
      statement(
        "weigh",
        "Weigh the charge; only into a system that has passed its pressure test and evacuation.",
      ),
      ...refrigerantCautions(bounds.safetyClass),
    ],
    sources: [manuals, ...(bounds.safetyClass ? [cite("ashrae-34-2022", "6.1")] : [])],
    additionalCharge,
    unroundedCharge: new Quantity(exact, unit),
    ...(total && { totalCharge: total }),
  };
}
