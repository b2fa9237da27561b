// How is a quantity shown to a person? In their system of units, with sensible digits, in their numbers.
// Follows ECMA-402 for the numbers; the digits per kind are common practice, no source.
// Does not cover the words for units: they are data of a language.
import { objectOf, oneOf, requireKind, requireUnit, siOf } from "../quantity/check.ts";
import type { AnyQuantity } from "../quantity/json.ts";
import type { DifferenceOf, Kind } from "../quantity/kinds.ts";
import type { Quantity, Unit } from "../quantity/quantity.ts";
import { twelveDigits } from "../quantity/twelve-digits.ts";
import { ft, inch } from "../quantity/units/geometry.ts";
import { oz } from "../quantity/units/mass.ts";
import { type Display, displayUnits, type UnitSystem } from "./display-units.ts";
import { decimalsOf, type Numbers, numbersOf, roundTo } from "./format-number.ts";
import { feetAndInches, hoursAndMinutes, poundsAndOunces } from "./split-units.ts";
import type { UnitLanguage } from "./unit-words.ts";

export type { UnitSystem } from "./display-units.ts";

/**
 * How a quantity is to be shown.
 */
export interface FormatQuantityOptions<K extends Kind> {
  /** Inch-pound or SI units. */
  readonly system: UnitSystem;
  /**
   * BCP 47 language tag of the person's numbers. Without it that of `language`, and without both ASCII digits and a
   * decimal point.
   */
  readonly locale?: string | undefined;
  /**
   * A language, or its module `display`: it words the units, `500 microns`, and writes a difference of temperature
   * as its readers do. Without it every unit has its symbol.
   */
  readonly language?: UnitLanguage | undefined;
  /**
   * The smallest step that the instrument shows, more than 0: `psi(1)` for a gauge marked in single psi.
   * `inch(1/16)` gives feet, inches and sixteenths; `inch(0.001)` decimal inches; `ft(0.1)` decimal feet.
   */
  readonly resolution?: Quantity<DifferenceOf<K>> | undefined;
  /** Shows the value in this unit alone, in whatever system it is. */
  readonly unit?: Unit<K> | undefined;
}

/**
 * A quantity as text for people. `parseQuantity` of field-text reads it back within the step that is shown
 * (with the same locale).
 *
 * - Inch-pound lengths from 100 ft are feet and whole inches; from 3 in feet, inches and sixteenths; from 1/8 in a
 *   fraction where they lie within 0.0006 in of a 64th (tube sizes: 0.312 in is 5/16); thousandths
 *   otherwise (walls).
 * - Inch-pound masses are pounds and ounces to 0.1 oz; durations hours, minutes and seconds.
 * - Readings have the decimals of common instruments: 0.1 psi, 1 kPa, whole microns, 0.1 °F, 0.1 °C.
 *   Other kinds keep two to four significant digits where they are small.
 * - The unit that was entered is kept where it belongs to the system (barg in SI); an absolute pressure
 *   is otherwise shown in micron, or Pa abs, below 25 000 micron.
 * - Rounded before it is split, and without parts of 0: 11.99 in is 1 ft. No thousands marks, so that nobody
 *   misreads one. A negative number has a minus sign (U+2212), not a hyphen.
 *
 * @param quantity - Any quantity; one whose kind is not known takes no resolution and no unit.
 * @param options - System, locale, language, resolution, unit.
 * @returns The text.
 * @throws {@link InvalidInputError} when the quantity or an option is wrong, or the value is too large
 * to hold in the unit.
 *
 * Source: common practice, no source; ISO 80000-1:2022, 7.3, for the marks.
 *
 * @example
 * ```ts
 * import { formatQuantity } from "hvac-install-math/display";
 * import { english } from "hvac-install-math/language/en";
 * import { inch, micron, oz, psi, psig } from "hvac-install-math/quantity";
 *
 * formatQuantity(psig(118), { system: "inch-pound" }); // => 118.0 psig
 * formatQuantity(psig(118.4), { system: "inch-pound", resolution: psi(1) }); // => 118 psig
 * formatQuantity(psig(118), { system: "SI" }); // => 814 kPag
 * formatQuantity(inch(0.375), { system: "inch-pound" }); // => 3/8 in
 * formatQuantity(oz(52.5), { system: "inch-pound" }); // => 3 lb 4.5 oz
 * formatQuantity(oz(52.5), { system: "SI", locale: "de" }); // => 1,488 kg
 * formatQuantity(micron(500), { system: "inch-pound", language: english }); // => 500 microns
 * ```
 */
