// What is the conductor's resistance, hot, and its reactance in conduit?
// Follows NFPA 70 (2023), chapter 9, tables 8 and 9; IEC 60228 at 20 °C.
// Does not cover reactance of metric cables, negligible up to 16 mm².

import { oneOf, refuse, siOf } from "../quantity/check.ts";
import { frozen } from "../quantity/frozen.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { materialOf, rulesOf } from "./checks.ts";
import type { Material } from "./conductor-size.ts";
import type { CircuitRules, PrintedTable, RuleFamily, SizeOf } from "./rules/index.ts";
import { cell, sizesOf } from "./table.ts";

/**
 * A conductor whose resistance is asked for.
 */
export interface ConductorInput<F extends RuleFamily> {
  /** The rule set. */
  readonly rules: CircuitRules<F>;
  /** The size. */
  readonly size: SizeOf<F>;
  /** The material. */
  readonly material: Material;
}

/** A cell, or an error that names the sizes of its column. */
function cellOf<Size extends string>(
  table: PrintedTable<Size>,
  size: Size,
  column: string,
  sizes: readonly Size[],
): number {
  const at = (one: Size) => cell(table, one, column);
  return at(oneOf("size", size, sizes.filter(at))) as number;
}

/**
 * Direct-current resistance of a conductor at its temperature.
 *
 * Assumes stranded copper or aluminum (8 AWG and smaller also come solid), and 75 °C (70 °C in metric rules)
 * where nothing else is stated.
 *
 * @param input - Rules, size, material, stranding, and a temperature from −50 to 250 °C.
 * @returns The resistance per length.
 * @throws {@link InvalidInputError} when the table has no such conductor or the temperature is outside its
 * range.
 *
 * Source: NFPA 70 (2023), chapter 9, table 8 and its note 2 (the coefficients from memory); IEC 60228.
 *
 * @example
 * ```ts
 * import { conductorResistance, nec2023 } from "hvac-install-math/circuit-protection";
 * import { degC, ohmPerKft } from "hvac-install-math/quantity";
 *
 * const cool = { rules: nec2023, size: "8 AWG", material: "copper", temperature: degC(60) } as const;
 * conductorResistance(cool).toString(ohmPerKft, 3); // => 0.740 Ω/kft
 * ```
 */
export function conductorResistance<F extends RuleFamily>(
  input: ConductorInput<F> & {
    /** Solid or stranded. */
    readonly stranding?: "solid" | "stranded" | undefined;
    /** Temperature of the conductor. */
    readonly temperature?: Quantity<"temperature"> | undefined;
  },
): Quantity<"resistancePerLength"> {
  const rules = rulesOf(input);
  const { size, material, stranding = "stranded", temperature } = input;
  oneOf("stranding", stranding, ["solid", "stranded"]);
  materialOf("material", material);
  const table = cellOf(rules.conductors, size, `${material} ${stranding}`, sizesOf(rules));
  const { operatingTemperature: own } = rules;
  const celsius =
    temperature === undefined
      ? own === "by load"
        ? rules.resistanceAt
        : own
      : siOf("temperature", temperature, "temperature", { min: 223.15, max: 523.15 }) - 273.15;
  return rules.resistanceUnit(resistanceAt(rules, material, table, celsius));
}

/** A resistance of the rule set's table at another temperature in °C. */
export const resistanceAt = (
  rules: CircuitRules,
  material: Material,
  table: number,
  celsius: number,
): number => {
  const coefficient = rules.temperatureCoefficient[material] ?? 0;
  return table * (1 + coefficient * (celsius - rules.resistanceAt));
};

/**
 * Resistance and reactance to neutral of a conductor in conduit, alternating current at 60 Hz and 75 °C.
 *
 * Assumes three single conductors in the conduit.
 *
 * @param input - Rules, size, material and conduit.
 * @returns Resistance and reactance per length.
 * @throws {@link InvalidInputError} when the rules have no such table, size or material.
 *
 * Source: NFPA 70 (2023), chapter 9, table 9.
 *
 * @example
 * ```ts
 * import { conduitImpedance, nec2023 } from "hvac-install-math/circuit-protection";
 *
 * const steel = { rules: nec2023, size: "250 kcmil", material: "copper", conduit: "steel" } as const;
 * conduitImpedance(steel).reactance.toString(); // => 0.052 Ω/kft
 * ```
 */
export function conduitImpedance<F extends RuleFamily>(
  input: ConductorInput<F> & {
    /** The conduit. */
    readonly conduit: "PVC" | "aluminum" | "steel";
  },
): {
  /** Resistance per length. */
  readonly resistance: Quantity<"resistancePerLength">;
  /** Reactance per length. */
  readonly reactance: Quantity<"resistancePerLength">;
} {
  const rules = rulesOf(input);
  const { size, material } = input;
  const conduit = oneOf("conduit", input.conduit, ["PVC", "aluminum", "steel"]);
  materialOf("material", material);
  const { impedance = refuse("rules", rules.name, "rules with a table of impedances") } = rules;
  const value = (what: string) =>
    rules.resistanceUnit(cellOf(impedance, size, `${what} ${conduit}`, sizesOf(rules)));
  return frozen({ resistance: value(material), reactance: value("reactance") });
}
