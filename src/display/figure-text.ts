// How is any figure of a verdict shown to this reader? Quantities and plain numbers alike.
// Follows format-quantity.ts for quantities; common practice, no source.
// Does not cover the sentence around the figure: `explain` writes that.
import type { Figure } from "../assessment/statement.ts";
import { numberOf, objectOf, oneOf, requireUnit } from "../quantity/check.ts";
import { type AnyQuantity, isQuantity } from "../quantity/json.ts";
import type { Kind } from "../quantity/kinds.ts";
import type { Quantity, Unit } from "../quantity/quantity.ts";
import type { UnitSystem } from "./display-units.ts";
import { type Numbers, numbersOf } from "./format-number.ts";
import { quantityText, shownUnit } from "./format-quantity.ts";
import type { UnitLanguage } from "./unit-words.ts";

/**
 * How a reader wants figures shown.
 */
export interface FigureTextOptions {
  /** Inch-pound or SI units. */
  readonly system: UnitSystem;
  /** Units of single kinds, in place of those of the system: `{ torque: newtonMeter }`. */
  readonly units?: { readonly [K in Kind]?: Unit<K> | undefined } | undefined;
  /**
   * BCP 47 language tag of the reader's numbers. Without it that of `language`, and without both ASCII digits and a
   * decimal point.
   */
  readonly locale?: string | undefined;
  /** A language, or its module `display`, which words the units; symbols when left out. */
  readonly language?: UnitLanguage | undefined;
}

/**
 * Makes the function that shows a reader every figure of a verdict: quantities as {@link formatQuantity} does,
 * numbers to four significant digits or the whole number. Hand it to {@link explain}.
 *
 * What is exact in its unit has no zeros behind the decimal mark, as a rating of 20 A has none: only what was read by
 * an instrument, whose step is handed on, or computed keeps them. Rounding can make 20.04 A and a limit of 20 A look
 * the same. Given the other figures of the sentence, the
 * function takes as many digits as it needs to tell a figure from each of its kind that is another; the step of an
 * instrument, where it is handed on, decides alone.
 *
 * Figures of one kind and of like size that were entered in several units stand in that of the first of them.
 *
 * @param options - System, units of single kinds, locale, language.
 * @returns A function from a figure, the step of its instrument if it is known, and the figures beside which
 * it stands, to text.
 * @throws {@link InvalidInputError} when an option is wrong; the function, when its figure is no figure.
 *
 * Source: common practice, no source.
 *
 * @example
 * ```ts
 * import { explain } from "hvac-install-math/assessment";
 * import { figureText } from "hvac-install-math/display";
 * import { assessFlareTorque } from "hvac-install-math/flare-joint";
 * import { english } from "hvac-install-math/language/en";
 * import { ftLb, newtonMeter, psi, psig } from "hvac-install-math/quantity";
 *
 * const show = figureText({ system: "SI", units: { torque: newtonMeter }, locale: "de" });
 * show(psig(118)); // => 814 kPag
 * show(0.12345); // => 0,1235
 * show(psi(2.902), undefined, [psi(2.9)]); // => 20,01 kPa
 * const { reasons } = assessFlareTorque({ tube: "3/8", torque: ftLb(37) });
 * explain(reasons[0]!, english, show); // => Torque 50,2 N·m: outside 32,7 N·m to 42 N·m.
 * ```
 */
export function figureText(
  options: FigureTextOptions,
): (figure: Figure, resolution?: AnyQuantity, beside?: readonly Figure[]) => string {
  const { system, units = {}, locale, language } = objectOf("options", options);
  oneOf("options.system", system, ["inch-pound", "SI"]);
  for (const [kind, unit] of Object.entries(objectOf("options.units", units))) {
    if (unit !== undefined) requireUnit(`options.units.${kind}`, unit, kind as Kind);
  }
  const numbers = numbersOf(locale, language);
  return (figure, resolution, beside = []) => {
    const shared = resolution === undefined ? unitOfAll(figure, beside, system) : undefined;
    const text = (figure: Figure, finer: number, trim = false): string => {
      if (!isQuantity(figure)) return numberText(numbers, numberOf("figure", figure), finer);
      const unit = Object.hasOwn(units, figure.kind) ? units[figure.kind] : shared;
      const options = { system, unit, resolution } as never;
      return quantityText(figure as never, options, numbers, finer, trim);
    };
    if (resolution !== undefined) return text(figure, 0);
    const others = beside.flatMap((one) => (isAnother(figure, one) ? [inUnitOf(figure, one)] : []));
    const isLike = (other: Figure, finer: number) => text(other, finer) === text(figure, finer);
    let finer = 0;
    while (finer < mostFiner && others.some((one) => isLike(one, finer))) finer++;
    return text(figure, finer, finer === 0);
  };
}

/** Digits that tell two figures apart at most, beside the usual ones. */
const mostFiner = 6;

/** Whether the other figure is of the same kind and differs by more than arithmetic does. */
function isAnother(figure: Figure, other: Figure): boolean {
  const [one, two] = [figure, other].map((it) => (isQuantity(it) ? it.si : it)) as [number, number];
  if (isQuantity(figure) ? !isQuantity(other) || other.kind !== figure.kind : isQuantity(other)) {
    return false;
  }
  if (typeof two !== "number") return false;
  return Math.abs(one - two) > 1e-9 * Math.max(Math.abs(one), Math.abs(two));
}

/** The unit of the first figure of this kind in a sentence, where all are of like size and none is of two units at once. */
function unitOfAll(
  figure: Figure,
  beside: readonly Figure[],
  system: UnitSystem,
): Unit<Kind> | undefined {
  if (!isQuantity(figure) || ["length", "mass", "duration"].includes(figure.kind)) return undefined;
  const all = beside.filter(
    (one) => isQuantity(one) && one.kind === figure.kind,
  ) as Quantity<Kind>[];
  const [first] = all;
  return first && all.every(({ si }) => si / first.si > 0.01 && si / first.si < 100)
    ? shownUnit(first, { system })
    : undefined;
}

/** The other figure in the unit in which this one comes, so that their texts can be compared. */
function inUnitOf(figure: Figure, other: Figure): Figure {
  return isQuantity(figure) && isQuantity(other) ? other.as(figure.unit as never) : other;
}

/** Four significant digits, but never fewer than stand before the decimal mark. */
function numberText({ fixed, scientific }: Numbers, value: number, finer: number): string {
  const magnitude = Math.floor(Math.log10(Math.abs(value) || 1));
  if (Math.abs(magnitude) > 6) return scientific(value, 4 + finer);
  return fixed(value, Math.max(0, 3 - magnitude) + finer, true);
}
