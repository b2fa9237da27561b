// What does this conductor carry as it runs? Usable ampacity with its steps.
// Follows NFPA 70 (2023), 110.14(C), 310.15, 334.80; CSA C22.1, 4-004, 4-006; IEC 60364-5-52:2009, 523.
// Does not cover parallel conductors, or wire-gauge conductors in the ground or in free air.

import { oneOf, refuse } from "../quantity/check.ts";
import { frozen } from "../quantity/frozen.ts";
import { choose } from "../quantity/hints.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { twelveDigits } from "../quantity/twelve-digits.ts";
import { ampere } from "../quantity/units/electricity.ts";
import { degC } from "../quantity/units/temperature.ts";
import { amperesOf, rulesOf } from "./checks.ts";
import { type Route, routeOf } from "./route.ts";
import type { CircuitRules, RuleFamily, SizeOf, WiringOf } from "./rules/index.ts";
import { cellIn, sizesOf } from "./table.ts";

/**
 * What a conductor carries, with the steps: usable = min(table × ambient × adjustment, termination limit).
 *
 * Source: NFPA 70 (2023), 110.14(C), 310.15.
 */
export interface UsableAmpacity<F extends RuleFamily = RuleFamily> {
  /** The size. */
  readonly size: SizeOf<F>;
  /**
   * Column of the ampacity table that was read: Cu or Al and the insulation, and in metric tables the method and how
   * many conductors carry current.
   */
  readonly column: string;
  /** Value in the ampacity table. */
  readonly tableAmpacity: Quantity<"current">;
  /** Temperature for which the ambient factor was read, with any addition for a roof. */
  readonly ambient: Quantity<"temperature">;
  /** Correction for ambient temperature. */
  readonly ambientFactor: number;
  /** Adjustment for conductors or circuits that run together, for the soil and for thermal insulation. */
  readonly adjustmentFactor: number;
  /** Table value times both factors. */
  readonly derated: Quantity<"current">;
  /** The unfactored value of the termination's or cable's column, where the rules have that limit. */
  readonly terminationLimit?: Quantity<"current"> | undefined;
  /** What may be used. */
  readonly usable: Quantity<"current">;
}

/**
 * A size and how it runs.
 */
export interface AmpacityInput<F extends RuleFamily> {
  /** The rule set. */
  readonly rules: CircuitRules<F>;
  /** How the cable runs. */
  readonly wiring: WiringOf<F>;
  /** Phases that feed the unit: two or three loaded conductors in metric tables. */
  readonly phases: 1 | 3;
  /** Rating of the device ahead, more than 0; decides the termination column where it is not marked. */
  readonly deviceRating?: Quantity<"current"> | undefined;
}

/**
 * Ampacity of a conductor as it runs: corrected and adjusted from its own insulation's column, then capped
 * by the column of the terminations (and of non-metallic sheathed cable, where the rules have that cap).
 *
 * Assumes 30 °C (20 °C in the ground), up to three loaded conductors (one circuit in metric rules), unmarked
 * terminations and dry soil of 2.5 K·m/W where nothing else is stated.
 *
 * @param input - Rules, wiring, phases, a size of the rules' family, and the device rating.
 * @returns The usable ampacity and every step.
 * @throws {@link InvalidInputError} when the table has no such size, material or method, or the rules have no
 * ampacity table; {@link OutOfRangeError} when it is too hot for the insulation or too many circuits run together.
 *
 * Cautions: for a licensed electrician; the adopted code and the equipment's markings come first.
 *
 * Source: NFPA 70 (2023), 110.14(C), tables 310.16, 310.15(B)(1)(1), 310.15(C)(1), 334.80; CSA C22.1, tables 2, 4, 5A,
 * 5C; IEC 60364-5-52:2009, annex B; BS 7671, table 4D5.
 *
 * @example
 * ```ts
 * import { nec2023, usableAmpacity } from "hvac-install-math/circuit-protection";
 * import { degC } from "hvac-install-math/quantity";
 *
 * const hot = usableAmpacity({
 *   rules: nec2023,
 *   size: "12 AWG",
 *   wiring: { material: "copper", insulation: "90 °C", terminations: "75 °C", ambient: degC(55) },
 *   phases: 1,
 * });
 * hot.ambientFactor; // => 0.76
 * hot.usable.toString(); // => 22.8 A
 * ```
 */
export function usableAmpacity<F extends RuleFamily>(
  input: AmpacityInput<F> & {
    /** The size. */
    readonly size: SizeOf<F>;
  },
): UsableAmpacity<F> {
  const rules = rulesOf(input);
  const size = oneOf("size", input.size, sizesOf(rules));
  const { deviceRating, wiring, phases } = input;
  const rating = deviceRating === undefined ? 0 : amperesOf("deviceRating", deviceRating);
  oneOf("phases", phases, [1, 3]);
  const route = routeOf(rules, wiring, phases, rating);
  const found = ampacityOf(rules, route, size);
  if (found) return frozen(found);
  const sizes = sizesOf(rules).filter((one) => ampacityOf(rules, route, one));
  if (sizes.length > 0) return refuse("size", size, sizes.join(", "), choose(sizes));
  return refuse("rules", rules.name, "rules with ampacities for this material and method");
}

/** The usable ampacity on a route; `undefined` where the table has no value. */
export function ampacityOf<F extends RuleFamily>(
  { ampacity = [] }: CircuitRules<F>,
  { column, limitColumn, celsius, ambientFactor, adjustmentFactor }: Route,
  size: SizeOf<F>,
): UsableAmpacity<F> | undefined {
  const table = cellIn(ampacity, size, column);
  if (table === null) return undefined;
  const limit = limitColumn === undefined ? null : cellIn(ampacity, size, limitColumn);
  const derated = twelveDigits(table * ambientFactor * adjustmentFactor);
  return {
    size,
    column: column.replace(/^copper/, "Cu").replace(/^aluminum/, "Al"), // as terminals are marked, in every language
    tableAmpacity: ampere(table),
    ambient: degC(celsius),
    ambientFactor,
    adjustmentFactor,
    derated: ampere(derated),
    ...(limit !== null && { terminationLimit: ampere(limit) }),
    usable: ampere(Math.min(derated, limit ?? derated)),
  };
}
