// What does a number mean? A value with its kind and the unit in which it was entered.
// Follows ISO 80000-1:2022 (quantities and units) and the SI Brochure, 9th ed.
// Does not cover general dimensional algebra: products that the trade needs are in products.ts.
import {
  finiteOf,
  refuse,
  requireAdditive,
  requireKind,
  requireUnit,
  wholeNumberOf,
  within,
} from "./check.ts";
import { InvalidInputError } from "./errors.ts";
import type { AdditiveKind, DifferenceOf, Kind, PointKind } from "./kinds.ts";
import { twelveDigits } from "./twelve-digits.ts";

/**
 * A unit of one kind: call it to make a quantity, pass it to {@link Quantity.in} to read one.
 *
 * `SI value = value × scale + offset`.
 *
 * Source: ISO 80000-1:2022; the definition of each unit stands beside it in the catalogue.
 *
 * @example
 * ```ts
 * import { kPag, psig } from "hvac-install-math/quantity";
 *
 * psig(118).in(kPag).toFixed(1); // => 813.6
 * ```
 */
export interface Unit<in out K extends Kind> {
  (value: number): Quantity<K>;
  /** The kind of quantity that this unit measures. */
  readonly kind: K;
  /** The unit's symbol as the trade or the SI writes it. */
  readonly symbol: string;
  /** Size of the unit in the coherent SI unit of its kind. */
  readonly scale: number;
  /** SI value of zero on this unit's scale; not 0 only for °F and °C. */
  readonly offset: number;
  /** The unit of the difference of two values in this unit: `psi` for `psig`, itself where values add. */
  readonly difference: Unit<DifferenceOf<K>>;
}

/**
 * An immutable value with a kind, kept in SI and remembered in the unit in which it was entered.
 *
 * Make one with a unit, `psig(118)`; read it with {@link Quantity.in}; calculate with
 * {@link Quantity.plus}, {@link Quantity.minus}, {@link Quantity.times}, {@link Quantity.dividedBy};
 * compare with `<` and `>`, which also sort. A point and a difference are different kinds:
 * `degF(95).minus(degF(75))` is a `temperatureDifference`, and two points cannot be added. `+` throws,
 * and so does `==` with a bare number, because their answer would depend on the unit. The compiler also
 * refuses `-`, `*`, `/` and a comparison with a bare number or another kind; in plain JavaScript these
 * see the SI value, and `==` between two quantities asks whether they are the same object.
 *
 * Two copies of the package (ESM and CommonJS) understand each other's quantities.
 *
 * Source: ISO 80000-1:2022.
 *
 * @example
 * ```ts
 * import { deltaF, degF } from "hvac-install-math/quantity";
 *
 * const rise = degF(95).minus(degF(75));
 * rise.toString(); // => 20 Δ°F
 * degF(60).plus(rise).toString(); // => 80 °F
 * rise > deltaF(15); // => true
 * ```
 */
export class Quantity<in out K extends Kind> {
  /** The kind of quantity. */
  readonly kind: K;
  /** The value in the coherent SI unit of its kind, unrounded: what formulas use. */
  readonly si: number;
  /** The unit in which it was entered, or in which the library answers. */
  readonly unit: Unit<K>;

  /** Use a unit, `psig(118)`, rather than this constructor. */
  constructor(si: number, unit: Unit<K>) {
    this.kind = unit.kind;
    this.si = finiteOf(unit.symbol, si) + 0; // −0 becomes 0
    this.unit = unit;
    Object.freeze(this);
    if (si < 0 && (unit.kind === "temperature" || unit.kind === "absolutePressure")) {
      const limit = () => unit(twelveDigits(-unit.offset / unit.scale, unit.offset));
      within(unit.symbol, si, { min: 0 }, InvalidInputError, this, limit);
    }
  }

  /**
   * The value in a unit of the same kind, rounded to twelve significant digits.
   *
   * @param unit - A unit of this quantity's kind.
   * @returns The number.
   * @throws {@link InvalidInputError} when the number is too large to hold in that unit, and from
   * JavaScript, when the unit measures another kind.
   */
  in(unit: Unit<K>): number {
    requireUnit("unit", unit, this.kind);
    const value = finiteOf(unit.symbol, (this.si - unit.offset) / unit.scale);
    return twelveDigits(value, unit.offset / unit.scale);
  }

  /**
   * The same value, remembered in another unit: changes how it prints and serialises, nothing else.
   *
   * @param unit - A unit of this quantity's kind.
   * @returns The same value in that unit.
   * @throws {@link InvalidInputError} from JavaScript, when the unit measures another kind.
   */
  as(unit: Unit<K>): Quantity<K> {
    requireUnit("unit", unit, this.kind);
    return new Quantity(this.si, unit);
  }

  /**
   * The sum of this value and a difference. Two points cannot be added.
   *
   * @param other - A quantity of the kind that the difference of two such values has.
   * @returns The sum, in this value's unit.
   * @throws {@link InvalidInputError} from JavaScript, when the kinds do not allow the sum.
   */
  plus(other: Quantity<DifferenceOf<K>>): Quantity<K> {
    requireKind("plus", other, this.unit.difference.kind);
    return new Quantity(this.si + other.si, this.unit);
  }

  /**
   * This value less a difference (the same kind comes back), or less another value of its kind (the
   * difference comes back).
   *
   * @param other - A difference, or a quantity of the same kind.
   * @returns A quantity of this kind, or the difference of the two.
   * @throws {@link InvalidInputError} from JavaScript, when the kinds do not allow the subtraction.
   */
  minus(other: Quantity<K>): Quantity<DifferenceOf<K>>;
  minus(other: Quantity<DifferenceOf<K>>): Quantity<K>;
  minus(other: { readonly kind: Kind; readonly si: number }): unknown {
    const ownKind = other?.kind === this.kind;
    requireKind("minus", other, ownKind ? this.kind : this.unit.difference.kind);
    const si = this.si - other.si;
    return ownKind ? new Quantity(si, this.unit.difference) : new Quantity(si, this.unit);
  }

