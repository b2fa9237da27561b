// What is a rate times a length? The products and quotients that the trade needs, as a closed table.
// Follows ISO 80000-1:2022, 5.3: every kind is kept in coherent SI units, so the numbers just multiply.
// Does not cover general unit algebra: a pair that is not in the table does not compile.
import { anyKindOf, refuse, requireKind, requireUnit } from "./check.ts";
import { InvalidInputError } from "./errors.ts";
import type { AdditiveKind } from "./kinds.ts";
import { Quantity, type Unit } from "./quantity.ts";

/**
 * Which kind the product of two kinds has. The order of the two factors is as written.
 *
 * Source: ISO 80000-1:2022, 5.3.
 */
export interface Products {
  massPerLength: { length: "mass" };
  density: { volume: "mass"; volumeFlow: "massFlow" };
  length: { length: "area" };
  area: { length: "volume"; speed: "volumeFlow" };
  speed: { duration: "length" };
  volumeFlow: { duration: "volume" };
  massFlow: { duration: "mass"; specificEnergy: "power" };
  pressureRate: { volume: "throughput"; duration: "pressureDifference" };
  voltage: { current: "power" };
  current: { resistance: "voltage" };
  resistancePerLength: { length: "resistance" };
  specificHeat: { temperatureDifference: "specificEnergy" };
}

/** The same table for the program; internal, for the parser of typed text too. */
export const products: Products = {
  massPerLength: { length: "mass" },
  density: { volume: "mass", volumeFlow: "massFlow" },
  length: { length: "area" },
  area: { length: "volume", speed: "volumeFlow" },
  speed: { duration: "length" },
  volumeFlow: { duration: "volume" },
  massFlow: { duration: "mass", specificEnergy: "power" },
  pressureRate: { volume: "throughput", duration: "pressureDifference" },
  voltage: { current: "power" },
  current: { resistance: "voltage" },
  resistancePerLength: { length: "resistance" },
  specificHeat: { temperatureDifference: "specificEnergy" },
};

/**
 * The product of two quantities whose kinds stand in {@link Products}, in that order.
 *
 * @param a - The first factor.
 * @param b - The second factor.
 * @param unit - The unit of the answer; of the kind that the product has.
 * @returns The product.
 * @throws {@link InvalidInputError} from JavaScript, when the pair is not in the table or the unit is
 * of another kind.
 *
 * Source: ISO 80000-1:2022, 5.3.
 *
 * @example
 * ```ts
 * import { ft, oz, ozPerFt, product } from "hvac-install-math/quantity";
 *
 * product(ozPerFt(0.16), ft(20), oz).toString(); // => 3.2 oz
 * ```
 */
export function product<A extends keyof Products, B extends keyof Products[A] & AdditiveKind>(
  a: Quantity<A>,
  b: Quantity<B>,
  unit: Unit<Products[A][B] & AdditiveKind>,
): Quantity<Products[A][B] & AdditiveKind> {
  requireKind("a", a);
  requireKind("b", b);
  requireUnit("unit", unit, anyKindOf(unit));
  requireProduct(a.kind, b.kind, unit.kind);
  return new Quantity(a.si * b.si, unit);
}

/**
 * The quantity that, multiplied by the divisor as {@link Products} says, gives the dividend.
 *
 * @param dividend - The quantity that is divided.
 * @param divisor - What it is divided by; not 0.
 * @param unit - The unit of the answer, of the kind asked for.
 * @returns The quotient.
 * @throws {@link InvalidInputError} when the divisor is 0, and from JavaScript when the kinds do not fit.
 *
 * Source: ISO 80000-1:2022, 5.3.
 *
 * @example
 * ```ts
 * import { m, mL, mm2, quotient } from "hvac-install-math/quantity";
 *
 * quotient(mL(49), mm2(49), m).toString(); // => 1 m
 * ```
 */
export function quotient<B extends keyof Products, C extends keyof Products[B] & AdditiveKind>(
  dividend: Quantity<Products[B][C] & AdditiveKind>,
  divisor: Quantity<B>,
  unit: Unit<C>,
): Quantity<C> {
  requireKind("dividend", dividend);
  requireKind("divisor", divisor);
  requireUnit("unit", unit, anyKindOf(unit));
  requireProduct(divisor.kind, unit.kind, dividend.kind);
  if (divisor.si === 0) {
    refuse("divisor", divisor, "not 0", "not-zero");
  }
  return new Quantity(dividend.si / divisor.si, unit);
}

function requireProduct(first: AdditiveKind, second: AdditiveKind, result: AdditiveKind): void {
  const table = products as unknown as Partial<Record<string, Record<string, string>>>;
  if (table[first]?.[second] === result) return;
  throw new InvalidInputError({
    argument: "product or quotient",
    value: `${first} × ${second} = ${result}`,
    allowed: "a pair of kinds in the table Products",
  });
}