export function formatQuantity(
  quantity: AnyQuantity,
  options: Pick<FormatQuantityOptions<Kind>, "system" | "locale" | "language">,
): string;
export function formatQuantity<K extends Kind>(
  quantity: Quantity<K>,
  options: FormatQuantityOptions<K>,
): string;
export function formatQuantity<K extends Kind>(
  quantity: Quantity<K>,
  options: FormatQuantityOptions<K>,
): string {
  requireKind("quantity", quantity);
  const { system, unit, locale, language } = options ?? {};
  oneOf("options.system", system, ["inch-pound", "SI"]);
  const numbers = numbersOf(locale, language);
  if (unit !== undefined) requireUnit("options.unit", unit, quantity.kind);
  return quantityText(quantity, options, numbers);
}

/**
 * The text for options that were checked but for the resolution. `finer` is how many more digits it has
 * than the kind deserves, `trim` leaves zeros away behind the decimal mark of what is exact: neither beside a
 * resolution, which decides alone.
 */
export function quantityText<K extends Kind>(
  quantity: Quantity<K>,
  options: FormatQuantityOptions<K>,
  numbers: Numbers,
  finer = 0,
  trim = false,
): string {
  const { system, unit, resolution } = options;
  if (resolution !== undefined) {
    siOf("options.resolution", resolution, quantity.unit.difference.kind, { above: 0 });
  }
  const whole = unit ? undefined : splitText(quantity, system, numbers, resolution, finer);
  // Finer than sixteenths: a run in decimal feet, a tube in decimal inches.
  const isRun =
    quantity.kind === "length" &&
    system === "inch-pound" &&
    Math.abs(quantity.si) >= 3 * inch.scale;
  const shown = finer > 0 && isRun && !unit ? { ...options, unit: ft as never } : options;
  return (
    whole ?? decimalText(quantity, displayOf(quantity, shown), numbers, resolution, finer, trim)
  );
}

/** Feet and inches, pounds and ounces, hours and minutes; undefined where one unit will do. */
function splitText<K extends Kind>(
  quantity: Quantity<K>,
  system: UnitSystem,
  numbers: Numbers,
  resolution: Quantity<DifferenceOf<K>> | undefined,
  finer: number,
): string | undefined {
  const { kind, si } = quantity as { kind: Kind; si: number };
  const step = resolution?.si;
  const stepUnit: string | undefined = resolution?.unit.symbol;
  if (kind === "duration") {
    const seconds = step ?? (Math.abs(si) < 9.95 ? 0.1 : 1) * 10 ** -finer;
    const tiny = step === undefined && Math.abs(si) < 1;
    return tiny || isBeyond(si / seconds) ? undefined : hoursAndMinutes(numbers, si, seconds);
  }
  if (system !== "inch-pound") return undefined;
  if (kind === "mass" && (stepUnit === undefined || stepUnit === oz.symbol)) {
    const ounces = twelveDigits(si / oz.scale);
    const inOunces = step === undefined ? 10 ** -(1 + finer) : twelveDigits(step / oz.scale);
    return isBeyond(ounces / inOunces) ? undefined : poundsAndOunces(numbers, ounces, inOunces);
  }
  if (kind !== "length" || finer > 0) return undefined;
  const inches = twelveDigits(si / inch.scale);
  const denominator = denominatorFor(inches, step === undefined ? undefined : step / inch.scale);
  const inInches = stepUnit === undefined || stepUnit === inch.symbol;
  if (!denominator || !inInches || isBeyond(inches * denominator)) return undefined;
  return feetAndInches(numbers, inches, denominator);
}

/** So many steps that neither feet nor hours help. */
const isBeyond = (steps: number) => Math.abs(steps) > 1e9;

/** The denominator of the fraction in which an inch length is written; undefined for decimals. */
function denominatorFor(inches: number, step: number | undefined): number | undefined {
  const size = Math.abs(inches);
  if (step !== undefined)
    return [1, 2, 4, 8, 16, 32, 64].find((d) => Math.abs(d * step - 1) < 1e-9);
  if (size >= 1200) return 1; // nobody reads sixteenths on 100 ft
  if (size >= 3) return 16;
  const sixtyFourths = Math.round(size * 64);
  // 5/16 in tube is 0.312 in (ASTM B280-20), 0.0005 in off the fraction
  const near = Math.abs(size - sixtyFourths / 64) <= 0.0006;
  return near && (sixtyFourths >= 8 || size === 0) ? 64 : undefined;
}

