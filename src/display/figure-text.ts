// How is any figure of a verdict shown to this reader? Quantities, plain numbers and words alike.
// Follows format-quantity.ts for quantities; common practice, no source.
// Does not cover the sentence around the figure: `explain` writes that.
import { numberOf, objectOf, oneOf, requireUnit } from "../quantity/check.ts";
import { type AnyQuantity, isQuantity } from "../quantity/json.ts";
import type { Kind } from "../quantity/kinds.ts";
import type { Unit } from "../quantity/quantity.ts";
import type { UnitSystem } from "./display-units.ts";
import { fixed, scientific } from "./format-number.ts";
import { formatQuantity } from "./format-quantity.ts";
import { localeOf } from "./locale.ts";

/**
 * How a reader wants figures shown.
 *
 * Source: none; the library's own type.
 */
export interface FigureTextOptions {
  /** Inch-pound or SI units. */
  readonly system: UnitSystem;
  /** Units of single kinds, in place of those of the system: `{ torque: newtonMeter }`. */
  readonly units?: { readonly [K in Kind]?: Unit<K> };
  /** BCP 47 language tag of the reader's numbers. Without it: ASCII digits and a decimal point. */
  readonly locale?: string;
}

/** A figure that a verdict may carry. Source: none; the library's own type. */
export type Figure = AnyQuantity | number | string;

/**
 * Makes the function that shows a reader every figure of a verdict: quantities as {@link formatQuantity} does,
 * numbers to four significant digits or the whole number, words as they are. Hand it to {@link explain}.
 *
 * @param options - System, units of single kinds, locale.
 * @returns A function from a figure, and the step of its instrument if it is known, to text.
 * @throws {@link InvalidInputError} when an option is wrong; the function, when its figure is no figure.
 *
 * Source: common practice, no source.
 *
 * @example
 * ```ts
 * import { explain } from "hvac-install-math/assessment";
 * import { figureText } from "hvac-install-math/display";
 * import { newtonMeter, psi, psig } from "hvac-install-math/quantity";
 *
 * const show = figureText({ system: "SI", units: { torque: newtonMeter }, locale: "de" });
 * show(psig(118)); // => 814 kPag
 * show(0.12345); // => 0,1235
 * explain({ code: "drop", text: "The pressure fell by {drop}.", values: { drop: psi(2.9) } }, show); // => The pressure fell by 20,0 kPa.
 * ```
 */
export function figureText(
  options: FigureTextOptions,
): (figure: Figure, resolution?: AnyQuantity) => string {
  const { system, units = {}, locale } = objectOf("options", options);
  oneOf("options.system", system, ["inch-pound", "SI"]);
  for (const [kind, unit] of Object.entries(objectOf("options.units", units))) {
    if (unit !== undefined) requireUnit(`options.units.${kind}`, unit, kind as Kind);
  }
  const numbers = localeOf(locale);
  const format = formatQuantity as (quantity: AnyQuantity, options: object) => string;
  return (figure, resolution) => {
    if (typeof figure === "string") return figure;
    if (isQuantity(figure)) {
      const unit = Object.hasOwn(units, figure.kind) ? units[figure.kind] : undefined;
      return format(figure, { system, locale, unit, resolution });
    }
    return numberText(numbers, numberOf("figure", figure));
  };
}

/** Four significant digits, but never fewer than stand before the decimal mark. */
function numberText(locale: string, value: number): string {
  const magnitude = Math.floor(Math.log10(Math.abs(value) || 1));
  if (Math.abs(magnitude) > 6) return scientific(locale, value, 4);
  return fixed(locale, value, Math.max(0, 3 - magnitude), true);
}
