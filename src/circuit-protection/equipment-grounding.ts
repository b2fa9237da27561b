// Which equipment grounding (protective) conductor? By the device, then by the conductors.
// Follows NFPA 70 (2023), table 250.122, 250.122(A) and (B); IEC 60364-5-54, table 54.2, up to 16 mm².
// Does not cover raceways as grounding path, parallel circuits, or metal mixes in one circuit.
import { oneOf } from "../quantity/check.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { amperesOf, materialOf, rulesOf } from "./checks.ts";
import type { Material } from "./conductor-size.ts";
import type { CircuitRules, RuleFamily, SizeOf } from "./rules/circuit-rules.ts";
import { cell, sizesOf, step } from "./table.ts";

/**
 * The grounding conductor and how it was found.
 *
 * Source: NFPA 70 (2023), 250.122.
 */
export interface EquipmentGrounding<F extends RuleFamily = RuleFamily> {
  /** What is needed at least. */
  readonly size: SizeOf<F>;
  /** What the table asks for by the device alone. */
  readonly tableSize: SizeOf<F>;
  /** Factor on its area because the circuit conductors are larger than they need to be; 1 when they are not. */
  readonly areaFactor: number;
}

/**
 * Smallest equipment grounding conductor: the table's size for the device that is fitted; larger in
 * proportion when the circuit conductors are larger than needed, such as for voltage drop; never larger than
 * the circuit conductors.
 *
 * Assumes a wire of the same material as the circuit conductors. An area short by 0.1 % counts as met, so
 * that 10 AWG × 41 740/26 240 = 16 511 circular mils is 8 AWG (16 510).
 *
 * @param input - Rules, material, rating of the fitted device above 0, smallest sufficient conductor, and
 * the conductor that is fitted (the smallest one when left out).
 * @returns The size, the table's size and the area factor.
 * @throws {@link InvalidInputError} when a size is not of the rules; {@link OutOfRangeError} when the device
 * is beyond the table.
 *
 * Cautions: for a licensed electrician; the adopted code comes first.
 *
 * Source: NFPA 70 (2023), table 250.122, 250.122(A), (B).
 *
 * @example
 * ```ts
 * import { equipmentGrounding, nec2023 } from "hvac-install-math/circuit-protection";
 * import { ampere } from "hvac-install-math/quantity";
 *
 * const grounding = equipmentGrounding({
 *   rules: nec2023,
 *   material: "copper",
 *   deviceRating: ampere(60),
 *   minimumConductor: "6 AWG",
 *   conductor: "4 AWG",
 * });
 * grounding.tableSize; // => 10 AWG
 * grounding.size; // => 8 AWG
 * ```
 */
export function equipmentGrounding<F extends RuleFamily>(input: {
  /** The rule set. */
  readonly rules: CircuitRules<F>;
  /** Material of the circuit and grounding conductors. */
  readonly material: Material;
  /** Rating of the device that is fitted. */
  readonly deviceRating: Quantity<"current">;
  /** The smallest circuit conductor with enough ampacity as it runs. */
  readonly minimumConductor: SizeOf<F>;
  /** The circuit conductor that is fitted. */
  readonly conductor?: SizeOf<F>;
}): EquipmentGrounding<F> {
  const rules = rulesOf(input);
  const sizes = sizesOf(rules);
  const material = materialOf("material", input.material);
  const rating = amperesOf("deviceRating", input.deviceRating);
  const minimum = oneOf("minimumConductor", input.minimumConductor, sizes);
  const { conductor = minimum } = input;
  oneOf("conductor", conductor, sizes);
  const area = (size: SizeOf<F>) => cell(rules.conductors, size, "area") ?? 0;
  const tableSize = step("deviceRating", rules.grounding, rating)[material];
  const areaFactor = Math.max(1, area(conductor) / area(minimum)); // 250.122(B)
  const needed = Math.min(area(tableSize) * areaFactor, area(conductor)); // 250.122(A)
  const size = sizes.find((one) => area(one) >= needed * 0.999) ?? conductor;
  return { size, tableSize, areaFactor };
}