/**
 * The one unit in which a quantity of this size is shown: for an axis, or the head of a column. A length, a mass or a
 * duration, which `formatQuantity` splits in two units, has the larger of them that fits.
 *
 * @param quantity - A quantity of the size of what is to be shown.
 * @param options - System, and units of single kinds in place of those of the system.
 * @returns The unit: that of the reader, that in which the quantity was entered where it belongs to the system, or the
 * usual one of this size.
 * @throws {@link InvalidInputError} when an argument is wrong.
 *
 * Source: common practice, no source.
 *
 * @example
 * ```ts
 * import { shownUnit } from "hvac-install-math/display";
 * import { micron, psia, torr } from "hvac-install-math/quantity";
 *
 * shownUnit(micron(500), { system: "SI" }).symbol; // => Pa abs
 * shownUnit(psia(0.0097), { system: "inch-pound", units: { absolutePressure: torr } }).symbol; // => torr
 * ```
 */
export function shownUnit<K extends Kind>(
  quantity: Quantity<K>,
  options: {
    /** Inch-pound or SI units. */
    readonly system: UnitSystem;
    /** Units of single kinds, in place of those of the system. */
    readonly units?: { readonly [P in Kind]?: Unit<P> | undefined } | undefined;
  },
): Unit<K> {
  requireKind("quantity", quantity);
  const { system, units = {} } = options ?? {};
  oneOf("options.system", system, ["inch-pound", "SI"]);
  objectOf("options.units", units);
  const own = units[quantity.kind] as Unit<K> | undefined;
  if (own !== undefined) requireUnit(`options.units.${quantity.kind}`, own, quantity.kind);
  return own ?? displayOf(quantity, { system }).unit;
}

/** The row of the table by which the quantity is shown. */
function displayOf<K extends Kind>(
  quantity: Quantity<K>,
  { system, unit, resolution }: FormatQuantityOptions<K>,
): Display<K> {
  const rows: readonly Display<K>[] = displayUnits()[quantity.kind][system];
  const bySymbol = (symbol: string) => (row: Display<K>) => row.unit.symbol === symbol;
  if (unit) {
    const all: readonly Display<K>[] = Object.values(displayUnits()[quantity.kind]).flat() as never;
    return all.find(bySymbol(unit.symbol)) ?? { unit, decimals: 0, digits: 4, from: 0 };
  }
  const stepSymbol = resolution?.unit.symbol;
  const fitting = rows.filter((row) => row.unit.difference.symbol === stepSymbol);
  const candidates = fitting.length > 0 ? fitting : rows;
  const { kind } = quantity as { kind: Kind };
  // What is too small for feet, pounds or hours is shown in inches, ounces, seconds.
  const small =
    kind === "duration" || (system === "inch-pound" && (kind === "length" || kind === "mass"));
  const entered =
    small && !stepSymbol ? undefined : candidates.find(bySymbol(quantity.unit.symbol));
  const reached = candidates.filter(({ from }) => Math.abs(quantity.si) >= from);
  const bySize = reached.sort((one, other) => other.from - one.from)[0];
  return (entered ?? bySize ?? candidates[0]) as Display<K>;
}

function decimalText<K extends Kind>(
  quantity: Quantity<K>,
  { unit, decimals, digits }: Display<K>,
  { fixed, scientific, withUnit }: Numbers,
  resolution: Quantity<DifferenceOf<K>> | undefined,
  finer: number,
  trim: boolean,
): string {
  const value = quantity.in(unit);
  const size = Math.abs(value);
  const small = size > 0 && digits > 0;
  const ofDigits = small ? digits - 1 - Math.floor(Math.log10(size)) : 0;
  const needed = finer + Math.max(decimals, ofDigits);
  const step = resolution ? stepIn(unit, resolution) : 10 ** -needed;
  const places = decimalsOf(step);
  if (size / Math.min(step, 1) >= 1e12) {
    return withUnit(scientific(value, 12), value, unit.symbol);
  }
  if (places > 6 && small) {
    return withUnit(scientific(value, Math.max(digits, 3) + finer), value, unit.symbol);
  }
  const rounded = roundTo(value, step);
  const isBelowZero = unit.offset > 0 && rounded * unit.scale + unit.offset < 0; // −459.7 °F
  const shown = isBelowZero ? roundTo(rounded + step, step) : rounded;
  const exact = trim && Math.abs(value - shown) <= 1e-9 * size;
  return withUnit(fixed(shown, places, exact), shown, unit.symbol);
}

/** The step in the unit: as stated where it is stated in that unit, else the power of ten below it. */
function stepIn<K extends Kind>(unit: Unit<K>, resolution: Quantity<DifferenceOf<K>>): number {
  const step = twelveDigits(resolution.si / unit.scale);
  const own = resolution.unit.symbol === unit.difference.symbol && decimalsOf(step) < 9;
  return own ? step : 10 ** Math.floor(Math.log10(step));
}
