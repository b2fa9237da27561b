// Is the added charge within what the unit and the room allow? The part that one line and many share.
// Follows manufacturers' published manuals: length limits, rounding on the scale, total on the label; limits
// with uncertainty by JCGM 106:2012, 8.3.
// Does not cover the room limit itself: charge-limit computes it.
import { cite, verdict } from "../assessment/assessment.ts";
import { caution } from "../assessment/caution.ts";
import { siOf } from "../quantity/check.ts";
import { InvalidInputError } from "../quantity/errors.ts";
import { Quantity, type Unit } from "../quantity/quantity.ts";
import { decide, type Finding, heldTo } from "./decide.ts";
import { manuals, refrigerantCautions, type SafetyClass } from "./line-cautions.ts";
import { type LineSetStatement, say, type Verdict } from "./statements.ts";

/**
 * What bounds the added charge. All from the nameplate or manual; each that is missing shows among the
 * assumptions.
 *
 * Source: manufacturers' published manuals, brands withheld.
 */
export interface ChargeBounds {
  /** Charge that the unit came with, for the total on the label. */
  readonly factoryCharge?: Quantity<"mass"> | undefined;
  /** Longest run (all lines together) that the manual allows. */
  readonly maximumLength?: Quantity<"length"> | undefined;
  /** Shortest run that the manual allows. */
  readonly minimumLength?: Quantity<"length"> | undefined;
  /** Most that the unit or the room may hold, from the manual or from the room limit for flammables. */
  readonly maximumCharge?: Quantity<"mass"> | undefined;
  /** Smallest step of the scale; the answer is rounded to it. */
  readonly scaleResolution?: Quantity<"mass"> | undefined;
  /** Standard uncertainty (k = 1) of each length; taken as exact when left out. */
  readonly lengthUncertainty?: Quantity<"length"> | undefined;
  /** Safety class of the refrigerant, for the cautions. */
  readonly safetyClass?: SafetyClass | undefined;
}

/**
 * The verdict on the added charge: `pass` when it follows from the rule and breaks no stated limit.
 */
export interface ChargeAssessment extends Verdict {
  /** What to add, negative to take out; rounded to the scale's step where that was given. */
  readonly additionalCharge: Quantity<"mass">;
  /** The same before rounding. */
  readonly unroundedCharge: Quantity<"mass">;
  /** Factory charge plus `additionalCharge`, for the label; only where the factory charge was given. */
  readonly totalCharge?: Quantity<"mass"> | undefined;
  /**
   * Expanded uncertainty (k = 2) of the charge from the lengths and the scale's step (JCGM 100:2008, 5.1.2
   * and F.2.2.1); only where one of them was given.
   */
  readonly expandedUncertainty?: Quantity<"mass"> | undefined;
}

/** An added charge to be judged. */
export interface AddedCharge {
  /** What the rule adds, in kilograms. */
  readonly exact: number;
  /** What a meter more of line would add, in kilograms. */
  readonly slope: number;
  /** The whole length of line. */
  readonly run: Quantity<"length">;
  /** What the rule says. */
  readonly why: readonly Finding[];
  readonly bounds: ChargeBounds;
  readonly rateUnit: Unit<"mass">;
  /** The rate, to be named where the rule takes out more than there is. */
  readonly rate: { readonly argument: string; readonly value: Quantity<"massPerLength"> };
  /** Of how many lines, each measured on its own, the run is the sum; 1 when left out. */
  readonly lines?: number | undefined;
}

