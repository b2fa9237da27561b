// Which equipment grounding (protective) conductor? By the device, by the line conductor, or by the energy of a fault.
// Follows NFPA 70 (2023), 250.122(A), (B); CSA C22.1, 10-614, 10-616, table 16; IEC 60364-5-54, 543, table 54.2.
// Does not cover raceways as grounding path and parallel circuits.

import { oneOf, refuse } from "../quantity/check.ts";
import { frozen } from "../quantity/frozen.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { adiabaticFactor } from "./adiabatic.ts";
import { amperesOf, materialOf, rulesOf } from "./checks.ts";
import type { Material } from "./conductor-size.ts";
import type { CircuitRules, GroundingRule, RuleFamily, SizeOf } from "./rules/index.ts";
import { areaOf, cellIn, sizesOf, step } from "./table.ts";

/**
 * The grounding conductor and how it was found.
 *
 * Source: NFPA 70 (2023), 250.122; CSA C22.1, table 16; IEC 60364-5-54, table 54.2.
 */
export interface EquipmentGrounding<F extends RuleFamily = RuleFamily> {
  /** What is needed at least. */
  readonly size: SizeOf<F>;
  /** What the table asks for by the device, or by the line conductor, alone. */
  readonly tableSize: SizeOf<F>;
  /** Factor on its area because the circuit conductors are larger than they need to be; 1 when they are not. */
  readonly areaFactor: number;
  /** Set where the rule of enlarged conductors can be read two ways that differ; the larger answer was taken. */
  readonly ambiguous?: true | undefined;
}

/**
 * Smallest equipment grounding conductor. United States: the table's size for the device that is fitted; larger in
 * proportion when the circuit conductors are larger than needed, such as for voltage drop; never larger than the
 * circuit conductors. Canada: table 16, entered with the ampacity of enlarged conductors. Metric rules: by the line
 * conductor, in another material with the ratio of the factors k.
 *
 * Assumes a wire of the same material as the circuit conductors where none is stated. An area short by 0.1 % counts as
 * met, so that 10 AWG × 41 740/26 240 = 16 511 circular mils is 8 AWG (16 510).
 *
 * @param input - Rules, materials, rating of the fitted device above 0, smallest sufficient conductor, and
 * the conductor that is fitted (the smallest one when left out).
 * @returns The size, the table's size and the area factor.
 * @throws {@link InvalidInputError} when a size is not of the rules, or they have no table;
 * {@link OutOfRangeError} when the device is beyond it.
 *
 * Cautions: for a licensed electrician; the adopted code comes first.
 *
 * Source: NFPA 70 (2023), table 250.122, 250.122(A), (B); CSA C22.1, 10-614, 10-616, table 16; IEC 60364-5-54,
 * 543.1.2.
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
  /** Material of the circuit conductors. */
  readonly material: Material;
  /** Material of the grounding conductor; that of the circuit conductors when left out. */
  readonly groundingMaterial?: Material | undefined;
  /** Rating of the device that is fitted. */
  readonly deviceRating: Quantity<"current">;
  /** The smallest circuit conductor with enough ampacity as it runs. */
  readonly minimumConductor: SizeOf<F>;
  /** The circuit conductor that is fitted. */
  readonly conductor?: SizeOf<F> | undefined;
}): EquipmentGrounding<F> {
  const rules = rulesOf(input);
  const sizes = sizesOf(rules);
  const material = materialOf("material", input.material);
  const { groundingMaterial = material } = input;
  materialOf("groundingMaterial", groundingMaterial);
  const rating = amperesOf("deviceRating", input.deviceRating);
  const minimum = oneOf("minimumConductor", input.minimumConductor, sizes);
  const { conductor = minimum } = input;
  oneOf("conductor", conductor, sizes);
  const found = groundingOf(rules, { material, groundingMaterial, rating, minimum, conductor });
  if (found) return frozen(found);
  refuse("rules", rules.name, "rules with a table of grounding conductors for these sizes");
}

interface GroundingDemand<F extends RuleFamily> {
  readonly material: Material;
  readonly groundingMaterial: Material;
  readonly rating: number;
  readonly minimum: SizeOf<F>;
  readonly conductor: SizeOf<F>;
}

/** The same on checked figures; `undefined` where the rules have no table for it. */
export function groundingOf<F extends RuleFamily>(
  rules: CircuitRules<F>,
  demand: GroundingDemand<F>,
): EquipmentGrounding<F> | undefined {
  const { grounding: rule } = rules;
  if (rule === undefined) return undefined;
  return rule.by === "line" ? byLine(rules, rule, demand) : byDevice(rules, rule, demand);
}

/** NFPA 70, 250.122; CSA C22.1, 10-614 and 10-616. */
function byDevice<F extends RuleFamily>(
  rules: CircuitRules<F>,
  rule: Extract<GroundingRule<F>, { by: "device" }>,
  { material, groundingMaterial, rating, minimum, conductor }: GroundingDemand<F>,
): EquipmentGrounding<F> {
  const sizes = sizesOf(rules);
  const area = (size: SizeOf<F>) => areaOf(rules, size);
  const tableSize = step("deviceRating", rule.table, rating)[groundingMaterial];
  // 250.122(A); 10-614: never larger than the circuit conductors. Aluminum beside copper gets no such relief.
  const most =
    groundingMaterial === "aluminum" && material === "copper" ? Infinity : area(conductor);
  const enlarged = area(conductor) > area(minimum);
  let needed = area(tableSize);
  let areaFactor = 1;
  let ambiguous = false;
  if (enlarged && rule.enlargedBy === "area") {
    areaFactor = area(conductor) / area(minimum); // 250.122(B)
    needed *= areaFactor;
  } else if (enlarged) {
    // 10-616: the table is entered with the ampacity of the enlarged conductor; which column was not found.
    const columns = ["60 °C", "75 °C", "90 °C"].map(
      (one) => cellIn(rules.ampacity ?? [], conductor, `${material} ${one}`) ?? rating,
    );
    const sizesFound = columns.map(
      (amperes) => step("deviceRating", rule.table, Math.max(amperes, rating))[groundingMaterial],
    );
    const areas = sizesFound.map((size) => Math.min(area(size), most));
    needed = Math.max(...areas);
    ambiguous = Math.min(...areas) < needed;
    areaFactor = needed / area(tableSize);
  }
  const least = Math.min(needed, most);
  const size = sizes.find((one) => area(one) >= least * 0.999) ?? conductor;
  return { size, tableSize, areaFactor, ...(ambiguous && { ambiguous: true as const }) };
}

/** IEC 60364-5-54, 543.1.2, table 54.2: by the line conductor; another material by k1/k2. */
function byLine<F extends RuleFamily>(
  rules: CircuitRules<F>,
  rule: Extract<GroundingRule<F>, { by: "line" }>,
  { material, groundingMaterial, conductor }: GroundingDemand<F>,
): EquipmentGrounding<F> | undefined {
  const tableSize = rule.table.find(([line]) => line === conductor)?.[1];
  if (tableSize === undefined) return undefined;
  const areaFactor =
    adiabaticFactor(material, 70, 160) / adiabaticFactor(groundingMaterial, 70, 160);
  const least = areaOf(rules, tableSize) * areaFactor;
  const size = sizesOf(rules).find((one) => areaOf(rules, one) >= least * 0.999);
  return size && { size, tableSize, areaFactor };
}