  /**
   * This value times a plain number. A point cannot be scaled: half of 80 °F means nothing.
   *
   * @param factor - A finite number.
   * @returns The scaled value in the same unit.
   * @throws {@link InvalidInputError} when the factor is not finite, and from JavaScript for a point.
   */
  times(factor: Scalable<K, number>): Quantity<K> {
    requireAdditive("times", this);
    return new Quantity(this.si * finiteOf("times", factor as number), this.unit);
  }

  /**
   * This value divided by a plain number, or by another value of its kind, which gives the plain
   * number of times that the other goes into it.
   *
   * @param divisor - A finite number other than 0, or a quantity of the same kind other than 0.
   * @returns The quotient.
   * @throws {@link InvalidInputError} when the divisor is 0 or not finite, when the quotient is too
   * large for a number, and from JavaScript for a point.
   */
  dividedBy(divisor: Scalable<K, number>): Quantity<K>;
  dividedBy(divisor: Scalable<K, Quantity<K>>): number;
  dividedBy(divisor: unknown): unknown {
    requireAdditive("dividedBy", this);
    const plain = typeof divisor === "number";
    if (!plain) requireKind("dividedBy", divisor, this.kind);
    const by = plain ? finiteOf("dividedBy", divisor) : (divisor as Quantity<K>).si;
    if (by === 0) refuse("dividedBy", by, "not 0", "not-zero");
    return plain ? new Quantity(this.si / by, this.unit) : finiteOf("dividedBy", this.si / by);
  }

  /**
   * The value as text with its unit.
   *
   * @param unit - The unit to print in; the remembered one when left out.
   * @param decimals - How many decimals, a whole number from 0 to 12; as many as twelve digits need when
   * left out.
   * @returns For example `118 psig`.
   * @throws {@link InvalidInputError} when `decimals` is no such number or the unit is of another kind.
   */
  toString(unit: Unit<K> = this.unit, decimals?: number): string {
    const value = this.in(unit);
    if (decimals === undefined) return `${value} ${unit.symbol}`;
    wholeNumberOf("decimals", decimals, { min: 0, max: 12 });
    return `${Number(value.toFixed(decimals)).toFixed(decimals)} ${unit.symbol}`; // no −0.0
  }

  /**
   * The form that `JSON.stringify` writes and `fromJSON` reads.
   *
   * @returns Kind, value and unit symbol, in the unit in which it was entered.
   */
  toJSON(): QuantityJson<K> {
    return { kind: this.kind, value: this.in(this.unit), unit: this.unit.symbol };
  }

  /**
   * Lets `<`, `>` and sorting compare SI values; refuses `+` and a comparison with a bare value.
   *
   * @param hint - What JavaScript wants: a number, a string, or either.
   * @returns The SI value or the text.
   * @throws {@link InvalidInputError} for `+` and for `==` with something that is not an object.
   */
  [Symbol.toPrimitive](hint: "number" | "string" | "default"): number | string {
    if (hint === "default") {
      throw new InvalidInputError({
        argument: "+ or ==",
        value: String(this),
        allowed: "plus(), minus(), equals(); for text a template literal",
      });
    }
    return hint === "string" ? this.toString() : this.si;
  }
}

/**
 * What a quantity can be scaled by; for a point, the sentence that the compiler then prints.
 */
export type Scalable<K extends Kind, By> = [K] extends [PointKind]
  ? "A point on a scale cannot be multiplied or divided: take the difference of two points first."
  : By;

/**
 * A quantity as JSON.
 */
export interface QuantityJson<K extends Kind = Kind> {
  /** The kind of quantity. */
  kind: K;
  /** The number in `unit`. */
  value: number;
  /** The unit's symbol. */
  unit: string;
}

/** One factor, or several to be multiplied: the exact definition of a unit without any rounding. */
type Factors = number | readonly number[];

/**
 * Makes a unit of an additive kind: `numerator / denominator` in the coherent SI unit. The factors are
 * given as lists rather than as arithmetic so that a bundler can drop a unit that nobody uses.
 */
export function unit<K extends AdditiveKind>(
  kind: K,
  symbol: string,
  numerator: Factors,
  denominator: Factors = 1,
): Unit<K> {
  return makeUnit<K>(kind, symbol, multiply(numerator) / multiply(denominator), 0);
}

/** Makes a unit of points from the unit of their differences; `zero` is how far its zero lies from the SI zero. */
export function pointUnit<K extends PointKind>(
  kind: K,
  symbol: string,
  difference: Unit<DifferenceOf<K>>,
  zero = 0,
): Unit<K> {
  return makeUnit<K>(kind, symbol, difference.scale, zero * difference.scale, difference);
}

function multiply(factors: Factors): number {
  return [factors].flat().reduce((product, factor) => product * factor);
}

function makeUnit<K extends Kind>(
  kind: K,
  symbol: string,
  scale: number,
  offset: number,
  difference?: Unit<DifferenceOf<K>>,
): Unit<K> {
  const self = ((value: number): Quantity<K> =>
    new Quantity(finiteOf(symbol, value) * scale + offset, self)) as unknown as Unit<K>;
  const facts = { kind, symbol, scale, offset, difference: difference ?? self };
  return Object.freeze(Object.assign(self, facts));
}