/** Judges an added charge. Internal. */
export function judgeCharge(added: AddedCharge): ChargeAssessment {
  const { exact, slope, bounds, rateUnit } = added;
  const { factoryCharge, scaleResolution, lengthUncertainty, safetyClass } = bounds;
  const uLength =
    lengthUncertainty === undefined
      ? 0
      : siOf("lengthUncertainty", lengthUncertainty, "length", { min: 0 });
  const ofLength = lengthFindings(added, uLength);
  const unit = scaleResolution?.unit ?? factoryCharge?.unit ?? rateUnit;
  const step =
    scaleResolution === undefined
      ? 0
      : siOf("scaleResolution", scaleResolution, "mass", { above: 0, max: 10 });
  const charge = step ? Math.round(exact / step) * step : exact;
  const u = Math.hypot(slope * uLength, step / Math.sqrt(12));
  const additionalCharge = new Quantity(charge, unit);
  const total = totalOf(factoryCharge, charge, unit, added.rate);
  const ofCharge = chargeFindings(bounds, additionalCharge, total, u);
  return verdict({
    ...decide([...ofLength, ...ofCharge, ...added.why]),
    assumptions: assumptionsOf(bounds),
    cautions: [
      caution("finding", say("line-set.charge-after-tests")),
      ...refrigerantCautions(safetyClass),
    ],
    sources: [manuals, ...(safetyClass ? [cite("ashrae-34-2022", "6.1")] : [])],
    additionalCharge,
    unroundedCharge: new Quantity(exact, unit),
    ...(total && { totalCharge: total }),
    ...(u > 0 && { expandedUncertainty: new Quantity(2 * u, unit) }),
  });
}

/** The limits of length that the run does not keep, or may not. */
function lengthFindings({ run, bounds, lines = 1 }: AddedCharge, uLength: number): Finding[] {
  const { maximumLength, minimumLength } = bounds;
  const held = { figure: "length", value: run, uncertainty: uLength * Math.sqrt(lines) } as const; // JCGM 100:2008, eq. 10
  const found: Finding[] = [];
  if (maximumLength !== undefined) {
    siOf("maximumLength", maximumLength, "length", { above: 0 });
    const remedy = say("line-set.shorten-line", { limit: maximumLength });
    found.push(heldTo({ ...held, side: "maximum", limit: maximumLength, remedy }));
  }
  if (minimumLength !== undefined) {
    siOf("minimumLength", minimumLength, "length", { min: 0 });
    const remedy = say("line-set.lengthen-line", { limit: minimumLength });
    found.push(heldTo({ ...held, side: "minimum", limit: minimumLength, remedy }));
  }
  return found.filter(({ outcome }) => outcome !== "pass");
}

/** Factory and added charge together, where the factory charge was given. */
function totalOf(
  factoryCharge: Quantity<"mass"> | undefined,
  added: number,
  unit: Unit<"mass">,
  rate: AddedCharge["rate"],
): Quantity<"mass"> | undefined {
  if (factoryCharge === undefined) return undefined;
  const factory = siOf("factoryCharge", factoryCharge, "mass", { above: 0 });
  if (factory + added > 0) return new Quantity(factory + added, unit);
  // A nameplate's charge fills the unit: what takes all of it out is a rate in another unit.
  throw new InvalidInputError({
    argument: rate.argument,
    value: `${rate.value}, which takes out ${new Quantity(-added, unit)}`,
    allowed: `a rate that takes out less than the factory charge, ${factoryCharge}`,
    hint: say("line-set.rate-unit"),
  });
}

/** The limit of the charge, where it is not kept, may not be, or cannot be checked. */
function chargeFindings(
  { maximumCharge }: ChargeBounds,
  added: Quantity<"mass">,
  total: Quantity<"mass"> | undefined,
  uncertainty: number,
): Finding[] {
  if (maximumCharge === undefined) return [];
  siOf("maximumCharge", maximumCharge, "mass", { above: 0 });
  const limit = maximumCharge;
  const found = heldTo({
    figure: total ? "total-charge" : "added-charge",
    value: total ?? added,
    uncertainty,
    side: "maximum",
    limit,
    remedy: say("line-set.reduce-charge", { limit }),
  });
  if (found.outcome !== "pass") return [found];
  if (total) return [];
  const said = say("line-set.total-not-known", { limit });
  return [{ outcome: "inconclusive", said, actions: [say("line-set.enter-factory-charge")] }];
}

/** The limits that were not checked. */
function assumptionsOf(bounds: ChargeBounds): LineSetStatement[] {
  const { maximumLength, minimumLength, maximumCharge, safetyClass } = bounds;
  return [
    ...(maximumLength === undefined ? [say("line-set.maximum-length-not-checked")] : []),
    ...(minimumLength === undefined ? [say("line-set.minimum-length-not-checked")] : []),
    ...(maximumCharge === undefined && !safetyClass?.endsWith("1")
      ? [say("line-set.room-limit-not-checked")]
      : []),
  ];
}
